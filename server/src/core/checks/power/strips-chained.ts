// Socket strips plugged into each other.
import { counted, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { slipsIn } from '../work/steps-kit';

export default check({
  id: 'strips-chained',
  area: 'power',
  grade: 'harm',
  what: 'Between wall and machine there is one socket strip at most.',
  why: 'Each strip in a row adds contacts and load to the first one; chained strips overheat and have burned.',
  source: 'OSHA standard interpretations on 29 CFR 1910.303(b)(2)',
  limits: ['It is judged from `place.mains.strips` and from the notes of steps, read by word lists, in English only.'],
  caution: 'circuit-overload',
  examples: [
    {
      faulty: `
place: { mains: { strips: 2 } }
#                         ^
`,
      mended: `
place: { mains: { strips: 1 } }
`,
    },
  ],
  test(build, report) {
    const { strips } = build.file.place.mains;
    slipsIn(build, report, {
      'strips chained': {
        done: 'have one socket strip hang behind another, and chained strips overheat',
        rather: 'plug one strip into the wall, and the machine into it',
        instead: 'Use one strip, straight into the wall.',
      },
    });
    if (!strips.entry) return;
    const inRow = counted(strips, 'socket strips in a row');
    const most = known(1, 'count', 'strips used as they are listed', {
      source: 'OSHA standard interpretations on 29 CFR 1910.303(b)(2)',
    });
    report(
      outcome(atKey(build, strips), atMost(inRow, most), {
        broken: () =>
          sentence`${inRow} socket strips hang one behind the other; ${most} at most may. Plug the machine’s strip
            into the wall.`,
        fixes: () => [change(strips, 1, 'Plug one strip into the wall, and the machine into it')],
      }),
    );
  },
});
