// Lifting.
import { expect, it } from 'vitest';
import { LIGHT_PARTS_AT_MOST_G, NIOSH_LOAD_CONSTANT_KG } from '../../../server/src/core/trade/lifting';

it('bounds light parts far below what decides a lift', () => {
  expect(LIGHT_PARTS_AT_MOST_G).toEqual({ processor: 200, memory: 100, fans: 400 });
  for (const grams of Object.values(LIGHT_PARTS_AT_MOST_G))
    expect(grams).toBeLessThan((NIOSH_LOAD_CONSTANT_KG * 1000) / 50);
});
