// Noise: levels added as energies, distance, fan speed, and the two kinds of figure that are never compared.
import { needCount, needFinite, needPositive } from './numbers';

/** ISO 9296 declares sound power (of the machine, in bels) and sound pressure (at a place, in decibels). */
export type NoiseKind = 'sound power' | 'sound pressure';

/**
 * Levels of sources that are not in step, added as energies, dB: L = 10 lg Σ 10^(Li / 10).
 * All must be of one kind and, as pressures, at one distance. @throws RangeError without a level.
 * Source: level addition in acoustics; worked in public guides to noise control.
 */
export function sumOfLevelsDb(levelsDb: readonly number[]): number {
  needCount('number of levels', levelsDb.length, 1);
  for (const levelDb of levelsDb) needFinite('level (dB)', levelDb);
  return 10 * Math.log10(levelsDb.reduce((sum, levelDb) => sum + 10 ** (levelDb / 10), 0));
}

/** Level of `count` equal sources, dB: 10 lg n above one of them; two of them 3 dB. Source: as above. */
export function equalSourcesDb(levelDb: number, count: number): number {
  needFinite('level (dB)', levelDb);
  needCount('number of sources', count, 1);
  return levelDb + 10 * Math.log10(count);
}

/** Sound pressure level at another distance, dB: −20 lg (r₂ / r₁), in a free field only. A room falls off less. */
export function levelAtDistanceDb(levelDb: number, fromM: number, toM: number): number {
  needFinite('level (dB)', levelDb);
  needPositive('distance it was stated at (m)', fromM);
  needPositive('distance asked for (m)', toM);
  return levelDb - 20 * Math.log10(toM / fromM);
}

/** Steepness of a fan's level over its speed: dB a factor of ten. Source: from memory; makers state 50 to 55. */
export const FAN_SPEED_DB_PER_DECADE = 50;

/** Level of a fan at another speed, dB: about 50 lg (N₂ / N₁) more. Source: from memory. */
export function levelAtFanSpeedDb(levelDb: number, fromRpm: number, toRpm: number): number {
  needFinite('level (dB)', levelDb);
  needPositive('speed before (rpm)', fromRpm);
  needPositive('speed after (rpm)', toRpm);
  return levelDb + FAN_SPEED_DB_PER_DECADE * Math.log10(toRpm / fromRpm);
}

/** A declared sound power level in bels, as decibels. Source: ISO 9296: 1 B = 10 dB. */
export function dbFromBel(levelB: number): number {
  needFinite('level (B)', levelB);
  return levelB * 10;
}

export interface NoiseFigure {
  readonly kind: NoiseKind;
  /** Of a sound pressure: where it was measured. */
  readonly distanceM?: number;
}

/**
 * Why two figures cannot be compared or added as they stand; undefined where they can.
 * Source: ISO 9296, which keeps power in bels and pressure in decibels so that nobody confuses them.
 */
export function noiseMismatch(one: NoiseFigure, other: NoiseFigure): 'kind' | 'distance missing' | 'distance' | undefined {
  if (one.kind !== other.kind) return 'kind';
  if (one.kind === 'sound power') return undefined;
  if (one.distanceM === undefined || other.distanceM === undefined) return 'distance missing';
  return one.distanceM === other.distanceM ? undefined : 'distance';
}
