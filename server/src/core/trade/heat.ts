// Heat from a processor to the air: resistances in a chain, the paste between, temperatures, paste.
import { needFinite, needNotNegative, needPositive } from './numbers';
import type { Range } from './numbers';

/** Resistance of a film: R = t / (k A), K/W. Source: Fourier's law for a plane wall. */
export function filmResistanceKPerW(thicknessUm: number, conductivityWPerMK: number, areaMm2: number): number {
  needNotNegative('thickness (µm)', thicknessUm);
  needPositive('conductivity (W/m·K)', conductivityWPerMK);
  needPositive('area (mm²)', areaMm2);
  return thicknessUm / (conductivityWPerMK * areaMm2);
}

/** Resistances one behind the other add up, K/W. */
export function chainKPerW(resistancesKPerW: readonly number[]): number {
  for (const resistance of resistancesKPerW) needNotNegative('thermal resistance (K/W)', resistance);
  return resistancesKPerW.reduce((sum, resistance) => sum + resistance, 0);
}

/**
 * Steady temperature: T = T_inlet + P · ΣR. The inlet is the air that the cooler takes in, not the room's.
 * Source: processor thermal design guides, case-to-ambient chain.
 */
export function steadyTemperatureC(inletC: number, powerW: number, resistancesKPerW: readonly number[]): number {
  needFinite('inlet temperature (°C)', inletC);
  needNotNegative('power (W)', powerW);
  return inletC + powerW * chainKPerW(resistancesKPerW);
}

/** Power at which the limit is just reached, W; zero when the inlet is already there. */
export function powerAtLimitW(limitC: number, inletC: number, chain: number): number {
  needFinite('temperature limit (°C)', limitC);
  needFinite('inlet temperature (°C)', inletC);
  needPositive('thermal resistance (K/W)', chain);
  return Math.max(0, (limitC - inletC) / chain);
}

/**
 * Bond line of a squeezed paste, µm. Source: the whole span, from memory; that a grease fills gaps below
 * 50 µm, a heat sink maker's tutorial on interface materials.
 */
export const BOND_LINE_UM: Range = { low: 20, high: 100 };

/** Paste to bring on, over what stays between the faces: some is pressed out. Source: common practice. */
export const PASTE_EXCESS: Range = { low: 1.2, high: 1.5 };

/** Volume that fills the gap itself, mm³. */
export function gapVolumeMm3(areaMm2: number, bondLineUm: number): number {
  needPositive('area (mm²)', areaMm2);
  needPositive('bond line (µm)', bondLineUm);
  return (areaMm2 * bondLineUm) / 1000;
}

/**
 * Diameter of the half sphere that holds a volume, mm: d = (12 V / π)^(1/3). A flatter dot is wider. Source: V = π d³
 * / 12.
 */
export function halfSphereDiameterMm(volumeMm3: number): number {
  needNotNegative('volume (mm³)', volumeMm3);
  return Math.cbrt((12 * volumeMm3) / Math.PI);
}

/** How far one dot is pressed out: a lid longer than this takes one more. Source: common practice. */
const DOT_REACHES_MM = 35;

/** Rows and columns of dots that cover a lid. Source: as above; handbooks of long sockets show such patterns. */
export function dotRows(widthMm: number, depthMm: number): { readonly across: number; readonly along: number } {
  needPositive('width (mm)', widthMm);
  needPositive('depth (mm)', depthMm);
  const sides = [Math.ceil(widthMm / DOT_REACHES_MM), Math.ceil(depthMm / DOT_REACHES_MM)];
  return { across: Math.min(...sides), along: Math.max(...sides) };
}

export type Grain = 'rice grain' | 'dry pea' | 'fresh pea';

/**
 * What the usual comparisons amount to, mm³; from rice to a fresh pea they span a factor of forty.
 * Source: papers on the physical properties of rice and pea seeds (three axes; volume of the ellipsoid).
 */
export const GRAINS_MM3: Readonly<Record<Grain, Range>> = {
  'rice grain': { low: 12, high: 27 },
  'dry pea': { low: 150, high: 150 },
  'fresh pea': { low: 420, high: 500 },
};

/**
 * How far a cooler’s base stands above the air that enters it at its rating in watts, at most: a processor of 100 °C in
 * a room of 25 °C. Source: common practice.
 */
export const RATED_AT_RISE_K = 75;

/** The most that a cooler rated at so many watts resists, K/W. Throws RangeError unless watts are above 0. */
export function resistanceAtRatingKPerW(ratedW: number): number {
  needPositive('ratedW', ratedW);
  return RATED_AT_RISE_K / ratedW;
}
