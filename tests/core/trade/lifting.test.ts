// Lifting.
import { expect, it } from 'vitest';
import { LIGHT_PARTS_AT_MOST_G, NIOSH_LOAD_CONSTANT_KG } from '../../../server/src/core/trade/lifting';

it('bounds parts that state no mass far below what decides a lift', () => {
  const { processor, memory, fans, supply, ...heavier } = LIGHT_PARTS_AT_MOST_G;
  expect({ processor, memory, fans }).toEqual({ processor: 200, memory: 100, fans: 400 });
  for (const grams of [processor, memory, fans]) expect(grams).toBeLessThan((NIOSH_LOAD_CONSTANT_KG * 1000) / 50);
  expect(heavier).toEqual({ board: 1500, cooler: 2200, drives: 900, graphics: 2700, cards: 1500, radiators: 2500 });
  expect(supply).toBe(3500);
  expect(supply).toBeLessThan((NIOSH_LOAD_CONSTANT_KG * 1000) / 6);
  for (const grams of Object.values(heavier)) expect(grams).toBeLessThan((NIOSH_LOAD_CONSTANT_KG * 1000) / 8);
});
