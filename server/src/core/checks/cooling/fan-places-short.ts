// How many fans go into one place of the case, its own among them.
import type { Build } from '../../build/build';
import { counted, figure, total, type Figure } from '../../figures/figure';
import { fanSeats, inRow, largestFan, rowLength, type FanPlace, type FanSeat } from '../../figures/fan-places';
import { notNegative } from '../../figures/guard';
import { memo } from '../../figures/memo';
import { howMany } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { atMost, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';

export default check({
  id: 'fan-places-short',
  area: 'cooling',
  grade: 'stop',
  what: 'No place of the case gets more fans than it holds, those fitted by its maker counted.',
  why: 'A fan over the number has nowhere to go.',
  source: 'common practice: a place is at least as long as its largest fans in a row',
  examples: [
    {
      faulty: `
parts:
  case: { fan-places: { rear: { sizes: [120 mm], count: 1, fitted: 1, flow: out } } }
  fans: [{ size: 120 mm, mount: rear, flow: out }]
#                               ^^^^
`,
      instead: 'Leave a fan out, or mount it elsewhere.',
    },
  ],
  test(build, report) {
    for (const { name, last, mounts, taken, room } of rows(build)) {
      const { place, missingFacts } = last;
      if (!place && missingFacts.length === 0) continue;
      report(
        outcome(
          at(last.fan, last.fan.at.mount),
          given(taken && room ? atMost(taken, room) : lacking(missingFacts), ...mounts),
          {
            broken: () =>
              sentence`Fans at ${name} take ${taken!} in a row, ${fittedAt(name, place!)} of the
              case’s own among them; the
              place is ${room!} long.`,
          },
        ),
      );
    }
  },
});

/** Each place with fans in it: the length they take there in a row, and the length there is. */
const rows = memo((build: Build) =>
  [...byPlace(fanSeats(build))].map(([name, seats]) => {
    const last = seats.at(-1)!;
    const { place } = last;
    const sizes = seats.map(({ fan }) => figure(fan.part.size, `size of ${fan.label}`));
    return {
      name,
      last,
      mounts: seats.map(({ fan }) => fan.at.mount),
      taken: place && lengthTaken(name, place, seats, sizes),
      room: place && rowLength(name, place, sizes),
    };
  }),
);

function byPlace(seats: readonly FanSeat[]): ReadonlyMap<string, readonly FanSeat[]> {
  const by = new Map<string, FanSeat[]>();
  for (const seat of seats) by.set(seat.name, [...(by.get(seat.name) ?? []), seat]);
  return by;
}

const fittedAt = (name: string, place: FanPlace): Figure =>
  notNegative(counted(place.fitted, `fans already at ${name}`));

/** The fans in a row; the case's own are taken to be of the place's largest size. */
function lengthTaken(name: string, place: FanPlace, seats: readonly FanSeat[], sizes: readonly Figure[]): Figure {
  const own = inRow(`fans of the case at ${name}`, fittedAt(name, place), notNegative(largestFan(name, place)));
  return total(
    `fans at ${name}`,
    'length',
    [own, ...seats.map(({ fan }, i) => inRow(fan.label, howMany(fan), notNegative(sizes[i]!)))],
    { unit: 'mm' },
  );
}
