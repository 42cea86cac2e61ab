// Drives of a shape against the case's bays for it.
import { bayFact, countDrives, countedIn, inBay } from '../../figures/drive-places';
import { sentence } from '../../figures/sentence';
import type { Drive } from '../../figures/storage';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap, type FixIdea } from '../kit';
import { some } from './storage-kit';

export default check({
  id: 'bays-short',
  area: 'storage',
  grade: 'stop',
  what:
    'The case has a bay for each drive of a shape; a drive may name a bay of another shape. A shape that the ' +
    'case’s bays leave out has none.',
  why: 'A drive without a bay hangs by its cables, or lies on the board’s solder.',
  source: 'SFF-8301 and SFF-8201: outlines; common practice',
  limits: ['A stated list of bays is complete: a shape that it leaves out is none.'],
  examples: [
    {
      faulty: `
parts:
  case: { bays: { 3.5 in: 1 } }
  drives:
    - { name: archive, bus: SATA, shape: 3.5 in }
    - { name: vault, bus: SATA, shape: 3.5 in }
#     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose a case with more bays, or larger drives and fewer of them.',
    },
  ],
  test(build, report) {
    const { case: box, drives } = build.parts;
    if (!box) return;
    for (const shape of ['3.5 in', '2.5 in']) {
      const belongs = inBay(shape);
      const wanted = countDrives(build, `${shape} drives`, belongs, bayFact);
      const last = drives.findLast((drive) => belongs(drive) !== false);
      if (!wanted || !last) continue;
      const bays = countedIn(box.part.bays, shape, `${shape} bays of ${box.label}`);
      report(
        outcome(at(last, undefined, `bay ${shape}`), atMost(wanted, bays), {
          broken: () =>
            sentence`${wanted} ${some(wanted, 'drive wants', 'drives want')} a ${shape} bay; ${box.label} has ${bays}.`,
          fixes: () => [otherBay(last, shape), swap(box)],
        }),
      );
    }
  },
});

/**
 * A small drive goes into a large bay on a bracket, and back into a bay of its own shape; a large one has no choice.
 */
function otherBay(drive: Drive, shape: string): FixIdea | undefined {
  if (shape === '2.5 in') return putOn(drive, 'bay', '3.5 in', `Fix ${drive.label} in a 3.5 in bay, on a bracket`);
  return drive.part.shape.value === '2.5 in'
    ? putOn(drive, 'bay', '2.5 in', `Fix ${drive.label} in a 2.5 in bay`)
    : undefined;
}
