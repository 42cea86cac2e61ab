// The old table's limit, arrays, endurance, threads.
import { describe, expect, it } from 'vitest';
import {
  ARRAYS,
  DAYS_PER_YEAR,
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

/** Level, least drives, how many drives’ worth they hold. */
const LEVELS: [ArrayLevel, number, number][] = [
  ['RAID 0', 2, 2],
  ['RAID 1', 2, 1],
  ['RAID 5', 3, 2],
  ['RAID 6', 4, 2],
  ['RAID 10', 4, 2],
];

describe('arrays', () => {
  it.each(LEVELS)('%s takes at least %i, which hold %i', (level, leastDrives, data) => {
    expect(ARRAYS[level].leastDrives).toBe(leastDrives);
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
