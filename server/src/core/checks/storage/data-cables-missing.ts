// SATA drives against the data cables in the boxes and on the list.
import { dataCables, portDrives } from '../../figures/drive-places';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { addToList } from '../costs/costs-kit';
import { at, outcome } from '../kit';
import { some } from './storage-kit';

export default check({
  id: 'data-cables-missing',
  area: 'storage',
  grade: 'stop',
  what: 'The boxes and the cables bought beside them hold a SATA data cable for each drive on a port.',
  why: 'Boards bring two or four cables, drives bring none: work stops for want of a cable.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  board: { ports: { SATA_1: {}, SATA_2: {}, SATA_3: {} }, in-the-box: [SATA data cable x2] }
# ^^^^^
  drives:
    - { bus: SATA, shape: 3.5 in, count: 3, in-the-box: [] }
`,
      mended: `
parts:
  board: { ports: { SATA_1: {}, SATA_2: {}, SATA_3: {} }, in-the-box: [SATA data cable x2] }
  drives:
    - { bus: SATA, shape: 3.5 in, count: 3, in-the-box: [] }
  cables:
    - { kind: SATA data, count: 1 }
`,
    },
  ],
  test(build, report) {
    const { board } = build.parts;
    const wanted = portDrives(build);
    if (!board || !wanted) return;
    const cables = dataCables(build);
    report(
      outcome(at(board), atMost(wanted, cables), {
        broken: () =>
          sentence`${wanted} ${some(wanted, 'drive needs', 'drives need')} a SATA data cable;
            the boxes and the list hold
            ${cables}.`,
        fixes: () =>
          Number.isFinite(wanted.hi)
            ? [
                addToList(
                  build,
                  'cables',
                  { kind: 'SATA data', count: wanted.hi - cables.lo },
                  `Buy ${wanted.hi - cables.lo} SATA data cable${wanted.hi - cables.lo === 1 ? '' : 's'}`,
                ),
              ]
            : [],
      }),
    );
  },
});
