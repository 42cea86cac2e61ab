// The machine’s mass against what one person may lift.
import type { Build, Placed } from '../../build/build';
import { copyWith, figure, known, times, total, type Figure } from '../../figures/figure';
import { memo } from '../../figures/memo';
import { howMany } from '../../figures/power';
import { askingWidest } from '../../figures/widest';
import { sentence } from '../../figures/sentence';
import { all, atMost } from '../../figures/truth';
import type { RoleName } from '../../manifest/places';
import {
  DRIVES_AT_MOST_G,
  LIFT_FROM_FLOOR_KG,
  LIGHT_PARTS_AT_MOST_G,
  NIOSH_LOAD_CONSTANT_KG,
} from '../../trade/lifting';
import { check } from '../check';
import { at, outcome } from '../kit';

/** What is lifted with the case; displays, sticks, cables and paste are not. */
const lifted: readonly RoleName[] = [
  'board',
  'processor',
  'cooler',
  'memory',
  'drives',
  'graphics',
  'cards',
  'supply',
  'case',
  'fans',
  'radiators',
];

export default check({
  id: 'too-heavy-to-lift-alone',
  area: 'case',
  grade: 'harm',
  what: 'The finished machine weighs no more than one person may lift under ideal conditions.',
  why: 'A heavy, awkward box lifted alone costs a back, or the machine.',
  source: 'Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication No. 94-110',
  remarks: ['Above 17.8 kg, where the hands begin at the floor, it is a note.'],
  caution: 'lifting',
  examples: [
    {
      faulty: `
parts:
  cooler: { mass: 1.5 kg }
  graphics: { mass: 2.5 kg }
  case: { mass: 19.5 kg }
# ^^^^
`,
      instead: 'Lift it with two, or carry case and heavy parts one by one and fit them in place.',
    },
  ],
  test(build, report) {
    const { case: box } = build.parts;
    if (!box) return;
    const mass = machineMass(build);
    const ideal = atMost(mass, limit);
    report(
      outcome(at(box, undefined, 'mass'), ideal.is === true ? all(ideal, atMost(mass, fromFloor)) : ideal, {
        broken: () =>
          ideal.is === true
            ? sentence`The machine weighs ${mass}; one person may lift ${fromFloor} from the floor. Lift it with two.`
            : sentence`The machine weighs ${mass}; one person may lift ${limit} under ideal conditions. Lift it with
              two.`,
        ...(ideal.is === true ? { grade: 'note' as const } : {}),
      }),
    );
  },
});

const limit = known(NIOSH_LOAD_CONSTANT_KG * 1000, 'mass', 'what one person may lift under ideal conditions', {
  unit: 'kg',
  source: 'NIOSH 94-110, load constant',
});

const fromFloor = known(LIFT_FROM_FLOOR_KG * 1000, 'mass', 'what one person may lift from the floor', {
  unit: 'kg',
  source: 'NIOSH 94-110, load constant × vertical multiplier at the floor',
});

const machineMass = memo((build: Build): Figure => {
  const masses = build.of(...lifted).map((placed) => times(massOf(placed as Placed<'board'>), howMany(placed)));
  return askingWidest(total('mass of the machine', 'mass', masses, { unit: 'kg' }), masses);
});

/** A part’s mass; where a light part states none, it lies between nothing and what such parts weigh at most. */
function massOf(placed: Placed<'board'>): Figure {
  const mass = figure(placed.part.mass, `mass of ${placed.label}`);
  const shape =
    placed.role === ('drives' as string) ? (placed as Placed as Placed<'drives'>).part.shape.value : undefined;
  const most =
    DRIVES_AT_MOST_G[shape ?? ''] ??
    (LIGHT_PARTS_AT_MOST_G[placed.role as string as keyof typeof LIGHT_PARTS_AT_MOST_G] as number | undefined);
  return mass.missing.length === 0 || most === undefined
    ? mass
    : copyWith(mass, { lo: 0, hi: most, unit: 'g', source: 'common practice: such parts weigh no more' });
}
