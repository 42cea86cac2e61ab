// Drives of a finished machine that say they fail, warn, or could not read what they hold.
import { drivePairs } from '../../figures/built-pairs';
import { counted } from '../../figures/figure';
import { many } from '../../figures/lists';
import { sentence, type Sentence } from '../../figures/sentence';
import { all, given, sure, type Truth } from '../../figures/truth';
import type { BuiltDrive } from '../../manifest/as-built';
import { check } from '../check';
import { at, outcome } from '../kit';
import { foundAs, notShown } from './built-kit';

export default check({
  id: 'built-drive-failing',
  area: 'built',
  grade: 'stop',
  what: 'No drive of the machine reports a failure, a warning, or sectors that it could not read.',
  why: 'What fails before the hand-over does not last; “passed” alone stands beside sectors that are already lost.',
  source: 'NVM Express Base Specification: SMART / Health Information; ATA Command Set: SMART',
  examples: [
    {
      faulty: `
parts:
  drives: [{ name: archive, bus: SATA, capacity: 12 TB }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Save what is on it, and exchange the drive.',
      beside: {
        'example.asbuilt.yaml':
          '\nfrom: [smartctl]\ndrives: [{ bus: SATA, capacity: 12 TB, health: passed, media-errors: 8 }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    for (const pair of drivePairs(build).pairs)
      for (const drive of pair.found) {
        const { placed } = pair;
        const { health, warning, 'media-errors': errors } = drive;
        const broken = (): Sentence => words(foundAs(pair), drive);
        const known: Truth[] = [
          ...(health.value === undefined ? [] : [sure(health.value === 'passed', health)]),
          ...(warning.value === undefined ? [] : [sure(!warning.value, warning)]),
          ...(errors.value === undefined ? [] : [sure(errors.value === 0, errors)]),
        ];
        if (health.value === undefined && known.every(({ is }) => is))
          report(notShown(at(placed), health, `the health of ${placed.label}`, { broken }));
        else report(outcome(at(placed), given(all(...known), placed.at.name), { broken }));
      }
  },
});

function words(label: string | Sentence, { health, warning, 'media-errors': errors }: BuiltDrive): Sentence {
  if (health.value === 'failed') return sentence`${label} says that it fails. Save what is on it, and exchange it.`;
  if (warning.value === true) return sentence`${label} raises a critical warning. Save what is on it, and exchange it.`;
  const failed = counted(errors, 'sectors or blocks that failed');
  return sentence`${label} counts ${many(failed, 'sector or block', 'sectors or blocks')} that it could not read or had
    to replace. Exchange it.`;
}
