// Cards that hang in their slots: the lever rule. Source: mass × length ÷ 2 about the slot stays the same.
import { describe, expect, it } from 'vitest';
import { massHangingAtMostG } from '../../../server/src/core/trade/lifting';

describe('massHangingAtMostG', () => {
  it('keeps the moment at the slot: half the mass at twice the length', () => {
    expect(massHangingAtMostG(1000, 300)).toBe(1000);
    expect(massHangingAtMostG(1000, 600)).toBe(500);
    expect(massHangingAtMostG(1000, 150)).toBe(2000);
    expect(massHangingAtMostG(1000, 0)).toBe(Infinity);
  });
});
