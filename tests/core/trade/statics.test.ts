// Straps, charging, surfaces.
import { describe, expect, it } from 'vitest';
import { chargeV, CHARGES, STRAP, surfaceServesAsBench, SURFACES } from '../../../server/src/core/trade/statics';
import type { Surface, SurfaceFacts } from '../../../server/src/core/trade/statics';
import { expectRefusal } from './refuses';

describe('straps', () => {
  it('hold their limits', () => {
    expect(STRAP).toEqual({
      throughPersonBelowOhm: 35e6,
      cordOhm: 1e6,
      cordLeastOhm: 0.8e6,
      currentBelowMa: 0.5,
      protectsFromV: 100,
    });
  });
});

describe('charging', () => {
  it('has three activities of three rows', () => {
    expect(Object.keys(CHARGES)).toEqual(['walking on carpet', 'walking on vinyl', 'working at a bench']);
    for (const rows of Object.values(CHARGES)) expect(rows.map((row) => row.humidityPercent)).toEqual([10, 40, 55]);
  });

  it.each([
    [0, 35_000, Infinity],
    [9.9, 35_000, Infinity],
    [10, 35_000, 35_000],
    [10.1, 15_000, 35_000],
    [22, 15_000, 35_000],
    [40, 15_000, 15_000],
    [50, 7_500, 15_000],
    [55, 7_500, 7_500],
    [55.1, 0, 7_500],
    [100, 0, 7_500],
  ])('on carpet at %f %%: %i to %i V', (humidity, low, high) => {
    expect(chargeV('walking on carpet', humidity)).toEqual({ low, high });
  });

  it('on vinyl and at the bench', () => {
    expect(chargeV('walking on vinyl', 22)).toEqual({ low: 5_000, high: 12_000 });
    expect(chargeV('working at a bench', 50)).toEqual({ low: 400, high: 800 });
  });

  it('refuses a humidity that cannot be', () => {
    for (const humidity of [-1, 101, NaN]) {
      expectRefusal(
        () => chargeV('walking on vinyl', humidity),
        `relative humidity (%) must be between 0 and 100, not ${humidity}`,
      );
    }
  });
});

const ROWS: [Surface, SurfaceFacts['static'], boolean, boolean, RegExp][] = [
  ['mat', 'drains', false, true, /S20\.20/],
  ['wood', 'neutral', false, true, /^common practice/],
  ['cardboard', 'neutral', false, true, /^common practice/],
  ['metal', 'conducts', true, false, /^common practice/],
  ['glass', 'charges', false, false, /^common practice/],
  ['plastic', 'charges', false, false, /^common practice/],
  ['carpet', 'charges', false, false, /service manual/],
  ['shielding bag', 'conducts', true, false, /S541/],
];

describe('surfaces', () => {
  it.each(ROWS)('%s', (surface, kind, shorts, serves, source) => {
    expect(SURFACES[surface]).toMatchObject({ static: kind, shorts });
    expect(SURFACES[surface].source).toMatch(source);
    expect(surfaceServesAsBench(surface)).toBe(serves);
  });

  it('are no others', () => expect(Object.keys(SURFACES)).toEqual(ROWS.map(([surface]) => surface)));
});
