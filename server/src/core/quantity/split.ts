// Takes the text of a quantity apart: limit words, numbers, unit words. Says nothing about their sense.
import { numberStart } from './numbers';

/** A stretch of the text; an absent unit is an empty slice where it would stand. */
export interface Slice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface End {
  readonly number: Slice;
  readonly unit: Slice;
}

export interface Parts {
  /** `at most ` and the like as written, or empty. */
  readonly prefix: string;
  readonly limit?: 'most' | 'least';
  readonly first: End;
  /** What stands between the two ends of a range. */
  readonly separator: string;
  readonly second?: End;
  /** The unit stands before the number, as in `EUR 20`. */
  readonly unitFirst?: boolean;
}

const limits = /^(?:(at most\s|up to\s|≤|<=)|(?:at least\s|≥|>=))\s*/i;
// One blank before `to`, none before a dash: the others are trimmed, so that no blank is looked at twice.
const rangeMark = /(?:\sto\s+|[–-]\s*)(?=[+-]?[.,]?\d)/;
const lineEnd = /[\n\r\u2028\u2029]/;
const fraction = /^[+-]?\d*\s?[¼½¾]/;
const currencyFirst = /^(€|[A-Za-z]{3})\s*(?=[+-]?\d)/;

function slice(text: string, start: number, end: number): Slice {
  const part = text.slice(start, end);
  const left = end - part.trimStart().length;
  return { start: left, end: left + part.trim().length, text: part.trim() };
}

function numberAt(text: string, start: number): Slice | undefined {
  const rest = text.slice(start);
  const found = (fraction.exec(rest) ?? numberStart.exec(rest))?.[0];
  return found === undefined ? undefined : { start, end: start + found.length, text: found };
}

/** The parts of `text`, which has no space at its ends; undefined where no number stands first. */
export function split(text: string): Parts | undefined {
  const limit = limits.exec(text);
  const prefix = limit?.[0] ?? '';
  const side = limit === null ? {} : { limit: limit[1] === undefined ? ('least' as const) : ('most' as const) };
  const number = numberAt(text, prefix.length);
  if (number === undefined) return splitCurrencyFirst(text, prefix, side);
  const mark = rangeMarkAfter(text, number.end);
  if (mark === undefined)
    return { prefix, ...side, first: { number, unit: slice(text, number.end, text.length) }, separator: '' };
  const between = mark.start;
  const next = numberAt(text, mark.end);
  if (next === undefined) return undefined;
  return {
    prefix,
    ...side,
    separator: text.slice(mark.start, mark.end),
    first: { number, unit: slice(text, number.end, between) },
    second: { number: next, unit: slice(text, next.end, text.length) },
  };
}

/** Where the mark between two ends lies, blanks around it included; both stand on the line of the first number. */
function rangeMarkAfter(text: string, from: number): { readonly start: number; readonly end: number } | undefined {
  const rest = text.slice(from);
  const mark = rangeMark.exec(rest);
  if (mark === null) return undefined;
  const before = rest.slice(0, mark.index).trimEnd();
  if (lineEnd.test(before)) return undefined;
  return { start: from + before.length, end: from + mark.index + mark[0].length };
}

function splitCurrencyFirst(text: string, prefix: string, side: Pick<Parts, 'limit'>): Parts | undefined {
  const found = currencyFirst.exec(text.slice(prefix.length));
  const number = found === null ? undefined : numberAt(text, prefix.length + found[0].length);
  if (found === null || number === undefined || number.end !== text.length) return undefined;
  const unit = slice(text, prefix.length, prefix.length + (found[1] ?? '').length);
  return { prefix, ...side, first: { number, unit }, separator: '', unitFirst: true };
}
