// Noise: levels added as energies, and over distance.
import { needCount, needFinite, needPositive } from './numbers';

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
