// Drives: capacity in two kinds of unit, arrays, endurance, the old partition table's limit, shapes, health attributes.
import { needCount, needNotNegative, needPositive } from './numbers';

/** Bytes in a terabyte as drives are sold, and in a tebibyte as many programs count. Source: IEC 80000-13; GNU units. */
export const BYTES_PER_TB = 1e12;
export const BYTES_PER_TIB = 2 ** 40;
export const BYTES_PER_GB = 1e9;
export const BYTES_PER_GIB = 2 ** 30;

/** What a program that counts in tebibytes shows for a drive sold in terabytes. Source: IEC 80000-13. */
export function tibFromTb(capacityTb: number): number {
  needNotNegative('capacity (TB)', capacityTb);
  return capacityTb * BYTES_PER_TB / BYTES_PER_TIB;
}

/** The other way. Source: IEC 80000-13. */
export function tbFromTib(capacityTib: number): number {
  needNotNegative('capacity (TiB)', capacityTib);
  return capacityTib * BYTES_PER_TIB / BYTES_PER_TB;
}

/** Most bytes a partition table of the MBR kind can address with 512-byte sectors: 2³² × 512. Source: `sfdisk` (util-linux). */
export const MBR_LIMIT_BYTES = 2 ** 32 * 512;

/** Whether a drive needs a GPT to be used in full. Source: as above. */
export function needsGpt(capacityBytes: number): boolean {
  needNotNegative('capacity (bytes)', capacityBytes);
  return capacityBytes > MBR_LIMIT_BYTES;
}

export type ArrayLevel = 'RAID 0' | 'RAID 1' | 'RAID 5' | 'RAID 6' | 'RAID 10';

export interface ArrayRule {
  readonly commonName: string;
  readonly leastDrives: number;
  /** Drives' worth of data that `count` drives hold. */
  readonly dataDrives: (count: number) => number;
  /** Drives that may fail in the worst case with nothing lost. */
  readonly mayFail: (count: number) => number;
}

/**
 * Arrays of equal drives; of unequal ones the smallest counts for all. In a RAID 10 of pairs more may fail,
 * if no pair loses both: only the worst case is promised.
 * Source: SNIA Common RAID Disk Drive Format (DDF) for the levels; least numbers: a distribution's installation guide.
 */
export const ARRAYS: Readonly<Record<ArrayLevel, ArrayRule>> = {
  'RAID 0': { commonName: 'stripe', leastDrives: 2, dataDrives: (count) => count, mayFail: () => 0 },
  'RAID 1': { commonName: 'mirror', leastDrives: 2, dataDrives: () => 1, mayFail: (count) => count - 1 },
  'RAID 5': { commonName: 'stripe with parity', leastDrives: 3, dataDrives: (count) => count - 1, mayFail: () => 1 },
  'RAID 6': { commonName: 'stripe with double parity', leastDrives: 4, dataDrives: (count) => count - 2, mayFail: () => 2 },
  'RAID 10': { commonName: 'stripe of mirrors', leastDrives: 4, dataDrives: (count) => count / 2, mayFail: () => 1 },
};

export interface ArrayResult {
  readonly capacityTb: number;
  /** Drives that may fail in the worst case with nothing lost. */
  readonly mayFail: number;
}

/**
 * Capacity of an array and what it survives. An array is no backup.
 * @throws RangeError with too few drives, a drive without capacity, or an odd number in a RAID 10.
 */
export function arrayOf(level: ArrayLevel, drivesTb: readonly number[]): ArrayResult {
  const rule = ARRAYS[level];
  needCount(`number of drives in a ${level}`, drivesTb.length, rule.leastDrives);
  for (const driveTb of drivesTb) needPositive('drive capacity (TB)', driveTb);
  if (level === 'RAID 10' && drivesTb.length % 2 !== 0) {
    throw new RangeError(`number of drives in a RAID 10 must be even, not ${drivesTb.length}`);
  }
  return {
    capacityTb: rule.dataDrives(drivesTb.length) * Math.min(...drivesTb),
    mayFail: rule.mayFail(drivesTb.length),
  };
}

/** Days in a year, as endurance is reckoned. Source: common practice, 365. */
export const DAYS_PER_YEAR = 365;

/** Written over the years, TB, from GB a day. */
export function writtenTb(perDayGb: number, years: number): number {
  needNotNegative('written per day (GB)', perDayGb);
  needNotNegative('years', years);
  return perDayGb * DAYS_PER_YEAR * years / 1000;
}

/** Years until a stated endurance (TB written) is used up; Infinity when nothing is written. */
export function enduranceYears(enduranceTb: number, perDayGb: number): number {
  needPositive('endurance (TB)', enduranceTb);
  needNotNegative('written per day (GB)', perDayGb);
  return enduranceTb * 1000 / (perDayGb * DAYS_PER_YEAR);
}

/** Endurance in TB from drive writes a day over the warranty: writes × capacity × 365 × years. Source: JEDEC JESD218 usage, common practice. */
export function enduranceTbFromDailyWrites(writesPerDay: number, capacityTb: number, warrantyYears: number): number {
  needNotNegative('drive writes a day', writesPerDay);
  needPositive('capacity (TB)', capacityTb);
  needPositive('warranty (years)', warrantyYears);
  return writesPerDay * capacityTb * DAYS_PER_YEAR * warrantyYears;
}

export type DriveShape = '3.5 in' | '2.5 in';

export interface DriveShapeFacts {
  readonly widthMm: number;
  readonly lengthMm: number;
  /** Heights drives of this shape have; a 3.5 in drive is this high at most. */
  readonly heightsMm: readonly number[];
  readonly thread: '6-32 UNC' | 'M3';
}

/** Outlines and threads; how deep a screw may go is the drive maker's figure and stands in no common source. Source: SFF-8301 (3.5 in), SFF-8201 and SFF-8223 (2.5 in). */
export const DRIVE_SHAPES: Readonly<Record<DriveShape, DriveShapeFacts>> = {
  '3.5 in': { widthMm: 101.6, lengthMm: 147, heightsMm: [26.1], thread: '6-32 UNC' },
  '2.5 in': { widthMm: 69.85, lengthMm: 100.2, heightsMm: [7, 9.5, 15], thread: 'M3' },
};

export interface HealthAttribute {
  readonly id: number;
  readonly name: string;
  /** What acceptance asks for: a raw value of zero, or the same value before and after the test. */
  readonly accept: 'zero' | 'not rising';
}

/** Attributes looked at before a drive is handed over. Source: names as smartmontools prints them; the demands, common practice. */
export const HEALTH_ATTRIBUTES: readonly HealthAttribute[] = [
  { id: 5, name: 'reallocated sectors', accept: 'zero' },
  { id: 187, name: 'reported uncorrectable errors', accept: 'zero' },
  { id: 197, name: 'pending sectors', accept: 'zero' },
  { id: 198, name: 'offline uncorrectable sectors', accept: 'zero' },
  { id: 199, name: 'interface CRC errors', accept: 'not rising' },
];

/** Whether an attribute's raw values before and after the long test are acceptable; undefined for one not looked at. */
export function attributeAccepted(id: number, before: number, after: number): boolean | undefined {
  needCount('raw value before', before, 0);
  needCount('raw value after', after, 0);
  const attribute = HEALTH_ATTRIBUTES.find((entry) => entry.id === id);
  if (attribute === undefined) return undefined;
  return attribute.accept === 'zero' ? after === 0 : after <= before;
}
