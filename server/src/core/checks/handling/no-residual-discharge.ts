// The power button pressed once after unplugging, before hands go in.
import { sentence } from '../../figures/sentence';
import { statedSteps, type Step } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { HANDLING } from '../../trade/steps';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { atStep, insertSteps, stepAnswer } from '../work/steps-kit';

export default check({
  id: 'no-residual-discharge',
  area: 'handling',
  grade: 'note',
  caution: 'powered-inside',
  what: 'After unplugging, the machine’s power button is pressed once before parts are handled.',
  why:
    'The supply’s outputs stay charged for a while after its cable is out; pressing the button lets the ' +
    'board use that charge up.',
  source: 'makers’ service manuals; common practice',
  examples: [
    {
      faulty: `
steps:
  - equalise
  - unplug mains
#   ^^^^^^^^^^^^
  - fit memory
`,
      mended: `
steps:
  - equalise
  - unplug mains
  - drain residual charge
  - fit memory
`,
    },
  ],
  test(build, report) {
    const pressed = build.file.bench['residual-discharge'];
    if (pressed.value !== undefined) {
      report(
        outcome(atKey(build, pressed), sure(pressed.value, pressed), {
          broken: () =>
            sentence`The power button is not pressed after unplugging, and the supply’s outputs stay charged
              for a while; press
              it once.`,
          fixes: () => [change(pressed, true, 'Press the power button once after unplugging')],
        }),
      );
    }
    const steps = statedSteps(build);
    for (const step of steps) {
      if (step.kind !== 'unplug mains') continue;
      const touch = next(steps, step);
      if (!touch) continue;
      report(
        stepAnswer(build, atStep(build, step), sure(touch.kind === 'drain residual charge' || pressed.value === true), {
          broken: () =>
            sentence`After ${step.label} no step drains residual charge before ${touch.label}; press the power
              button once.`,
          fixes: () => [
            insertSteps(
              build,
              step.index + 1,
              ['drain residual charge'],
              `Insert drain residual charge behind ${step.label}`,
            ),
          ],
        }),
      );
    }
  },
});

/** The next step that drains, or that handles a part. */
function next(steps: readonly Step[], from: Step): Step | undefined {
  return steps.find(
    (step) =>
      step.index > from.index &&
      step.kind !== undefined &&
      (step.kind === 'drain residual charge' || HANDLING.has(step.kind)),
  );
}
