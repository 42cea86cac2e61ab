// Figures: numbers with their working. Known, known only within a range, or unknown with the facts that are missing.
import type { Doc } from '../parts/doc';
import type { Fact } from '../parts/fact';
import type { Dimension, Quantity, UnitName } from '../quantity';
import type { Span } from '../text';

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
  readonly from?: { readonly doc: Doc; readonly span: Span; readonly path: string };
  /** The published source, for a number from the trade’s tables or a formula. */
  readonly source?: string;
  /** The formula in words, for a number worked out from `inputs`. */
  readonly formula?: string;
  readonly inputs: readonly Figure[];
  /** Reproduces the value from the inputs’ values, in base units. */
  readonly work?: (...inputs: number[]) => number;
}

export const isExact = (figure: Figure): boolean => figure.lo === figure.hi;

interface Look { unit?: UnitName; source?: string; currency?: string }

/** A figure read from a quantity that a file states, or unknown with that fact missing. */
export function figure(fact: Fact<Quantity>, label: string): Figure {
  const q = fact.value;
  const field = fact.field;
  const dimension: FigureDimension = field.type === 'quantity' ? field.dimension : 'count';
  if (!q) return { type: 'figure', label, dimension, lo: -Infinity, hi: Infinity, missing: [missing(fact, label)], inputs: [] };
  return {
    type: 'figure', label, dimension: q.dimension, lo: q.lo, hi: q.hi, unit: q.unit, missing: [], inputs: [],
    from: { doc: fact.doc, span: fact.node!.span, path: fact.path }, ...(q.currency ? { currency: q.currency } : {}),
  };
}

/** A count that a file states. */
export function counted(fact: Fact<number>, label: string): Figure {
  if (fact.value === undefined) return { type: 'figure', label, dimension: 'count', lo: -Infinity, hi: Infinity, missing: [missing(fact, label)], inputs: [] };
  return { ...number(fact.value, label), from: { doc: fact.doc, span: fact.node!.span, path: fact.path } };
}

/** A count that is plain from the build itself: how many things are listed. */
export function number(value: number, label: string, source = 'counted in the build'): Figure {
  return { type: 'figure', label, dimension: 'count', lo: value, hi: value, missing: [], inputs: [], source };
}

/** A value of the trade: from a table or a standard, in the base unit of its dimension. */
export function known(value: number, dimension: FigureDimension, label: string, look: Look & { source: string }): Figure {
  return { type: 'figure', label, dimension, lo: value, hi: value, missing: [], inputs: [], ...look };
}

/** A value of the trade known only within bounds. */
export function between(lo: number, hi: number, dimension: FigureDimension, label: string, look: Look & { source: string }): Figure {
  return { type: 'figure', label, dimension, lo, hi, missing: [], inputs: [], ...look };
}

/** A figure that cannot be had, for want of something that is no quantity. */
export function unknown(dimension: FigureDimension, label: string, lacks: readonly Missing[]): Figure {
  return { type: 'figure', label, dimension, lo: -Infinity, hi: Infinity, missing: lacks, inputs: [] };
}

/** The missing fact behind an absent or unreadable one. */
export function missing(fact: Fact<unknown>, what: string): Missing {
  return { doc: fact.doc, path: fact.path, fact, what };
}

/**
 * Works a figure out from others. `work` must rise or fall steadily in each input: the bounds are then those of
 * the corners. Bounds that are not finite give bounds that are not finite, never NaN.
 */
export function derive(
  label: string, dimension: FigureDimension, inputs: readonly Figure[], formula: string, work: (...inputs: number[]) => number, look: Look = {},
): Figure {
  const lacks = uniqueMissing(inputs);
  const values = inputs.map((input) => input.lo);
  const open = inputs.flatMap((input, i) => (isExact(input) ? [] : [i]));
  let lo = Infinity;
  let hi = -Infinity;
  // Every corner once: the bits of `corner` say which open inputs stand at their upper end.
  for (let corner = 0; corner < 2 ** open.length; corner++) {
    open.forEach((i, bit) => (values[i] = corner & (1 << bit) ? inputs[i]!.hi : inputs[i]!.lo));
    const value = work(...values);
    lo = Math.min(lo, Number.isNaN(value) ? -Infinity : value);
    hi = Math.max(hi, Number.isNaN(value) ? Infinity : value);
  }
  return { type: 'figure', label, dimension, lo, hi, missing: lacks, inputs, formula, work, ...look };
}

