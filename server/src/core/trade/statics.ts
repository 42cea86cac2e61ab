// Static electricity: straps, charging by floor and humidity, surfaces, bags.
import { needWithin } from './numbers';
import type { Range } from './numbers';

/**
 * Limits of a personal earthing strap. A cordless strap cannot meet the first.
 * Source: ANSI/ESD S20.20 (person through the strap below 35 MΩ, parts of 100 V human body model);
 * ANSI/ESD S1.1 annex B (at most 0.5 mA; 0.8 MΩ serves for 240 V; 1 MΩ is the usual resistor).
 */
export const STRAP = {
  throughPersonBelowOhm: 35e6,
  cordOhm: 1e6,
  cordLeastOhm: 0.8e6,
  currentBelowMa: 0.5,
  protectsFromV: 100,
} as const;

export type Activity = 'walking on carpet' | 'walking on vinyl' | 'working at a bench';

export interface ChargeRow {
  readonly humidityPercent: number;
  readonly volts: number;
}

/**
 * Voltages people reach, driest first. Source: a computer maker's service manual, typical electrostatic voltage
 * levels.
 */
export const CHARGES: Readonly<Record<Activity, readonly ChargeRow[]>> = {
  'walking on carpet': [
    { humidityPercent: 10, volts: 35_000 },
    { humidityPercent: 40, volts: 15_000 },
    { humidityPercent: 55, volts: 7_500 },
  ],
  'walking on vinyl': [
    { humidityPercent: 10, volts: 12_000 },
    { humidityPercent: 40, volts: 5_000 },
    { humidityPercent: 55, volts: 3_000 },
  ],
  'working at a bench': [
    { humidityPercent: 10, volts: 6_000 },
    { humidityPercent: 40, volts: 800 },
    { humidityPercent: 55, volts: 400 },
  ],
};

/**
 * Voltage reached at a humidity: between the two rows around it, not a line drawn through them. Drier than
 * the driest row it is at least that row's, damper than the dampest at most that row's. Source: `CHARGES`.
 * @throws RangeError outside 0 to 100 %.
 */
export function chargeV(activity: Activity, humidityPercent: number): Range {
  needWithin('relative humidity (%)', humidityPercent, 0, 100);
  const rows = CHARGES[activity];
  const damper = rows.find((row) => row.humidityPercent >= humidityPercent);
  const drier = rows.findLast((row) => row.humidityPercent <= humidityPercent);
  return { low: damper?.volts ?? 0, high: drier?.volts ?? Number.POSITIVE_INFINITY };
}

/**
 * Resistance of a work surface to earth, Ω, as practised. Source: ANSI/ESD S20.20 asks for below 10⁹; the low end,
 * common practice.
 */
export const WORK_SURFACE_OHM: Range = { low: 1e6, high: 1e9 };

export type Surface = 'mat' | 'wood' | 'cardboard' | 'metal' | 'glass' | 'plastic' | 'carpet' | 'shielding bag';

export interface SurfaceFacts {
  /** `drains`: made to cable charge off, once earthed. `neutral`: used bare, no earth claimed. */
  readonly static: 'drains' | 'neutral' | 'charges' | 'conducts';
  /** Whether it can short the contacts of a board that lies on it with power on. */
  readonly shorts: boolean;
  readonly source: string;
}

/** What is claimed of the surfaces people build on, and no more. */
export const SURFACES: Readonly<Record<Surface, SurfaceFacts>> = {
  mat: { static: 'drains', shorts: false, source: 'ANSI/ESD S20.20, work surfaces' },
  wood: { static: 'neutral', shorts: false, source: 'common practice, bare wood' },
  cardboard: { static: 'neutral', shorts: false, source: 'common practice, plain and dry' },
  metal: { static: 'conducts', shorts: true, source: 'common practice' },
  glass: { static: 'charges', shorts: false, source: 'common practice' },
  plastic: { static: 'charges', shorts: false, source: 'common practice' },
  carpet: { static: 'charges', shorts: false, source: 'a computer maker’s service manual, voltage levels' },
  'shielding bag': { static: 'conducts', shorts: true, source: 'ANSI/ESD S541: the outside of a bag conducts' },
};

/** Whether a part may be laid out and worked on there: never on a bag, on metal, or on what charges up. */
export function surfaceServesAsBench(surface: Surface): boolean {
  const { static: kind } = SURFACES[surface];
  return kind === 'drains' || kind === 'neutral';
}
