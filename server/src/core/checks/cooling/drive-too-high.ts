// The height of the place against what each drive is rated for.
import { copyWith, figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';

/** Drives that state no altitude serve at any place up to this one. */
const leastRatedMm = 2_000_000;
const source = 'common practice: drives are rated for 3000 m or more';

export default check({
  id: 'drive-too-high',
  area: 'cooling',
  grade: 'harm',
  what: 'No drive stands higher above the sea than it is rated for.',
  why: 'The heads of a hard disk fly on air, and every drive is cooled by it: both fail where it is too thin.',
  source: 'common practice; limits, by the drive’s data sheet',
  caution: 'thin-air',
  examples: [
    {
      faulty: `
place: { altitude: 3400 m }
parts:
  drives: [{ name: archive, shape: 3.5 in, highest: 3050 m }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Choose a drive rated for the height, best one without moving parts.',
    },
  ],
  test(build, report) {
    const { altitude } = build.file.place;
    if (!altitude.value) return;
    const height = figure(altitude, 'altitude of the place');
    for (const drive of build.parts.drives) {
      const stated = figure(drive.part.highest, `highest altitude of ${drive.label}`);
      const highest = drive.part.highest.node ? stated : copyWith(stated, { lo: leastRatedMm, unit: 'm', source });
      report(
        outcome(at(drive), atMost(height, highest), {
          broken: () => sentence`${drive.label} is rated for ${highest} at most; the place lies at ${height}.`,
          fixes: () => [swap(drive)],
        }),
      );
    }
  },
});
