// Sums that refuse numbers outside their field, made safe for bounds: what they refuse leaves the figure open.
import type { Fact } from '../parts/fact';
import type { Quantity } from '../quantity';
import { copyWith, figure, missing, unknown, type Figure } from './figure';

/** The same sum, answering NaN (which `derive` takes as unbounded) where an input is not finite or is refused. */
export function guarded<V extends readonly number[]>(sum: (...inputs: V) => number): (...inputs: V) => number {
  const safe = allowed(sum);
  return (...inputs) => (inputs.every(Number.isFinite) ? safe(...inputs) : NaN);
}

/** The same sum, for one that takes infinite bounds itself: NaN only where it refuses an input. */
export function allowed<V extends readonly number[]>(sum: (...inputs: V) => number): (...inputs: V) => number {
  return (...inputs) => {
    try {
      return sum(...inputs);
    } catch (error) {
      if (error instanceof RangeError) return NaN;
      throw error;
    }
  };
}

/** The same figure, known never to lie below zero. */
export const notNegative = (one: Figure): Figure =>
  one.lo >= 0 ? one : copyWith(one, { lo: 0, hi: Math.max(0, one.hi) });

/** A figure read from a quantity that makes sense above zero only; zero or less is as good as not stated. */
export function aboveZero(fact: Fact<Quantity>, label: string): Figure {
  const read = figure(fact, label);
  return fact.value && read.lo <= 0 ? unknown(read.dimension, label, [missing(fact, label)]) : read;
}
