// SATA drives against the data leads in the boxes and on the list.
import { dataLeads, portDrives } from '../../figures/drive-places';
import { say } from '../../figures/say';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { addToList } from '../costs/costs-kit';
import { at, outcome } from '../kit';
import { some } from './storage-kit';

export default check({
  id: 'data-leads-short',
  area: 'storage',
  grade: 'stop',
  what: 'The boxes and the leads bought beside them hold a SATA data lead for each drive on a port.',
  why: 'Boards bring two or four leads, drives bring none: work stops for want of a lead.',
  source: 'common practice',
  examples: [{
    faulty: `
parts:
  board: { ports: { SATA_1: {}, SATA_2: {}, SATA_3: {} }, in-the-box: [SATA data lead x2] }
# ^^^^^
  drives:
    - { bus: SATA, shape: 3.5 in, count: 3, in-the-box: [] }
`,
    mended: `
parts:
  board: { ports: { SATA_1: {}, SATA_2: {}, SATA_3: {} }, in-the-box: [SATA data lead x2] }
  drives:
    - { bus: SATA, shape: 3.5 in, count: 3, in-the-box: [] }
  leads:
    - { kind: SATA data, count: 1 }
`,
  }],
  test(build, tell) {
    const { board } = build.parts;
    const wanted = portDrives(build);
    if (!board || !wanted) return;
    const leads = dataLeads(build);
    tell(outcome(at(board), atMost(wanted, leads), {
      broken: () => say`${wanted} ${some(wanted, 'drive wants', 'drives want')} a SATA data lead; the boxes and the list hold ${leads}.`,
      fixes: () => (Number.isFinite(wanted.hi) ? [addToList(build, 'leads', { kind: 'SATA data', count: wanted.hi - leads.lo }, `Buy ${wanted.hi - leads.lo} SATA data lead${wanted.hi - leads.lo === 1 ? '' : 's'}`)] : []),
    }));
  },
});
