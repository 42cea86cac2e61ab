// Parts and cables that come after what covers them.
import type { Build, Placed } from '../../build/build';
import { figure } from '../../figures/figure';
import { certain, ordered, stepGroups, type StepGroup } from '../../figures/step-order';
import { sentence } from '../../figures/sentence';
import { atLeast } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, type Reporter } from '../kit';
import { atStep, moveStep, stepAnswer } from './steps-kit';

export default check({
  id: 'buried-part-late',
  area: 'work',
  grade: 'note',
  what:
    'M.2 modules, memory, the EPS cable and front cables go in before what will lie over them; short cards ' +
    'before longer ones.',
  why:
    'Under a cooler, a radiator or a card there is no room for a screwdriver or a hand: the part that covers ' +
    'comes out again, or the connector is not pushed home.',
  source: 'makers’ handbooks; common practice',
  limits: ['Cards are judged by their length; what only custom decides is never a finding.'],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_1: { kind: M.2, under: [cooler] } } }
  drives: [{ name: scratch, shape: M.2, slot: M2_1 }]
steps:
  - equalise
  - fit cooler
  - fit M.2 drive
#   ^^^^^^^^^^^^^
`,
      mended: `
parts:
  board: { slots: { M2_1: { kind: M.2, under: [cooler] } } }
  drives: [{ name: scratch, shape: M.2, slot: M2_1 }]
steps:
  - equalise
  - fit M.2 drive
  - fit cooler
`,
    },
  ],
  test(build, report) {
    for (const { group, faults, truth } of ordered(build, 'reach')) {
      const step = group.steps[0];
      const later = (): StepGroup => certain(faults)[0]!.later;
      report(
        stepAnswer(build, atStep(build, step), truth, {
          broken: () =>
            sentence`${step.label} comes after ${later().steps[0].label}; do it before:
              ${certain(faults)[0]!.because}.`,
          fixes: () => [
            moveStep(build, step, later().steps[0].index, `Move ${step.label} before ${later().steps[0].label}`),
          ],
        }),
      );
    }
    cardsByLength(build, report);
  },
});

type Card = Placed<'cards'>;

/** Cards that stand among the steps by their part: each against those before it. */
function cardsByLength(build: Build, report: Reporter): void {
  const cards = stepGroups(build).flatMap((group) => {
    const card = cardOf(build, group);
    return card ? [{ step: group.steps[0], card }] : [];
  });
  for (const [i, { step, card }] of cards.entries()) {
    const before = cards[i - 1];
    if (!before || before.card === card) continue;
    const [short, long] = [before.card, card].map((one) => figure(one.part.length, `length of ${one.label}`));
    report(
      stepAnswer(build, aspectOf(atStep(build, step), 'by length'), atLeast(long!, short!), {
        broken: () =>
          sentence`${step.label} (${long!}) comes after the longer ${before.card.label} (${short!}), which lies over its
            slot; fit the short one first.`,
        fixes: () => [moveStep(build, step, before.step.index, `Move ${step.label} before ${before.step.label}`)],
      }),
    );
  }
}

/** The card that a step fits: the one it names, or the only one of its kind. */
function cardOf(build: Build, { kind, part }: StepGroup): Card | undefined {
  if (kind !== 'fit card' && kind !== 'fit graphics') return undefined;
  const held = kind === 'fit card' ? build.parts.cards : build.parts.graphics;
  const one = part ?? (held.length === 1 ? held[0] : undefined);
  return one && (one.role === 'cards' || one.role === 'graphics') ? (one as unknown as Card) : undefined;
}
