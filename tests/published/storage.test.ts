// Drives and arrays against sfdisk and the published levels.
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ARRAYS, chanceOfReadError, MBR_LIMIT_BYTES, parseErrorRate } from '../../server/src/core/trade/storage';
import type { ArrayLevel } from '../../server/src/core/trade/storage';
import { itWithOracle, runOracle } from './oracle';

/** Drives at least. Source: a distribution's installation guide, RAID levels. */
const LEAST: [ArrayLevel, number][] = [
  ['RAID 1', 2],
  ['RAID 5', 3],
  ['RAID 6', 4],
  ['RAID 10', 4],
];

/** Level, drives, data drives, failures survived. Source: SNIA Common RAID Disk Drive Format (DDF), levels. */
const LEVELS: [ArrayLevel, number, number, number][] = [
  ['RAID 0', 4, 4, 0],
  ['RAID 1', 2, 1, 1],
  ['RAID 1', 3, 1, 2],
  ['RAID 5', 4, 3, 1],
  ['RAID 6', 6, 4, 2],
  ['RAID 10', 6, 3, 1],
];

interface Listing {
  partitiontable: { label: string; sectorsize: number; partitions: { start: number; size: number }[] };
}

/** Bytes up to the end of the largest partition that `sfdisk` makes with an MBR on a sparse file of this size. */
function endOfLargestMbrPartition(sizeBytes: number): number {
  const folder = mkdtempSync(join(tmpdir(), 'mbr-'));
  const image = join(folder, 'disk.img');
  try {
    writeFileSync(image, '');
    truncateSync(image, sizeBytes);
    expect(runOracle('sfdisk', [image], 'label: dos\n,,L\n').status).toBe(0);
    const table = (JSON.parse(runOracle('sfdisk', ['--json', image]).stdout) as Listing).partitiontable;
    expect(table.label).toBe('dos');
    const [partition] = table.partitions;
    return ((partition?.start ?? NaN) + (partition?.size ?? NaN)) * table.sectorsize;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('capacity', () => {
  it('an MBR reaches 2,199,023,255,552 bytes', () => expect(MBR_LIMIT_BYTES).toBe(2_199_023_255_552));

  itWithOracle('sfdisk', 'the largest MBR partition on a drive of 3 TiB ends at the limit, by sfdisk', () => {
    expect(endOfLargestMbrPartition(3 * 2 ** 40)).toBe(MBR_LIMIT_BYTES);
  });

  itWithOracle('sfdisk', 'a drive of 2 TB is used in full, by sfdisk', () => {
    expect(endOfLargestMbrPartition(2e12)).toBeLessThanOrEqual(2e12);
    expect(endOfLargestMbrPartition(2e12)).toBeGreaterThan(2e12 - 2 ** 20);
    expect(2e12).toBeLessThan(MBR_LIMIT_BYTES);
  });
});

describe('arrays', () => {
  it.each(LEAST)('%s needs %i drives', (level, least) => expect(ARRAYS[level].leastDrives).toBe(least));

  it.each(LEVELS)('%s of %i drives holds %i drives’ worth and survives %i', (level, count, data, survives) => {
    expect(ARRAYS[level].dataDrives(count)).toBe(data);
    expect(ARRAYS[level].mayFail(count)).toBe(survives);
  });

  // Source: NIST/SEMATECH e-Handbook of Statistical Methods, Poisson distribution: no event has the chance e^-λ; JEDEC
  // JESD218 for the rate, errors per bits read.
  it.each([
    [12.5, 1e14, 1],
    [12.5, 1e15, 0.1],
    [126, 1e15, 1.008],
  ])('%f TB at one error in %f bits meets one with the chance 1 - e^-%f', (tb, bits, events) => {
    expect(chanceOfReadError(tb * 1e12, bits)).toBeCloseTo(1 - Math.exp(-events), 10);
  });

  // Source: disk makers' data sheets, lines on nonrecoverable read errors.
  it.each([
    '1 in 10^15',
    '<1 in 10^15',
    'less than 1 in 10^15',
    '1 per 1E15',
    '1 sector per 10^15 bits',
    '10^-15',
    '1 in 10¹⁵',
    '1 x 10⁻¹⁵',
    '1 in 1 × 10^15',
    // A multiple of ten, as helium disks have it.
    '<10 in 10^16',
  ])('reads %s as one in 10¹⁵', (text) => expect(parseErrorRate(text)).toBe(1e15));

  it.each(['15', '1 in 15', '2 in 10^15', '1 in 10^5', '1 in 10^150', '10E', 'E15'])('asks about %s', (text) =>
    expect(parseErrorRate(text)).toBeUndefined(),
  );
});
