// A quantity of a data sheet in canonical spelling, where it is plain.
import type { QuantityField } from '../parts/field';
import { readScalar } from '../parts/scalar';
import { formatQuantity, inUnit, plainNumber, type Quantity, type UnitName } from '../quantity';
import { isHedged, wordSet } from './clean';
import { doubtful, nothing, plain, type Place, type Take } from './taken';

const LIMIT_BEFORE = /^(?:up to|bis zu|bis|max(?:\.|imum|imal)?|until|≤|<=|<|below|less than|within|unter)[:\s]*/i;
const LIMIT_BEHIND = /[\s,]{0,3}(?:\(max(?:\.|imum|imal)?\)|max(?:\.|imum|imal)?)$/i;
const LEAST_BEFORE = /^(?:min(?:\.|imum|destens)?|at least|more than|over|above|ab|über|≥|>=|>)/i;
/** Not of `rev/min`. */
const LEAST_BEHIND = /(?:^|[^/\w])\(?min(?:\.|imum)?\)?$/i;
const TOLERANCE = /\s?(?:\(\s?)?(?:±|\+\/-|\+-)\s?\d{1,4}(?:[.,]\d{1,3})?\s?(?:%|[a-z/]{1,4})?(?:\s?\))?/gi;
const TYPICAL = wordSet(
  'typ|typ.|typical|typisch|pwm|fan|per fan|pro lüfter|each|je lüfter|net|netto|nominal|avg|avg.|tdp|tgp|tbp|' +
    'tjmax|tj max|tj',
);

/** What the package weighs beside it. */
const GROSS_BEHIND =
  /^([^()]{1,60}) ?\((?:gross|brutto|(?:with|incl\.|mit) (?:packag|verpack)|packag|verpack)[^()]{0,40}\)$/i;

/** Without words behind a value that say no more than its label. */
function withoutTypical(whole: string): string {
  const text = whole.replace(/ ?\(fan\) ?\/.{1,20}\((?:A?RGB|LEDs?)\)$/i, '');
  const [, value, inner] = /^(.{1,60}?)\s?\(([^()]{2,12})\)$/.exec(text) ?? [];
  if (value !== undefined && TYPICAL.has(inner!.toLowerCase())) return value;
  const [, own] = GROSS_BEHIND.exec(text) ?? [];
  if (own !== undefined) return own.trim();
  return (
    text
      .replace(/ ?\(?(?:@|at|bei) ?\d{2} ?°C\)?$/i, '')
      .replace(
        /\s?\((?:with|incl(?:\.|uding)?|mit|inkl\.?) (?:both |all |beiden )?(?:fans?|lüftern?|stand|standfuß)\)$/i,
        '',
      )
      .replace(/\s?\((?:card|drive|unit) only\)$/i, '')
      .replace(/(?<=\d ?TB) ?\([\d.,]{3,9} ?GB\)$/i, '')
      // What is counted as a gigabyte is the same on every sheet.
      .replace(/\s?[([]1 ?[GT]B ?= ?[^()[\]]{3,40}[)\]]$/i, '')
      .replace(
        /\s(?:typ\.|typical|typisch|per fan|incl\.? fans?|inkl\.? Lüfter|pro Lüfter|TDP|TGP|TBP|net|netto)$/i,
        '',
      )
  );
}

/** What a value comes to, or undefined where it is no quantity of the field. */
interface Read {
  readonly quantity: Quantity;
  readonly isMost: boolean;
}

/** Fields that name the most of their kind: a limit printed for one is the fact itself. */
const MOSTS = new Set([
  'memory.most',
  'memory.largest-module',
  'memory.fastest',
  'hottest',
  'highest',
  'power.peak',
  'draw.peak',
  'rating',
  'rated-power',
  'supply-depth',
  'spin-up.current',
  'mass',
]);

/** Rates whose label may say `Max.` of any drive; behind a value it bounds it. */
const MOST_BY_LABEL = new Set(['read', 'write']);

export function takeQuantity(value: string, place: Place): Take {
  const key = place.path.join('.');
  const field = place.field as QuantityField;
  const read = readQuantityText(value, field, place);
  if (!read) return nothing;
  const fact = { path: place.path, value: canonical(read.quantity, field) };
  const isMost = read.isMost || (place.said.isMost && !MOST_BY_LABEL.has(key));
  const mayBeMost = field.room === true || field.full === true || MOSTS.has(key);
  return isMost && !mayBeMost ? doubtful(fact) : plain(fact);
}

function readQuantityText(value: string, field: QuantityField, { said }: Place): Read | undefined {
  let text = withDots(value.trim());
  text = withoutTypical(text).trim();
  if (field.dimension === 'temperature') text = text.replace(/(?<=\d) ?C$/, ' °C');
  if (LEAST_BEFORE.test(text) || LEAST_BEHIND.test(text)) return undefined;
  const isMost = LIMIT_BEFORE.test(text) || LIMIT_BEHIND.test(text);
  text = text
    .replace(LIMIT_BEFORE, '')
    .replace(LIMIT_BEHIND, '')
    .replace(TOLERANCE, '')
    .replace(/\s{2,}/g, ' ')
    .trim();
  if (isHedged(text)) return undefined;
  const quantity = exactOf(withUnit(text, said.unit), field);
  return quantity && { quantity, isMost };
}

