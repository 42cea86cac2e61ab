// Air against property tables, the standard atmosphere, fan makers' rules and GNU units.
import { describe, expect, it } from 'vitest';
import {
  AIR_J_PER_KG_K,
  airDensityKgPerM3,
  airflowNeededM3PerH,
  dewPointC,
  pressureRatio,
  STILL_CASE_W_PER_K,
} from '../../server/src/core/trade/air';
import { expectNear } from './near';
import { itWithOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

/** °C, kg/m³, J/(kg·K). Source: Çengel, Heat and Mass Transfer, property tables, air at 1 atm. */
const AIR: [number, number, number][] = [
  [15, 1.225, 1007],
  [20, 1.204, 1007],
  [25, 1.184, 1007],
  [30, 1.164, 1007],
  [35, 1.145, 1007],
  [40, 1.127, 1007],
  [45, 1.109, 1007],
  [50, 1.092, 1007],
  [60, 1.059, 1007],
  [70, 1.028, 1007],
];

/** m, pressure over that at sea level. Source: US Standard Atmosphere 1976, by the tables named. */
const PRESSURES: [number, number, string][] = [
  [1000, 0.887, 'rounded to three places'],
  [2000, 0.785, 'rounded to three places'],
  [3000, 0.692, 'rounded to three places'],
  [1524, 12.228 / 14.696, 'a table in feet and psi, 5,000 ft'],
  [3048, 10.108 / 14.696, 'the same, 10,000 ft'],
  [3200, 0.6746, 'a table of ratios, 3.2 km'],
];

/**
 * °C, % humidity, dew point. Source: WMO Guide No. 8, annex 4.B (Magnus, 17.62 and 243.12 °C), worked to two places.
 */
const DEW: [number, number, number][] = [
  [25, 50, 13.85],
  [5, 90, 3.5],
];
/** Source: 1 ft is 0.3048 m. */
const CFM_PER_M3_PER_H = 1 / (60 * 0.3048 ** 3);

const cfmFor = (watts: number, riseK: number, density: number): number =>
  airflowNeededM3PerH(watts, riseK, density) * CFM_PER_M3_PER_H;

describe('air', () => {
  it.each(AIR)('at %i °C weighs %f kg/m³ and takes %i J/(kg·K)', (celsius, density, heat) => {
    expectNear(airDensityKgPerM3(celsius, 0), density, TOLERANCES.airDensity);
    expect(AIR_J_PER_KG_K).toBe(heat);
  });

  it.each(PRESSURES)('at %i m the pressure is %f of sea level (%s)', (metres, ratio) => {
    expectNear(pressureRatio(metres), ratio, TOLERANCES.pressureRatio);
  });

  it('a heated room at 3000 m has air by its pressure, not by the cold of the standard atmosphere', () => {
    expectNear(airDensityKgPerM3(20, 3000) / airDensityKgPerM3(20, 0), 0.692, TOLERANCES.pressureRatio);
  });

  it.each(DEW)('%f °C and %i %% give a dew point of %f °C', (celsius, humidity, dew) => {
    expectNear(dewPointC(celsius, humidity), dew, TOLERANCES.dewPointC);
  });
});

describe('flow that carries heat off', () => {
  it('takes 1.748 CFM for one watt at one kelvin, in air of 20 °C', () => {
    expectNear(cfmFor(1, 1, airDensityKgPerM3(20, 0)), 1.748, TOLERANCES.airflow);
  });

  /** Source: fan makers' engineering notes, CFM = 3160 kW / ΔT °F. */
  it.each([
    [100, 20],
    [340, 27],
  ])('agrees with the fan makers’ 3.16 W / ΔT °F: %i W, %i °F', (watts, riseF) => {
    expectNear(cfmFor(watts, riseF / 1.8, airDensityKgPerM3(20, 0)), (3.16 * watts) / riseF, TOLERANCES.airflowRule);
  });

  itWithOracle('units', '340 W at 15 K in air of 1.19 kg/m³, by GNU units', () => {
    const worked = units('340 W / (1.19 kg/m^3 * 1007 J/(kg K) * 15 K)', 'ft^3/min');
    expectNear(cfmFor(340, 15, 1.19), worked, TOLERANCES.workedByUnits);
  });

  it('does not follow a worked figure of 39.5 CFM for 1.19 kg/m³, which belongs to 1.21', () => {
    expectNear(cfmFor(340, 15, 1.21), 39.5, TOLERANCES.airflowRule);
    expect(cfmFor(340, 15, 1.19)).toBeGreaterThan(39.5 * (1 + TOLERANCES.airflowRule.relative));
  });

  /** W/(m²·K). Source: Incropera, Fundamentals of Heat and Mass Transfer, free convection in gases, 2 to 25. */
  it('a closed case gives off what 1 m² of wall can by free convection, from nothing up', () => {
    expect(STILL_CASE_W_PER_K.low).toBe(0);
    expect(STILL_CASE_W_PER_K.high).toBeGreaterThanOrEqual(2);
    expect(STILL_CASE_W_PER_K.high).toBeLessThanOrEqual(25);
  });
});
