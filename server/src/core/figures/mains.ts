// Figures of the mains side: efficiency at the load, power from the wall, its cost.
import type { Build, Placed } from '../build/build';
import {
  badgeEfficiency,
  badgeMains,
  BADGES,
  measuredEfficiency,
  runningCost,
  wallPowerW,
  type Badge,
  type BadgeMains,
  type BadgePoint,
} from '../trade/efficiency';
import { uniqueMissing } from './missing-facts';
import { between, copyWith, derive, figure, isExact, missing, type Figure } from './figure';
import { allowed } from './guard';
import { memo } from './memo';
import { sustainedDraw } from './power';
import { ratingOf } from './supply-rating';
import type { Range } from '../trade/numbers';
import { DAYS_PER_YEAR } from '../trade/storage';

type Supply = Placed<'supply'>;

const secondsPerHour = 3600;

/**
 * Efficiency of the supply at the build’s sustained load, in per cent: measured points, else what its badge promises
 * at least.
 */
export function efficiencyAtLoad(build: Build, supply: Supply): Figure {
  const rating = ratingOf(build, supply);
  const load = derive(
    `load of ${supply.label}`,
    'percent',
    [sustainedDraw(build), rating],
    'sustained draw ÷ rating',
    (drawn, of) => (drawn / of) * 100,
    { unit: '%' },
  );
  return supply.part.efficiency.value ? measuredAt(supply, load) : badgeAt(build, supply, load);
}

function measuredAt(supply: Supply, load: Figure): Figure {
  const label = `efficiency of ${supply.label}`;
  const rows = (supply.part.efficiency.value ?? []).map(
    (row) => [figure(row.load, `measured load of ${supply.label}`), figure(row.percent, label)] as const,
  );
  const missingFacts = uniqueMissing(rows.flat());
  if (missingFacts.length > 0 || !rows.every(([at]) => isExact(at)))
    return bounded(label, load, { low: 0, high: 1 }, missingFacts);
  const curve = (end: (percent: Figure) => number): readonly BadgePoint[] =>
    rows.map(([at, percent]) => ({ loadPercent: at.lo, efficiencyPercent: end(percent) }));
  // A point given as `at least` bounds the curve from below and leaves it open above.
  const low = curve(({ lo }) => Math.max(0, lo));
  const high = curve(({ hi }) => Math.min(100, hi));
  const at = (percent: number): Range => ({
    low: measuredEfficiency(low, percent).low,
    high: measuredEfficiency(high, percent).high,
  });
  if (isExact(load) && rows.every(([, percent]) => isExact(percent)) && inReach(load) && at(load.lo).low > 0) {
    return derive(
      label,
      'percent',
      [load, ...rows.flat()],
      'a straight line between measured points',
      (percent) => at(percent).low * 100,
      { unit: '%' },
    );
  }
  const points = low.map((point) => point.loadPercent);
  // At loads outside the measured ones a measurement there would tell; past its rating nobody measures a supply.
  const [lowest, highest] = [Math.min(...points), Math.max(...points)];
  const isOutside = inReach(load) && (load.lo < lowest || (load.hi > highest && highest < 100 && load.lo <= 100));
  return bounded(
    label,
    load,
    endsOver(load, points, at),
    isOutside ? [missing(supply.part.efficiency, `efficiency of ${supply.label} at this load`)] : [],
    'measured points, and straight lines between them',
  );
}

/** A badge promises a least efficiency; how much better the supply is only a measurement tells. */
function badgeAt(build: Build, supply: Supply, load: Figure): Figure {
  const { badge, efficiency } = supply.part;
  const label = `efficiency of ${supply.label}`;
  const better = missing(efficiency, `measured efficiency of ${supply.label}`);
  if (badge.value === undefined)
    return bounded(label, load, { low: 0, high: 1 }, [better, missing(badge, `badge of ${supply.label}`)]);
  const name: Badge = badge.value === 'white' ? 'standard' : badge.value;
  const tables = badgeTables(build, supply);
  const ends = tables.map((mains) =>
    endsOver(
      load,
      BADGES[mains][name].map((point) => point.loadPercent),
      (percent) => badgeEfficiency(name, mains, percent),
    ),
  );
  return bounded(
    label,
    load,
    { low: Math.min(...ends.map((end) => end.low)), high: 1 },
    [better],
    '80 PLUS programme: least efficiency of the badge',
  );
}

/**
 * The programme that gave the badge: a badge without another word is one of the 115 V programme, and a supply loses
 * less at the higher voltage than there, so that its least holds at both.
 */
function badgeTables(build: Build, supply: Supply): readonly BadgeMains[] {
  const stated = supply.part['badge-mains'].value;
  const volts = figure(build.file.place.mains.voltage, 'mains voltage');
  const mains = volts.missing.length === 0 && inReach(volts) ? badgeMains(volts.lo) : undefined;
  if (stated === undefined || stated === mains) return [stated ?? '115 V'];
  return ['115 V', '230 V'];
}

/** Non-negative and finite at its lower end, so that a table can be read there. */
const inReach = (one: Figure): boolean => Number.isFinite(one.lo) && one.lo >= 0;

/** The least and greatest efficiency over a span of loads: at its ends and at every table point between. */
function endsOver(load: Figure, points: readonly number[], at: (percent: number) => Range): Range {
  if (!inReach(load) || !Number.isFinite(load.hi)) return { low: 0, high: 1 };
  const all = [load.lo, load.hi, ...points.filter((point) => point > load.lo && point < load.hi)].map(at);
  return { low: Math.min(...all.map((end) => end.low)), high: Math.max(...all.map((end) => end.high)) };
}

function bounded(
  label: string,
  load: Figure,
  ends: Range,
  missingFacts: Figure['missing'],
  source = 'an efficiency lies between nothing and all',
): Figure {
  return copyWith(between(ends.low * 100, ends.high * 100, 'percent', label, { unit: '%', source }), {
    missing: [...missingFacts, ...load.missing],
  });
}

/** Power from the wall under sustained load; undefined where the build has no supply. */
export const wallPower = memo((build: Build): Figure | undefined => {
  const { supply } = build.parts;
  return (
    supply &&
    derive(
      'power from the wall',
      'power',
      [sustainedDraw(build), efficiencyAtLoad(build, supply)],
      'sustained draw ÷ efficiency',
      allowed((drawn, percent) => wallPowerW(drawn, percent / 100)),
      { unit: 'W' },
    )
  );
});

/** Cost of a year at the stated hours a day, in the currency of the price. */
export function yearlyCost(build: Build, wall: Figure): Figure {
  const { mains } = build.file.place;
  const price = figure(mains['price-per-kwh'], 'price of a kilowatt-hour');
  const hours = figure(mains['hours-per-day'], 'hours a day');
  return derive(
    'cost of a year',
    'money',
    [wall, hours, price],
    'power × hours a day × 365 × price',
    allowed((watts, seconds, each) => runningCost(watts, (seconds / secondsPerHour) * DAYS_PER_YEAR, each)),
    price.currency ? { currency: price.currency } : {},
  );
}
