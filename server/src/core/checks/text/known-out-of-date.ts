// Known findings whose day has come.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { knownCheck } from '../check';
import { outcome } from '../kit';
import { entryAt } from './known-kit';

export default knownCheck({
  id: 'known-out-of-date',
  area: 'text',
  grade: 'note',
  what: 'No known finding is past the day until which it is let stand.',
  why: 'From that day the finding counts again.',
  source: 'common practice',
  examples: [
    {
      file: 'old.known.yaml',
      faulty: `
files:
  desk.pcbuild.yaml:
    findings:
      - finding: cooler-too-tall
        at: parts.cooler
        grade: stop
        by: station workshop
        until: 2026-01-31
#              ^^^^^^^^^^
`,
      instead: 'Mend what it stands for, or record the known findings anew with a name and a later day.',
    },
  ],
  test(known, today, report) {
    if (today === undefined) return;
    for (const entry of known) {
      const { until } = entry.stated;
      if (until.value === undefined) continue;
      report(
        outcome(entryAt(entry, until), sure(until.value > today, until), {
          broken: () =>
            sentence`${entry.stated.finding} in ${entry.file} was let stand until ${until}; it counts again.`,
        }),
      );
    }
  },
});
