// Thermal resistances, films and pastes against processor thermal guides, handbook values and GNU units.
import { describe, expect, it } from 'vitest';
import { PASTE_CONDUCTIVITY, galliumAttacks } from '../../server/src/core/trade/thermal-paste';
import {
  BOND_LINE_UM,
  filmResistanceKPerW,
  gapVolumeMm3,
  GRAINS_MM3,
  halfSphereDiameterMm,
  PASTE_EXCESS,
  steadyTemperatureC,
} from '../../server/src/core/trade/heat';
import { expectNear } from './near';
import { itWithOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

/** Limit, inlet, watts, allowed chain, paste, what is left for the cooler: as the guides print them. */
const GUIDES: [string, number, number, number, number, number, number][] = [
  ['Intel, Core 2 Extreme QX9770 Thermal and Mechanical Design Guidelines, 3.1.1', 67, 38, 100, 0.29, 0.1, 0.19],
  [
    'Intel, Core 2 Duo Mobile Processors on 45-nm Process for Embedded Applications, order no. 320028-001, 5.1.1',
    105,
    40,
    35,
    1.857,
    0.5,
    1.36,
  ],
  [
    'Intel, Dual-Core Xeon Processor 2.80 GHz Thermal/Mechanical Design Guidelines, 2.3.2.1',
    68,
    45,
    85,
    0.27,
    0.05,
    0.22,
  ],
  [
    'Intel, Pentium III in the FC-PGA2 Package Thermal Design Guidelines, 249660-001, 7.2',
    67,
    45,
    30,
    0.73,
    0.15,
    0.58,
  ],
];

describe('the chain from processor to air', () => {
  it.each(GUIDES)('%s: (%f − %f) / %f', (_guide, limit, inlet, watts, chain, paste, cooler) => {
    expectNear(paste + cooler, chain, TOLERANCES.thermalResistance);
    expectNear(steadyTemperatureC(inlet, watts, [cooler, paste]), limit, {
      absolute: watts * TOLERANCES.thermalResistance.absolute,
    });
  });
});

describe('the film between', () => {
  /** µm, K/W for 900 mm² at 4 W/m·K. Source: R = t/(kA), worked to four places. */
  it.each([
    [20, 0.0056],
    [50, 0.0139],
    [100, 0.0278],
  ])('%i µm make %f K/W', (um, resistance) => {
    expectNear(filmResistanceKPerW(um, 4, 900), resistance, TOLERANCES.filmResistance);
  });

  itWithOracle('units', 'the same by GNU units', () => {
    expectNear(
      filmResistanceKPerW(50, 4, 900),
      units('50 micron / (4 W/(m K) * 900 mm^2)', 'K/W'),
      TOLERANCES.workedByUnits,
    );
  });

  /**
   * Source: Assmann WSW, board-level heat sinks tutorial: grease is for gaps of less than 0.05 mm; the rest of the
   * span is from memory.
   */
  it('bond lines lie about the 50 µm below which grease is used', () => {
    expect(BOND_LINE_UM.low).toBeLessThan(50);
    expect(BOND_LINE_UM.high).toBeGreaterThanOrEqual(50);
  });

  it('900 mm² at 50 µm hold 45 mm³, to be brought on with 1.2 to 1.5 times that', () => {
    expectNear(gapVolumeMm3(900, 50), 45, TOLERANCES.exact);
    expectNear(gapVolumeMm3(900, 50) * PASTE_EXCESS.low, 54, TOLERANCES.exact);
    expectNear(gapVolumeMm3(900, 50) * PASTE_EXCESS.high, 67.5, TOLERANCES.exact);
  });

  itWithOracle('units', 'a dot of that diameter holds the volume, by GNU units', () => {
    const diameter = halfSphereDiameterMm(60);
    expectNear(units(`spherevol(${diameter / 2} mm) / 2`, 'mm^3'), 60, TOLERANCES.workedByUnits);
  });

  /** mm³, three axes as an ellipsoid. Source: papers on the physical properties of rice and pea seeds. */
  it.each([
    ['rice grain', 12, 27],
    ['dry pea', 150, 150],
    ['fresh pea', 420, 500],
  ] as const)('a %s is %i to %i mm³', (grain, low, high) => {
    expect(GRAINS_MM3[grain]).toEqual({ low, high });
  });

  it('“rice to pea” spans a factor of about forty (seed-science papers)', () => {
    expect(Math.round(GRAINS_MM3['fresh pea'].high / GRAINS_MM3['rice grain'].low / 10)).toBe(4);
  });
});

describe('materials', () => {
  /** Source: ARCTIC, Thermal Interface (product overview), which calls higher figures for such pastes nonsense. */
  it('pastes that do not conduct reach 1 to 4 W/m·K', () => {
    expect(PASTE_CONDUCTIVITY.paste).toEqual({ low: 1, high: 4 });
  });

  /**
   * Source: studies of gallium penetrating grain boundaries of aluminium film; makers of gallium alloys: brass is
   * attacked too, and anodising counts as bare once scratched.
   */
  it('gallium never touches aluminium, anodised or not, nor brass', () => {
    expect(
      (['aluminium', 'anodised aluminium', 'brass', 'copper', 'nickel-plated copper', 'nickel'] as const).map(
        galliumAttacks,
      ),
    ).toEqual([true, true, true, false, false, false]);
  });

  /** Source: a review of gallium alloys, 16.5 to 28 W/m·K by composition. */
  it('gallium alloys reach 16.5 to 28 W/m·K', () =>
    expect(PASTE_CONDUCTIVITY['gallium alloy']).toEqual({ low: 16.5, high: 28 }));
});
