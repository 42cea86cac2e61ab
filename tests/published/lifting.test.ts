// Lifting against the NIOSH equation, whose two published forms check each other's load constant.
import { expect, it } from 'vitest';
import { NIOSH_LOAD_CONSTANT_KG } from '../../server/src/core/trade/lifting';
import { itWithOracle } from './oracle';
import { units } from './units';

it('the load constant is 23 kg (NIOSH Publication No. 94-110)', () => expect(NIOSH_LOAD_CONSTANT_KG).toBe(23));

itWithOracle('units', 'which is the 51 lb of the customary form', () => {
  expect(Math.round(units('23 kg', 'lb'))).toBe(51);
});
