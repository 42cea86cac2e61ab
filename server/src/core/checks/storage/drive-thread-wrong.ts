// The thread of the screws against the thread of a drive's holes.
import { byShape } from '../../figures/drive-places';
import { uniqueMissing } from '../../figures/missing-facts';
import { missing, type Missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import type { Drive } from '../../figures/storage';
import { given, lacking, sure, type Truth } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { DRIVE_THREADS } from '../../trade/storage';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { mayBeHoused } from './storage-kit';

export default check({
  id: 'drive-thread-wrong',
  area: 'storage',
  grade: 'harm',
  what: 'The screws that hold each drive have the thread of its holes.',
  why:
    'An M3 and a 6-32 screw start in each other’s holes and then strip the drive’s thread; 3.5 in drives ' +
    'take 6-32, 2.5 in drives M3.',
  source: 'SFF-8301 and SFF-8201',
  limits: ['It goes by the drive’s shape, not the bay’s: on a bracket a small drive keeps its own screws.'],
  caution: 'drive-screws',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, shape: 3.5 in, screw: M3 }
#                                            ^^
`,
      mended: `
parts:
  drives:
    - { name: archive, shape: 3.5 in, screw: 6-32 }
`,
    },
  ],
  test({ parts: { drives, case: box } }, report) {
    for (const drive of drives) {
      const own = drive.at.screw;
      if ((!own.entry && !box) || !mayBeHoused(drive)) continue;
      const screw = own.entry ? own : byShape(box!.part['bay-thread'], drive, `bay thread of ${box!.label}`);
      const wants = threadOf(drive);
      report(
        outcome(at(drive, own, 'screw'), given(judge(drive, screw, wants), drive.part.shape), {
          broken: () =>
            sentence`${own.entry ? 'The screws are' : sentence`The screws of ${box!.label} for its shape are`}
              ${screw as Fact<string>}; ${drive.label} takes ${wants!}.`,
          fixes: () => [putOn(drive, 'screw', wants!, `Set the screw to ${wants!}`)],
          ...(own.entry || box!.part['bay-thread'].node || isOdd(drive)
            ? {}
            : { usual: () => `the screws that ${box!.label} brings fit ${drive.label}` }),
        }),
      );
    }
  },
});

/** Whether a drive states another thread than the one that the standard gives its shape. */
const isOdd = (drive: Drive): boolean =>
  drive.part.thread.node !== undefined && drive.part.thread.value !== standardThread(drive);

function standardThread({ part: { shape } }: Drive): string | undefined {
  const standard = shape.value === '2.5 in' || shape.value === '3.5 in' ? DRIVE_THREADS[shape.value] : undefined;
  return standard?.replace(' UNC', '');
}

/** The thread a drive states; else the one that the standard gives its shape. */
const threadOf = (drive: Drive): string | undefined =>
  drive.part.thread.entry ? drive.part.thread.value : standardThread(drive);

function judge(
  drive: Drive,
  screw: Fact<string> | { readonly missingFacts: Missing },
  wants: string | undefined,
): Truth {
  const { thread, shape } = drive.part;
  const own =
    wants === undefined
      ? [missing(shape.value === undefined && !thread.entry ? shape : thread, `thread of ${drive.label}`)]
      : [];
  if ('missingFacts' in screw) return lacking(uniqueMissing([{ missing: own }, { missing: [screw.missingFacts] }]));
  if (screw.value === 'clips') return sure(true, screw);
  const missingFacts = [...own, ...(screw.value === undefined ? [missing(screw, `screw of ${drive.label}`)] : [])];
  return missingFacts.length > 0 ? lacking(missingFacts) : sure(screw.value === wants, screw, thread);
}
