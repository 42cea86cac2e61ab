// What a supply must hold: sums, rails, short peaks, hold-up.
import { needNotNegative, needPositive, needWithin } from './numbers';
import type { Range } from './numbers';

/** Sustained draw of several parts, watts. @throws RangeError on a negative or unreal draw. */
export function totalPowerW(drawsW: readonly number[]): number {
  for (const drawW of drawsW) needNotNegative('draw (W)', drawW);
  return drawsW.reduce((sum, drawW) => sum + drawW, 0);
}

/** Load as a fraction of the rating: 1 is full load, above 1 is overloaded. */
export function loadFraction(loadW: number, ratingW: number): number {
  needNotNegative('load (W)', loadW);
  needPositive('rating (W)', ratingW);
  return loadW / ratingW;
}

/** What is left of the rating, as a percentage of it; negative when overloaded. */
export function headroomPercent(loadW: number, ratingW: number): number {
  return (1 - loadFraction(loadW, ratingW)) * 100;
}

/** I = P / U. */
export function currentA(powerW: number, voltageV: number): number {
  needNotNegative('power (W)', powerW);
  needPositive('voltage (V)', voltageV);
  return powerW / voltageV;
}

/** Allowed departure from a rail's nominal voltage, per cent, both ways. Source: ATX12V Power Supply Design Guide, DC voltage regulation. */
export const RAIL_TOLERANCE_PERCENT = 5;

/** 12 V at a card's own plugs: +5 / −8 %. Source: ATX Version 3 design guide, doc. 336521, table 3-5. */
export const CARD_PLUG_TOLERANCE_PERCENT = { over: 5, under: 8 } as const;

/** The span a main rail must keep to, ±5 %. Source: ATX12V Power Supply Design Guide. */
export function railLimitsV(nominalV: number): Range {
  needPositive('nominal voltage (V)', nominalV);
  const span = nominalV * RAIL_TOLERANCE_PERCENT / 100;
  return { low: nominalV - span, high: nominalV + span };
}

/** The span of 12 V at a card's plugs, +5 / −8 %. Source: doc. 336521, table 3-5. */
export function cardPlugLimitsV(nominalV: number): Range {
  needPositive('nominal voltage (V)', nominalV);
  const { over, under } = CARD_PLUG_TOLERANCE_PERCENT;
  return { low: nominalV * (100 - under) / 100, high: nominalV * (100 + over) / 100 };
}

export interface Excursion {
  /** The peak lasts this long at most. */
  readonly durationMs: number;
  readonly percentOfRating: number;
}

/**
 * Peaks that a supply must ride out, shortest first. `large`: rated above 450 W and with a 16-pin
 * plug; `other`: everything else. Source: ATX Version 3 design guide, doc. 336521, table 3-3.
 */
export const EXCURSIONS: Readonly<Record<'large' | 'other', readonly Excursion[]>> = {
  large: [
    { durationMs: 0.1, percentOfRating: 200 },
    { durationMs: 1, percentOfRating: 180 },
    { durationMs: 10, percentOfRating: 160 },
    { durationMs: 100, percentOfRating: 120 },
  ],
  other: [
    { durationMs: 0.1, percentOfRating: 150 },
    { durationMs: 1, percentOfRating: 145 },
    { durationMs: 10, percentOfRating: 135 },
    { durationMs: 100, percentOfRating: 110 },
  ],
};

/** At this rating and below a supply is of the `other` class. Source: doc. 336521, table 3-3. */
export const EXCURSION_CLASS_ABOVE_W = 450;

/**
 * Largest peak, in per cent of the rating, that the standard lets a card and processor ask of a supply
 * for `durationMs`. Between two rows the longer one counts; beyond 100 ms only the rating itself.
 * Holds for supplies built to version 3 of the guide; older ones promise nothing above 100 %.
 * Source: doc. 336521, table 3-3.
 */
export function excursionAllowedPercent(ratingW: number, has16Pin: boolean, durationMs: number): number {
  needPositive('rating (W)', ratingW);
  needPositive('duration (ms)', durationMs);
  const rows = has16Pin && ratingW > EXCURSION_CLASS_ABOVE_W ? EXCURSIONS.large : EXCURSIONS.other;
  return rows.find((row) => durationMs <= row.durationMs)?.percentOfRating ?? 100;
}

/** The same in watts. Source: doc. 336521, table 3-3. */
export function excursionAllowedW(ratingW: number, has16Pin: boolean, durationMs: number): number {
  return ratingW * excursionAllowedPercent(ratingW, has16Pin, durationMs) / 100;
}

export interface HoldUp {
  readonly guide: string;
  /** The outputs stay good for longer than this after the mains fails. */
  readonly aboveMs: number;
  readonly atLoadPercent: number;
  readonly required: boolean;
}

/**
 * Hold-up after the mains fails. The revisions differ: 2.0 asks for more than 16 ms without easing it
 * for part load, 2.1a requires 11 ms at full load and recommends 16 ms at 80 % load.
 * Source: doc. 336521, revision 2.01 table 4-9 and revision 2.1a table 4-10 (T5).
 */
export const HOLD_UP: readonly HoldUp[] = [
  { guide: 'doc. 336521 revision 2.0', aboveMs: 16, atLoadPercent: 100, required: true },
  { guide: 'doc. 336521 revision 2.1a', aboveMs: 11, atLoadPercent: 100, required: true },
  { guide: 'doc. 336521 revision 2.1a', aboveMs: 16, atLoadPercent: 80, required: false },
];

/** Voltage left at the far end of a lead, as a percentage lost of the nominal. */
export function dropPercent(dropV: number, nominalV: number): number {
  needPositive('nominal voltage (V)', nominalV);
  needWithin('drop (V)', dropV, 0, nominalV);
  return dropV / nominalV * 100;
}
