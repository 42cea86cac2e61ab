// Figures of power: what each part draws for as long as it works, and the sum.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import type { Quantity } from '../quantity';
import { BOARD_DRAW, DRIVE_DRAW, FAN_CURRENT_A, FAN_SOURCE, MODULE_DRAW } from '../trade/draw-limits';
import { cardDraw, type Card } from './card-power';
import { isLiquid } from './coolers';
import { copyWith, counted, figure, number, times, total, type Figure } from './figure';
import { memo } from './memo';

/** How many of a part there are: its `count`, or one. */
export function howMany(placed: Placed): Figure {
  const at = placed.at as { readonly count?: Placed<'drives'>['at']['count'] };
  return at.count?.entry ? counted(at.count, `count of ${placed.label}`) : number(1, `count of ${placed.label}`);
}

/** What a part draws for as long as it works; undefined for parts that draw nothing from the supply. */
export function partDraw(build: Build, placed: Placed): Figure | undefined {
  switch (placed.role) {
    case 'processor':
      return processorDraw(placed as Placed<'processor'>);
    case 'drives':
      return times(driveDraw(placed as Placed<'drives'>), howMany(placed));
    case 'graphics':
    case 'cards':
      return times(cardDraw(build, placed as Card), howMany(placed));
    case 'board':
      return peakOr(placed as Placed<'board'>, BOARD_DRAW.mostW, BOARD_DRAW.source);
    case 'memory':
      return times(peakOr(placed as Placed<'memory'>, MODULE_DRAW.mostW, MODULE_DRAW.source), howMany(placed));
    case 'fans':
      return times(
        peakOr(placed as Placed<'fans'>, fanMostW((placed as Placed<'fans'>).part), FAN_SOURCE),
        howMany(placed),
      );
    case 'cooler':
      return peakOr(placed as Placed<'cooler'>, coolerMostW(placed as Placed<'cooler'>), FAN_SOURCE);
    default:
      return undefined;
  }
}

/** A peak as stated, else a range up to what the class of part may draw. */
function peakOr(
  { part, label }: Placed<'board'> | Placed<'memory'> | Placed<'fans'> | Placed<'cooler'>,
  mostW: number,
  source: string,
): Figure {
  const { peak } = part.draw;
  const read = figure(peak, `peak draw of ${label}`);
  return peak.value ? read : copyWith(read, { lo: 0, hi: mostW, unit: 'W', source });
}

/** A fan or pump at 12 V by its own current, else by what a header may give it. */
const fanMostW = ({ current }: { readonly current: Fact<Quantity> }): number =>
  12 * (current.value?.hi ?? FAN_CURRENT_A);

/** Fans and pump of a cooler; how many fans one brings that does not say, nobody knows. */
function coolerMostW(cooler: Placed<'cooler'>): number {
  const { fans, pump } = cooler.part;
  const count = fans.count.value;
  return count === undefined ? Infinity : count * fanMostW(fans) + (isLiquid(cooler) ? fanMostW(pump) : 0);
}

/** A drive that has started draws what it states for running; where it does not, at most its peak, or its class. */
export function driveDraw({ part: { draw, shape }, label }: Placed<'drives'>): Figure {
  const running = figure(draw.running, `power of ${label} while it runs`);
  if (draw.running.value) return running;
  const peak = figure(draw.peak, `peak draw of ${label}`);
  const ofClass = DRIVE_DRAW[shape.value ?? ''];
  const hi = Math.min(peak.hi, ofClass?.mostW ?? Infinity);
  return copyWith(running, {
    lo: 0,
    hi,
    unit: 'W',
    source: ofClass?.source,
    missing: [...running.missing, ...peak.missing],
  });
}

/** What the processor draws for as long as it works: its limit in the build, else what it states. */
export function processorDraw(placed: Placed<'processor'>): Figure {
  const limit = placed.at['power-limit'];
  return limit.entry
    ? figure(limit, `power limit of ${placed.label}`)
    : figure(placed.part.power.sustained, `sustained power of ${placed.label}`);
}

/** What each part draws for as long as it works; parts that draw nothing from the supply are not among them. */
export const partDraws = memo((build: Build): ReadonlyMap<Placed, Figure> => {
  const draws = new Map<Placed, Figure>();
  for (const placed of build.of('board', 'processor', 'cooler', 'memory', 'drives', 'graphics', 'cards', 'fans')) {
    const draw = partDraw(build, placed);
    if (draw) draws.set(placed, draw);
  }
  return draws;
});

/** The sustained sum over all parts, in watts on the supply’s outputs. */
export const sustainedDraw = memo(
  (build: Build): Figure => total('sustained draw', 'power', [...partDraws(build).values()], { unit: 'W' }),
);
