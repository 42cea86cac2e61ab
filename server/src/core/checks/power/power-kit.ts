// What the checks of power share: a processor limit that brings a load back under its bound.
import type { Build } from '../../build/build';
import type { Figure } from '../../figures/figure';
import { processorDraw } from '../../figures/power';
import { putOn, type FixIdea } from '../kit';

/** Lower limits than this share of its own power make another machine of it: nobody is offered that. */
const leastShare = 0.5;

/**
 * A power limit for the processor, in whole watts, that takes away what `load` has over `bound`; undefined where that
 * takes too much.
 */
export function limitProcessor(build: Build, load: Figure, bound: Figure): FixIdea | undefined {
  const { processor } = build.parts;
  const own = processor && processorDraw(processor);
  if (!processor || !own || own.missing.length > 0) return undefined;
  // A sum of tenths may fall a hair below the whole watt it means.
  const watts = Math.floor(own.lo - (load.lo - bound.lo) + 1e-9);
  if (!(watts >= own.lo * leastShare)) return undefined;
  return putOn(processor, 'power-limit', `${watts} W`, `Limit ${processor.label} to ${watts} W`);
}

/** Whole minutes, never more than the time itself. */
export const timeText = (seconds: number): string => `${Math.floor(seconds / 60 + 1e-9)} min`;

/** Whole watts, never less than the power itself. */
export const wattsText = (watts: number): string => `${Math.ceil(watts - 1e-9)} W`;
