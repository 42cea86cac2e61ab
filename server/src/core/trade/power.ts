// What a supply must hold: rails and short peaks.
import { needPositive } from './numbers';
import type { Range } from './numbers';

/**
 * Allowed departure from a rail's nominal voltage, per cent, both ways. Source: ATX12V Power Supply Design Guide, DC
 * voltage regulation.
 */
export const RAIL_TOLERANCE_PERCENT = 5;

/** 12 V at a card's own connectors: +5 / −8 %. Source: ATX Version 3 design guide, doc. 336521, table 3-5. */
export const CARD_CONNECTOR_TOLERANCE_PERCENT = { over: 5, under: 8 } as const;
/** Share of its rating that a supply delivers at 12 V, per cent, without its label. Source: common practice. */
export const TWELVE_VOLT_SHARE_PERCENT: Range = { low: 80, high: 100 };

/** What the 5 V rail of a supply for desktops delivers at least, W, without its label. Source: common practice. */
export const FIVE_VOLT_LEAST_W = 50;

export type MainRail = '12 V' | '5 V' | '3.3 V';

/** Nominal voltages, V. Source: ATX12V Power Supply Design Guide. */
export const RAIL_V: Readonly<Record<MainRail, number>> = { '12 V': 12, '5 V': 5, '3.3 V': 3.3 };
/** A rail that sags is still the rail it is: as far from its nominal, per cent, it is known by its voltage. */
const RAIL_KNOWN_WITHIN_PERCENT = 15;

/**
 * Which main rail a label means, by its name, else by its voltage; `other` for standby and negative rails, nothing
 * where neither tells. Source: common practice.
 */
export function railOf(name: string, volts: number | undefined): MainRail | 'other' | undefined {
  const plain = name.replace(/\s/g, '').toUpperCase();
  if (/^[-−–]/.test(plain) || isStandbyRail(plain)) return 'other';
  const named = /^\+?(12|5|3[.,]3)V/.exec(plain)?.[1]?.replace(',', '.');
  if (named) return `${named} V` as MainRail;
  if (volts === undefined) return undefined;
  const isNear = (nominal: number): boolean => Math.abs(volts - nominal) <= (nominal * RAIL_KNOWN_WITHIN_PERCENT) / 100;
  return (Object.keys(RAIL_V) as MainRail[]).find((rail) => isNear(RAIL_V[rail])) ?? 'other';
}

/** `large`: rated above 450 W and with a 16-pin connector; `other`: everything else. Source: doc. 336521, table 3-3. */
export type ExcursionClass = 'large' | 'other';

export interface Excursion {
  /** The peak lasts this long at most. */
  readonly durationMs: number;
  readonly percentOfRating: number;
}

/** Peaks that a supply must ride out, shortest first. Source: ATX Version 3 design guide, doc. 336521, table 3-3. */
export const EXCURSIONS: Readonly<Record<ExcursionClass, readonly Excursion[]>> = {
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

const LARGE_ABOVE_W = 450;

/** The class of a supply; either end of a rating that is not known may be infinite. */
export const excursionClass = (ratingW: number, has16Pin: boolean): ExcursionClass =>
  has16Pin && ratingW > LARGE_ABOVE_W ? 'large' : 'other';

/**
 * Largest peak, in per cent of the rating, that the standard lets a card and processor ask of a supply of this class
 * for `durationMs`. Between two rows the longer one counts; beyond 100 ms only the rating itself.
 * Holds for supplies built to version 3 of the guide; older ones promise nothing above 100 %.
 * Source: doc. 336521, table 3-3. Throws RangeError unless the time is above zero.
 */
export function excursionAllowedPercent(supply: ExcursionClass, durationMs: number): number {
  needPositive('duration (ms)', durationMs);
  return EXCURSIONS[supply].find((row) => durationMs <= row.durationMs)?.percentOfRating ?? 100;
}

/** How a redundant supply is built: modules that must work, and modules that may fail. */
export interface Redundancy {
  readonly needed: number;
  readonly spare: number;
}

/** `1+1`, `2 + 1`, `1+1 redundant`. `N+1` tells nothing while nobody says what N is. */
export function parseRedundancy(text: string): Redundancy | undefined {
  const [, needed, spare] = /^([1-9]) ?\+ ?([1-9])(?: ?-?redundan(?:t|cy))?$/i.exec(text.trim()) ?? [];
  return needed && spare ? { needed: Number(needed), spare: Number(spare) } : undefined;
}

/**
 * What the standby rail delivers at least, W, without its label: 2 A at 5 V. Source: ATX12V Power Supply Design Guide
 * 2.0, tables 4 and 6; version 3 (doc. 336521) recommends 3 A.
 */
export const STANDBY_LEAST_W = 10;

/** Whether a rail is the one that stays on while the machine is off, by its name. */
export const isStandbyRail = (name: string): boolean => /SB(?![A-Z])|STAND-?BY/i.test(name.replace(/[\s_]/g, ''));
