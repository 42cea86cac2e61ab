// Quantities as data sheets print them, put into the words that a quantity is read by. Source: common practice.
import { plainNumber, readQuantity, toBase, type Dimension, type Quantity } from '../quantity';
import { rateOfBandwidth } from '../trade/memory';
import type { QuantityField } from './field';

/** No sheet prints a longer one; past it nothing is tried. */
const longest = 80;

/** Upper limits and lower ones, before the number or behind it. */
const before: readonly (readonly [RegExp, string])[] = [
  [
    /^(?:max(?:\.|imum|imal)?|bis|até|hasta|jusqu’à|below|less than|within|n(?:o|ot) more than|<):?\s?(?=[\d.])/i,
    'up to ',
  ],
  [/^(?:min(?:\.|imum|imal)?|more than|over|above|>):?\s?(?=[\d.])/i, 'at least '],
];
const behind: readonly (readonly [RegExp, string])[] = [
  [/\s?\(?\bmax(?:\.|imum)?\)?$/i, 'up to '],
  [/\s?\(?(?<!\/)\bmin(?:\.|imum)?\)?$/i, 'at least '],
];

const units: Readonly<Partial<Record<Dimension, readonly (readonly [RegExp, string])[]>>> = {
  length: [
    [/^(\d[\d.]*)-(in|inch)$/i, '$1 in'],
    [/(?<=\d)\s?(?:inch|inches|”|″)$/i, ' in'],
    [/(?<=\d)\s?MM$/, ' mm'],
  ],
  mass: [
    [/(?<=\d)\s?(?:kgs?|kilograms?|kilos?)$/i, ' kg'],
    [/(?<=\d)\s?(?:gr|grams?|G)$/i, ' g'],
    [/(?<=\d)\s?(?:lbs?\.?|pounds?)$/i, ' lb'],
  ],
  power: [
    [/^(?:TDP|TGP|TBP):?\s?(?=\d)/i, ''],
    [/(?<=\d)\s?(?:watts?|W (?:TDP|TGP|TBP))$/i, ' W'],
  ],
  temperature: [[/(?<=\d)\s?(?:℃|[º˚]C|deg\.? ?C|degrees C)$/i, ' °C']],
  'data-rate': [
    [/(?<=\d)\s?([MG]B)(?:\/S|ps|\/sec)$/, ' $1/s'],
    [/(?<=\d)\s?([MG]b)(?:ps|\/sec|it\/s)$/, ' $1/s'],
  ],
  flow: [[/(?<=\d)\s?m[³3]\/(?:hr|hour)$/i, ' m³/h']],
  'data-size': [
    [/\s?([TP]B)(?:W| written)$/i, ' $1'],
    [/(?<=\d)\s?([GT])o$/, ' $1B'],
    [/^TBW\s?(?=\d)(.{1,20})$/i, '$1 TB'],
  ],
  pressure: [[/\s?mm[\s/-]?(?:H[2₂][O0]|Aq)$/i, ' mmH₂O']],
  'rotation-speed': [[/(?<=\d)\s?(?:r\.p\.m\.?|U\/min|r\/min)$/i, ' rpm']],
  'sound-level': [[/\s?dB[\s-]?\(?A\)?$/i, ' dBA']],
  voltage: [
    [/^DC\s?(?=\d)(.{1,20})$/i, '$1'],
    [/\s?V\s?(?:DC|AC|=|~)$/i, ' V'],
  ],
  'transfer-rate': [
    [/^DDR[345][- ](?=\d{3,5}$)(\d{3,5})$/i, '$1 MT/s'],
    [/(?<=\d)\s?(?:MTps|MT\/sec)$/i, ' MT/s'],
    [/\s?MT\/s\s?\(?OC\)?$/i, ' MT/s'],
  ],
};

/** `160 ± 2 mm`, `1850 rpm ±10 %`: both ends of what the tolerance allows. */
const tolerance = /^([\d.]{1,9})\s?([^\d\s±+]{0,8})\s?(?:±|\+\/-|\+-)\s?([\d.]{1,9})\s?(%?)\s?([^\d\s±%]{0,8})$/;

