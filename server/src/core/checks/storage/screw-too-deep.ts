// How far screws reach into a drive against how deep they may go.
import type { Placed } from '../../build/build';
import { byShape } from '../../figures/drive-places';
import { figure, unknown, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import type { Drive } from '../../figures/storage';
import { any, atMost, fits, given, lacking, sure, type Truth } from '../../figures/truth';
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
  limits: ['It goes by the drive’s shape, not the bay’s: on a bracket a small drive keeps its own screws.'],
  caution: 'drive-screws',
  examples: [
    {
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
    },
  ],
  test({ parts: { drives, case: box } }, report) {
    for (const drive of drives) {
      const own = drive.at['screw-length'];
      if ((!own.entry && !box) || !mayBeHoused(drive)) continue;
      const reach = own.entry ? figure(own, `screw length of ${drive.label}`) : bayReach(box!, drive);
      const depth = figure(drive.part['screw-depth'], `screw depth of ${drive.label}`);
      const clips = own.entry ? sure(false) : clipped(box!, drive);
      report(
        outcome(at(drive, own, 'screw-length'), given(any(clips, atMost(reach, depth)), drive.part.shape), {
          broken: () => sentence`The screws reach ${reach} into ${drive.label}; its maker allows ${depth}.`,
          fixes: () => [
            putOn(
              drive,
              'screw-length',
              drive.part['screw-depth'].text,
              `Set the screw length to ${drive.part['screw-depth'].text}`,
            ),
            swap(drive),
          ],
          ...(own.entry || box!.part['bay-screw-length'].node || drive.part['screw-depth'].node
            ? {}
            : { usual: () => `the screws that ${box!.label} brings are no longer than ${drive.label} allows` }),
        }),
      );
    }
  },
});

function bayReach(box: Placed<'case'>, drive: Drive): Figure {
  const label = `screw length of the bays of ${box.label}`;
  const fact = byShape(box.part['bay-screw-length'], drive, label);
  return 'missingFacts' in fact ? unknown('length', label, [fact.missingFacts]) : figure(fact, label);
}

function clipped(box: Placed<'case'>, drive: Drive): Truth {
  const what = `bay thread of ${box.label}`;
  const thread = byShape(box.part['bay-thread'], drive, what);
  return 'missingFacts' in thread ? lacking([thread.missingFacts]) : fits(thread, what, (by) => by === 'clips');
}
