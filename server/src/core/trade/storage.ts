// Drives: arrays, endurance, the old partition table's limit, shapes.
import { needNotNegative, needPositive } from './numbers';

/**
 * Most bytes a partition table of the MBR kind can address with 512-byte sectors: 2³² × 512. Source: `sfdisk`
 * (util-linux).
 */
export const MBR_LIMIT_BYTES = 2 ** 32 * 512;

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
  'RAID 6': {
    commonName: 'stripe with double parity',
    leastDrives: 4,
    dataDrives: (count) => count - 2,
    mayFail: () => 2,
  },
  'RAID 10': { commonName: 'stripe of mirrors', leastDrives: 4, dataDrives: (count) => count / 2, mayFail: () => 1 },
};

/** Days in a year, as endurance is reckoned. Source: common practice, 365. */
export const DAYS_PER_YEAR = 365;

/** Written over the years, TB, from GB a day. */
export function writtenTb(perDayGb: number, years: number): number {
  needNotNegative('written per day (GB)', perDayGb);
  needNotNegative('years', years);
  return (perDayGb * DAYS_PER_YEAR * years) / 1000;
}

/** Years until a stated endurance (TB written) is used up; Infinity when nothing is written. */
export function enduranceYears(enduranceTb: number, perDayGb: number): number {
  needPositive('endurance (TB)', enduranceTb);
  needNotNegative('written per day (GB)', perDayGb);
  return (enduranceTb * 1000) / (perDayGb * DAYS_PER_YEAR);
}

export type DriveShape = '3.5 in' | '2.5 in';

export interface DriveShapeFacts {
  readonly widthMm: number;
  readonly lengthMm: number;
  /** Heights drives of this shape have; a 3.5 in drive is this high at most. */
  readonly heightsMm: readonly number[];
  readonly thread: '6-32 UNC' | 'M3';
}

/**
 * Outlines and threads; how deep a screw may go is the drive maker's figure and stands in no common source. Source:
 * SFF-8301 (3.5 in), SFF-8201 and SFF-8223 (2.5 in).
 */
export const DRIVE_SHAPES: Readonly<Record<DriveShape, DriveShapeFacts>> = {
  '3.5 in': { widthMm: 101.6, lengthMm: 147, heightsMm: [26.1], thread: '6-32 UNC' },
  '2.5 in': { widthMm: 69.85, lengthMm: 100.2, heightsMm: [7, 9.5, 15], thread: 'M3' },
};
