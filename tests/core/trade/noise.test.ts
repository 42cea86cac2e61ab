// Levels.
import { expect, it } from 'vitest';
import {
  dbFromBel, equalSourcesDb, FAN_SPEED_DB_PER_DECADE, levelAtDistanceDb, levelAtFanSpeedDb, noiseMismatch, sumOfLevelsDb,
} from '../../../server/src/core/trade/noise';
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

it('rises with a fan’s speed', () => {
  expect(FAN_SPEED_DB_PER_DECADE).toBe(50);
  expect(levelAtFanSpeedDb(20, 200, 2000)).toBe(70);
  expect(levelAtFanSpeedDb(20, 2000, 1000)).toBeCloseTo(4.9485, 4);
  expectRefusesBad('finite', 'level (dB)', (value) => levelAtFanSpeedDb(value, 1000, 2000));
  expectRefusesBad('positive', 'speed before (rpm)', (value) => levelAtFanSpeedDb(20, value, 2000));
  expectRefusesBad('positive', 'speed after (rpm)', (value) => levelAtFanSpeedDb(20, 1000, value));
});

it('turns bels into decibels', () => {
  expect(dbFromBel(3.5)).toBe(35);
  expectRefusesBad('finite', 'level (B)', dbFromBel);
});

it('keeps apart what cannot be compared', () => {
  const power = { kind: 'sound power' } as const;
  const near = { kind: 'sound pressure', distanceM: 0.5 } as const;
  const far = { kind: 'sound pressure', distanceM: 1 } as const;
  const somewhere = { kind: 'sound pressure' } as const;
  expect(noiseMismatch(power, power)).toBeUndefined();
  expect(noiseMismatch(far, { ...far })).toBeUndefined();
  expect(noiseMismatch(power, far)).toBe('kind');
  expect(noiseMismatch(far, power)).toBe('kind');
  expect(noiseMismatch(near, far)).toBe('distance');
  expect(noiseMismatch(somewhere, far)).toBe('distance missing');
  expect(noiseMismatch(far, somewhere)).toBe('distance missing');
});
