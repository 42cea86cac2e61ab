// SATA drives against the ports that are left once the slots are filled.
import { portDrives, portsLeft } from '../../figures/drive-places';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { some } from './storage-kit';

export default check({
  id: 'ports-short',
  area: 'storage',
  grade: 'stop',
  what: 'There is a SATA port for each drive that wants one, those that filled slots switch off not counted.',
  why: 'The last drive stays without a port, or sits on one that is dead.',
  source: 'common practice',
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
    const wanted = portDrives(build);
    const left = portsLeft(build);
    if (!board || !wanted || !left) return;
    report(
      outcome(at(board), atMost(wanted, left), {
        broken: () =>
          sentence`${wanted} ${some(wanted, 'drive wants', 'drives want')} a SATA port; ${left}
            ${some(left, 'is', 'are')} left.`,
        fixes: () => [swap(board)],
      }),
    );
  },
});
