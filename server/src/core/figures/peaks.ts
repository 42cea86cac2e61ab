// Figures of short peaks: what the parts may draw together for how long, and what the supply rides out.
import { unreadNames } from '../parts/facts';
import type { Build, Placed } from '../build/build';
import { excursionAllowedPercent, excursionClass } from '../trade/power';
import { uniqueMissing } from './missing-facts';
import {
  copyWith,
  between,
  decidedBy,
  derive,
  figure,
  known,
  missing,
  most,
  times,
  total,
  unknown,
  type Figure,
  type Missing,
} from './figure';
import { CARD_PEAK, PROCESSOR_PEAK, type UsualPeak } from '../trade/draw-limits';
import { cardDraw, type Card } from './card-power';
import { howMany, partDraws, processorDraw } from './power';
import { memo, memoOf } from './memo';
import { askingWidest } from './widest';
import { ratingOf } from './supply-rating';

export interface Peak {
  readonly power: Figure;
  readonly lasts: Figure;
}
/** Peaks that a part states, and the facts it lacks on them. */
export interface Peaks {
  readonly placed: Placed;
  readonly peaks: readonly Peak[];
  readonly missingFacts: readonly Missing[];
}

const guide = 'ATX Version 3 design guide, doc. 336521, table 3-3';

/** The peaks that a part states; undefined for parts that draw in none. */
export function peaksOf(placed: Placed): Peaks | undefined {
  if (placed.role === 'processor') return processorPeaks(placed as Placed<'processor'>);
  if (placed.role !== 'graphics' && placed.role !== 'cards') return undefined;
  const stated = (placed as Placed<'graphics'>).part.power.peaks;
  const peaks = (stated.value ?? []).map((row) => ({
    power: figure(row.power, `peak of ${placed.label}`),
    lasts: figure(row.lasts, `time that a peak of ${placed.label} lasts`),
  }));
  return { placed, peaks, missingFacts: stated.value ? [] : [missing(stated, `peaks of ${placed.label}`)] };
}

function processorPeaks(placed: Placed<'processor'>): Peaks {
  const { peak, 'peak-lasts': lasts } = placed.part.power;
  const power = figure(peak, `peak of ${placed.label}`);
  return {
    placed,
    peaks: [{ power, lasts: figure(lasts, `time that the peak of ${placed.label} lasts`) }],
    missingFacts: [],
  };
}

/** The same; where a part states none, as high and as long as those of such a part get. */
function likelyPeaks(build: Build, placed: Placed): Peaks | undefined {
  const has = peaksOf(placed);
  if (!has) return undefined;
  if (placed.role === 'processor') return likelyOfProcessor(placed as Placed<'processor'>, has);
  const draw = cardDraw(build, placed as Card);
  if ((placed as Card).part.power.peaks.node || !Number.isFinite(draw.hi)) return has;
  return { ...has, peaks: [likelyPeak(placed.label, draw, CARD_PEAK, has.missingFacts)], missingFacts: [] };
}

function likelyOfProcessor(placed: Placed<'processor'>, has: Peaks): Peaks {
  const { peak, 'peak-lasts': lasts } = placed.part.power;
  const draw = processorDraw(placed);
  const [{ power, lasts: time }] = has.peaks as [Peak];
  if (lasts.node) return has;
  if (peak.node) {
    const { lastsS: hi, source } = PROCESSOR_PEAK;
    return { ...has, peaks: [{ power, lasts: copyWith(time, { lo: 0, hi, unit: 's', source }) }] };
  }
  return Number.isFinite(draw.hi)
    ? { ...has, peaks: [likelyPeak(placed.label, draw, PROCESSOR_PEAK, power.missing)] }
    : has;
}

function likelyPeak(
  label: string,
  draw: Figure,
  { times: most, lastsS, source }: UsualPeak,
  lacks: readonly Missing[],
): Peak {
  const power = between(draw.lo, most * draw.hi, 'power', `peak of ${label}`, { unit: 'W', source });
  const lasts = known(lastsS, 'time', `time that a peak of ${label} lasts at most`, { unit: 's', source });
  return { power: copyWith(power, { missing: uniqueMissing([{ missing: lacks }, draw]) }), lasts };
}