function withEnds(text: string): string {
  const [, middle, unit, by, share, unitBehind] = tolerance.exec(text) ?? [];
  if (middle === undefined || by === undefined) return text;
  const off = share === '%' ? (Number(middle) * Number(by)) / 100 : Number(by);
  const end = (value: number): string => plainNumber(Number(value.toPrecision(12)));
  return `${end(Number(middle) - off)} to ${end(Number(middle) + off)} ${unitBehind || unit}`;
}

/** `PC4-25600`, by bandwidth; `PC4-2400T-UA1`, by rate, with the bin of its timings. */
const moduleName = /^PC[345]L?-(\d{4,5})(?:[A-Z]{1,2}(?:-[A-Z\d]{2,4}){0,2})?$/i;

/** The rate that a module’s name stands for. Source: JEDEC JESD79-4 and JESD79-5, module names and labels. */
function withRate(text: string): string {
  const [, figure] = moduleName.exec(text) ?? [];
  if (figure === undefined) return text;
  const isRate = figure.length === 4 && !/^PC3/i.test(text);
  const rate = isRate ? Number(figure) : rateOfBandwidth(Number(figure));
  return rate === undefined ? text : `${rate} MT/s`;
}

/** The text as a quantity is read; itself where it is written in none of a sheet's ways. */
function inOurWords(text: string, dimension: Dimension): string {
  let plain = text
    .trim()
    .replace(/^=\s?/, '')
    .replace(/\s?\((?:typ(?:\.|ical)?|[hwdl]|height|width|depth|length)\)$/i, '')
    .replace(/^(\d[\d.]{0,6}) ?°C ?(?=[~-])/, '$1 ')
    .replace(partedByBlank, '$1$2');
  let limit = '';
  for (const [pattern, word] of before) if (pattern.test(plain)) [plain, limit] = [plain.replace(pattern, ''), word];
  for (const [pattern, word] of behind) if (pattern.test(plain)) [plain, limit] = [plain.replace(pattern, ''), word];
  for (const [pattern, word] of units[dimension] ?? []) plain = plain.replace(pattern, word);
  if (dimension === 'transfer-rate') plain = withRate(plain);
  plain = withEnds(plain).replace(/(?<=\d)\s?[~〜]\s?(?=\d)/, ' to ');
  return limit + plain;
}

/** `1 600`: a blank before exactly three figures parts thousands. Source: SI Brochure, on numbers. */
const partedByBlank = /(?<![\d.,]|\d )([1-9]\d{0,2}) (\d{3})(?![\d.,]| \d)/g;

/** A text in a sheet's way of writing; undefined where it is none, or leaves something to ask. */
export function readSheetQuantity(field: QuantityField, text: string): Quantity | undefined {
  if (text.length > longest) return undefined;
  const quantity = readWords(field, text) ?? readPair(field, text) ?? readRooms(field, text);
  if (!quantity) return undefined;
  return field.full && sweep.test(text) && !tolerated.test(text) && Number.isFinite(quantity.hi)
    ? { ...quantity, lo: quantity.hi, text }
    : { ...quantity, text };
}

/** From the slowest to full speed: `500 ~ 1850 rpm`, `26-52 CFM`; `52 CFM (max.)`. A tolerance or a bound is none. */
const sweep = /^[^±]{0,30}(?:\d\s?[~〜-]\s?\d[^±]{0,30}|\(?max\.?(?:imum)?\)?)$/i;

const tolerated = /±|\+\/?-/;

/** The slow end of a sweep whose upper end has a tolerance. */
const slowEnd = /^[\d.]{1,9}\s?(?:±\s?[\d.]{1,9})?\s?[~〜-]\s?(?=\d[^~〜]{0,20}(?:±|\+\/-))/;

function readWords(field: QuantityField, text: string): Quantity | undefined {
  const plain = inOurWords(field.full ? text.replace(slowEnd, '') : text, field.dimension);
  if (plain === text && !(field.full && sweep.test(text))) return undefined;
  const { quantity, problem } = readQuantity(plain, field.dimension, { usual: field.unit });
  return problem ? undefined : quantity;
}

/** How far the second of two units may be rounded. */
const roundedWithin = 0.03;
const pair = /^([^()/]{2,30}?)\s?(?:\(([^()]{2,20})\)|\/\s?([^()/]{2,20}))$/;

