// Static electricity against the standards' limits and a maker's table of voltages.
import { describe, expect, it } from 'vitest';
import { chargeV, STRAP, SURFACES, surfaceServesAsBench, WORK_SURFACE_OHM } from '../../server/src/core/trade/statics';
import type { Activity } from '../../server/src/core/trade/statics';

/**
 * Volts at 10, 40 and 55 % humidity. Source: Hewlett-Packard, Maintenance and Service Guide, chapter 4, Typical
 * electrostatic voltage levels.
 */
const LEVELS: [Activity, number, number, number][] = [
  ['walking on carpet', 35_000, 15_000, 7_500],
  ['walking on vinyl', 12_000, 5_000, 3_000],
  ['working at a bench', 6_000, 800, 400],
];

describe('charging', () => {
  it.each(LEVELS)('%s: %i, %i, %i V', (activity, at10, at40, at55) => {
    expect([10, 40, 55].map((humidity) => chargeV(activity, humidity).low)).toEqual([at10, at40, at55]);
    expect([10, 40, 55].map((humidity) => chargeV(activity, humidity).high)).toEqual([at10, at40, at55]);
  });
});

describe('straps and surfaces', () => {
  it('ANSI/ESD S20.20: below 35 MΩ through the person, parts of 100 V', () => {
    expect([STRAP.throughPersonBelowOhm, STRAP.protectsFromV]).toEqual([35e6, 100]);
  });

  it('ANSI/ESD S1.1 annex B: 0.8 MΩ keeps 240 V below 0.5 mA; 1 MΩ is the usual resistor', () => {
    expect((240 / STRAP.cordLeastOhm) * 1000).toBeLessThan(STRAP.currentBelowMa);
    expect(STRAP.cordOhm).toBe(1e6);
  });

  it('the outside of a bag conducts (ANSI/ESD S541): no mat, and no place for a board with power on', () => {
    expect(SURFACES['shielding bag']).toMatchObject({ static: 'conducts', shorts: true });
    expect(surfaceServesAsBench('shielding bag')).toBe(false);
  });

  it('a work surface lies between 1 MΩ and 1 GΩ (a mat maker’s answer on ANSI/ESD S20.20)', () => {
    expect(WORK_SURFACE_OHM).toEqual({ low: 1e6, high: 1e9 });
  });
});
