// The chain and the paste.
import { describe, expect, it } from 'vitest';
import {
  BOND_LINE_UM,
  chainKPerW,
  filmResistanceKPerW,
  gapVolumeMm3,
  GRAINS_MM3,
  halfSphereDiameterMm,
  PASTE_EXCESS,
  powerAtLimitW,
  steadyTemperatureC,
} from '../../../server/src/core/trade/heat';
import { expectRefusesBad } from './refuses';

describe('resistances', () => {
  it('of a film', () => {
    expect(filmResistanceKPerW(100, 4, 1000)).toBe(0.025);
    expect(filmResistanceKPerW(0, 4, 1000)).toBe(0);
    expectRefusesBad('notNegative', 'thickness (µm)', (value) => filmResistanceKPerW(value, 4, 1000));
    expectRefusesBad('positive', 'conductivity (W/m·K)', (value) => filmResistanceKPerW(50, value, 1000));
    expectRefusesBad('positive', 'area (mm²)', (value) => filmResistanceKPerW(50, 4, value));
  });

  it('add up', () => {
    expect(chainKPerW([])).toBe(0);
    expect(chainKPerW([0.25, 0.125])).toBe(0.375);
    expectRefusesBad('notNegative', 'thermal resistance (K/W)', (value) => chainKPerW([0.1, value]));
  });
});

describe('temperatures', () => {
  it('rise from the inlet', () => {
    expect(steadyTemperatureC(31, 100, [0.25, 0.125])).toBe(68.5);
    expect(steadyTemperatureC(-5, 0, [0.25])).toBe(-5);
    expectRefusesBad('finite', 'inlet temperature (°C)', (value) => steadyTemperatureC(value, 100, []));
    expectRefusesBad('notNegative', 'power (W)', (value) => steadyTemperatureC(31, value, []));
  });

  it('leave room for so much power', () => {
    expect(powerAtLimitW(90, 40, 0.25)).toBe(200);
    expect(powerAtLimitW(40, 50, 0.25)).toBe(0);
    expectRefusesBad('finite', 'temperature limit (°C)', (value) => powerAtLimitW(value, 40, 0.25));
    expectRefusesBad('finite', 'inlet temperature (°C)', (value) => powerAtLimitW(90, value, 0.25));
    expectRefusesBad('positive', 'thermal resistance (K/W)', (value) => powerAtLimitW(90, 40, value));
  });
});

describe('paste', () => {
  it('fills the gap and some more', () => {
    expect(BOND_LINE_UM).toEqual({ low: 20, high: 100 });
    expect(PASTE_EXCESS).toEqual({ low: 1.2, high: 1.5 });
    expect(gapVolumeMm3(1000, 50)).toBe(50);
    expectRefusesBad('positive', 'area (mm²)', (value) => gapVolumeMm3(value, 50));
    expectRefusesBad('positive', 'bond line (µm)', (value) => gapVolumeMm3(900, value));
  });

  it('as a dot', () => {
    expect(halfSphereDiameterMm(Math.PI / 12)).toBeCloseTo(1, 12);
    expect(halfSphereDiameterMm(0)).toBe(0);
    expectRefusesBad('notNegative', 'volume (mm³)', halfSphereDiameterMm);
  });

  it('as grains', () => {
    expect(GRAINS_MM3).toEqual({
      'rice grain': { low: 12, high: 27 },
      'dry pea': { low: 150, high: 150 },
      'fresh pea': { low: 420, high: 500 },
    });
  });
});