/** The sum of figures none of which can be negative: what is unknown leaves the sum open upwards only. */
export function total(label: string, dimension: FigureDimension, inputs: readonly Figure[], look: Look = {}): Figure {
  let lo = 0;
  let hi = 0;
  for (const input of inputs) {
    lo += Math.max(0, input.lo);
    hi += input.hi;
  }
  const currency = inputs.find((input) => input.currency)?.currency;
  return {
    type: 'figure', label, dimension, lo, hi, missing: uniqueMissing(inputs), inputs, formula: inputs.map((i) => i.label).join(' + '),
    work: (...values) => values.reduce((a, b) => a + b, 0), ...(currency ? { currency } : {}), ...look,
  };
}

/** `count` times a figure. */
export function times(one: Figure, count: Figure, label = one.label): Figure {
  if (count.lo === 1 && count.hi === 1) return one;
  const look = { ...(one.unit ? { unit: one.unit } : {}), ...(one.currency ? { currency: one.currency } : {}) };
  return derive(label, one.dimension, [count, one], `${count.label} × ${one.label}`, (n, x) => n! * x!, look);
}

/** The smallest of several figures; which one binds is plain from the working. */
export function least(label: string, inputs: readonly Figure[], look: Look = {}): Figure {
  return extreme(label, 'the least of', inputs, Math.min, look);
}

/** The largest of several figures. */
export function most(label: string, inputs: readonly Figure[], look: Look = {}): Figure {
  return extreme(label, 'the most of', inputs, Math.max, look);
}

function extreme(label: string, words: string, inputs: readonly Figure[], pick: (...n: number[]) => number, look: Look): Figure {
  const first = inputs[0];
  if (!first) throw new RangeError(`${label}: no figures to compare`);
  return {
    type: 'figure', label, dimension: first.dimension, lo: pick(...inputs.map((i) => i.lo)), hi: pick(...inputs.map((i) => i.hi)),
    missing: uniqueMissing(inputs), inputs, formula: `${words} ${inputs.map((i) => i.label).join(', ')}`, work: pick,
    ...(first.unit ? { unit: first.unit } : {}), ...look,
  };
}

/** Missing facts of several figures, each once. */
export function uniqueMissing(of: readonly { readonly missing: readonly Missing[] }[]): readonly Missing[] {
  let first: readonly Missing[] = [];
  let later: (readonly Missing[])[] | undefined;
  for (const { missing: lacks } of of) {
    if (lacks.length === 0 || lacks === first) continue;
    if (first.length === 0) first = lacks;
    else (later ??= []).push(lacks);
  }
  // Each list by itself names a fact once.
  return later ? merged(first, later) : first;
}

/** The first list where the later ones name nothing else, so that long lists are shared and not copied. */
function merged(first: readonly Missing[], later: readonly (readonly Missing[])[]): readonly Missing[] {
  let unique: Missing[] | undefined;
  const isShort = later.reduce((sum, { length }) => sum + length, 0) * first.length < shortPairs;
  const keys = isShort ? undefined : new Set(first.map(keyOf));
  // In long lists the very same ones come again and again; those need no key to be known by.
  const met = isShort ? undefined : new Set(first);
  for (const lacks of later) for (const lack of lacks) {
    const among = unique ?? first;
    if (met ? met.has(lack) : among.includes(lack)) continue;
    met?.add(lack);
    if (keys ? keys.has(keyOf(lack)) : among.some((one) => one.path === lack.path && one.doc.name === lack.doc.name)) continue;
    keys?.add(keyOf(lack));
    (unique ??= [...first]).push(lack);
  }
  return unique ?? first;
}

/** Up to so many pairs it is quicker to compare one by one than to make keys. */
const shortPairs = 1_000;
const keyOf = ({ doc, path }: Missing): string => `${doc.name}\n${path}`;
