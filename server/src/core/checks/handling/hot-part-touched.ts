// Hands on parts that are still hot after a stress test.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { slipsIn } from '../work/steps-kit';

export default check({
  id: 'hot-part-touched',
  area: 'handling',
  grade: 'harm',
  caution: 'hot-parts',
  what:
    'Nobody reaches in before hot parts have cooled. Notes among the steps are read for it too, by a short ' +
    'list of words.',
  why: 'Heat sinks, drives and cards stay hot enough to burn for minutes after a load.',
  source: 'makers’ service manuals; common practice',
  limits: ['Notes are read by word lists, in English only; a clause that denies it says nothing.'],
  examples: [
    {
      faulty: `
bench:
  equalise-by: touching bare chassis
  stress-cool-down: worked on at once
#                   ^^^^^^^^^^^^^^^^^
`,
      mended: `
bench:
  equalise-by: touching bare chassis
  stress-cool-down: left to cool
`,
    },
  ],
  test(build, report) {
    const after = build.file.bench['stress-cool-down'];
    if (after.value !== undefined) {
      report(
        outcome(atKey(build, after), sure(after.value === 'left to cool', after), {
          broken: () =>
            sentence`After a stress test the machine is ${after}, with parts hot enough to burn; let it cool first.`,
          fixes: () => [change(after, 'left to cool', 'Let it cool')],
        }),
      );
    }
    slipsIn(build, report, {
      'hot part touched': {
        done: 'have a hot part touched',
        rather: 'let it cool first',
        instead: 'Let it cool, then reach in.',
      },
    });
  },
});
