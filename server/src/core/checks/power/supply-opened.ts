// A supply that is opened.
import { sentence } from '../../figures/sentence';
import { fits } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { slipsIn } from '../work/steps-kit';

export default check({
  id: 'supply-opened',
  area: 'power',
  grade: 'harm',
  what: 'The supply’s own housing stays closed.',
  why: 'Its capacitors hold up to 400 V after it is unplugged; nothing inside is for a builder to mend.',
  source: 'makers’ handbooks; stored energy E = C U² / 2',
  limits: [
    'It is judged from `bench.supply-cover` and from the notes of steps, which are read by word lists, in English ' +
      'only.',
  ],
  caution: 'mains-inside-supply',
  examples: [
    {
      faulty: `
bench: { supply-cover: opened }
#                      ^^^^^^
`,
      mended: `
bench: { supply-cover: closed }
`,
    },
  ],
  test(build, report) {
    const cover = build.file.bench['supply-cover'];
    if (cover.entry) {
      report(
        outcome(
          atKey(build, cover),
          fits(cover, 'whether the supply stays closed', (is) => is === 'closed'),
          {
            broken: () => sentence`The supply’s housing is opened, and its capacitors stay charged; leave it closed.`,
            fixes: () => [change(cover, 'closed', 'Leave the supply closed')],
          },
        ),
      );
    }
    slipsIn(build, report, {
      'supply opened': {
        done: 'have the supply opened, whose capacitors stay charged after it is unplugged',
        rather: 'leave it closed, and replace a faulty one whole',
        instead: 'Leave the supply closed; replace a faulty one whole.',
      },
    });
  },
});
