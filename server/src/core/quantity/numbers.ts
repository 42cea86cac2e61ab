// Reads the number of a quantity, doubtful ways of writing included, and writes numbers without exponents.

/**
 * `texts` holds the number as it should be written, one text for each reading; `odd` follows the text in a sentence.
 */
export type NumberReading =
  | { readonly value: number; readonly texts: readonly string[]; readonly odd?: string }
  | { readonly value?: undefined; readonly texts: readonly string[]; readonly odd: string };

const clean = /^[+-]?(?:0|[1-9]\d*)(?:\.\d+)?$/;
const unusual = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;
/** 1,200 or 1 200,5: groups of three after one to three digits, with one mark throughout. */
const grouped = /^([+-]?)([1-9]\d{0,2})(?:([,.'’_ ])\d{3})(?:\3\d{3})*(?:([.,])\d+)?$/;
const decimalComma = /^[+-]?\d+,\d+$/;

/** No part has as much of anything, or as little as its inverse; past this, sums could overflow. */
const beyondUse = 1e21;

/** Where a number begins: up to what may still belong to it, space-parted groups of three included. */
export const numberStart = /^[+-]?(?=[.,]?\d)[\d.,]*(?:['’_ ]\d{3}(?!\d)[\d.,]*)*(?:[eE][+-]?\d+)?/;

/** Reads what {@link numberStart} found. A doubtful number has no value, only the texts it could mean. */
export function readNumber(written: string): NumberReading {
  if (unusual.test(written)) return readDecimal(written, Number(written));
  const texts = [...groupedReading(written), ...(decimalComma.test(written) ? [written.replace(',', '.')] : [])];
  return { texts, odd: oddity(written, texts) };
}

function readDecimal(written: string, value: number): NumberReading {
  const size = Math.abs(value);
  if (size >= beyondUse) return { texts: [], odd: 'is too large a number' };
  if (size < 1 / beyondUse && /^[^eE]*[1-9]/.test(written)) return { texts: [], odd: 'is too small a number' };
  // Adding 0 makes −0 plain.
  if (clean.test(written)) return { value: value + 0, texts: [written] };
  return { value: value + 0, texts: [plainNumber(value)], odd: 'is an unusual way to write a number' };
}

function groupedReading(written: string): string[] {
  const match = grouped.exec(written);
  if (match === null || match[3] === match[4]) return [];
  const whole = match[4] === undefined ? written : written.slice(0, written.lastIndexOf(match[4]));
  const fraction = match[4] === undefined ? '' : `.${written.slice(whole.length + 1)}`;
  return [whole.replace(/[,.'’_ ]/g, '') + fraction];
}

function oddity(written: string, texts: readonly string[]): string {
  if (texts.length > 1) return 'can be read with a thousands mark or with a decimal comma';
  if (decimalComma.test(written)) return 'has a decimal comma';
  return texts.length === 1 ? 'has its thousands parted' : 'is not a number that can be read in one way';
}

/** A number in plain decimals, never with an exponent: 1e-7 is `0.0000001`. */
export function plainNumber(value: number): string {
  const text = String(value);
  if (!text.includes('e')) return text;
  const [mantissa = '', exponent] = text.split('e');
  const sign = mantissa.startsWith('-') ? '-' : '';
  const [whole = '', fraction = ''] = mantissa.slice(sign.length).split('.');
  const shift = Number(exponent);
  return shift > 0
    ? sign + whole + fraction.padEnd(shift, '0')
    : `${sign}0.${'0'.repeat(-shift - 1)}${whole}${fraction}`;
}
