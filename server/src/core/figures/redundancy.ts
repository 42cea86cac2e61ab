// Figures of a redundant supply: its modules, and what those deliver that are left when the spare ones have failed.
import type { Build, Placed } from '../build/build';
import { between, copyWith, counted, derive, figure, missing, readCount, unknown, type Figure } from './figure';
import { ratingOf } from './supply-rating';

type Supply = Placed<'supply'>;

/** How many modules are in it: those fitted, else all that it is built for; undefined for a supply of one piece. */
export function modulesOf({ at: { modules }, part: { redundancy }, label }: Supply): Figure | undefined {
  if (modules.entry) return counted(modules, `modules of ${label}`);
  const built = redundancy.value;
  return built && readCount(built.needed + built.spare, `modules of ${label}`, redundancy);
}

/** The modules that may fail, and what the others deliver then. */
export interface Survivors {
  readonly modules: Figure;
  readonly spare: Figure;
  readonly left: Figure;
}

/** Undefined for a supply of one piece. */
export function survivors(build: Build, supply: Supply): Survivors | undefined {
  const modules = modulesOf(supply);
  if (!modules) return undefined;
  const { redundancy } = supply.part;
  const label = `spare modules of ${supply.label}`;
  const spare = redundancy.value
    ? readCount(redundancy.value.spare, label, redundancy)
    : unknown('count', label, [missing(redundancy, `redundancy of ${supply.label}`)]);
  const left = derive(
    'what the modules left deliver',
    'power',
    [modules, spare, moduleRating(build, supply)],
    '(modules − spare modules) × rating of a module',
    (all, failed, watts) => Math.max(0, all - failed) * watts,
    { unit: 'W' },
  );
  return { modules, spare, left };
}

/** What one module delivers; without its label, from an equal share of the whole rating to all of it. */
function moduleRating(build: Build, supply: Supply): Figure {
  const { 'module-rating': one, redundancy } = supply.part;
  const label = `rating of a module of ${supply.label}`;
  if (one.value || !redundancy.value) return figure(one, label);
  const { needed, spare } = redundancy.value;
  const share = between(100 / (needed + spare), 100, 'percent', 'what a module has of the rating', {
    unit: '%',
    source: 'common practice: sheets print the rating of one module, or of several together',
  });
  const shared = derive(
    label,
    'power',
    [ratingOf(build, supply), share],
    'rating × what a module has of it',
    (watts, percent) => (watts * percent) / 100,
    { unit: 'W' },
  );
  return copyWith(shared, { missing: [...shared.missing, missing(one, label)] });
}
