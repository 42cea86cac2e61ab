// A step with the clock’s coin cell in hand, and the caution that belongs before it.
import { sentence } from '../../figures/sentence';
import { statedCautions, statedSteps } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { handlesCell, speaksOf } from '../../trade/bench-words';
import { CAUTIONS } from '../../trade/cautions';
import { check } from '../check';
import { addToStep, atStep, stepAnswer } from '../work/steps-kit';
import { writtenCaution } from '../work/caution-kit';

const caution = CAUTIONS['coin-cell'];

export default check({
  id: 'coin-cell-caution-missing',
  area: 'handling',
  grade: 'harm',
  caution: 'coin-cell',
  what:
    'Before a coin cell is handled, by a step or by a note that names it, a caution says what it does when ' +
    'swallowed. Both are looked for by short lists of words.',
  why: 'A cell that is swallowed burns through tissue within two hours; whoever has one loose on a table must know it.',
  source: 'makers’ cell warnings; ANSI Z535.6: before the step',
  limits: ['Free text is read by short word lists, in English only; what they do not recognise is not judged.'],
  examples: [
    {
      faulty: `
steps:
  - equalise
  - change coin cell
#   ^^^^^^^^^^^^^^^^
`,
      mended: `
steps:
  - equalise
  - do: change coin cell
    caution:
      word: WARNING
      hazard: ${caution.hazard}
      consequence: "${caution.consequence}"
      avoidance: "${caution.avoidance}"
`,
    },
  ],
  test(build, report) {
    for (const step of statedSteps(build)) {
      if (step.kind !== 'change coin cell' && !handlesCell(step.group.note.text)) continue;
      const said = statedCautions(build).some(
        (caution) => caution.step.index <= step.index && speaksOf('coin cell', caution.text),
      );
      report(
        stepAnswer(build, atStep(build, step), sure(said), {
          broken: () => sentence`Before ${step.label} no caution says what a swallowed coin cell does; add it.`,
          fixes: () => [
            addToStep(build, step, 'caution', writtenCaution('coin-cell'), 'Add the caution for coin cells'),
          ],
        }),
      );
    }
  },
});
