// From the load to the wall: efficiency badges, wall power, energy, running cost.
import { needBound, needNotNegative, needWithin } from './numbers';
import type { Range } from './numbers';

export type Badge = 'standard' | 'bronze' | 'silver' | 'gold' | 'platinum' | 'titanium';
export type BadgeMains = '115 V' | '230 V';

export interface BadgePoint {
  readonly loadPercent: number;
  readonly efficiencyPercent: number;
}

function points(at20: number, at50: number, at100: number): readonly BadgePoint[] {
  return [
    { loadPercent: 20, efficiencyPercent: at20 },
    { loadPercent: 50, efficiencyPercent: at50 },
    { loadPercent: 100, efficiencyPercent: at100 },
  ];
}

const TITANIUM_AT_10: BadgePoint = { loadPercent: 10, efficiencyPercent: 90 };

/**
 * Least efficiency that a badge promises, lightest load first. 230 V is the desktop table, not the
 * one for redundant supplies, which asks for other figures under the same names.
 * Source: 80 PLUS programme, test levels for 115 V internal and 230 V EU internal supplies.
 */
export const BADGES: Readonly<Record<BadgeMains, Readonly<Record<Badge, readonly BadgePoint[]>>>> = {
  '115 V': {
    standard: points(80, 80, 80),
    bronze: points(82, 85, 82),
    silver: points(85, 88, 85),
    gold: points(87, 90, 87),
    platinum: points(90, 92, 89),
    titanium: [TITANIUM_AT_10, ...points(92, 94, 90)],
  },
  '230 V': {
    standard: points(82, 85, 82),
    bronze: points(85, 88, 85),
    silver: points(87, 90, 87),
    gold: points(90, 92, 89),
    platinum: points(92, 94, 90),
    titanium: [TITANIUM_AT_10, ...points(94, 96, 94)],
  },
};

const NOTHING_PROMISED: Range = { low: 0, high: 1 };

function between(left: BadgePoint, right: BadgePoint, loadPercent: number): number {
  const share = (loadPercent - left.loadPercent) / (right.loadPercent - left.loadPercent);
  return left.efficiencyPercent + share * (right.efficiencyPercent - left.efficiencyPercent);
}

/**
 * Efficiency, as fractions, of a supply with this badge at this load (percentage of its rating).
 * `low` is what the badge promises, `high` is 1: a supply may be better than its badge. Outside the
 * measured loads nothing is promised and the range is 0 to 1.
 * Source: 80 PLUS programme tables; the straight line between two points is common practice.
 * @throws RangeError on a negative or unreal load.
 */
export function badgeEfficiency(badge: Badge, mains: BadgeMains, loadPercent: number): Range {
  needNotNegative('load (%)', loadPercent);
  const table = BADGES[mains][badge];
  const right = table.findIndex((point) => loadPercent <= point.loadPercent);
  const upper = table[right];
  if (upper === undefined) return NOTHING_PROMISED;
  if (loadPercent === upper.loadPercent) return { low: upper.efficiencyPercent / 100, high: 1 };
  const lower = table[right - 1];
  if (lower === undefined) return NOTHING_PROMISED;
  return { low: between(lower, upper, loadPercent) / 100, high: 1 };
}

/**
 * Efficiency, as a fraction, of a supply measured at several loads; between two points a straight line.
 * Outside the measured loads nothing is known and the range is 0 to 1. Points may stand in any order.
 * Source: common practice. @throws RangeError on a negative or unreal load.
 */
export function measuredEfficiency(points: readonly BadgePoint[], loadPercent: number): Range {
  needNotNegative('load (%)', loadPercent);
  const sorted = [...points].sort((a, b) => a.loadPercent - b.loadPercent);
  const right = sorted.findIndex((point) => loadPercent <= point.loadPercent);
  const upper = sorted[right];
  if (upper === undefined) return NOTHING_PROMISED;
  const lower = loadPercent === upper.loadPercent ? upper : sorted[right - 1];
  if (lower === undefined) return NOTHING_PROMISED;
  const percent = lower === upper ? upper.efficiencyPercent : between(lower, upper, loadPercent);
  return { low: percent / 100, high: percent / 100 };
}

/**
 * Which table a mains voltage belongs to: 90 to 135 V or 180 to 265 V; undefined for any other.
 * Source: ATX12V Power Supply Design Guide, version 2.0, table 1.
 */
export function badgeMains(mainsV: number): BadgeMains | undefined {
  needNotNegative('mains voltage (V)', mainsV);
  if (mainsV >= 90 && mainsV <= 135) return '115 V';
  return mainsV >= 180 && mainsV <= 265 ? '230 V' : undefined;
}

/**
 * Power drawn from the wall, W = load ÷ efficiency, a fraction. Infinity for an endless load or an efficiency of
 * nothing; NaN for no load at no efficiency. @throws RangeError on a negative load or an efficiency outside 0 to 1.
 */
export function wallPowerW(loadW: number, efficiency: number): number {
  needBound('load (W)', loadW);
  needWithin('efficiency', efficiency, 0, 1);
  return loadW / efficiency;
}

/** Energy, kWh; either may be Infinity where nothing bounds it. */
export function energyKWh(powerW: number, hours: number): number {
  needBound('power (W)', powerW);
  needBound('hours', hours);
  return (powerW * hours) / 1000;
}

/** Cost of running, in the currency of the price. */
export function runningCost(powerW: number, hours: number, pricePerKWh: number): number {
  needBound('price per kWh', pricePerKWh);
  return energyKWh(powerW, hours) * pricePerKWh;
}
