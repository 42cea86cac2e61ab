// Steps for parts that the build does not have.
import type { Build } from '../../build/build';
import { isLiquid, liquidFacts } from '../../figures/coolers';
import { memoOf } from '../../figures/memo';
import { sentence } from '../../figures/sentence';
import { statedSteps } from '../../figures/steps';
import { soldered } from '../../figures/asked-steps';
import { any, fits, given, not, sure, type Truth } from '../../figures/truth';
import { pinsOn } from '../../trade/names';
import type { StepKind } from '../../trade/steps';
import { check } from '../check';
import { atStep, removeStep, stepAnswer } from './steps-kit';

export default check({
  id: 'step-needless',
  area: 'work',
  grade: 'note',
  what: 'Every step has a part of this build that it is done to.',
  why: 'A step left over from another build sends someone looking for a part that is not there.',
  source: 'common practice',
  remarks: ['A `part:` that the build does not have is judged here, too.'],
  examples: [
    {
      faulty: `
parts:
  processor: { socket: AM5 }
steps:
  - equalise
  - fit processor
  - fit graphics
#   ^^^^^^^^^^^^
`,
      mended: `
parts:
  processor: { socket: AM5 }
steps:
  - equalise
  - fit processor
`,
    },
  ],
  test(build, report) {
    const steps = statedSteps(build);
    if (steps.length === 0 || build.all().length === 0) return;
    for (const step of steps) {
      if (step.kind === undefined) continue;
      const lost = step.group.part.value !== undefined && !step.part;
      const truth = lost ? sure(false) : hasPartFor(build, step.kind);
      if (!truth) continue;
      report(
        stepAnswer(build, atStep(build, step), given(truth, step.group.part, step.partBy), {
          broken: () =>
            lost
              ? sentence`${step.label} names a part that this build does not have; take the step out, or name one it
                has.`
              : sentence`Nothing in this build calls for ${step.label}; take the step out.`,
          fixes: () => [removeStep(build, step, `Take out the step ${step.label}`)],
        }),
      );
    }
  },
});

/** Whether the build has what a step is done to; undefined for steps that any build may have. */
const hasPartFor = memoOf((build: Build, kind: StepKind): Truth | undefined => {
  const {
    board,
    processor,
    cooler,
    paste,
    memory,
    drives,
    graphics,
    cards,
    supply,
    case: box,
    fans,
    radiators,
  } = build.parts;
  switch (kind) {
    case 'fit processor':
      return processor ? not(soldered(build)) : sure(false);
    case 'take off socket cover':
      return board
        ? fits(board.part.socket, `socket of ${board.label}`, (socket) => (pinsOn(socket) ?? 'board') === 'board')
        : undefined;
    case 'fit memory':
    case 'memory test':
    case 'set profile':
    case 'wait for memory training':
      return sure(memory.length > 0);
    case 'fit M.2 drive':
      return any(
        ...drives.map((drive) => fits(drive.part.shape, `shape of ${drive.label}`, (shape) => shape === 'M.2')),
        ...cards.map((card) => fits(card.part.edge, `edge of ${card.label}`, (edge) => edge === 'M.2')),
      );
    case 'fit drive':
    case 'connect drive cables':
      return any(
        ...drives.map((drive) =>
          fits(drive.part.shape, `shape of ${drive.label}`, (shape) => shape === '2.5 in' || shape === '3.5 in'),
        ),
      );
    case 'drive test':
      return sure(drives.length > 0);
    case 'fit back plate':
      return cooler ? fits(cooler.part['back-plate'], `back plate of ${cooler.label}`, (has) => has) : sure(false);
    case 'remove film':
      return cooler ? fits(cooler.part.film, `film of ${cooler.label}`, (has) => has) : sure(false);
    case 'apply paste':
      return sure(!!paste || !!cooler);
    case 'fit cooler':
      return sure(!!cooler);
    case 'fit card':
      return any(
        sure(cards.length > 0),
        ...drives.map((drive) => fits(drive.part.shape, `shape of ${drive.label}`, (shape) => shape === 'card')),
      );
    case 'fit graphics':
      return sure(graphics.length > 0);
    case 'connect card power':
    case 'fit card support':
      return sure(graphics.length + cards.length > 0);
    case 'fit supply':
      return sure(!!supply);
    case 'fit board':
      return sure(!!board);
    case 'set standoffs':
    case 'fit I/O shield':
    case 'connect front cables':
    case 'close case':
    case 'open case':
      return sure(!!box);
    case 'fit fans':
      return sure(fans.length > 0);
    case 'fit radiator':
      return sure(
        radiators.length > 0 || (cooler !== undefined && isLiquid(cooler)),
        ...(cooler ? liquidFacts(cooler) : []),
      );
    case 'fill loop':
      return sure(radiators.length > 0);
    default:
      return undefined;
  }
});