/** The most the processor draws for any time at all: its peak as stated, else as high as those of such a part get. */
export function highestOf(build: Build, processor: Placed<'processor'>): Figure {
  const peaks = likelyPeaks(build, processor)?.peaks ?? [];
  return most(
    `the most that ${processor.label} draws`,
    [processorDraw(processor), ...peaks.map(({ power }) => power)],
    {
      unit: 'W',
    },
  );
}

/**
 * The build’s parts that draw in peaks, and the times worth looking at: each time that a peak lasts, shortest first.
 */
export const peakTimes = memo(
  (build: Build): { readonly missingFacts: readonly Missing[]; readonly times: readonly Figure[] } => {
    const all = build.of('processor', 'graphics', 'cards').flatMap((placed) => likelyPeaks(build, placed) ?? []);
    const ends = new Map<number, Figure>();
    for (const { lasts } of all.flatMap(({ peaks }) => peaks)) {
      for (const end of [lasts.lo, lasts.hi]) {
        if (Number.isFinite(end))
          ends.set(
            end,
            lasts.lo === lasts.hi
              ? lasts
              : known(end, 'time', lasts.label, {
                  unit: end < 1 ? 'ms' : 's',
                  source: 'an end of the stated range',
                }),
          );
      }
    }
    const missingFacts = uniqueMissing(
      all.map((one) => ({
        missing: [
          ...one.missingFacts,
          ...one.peaks.flatMap(({ power, lasts }) =>
            [power, lasts].flatMap((figure) => (Number.isFinite(figure.hi) ? [] : figure.missing)),
          ),
        ],
      })),
    );
    return { missingFacts, times: [...ends].sort(([a], [b]) => a - b).map(([, time]) => time) };
  },
);

/** What the parts draw together for `seconds`, all peaks that last as long coming at once. */
export const drawFor = memoOf((build: Build, seconds: number): Figure => {
  const inputs = [...partDraws(build)].flatMap(([placed, own]) => partDrawFor(build, placed, own, seconds));
  return askingWidest(total('draw in peaks', 'power', inputs, { unit: 'W' }), inputs);
});

function partDrawFor(build: Build, placed: Placed, sustained: Figure, seconds: number): Figure[] {
  const has = likelyPeaks(build, placed);
  if (!has) return [sustained];
  const lasting = has.peaks.filter(({ lasts }) => lasts.hi >= seconds);
  if (lasting.length === 0) return [sustained, ...openAbove(has)];
  const count = howMany(placed);
  const highest = most(
    `draw of ${placed.label} in a peak`,
    [sustained, ...lasting.map(({ power }) => times(power, count))],
    { unit: 'W' },
  );
  const doubtful = lasting.filter(({ lasts }) => lasts.lo < seconds);
  if (doubtful.length === 0) return [highest, ...openAbove(has)];
  const certain = Math.max(
    sustained.lo,
    ...lasting.filter(({ lasts }) => lasts.lo >= seconds).map(({ power }) => power.lo * count.lo),
  );
  return [
    copyWith(highest, { lo: certain, missing: uniqueMissing([highest, ...doubtful.map(({ lasts }) => lasts)]) }),
    ...openAbove(has),
  ];
}

const openAbove = ({ placed, missingFacts }: Peaks): Figure[] =>
  missingFacts.length > 0 ? [unknown('power', `short peaks of ${placed.label}`, missingFacts)] : [];

/** What the supply rides out for `seconds`: by its own statement, else by the design guide it follows. */
export function riddenOut(build: Build, supply: Placed<'supply'>, seconds: number): Figure {
  const rating = ratingOf(build, supply);
  const percent = riddenOutPercent(supply, rating, seconds);
  return derive(
    `peak that ${supply.label} rides out`,
    'power',
    [rating, percent],
    'rating × percentage',
    (watts, of) => (watts * of) / 100,
    { unit: 'W' },
  );
}

/** What is drawn for a time, and what the supply rides out for as long. */
export interface PeakLoad {
  readonly lasts: Figure;
  readonly drawn: Figure;
  readonly borne: Figure;
}

