// Reads a quantity as a person wrote it: one value in base units, or one problem with what to write instead.
import type { Dimension, QuantityProblem, QuantityResult } from './types';
import { readParts, type Reading } from './compose';
import type { EndText } from './ends';
import { tidy, withDigits, type LookAlike, type Tidied } from './look-alikes';
import { unitNamed, type UnitName } from './units';

/**
 * Reads `text` as a quantity of `dimension`: `158 mm`, `150 to 160 mm`, `at most 160 mm`.
 * Never throws and never guesses: what has more than one reading gives a problem that lists them.
 * @param opts.usual the unit offered where none was written
 */
export function readQuantity(
  text: string,
  dimension: Dimension,
  opts: { readonly usual?: UnitName } = {},
): QuantityResult {
  const tidied = tidy(text);
  const reading = readTidied(tidied, dimension, opts.usual);
  if (reading.value !== undefined) return result(text, dimension, tidied, reading, reading.value);
  const mended = withDigits(tidied);
  const again = mended && readTidied(mended, dimension, opts.usual);
  if (mended !== undefined && again?.value !== undefined) return result(text, dimension, mended, again, again.value);
  return { problem: problemAt(reading.fault, tidied, sound(reading.texts, dimension), text) };
}

function readTidied({ text }: Tidied, dimension: Dimension, usual?: UnitName): Reading {
  const reading = readParts(text.trim(), dimension, usual);
  const shift = text.length - text.trimStart().length;
  const { fault } = reading;
  return fault === undefined
    ? reading
    : { ...reading, fault: { ...fault, start: fault.start + shift, end: fault.end + shift } };
}

function result(
  text: string,
  dimension: Dimension,
  tidied: Tidied,
  { fault, texts }: Reading,
  value: NonNullable<Reading['value']>,
): QuantityResult {
  const { notation } = unitNamed(value.unit);
  const quantity = {
    dimension,
    ...value,
    text,
    ...(dimension === 'money' && { currency: value.unit }),
    ...(notation && { notation }),
  };
  const alike = tidied.alikes[0];
  if (fault !== undefined) return { quantity, problem: problemAt(fault, tidied, texts, text) };
  return alike === undefined ? { quantity } : { quantity, problem: alikeProblem(alike, texts) };
}

/** A text is suggested only if nothing is wrong with it: `-1` is not mended by a unit where nothing can be below 0. */
function sound(texts: readonly string[], dimension: Dimension): readonly string[] {
  return texts.filter((text) => {
    const { value, fault } = readParts(text, dimension);
    return value !== undefined && fault === undefined;
  });
}

function sentence(why: string, texts: readonly string[]): string {
  return texts.length === 0 ? `${why}.` : `${why}; write ${texts.map((each) => `\`${each}\``).join(' or ')}.`;
}

function problemAt(fault: EndText, { origin }: Tidied, suggestions: readonly string[], text: string): QuantityProblem {
  const { code, why, start, end } = fault;
  return {
    code,
    message: sentence(why, suggestions),
    start: origin[start] ?? 0,
    end: origin[end] ?? text.length,
    suggestions,
  };
}

function alikeProblem({ start, end, written, meant }: LookAlike, suggestions: readonly string[]): QuantityProblem {
  const point = `U+${(written.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
  const stands =
    meant === ' '
      ? `An unusual space (${point}) stands here`
      : `\`${written}\` (${point}) stands where \`${meant}\` belongs`;
  const why = meant === '' ? `An invisible character (${point}) stands here` : stands;
  return { code: 'unit-look-alike', message: sentence(why, suggestions), start, end, suggestions };
}
