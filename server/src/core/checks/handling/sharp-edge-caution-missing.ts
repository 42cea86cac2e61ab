// Steps with hands at cut sheet metal, and the caution that belongs before them.
import { sentence } from '../../figures/sentence';
import { firstStep, statedCautions } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { speaksOf } from '../../trade/bench-words';
import type { StepKind } from '../../trade/steps';
import { CAUTIONS } from '../../trade/cautions';
import { check } from '../check';
import { addToStep, atStep, stepAnswer } from '../work/steps-kit';
import { writtenCaution } from '../work/caution-kit';

const sharp: ReadonlySet<StepKind> = new Set(['open case', 'set standoffs', 'fit I/O shield', 'fit radiator'] as const);

const caution = CAUTIONS['sharp-edges'];

export default check({
  id: 'sharp-edge-caution-missing',
  area: 'handling',
  grade: 'note',
  caution: 'sharp-edges',
  what:
    'Before the first step at cut sheet metal, a caution speaks of its edges. It is looked for by a short ' +
    'list of words.',
  why: 'Trays, shields and fins cut fingers, and a hand that starts back hits the board.',
  source: 'makers’ handbooks of cases; ANSI Z535.6: before the step',
  limits: ['Free text is read by short word lists, in English only; what they do not recognise is not judged.'],
  examples: [
    {
      faulty: `
steps:
  - equalise
  - fit I/O shield
#   ^^^^^^^^^^^^^^
`,
      mended: `
steps:
  - equalise
  - do: fit I/O shield
    caution:
      word: CAUTION
      hazard: "${caution.hazard}"
      consequence: They could cut fingers.
      avoidance: "${caution.avoidance}"
`,
    },
  ],
  test(build, report) {
    const step = firstStep(build, sharp);
    if (!step) return;
    const said = statedCautions(build).some(
      (caution) => caution.step.index <= step.index && speaksOf('sharp edges', caution.text),
    );
    report(
      stepAnswer(build, atStep(build, step), sure(said), {
        broken: () => sentence`Before ${step.label}, at cut sheet metal, no caution speaks of sharp edges; add one.`,
        fixes: () => [
          addToStep(build, step, 'caution', writtenCaution('sharp-edges'), 'Add the caution for sharp edges'),
        ],
      }),
    );
  },
});
