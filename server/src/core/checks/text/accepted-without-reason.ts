// Accepted findings that do not say why.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { acceptCheck } from '../check';
import { outcome } from '../kit';
import { acceptedAt, isThere } from './accepted-kit';

export default acceptCheck({
  id: 'accepted-without-reason',
  area: 'text',
  grade: 'shortfall',
  what: 'Every accepted finding says why it is accepted.',
  why: 'Without a reason nobody can tell later whether it still holds; until one is given the finding stays.',
  source: 'common practice',
  examples: [
    {
      faulty: `
accept:
  - { finding: unknown-key, at: colour }
#              ^^^^^^^^^^^
colour: grey
`,
      instead: 'Write the reason under `because:`.',
    },
  ],
  test(build, found, report) {
    for (const [i, line] of (build.file.accept.value ?? []).entries()) {
      report(
        outcome(
          acceptedAt(build, line, i, 'because'),
          sure(!!line.because.value || !isThere(line, found), line.because),
          {
            broken: () => sentence`No reason is given for accepting ${line.finding}, so the finding stays.`,
          },
        ),
      );
    }
  },
});