/** A comma before one, two or four and more figures parts decimals; before three it is asked about. */
export const withDots = (text: string): string =>
  text
    .replace(/(?<![\d.,])(\d{1,12}),(\d{1,2}|\d{4,12})(?![\d,.])/g, '$1.$2')
    .replace(/(?<![\d.,] ?)([1-9]\d{0,2}) (\d{3})(?= ?(?:k?g|rpm|U\/min|[MGT]B|W|MT)\b)/gi, '$1$2')
    .replace(/(?<![\d.,])0,(\d{3})(?![\d,.])/g, '0.$1');

/** The unit of the label, or of the column, behind a bare number. */
function withUnit(text: string, unit: string | undefined): string {
  if (unit === undefined || !/^[\d.,~\s–-]+$/.test(text)) return text;
  return `${text} ${unit}`;
}

/** One figure, or the upper end of a sweep where the field is meant at full speed; else undefined. */
function exactOf(text: string, field: QuantityField): Quantity | undefined {
  const both = inTwoUnits(text, field);
  if (both) return both;
  for (const one of waysOf(text, field)) {
    const { value, slip } = readScalar(field, one);
    const quantity = value as Quantity | undefined;
    if (slip || !quantity || !Number.isFinite(quantity.lo) || quantity.lo !== quantity.hi) continue;
    return quantity;
  }
  return undefined;
}

/** `77.0 CFM / 130.8 m³/h`, `285 mm (11.2 in)`: one measure in two units, where they agree; metric before inches. */
function inTwoUnits(text: string, field: QuantityField): Quantity | undefined {
  const parts = text.split(/\s\/\s|\s?[([]|[)\]]/).filter((part) => part.trim() !== '');
  if (parts.length !== 2) return undefined;
  const [one, other] = parts.map((part) => exactOf(part.trim(), field));
  if (!one || !other || one.unit === other.unit) return undefined;
  if (Math.abs(one.hi - other.hi) > Math.abs(one.hi) * roundedWithin) return undefined;
  return one.unit === 'in' || one.unit === 'lb' ? other : one;
}
/** How far the second of two units may be rounded. */
const roundedWithin = 0.03;

/** The text itself; what stands in brackets behind it in the unit of the field’s dimension, metric first. */
function waysOf(text: string, field: QuantityField): readonly string[] {
  const [, first, second] = /^([^()]{1,40}?) ?\(([^()]{1,40})\)$/.exec(text) ?? [];
  const [, one, other] = /^([^()/]{1,40}?) ?\/ ?([^()/]{1,40})$/.exec(text) ?? [];
  const pairs = [...(first && second ? [`${second} (${first})`] : []), ...(one && other ? [`${other} (${one})`] : [])];
  const upper = field.full || field.dimension === 'temperature' ? upperEnd(text, field) : undefined;
  const ways = [text, ...pairs, ...(upper === undefined ? [] : [upper])];
  return field.dimension === 'length' ? ways.toSorted((a, b) => Number(isInch(a)) - Number(isInch(b))) : ways;
}

const isInch = (text: string): boolean => /^[\d.]+ ?(?:in\b|inch|"|”|″)/i.test(text);

/** `0 °C ~ 70 °C`, `500 – 1850 rpm`, `0 to 70 °C`: what stands behind the sign, with its unit. */
function upperEnd(text: string, { unit }: QuantityField): string | undefined {
  const [, upper] =
    /^[-+−]?[\d.,\s]{1,12}[^\d\s~〜–-]{0,8}\s?(?:~|〜|–|-|to|bis|\.\.\.|…)\s?\+?(\d[^~–]{0,20})$/i.exec(text) ?? [];
  if (upper === undefined) return undefined;
  return /^\d[\d.,\s]*$/.test(upper) ? `${upper.trim()} ${unit}` : upper.trim();
}

/** Units of people who never meant their digits: centimetres are written as millimetres. */
const WRITTEN: Partial<Record<UnitName, UnitName>> = { cm: 'mm', m: 'm' };

export function canonical({ lo, hi, dimension, unit }: Quantity, field?: QuantityField): string {
  const asked = WRITTEN[unit] ?? unit;
  const shown = asked === 'm' && field?.unit === 'mm' ? 'mm' : asked;
  const value = hi === lo ? hi : lo;
  const text = formatQuantity(value, value, dimension, { unit: shown, digits: 7 });
  return dimension === 'length' && shown === 'mm' ? `${plainNumber(Number(inUnit(value, 'mm').toFixed(3)))} mm` : text;
}
