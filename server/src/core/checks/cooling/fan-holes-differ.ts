// A fan's size and hole pitch against the place it is to be screwed to.
import type { Placed } from '../../build/build';
import { figure, known, missing, unknown, type Figure } from '../../figures/figure';
import { fanSeats, type FanPlace } from '../../figures/fan-places';
import { sentence } from '../../figures/sentence';
import { all, any, atLeast, atMost, fits, lacking, sure, type Truth } from '../../figures/truth';
import { fanHolePitchMm, ROUND_FRAMES_MM } from '../../trade/forms';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

const toleranceMm = 0.5;

export default check({
  id: 'fan-holes-differ',
  area: 'cooling',
  grade: 'stop',
  what: 'Each fan goes into its place, and its holes lie where the place has them.',
  why: 'A frame that is too wide does not go in; one whose holes lie elsewhere cannot be fixed, and rattles.',
  source: 'fan makers’ drawings: pitch by frame size, ± 0.5 mm',
  examples: [
    {
      faulty: `
parts:
  case: { fan-places: { rear: { sizes: [120 mm], count: 1, fitted: 0 } } }
  fans: [{ size: 140 mm, mount: rear }]
#                               ^^^^
`,
      instead: 'Choose a fan of the size that the place takes.',
    },
  ],
  test(build, report) {
    for (const { fan, place, missingFacts } of fanSeats(build)) {
      if (!place && missingFacts.length === 0) continue;
      const pitch = pitchOf(fan);
      const size = figure(fan.part.size, `size of ${fan.label}`);
      report(
        outcome(at(fan, fan.at.mount), place ? goesIn(fan, place, size, pitch) : lacking(missingFacts), {
          broken: () => {
            const sizes = place!.sizes.value!;
            const there = sizes.length === 1 ? pitchOfFrame(sizes[0]!.value?.lo) : undefined;
            const fitting =
              there === undefined
                ? sentence`${sizes.map((one) => one.text).join(' or ')}`
                : sentence`${sizes[0]!} with holes ${holes(there, 'usual')} apart`;
            return sentence`${fan.label} is ${size} wide with holes ${pitch} apart; at ${fan.at.mount} the case takes
              ${fitting}.`;
          },
          fixes: () => [swap(fan)],
        }),
      );
    }
  },
});

/** Distance of the fan's holes: as stated, else as fans of its frame size have it. */
function pitchOf({ part, label }: Placed<'fans'>): Figure {
  const name = `distance of the holes of ${label}`;
  if (part['hole-pitch'].entry) return figure(part['hole-pitch'], name);
  const usual = pitchOfFrame(part.size.value?.lo);
  return usual === undefined
    ? unknown('length', name, [
        missing(part.size.value ? part['hole-pitch'] : part.size, part.size.value ? name : `size of ${label}`),
      ])
    : known(usual, 'length', name, { unit: 'mm', source: 'fan makers’ drawings, by frame size' });
}

const holes = (mm: number, which: string): Figure =>
  known(mm, 'length', `${which} distance of the holes there`, { unit: 'mm', source: 'fan makers’ drawings, ± 0.5 mm' });

const pitchOfFrame = (frame: number | undefined): number | undefined =>
  frame !== undefined && frame > 0 ? fanHolePitchMm(frame) : undefined;

const isRoundFrame = (frame: number, place: number): boolean =>
  ROUND_FRAMES_MM.some((one) => one.frameMm === frame && one.holesOfMm === place);

/** Some size of the place is wide enough for the frame and has holes where the fan has them. */
function goesIn(fan: Placed<'fans'>, place: FanPlace, size: Figure, pitch: Figure): Truth {
  const { sizes } = place;
  if (sizes.value === undefined) return lacking([missing(sizes, `fan sizes at ${fan.at.mount.value}`)]);
  return any(
    ...sizes.value.map((one) => {
      const room = figure(one, 'a fan size of the place');
      const there = pitchOfFrame(room.lo);
      if (there === undefined)
        return all(
          atMost(size, room),
          fits(fan.part.size, size.label, (own) => own.lo === room.lo),
        );
      // A round frame wider than its holes tell is made to be screwed to the smaller place.
      const round = fan.part['hole-pitch'].value !== undefined && size.lo > room.hi && isRoundFrame(size.hi, room.lo);
      return all(
        round ? sure(true, fan.part['hole-pitch']) : atMost(size, room),
        atLeast(pitch, holes(there - toleranceMm, 'least')),
        atMost(pitch, holes(there + toleranceMm, 'most')),
      );
    }),
  );
}
