// Air, dew, radiators.
import { describe, expect, it } from 'vitest';
import {
  airDensityKgPerM3,
  airflowNeededM3PerH,
  airRiseK,
  DELIVERED_OF_FREE_AIR,
  dewPointC,
  pressureRatio,
  radiatorClassMm,
} from '../../../server/src/core/trade/air';
import { expectRefusal, expectRefusesBad } from './refuses';

describe('air', () => {
  it('thins with height', () => {
    expect(pressureRatio(0)).toBe(1);
    expect(pressureRatio(2000)).toBeCloseTo(0.784557, 6);
    expect(pressureRatio(-500)).toBeGreaterThan(1.06);
    expect(pressureRatio(11_000)).toBeCloseTo(0.2234, 3);
    expectRefusal(() => pressureRatio(-501), 'altitude (m) must be between -500 and 11000, not -501');
    expectRefusal(() => pressureRatio(11_001), 'altitude (m) must be between -500 and 11000, not 11001');
  });

  it('thins with warmth', () => {
    expect(airDensityKgPerM3(20, 0)).toBeCloseTo(1.2041, 4);
    expect(airDensityKgPerM3(20, 2000)).toBeCloseTo(0.944699, 6);
    expect(airDensityKgPerM3(-100, 0)).toBeGreaterThan(2);
    expect(airDensityKgPerM3(200, 0)).toBeLessThan(0.75);
    expectRefusal(() => airDensityKgPerM3(-101, 0), 'air temperature (°C) must be between -100 and 200, not -101');
    expectRefusal(() => airDensityKgPerM3(201, 0), 'air temperature (°C) must be between -100 and 200, not 201');
  });
});

describe('flow', () => {
  it('carries heat off', () => {
    expect(airflowNeededM3PerH(1007, 10, 1.2)).toBeCloseTo(300, 10);
    expect(airflowNeededM3PerH(0, 10, 1.2)).toBe(0);
    expect(airRiseK(1007, 300, 1.2)).toBeCloseTo(10, 10);
    expectRefusesBad('notNegative', 'heat (W)', (value) => airflowNeededM3PerH(value, 10, 1.2));
    expectRefusesBad('positive', 'rise (K)', (value) => airflowNeededM3PerH(100, value, 1.2));
    expectRefusesBad('positive', 'density (kg/m³)', (value) => airflowNeededM3PerH(100, 10, value));
    expectRefusesBad('notNegative', 'heat (W)', (value) => airRiseK(value, 100, 1.2));
    expectRefusesBad('positive', 'flow (m³/h)', (value) => airRiseK(100, value, 1.2));
    expectRefusesBad('positive', 'density (kg/m³)', (value) => airRiseK(100, 100, value));
  });
  it('less is delivered than in free air', () => {
    expect(DELIVERED_OF_FREE_AIR).toEqual({ low: 0.4, high: 0.7 });
  });
});

describe('fans', () => {
  it('make a radiator’s class', () => {
    expect(radiatorClassMm(2, 120)).toBe(240);
    expect(radiatorClassMm(3, 140)).toBe(420);
    expectRefusal(() => radiatorClassMm(0, 120), 'number of fans must be a whole number of at least 1, not 0');
    expectRefusesBad('positive', 'fan size (mm)', (value) => radiatorClassMm(2, value));
  });
});

describe('dew', () => {
  it('has its point', () => {
    expect(dewPointC(20, 100)).toBeCloseTo(20, 10);
    expect(dewPointC(25, 50)).toBeCloseTo(13.85, 2);
    expect(dewPointC(-45, 100)).toBeCloseTo(-45, 10);
    expect(dewPointC(60, 1)).toBeLessThan(-10);
    expectRefusal(() => dewPointC(-46, 50), 'air temperature (°C) must be between -45 and 60, not -46');
    expectRefusal(() => dewPointC(61, 50), 'air temperature (°C) must be between -45 and 60, not 61');
    expectRefusal(() => dewPointC(20, 0.9), 'relative humidity (%) must be between 1 and 100, not 0.9');
    expectRefusal(() => dewPointC(20, 101), 'relative humidity (%) must be between 1 and 100, not 101');
  });
});
