// Reads an amount whose dimension its text alone tells, such as `6 mm`; one that could be of several is read as each.
import { dimensions } from './dimensions';
import { readQuantity } from './read';
import type { Dimension } from './types';

export interface Amount {
  readonly dimension: Dimension | 'count';
  /** In the base unit of the dimension; the upper end of a range. */
  readonly amount: number;
  readonly currency?: string;
}

/** All readings of a text; undefined where there is none. */
export function readAmount(text: string): readonly Amount[] | undefined {
  if (/^-?\d+(?:\.\d+)?$/.test(text)) return [{ dimension: 'count', amount: Number(text) }];
  const readings = (Object.keys(dimensions) as Dimension[]).flatMap((dimension): Amount[] => {
    const { quantity, problem } = readQuantity(text, dimension);
    if (!quantity || problem || !Number.isFinite(quantity.hi)) return [];
    const { hi: amount, currency } = quantity;
    return [{ dimension, amount, ...(currency === undefined ? {} : { currency }) }];
  });
  return readings.length > 0 ? readings : undefined;
}
