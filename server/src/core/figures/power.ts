// Figures of power: what each part draws for as long as it works, and the sum.
import type { Build, Placed } from '../build/build';
import { copyWith, counted, figure, number, times, total, type Figure } from './figure';
import { memo } from './memo';

/** How many of a part there are: its `count`, or one. */
export function howMany(placed: Placed): Figure {
  const at = placed.at as { readonly count?: Placed<'drives'>['at']['count'] };
  return at.count?.entry ? counted(at.count, `count of ${placed.label}`) : number(1, `count of ${placed.label}`);
}

/** What a part draws for as long as it works; undefined for parts that draw nothing from the supply. */
export function partDraw(placed: Placed): Figure | undefined {
  switch (placed.role) {
    case 'processor':
      return processorDraw(placed as Placed<'processor'>);
    case 'drives':
      return times(driveDraw(placed as Placed<'drives'>), howMany(placed));
    case 'graphics':
    case 'cards':
      return times(
        figure((placed as Placed<'graphics'>).part.power.sustained, `sustained power of ${placed.label}`),
        howMany(placed),
      );
    case 'board':
    case 'cooler':
    case 'memory':
    case 'fans':
      return times(figure((placed as Placed<'fans'>).part.draw.peak, `peak draw of ${placed.label}`), howMany(placed));
    default:
      return undefined;
  }
}

/** A drive that has started draws what it states for running; where it does not, at most its peak. */
function driveDraw({ part: { draw }, label }: Placed<'drives'>): Figure {
  const running = figure(draw.running, `power of ${label} while it runs`);
  if (draw.running.value) return running;
  const peak = figure(draw.peak, `peak draw of ${label}`);
  return copyWith(running, { lo: 0, hi: peak.hi, unit: 'W', missing: [...running.missing, ...peak.missing] });
}

function processorDraw(placed: Placed<'processor'>): Figure {
  const limit = placed.at['power-limit'];
  return limit.entry
    ? figure(limit, `power limit of ${placed.label}`)
    : figure(placed.part.power.sustained, `sustained power of ${placed.label}`);
}

/** What each part draws for as long as it works; parts that draw nothing from the supply are not among them. */
export const partDraws = memo((build: Build): ReadonlyMap<Placed, Figure> => {
  const draws = new Map<Placed, Figure>();
  for (const placed of build.of('board', 'processor', 'cooler', 'memory', 'drives', 'graphics', 'cards', 'fans')) {
    const draw = partDraw(placed);
    if (draw) draws.set(placed, draw);
  }
  return draws;
});

/** The sustained sum over all parts, in watts on the supply’s outputs. */
export const sustainedDraw = memo(
  (build: Build): Figure => total('sustained draw', 'power', [...partDraws(build).values()], { unit: 'W' }),
);
