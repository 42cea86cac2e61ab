// Drives on cables against the ports of their kind that are left once the slots are filled.
import { portsFor } from '../../figures/drive-places';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, outcome, swap } from '../kit';
import { some } from './storage-kit';

export default check({
  id: 'ports-short',
  area: 'storage',
  grade: 'stop',
  what: 'There is a port of its kind for each drive on a cable, those that filled slots switch off not counted.',
  why: 'The last drive stays without a port, or sits on one that is dead.',
  source: 'common practice; Serial Attached SCSI: its ports take SATA drives, those of SATA no others',
  limits: [
    'A stated list of ports is complete; one that names no kind is SATA.',
    'A 2.5 in NVMe drive goes by cable to a U.2 port; one on an adapter in a slot names that slot.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { ports: { SATA_1: {}, SATA_2: {} } }
# ^^^^^
  drives:
    - { bus: SATA, shape: 3.5 in, count: 3 }
`,
      instead: 'Choose a board with more ports, a card that brings some, or fewer and larger drives.',
    },
  ],
  test(build, report) {
    const { board } = build.parts;
    if (!board) return;
    for (const [kind, { wanted, left }] of portsFor(build))
      report(
        outcome(kind === 'SATA' ? at(board) : aspectOf(at(board), kind), atMost(wanted, left), {
          broken: () =>
            sentence`${wanted} ${some(wanted, 'drive needs', 'drives need')} a ${kind} port; the build has
              ${left}.`,
          fixes: () => [swap(board)],
        }),
      );
  },
});
