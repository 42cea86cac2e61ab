// Lifting against the NIOSH equation, whose two published forms check each other's load constant.
import { expect, it } from 'vitest';
import { LIFT_FROM_FLOOR_KG, NIOSH_LOAD_CONSTANT_KG } from '../../server/src/core/trade/lifting';
import { itWithOracle } from './oracle';
import { units } from './units';

it('the load constant is 23 kg (NIOSH Publication No. 94-110)', () => expect(NIOSH_LOAD_CONSTANT_KG).toBe(23));

/** Source: NIOSH Publication No. 94-110, table 2: the vertical multiplier at the floor, V = 0 cm, is 0.78. */
it('from the floor 0.78 of it is left (NIOSH Publication No. 94-110, table of vertical multipliers)', () =>
  expect(LIFT_FROM_FLOOR_KG / NIOSH_LOAD_CONSTANT_KG).toBeCloseTo(0.78, 1));

itWithOracle('units', 'which is the 51 lb of the customary form', () => {
  expect(Math.round(units('23 kg', 'lb'))).toBe(51);
});
