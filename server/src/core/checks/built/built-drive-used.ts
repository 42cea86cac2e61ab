// Hours and wear of the drives of a finished machine, which are to be new.
import { drivePairs } from '../../figures/built-pairs';
import { figure, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { toBase } from '../../quantity';
import { NEW_DRIVE_HOURS, NEW_DRIVE_WORN_PERCENT } from '../../trade/reported';
import { check } from '../check';
import { aspectOf, at, outcome } from '../kit';
import { foundAs, notShown } from './built-kit';

const source = 'common practice';

export default check({
  id: 'built-drive-used',
  area: 'built',
  grade: 'shortfall',
  what: 'A drive that was put into the machine has run no longer, and is worn no further, than a new one.',
  why: 'Used drives are sold as new; part of their life is gone, and with it part of their warranty.',
  source:
    'NVM Express Base Specification: SMART / Health Information; common practice: 1,000 h and 5 % for a new drive',
  limits: ['Of a drive that is known to be used, accept it.'],
  examples: [
    {
      faulty: `
parts:
  drives: [{ name: archive, bus: SATA, capacity: 12 TB }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Ask the seller, or exchange the drive.',
      beside: {
        'example.asbuilt.yaml': '\nfrom: [smartctl]\ndrives: [{ bus: SATA, capacity: 12 TB, hours: 9829 h }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const most = known(toBase(NEW_DRIVE_HOURS, 'h'), 'time', 'hours that a new drive has run', { unit: 'h', source });
    const wear = known(NEW_DRIVE_WORN_PERCENT, 'percent', 'wear of a new drive', { unit: '%', source });
    for (const pair of drivePairs(build).pairs)
      for (const { hours, worn } of pair.found) {
        const { placed } = pair;
        const name = foundAs(pair);
        const ran = figure(hours, `hours that ${placed.label} has run`);
        const tired = () => sentence`${name} has run for ${ran}; a new drive has run for at most ${most}.`;
        if (hours.value) report(outcome(aspectOf(at(placed), 'hours'), atMost(ran, most), { broken: tired }));
        else
          report(notShown(aspectOf(at(placed), 'hours'), hours, `how long ${placed.label} has run`, { broken: tired }));
        if (!worn.value) continue;
        const used = figure(worn, `wear of ${placed.label}`);
        report(
          outcome(aspectOf(at(placed), 'wear'), atMost(used, wear), {
            broken: () => sentence`${name} is worn to ${used}; a new drive is worn to at most ${wear}.`,
          }),
        );
      }
  },
});
