// Sums of many ranges: which facts are worth a look first.
import { copyWith, type Figure } from './figure';
import { uniqueMissing } from './missing-facts';

/** Of a sum of ranges, the facts worth a look first: those of the widest, and of all that are half as wide. */
export function askingWidest(sum: Figure, inputs: readonly Figure[]): Figure {
  const widest = Math.max(0, ...inputs.map(({ lo, hi }) => hi - lo));
  if (!Number.isFinite(widest)) return sum;
  return copyWith(sum, { missing: uniqueMissing(inputs.filter(({ lo, hi }) => (hi - lo) * 2 >= widest)) });
}
