// Copper wire: gauge, resistance, and the voltage lost on the way out and back.
import { needBound, needCount, needNotNegative, needPositive, needWithin } from './numbers';

/** Resistivity of annealed copper at 20 °C, Ω·mm²/m. Source: IEC 60028, standard annealed copper, 1/58. */
export const COPPER_OHM_MM2_PER_M = 1 / 58;

/** Thickest and finest gauge computed here: 0000 is written −3. */
export const AWG_THICKEST = -3;
export const AWG_FINEST = 40;

/**
 * Diameter of a solid conductor: d = 0.127 × 92^((36 − n) / 39) mm.
 * Source: ASTM B258, standard nominal diameters of solid round wires; GNU units, `wiregauge`.
 * @throws RangeError outside −3 (0000) to 40, or for a fraction of a gauge.
 */
export function awgDiameterMm(gauge: number): number {
  needCount('gauge (AWG)', gauge, AWG_THICKEST);
  needWithin('gauge (AWG)', gauge, AWG_THICKEST, AWG_FINEST);
  return 0.127 * 92 ** ((36 - gauge) / 39);
}

/** Cross-section of that conductor, mm². */
export function awgAreaMm2(gauge: number): number {
  return (Math.PI / 4) * awgDiameterMm(gauge) ** 2;
}

/** Resistance of one metre at 20 °C, mΩ. Source: ρ = 1/58 Ω·mm²/m over the gauge's cross-section. */
export function awgMilliohmPerM(gauge: number): number {
  return (COPPER_OHM_MM2_PER_M / awgAreaMm2(gauge)) * 1000;
}

/**
 * Share of the current of a wire of `referenceGauge` that this gauge carries at as much heat a metre; a thicker wire
 * counts as that one, since its contacts stay what they are. Source: I²R a metre, R from the cross-section.
 */
export function gaugeCurrentShare(gauge: number, referenceGauge: number): number {
  return Math.min(1, Math.sqrt(awgAreaMm2(gauge) / awgAreaMm2(referenceGauge)));
}

export interface Cable {
  /** Wire gauge, AWG. */
  readonly gauge: number;
  /** From connector to connector; the current travels it twice. */
  readonly lengthM: number;
  /** Wires out, with as many back. */
  readonly pairs: number;
}

/** Resistance out and back, mΩ; contacts not counted. Source: R = 2 l ρ / (A n). */
export function cableMilliohm(cable: Cable): number {
  needNotNegative('length (m)', cable.lengthM);
  needCount('pairs', cable.pairs, 1);
  return (2 * cable.lengthM * awgMilliohmPerM(cable.gauge)) / cable.pairs;
}

/**
 * Voltage lost out and back when `powerW` is taken at `voltageV`, mV; contacts not counted. Infinity where nothing
 * bounds the power. Source: U = I R.
 */
export function cableDropMv(cable: Cable, powerW: number, voltageV: number): number {
  needBound('power (W)', powerW);
  needPositive('voltage (V)', voltageV);
  return (powerW / voltageV) * cableMilliohm(cable);
}
