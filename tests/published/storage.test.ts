// Drives and arrays against sfdisk, GNU units and the published levels.
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ARRAYS, arrayOf, attributeAccepted, HEALTH_ATTRIBUTES, MBR_LIMIT_BYTES, needsGpt, tbFromTib, tibFromTb } from '../../server/src/core/trade/storage';
import type { ArrayLevel } from '../../server/src/core/trade/storage';
import { expectNear } from './near';
import { itWithOracle, runOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

/** Drives at least. Source: a distribution's installation guide, RAID levels. */
const LEAST: [ArrayLevel, number][] = [['RAID 1', 2], ['RAID 5', 3], ['RAID 6', 4], ['RAID 10', 4]];

/** Level, drives, data drives, failures survived. Source: SNIA Common RAID Disk Drive Format (DDF), levels. */
const LEVELS: [ArrayLevel, number, number, number][] = [
  ['RAID 0', 4, 4, 0], ['RAID 1', 2, 1, 1], ['RAID 1', 3, 1, 2], ['RAID 5', 4, 3, 1], ['RAID 6', 6, 4, 2], ['RAID 10', 6, 3, 1],
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
    expect(needsGpt(2e12)).toBe(false);
  });

  itWithOracle('units', 'TB and TiB as GNU units has them', () => {
    expectNear(tibFromTb(12), units('12 TB', 'TiB'), TOLERANCES.workedByUnits);
    expectNear(tbFromTib(12), units('12 TiB', 'TB'), TOLERANCES.workedByUnits);
  });
});

/** Attribute and its name. Source: smartmontools, drive database, default names of attributes. */
const ATTRIBUTES: [number, RegExp][] = [[5, /reallocated sectors/], [187, /reported uncorrect/], [197, /pending sectors/], [198, /offline uncorrectable/], [199, /CRC errors/]];

describe('health', () => {
  it.each(ATTRIBUTES)('attribute %i is %s', (id, name) => expect(HEALTH_ATTRIBUTES.find((entry) => entry.id === id)?.name).toMatch(name));

  // Source: common practice: four that stay at zero, and errors of the lead, which only must not go on.
  it('accepts a past of lead errors and none of lost sectors', () => {
    expect(ATTRIBUTES.map(([id]) => attributeAccepted(id, 1, 1))).toEqual([false, false, false, false, true]);
    expect(attributeAccepted(199, 1, 2)).toBe(false);
  });
});

describe('arrays', () => {
  it.each(LEAST)('%s needs %i drives', (level, least) => expect(ARRAYS[level].leastDrives).toBe(least));

  it.each(LEVELS)('%s of %i drives holds %i drives’ worth and survives %i', (level, count, data, survives) => {
    const drives = Array.from({ length: count }, () => 4);
    expect(arrayOf(level, drives)).toEqual({ capacityTb: data * 4, mayFail: survives });
  });

  it('an array of unequal drives counts the smallest (an encyclopedia: 120 GB striped with 320 GB is 240 GB)', () => {
    expectNear(arrayOf('RAID 0', [0.12, 0.32]).capacityTb, 0.24, TOLERANCES.exact);
  });
});
