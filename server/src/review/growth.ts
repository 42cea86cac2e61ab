// Whether a finding is farther past its limit than it was.
import { amountPast, differenceOf, type Measure } from '../core/figures/measure';

/** By how much something is broken, in the base unit of its dimension. */
interface Past {
  readonly dimension: string;
  readonly amount: number;
  readonly currency?: string | undefined;
}

/** Amounts closer than this share read alike. */
const alike = 1e-6;

export const amountsOf = (measure: Measure | undefined): readonly Past[] =>
  measure
    ? [
        {
          dimension: differenceOf(measure.figure.dimension),
          amount: amountPast(measure),
          currency: measure.figure.currency,
        },
      ]
    : [];

/** By how much farther past its limit: above nothing where worse; nothing where no number tells. */
export function growth(was: readonly Past[], now: readonly Past[]): number {
  for (const { dimension, currency, amount: b } of now) {
    const a = was.find((one) => one.dimension === dimension && one.currency === currency)?.amount;
    if (a !== undefined) return Math.abs(b - a) <= alike * Math.max(Math.abs(a), Math.abs(b)) ? 0 : b - a;
  }
  return 0;
}
