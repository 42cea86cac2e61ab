// Figures of the case's places for fans: which fan goes where.
import type { Build, Placed } from '../build/build';
import type { pcCase } from '../parts/housing';
import type { Group } from '../parts/fact';
import { missing, type Missing } from './figure';
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
