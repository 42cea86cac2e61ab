// Accepted findings whose day has come.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { acceptCheck } from '../check';
import { outcome } from '../kit';
import { acceptedAt, isThere } from './accepted-kit';

export default acceptCheck({
  id: 'accepted-out-of-date',
  area: 'text',
  grade: 'note',
  what: 'No accepted finding is past the day on which it was to be looked at again.',
  why: 'From that day the finding counts again.',
  source: 'common practice',
  examples: [
    {
      faulty: `
accept:
  - { finding: unknown-key, at: colour, because: A note for the painter., until: 2026-01-31 }
#              ^^^^^^^^^^^
colour: grey
`,
      instead: 'Weigh the finding again, then set a new day or take the line out.',
    },
  ],
  test(build, found, report) {
    for (const [i, line] of (build.file.accept.value ?? []).entries()) {
      const until = line.until.value;
      if (until === undefined) continue;
      report(
        outcome(acceptedAt(build, line, i, 'until'), sure(until > build.today || !isThere(line, found), line.until), {
          broken: () => sentence`The finding ${line.finding} was accepted until ${line.until}; it counts again.`,
        }),
      );
    }
  },
});
