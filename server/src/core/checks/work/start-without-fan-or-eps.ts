// A start before what keeps the machine whole is there: cooler, coolant, fans, pump, the board’s own cables.
import type { Build } from '../../build/build';
import { sentence, type Sentence } from '../../figures/sentence';
import { isStart, lacksBefore, startReady, type StartNeed } from '../../figures/start-needs';
import { statedSteps, type Step } from '../../figures/steps';
import type { StepKind } from '../../trade/steps';
import { listed } from '../../text';
import { check } from '../check';
import type { FixIdea } from '../kit';
import { atStep, insertSteps, stepAnswer } from './steps-kit';

export default check({
  id: 'start-without-fan-or-eps',
  area: 'work',
  grade: 'harm',
  caution: 'start-uncooled',
  what:
    'Before each start the cooler is fitted, a loop is filled, and the cables of board, fans and pump are ' +
    'plugged in; in the case, the board’s own once more.',
  why:
    'Without its EPS cable a board does not start, or pulls the processor’s power through the wrong ' +
    'connector; without cooler, fans or pump a processor is past its limit within seconds to minutes, and a ' +
    'pump that runs dry is ruined.',
  source: 'makers’ handbooks of boards and coolers; common practice',
  limits: [
    'A board that has no 24-pin or EPS connector asks for no such cable.',
    'A cooler or coolant that stands behind the start is a matter of order, and judged there.',
  ],
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
    for (const start of statedSteps(build).filter(isStart)) {
      const lacking = lacksBefore(build, start);
      report(
        stepAnswer(build, atStep(build, start), startReady(lacking), {
          broken: () => broken(build, start.label, missingSteps(lacking)),
          fixes: () => [insertBefore(build, start, missingSteps(lacking))],
        }),
      );
    }
  },
});

/** Those that are known to be asked for. */
const missingSteps = (lacking: readonly StartNeed[]): StepKind[] =>
  lacking.flatMap(({ kind, truth }) => (truth.is === true ? [kind] : []));

function broken(build: Build, start: string, kinds: readonly StepKind[]): Sentence {
  const uncooled = kinds.includes('fit cooler') && !build.parts.cooler;
  return uncooled
    ? sentence`${start} is reached without ${listed(kinds)}, and the build names no cooler; a processor without one
        overheats within seconds.`
    : sentence`${start} is reached without ${listed(kinds)}; put ${kinds.length > 1 ? 'them' : 'it'} before it.`;
}

/** In front of the start, and of what stands directly before it with the case closed. */
function insertBefore(build: Build, start: Step, kinds: readonly StepKind[]): FixIdea | undefined {
  const steps = statedSteps(build);
  let index = start.index;
  while (index > 0 && steps[index - 1]!.kind && closing.has(steps[index - 1]!.kind!)) index--;
  const tested = steps.some((step) => step.index < start.index && step.kind === 'leak test');
  const values = kinds.flatMap((kind): StepKind[] =>
    kind === 'fill loop' && !tested ? ['fill loop', 'leak test'] : [kind],
  );
  return build.parts.cooler || !kinds.includes('fit cooler')
    ? insertSteps(build, index, values, `Insert ${listed(values)} before ${steps[index]!.label}`)
    : undefined;
}

const closing: ReadonlySet<StepKind> = new Set(['check inside', 'close case', 'take off strap', 'plug in mains']);
