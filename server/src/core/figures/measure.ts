// By how much something is broken: a figure past its limit, which gets worse in one direction.
import type { Amount } from '../quantity';
import { derive, type Figure, type FigureDimension, copyWith } from './figure';
import { show } from './sentence';

export interface Measure {
  readonly figure: Figure;
  readonly limit: Figure;
  /** The direction in which the figure gets worse. */
  readonly worse: 'more' | 'less';
  /** The limit itself is past it. */
  readonly strict?: boolean;
}

const sides = ({ figure, limit, worse }: Measure): readonly [Figure, Figure] =>
  worse === 'more' ? [figure, limit] : [limit, figure];

/** Past its limit by so much in the base unit: the most it can be, or the least where nothing bounds it. */
export function amountPast(measure: Measure): number {
  const [over, under] = sides(measure);
  const most = over.hi - under.lo;
  return Number.isFinite(most) ? most : over.lo - under.hi;
}

/** How far the figure is past its limit, with its working. */
export function excessOf(measure: Measure): Figure {
  const [over, under] = sides(measure);
  const { figure } = measure;
  const { dimension } = figure;
  const unit = dimension === 'temperature' ? 'K' : figure.unit;
  const label = `excess of ${figure.label}`;
  const past = amountPast(measure);
  const excess = derive(
    label,
    differenceOf(dimension),
    [over, under],
    `${over.label} − ${under.label}`,
    (a, b) => a - b,
    { unit, currency: figure.currency },
  );
  return copyWith(excess, { lo: past, hi: past });
}

/** What the difference of two values of a dimension is measured in. */
export const differenceOf = (dimension: FigureDimension): FigureDimension =>
  dimension === 'temperature' ? 'temperature-difference' : dimension;

const digitsWritten = 7;

/** The excess as an acceptance writes it; a number of things without a unit. */
export function weighedValue(measure: Measure): string | number {
  const excess = excessOf(measure);
  const text = show(excess, excess.unit, digitsWritten);
  return excess.dimension === 'count' ? Number(text) : text;
}

/** So much of an amount may be lost in writing. */
const lostInWriting = 1e-6;

/** Whether a measure is past its limit by no more than an amount that was weighed. */
export function isWithin(measure: Measure, weighed: readonly Amount[]): boolean {
  const past = amountPast(measure);
  const { figure } = measure;
  return weighed.some(
    ({ dimension, amount, currency }) =>
      dimension === differenceOf(figure.dimension) &&
      currency === figure.currency &&
      past <= amount + lostInWriting * Math.abs(amount),
  );
}

/** The measure that is farthest past its limit, or the least far; of several dimensions, those of the first count. */
export function pick(measures: readonly Measure[], which: 'farthest' | 'nearest'): Measure | undefined {
  const [first, ...others] = measures;
  if (!first) return undefined;
  return others
    .filter(({ figure }) => figure.dimension === first.figure.dimension)
    .reduce((best, one) => (amountPast(one) > amountPast(best) === (which === 'farthest') ? one : best), first);
}

/** The same numbers, where it is broken that the one is within the other. */
export const reversed = ({ figure, limit, worse, strict }: Measure): Measure => ({
  figure,
  limit,
  worse: worse === 'more' ? 'less' : 'more',
  strict: !strict,
});
