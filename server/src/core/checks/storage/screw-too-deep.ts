// How far screws reach into a drive against how deep they may go.
import { figure } from '../../figures/figure';
import { say } from '../../figures/say';
import { any, atMost, fits, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap } from '../kit';
import { mayBeHoused } from './storage-kit';

export default check({
  id: 'screw-too-deep',
  area: 'storage',
  grade: 'harm',
  what: 'No screw reaches deeper into a drive than its maker allows.',
  why: 'A screw that is too long presses on the circuit board or the platters’ housing behind the hole.',
  source: 'drive makers’ outlines; SFF-8301 and SFF-8201 leave the depth to them',
  caution: 'drive-screws',
  examples: [{
    faulty: `
parts:
  drives:
    - { name: archive, shape: 2.5 in, screw-depth: 3 mm, screw-length: 4 mm }
#                                                                      ^^^^
`,
    mended: `
parts:
  drives:
    - { name: archive, shape: 2.5 in, screw-depth: 3 mm, screw-length: 3 mm }
`,
  }],
  *test({ parts: { drives, case: box } }) {
    for (const drive of drives) {
      const own = drive.at['screw-length'];
      const fact = own.entry ? own : box?.part['bay-screw-length'];
      if (!fact || !mayBeHoused(drive)) continue;
      const reach = figure(fact, own.entry ? `screw length of ${drive.label}` : `screw length of the bays of ${box!.label}`);
      const depth = figure(drive.part['screw-depth'], `screw depth of ${drive.label}`);
      const clips = own.entry || !box ? sure(false) : fits(box.part['bay-thread'], `bay thread of ${box.label}`, (thread) => thread === 'clips');
      yield outcome({ ...at(drive, own), path: `${drive.path}.screw-length` }, any(clips, atMost(reach, depth)), {
        broken: () => say`The screws reach ${reach} into ${drive.label}; its maker allows ${depth}.`,
        fixes: () => [putOn(drive, 'screw-length', drive.part['screw-depth'].text, `Set the screw length to ${drive.part['screw-depth'].text}`), swap(drive)],
      });
    }
  },
});
