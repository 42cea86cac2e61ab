// Drives with a housing of their own against the SATA power connectors.
import { driveConnectors, housedDrives } from '../../figures/drive-places';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { some } from './storage-kit';

export default check({
  id: 'drive-power-short',
  area: 'storage',
  grade: 'stop',
  what: 'The supply and the cables bought beside it have a SATA power connector for each drive.',
  why: 'The last drive stays dark, or is fed through a makeshift that may burn.',
  source: 'Serial ATA specification, power connector; common practice',
  limits: ['A stated list of connectors is complete: a kind that it leaves out is none.'],
  remarks: ['It counts SATA power for drives; other connectors are judged by `power-cables-missing`.'],
  examples: [
    {
      faulty: `
parts:
  supply: { connectors: { SATA power: 2 } }
# ^^^^^^
  drives:
    - { bus: SATA, shape: 3.5 in, count: 3 }
`,
      instead: 'Choose a supply with more SATA power connectors, or one of its own further cables.',
    },
  ],
  test(build, report) {
    const { supply } = build.parts;
    const wanted = housedDrives(build);
    const connectors = driveConnectors(build);
    if (!supply || !wanted || !connectors) return;
    report(
      outcome(at(supply), atMost(wanted, connectors), {
        broken: () =>
          sentence`${wanted} ${some(wanted, 'drive needs', 'drives need')} a SATA power connector; supply and cables
            have ${connectors}.`,
        fixes: () => [swap(supply)],
      }),
    );
  },
});
