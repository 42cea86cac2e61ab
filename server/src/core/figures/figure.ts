// Figures: numbers with their working. Known, known only within a range, or unknown with the facts that are missing.
import type { Doc, StatedAt } from '../parts/doc';
import type { Fact } from '../parts/fact';
import type { Dimension, Quantity, UnitName } from '../quantity';
import { noneMissing, uniqueMissing } from './missing-facts';

/** A fact that no file states, with the file and the place where it belongs. */
export interface Missing {
  readonly doc: Doc;
  readonly path: string;
  readonly fact?: Fact<unknown>;
  /** In a sentence: `height of boreas/tower-155`. */
  readonly what: string;
}

export type FigureDimension = Dimension | 'count';

/** How a number came to be; the same for a number read, a table’s number and a number worked out. */
export interface Figure {
  readonly type: 'figure';
  readonly label: string;
  readonly dimension: FigureDimension;
  /** Bounds in the dimension’s base unit; equal for an exact value, infinite where nothing bounds it. */
  readonly lo: number;
  readonly hi: number;
  readonly unit?: UnitName;
  readonly currency?: string;
  /** Facts without which the bounds stay wide. */
  readonly missing: readonly Missing[];
  /** Where it is written, for a number read from a file. */
  readonly from?: StatedAt;
  /** The published source, for a number from the trade’s tables or a formula. */
  readonly source?: string;
  /**
   * The formula in words, for a number worked out from `inputs`; sums and extremes go by their inputs: see
   * `formulaOf`.
   */
  readonly formula?: string;
  readonly inputs: readonly Figure[];
  /** Facts that are no operands and yet decide: which slot a drive sits in, on which bus. */
  readonly decidedBy: readonly Fact<unknown>[];
  /** Reproduces the value from the inputs’ values, in base units. */
  readonly work?: (...inputs: number[]) => number;
}

export const isExact = (figure: Figure): boolean => figure.lo === figure.hi;

/** Whether anything bounds it. */
export const isBounded = ({ lo, hi }: Figure): boolean => lo !== -Infinity || hi !== Infinity;

/** A number for each figure. */
type ValuesOf<I extends readonly Figure[]> = { readonly [K in keyof I]: number };

interface FigureOptions {
  unit?: UnitName;
  source?: string;
  currency?: string;
}

const noFigures: readonly Figure[] = [];
const noFacts: readonly Fact<unknown>[] = [];

/**
 * Every figure is made here, with the same keys in the same order: figures are read everywhere, and one shape is read
 * quickest.
 */
function make(
  label: string,
  dimension: FigureDimension,
  lo: number,
  hi: number,
  missing: readonly Missing[],
  look?: FigureOptions,
  from?: StatedAt,
  inputs = noFigures,
  work?: Figure['work'],
  formula?: string,
): Figure {
  return {
    type: 'figure',
    label,
    dimension,
    lo,
    hi,
    unit: look?.unit,
    currency: look?.currency,
    missing,
    from,
    source: look?.source,
    formula,
    inputs,
    decidedBy: noFacts,
    work,
  };
}

/** The same figure with some of it said otherwise; every copy is made here, so that the one shape stays. */
export const copyWith = (one: Figure, changes: Partial<Omit<Figure, 'type'>>): Figure => ({ ...one, ...changes });

/** A figure read from a quantity that a file states, or unknown with that fact missing. */
export function figure(fact: Fact<Quantity>, label: string): Figure {
  const q = fact.value;
  if (q) return make(label, q.dimension, q.lo, q.hi, noneMissing, q, writtenAt(fact));
  const { field } = fact;
  return unknown(field.type === 'quantity' ? field.dimension : 'count', label, [missing(fact, label)]);
}

/** A count that a file states. */
export function counted(fact: Fact<number>, label: string): Figure {
  return fact.value === undefined
    ? unknown('count', label, [missing(fact, label)])
    : readCount(fact.value, label, fact);
}

/** A whole number that a fact says in words of its own, such as the lanes of `PCIe 4 x4`. */
export function readCount(value: number, label: string, fact: Fact<unknown>): Figure {
  return make(label, 'count', value, value, noneMissing, undefined, writtenAt(fact));
}

/** The same figure, with facts that decide it without being among its numbers. What is not stated decides nothing. */
export function decidedBy(one: Figure, ...facts: readonly (Fact<unknown> | undefined)[]): Figure {
  const stated = facts.filter((fact): fact is Fact<unknown> => fact?.node !== undefined);
  return stated.length === 0 ? one : copyWith(one, { decidedBy: [...one.decidedBy, ...stated] });
}

/** Where a fact’s value is written; undefined where it is not. */
export function writtenAt({ doc, node, path }: Fact<unknown>): StatedAt | undefined {
  return node && { doc, span: node.span, path };
}

/** A count that is plain from the build itself: how many things are listed. */
export function number(value: number, label: string, source = 'counted in the build'): Figure {
  return make(label, 'count', value, value, noneMissing, { source });
}

/** A value of the trade: from a table or a standard, in the base unit of its dimension. */
export function known(
  value: number,
  dimension: FigureDimension,
  label: string,
  look: FigureOptions & { source: string },
): Figure {
  return make(label, dimension, value, value, noneMissing, look);
}

