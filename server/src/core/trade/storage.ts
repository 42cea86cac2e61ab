// Drives: arrays, endurance, the old partition table's limit, threads.
import { needNotNegative, needPositive } from './numbers';

/**
 * Most bytes a partition table of the MBR kind can address with 512-byte sectors: 2³² × 512. Source: `sfdisk`
 * (util-linux).
 */
export const MBR_LIMIT_BYTES = 2 ** 32 * 512;

export type ArrayLevel = 'RAID 0' | 'RAID 1' | 'RAID 5' | 'RAID 6' | 'RAID 10';

export interface ArrayRule {
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
  'RAID 0': { leastDrives: 2, dataDrives: (count) => count, mayFail: () => 0 },
  'RAID 1': { leastDrives: 2, dataDrives: () => 1, mayFail: (count) => count - 1 },
  'RAID 5': { leastDrives: 3, dataDrives: (count) => count - 1, mayFail: () => 1 },
  'RAID 6': { leastDrives: 4, dataDrives: (count) => count - 2, mayFail: () => 2 },
  'RAID 10': { leastDrives: 4, dataDrives: (count) => count / 2, mayFail: () => 1 },
};

/** A rate of errors without what never matters in it: case, blanks, marks of powers. */
const bareRate = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/[⁻−]/g, '-')
    .replace(/×/g, 'x')
    .replace(/\s|,|\^|\*\*/g, '')
    .toLowerCase()
    .replace(/^(?:lessthan|max\.?|upto)/, '<');

/**
 * Reads a rate of errors that cannot be corrected, as sheets print it: `1 in 10^15`, `<1 per 1E15 bits`, `10^-15`,
 * `<10 in 10^16`; gives the bits read for one error.
 */
export function parseErrorRate(text: string): number | undefined {
  const plain = bareRate(text);
  const [, ten, e] =
    /^[<≤]?1?(0)?(?:sector|error|bit)?(?:in|per|\/)(?:1x)?(?:10|1e)(\d{2})(?:bits)?(?:read)?$/.exec(plain) ??
    /^[<≤]?()(?:10|1e|1x10)-(\d{2})$/.exec(plain) ??
    [];
  const power = Number(e) - (ten ? 1 : 0);
  return power >= 12 && power <= 20 ? 10 ** power : undefined;
}

/** The two powers that `1 per 10E15` may mean: that of ten, as most sheets have it, or ten times that. */
export function errorRatesMeant(text: string): string[] {
  const [, e] = /^[<≤]?1?(?:sector|error|bit)?(?:in|per|\/)?10e-?(\d{2})(?:bits)?(?:read)?$/.exec(bareRate(text)) ?? [];
  return e === undefined ? [] : [`1 in 10^${e}`, `1 in 10^${Number(e) + 1}`];
}

/** Bits read for one error that cannot be corrected, by class, where a sheet does not say. Source: common practice. */
export const ERROR_RATES = { disk: [1e14, 1e15], 'solid state': [1e15, 1e17], any: [1e14, 1e17] } as const;

/** A drive larger than this that does not say what it is, is a disk. Source: common practice. */
export const LARGEST_USUAL_SSD_BYTES = 8e12;

/**
 * Chance that reading so many bytes meets an error that cannot be corrected, at one error in so many bits.
 * Source: JEDEC JESD218 for the rate: errors per bits read; 1 − (1 − rate)^bits.
 */
export function chanceOfReadError(bytes: number, bitsPerError: number): number {
  needNotNegative('bytes', bytes);
  needPositive('bits per error', bitsPerError);
  return -Math.expm1(bytes * 8 * Math.log1p(-1 / bitsPerError));
}

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

/**
 * Thread of the fixing holes by the drive's shape; how deep a screw may go is the drive maker's figure and stands in no
 * common source. Source: SFF-8301 (3.5 in), SFF-8201 and SFF-8223 (2.5 in).
 */
export const DRIVE_THREADS: Readonly<Record<'3.5 in' | '2.5 in', '6-32 UNC' | 'M3'>> = {
  '3.5 in': '6-32 UNC',
  '2.5 in': 'M3',
};
