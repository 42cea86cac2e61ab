// Lifting.
import { expect, it } from 'vitest';
import { LIGHT_PARTS_AT_MOST_G, liftLimitKg, NIOSH_LOAD_CONSTANT_KG, tooHeavyForOne } from '../../../server/src/core/trade/lifting';
import { expectRefusal, expectRefusesBad } from './refuses';

const IDEAL = { reachCm: 25, handHeightCm: 75, travelCm: 25 };

it('23 kg under ideal conditions', () => {
  expect(liftLimitKg(IDEAL)).toBeCloseTo(23, 10);
});

it('less with reach, height and travel', () => {
  expect(liftLimitKg({ ...IDEAL, reachCm: 50 })).toBeCloseTo(11.5, 10);
  expect(liftLimitKg({ ...IDEAL, handHeightCm: 0 })).toBeCloseTo(23 * 0.775, 10);
  expect(liftLimitKg({ ...IDEAL, handHeightCm: 175 })).toBeCloseTo(23 * 0.7, 10);
  expect(liftLimitKg({ ...IDEAL, travelCm: 100 })).toBeCloseTo(23 * 0.865, 10);
});

it('keeps to the equation’s spans', () => {
  expect(liftLimitKg({ reachCm: 63, handHeightCm: 175, travelCm: 175 })).toBeCloseTo(23 * (25 / 63) * 0.7 * (0.82 + 4.5 / 175), 10);
  expectRefusal(() => liftLimitKg({ ...IDEAL, reachCm: 24 }), 'reach (cm) must be between 25 and 63, not 24');
  expectRefusal(() => liftLimitKg({ ...IDEAL, reachCm: 64 }), 'reach (cm) must be between 25 and 63, not 64');
  expectRefusal(() => liftLimitKg({ ...IDEAL, handHeightCm: 176 }), 'height of the hands (cm) must be between 0 and 175, not 176');
  expectRefusal(() => liftLimitKg({ ...IDEAL, handHeightCm: -1 }), 'height of the hands (cm) must be between 0 and 175, not -1');
  expectRefusal(() => liftLimitKg({ ...IDEAL, travelCm: 24 }), 'travel (cm) must be between 25 and 175, not 24');
  expectRefusal(() => liftLimitKg({ ...IDEAL, travelCm: 176 }), 'travel (cm) must be between 25 and 175, not 176');
});

it('tells what one person may not lift', () => {
  expect([22.9, 23, 23.1].map(tooHeavyForOne)).toEqual([false, false, true]);
  expectRefusesBad('positive', 'mass (kg)', tooHeavyForOne);
});

it('bounds light parts far below what decides a lift', () => {
  expect(LIGHT_PARTS_AT_MOST_G).toEqual({ processor: 200, memory: 100, fans: 400 });
  for (const grams of Object.values(LIGHT_PARTS_AT_MOST_G)) expect(grams).toBeLessThan(NIOSH_LOAD_CONSTANT_KG * 1000 / 50);
});
