// A vacuum cleaner at the board.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { slipsIn } from '../work/steps-kit';

export default check({
  id: 'vacuum-at-board',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what: 'No vacuum cleaner comes near a board. Notes among the steps are read for it too, by a short list of words.',
  why:
    'Air rushing past a plastic nozzle charges it; the nozzle discharges into the first contact it meets, ' +
    'and pulls small parts off.',
  source: 'makers’ service manuals; common practice',
  limits: ['Notes are read by word lists, in English only; a clause that denies it says nothing.'],
  examples: [
    {
      faulty: `
bench:
  equalise-by: touching bare chassis
  dust-removal: vacuum cleaner
#               ^^^^^^^^^^^^^^
`,
      mended: `
bench:
  equalise-by: touching bare chassis
  dust-removal: canned air
`,
    },
  ],
  test(build, report) {
    const dust = build.file.bench['dust-removal'];
    if (dust.value !== undefined) {
      report(
        outcome(atKey(build, dust), sure(dust.value !== 'vacuum cleaner', dust), {
          broken: () =>
            sentence`Dust is taken off with a ${dust}, whose nozzle charges up; use canned air or a soft brush.`,
          fixes: () => [change(dust, 'canned air', 'Use canned air'), change(dust, 'soft brush', 'Use a soft brush')],
        }),
      );
    }
    slipsIn(build, report, {
      'vacuum cleaner': {
        done: 'bring a vacuum cleaner to the parts, whose nozzle charges up',
        rather: 'use canned air and hold the fans still',
        instead: 'Take dust off with canned air, fans held still.',
      },
    });
  },
});
