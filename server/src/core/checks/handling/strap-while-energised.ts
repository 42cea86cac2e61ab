// A strap worn while the machine is on the mains, by the bench’s facts or by the order of the steps.
import type { Build } from '../../build/build';
import { missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { powers, statedSteps, type Step } from '../../figures/steps';
import { strapFacts, wearsStrap } from '../../figures/strap';
import { given, lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { change, outcome, type Outcome, type Reporter } from '../kit';
import { atBench, atStep, insertSteps, stepAnswer } from '../work/steps-kit';

export default check({
  id: 'strap-while-energised',
  area: 'handling',
  grade: 'harm',
  caution: 'strap-on-energised',
  what: 'No strap is worn while the machine is on the mains.',
  why:
    'A strap ties its wearer to earth: a live part touched then sends a current through the body. With the ' +
    'cable in and only the supply’s switch off, technicians differ; makers’ service manuals say unplug first.',
  source: 'ESD TR20.20, not where 250 V or more is exposed; stricter here',
  remarks: ['With the cord in and only the supply’s switch off technicians differ; it is then a note.'],
  examples: [
    {
      faulty: `
bench:
  strap: { series-resistance: 1 MΩ, clipped-to: bare chassis }
  power-cord: plugged, switch on
#             ^^^^^^^^^^^^^^^^^^
`,
      mended: `
bench:
  strap: { series-resistance: 1 MΩ, clipped-to: bare chassis }
  power-cord: unplugged
`,
    },
  ],
  test(build, report) {
    if (!wearsStrap(build)) return;
    report(atMains(build));
    amongSteps(build, report);
  },
});

function atMains(build: Build): Outcome {
  const cable = build.file.bench['power-cord'];
  const truth =
    cable.value === undefined
      ? lacking([missing(cable, 'whether the power cord is out')], cable)
      : sure(cable.value === 'unplugged', cable);
  const off = cable.value === 'plugged, switch off';
  return outcome(atBench(build, cable), given(truth, ...strapFacts(build)), {
    broken: () =>
      off
        ? sentence`A strap is worn with the power cord ${cable}. Technicians differ; makers’ service manuals
          say unplug
          first.`
        : sentence`A strap is worn with the power cord ${cable}: a live part touched sends its current through the
          wearer. Unplug the cord first.`,
    ...(off ? { grade: 'note' as const } : {}),
    fixes: () => [change(cable, 'unplugged', 'Unplug the power cord')],
  });
}

/** Each step that powers the machine, while a strap put on before has not come off. */
function amongSteps(build: Build, report: Reporter): void {
  let worn: Step | undefined;
  for (const step of statedSteps(build)) {
    if (step.kind === 'wear strap') worn = step;
    else if (step.kind === 'take off strap') worn = undefined;
    else if (powers(build, step)) {
      const on = worn;
      report(
        stepAnswer(build, atStep(build, step), given(sure(!on), ...strapFacts(build)), {
          broken: () =>
            sentence`${step.label} comes while the strap from ${on!.label} is still on; take it off before.`,
          fixes: () => [
            insertSteps(build, step.index, ['take off strap'], `Insert take off strap before ${step.label}`),
          ],
        }),
      );
    }
  }
}
