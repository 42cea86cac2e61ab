// Sums, rails, peaks, hold-up.
import { describe, expect, it } from 'vitest';
import {
  cardPlugLimitsV, CARD_PLUG_TOLERANCE_PERCENT, currentA, dropPercent, EXCURSION_CLASS_ABOVE_W, EXCURSIONS, excursionAllowedPercent,
  excursionAllowedW, headroomPercent, HOLD_UP, loadFraction, RAIL_TOLERANCE_PERCENT, railLimitsV, totalPowerW,
} from '../../../server/src/core/trade/power';
import { expectRefusal, expectRefusesBad } from './refuses';

describe('sums', () => {
  it('adds draws', () => {
    expect(totalPowerW([])).toBe(0);
    expect(totalPowerW([65, 0, 220.5])).toBe(285.5);
    expectRefusesBad('notNegative', 'draw (W)', (value) => totalPowerW([10, value]));
  });

  it('takes the load over the rating', () => {
    expect(loadFraction(300, 750)).toBe(0.4);
    expect(loadFraction(0, 750)).toBe(0);
    expectRefusesBad('notNegative', 'load (W)', (value) => loadFraction(value, 750));
    expectRefusesBad('positive', 'rating (W)', (value) => loadFraction(300, value));
  });

  it('leaves headroom, negative when overloaded', () => {
    expect(headroomPercent(300, 600)).toBe(50);
    expect(headroomPercent(900, 600)).toBe(-50);
  });

  it('takes power over voltage', () => {
    expect(currentA(150, 12)).toBe(12.5);
    expectRefusesBad('notNegative', 'power (W)', (value) => currentA(value, 12));
    expectRefusesBad('positive', 'voltage (V)', (value) => currentA(150, value));
  });

  it('takes a drop over the nominal voltage', () => {
    expect(dropPercent(0.6, 12)).toBeCloseTo(5, 12);
    expect(dropPercent(12, 12)).toBe(100);
    expectRefusal(() => dropPercent(12.1, 12), 'drop (V) must be between 0 and 12, not 12.1');
    expectRefusal(() => dropPercent(-0.1, 12), 'drop (V) must be between 0 and 12, not -0.1');
    expectRefusesBad('positive', 'nominal voltage (V)', (value) => dropPercent(0, value));
  });
});

describe('rails', () => {
  it('keeps to 5 % both ways', () => {
    expect(RAIL_TOLERANCE_PERCENT).toBe(5);
    expect(railLimitsV(100)).toEqual({ low: 95, high: 105 });
    expectRefusesBad('positive', 'nominal voltage (V)', railLimitsV);
  });

  it('lets a card’s plug fall to 8 %', () => {
    expect(CARD_PLUG_TOLERANCE_PERCENT).toEqual({ over: 5, under: 8 });
    expect(cardPlugLimitsV(100)).toEqual({ low: 92, high: 105 });
    expectRefusesBad('positive', 'nominal voltage (V)', cardPlugLimitsV);
  });
});

describe('peaks', () => {
  it('holds both classes', () => {
    expect(EXCURSION_CLASS_ABOVE_W).toBe(450);
    expect(EXCURSIONS.large.map((row) => [row.durationMs, row.percentOfRating])).toEqual([[0.1, 200], [1, 180], [10, 160], [100, 120]]);
    expect(EXCURSIONS.other.map((row) => [row.durationMs, row.percentOfRating])).toEqual([[0.1, 150], [1, 145], [10, 135], [100, 110]]);
  });

  it.each([
    [0.05, 200, 150], [0.1, 200, 150], [0.11, 180, 145], [1, 180, 145], [1.01, 160, 135],
    [10, 160, 135], [10.1, 120, 110], [100, 120, 110], [100.1, 100, 100], [1000, 100, 100],
  ])('%f ms: %i %% with a 16-pin plug above 450 W, else %i %%', (durationMs, large, other) => {
    expect(excursionAllowedPercent(451, true, durationMs)).toBe(large);
    expect(excursionAllowedPercent(450, true, durationMs)).toBe(other);
    expect(excursionAllowedPercent(1000, false, durationMs)).toBe(other);
  });

  it('in watts', () => expect(excursionAllowedW(1000, true, 1)).toBe(1800));

  it('refuses what cannot be', () => {
    expectRefusesBad('positive', 'rating (W)', (value) => excursionAllowedPercent(value, true, 1));
    expectRefusesBad('positive', 'duration (ms)', (value) => excursionAllowedPercent(750, true, value));
  });
});

it('hold-up by revision', () => {
  expect(HOLD_UP).toEqual([
    { guide: 'doc. 336521 revision 2.0', aboveMs: 16, atLoadPercent: 100, required: true },
    { guide: 'doc. 336521 revision 2.1a', aboveMs: 11, atLoadPercent: 100, required: true },
    { guide: 'doc. 336521 revision 2.1a', aboveMs: 16, atLoadPercent: 80, required: false },
  ]);
});
