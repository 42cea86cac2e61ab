// Levels.
import { expect, it } from 'vitest';
import { equalSourcesDb, levelAtDistanceDb, sumOfLevelsDb } from '../../../server/src/core/trade/noise';
import { expectRefusal, expectRefusesBad } from './refuses';

it('adds energies', () => {
  expect(sumOfLevelsDb([30])).toBeCloseTo(30, 12);
  expect(sumOfLevelsDb([30, 30])).toBeCloseTo(33.0103, 4);
  expect(sumOfLevelsDb([30, -Number.MAX_VALUE])).toBeCloseTo(30, 12);
  expectRefusal(() => sumOfLevelsDb([]), 'number of levels must be a whole number of at least 1, not 0');
  expectRefusesBad('finite', 'level (dB)', (value) => sumOfLevelsDb([30, value]));
});

it('multiplies equal sources', () => {
  expect(equalSourcesDb(30, 1)).toBe(30);
  expect(equalSourcesDb(30, 10)).toBe(40);
  expectRefusesBad('finite', 'level (dB)', (value) => equalSourcesDb(value, 2));
  expectRefusal(() => equalSourcesDb(30, 0), 'number of sources must be a whole number of at least 1, not 0');
});

it('falls off with distance', () => {
  expect(levelAtDistanceDb(30, 1, 1)).toBe(30);
  expect(levelAtDistanceDb(30, 1, 10)).toBe(10);
  expect(levelAtDistanceDb(30, 2, 20)).toBe(10);
  expect(levelAtDistanceDb(30, 1, 0.1)).toBeCloseTo(50, 12);
  expectRefusesBad('finite', 'level (dB)', (value) => levelAtDistanceDb(value, 1, 2));
  expectRefusesBad('positive', 'distance it was stated at (m)', (value) => levelAtDistanceDb(30, value, 2));
  expectRefusesBad('positive', 'distance asked for (m)', (value) => levelAtDistanceDb(30, 1, value));
});
