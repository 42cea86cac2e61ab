// A paste that conducts or stores charge, with nothing around it covered.
import { sentence } from '../../figures/sentence';
import { any, not, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';
import { conducts } from './cooling-kit';

export default check({
  id: 'paste-conducts',
  area: 'cooling',
  grade: 'harm',
  what: 'Around a paste that conducts or stores charge the surroundings are covered.',
  why:
    'What is pressed out over the edge bridges contacts and parts beside the lid, and ruins them at the ' +
    'first start.',
  source: 'common practice',
  caution: 'conductive-paste',
  examples: [
    {
      faulty: `
parts:
  paste: { electrically: conductive }
# ^^^^^
`,
      mended: `
parts:
  paste: { electrically: conductive, barrier: true }
`,
    },
  ],
  test({ parts: { paste } }, report) {
    if (!paste) return;
    const { barrier } = paste.at;
    const { electrically } = paste.part;
    report(
      outcome(at(paste, barrier), any(not(conducts(paste)), sure(barrier.value === true, barrier)), {
        broken: () =>
          electrically.value === 'capacitive'
            ? sentence`${paste.label} is ${electrically}, and nothing around the lid is covered against it.`
            : sentence`${paste.label} conducts electricity, and nothing around the lid is covered against it.`,
        fixes: () => [putOn(paste, 'barrier', true, 'Cover the surroundings before the paste goes on'), swap(paste)],
      }),
    );
  },
});
