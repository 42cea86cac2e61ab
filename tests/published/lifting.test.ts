// Lifting against the NIOSH equation, whose two published forms check each other.
import { expect, it } from 'vitest';
import { liftLimitKg, NIOSH_LOAD_CONSTANT_KG } from '../../server/src/core/trade/lifting';
import { expectNear } from './near';
import { itWithOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

/** The customary form: 51 lb × 10/H × (1 − 0.0075 |V − 30|) × (0.82 + 1.8/D), inches. Source: NIOSH Publication No. 94-110. */
function limitLb(reachIn: number, heightIn: number, travelIn: number): number {
  return 51 * (10 / reachIn) * (1 - 0.0075 * Math.abs(heightIn - 30)) * (0.82 + 1.8 / travelIn);
}

it('the load constant is 23 kg (NIOSH Publication No. 94-110)', () => expect(NIOSH_LOAD_CONSTANT_KG).toBe(23));

itWithOracle('units', 'which is the 51 lb of the customary form', () => {
  expect(Math.round(units('23 kg', 'lb'))).toBe(51);
});

it.each([[10, 30, 10], [15, 20, 30], [20, 0, 40], [24, 60, 60]])('both forms agree at %i, %i, %i inches', (reach, height, travel) => {
  const metric = liftLimitKg({ reachCm: reach * 2.54, handHeightCm: height * 2.54, travelCm: travel * 2.54 });
  expectNear(metric, limitLb(reach, height, travel) * 0.45359237, TOLERANCES.liftingForms);
});