/** A value of the trade known only within bounds. */
export function between(
  lo: number,
  hi: number,
  dimension: FigureDimension,
  label: string,
  look: FigureOptions & { source: string },
): Figure {
  return make(label, dimension, lo, hi, noneMissing, look);
}

/** A figure that cannot be had, for want of something that is no quantity. */
export function unknown(dimension: FigureDimension, label: string, missingFacts: readonly Missing[]): Figure {
  return make(label, dimension, -Infinity, Infinity, missingFacts);
}

/** The missing fact behind an absent or unreadable one. */
export function missing(fact: Fact<unknown>, what: string): Missing {
  return { doc: fact.doc, path: fact.path, fact, what };
}

/**
 * Works a figure out from others. `work` must rise or fall steadily in each input: the bounds are then those of
 * the corners. Bounds that are not finite give bounds that are not finite, never NaN.
 */
export function derive<I extends readonly Figure[]>(
  label: string,
  dimension: FigureDimension,
  inputs: readonly [...I],
  formula: string,
  work: (...values: ValuesOf<I>) => number,
  look?: FigureOptions,
): Figure;
export function derive(
  label: string,
  dimension: FigureDimension,
  inputs: readonly Figure[],
  formula: string,
  work: (...values: number[]) => number,
  look?: FigureOptions,
): Figure {
  const values: number[] = [];
  let open: { readonly at: number; readonly lo: number; readonly hi: number }[] | undefined;
  for (const { lo, hi } of inputs) {
    if (lo !== hi) (open ??= []).push({ at: values.length, lo, hi });
    values.push(lo);
  }
  let lo = Infinity;
  let hi = -Infinity;
  // Every corner once: the bits of `corner` say which open inputs stand at their upper end.
  for (let corner = 0, corners = 2 ** (open?.length ?? 0); corner < corners; corner++) {
    open?.forEach((one, bit) => (values[one.at] = corner & (1 << bit) ? one.hi : one.lo));
    const value = work(...values);
    lo = Math.min(lo, Number.isNaN(value) ? -Infinity : value);
    hi = Math.max(hi, Number.isNaN(value) ? Infinity : value);
  }
  // What comes out the same at all corners waits for none: nothing times anything. Of an input that nothing bounds
  // the corners do not tell: divided by it, all give nothing.
  const isSure = lo === hi && !inputs.some((one) => one.lo === -Infinity);
  const missingFacts = isSure ? noneMissing : uniqueMissing(inputs);
  return make(label, dimension, lo, hi, missingFacts, look, undefined, inputs, work, formula);
}

/** The sum of figures none of which can be negative: what is unknown leaves the sum open upwards only. */
export function total(
  label: string,
  dimension: FigureDimension,
  inputs: readonly Figure[],
  look?: FigureOptions,
): Figure {
  let lo = 0;
  let hi = 0;
  let currency = look?.currency;
  for (const input of inputs) {
    lo += Math.max(0, input.lo);
    hi += input.hi;
    currency ??= input.currency;
  }
  return make(
    label,
    dimension,
    lo,
    hi,
    uniqueMissing(inputs),
    { unit: look?.unit, source: look?.source, currency },
    undefined,
    inputs,
    sum,
  );
}

const sum = (...values: number[]): number => values.reduce((a, b) => a + b, 0);

/** One by itself, since no file says how many. */
export const isPlainOne = ({ lo, hi, from }: Figure): boolean => lo === 1 && hi === 1 && !from;

/** `count` times a figure; one that nobody states needs no sum. */
export function times(one: Figure, count: Figure, label = one.label): Figure {
  if (isPlainOne(count)) return one;
  return derive(label, one.dimension, [count, one], `${count.label} × ${one.label}`, (n, x) => n * x, {
    unit: one.unit,
    currency: one.currency,
  });
}

/** The smallest of several figures; which one binds is plain from the working. */
export function least(label: string, inputs: readonly Figure[], look?: FigureOptions): Figure {
  return extreme(label, inputs, Math.min, look);
}

/** The largest of several figures. */
export function most(label: string, inputs: readonly Figure[], look?: FigureOptions): Figure {
  return extreme(label, inputs, Math.max, look);
}

function extreme(
  label: string,
  inputs: readonly Figure[],
  pick: (...n: number[]) => number,
  look: FigureOptions | undefined,
): Figure {
  const [first, ...others] = inputs;
  if (!first) throw new RangeError(`${label}: no figures to compare`);
  let { lo, hi } = first;
  for (const other of others) {
    lo = pick(lo, other.lo);
    hi = pick(hi, other.hi);
  }
  return make(
    label,
    first.dimension,
    lo,
    hi,
    uniqueMissing(inputs),
    { unit: look?.unit ?? first.unit, source: look?.source, currency: look?.currency },
    undefined,
    inputs,
    pick,
  );
}

const wordsOf = new Map<Figure['work'], (labels: readonly string[]) => string>([
  [sum, (labels) => labels.join(' + ') || 'nothing to add up'],
  [Math.min, (labels) => `the least of ${labels.join(', ')}`],
  [Math.max, (labels) => `the most of ${labels.join(', ')}`],
]);

/** The formula of a figure in words; undefined for one that was not worked out. */
export function formulaOf({ formula, work, inputs }: Figure): string | undefined {
  return formula ?? wordsOf.get(work)?.(inputs.map(({ label }) => label));
}
