// Drives with a housing of their own against the SATA power plugs.
import { drivePlugs, housedDrives } from '../../figures/drive-places';
import { say } from '../../figures/say';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { some } from './storage-kit';

export default check({
  id: 'drive-power-short',
  area: 'storage',
  grade: 'stop',
  what: 'The supply and the leads bought beside it have a SATA power plug for each drive.',
  why: 'The last drive stays dark, or is fed through a makeshift that may burn.',
  source: 'Serial ATA specification, power connector; common practice',
  examples: [{
    faulty: `
parts:
  supply: { plugs: { SATA power: 2 } }
# ^^^^^^
  drives:
    - { bus: SATA, shape: 3.5 in, count: 3 }
`,
    instead: 'Choose a supply with more SATA power plugs, or one of its own further leads.',
  }],
  test(build, tell) {
    const { supply } = build.parts;
    const wanted = housedDrives(build);
    const plugs = drivePlugs(build);
    if (!supply || !wanted || !plugs) return;
    tell(outcome(at(supply), atMost(wanted, plugs), {
      broken: () => say`${wanted} ${some(wanted, 'drive wants', 'drives want')} a SATA power plug; there ${some(plugs, 'is', 'are')} ${plugs}.`,
      fixes: () => [swap(supply)],
    }));
  },
});
