// Levels of sound against published examples.
import { describe, expect, it } from 'vitest';
import { equalSourcesDb, levelAtDistanceDb, sumOfLevelsDb } from '../../server/src/core/trade/noise';
import { expectNear } from './near';
import { TOLERANCES } from './tolerances';

const SUMS: [string, number[], number][] = [
  ['10dB acoustics consultancy, Decibel Maths, radio and television', [62, 73], 73.3],
  ['a town planners’ noise manual, 2.4.2', [35, 40, 45], 46.5],
  ['the same', [40, 45], 46.2],
  ['a journal on environmental noise', [85, 88], 89.8],
];

/**
 * Sources of 50 dB each, rounded to whole decibels. Source: Minnesota Pollution Control Agency, A Guide to Noise
 * Control in Minnesota, October 2008, figure 5.
 */
const GENERATORS: [number, number][] = [
  [1, 50],
  [2, 53],
  [4, 56],
  [8, 59],
];

describe('levels', () => {
  it.each(SUMS)('%s: %j make %f dB', (_source, levels, sum) => {
    expectNear(sumOfLevelsDb(levels), sum, TOLERANCES.soundLevelDb);
  });

  it('Encyclopedia of Environmental Science and Engineering, Noise, equation 6.1, five machines: 96.25 dB', () => {
    expectNear(sumOfLevelsDb([85, 88, 80, 70, 95]), 96.25, TOLERANCES.soundLevelFineDb);
  });

  it.each(GENERATORS)('%i generators make %i dB', (count, level) =>
    expect(Math.round(equalSourcesDb(50, count))).toBe(level),
  );

  it('twice the distance takes 6 dB off in a free field (Decibel Maths, above)', () => {
    expect(Math.round(levelAtDistanceDb(60, 1, 2))).toBe(54);
  });
});
