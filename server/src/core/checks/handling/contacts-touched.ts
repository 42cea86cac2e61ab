// Contacts touched by hand.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { slipsIn } from '../work/steps-kit';

export default check({
  id: 'contacts-touched',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what:
    'Boards, cards, modules and processors are held by their edges, not by their contacts. Notes among the ' +
    'steps are read for it too, by a short list of words.',
  why:
    'A finger on a contact discharges straight into the part, and leaves grease that corrodes; the springs ' +
    'of a socket bend at a touch. A board that hangs by its heat sink strains the screws and solder that hold it.',
  source: 'makers’ handbooks and service manuals; common practice',
  limits: ['Notes are read by word lists, in English only; a clause that denies it says nothing.'],
  examples: [
    {
      faulty: `
bench:
  equalise-by: touching bare chassis
  held-by: contacts
#          ^^^^^^^^
`,
      mended: `
bench:
  equalise-by: touching bare chassis
  held-by: edges
`,
    },
  ],
  test(build, report) {
    const held = build.file.bench['held-by'];
    if (held.value !== undefined) {
      report(
        outcome(atKey(build, held), sure(held.value !== 'contacts', held), {
          broken: () =>
            sentence`Parts are held by their ${held}, which discharges into them; hold them by their edges.`,
          fixes: () => [change(held, 'edges', 'Hold them by their edges')],
        }),
      );
    }
    slipsIn(build, report, {
      'contacts touched': {
        done: 'have contacts touched',
        rather: 'hold the part by its edges',
        instead: 'Hold it by its edges.',
      },
      'held by its parts': {
        done: 'hang a part on what is fixed to it',
        rather: 'hold it by its edges',
        instead: 'Hold it by its edges.',
        grade: 'note',
      },
    });
  },
});
