// What is written over the years against the endurance that a drive states.
import { yearsOfUse } from '../../figures/endurance';
import { counted, derive, figure, type Figure } from '../../figures/figure';
import { many } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { atMost, given } from '../../figures/truth';
import { writtenTb } from '../../trade/storage';
import { check } from '../check';
import { atKey, change, outcome, swap, type FixIdea } from '../kit';

const gigabytes = 1e9;
const terabytes = 1e12;

export default check({
  id: 'endurance-short',
  area: 'storage',
  grade: 'shortfall',
  what: 'What is written a day, over the years promised, stays within the endurance that the drive states.',
  why: 'Past its stated endurance a drive may turn read-only or lose data, and its warranty is over.',
  source: 'JEDEC JESD218 usage; common practice: 365 days a year',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: scratch, endurance: 600 TB }
expect:
  drives: { scratch: { written-per-day: 400 GB, years: 5 } }
#                                       ^^^^^^
`,
      mended: `
parts:
  drives:
    - { name: scratch, endurance: 600 TB }
expect:
  drives: { scratch: { written-per-day: 400 GB, years: 4 } }
`,
    },
  ],
  test(build, report) {
    for (const drive of build.parts.drives) {
      const promise = build.file.expect.drives.value?.get(drive.at.name.value ?? '');
      if (!promise?.['written-per-day'].node) continue;
      const perDay = figure(promise['written-per-day'], `data written a day to ${drive.label}`);
      const years = counted(promise.years, `years promised of ${drive.label}`);
      const written = derive(
        `data written to ${drive.label}`,
        'data-size',
        [perDay, years],
        'a day × 365 × years',
        (day, n) => writtenBytes(day, n),
        { unit: 'TB' },
      );
      const stated = figure(drive.part.endurance, `endurance of ${drive.label}`);
      report(
        outcome(atKey(build, promise['written-per-day']), given(atMost(written, stated), drive.at.name), {
          broken: () =>
            sentence`At ${perDay} a day ${drive.label} takes
              ${sentence`${written} in ${many(years, 'year')}; it is good for ${stated}`}.`,
          *fixes(): Iterable<FixIdea | undefined> {
            const whole = wholeYears(yearsOfUse(drive, perDay));
            if (whole >= 1)
              yield change(promise.years, whole, `Lower the promise to ${whole} year${whole === 1 ? '' : 's'}`);
            yield swap(drive);
          },
        }),
      );
    }
  },
});

function writtenBytes(perDayBytes: number, years: number): number {
  return Number.isFinite(perDayBytes) && perDayBytes >= 0 && Number.isFinite(years)
    ? writtenTb(perDayBytes / gigabytes, years) * terabytes
    : NaN;
}

const wholeYears = ({ lo }: Figure): number => (Number.isFinite(lo) ? Math.floor(lo) : 0);
