// Arrays by the names a build gives them, over the table of levels.
import { ARRAYS, type ArrayLevel } from './storage';

/** How drives are joined, in plain words. */
export const ARRAY_KINDS = ['stripe', 'mirror', 'single parity', 'double parity', 'striped mirrors'] as const;
export type ArrayKind = (typeof ARRAY_KINDS)[number];

/** Source: SNIA Common RAID Disk Drive Format (DDF), names of the levels. */
const LEVELS: Readonly<Record<ArrayKind, ArrayLevel>> = {
  stripe: 'RAID 0',
  mirror: 'RAID 1',
  'single parity': 'RAID 5',
  'double parity': 'RAID 6',
  'striped mirrors': 'RAID 10',
};

export const levelOfKind = (kind: ArrayKind): ArrayLevel => LEVELS[kind];

/** Least number of drives, and whether it must be even. */
export function arrayNeeds(kind: ArrayKind): { readonly least: number; readonly even: boolean } {
  return { least: ARRAYS[LEVELS[kind]].leastDrives, even: kind === 'striped mirrors' };
}

/** Drives’ worth of data that `count` equal drives hold. */
export const arrayUnits = (kind: ArrayKind, count: number): number => ARRAYS[LEVELS[kind]].dataDrives(count);

/** Drives that may fail in the worst case with nothing lost. */
export const arraySurvives = (kind: ArrayKind, count: number): number => ARRAYS[LEVELS[kind]].mayFail(count);
