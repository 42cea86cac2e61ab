// Puts the parts of a quantity together again: as a value, and as whole texts to write instead.
import type { Dimension } from './types';
import { dimensions } from './dimensions';
import { extent, readBareEnd, readEnd, type EndReading, type EndText } from './ends';
import { plainNumber } from './numbers';
import { split, type End, type Parts } from './split';
import { unitNamed, type UnitName } from './units';

/** What a text holds; `texts` are whole texts as they should be written. A fault beside a value is a warning. */
export type Reading =
  | {
      readonly value: { readonly lo: number; readonly hi: number; readonly unit: UnitName };
      readonly fault?: EndText;
      readonly texts: readonly string[];
    }
  | { readonly value?: undefined; readonly fault: EndText; readonly texts: readonly string[] };

/** More texts than these are no help to choose from. */
const mostTexts = 4;

/** Reads a text that has no space at its ends and no look-alikes in it. */
export function readParts(text: string, dimension: Dimension, usual?: UnitName): Reading {
  const parts = split(text);
  if (parts === undefined) return noNumber(text, dimension);
  const { first, second } = parts;
  if (second === undefined) return single(parts, readEnd(first, dimension, usual), dimension);
  if (parts.limit !== undefined) return failed('not-a-number', `\`${text}\` states a limit and a range at once`, text);
  return range(text, parts, readRangeEnds(first, second, dimension, usual), dimension);
}

function failed(code: EndText['code'], why: string, text: string, texts: readonly string[] = []): Reading {
  return { texts, fault: { code, why, start: 0, end: text.length } };
}

function noNumber(text: string, dimension: Dimension): Reading {
  const { what, usual } = dimensions[dimension];
  const such = usual
    .slice(0, 2)
    .map((name) => `\`${unitNamed(name).spellings[0]}\``)
    .join(' or ');
  const is = text === '' ? 'There is nothing here' : `\`${text}\` is not ${what}`;
  return failed('not-a-number', `${is}; write a number and its unit, such as ${such}`, text);
}

function single(parts: Parts, end: EndReading, dimension: Dimension): Reading {
  const texts = end.numbers
    .flatMap((number) => end.units.map((unit) => `${parts.prefix}${number} ${unit}`))
    .slice(0, mostTexts);
  const { value, unit, fault } = end;
  if (value === undefined) return { fault, texts };
  const before: EndText | undefined =
    parts.unitFirst === true
      ? { code: 'number-odd', why: 'The currency stands before the number', ...extent(parts.first) }
      : undefined;
  return (
    tooLow(value, parts.first, dimension) ?? {
      value: { lo: parts.limit === 'most' ? -Infinity : value, hi: parts.limit === 'least' ? Infinity : value, unit },
      fault: fault ?? before,
      texts,
    }
  );
}

function tooLow(value: number, end: End, dimension: Dimension): Reading | undefined {
  const { least, base, what } = dimensions[dimension];
  if (least === undefined || value >= least) return undefined;
  const limit = `${plainNumber(least)} ${unitNamed(base).spellings[0]}`;
  const written = `${end.number.text} ${end.unit.text}`.trim();
  const why = `\`${written}\` is below ${limit}, and ${what} cannot be`;
  return { texts: [], fault: { code: 'number-odd', why, ...extent(end) } };
}

/** Each end may leave its unit to the other; for the lower end that is good style, for the upper one a fault. */
function readRangeEnds(
  first: End,
  second: End,
  dimension: Dimension,
  usual?: UnitName,
): readonly [EndReading, EndReading] {
  if (first.unit.text === '') {
    const upper = readEnd(second, dimension, usual);
    return [readBareEnd(first, upper), upper];
  }
  const lower = readEnd(first, dimension, usual);
  return [lower, readEnd(second, dimension, lower.unit ?? usual)];
}

function range(
  text: string,
  parts: Parts,
  [lower, upper]: readonly [EndReading, EndReading],
  dimension: Dimension,
): Reading {
  const texts = rangeTexts(lower, upper, parts.separator);
  if (lower.value === undefined) return { fault: lower.fault, texts };
  if (upper.value === undefined) return { fault: upper.fault, texts };
  if (dimension === 'money' && lower.unit !== upper.unit)
    return failed('unit-of-other-dimension', `\`${text}\` names two currencies`, text);
  const impossible = tooLow(lower.value, parts.first, dimension);
  if (impossible !== undefined) return impossible;
  if (lower.value <= upper.value)
    return { value: { lo: lower.value, hi: upper.value, unit: upper.unit }, fault: lower.fault ?? upper.fault, texts };
  const swapped =
    lower.units[0] === ''
      ? rangeTexts({ ...upper, units: [''] }, { ...lower, units: upper.units }, parts.separator)
      : rangeTexts(upper, lower, parts.separator);
  return failed('range-reversed', `\`${text}\` begins with its greater end`, text, swapped);
}

/** Where both ends could be written in several ways, the same one is taken for both. */
function rangeTexts(lower: EndReading, upper: EndReading, separator: string): string[] {
  const numbers = paired(lower.numbers, upper.numbers);
  const units = paired(lower.units, upper.units);
  return numbers
    .flatMap(([from, to]) => units.map(([one, other]) => `${`${from} ${one}`.trim()}${separator}${to} ${other}`))
    .slice(0, mostTexts);
}

function paired(ones: readonly string[], others: readonly string[]): (readonly [string, string])[] {
  if (ones.length === others.length) return ones.map((one, index) => [one, others[index] ?? one] as const);
  return ones.flatMap((one) => others.map((other) => [one, other] as const));
}
