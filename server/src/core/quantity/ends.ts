// Reads one number with its unit: values where they are certain, otherwise the texts they could be.
import type { Dimension } from './types';
import { toBase } from './convert';
import { readNumber } from './numbers';
import type { End, Slice } from './split';
import { readUnit, type Fault } from './unit-word';
import type { UnitName } from './units';

/** A fault and where it lies in the text that was read. */
export interface EndText extends Fault {
  readonly start: number;
  readonly end: number;
}

/** The texts that the number could be, and those that the unit could be; an empty unit is not written. */
interface Texts {
  readonly numbers: readonly string[];
  readonly units: readonly string[];
}

/** A fault beside a value (in base units) is a warning. A wrong number may stand before a unit that is right. */
export type EndReading = Texts &
  (
    | { readonly value: number; readonly unit: UnitName; readonly fault?: EndText }
    | { readonly value?: undefined; readonly unit?: UnitName; readonly fault: EndText }
  );

type Numeral =
  | { readonly value: number; readonly texts: readonly string[]; readonly fault?: EndText }
  | { readonly value?: undefined; readonly texts: readonly string[]; readonly fault: EndText };

const vulgar: ReadonlyMap<string, string> = new Map([
  ['¼', '.25'],
  ['½', '.5'],
  ['¾', '.75'],
]);

/** Where an end lies, number and unit together. */
export function extent({ number, unit }: End): { readonly start: number; readonly end: number } {
  return { start: Math.min(number.start, unit.start), end: Math.max(number.end, unit.end) };
}

export function readEnd({ number, unit }: End, dimension: Dimension, usual?: UnitName): EndReading {
  const numeral = readNumeral(number);
  const read = readUnit(unit.text, number.text, dimension, usual);
  const texts = { numbers: numeral.texts, units: read.texts };
  if (numeral.value === undefined) return { ...texts, unit: read.unit, fault: numeral.fault };
  if (read.unit === undefined) return { ...texts, fault: at(read.fault, unit.text === '' ? number : unit) };
  const fault = numeral.fault ?? (read.fault && at(read.fault, unit));
  return { ...texts, value: toBase(numeral.value, read.unit), unit: read.unit, fault };
}

/** The lower end of a range, which leaves its unit to the upper end. */
export function readBareEnd({ number }: End, upper: EndReading): EndReading {
  const { value, texts, fault } = readNumeral(number);
  const written = { numbers: texts, units: [''] };
  if (value === undefined) return { ...written, fault };
  if (upper.unit === undefined) return { ...written, fault: upper.fault };
  return { ...written, value: toBase(value, upper.unit), unit: upper.unit, fault };
}

function at(fault: Fault, { start, end }: Slice): EndText {
  return { ...fault, start, end };
}

function readNumeral(number: Slice): Numeral {
  const part = vulgar.get(number.text.slice(-1));
  if (part !== undefined) return readVulgar(number, part);
  const { value, texts, odd } = readNumber(number.text);
  const fault = (why: string): EndText => at({ code: 'number-odd', why: `\`${number.text}\` ${why}` }, number);
  if (value === undefined) return { texts, fault: fault(odd) };
  return odd === undefined ? { value, texts } : { value, texts, fault: fault(odd) };
}

function readVulgar(number: Slice, part: string): Numeral {
  const whole = number.text.slice(0, -1).trim();
  const fault: Fault = { code: 'not-a-number', why: `\`${number.text}\` is not a decimal number` };
  return { texts: [(/\d$/.test(whole) ? whole : `${whole}0`) + part], fault: at(fault, number) };
}