/** `31.25 mm (1.23 in)`, `1.2 kg / 2.6 lb`: one measure in two units; the first, where they agree. */
function readPair(field: QuantityField, text: string): Quantity | undefined {
  const [, first, bracketed, slashed] = pair.exec(text.trim()) ?? [];
  const second = bracketed ?? slashed;
  if (first === undefined || second === undefined) return undefined;
  const [one, other] = [first, second].map((each) => {
    const read = readQuantity(inOurWords(each, field.dimension), field.dimension, { usual: field.unit });
    return read.problem ? undefined : read.quantity;
  });
  if (!one || !other || one.unit === other.unit) return undefined;
  return Math.abs(one.hi - other.hi) <= Math.abs(one.hi) * roundedWithin ? one : undefined;
}

const rooms = /^(\d[\d.]{0,6}) ?(mm|cm)? ?(?:\([a-z ]{3,40}\))? ?\/ ?(\d[\d.]{0,6}) ?(mm|cm) ?(?:\([a-z ]{3,40}\))?$/i;

/** `330 mm (without front fans) / 300 mm (with a radiator)`: which of the two it is, hangs on the build. */
function readRooms(field: QuantityField, text: string): Quantity | undefined {
  if (!field.room) return undefined;
  const [, one, unit, other, last] = rooms.exec(text.trim()) ?? [];
  if (one === undefined || other === undefined || (unit ?? last) !== last) return undefined;
  const [low, high] = [Number(one), Number(other)].sort((a, b) => a - b);
  return readQuantity(`${low} to ${high} ${last}`, field.dimension, { usual: field.unit }).quantity;
}

/** Where a dot or comma stands before exactly three figures, it may part thousands or decimals. */
const doubtful = /(?<![\d.,])([1-9]\d{0,2})[.,](\d{3})(?![\d.,])/;

/**
 * Bounds of what a part has, in base units, by which one of two readings is told from the other. Source: common
 * practice.
 */
const plausible: Readonly<Partial<Record<Dimension, readonly [number, number]>>> = {
  'data-rate': [0, toBase(200, 'GB/s')],
  'data-size': [0, toBase(200, 'TB')],
  mass: [toBase(3, 'g'), toBase(60, 'kg')],
  power: [0, toBase(5000, 'W')],
  current: [0, toBase(200, 'A')],
  'rotation-speed': [toBase(100, 'rpm'), toBase(30_000, 'rpm')],
  'transfer-rate': [toBase(100, 'MT/s'), toBase(20_000, 'MT/s')],
};

/** The two readings of such a number, those left out that cannot be; undefined where the text has no such number. */
export function readingsOf(
  field: QuantityField,
  text: string,
): readonly { text: string; quantity: Quantity }[] | undefined {
  const found = text.length > longest ? null : doubtful.exec(text);
  if (!found || /\d/.test(text.replace(found[0], '').replace(/H[2₂][O0]|m3|\d\/min/gi, ''))) return undefined;
  const [least, most] = field.likely ?? plausible[field.dimension] ?? [-Infinity, Infinity];
  const numbers = [`${found[1]}${found[2]}`, plainNumber(Number(`${found[1]}.${found[2]}`))];
  return numbers.flatMap((number) => {
    const written = text.replace(found[0], number);
    const { quantity, problem } = readQuantity(inOurWords(written, field.dimension), field.dimension, {
      usual: field.unit,
    });
    if (!quantity || problem) return [];
    const ends = [quantity.lo, quantity.hi].filter(Number.isFinite);
    const may = ends.every(
      (end) =>
        end >= Math.max(least, field.range[0]) && end <= Math.min(most, field.range[1]) && isSized(end, quantity),
    );
    return may ? [{ text: written, quantity: { ...quantity, text } }] : [];
  });
}

/** Nobody writes metres of a part in millimetres, or hundredweights in kilograms. */
function isSized(end: number, { dimension, unit }: Quantity): boolean {
  if (dimension === 'length') return unit === 'm' || unit === 'km' || end <= toBase(3, 'm');
  return dimension !== 'mass' || end <= toBase(60, 'kg');
}
