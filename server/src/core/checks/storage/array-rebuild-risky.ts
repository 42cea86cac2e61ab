// Arrays of one parity whose rebuild is likelier than not to meet a sector that cannot be read.
import { decidedBy, derive, known, missing, number, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { arrayDrives, arrayMakes, errorRate, smallestDrive, type ArrayDrives } from '../../figures/storage';
import { atMost, given, lacking } from '../../figures/truth';
import { ARRAY_KINDS, arraySurvives, type ArrayKind } from '../../trade/arrays';
import { chanceOfReadError } from '../../trade/storage';
import { check } from '../check';
import { atKey, change, outcome, type FixIdea } from '../kit';

export default check({
  id: 'array-rebuild-risky',
  area: 'storage',
  grade: 'shortfall',
  what: 'An array of one parity is likelier than not to be rebuilt without meeting a sector that cannot be read.',
  why:
    'With one drive lost, one parity has nothing left against a sector that cannot be read: the rebuild stops there, ' +
    'or the data under it are gone.',
  source: 'JEDEC JESD218: uncorrectable errors per bits read; 1 − (1 − rate)^bits; common practice: one in two',
  limits: [
    'The rate is the one that the drive’s maker states; without it, that of its class: one in 10¹⁴ to 10¹⁵ bits for ' +
      'disks, to 10¹⁷ for others (common practice).',
  ],
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, shape: 3.5 in, capacity: 18 TB, count: 8, unrecoverable-errors: 1 in 10^15 }
expect:
  arrays: { vault: { kind: single parity, drives: [archive] } }
#                          ^^^^^^^^^^^^^
`,
      mended: `
parts:
  drives:
    - { name: archive, shape: 3.5 in, capacity: 18 TB, count: 8, unrecoverable-errors: 1 in 10^15 }
expect:
  arrays: { vault: { kind: double parity, drives: [archive] } }
`,
    },
  ],
  test(build, report) {
    const limit = known(50, 'percent', 'chance that is taken as likely', { unit: '%', source: 'common practice' });
    for (const [name, array] of build.file.expect.arrays.value ?? []) {
      const kind = array.kind.value as ArrayKind | undefined;
      const names = array.drives.value?.map((item) => item.value ?? '');
      const drives = names && arrayDrives(build, names);
      if (kind !== 'single parity' || (drives && !arrayMakes(kind, drives.count))) continue;
      if (!drives) {
        report(outcome(atKey(build, array.kind), lacking([missing(array.drives, `drives of ${name}`)]), { broken }));
        continue;
      }
      const read = readInRebuild(name, drives);
      const chance = chanceOf(name, drives, read);
      report(
        outcome(atKey(build, array.kind), given(atMost(chance, limit), array.kind, array.drives), {
          broken: () =>
            sentence`Rebuilding ${name} reads ${read}, with a chance of ${chance} to meet a sector that
              cannot be read and
              no parity left to make up for it.`,
          fixes: () => stronger(array.kind, drives.count),
        }),
      );
    }
  },
});

const broken = () => sentence``;

/** All drives but the new one are read from end to end. */
function readInRebuild(name: string, drives: ArrayDrives): Figure {
  const others = decidedBy(
    number(drives.count - 1, `drives read in a rebuild of ${name}`),
    ...drives.entries.flatMap(({ at }) => [at.name, at.count]),
  );
  return derive(
    `read in a rebuild of ${name}`,
    'data-size',
    [others, smallestDrive(drives)],
    'drives left × smallest drive',
    (count, bytes) => count * bytes,
    { unit: 'TB' },
  );
}

const chanceOf = (name: string, drives: ArrayDrives, read: Figure): Figure =>
  derive(
    `chance of an error in a rebuild of ${name}`,
    'percent',
    [read, errorRate(drives)],
    '1 − (1 − rate)^bits',
    (bytes, bits) =>
      bytes >= 0 && Number.isFinite(bytes) && Number.isFinite(bits) ? 100 * chanceOfReadError(bytes, bits) : Number.NaN,
    { unit: '%' },
  );

/** Kinds that survive more, and that so many drives make. */
function* stronger(kind: Parameters<typeof change>[0], drives: number): Iterable<FixIdea | undefined> {
  for (const other of ARRAY_KINDS)
    if (other === 'double parity' || other === 'striped mirrors')
      if (arrayMakes(other, drives) && arraySurvives(other, drives) >= 1)
        yield change(kind, other, `Join them as ${other}`);
}
