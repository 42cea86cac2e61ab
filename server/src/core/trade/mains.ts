// The mains: circuits, the supply's inlet, battery backup, stored charge.
import { needBound, needPositive, needWithin, type Range } from './numbers';

/**
 * Share of its breaker that a continuous load alone may take in the United States, in per cent: a breaker holds the
 * other loads plus 125 % of the continuous ones. Elsewhere the local code decides.
 */
export const CONTINUOUS_US = { percent: 80, source: 'NFPA 70, National Electrical Code, 210.20(A)' } as const;

/** Power at the breaker's own rating, W, at power factor 1. Source: P = U I. */
export function circuitPowerW(voltageV: number, breakerA: number): number {
  needPositive('voltage (V)', voltageV);
  needPositive('breaker (A)', breakerA);
  return voltageV * breakerA;
}

/**
 * Most that may stay on the circuit for three hours or more, W, by the share of the breaker that the site's rule
 * leaves to a continuous load, in per cent. Source: NFPA 70, 210.20(A).
 */
export function continuousLimitW(voltageV: number, breakerA: number, sharePercent: number): number {
  needWithin('share of the breaker (%)', sharePercent, 0, 100);
  return (circuitPowerW(voltageV, breakerA) * sharePercent) / 100;
}

export type Correction = 'active' | 'passive' | 'none';

/**
 * Power factor of a computer's supply under load, by its correction: watts for each VA.
 * Source: PC Guide, power supply specifications, 0.6 to 0.7 without correction; FAQs of makers and testers of
 * supplies, 0.55 to 0.65 without, 0.75 to 0.8 with a passive filter, above 0.95 with an active one.
 */
export const POWER_FACTORS: Readonly<Record<Correction, Range>> = {
  none: { low: 0.55, high: 0.7 },
  passive: { low: 0.7, high: 0.8 },
  active: { low: 0.95, high: 1 },
};

/** Apparent power, VA: watts over the power factor. Source: definition of the power factor. */
export function apparentVa(powerW: number, powerFactor: number): number {
  needBound('power (W)', powerW);
  needPositive('power factor', powerFactor);
  return powerW / powerFactor;
}

/** Watts that a UPS delivers for each of its VA, where its data sheet is silent. Source: common practice. */
export const BACKUP_POWER_FACTOR: Range = { low: 0.5, high: 1 };

/** Longest that a UPS which waits beside the mains takes to change over, ms. Source: common practice. */
export const STANDBY_TRANSFER_MS = 10;

/** Least time that a supply for desktops bridges at full load, ms. Source: common practice. */
export const USUAL_HOLD_UP_MS = 10;

/**
 * Least time that a supply bridges at full load, ms, by the guide it follows. Source: ATX Version 3 design guide, doc.
 * 336521, hold-up above 16 ms; ATX12V Power Supply Design Guide, version 2: 16 ms.
 */
export const HOLD_UP_MS: Readonly<Partial<Record<string, number>>> = { 'ATX 2': 16, 'ATX 3.0': 16 };

/** A plug of the lower mains voltage is made for 15 A, and for hours carries 80 % of that, A. Source: NFPA 70. */
const LOW_MAINS_PLUG_A = 12;
/** Efficiency of a large supply there. Source: common practice. */
const LOW_MAINS_EFFICIENCY = 0.9;

/**
 * What a supply on one plug of the lower mains voltage can deliver for hours, W; a larger rating often holds at the
 * higher mains voltage only. Source: common practice, from 12 A of the plug.
 */
export function lowMainsOutputW(mainsV: number): number {
  needPositive('mains voltage (V)', mainsV);
  return mainsV * LOW_MAINS_PLUG_A * LOW_MAINS_EFFICIENCY;
}

/**
 * Runtime of a battery backup, s, as an upper bound: t = E · η / P, the efficiency in per cent. A real battery gives
 * less at a high current, when old and when cold. Nothing lasts under an endless load.
 * Source: energy over power; that it is a bound, common practice.
 */
export function backupAtMostS(energyJ: number, efficiencyPercent: number, loadW: number): number {
  needBound('energy (J)', energyJ);
  needWithin('efficiency (%)', efficiencyPercent, 0, 100);
  needBound('load (W)', loadW);
  return (energyJ * efficiencyPercent) / 100 / loadW;
}

/**
 * Share of that bound which a real battery gives: all of it when new, warm and lightly loaded; about half when it is
 * emptied within half an hour, or old, or cold. Source: common practice.
 */
export const BATTERY_GIVES_PERCENT = { low: 50, high: 100 } as const;

export type BackupWave = 'sine' | 'stepped';

/**
 * Whether a supply with active power factor correction keeps running on a backup of this wave: a stepped one
 * may drop it at the change-over, so try it under load. Source: common practice.
 */
export const BACKUP_WAVE_WITH_ACTIVE_PFC: Readonly<Record<BackupWave, 'suits' | 'try under load'>> = {
  sine: 'suits',
  stepped: 'try under load',
};

/**
 * How far beyond the voltages it is marked for a supply still works, either way, in per cent: a site’s mains is
 * seldom its nominal. Source: ATX12V Power Supply Design Guide, version 2.0, table 1: 90 V where 100 V is marked,
 * more than that where 240 V is.
 */
export const MARKED_VOLTAGE_TOLERANCE_PERCENT = 10;
