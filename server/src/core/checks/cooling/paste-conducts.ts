// A paste that conducts or stores charge, with nothing around it covered.
import { say } from '../../figures/say';
import { any, not, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';
import { conducts } from './cooling-kit';

export default check({
  id: 'paste-conducts',
  area: 'cooling',
  grade: 'harm',
  what: 'Around a paste that conducts or stores charge the surroundings are covered.',
  why: 'What is pressed out over the edge bridges contacts and parts beside the lid, and ruins them at the first start.',
  source: 'common practice',
  caution: 'conductive-paste',
  examples: [{
    faulty: `
parts:
  paste: { electrically: conductive }
# ^^^^^
`,
    mended: `
parts:
  paste: { electrically: conductive, barrier: true }
`,
  }],
  test({ parts: { paste } }, tell) {
    if (!paste) return;
    const { barrier } = paste.at;
    const { electrically } = paste.part;
    tell(outcome(at(paste, barrier), any(not(conducts(paste)), sure(barrier.value === true, barrier)), {
      broken: () => electrically.value === 'capacitive'
        ? say`${paste.label} is ${electrically}, and nothing around the lid is covered against it.`
        : say`${paste.label} conducts electricity, and nothing around the lid is covered against it.`,
      fixes: () => [putOn(paste, 'barrier', true, 'Cover the surroundings before the paste goes on'), swap(paste)],
    }));
  },
});
