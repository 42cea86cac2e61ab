// Capacity, arrays, endurance, shapes, health.
import { describe, expect, it } from 'vitest';
import {
  arrayOf, ARRAYS, attributeAccepted, BYTES_PER_GB, BYTES_PER_GIB, BYTES_PER_TB, BYTES_PER_TIB, DAYS_PER_YEAR, DRIVE_SHAPES,
  enduranceTbFromDailyWrites, enduranceYears, HEALTH_ATTRIBUTES, MBR_LIMIT_BYTES, needsGpt, tbFromTib, tibFromTb, writtenTb,
} from '../../../server/src/core/trade/storage';
import type { ArrayLevel } from '../../../server/src/core/trade/storage';
import { expectRefusal, expectRefusesBad } from './refuses';

describe('capacity', () => {
  it('in two kinds of unit', () => {
    expect([BYTES_PER_GB, BYTES_PER_GIB, BYTES_PER_TB, BYTES_PER_TIB]).toEqual([1e9, 1_073_741_824, 1e12, 1_099_511_627_776]);
    expect(tibFromTb(2)).toBeCloseTo(1.818989, 6);
    expect(tbFromTib(1)).toBe(1.099511627776);
    expectRefusesBad('notNegative', 'capacity (TB)', tibFromTb);
    expectRefusesBad('notNegative', 'capacity (TiB)', tbFromTib);
  });

  it('beyond the old table', () => {
    expect(MBR_LIMIT_BYTES).toBe(2_199_023_255_552);
    expect(needsGpt(0)).toBe(false);
    expect(needsGpt(MBR_LIMIT_BYTES)).toBe(false);
    expect(needsGpt(MBR_LIMIT_BYTES + 1)).toBe(true);
    expectRefusesBad('notNegative', 'capacity (bytes)', needsGpt);
  });
});

/** Level, its name, least drives, what they hold at 4 TB each. */
const NAMES: [ArrayLevel, string, number, number][] = [
  ['RAID 0', 'stripe', 2, 8], ['RAID 1', 'mirror', 2, 4], ['RAID 5', 'stripe with parity', 3, 8],
  ['RAID 6', 'stripe with double parity', 4, 8], ['RAID 10', 'stripe of mirrors', 4, 8],
];

describe('arrays', () => {
  it.each(NAMES)('%s is a %s of at least %i', (level, commonName, leastDrives, capacityTb) => {
    expect(ARRAYS[level]).toMatchObject({ commonName, leastDrives });
    const least = Array.from({ length: leastDrives }, () => 4);
    expect(arrayOf(level, least).capacityTb).toBe(capacityTb);
    const message = `number of drives in a ${level} must be a whole number of at least ${leastDrives}, not ${leastDrives - 1}`;
    expectRefusal(() => arrayOf(level, least.slice(1)), message);
  });

  it('capacity and failures', () => {
    expect(arrayOf('RAID 0', [4, 4, 4])).toEqual({ capacityTb: 12, mayFail: 0 });
    expect(arrayOf('RAID 1', [4, 4, 4])).toEqual({ capacityTb: 4, mayFail: 2 });
    expect(arrayOf('RAID 5', [4, 4, 6])).toEqual({ capacityTb: 8, mayFail: 1 });
    expect(arrayOf('RAID 6', [4, 4, 4, 4, 4])).toEqual({ capacityTb: 12, mayFail: 2 });
    expect(arrayOf('RAID 10', [4, 4, 4, 4])).toEqual({ capacityTb: 8, mayFail: 1 });
  });

  it('refuse an odd RAID 10 and a drive of no size', () => {
    expectRefusal(() => arrayOf('RAID 10', [4, 4, 4, 4, 4]), 'number of drives in a RAID 10 must be even, not 5');
    expectRefusesBad('positive', 'drive capacity (TB)', (value) => arrayOf('RAID 0', [4, value]));
  });
});

describe('endurance', () => {
  it('is used up in years', () => {
    expect(DAYS_PER_YEAR).toBe(365);
    expect(writtenTb(400, 5)).toBe(730);
    expect(enduranceYears(730, 400)).toBe(5);
    expect(enduranceYears(730, 0)).toBe(Infinity);
    expect(enduranceTbFromDailyWrites(0.5, 2, 5)).toBe(1825);
  });

  it('refuses what cannot be', () => {
    expectRefusesBad('notNegative', 'written per day (GB)', (value) => writtenTb(value, 5));
    expectRefusesBad('notNegative', 'years', (value) => writtenTb(400, value));
    expectRefusesBad('positive', 'endurance (TB)', (value) => enduranceYears(value, 400));
    expectRefusesBad('notNegative', 'written per day (GB)', (value) => enduranceYears(600, value));
    expectRefusesBad('notNegative', 'drive writes a day', (value) => enduranceTbFromDailyWrites(value, 2, 5));
    expectRefusesBad('positive', 'capacity (TB)', (value) => enduranceTbFromDailyWrites(1, value, 5));
    expectRefusesBad('positive', 'warranty (years)', (value) => enduranceTbFromDailyWrites(1, 2, value));
  });
});

it('shapes', () => {
  expect(DRIVE_SHAPES).toEqual({
    '3.5 in': { widthMm: 101.6, lengthMm: 147, heightsMm: [26.1], thread: '6-32 UNC' },
    '2.5 in': { widthMm: 69.85, lengthMm: 100.2, heightsMm: [7, 9.5, 15], thread: 'M3' },
  });
});

describe('health', () => {
  it('looks at five attributes', () => {
    expect(HEALTH_ATTRIBUTES).toEqual([
      { id: 5, name: 'reallocated sectors', accept: 'zero' },
      { id: 187, name: 'reported uncorrectable errors', accept: 'zero' },
      { id: 197, name: 'pending sectors', accept: 'zero' },
      { id: 198, name: 'offline uncorrectable sectors', accept: 'zero' },
      { id: 199, name: 'interface CRC errors', accept: 'not rising' },
    ]);
  });

  it.each([
    [5, 0, 0, true], [5, 0, 1, false], [5, 1, 0, true], [197, 8, 8, false],
    [199, 3, 3, true], [199, 3, 4, false], [199, 3, 2, true], [194, 30, 40, undefined],
  ])('attribute %i from %i to %i: %j', (id, before, after, accepted) => expect(attributeAccepted(id, before, after)).toBe(accepted));

  it('refuses values that cannot be', () => {
    expectRefusal(() => attributeAccepted(5, -1, 0), 'raw value before must be a whole number of at least 0, not -1');
    expectRefusal(() => attributeAccepted(5, 0, 0.5), 'raw value after must be a whole number of at least 0, not 0.5');
  });
});