/** The peaks that come nearest to what the supply rides out, or go past it, as many as asked for; shortest first. */
export function tightestPeaks(build: Build, supply: Placed<'supply'>, most: number): readonly PeakLoad[] {
  const all = peakTimes(build).times.map((lasts) => ({
    lasts,
    drawn: drawFor(build, lasts.lo),
    borne: riddenOut(build, supply, lasts.lo),
  }));
  const known = all.filter(({ drawn, borne }) => Number.isFinite(drawn.hi) || Number.isFinite(borne.hi));
  const share = ({ drawn, borne }: PeakLoad): number => drawn.hi / Math.max(borne.lo, Number.MIN_VALUE);
  const tightest = new Set(known.toSorted((a, b) => share(b) - share(a)).slice(0, most));
  return known.filter((one) => tightest.has(one));
}

function riddenOutPercent(supply: Placed<'supply'>, rating: Figure, seconds: number): Figure {
  const { excursions, standard, connectors, form } = supply.part;
  const label = `load that ${supply.label} rides out`;
  if (excursions.value) return statedPercent(supply, label, seconds);
  // No design guide of supplies in a case speaks of one outside of it.
  if (form.value === 'external' && !standard.node)
    return decidedBy(
      known(100, 'percent', label, { unit: '%', source: 'common practice: a brick is built for its rating' }),
      form,
    );
  if (standard.value === 'ATX 2')
    return decidedBy(
      known(100, 'percent', label, {
        unit: '%',
        source: 'ATX12V Power Supply Design Guide, version 2: no load above the rating',
      }),
      standard,
    );
  if (standard.value === undefined)
    return copyWith(between(100, Infinity, 'percent', label, { unit: '%', source: guide }), {
      missing: [missing(standard, `standard of ${supply.label}`)],
    });
  return decidedBy(standardPercent(supply, rating, label, seconds), standard, connectors);
}

function statedPercent(supply: Placed<'supply'>, label: string, seconds: number): Figure {
  let lo = 100;
  let hi = 100;
  const rows = (supply.part.excursions.value ?? []).map((row) => ({
    percent: figure(row.percent, label),
    lasts: figure(row.lasts, `time that ${supply.label} rides a peak out`),
  }));
  for (const { percent, lasts } of rows) {
    if (lasts.lo >= seconds) lo = Math.max(lo, percent.lo);
    if (lasts.hi >= seconds) hi = Math.max(hi, percent.hi);
  }
  const stated = rows.find(({ percent, lasts }) => lasts.lo >= seconds && percent.lo === lo && percent.hi === hi);
  if (stated) return stated.percent;
  return copyWith(
    between(lo, hi, 'percent', label, { unit: '%', source: 'the peaks it states; above the rating nothing else' }),
    { missing: uniqueMissing(rows.flatMap(({ percent, lasts }) => [percent, lasts])) },
  );
}

/** The guide’s percentage; the class of the supply turns on its rating and on whether it has a 16-pin connector. */
function standardPercent(supply: Placed<'supply'>, rating: Figure, label: string, seconds: number): Figure {
  const ms = Math.max(seconds * 1000, Number.MIN_VALUE);
  const { connectors } = supply.part;
  const sixteen =
    (connectors.value?.get('16-pin')?.value ?? 0) > 0 ||
    (connectors.value && unreadNames(connectors, '16-pin').length === 0 ? false : undefined);
  const may = sixteen === undefined ? [true, false] : [sixteen];
  const percents = [rating.lo, rating.hi].flatMap((watts) =>
    may.map((has) => excursionAllowedPercent(excursionClass(watts, has), ms)),
  );
  const [lo, hi] = [Math.min(...percents), Math.max(...percents)];
  const allowedPercent = between(lo, hi, 'percent', label, { unit: '%', source: guide });
  if (lo === hi) return allowedPercent;
  const lacks = sixteen === undefined ? [missing(connectors, `connectors of ${supply.label}`)] : [];
  return copyWith(allowedPercent, { missing: [...rating.missing, ...lacks] });
}
