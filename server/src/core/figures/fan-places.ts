// Figures of the case's places for fans: which fan goes where.
import type { Build, Placed } from '../build/build';
import type { pcCase } from '../parts/housing';
import type { Group } from '../parts/fact';
import { copyWith, counted, derive, figure, missing, most, unknown, type Figure, type Missing } from './figure';
import { memo } from './memo';

export type FanPlace = Group<(typeof pcCase)['fan-places']['of']['fields']>;

/** A fan that names a place; without `place` and `missingFacts` the case has none of that name. */
export interface FanSeat {
  readonly fan: Placed<'fans'>;
  readonly name: string;
  readonly place?: FanPlace;
  readonly missingFacts: readonly Missing[];
}

/** The fans that name a place of the case, in the order of the build. */
export const fanSeats = memo((build: Build): readonly FanSeat[] => {
  const { case: box, fans } = build.parts;
  if (!box) return [];
  const places = box.part['fan-places'];
  return fans.flatMap((fan): FanSeat[] => {
    const name = fan.at.mount.value;
    if (name === undefined) return [];
    const place = places.value?.get(name);
    return [
      {
        fan,
        name,
        ...(place ? { place } : {}),
        missingFacts: places.value ? [] : [missing(places, `fan places of ${box.label}`)],
      },
    ];
  });
});

/** The largest fan that a place takes. */
export function largestFan(name: string, { sizes }: FanPlace): Figure {
  const label = `largest fan at ${name}`;
  return sizes.value && sizes.value.length > 0
    ? most(
        label,
        sizes.value.map((size) => figure(size, 'a fan size of the place')),
      )
    : unknown('length', label, [missing(sizes, `fan sizes at ${name}`)]);
}

/**
 * As stated; else as many of its largest fans as it holds, which says how long it is at least where smaller ones go
 * in.
 */
export function rowLength(name: string, place: FanPlace, sizes: readonly Figure[]): Figure {
  const label = `row for fans at ${name}`;
  if (place.length.entry) return figure(place.length, label);
  const size = largestFan(name, place);
  const row = inRow(label, counted(place.count, `how many fans ${name} holds`), size);
  return sizes.every((one) => one.lo === size.lo && one.hi === size.hi)
    ? row
    : copyWith(row, { hi: Infinity, missing: [...row.missing, missing(place.length, label)] });
}

/** So many fans of a size, in a row. */
export const inRow = (label: string, count: Figure, size: Figure): Figure =>
  derive(label, 'length', [count, size], `${count.label} × ${size.label}`, (n, mm) => (n === 0 ? 0 : n * mm), {
    unit: 'mm',
  });
