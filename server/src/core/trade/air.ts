// Air: its density, the flow that carries heat off, fans by themselves and together, dew, radiators.
import { needCount, needFinite, needNotNegative, needPositive, needWithin } from './numbers';
import type { Range } from './numbers';

/** Specific heat of air between 15 and 70 °C, J/(kg·K). Source: Çengel, Heat and Mass Transfer, property tables, air at 1 atm. */
export const AIR_J_PER_KG_K = 1007;

/** Gas constant of dry air, J/(kg·K). Source: US Standard Atmosphere 1976. */
export const AIR_GAS_J_PER_KG_K = 287.05;

/** Pressure at sea level, Pa. Source: US Standard Atmosphere 1976; GNU units, `atm`. */
export const SEA_LEVEL_PA = 101_325;

/** Cubic feet a minute in one cubic metre an hour. Source: 1 ft = 0.3048 m exactly (GNU units). */
export const CFM_PER_M3_PER_H = 1 / (60 * 0.3048 ** 3);

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
  return SEA_LEVEL_PA * pressureRatio(altitudeM) / (AIR_GAS_J_PER_KG_K * (temperatureC + 273.15));
}

/** Flow that carries a heat off at a rise, m³/h: Q = P / (ρ cₚ ΔT). Source: energy balance of a stream. */
export function airflowNeededM3PerH(powerW: number, riseK: number, densityKgPerM3: number): number {
  needNotNegative('heat (W)', powerW);
  needPositive('rise (K)', riseK);
  needPositive('density (kg/m³)', densityKgPerM3);
  return powerW / (densityKgPerM3 * AIR_J_PER_KG_K * riseK) * 3600;
}

/** Rise of the air that carries a heat off, K. Source: as above, solved for ΔT. */
export function airRiseK(powerW: number, flowM3PerH: number, densityKgPerM3: number): number {
  needNotNegative('heat (W)', powerW);
  needPositive('flow (m³/h)', flowM3PerH);
  needPositive('density (kg/m³)', densityKgPerM3);
  return powerW / (densityKgPerM3 * AIR_J_PER_KG_K * flowM3PerH / 3600);
}

/** m³/h to CFM. Source: GNU units. */
export function cfmFromM3PerH(flowM3PerH: number): number {
  needNotNegative('flow (m³/h)', flowM3PerH);
  return flowM3PerH * CFM_PER_M3_PER_H;
}

/** CFM to m³/h. Source: GNU units. */
export function m3PerHFromCfm(flowCfm: number): number {
  needNotNegative('flow (CFM)', flowCfm);
  return flowCfm / CFM_PER_M3_PER_H;
}

/** Share of its free-air flow that a fan delivers behind grilles, filters and in a filled case. Source: common practice. */
export const DELIVERED_OF_FREE_AIR: Range = { low: 0.4, high: 0.7 };

/**
 * Heat that a case gives off through its walls and gaps with no fan in it, for each kelvin of rise, W/K: nothing that
 * anyone could count on, up to 1 m² of wall at 10 W/(m²·K), free convection and radiation together.
 * Source: Incropera, Fundamentals of Heat and Mass Transfer: free convection in gases, 2 to 25 W/(m²·K); the area, common practice.
 */
export const STILL_CASE_W_PER_K: Range = { low: 0, high: 10 };

/** Flow that fans of this free-air flow really deliver, m³/h. Source: common practice. */
export function deliveredM3PerH(freeAirM3PerH: number): Range {
  needNotNegative('free-air flow (m³/h)', freeAirM3PerH);
  const { low, high } = DELIVERED_OF_FREE_AIR;
  return { low: freeAirM3PerH * low, high: freeAirM3PerH * high };
}

export interface FanFactors {
  readonly flow: number;
  readonly pressure: number;
  readonly power: number;
}

/** What a change of speed does to one fan in one case: Q ∝ N, p ∝ N², P ∝ N³. Source: fan affinity laws, AMCA 201. */
export function fanLaws(fromRpm: number, toRpm: number): FanFactors {
  needPositive('speed before (rpm)', fromRpm);
  needNotNegative('speed after (rpm)', toRpm);
  const ratio = toRpm / fromRpm;
  return { flow: ratio, pressure: ratio ** 2, power: ratio ** 3 };
}

/** The two ends of a fan's curve. */
export interface FanEnds {
  readonly freeFlowM3PerH: number;
  readonly blockedPressurePa: number;
}

/**
 * Equal fans together, at the two ends of the curve only: side by side they multiply the free flow, one
 * behind the other the blocked pressure. In a case they gain less of either. Source: fan makers' engineering notes.
 */
export function fansTogether(one: FanEnds, count: number, placed: 'side by side' | 'one behind the other'): FanEnds {
  needNotNegative('free flow (m³/h)', one.freeFlowM3PerH);
  needNotNegative('blocked pressure (Pa)', one.blockedPressurePa);
  needCount('number of fans', count, 1);
  return placed === 'side by side'
    ? { ...one, freeFlowM3PerH: one.freeFlowM3PerH * count }
    : { ...one, blockedPressurePa: one.blockedPressurePa * count };
}

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
  const term = Math.log(humidityPercent / 100) + MAGNUS_A * temperatureC / (MAGNUS_B_C + temperatureC);
  return MAGNUS_B_C * term / (MAGNUS_A - term);
}

/** Whether dew falls on a part as cold as this when it comes into that room. Source: as for `dewPointC`. */
export function dewFalls(partC: number, roomC: number, humidityPercent: number): boolean {
  needFinite('part temperature (°C)', partC);
  return partC <= dewPointC(roomC, humidityPercent);
}

/**
 * How long parts that were out in the cold are to lie sealed in the room, h: below `low` is surely too short, from
 * `high` on surely enough. Source: a computer maker's handbook, two hours; ASHRAE, Cold Weather Shipping Acclimation
 * and Best Practices: typically 24 h and more for whole racks.
 */
export const WARM_UP_H: Range = { low: 2, high: 24 };

/**
 * A radiator's class: number of fans × fan size, mm. Its real length is longer ("240" is about 275 mm), so a
 * place needs the maker's own length. Source: common practice.
 */
export function radiatorClassMm(fanCount: number, fanSizeMm: number): number {
  needCount('number of fans', fanCount, 1);
  needPositive('fan size (mm)', fanSizeMm);
  return fanCount * fanSizeMm;
}
