// A board that goes into the case before it has run.
import { sentence } from '../../figures/sentence';
import { firstStep } from '../../figures/steps';
import { sure } from '../../figures/truth';
import type { StepKind } from '../../trade/steps';
import { check } from '../check';
import {} from '../kit';
import { aroundPower, atStep, insertSteps, moveStep, stepAnswer } from './steps-kit';

const boarding: ReadonlySet<StepKind> = new Set(['fit board'] as const);
const starting: ReadonlySet<StepKind> = new Set(['bench start'] as const);

export default check({
  id: 'no-bench-start',
  area: 'work',
  grade: 'note',
  what: 'Board, processor, memory and cooler are started once on the bench, before they go into the case.',
  why: 'A fault found on the bench is a minute’s work; the same fault in a finished case takes it apart again.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board: { socket: AM5 }
  processor: { socket: AM5 }
steps:
  - equalise
  - fit processor
  - fit board
#   ^^^^^^^^^
`,
      instead:
        'Start it once on the bench, with both board cables, one memory module and the cooler’s fan ' +
        'plugged in, and unplug it again.',
    },
  ],
  test(build, report) {
    const { board, processor } = build.parts;
    const fit = firstStep(build, boarding);
    if (!fit || !board || !processor) return;
    const start = firstStep(build, starting);
    report(
      stepAnswer(build, atStep(build, fit), sure(!!start && start.index < fit.index), {
        broken: () =>
          start
            ? sentence`${fit.label} comes before ${start.label}.`
            : sentence`${fit.label} comes before the board has run once on the bench.`,
        fixes: () => [
          start
            ? moveStep(build, start, fit.index, `Move ${start.label} before ${fit.label}`)
            : insertSteps(
                build,
                fit.index,
                [
                  'connect 24-pin',
                  'connect EPS',
                  'connect fan cables',
                  ...aroundPower(build, fit.index, 'bench start'),
                ],
                `Insert bench start before ${fit.label}`,
              ),
        ],
      }),
    );
  },
});
