// Hands inside while the supply is on the mains, by the bench’s facts or by the order of the steps.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { powers, statedSteps, type Step } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { HANDLING } from '../../trade/steps';
import { check } from '../check';
import { atKey, change, outcome, type Reporter } from '../kit';
import { atStep, insertSteps, moveStep, stepAnswer } from '../work/steps-kit';

export default check({
  id: 'inside-before-unplugging',
  area: 'handling',
  grade: 'harm',
  caution: 'powered-inside',
  what: 'The power cord is out whenever hands are inside.',
  why:
    'A supply with its cable in keeps parts of a board powered though the machine is off: a slipped tool or ' +
    'a module pulled then ruins it. With the supply’s own switch off technicians differ; makers’ service ' +
    'manuals say unplug first.',
  source: 'makers’ service manuals: unplug before opening',
  limits: ['A firmware update has the board on the mains like a start, unless a service does it.'],
  remarks: ['With the cord in and only the supply’s switch off technicians differ; it is then a note.'],
  examples: [
    {
      faulty: `
steps:
  - equalise
  - fit memory
#   ^^^^^^^^^^
  - unplug mains
`,
      mended: `
steps:
  - equalise
  - unplug mains
  - fit memory
`,
    },
  ],
  test(build, report) {
    const cable = build.file.bench['power-cord'];
    if (cable.value !== undefined) {
      report(
        outcome(atKey(build, cable), sure(cable.value === 'unplugged', cable), {
          broken: () =>
            sentence`Hands are inside with the power cord ${cable}; unplug it first, as makers’ service manuals say.`,
          ...(cable.value === 'plugged, switch off' ? { grade: 'note' as const } : {}),
          fixes: () => [change(cable, 'unplugged', 'Unplug the power cord')],
        }),
      );
    }
    amongSteps(build, report);
  },
});

/**
 * Each first step with hands inside after one that powers the machine; also before an unplugging that only comes
 * later.
 */
function amongSteps(build: Build, report: Reporter): void {
  const steps = statedSteps(build);
  let live: Step | undefined = firstMains(build, steps);
  for (const step of steps) {
    if (step.kind === 'unplug mains') live = undefined;
    else if (powers(build, step)) live = step;
    else if (step.kind !== undefined && HANDLING.has(step.kind)) {
      const since = live;
      report(
        stepAnswer(build, atStep(build, step), sure(!since), {
          broken: () =>
            since!.kind === 'unplug mains'
              ? sentence`${step.label} comes before ${since!.label}; unplug first.`
              : sentence`${step.label} comes after ${since!.label} with the power cord still in; unplug the
                mains between.`,
          fixes: () => [
            since!.kind === 'unplug mains'
              ? moveStep(build, since!, step.index, `Move ${since!.label} before ${step.label}`)
              : insertSteps(
                  build,
                  step.index,
                  ['unplug mains', 'drain residual charge'],
                  `Insert unplug mains before ${step.label}`,
                ),
          ],
        }),
      );
      // One finding for each time the cable is left in.
      live = undefined;
    }
  }
}

/** The first unplugging, where nothing powers the machine before it: until then the cable was in. */
function firstMains(build: Build, steps: readonly Step[]): Step | undefined {
  const first = steps.find((step) => step.kind === 'unplug mains' || powers(build, step));
  return first?.kind === 'unplug mains' ? first : undefined;
}
