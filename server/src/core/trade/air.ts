// Air: its density, the flow that carries heat off, dew, radiators.
import { needCount, needNotNegative, needPositive, needWithin } from './numbers';
import type { Range } from './numbers';

/**
 * Specific heat of air between 15 and 70 °C, J/(kg·K). Source: Çengel, Heat and Mass Transfer, property tables, air
 * at 1 atm.
 */
export const AIR_J_PER_KG_K = 1007;

/** Gas constant of dry air, J/(kg·K). Source: US Standard Atmosphere 1976. */
export const AIR_GAS_J_PER_KG_K = 287.05;

/** Pressure at sea level, Pa. Source: US Standard Atmosphere 1976; GNU units, `atm`. */
export const SEA_LEVEL_PA = 101_325;
const LOWEST_M = -500;
const HIGHEST_M = 11_000;

/**
 * Air pressure at an altitude over that at sea level: (1 − 2.25577e-5 h)^5.25588.
 * Source: US Standard Atmosphere 1976, troposphere. @throws RangeError outside −500 to 11,000 m.
 */
export function pressureRatio(altitudeM: number): number {
  needWithin('altitude (m)', altitudeM, LOWEST_M, HIGHEST_M);
  return (1 - 2.25577e-5 * altitudeM) ** 5.25588;
}

/**
 * Density of dry air, kg/m³, at the room's own temperature and the altitude's pressure: a heated room on
 * a mountain is not as cold as the standard atmosphere there. Source: ρ = p / (R T), US Standard Atmosphere 1976.
 */
export function airDensityKgPerM3(temperatureC: number, altitudeM: number): number {
  needWithin('air temperature (°C)', temperatureC, -100, 200);
  return (SEA_LEVEL_PA * pressureRatio(altitudeM)) / (AIR_GAS_J_PER_KG_K * (temperatureC + 273.15));
}

/** Flow that carries a heat off at a rise, m³/h: Q = P / (ρ cₚ ΔT). Source: energy balance of a stream. */
export function airflowNeededM3PerH(powerW: number, riseK: number, densityKgPerM3: number): number {
  needNotNegative('heat (W)', powerW);
  needPositive('rise (K)', riseK);
  needPositive('density (kg/m³)', densityKgPerM3);
  return (powerW / (densityKgPerM3 * AIR_J_PER_KG_K * riseK)) * 3600;
}

/** Rise of the air that carries a heat off, K. Source: as above, solved for ΔT. */
export function airRiseK(powerW: number, flowM3PerH: number, densityKgPerM3: number): number {
  needNotNegative('heat (W)', powerW);
  needPositive('flow (m³/h)', flowM3PerH);
  needPositive('density (kg/m³)', densityKgPerM3);
  return powerW / ((densityKgPerM3 * AIR_J_PER_KG_K * flowM3PerH) / 3600);
}

/**
 * Share of its free-air flow that a fan delivers behind grilles, filters and in a filled case. Source: common
 * practice.
 */
export const DELIVERED_OF_FREE_AIR: Range = { low: 0.4, high: 0.7 };

/**
 * Heat that a case gives off through its walls and gaps with no fan in it, for each kelvin of rise, W/K: nothing that
 * anyone could count on, up to 1 m² of wall at 10 W/(m²·K), free convection and radiation together.
 * Source: Incropera, Fundamentals of Heat and Mass Transfer: free convection in gases, 2 to 25 W/(m²·K); the area,
 * common practice.
 */
export const STILL_CASE_W_PER_K: Range = { low: 0, high: 10 };

/** Most air that the fan of a supply draws out of a case, m³/h. Source: common practice: a fan of 120 to 140 mm. */
export const SUPPLY_FAN_M3_PER_H = 80;

const MAGNUS_A = 17.62;
const MAGNUS_B_C = 243.12;

/**
 * Dew point, °C, by Magnus with a = 17.62, b = 243.12 °C, over water.
 * Source: WMO Guide to Instruments and Methods of Observation (No. 8), annex 4.B.
 * @throws RangeError outside −45 to 60 °C or humidity outside 1 to 100 %.
 */
export function dewPointC(temperatureC: number, humidityPercent: number): number {
  needWithin('air temperature (°C)', temperatureC, -45, 60);
  needWithin('relative humidity (%)', humidityPercent, 1, 100);
  const term = Math.log(humidityPercent / 100) + (MAGNUS_A * temperatureC) / (MAGNUS_B_C + temperatureC);
  return (MAGNUS_B_C * term) / (MAGNUS_A - term);
}

/**
 * How long parts that were out in the cold are to lie sealed in the room, h: below `low` is surely too short, from
 * `high` on surely enough. Source: a computer maker's handbook, two hours; ASHRAE, Cold Weather Shipping Acclimation
 * and Best Practices: typically 24 h and more for whole racks.
 */
export const WARM_UP_H: Range = { low: 2, high: 24 };

/**
 * What end tanks add to a radiator's class, mm. Source: common practice: sheets print 153 for a 120, 274 to 284 for a
 * 240, 394 to 402 for a 360; thick ones of a loop are longer.
 */
export const RADIATOR_TANKS_MM: Range = { low: 25, high: 50 };

/**
 * A radiator's class: number of fans × fan size, mm. Its real length is longer ("240" is about 275 mm), so a
 * place needs the maker's own length. Source: common practice.
 */
export function radiatorClassMm(fanCount: number, fanSizeMm: number): number {
  needCount('number of fans', fanCount, 1);
  needPositive('fan size (mm)', fanSizeMm);
  return fanCount * fanSizeMm;
}
