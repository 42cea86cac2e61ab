// Figures of the mains side: efficiency at the load, power from the wall, its cost, the circuit, the UPS.
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
} from '../trade/efficiency';
import { backupAtMostS, BATTERY_GIVES_PERCENT, continuousLimitW, CONTINUOUS_RULES } from '../trade/mains';
import { uniqueMissing } from './missing-facts';
import {
  between,
  copyWith,
  decidedBy,
  derive,
  figure,
  isExact,
  known,
  missing,
  total,
  unknown,
  type Figure,
} from './figure';
import { allowed } from './guard';
import { memo } from './memo';
import { sustainedDraw } from './power';

type Supply = Placed<'supply'>;

const secondsPerHour = 3600;
const daysPerYear = 365;

interface Ends {
  readonly low: number;
  readonly high: number;
}

/**
 * Efficiency of the supply at the build’s sustained load, in per cent: measured points, else what its badge promises
 * at least.
 */
export function efficiencyAtLoad(build: Build, supply: Supply): Figure {
  const rating = figure(supply.part.rating, `rating of ${supply.label}`);
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
  if (missingFacts.length > 0 || !rows.flat().every(isExact))
    return bounded(label, load, { low: 0, high: 1 }, missingFacts);
  const points = rows.map(([at, percent]) => ({ loadPercent: at.lo, efficiencyPercent: percent.lo }));
  const at = (percent: number): Ends => measuredEfficiency(points, percent);
  if (isExact(load) && inReach(load) && at(load.lo).low > 0) {
    return derive(
      label,
      'percent',
      [load, ...rows.flat()],
      'a straight line between measured points',
      (percent) => at(percent).low * 100,
      { unit: '%' },
    );
  }
  return bounded(
    label,
    load,
    endsOver(
      load,
      points.map((point) => point.loadPercent),
      at,
    ),
    [],
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
  const { voltage } = build.file.place.mains;
  const volts = figure(voltage, 'mains voltage');
  const table = volts.missing.length === 0 && inReach(volts) ? badgeMains(volts.lo) : undefined;
  const tables: readonly BadgeMains[] = table ? [table] : ['115 V', '230 V'];
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
    [better, ...volts.missing],
    '80 PLUS programme: least efficiency of the badge',
  );
}

/** Non-negative and finite at its lower end, so that a table can be read there. */
const inReach = (one: Figure): boolean => Number.isFinite(one.lo) && one.lo >= 0;

/** The least and greatest efficiency over a span of loads: at its ends and at every table point between. */
function endsOver(load: Figure, points: readonly number[], at: (percent: number) => Ends): Ends {
  if (!inReach(load) || !Number.isFinite(load.hi)) return { low: 0, high: 1 };
  const all = [load.lo, load.hi, ...points.filter((point) => point > load.lo && point < load.hi)].map(at);
  return { low: Math.min(...all.map((end) => end.low)), high: Math.max(...all.map((end) => end.high)) };
}

function bounded(
  label: string,
  load: Figure,
  ends: Ends,
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
    allowed((watts, seconds, each) => runningCost(watts, (seconds / secondsPerHour) * daysPerYear, each)),
    price.currency ? { currency: price.currency } : {},
  );
}

/** Everything on the machine’s circuit, the machine included. */
export function circuitLoad(build: Build, wall: Figure): Figure {
  return total(
    'load on the circuit',
    'power',
    [wall, figure(build.file.place.mains['shared-load'], 'shared load of the circuit')],
    { unit: 'W' },
  );
}

/** What the circuit may carry for hours, by the rule of the site. */
export const circuitLimit = memo((build: Build): Figure => {
  const { mains } = build.file.place;
  const label = 'what the circuit may carry for hours';
  if (mains.rule.value === 'electrician says')
    return decidedBy(figure(mains['allowed-load'], 'load that the electrician allows'), mains.rule);
  const inputs = [
    figure(mains.voltage, 'mains voltage'),
    figure(mains.circuit, 'rating of the breaker'),
    decidedBy(ruleShare(build), mains.rule),
  ];
  return derive(
    label,
    'power',
    inputs,
    'voltage × current × share for continuous load',
    allowed((u, i, percent) => continuousLimitW(u, i, percent)),
    { unit: 'W' },
  );
});

function ruleShare(build: Build): Figure {
  const { rule } = build.file.place.mains;
  const label = 'share of the breaker for continuous load';
  const least = CONTINUOUS_RULES.US.fractionOfBreaker! * 100;
  if (rule.value === '80 percent continuous')
    return known(least, 'percent', label, { unit: '%', source: CONTINUOUS_RULES.US.source });
  if (rule.value === 'full rating') return known(100, 'percent', label, { unit: '%', source: 'the rule of the site' });
  const missingFacts = [missing(rule, 'rule of the site for continuous load')];
  return copyWith(unknown('percent', label, missingFacts), { lo: least, hi: 100, unit: '%' });
}

/**
 * How long the UPS carries the machine: from what a battery gives when loaded hard, old or cold, to all that it
 * holds.
 */
export function batteryTime(build: Build, wall: Figure): Figure {
  const { energy, efficiency } = build.file.place.mains.backup;
  const { low, high } = BATTERY_GIVES_PERCENT;
  const given = between(low, high, 'percent', 'share that the battery gives', {
    unit: '%',
    source: 'common practice: half when loaded hard, old or cold',
  });
  const inputs = [figure(energy, 'energy of the UPS'), figure(efficiency, 'efficiency of the UPS'), given, wall];
  return derive(
    'time on battery',
    'time',
    inputs,
    'energy × efficiency × share given ÷ power from the wall',
    allowed((joules, percent, share, watts) => (backupAtMostS(joules, percent, watts) * share) / 100),
    { unit: 'min' },
  );
}
