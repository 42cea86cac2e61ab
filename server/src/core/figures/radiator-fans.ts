// Figures of the fans at a radiator’s place: how many go on one side of it, and which stand beside it or behind it.
import type { Build, Placed } from '../build/build';
import type { radiatorFields } from '../parts/common';
import type { Group } from '../parts/fact';
import { radiatorClassNamed, type RadiatorClass } from '../trade/forms';
import { inRow, rowLength } from './fan-places';
import { copyWith, counted, figure, known, missing, readCount, total, unknown, type Figure } from './figure';
import { notNegative } from './guard';
import { howMany } from './power';
import { atMost, lacking, sure, type Truth } from './truth';

type Facts = Group<typeof radiatorFields>;

/** The fans of the build that name a radiator’s place. */
export const fansAt = (build: Build, mount: string | undefined): readonly Placed<'fans'>[] =>
  mount === undefined ? [] : build.parts.fans.filter(({ at }) => at.mount.value === mount);

/** How many they are. */
export const countOf = (fans: readonly Placed<'fans'>[]): Figure =>
  total(
    'fans at the place',
    'count',
    fans.map((fan) => howMany(fan)),
  );

const classOf = (facts: Facts): RadiatorClass | undefined => radiatorClassNamed(facts.class.value ?? '');

/** How many fans a radiator takes on one side: as stated, else by its class. */
export function perSide(facts: Facts, label: string): Figure {
  const words = `fans on one side of ${label}`;
  if (facts.fans.entry) return counted(facts.fans, words);
  const row = classOf(facts);
  return row
    ? readCount(row.fans, words, facts.class)
    : unknown('count', words, [missing(facts.class, `class of ${label}`)]);
}

/** Whether fans of the build find room in the row beside a cooler’s radiator, with its own fans’ width taken up. */
export function besideIt(build: Build, facts: Facts, label: string, mount: string): Truth {
  const { case: box } = build.parts;
  const places = box!.part['fan-places'];
  if (!places.value) return lacking([missing(places, `fan places of ${box!.label}`)]);
  const place = places.value.get(mount);
  if (!place) return sure(false, places);
  const row = classOf(facts);
  const size =
    facts['fan-size'].entry || !row
      ? figure(facts['fan-size'], `fan size of ${label}`)
      : known(row.frameMm, 'length', `fan size of ${label}`, { unit: 'mm', source: 'its class' });
  const fans = fansAt(build, mount);
  const sizes = fans.map((fan) => figure(fan.part.size, `size of ${fan.label}`));
  const taken = total(
    `fans and radiator at ${mount}`,
    'length',
    [
      inRow(`fans of ${label}`, perSide(facts, label), notNegative(size)),
      ...fans.map((fan, i) => inRow(fan.label, howMany(fan), notNegative(sizes[i]!))),
    ],
    { unit: 'mm' },
  );
  return atMost(taken, rowLength(mount, place, [size, ...sizes]));
}

/** Thickness of a second layer of fans: all of it, none, or perhaps some where `there` cannot be said. */
export function secondLayer(there: Truth, thickness: Figure): Figure {
  if (there.is === true) return thickness;
  if (there.is === false)
    return known(0, 'length', 'no fans on the other side', { unit: 'mm', source: 'by where the fans stand' });
  return copyWith(thickness, { lo: 0, missing: [...thickness.missing, ...there.missing] });
}
