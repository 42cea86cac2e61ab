// Static electricity against the standards' limits and a maker's table of voltages.
import { describe, expect, it } from 'vitest';
import { chargeV, FELT_FROM_V, STRAP, STRAP_NEVER_FROM_V, strapCurrentMa, SURFACES, surfaceServesAsBench, WORK_SURFACE_OHM } from '../../server/src/core/trade/statics';
import type { Activity } from '../../server/src/core/trade/statics';
import { expectNear } from './near';
import { itWithOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

/** Volts at 10, 40 and 55 % humidity. Source: Hewlett-Packard, Maintenance and Service Guide, chapter 4, Typical electrostatic voltage levels. */
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
    expect(strapCurrentMa(240, STRAP.cordLeastOhm)).toBeLessThan(STRAP.currentBelowMa);
    expect(STRAP.cordOhm).toBe(1e6);
  });

  itWithOracle('units', '1 MΩ lets 0.12 mA pass at 120 V', () => {
    expectNear(strapCurrentMa(120, 1e6), units('120 V / 1 megaohm', 'mA'), TOLERANCES.workedByUnits);
  });

  it('by Ohm’s law', () => expectNear(strapCurrentMa(120, 1e6), 0.12, TOLERANCES.exact));

  it('the ESD Association’s handbook TR20.20-2008, wrist straps, forbids straps where 250 V are exposed; ours forbids them on anything energised', () => expect(STRAP_NEVER_FROM_V).toBe(250));

  it('a discharge is felt from 2 to 3 kV (ESD handbooks), far above the 100 V that parts are handled for', () => {
    expect(FELT_FROM_V).toEqual({ low: 2_000, high: 3_000 });
    expect(FELT_FROM_V.low).toBeGreaterThan(STRAP.protectsFromV);
  });

  it('the outside of a bag conducts (ANSI/ESD S541): no mat, and no place for a board with power on', () => {
    expect(SURFACES['shielding bag']).toMatchObject({ static: 'conducts', shorts: true });
    expect(surfaceServesAsBench('shielding bag')).toBe(false);
  });

  it('a work surface lies between 1 MΩ and 1 GΩ (a mat maker’s answer on ANSI/ESD S20.20)', () => {
    expect(WORK_SURFACE_OHM).toEqual({ low: 1e6, high: 1e9 });
  });
});
