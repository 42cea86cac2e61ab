// Cautions that stand behind the step they belong to.
import { sentence } from '../../figures/sentence';
import { statedCautions, statedSteps } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atFact, outcome } from '../kit';
import { moveStep } from './steps-kit';
import { ownCaution } from './caution-kit';

export default check({
  id: 'caution-after-step',
  area: 'work',
  grade: 'harm',
  what: 'Each caution stands before the step it belongs to.',
  why: 'Whoever reads a sheet line by line has done the step when the caution comes.',
  source: 'ANSI Z535.6: a safety message stands before the step it applies to',
  examples: [
    {
      faulty: `
steps:
  - equalise
  - fit memory
  - caution:
      for: fit memory
#          ^^^^^^^^^^
      word: NOTICE
      hazard: Latches snap.
      consequence: They could break.
      avoidance: Open both.
`,
      mended: `
steps:
  - equalise
  - caution:
      for: fit memory
      word: NOTICE
      hazard: Latches snap.
      consequence: They could break.
      avoidance: Open both.
  - fit memory
`,
    },
  ],
  test(build, report) {
    for (const { step, group } of statedCautions(build)) {
      const belongs = group.for;
      if (belongs.value === undefined || belongs.value === step.kind || !belongs.node) continue;
      const done = statedSteps(build).find((other) => other.kind === belongs.value);
      if (!done) continue;
      report(
        outcome(atFact(belongs, `${step.path}.caution for ${belongs.text}`), sure(step.index < done.index, belongs), {
          broken: () => sentence`The caution for ${belongs} stands behind that step; put it before.`,
          ...ownCaution(belongs.value),
          fixes: () =>
            step.kind === undefined ? [moveStep(build, step, done.index, `Move the caution before ${done.label}`)] : [],
        }),
      );
    }
  },
});
