// A board that goes into the case before it has run.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { startNeeds } from '../../figures/start-needs';
import { firstStep, statedSteps, type Step } from '../../figures/steps';
import { sure } from '../../figures/truth';
import type { StepKind } from '../../trade/steps';
import { check } from '../check';
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
  limits: ['A custom loop is filled in its case: its board needs no start on the bench.'],
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
    const { board, processor, radiators } = build.parts;
    const fit = firstStep(build, boarding);
    // A loop is filled in its case: nothing can run on the bench before.
    if (!fit || !board || !processor || radiators.length > 0) return;
    const start = firstStep(build, starting);
    report(
      stepAnswer(build, atStep(build, fit), sure(!!start && start.index < fit.index), {
        broken: () =>
          start
            ? sentence`${start.label} comes after ${fit.label}; start the board on the bench before it goes into the
                case.`
            : sentence`The board goes into the case without having run; start it once on the bench before
              ${fit.label}.`,
        fixes: () => [
          start
            ? moveStep(build, start, fit.index, `Move ${start.label} before ${fit.label}`)
            : insertSteps(build, fit.index, benchStart(build, fit), `Insert bench start before ${fit.label}`),
        ],
      }),
    );
  },
});

/** A start on the bench, with the cables that it needs and that are not in yet. */
function benchStart(build: Build, fit: Step): StepKind[] {
  const done = new Set(
    statedSteps(build)
      .slice(0, fit.index)
      .map(({ kind }) => kind),
  );
  const cables = startNeeds(build, 'bench start').flatMap(({ kind, truth }) =>
    kind.startsWith('connect') && truth.is !== false && !done.has(kind) ? [kind] : [],
  );
  return [...cables, ...aroundPower(build, fit.index, 'bench start')];
}
