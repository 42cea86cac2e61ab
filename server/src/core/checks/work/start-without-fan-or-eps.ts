// A start before the fans or the board’s own cables are plugged in.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { statedSteps } from '../../figures/steps';
import { all, fits, sure, type Truth } from '../../figures/truth';
import type { StepKind } from '../../trade/steps';
import { listed } from '../../text';
import { check } from '../check';
import {} from '../kit';
import { atStep, insertSteps, stepAnswer } from './steps-kit';

export default check({
  id: 'start-without-fan-or-eps',
  area: 'work',
  grade: 'harm',
  caution: 'start-uncooled',
  what: 'Before each start the 24-pin and EPS cables and the fans are plugged in.',
  why:
    'Without its EPS cable a board does not start, or pulls the processor’s power through the wrong ' +
    'connector; without fans a processor is past its limit within seconds to minutes.',
  source: 'makers’ handbooks of boards and coolers; common practice',
  examples: [
    {
      faulty: `
parts:
  cooler: { fans: { count: 1 } }
steps:
  - equalise
  - fit cooler
  - connect 24-pin
  - connect EPS
  - first start
#   ^^^^^^^^^^^
`,
      mended: `
parts:
  cooler: { fans: { count: 1 } }
steps:
  - equalise
  - fit cooler
  - connect 24-pin
  - connect EPS
  - connect fan cables
  - first start
`,
    },
  ],
  test(build, report) {
    const steps = statedSteps(build);
    for (const start of steps) {
      if (start.kind !== 'bench start' && start.kind !== 'first start') continue;
      const done = new Set(steps.slice(0, start.index).map((step) => step.kind));
      const boardCables = (['connect 24-pin', 'connect EPS'] as const).filter((kind) => !done.has(kind));
      const fans: Truth = done.has('connect fan cables') ? sure(true) : noFans(build);
      report(
        stepAnswer(build, atStep(build, start), all(sure(boardCables.length === 0), fans), {
          broken: () => sentence`Before ${start.label} the steps leave out ${listed(missingFacts(boardCables, fans))}.`,
          fixes: () => [
            insertSteps(
              build,
              start.index,
              missingFacts(boardCables, fans),
              `Insert ${listed(missingFacts(boardCables, fans))} before ${start.label}`,
            ),
          ],
        }),
      );
    }
  },
});

/** Whether there is no fan to plug in. */
function noFans(build: Build): Truth {
  const { cooler, fans } = build.parts;
  if (fans.length > 0) return sure(false);
  return cooler ? fits(cooler.part.fans.count, `fans of ${cooler.label}`, (count) => count === 0) : sure(true);
}

const missingFacts = (cables: readonly StepKind[], fans: Truth): StepKind[] => [
  ...cables,
  ...(fans.is === false ? ['connect fan cables' as const] : []),
];
