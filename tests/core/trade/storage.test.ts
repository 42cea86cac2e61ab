// The old table's limit, arrays, endurance, shapes.
import { describe, expect, it } from 'vitest';
import {
  ARRAYS,
  DAYS_PER_YEAR,
  DRIVE_SHAPES,
  enduranceYears,
  MBR_LIMIT_BYTES,
  writtenTb,
} from '../../../server/src/core/trade/storage';
import type { ArrayLevel } from '../../../server/src/core/trade/storage';
import { expectRefusesBad } from './refuses';

describe('capacity', () => {
  it('beyond the old table', () => {
    expect(MBR_LIMIT_BYTES).toBe(2_199_023_255_552);
  });
});

/** Level, its name, least drives, how many drives’ worth they hold. */
const NAMES: [ArrayLevel, string, number, number][] = [
  ['RAID 0', 'stripe', 2, 2],
  ['RAID 1', 'mirror', 2, 1],
  ['RAID 5', 'stripe with parity', 3, 2],
  ['RAID 6', 'stripe with double parity', 4, 2],
  ['RAID 10', 'stripe of mirrors', 4, 2],
];

describe('arrays', () => {
  it.each(NAMES)('%s is a %s of at least %i', (level, commonName, leastDrives, data) => {
    expect(ARRAYS[level]).toMatchObject({ commonName, leastDrives });
    expect(ARRAYS[level].dataDrives(leastDrives)).toBe(data);
  });
});

describe('endurance', () => {
  it('is used up in years', () => {
    expect(DAYS_PER_YEAR).toBe(365);
    expect(writtenTb(400, 5)).toBe(730);
    expect(enduranceYears(730, 400)).toBe(5);
    expect(enduranceYears(730, 0)).toBe(Infinity);
  });

  it('refuses what cannot be', () => {
    expectRefusesBad('notNegative', 'written per day (GB)', (value) => writtenTb(value, 5));
    expectRefusesBad('notNegative', 'years', (value) => writtenTb(400, value));
    expectRefusesBad('positive', 'endurance (TB)', (value) => enduranceYears(value, 400));
    expectRefusesBad('notNegative', 'written per day (GB)', (value) => enduranceYears(600, value));
  });
});

it('shapes', () => {
  expect(DRIVE_SHAPES).toEqual({
    '3.5 in': { widthMm: 101.6, lengthMm: 147, heightsMm: [26.1], thread: '6-32 UNC' },
    '2.5 in': { widthMm: 69.85, lengthMm: 100.2, heightsMm: [7, 9.5, 15], thread: 'M3' },
  });
});
