// Rails and peaks.
import { describe, expect, it } from 'vitest';
import {
  CARD_CONNECTOR_TOLERANCE_PERCENT,
  EXCURSIONS,
  excursionAllowedPercent,
  excursionClass,
} from '../../../server/src/core/trade/power';
import { expectRefusesBad } from './refuses';

describe('rails', () => {
  it('lets a card’s connector fall to 8 %', () => {
    expect(CARD_CONNECTOR_TOLERANCE_PERCENT).toEqual({ over: 5, under: 8 });
  });
});

describe('peaks', () => {
  it('holds both classes', () => {
    expect(EXCURSIONS.large.map((row) => [row.durationMs, row.percentOfRating])).toEqual([
      [0.1, 200],
      [1, 180],
      [10, 160],
      [100, 120],
    ]);
    expect(EXCURSIONS.other.map((row) => [row.durationMs, row.percentOfRating])).toEqual([
      [0.1, 150],
      [1, 145],
      [10, 135],
      [100, 110],
    ]);
  });

  it.each([
    [0.05, 200, 150],
    [0.1, 200, 150],
    [0.11, 180, 145],
    [1, 180, 145],
    [1.01, 160, 135],
    [10, 160, 135],
    [10.1, 120, 110],
    [100, 120, 110],
    [100.1, 100, 100],
    [1000, 100, 100],
  ])('%f ms: %i %% with a 16-pin connector above 450 W, else %i %%', (durationMs, large, other) => {
    expect(excursionAllowedPercent('large', durationMs)).toBe(large);
    expect(excursionAllowedPercent('other', durationMs)).toBe(other);
  });

  it.each([
    [450.1, true, 'large'],
    [450, true, 'other'],
    [1000, false, 'other'],
    [Infinity, true, 'large'],
    [-Infinity, true, 'other'],
  ] as const)('a supply of %f W, 16-pin connector %s, is of the class %s', (rating, has, supply) =>
    expect(excursionClass(rating, has)).toBe(supply),
  );

  it('refuses what cannot be', () => {
    expectRefusesBad('positive', 'duration (ms)', (value) => excursionAllowedPercent('large', value));
  });
});
