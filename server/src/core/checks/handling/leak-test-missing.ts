// A filled loop that is powered before it was shown to hold.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { firstStep, statedSteps, type Step } from '../../figures/steps';
import { sure } from '../../figures/truth';
import type { StepKind } from '../../trade/steps';
import { check } from '../check';
import type { FixIdea } from '../kit';
import { atStep, insertSteps, moveStep, stepAnswer } from '../work/steps-kit';

const filling: ReadonlySet<StepKind> = new Set(['fill loop'] as const);
const closing: ReadonlySet<StepKind> = new Set(['fit radiator'] as const);
const testing: ReadonlySet<StepKind> = new Set(['leak test'] as const);
const powering: ReadonlySet<StepKind> = new Set(['plug in mains', 'first start', 'bench start'] as const);

export default check({
  id: 'leak-test-missing',
  area: 'handling',
  grade: 'harm',
  caution: 'liquid-leak',
  what: 'A loop is tested for leaks before anything but its pump is powered: with air before it is filled, or filled.',
  why: 'Joints that drip do so within the first hours; on powered parts the drip shorts them.',
  source: 'makers’ handbooks of liquid coolers; common practice',
  examples: [
    {
      faulty: `
parts:
  radiators: [{ mount: top }]
steps:
  - equalise
  - fit radiator
  - fill loop
#   ^^^^^^^^^
  - first start
`,
      mended: `
parts:
  radiators: [{ mount: top }]
steps:
  - equalise
  - fit radiator
  - fill loop
  - leak test
  - first start
`,
    },
  ],
  test(build, report) {
    const fill = firstStep(build, filling);
    if (!fill) return;
    const after = firstStep(build, testing, fill.index);
    const start = powered(build, fill.index);
    // With air it is tested once its radiator is in, before the coolant.
    const closed = firstStep(build, closing);
    const aired = firstStep(build, testing, closed?.index);
    const test = after && (!start || after.index < start.index) ? after : (aired ?? after);
    report(
      stepAnswer(build, atStep(build, fill), sure(!!test && (!start || test.index < start.index)), {
        broken: () =>
          test
            ? sentence`After ${fill.label}, ${start!.label} comes before ${test.label}; test the loop first.`
            : sentence`After ${fill.label} no step tests the loop for leaks; test it before anything else is powered.`,
        fixes: () => fixes(build, fill.index, test, start),
      }),
    );
  },
});

/** The first step that powers more than the pump: mains without the board's own cable run a pump by itself. */
function powered(build: Build, from: number): Step | undefined {
  const steps = statedSteps(build);
  const cable = steps.findIndex(({ kind }) => kind === 'connect 24-pin');
  return steps.find(
    ({ index, kind }) =>
      index >= from && kind !== undefined && powering.has(kind) && !(kind === 'plug in mains' && cable > index),
  );
}

type FirstStep = ReturnType<typeof firstStep>;

function* fixes(build: Build, fill: number, test: FirstStep, start: FirstStep): Iterable<FixIdea | undefined> {
  if (test && start) yield moveStep(build, test, start.index, `Move ${test.label} before ${start.label}`);
  else
    yield insertSteps(
      build,
      Math.min(fill + 1, statedSteps(build).length),
      ['leak test'],
      'Insert leak test behind fill loop',
    );
}
