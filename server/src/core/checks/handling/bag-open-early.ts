// Parts that leave their bags before anything is equalised, or long before they are fitted.
import { sentence } from '../../figures/sentence';
import { firstStep } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { EQUALISING } from '../../trade/steps';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { atStep, moveStep, stepAnswer } from '../work/steps-kit';

const opening = new Set(['take parts from bags'] as const);

export default check({
  id: 'bag-open-early',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what: 'Parts stay in their bags until person and part are at one potential, and until they are fitted.',
  why: 'A closed bag shields; an open part on the table meets every charge that comes by.',
  source: 'ANSI/ESD S20.20 and S541; common practice',
  examples: [
    {
      faulty: `
steps:
  - take parts from bags
#   ^^^^^^^^^^^^^^^^^^^^
  - equalise
  - fit processor
`,
      mended: `
steps:
  - equalise
  - take parts from bags
  - fit processor
`,
    },
  ],
  test(build, report) {
    const { bags } = build.file.bench;
    if (bags.value !== undefined) {
      report(
        outcome(atKey(build, bags), sure(bags.value === 'opened part by part', bags), {
          broken: () =>
            sentence`Bags are ${bags}; a part is shielded only while its bag is closed. Open each as its part is
              fitted.`,
          grade: 'note',
          fixes: () => [change(bags, 'opened part by part', 'Open bags part by part')],
        }),
      );
    }
    const open = firstStep(build, opening);
    const equal = firstStep(build, EQUALISING);
    if (!open || !equal) return;
    report(
      stepAnswer(build, atStep(build, open), sure(equal.index < open.index), {
        broken: () =>
          sentence`Parts leave their bags before ${equal.label}: the first hand on them brings whatever charge there
            is. Equalise first.`,
        fixes: () => [moveStep(build, open, equal.index, `Move ${open.label} behind ${equal.label}`)],
      }),
    );
  },
});
