// Ways of reading that several kinds of part share: names, measures of fans and radiators, pins, counts.
import { sheetPins, sheetRadiator } from '../../trade/sheet-forms';
import { isElsewhere } from '../clean';
import { measuresOf, type Measures } from '../measures';
import { takeQuantity } from '../take-quantity';
import { doubtful, nothing, plain, type Place, type Take, type Taker } from '../taken';

export const mmText = (mm: number): string => `${mm} mm`;

/** A name of one thing: a few words, no list, no sentence. */
const name: Taker = (value, { path }) => {
  const text = value.trim();
  const isName = text.length <= 50 && /\p{L}|\d/u.test(text) && !/[,;|]|[.!?]$| \/ |: /.test(text);
  return isName ? plain({ path, value: text }) : nothing;
};

/** A length by its axis, or by itself where the label names it. */
export const sized =
  (own: RegExp, pick: (measures: Measures, place: Place) => number | undefined): Taker =>
  (value, place) => {
    const measures = measuresOf(value, { axes: place.said.axes, unit: place.said.unit } as {
      axes?: string;
      unit?: string;
    });
    if (!measures) return own.test(place.label) ? takeQuantity(value, place) : nothing;
    const mm = pick(measures, place);
    if (mm === undefined) return nothing;
    const fact = { path: place.path, value: mmText(mm) };
    return measures.isUnsure ? doubtful(fact) : plain(fact);
  };

const FRAMES: readonly number[] = [40, 50, 60, 70, 80, 92, 100, 120, 127, 135, 140, 150, 160, 180, 200, 220, 230];
const isThickness = /thick|depth|dicke|tiefe|bauhöhe|espess?|ketebalan/i;

/** `120 x 120 x 25 mm`, `120 x 25 mm`: the frame is twice the same, or one of its usual widths. */
function frameOf({ mm }: Measures): readonly [size: number, thickness: number] | undefined {
  const sorted = mm.toSorted((a, b) => a - b);
  const [thickness = 0, size = 0] = [sorted[0], sorted.at(-1)];
  if (sorted.length === 3 && sorted[1] !== size) return undefined;
  return FRAMES.includes(size) && thickness >= 8 && thickness <= 40 && thickness < size ? [size, thickness] : undefined;
}

const COUNTED = /^(?:([1-6]) ?[x×*] ?)?(\d{2,3}) ?mm(?: ?[x×*] ?([1-6]))?$/i;

const fanSize: Taker = (value, place) => {
  if (isThickness.test(place.label)) return nothing;
  const [, before, size, behind] = COUNTED.exec(value.trim()) ?? [];
  if (size !== undefined && (before ?? behind) !== undefined) {
    const fact = { path: place.path, value: `${size} mm` };
    return FRAMES.includes(Number(size)) ? plain(fact) : doubtful(fact);
  }
  return sized(/./, (measures) => frameOf(measures)?.[0])(value, place);
};
const fanThickness: Taker = sized(isThickness, (measures) => frameOf(measures)?.[1]);

/** A connector of lights is none of the fan. */
const pins: Taker = (value, place) => {
  const clauses = value
    .split(/\s?[,;/+]\s?|\s(?:and|und)\s/)
    .filter((one) => /\d|pin|pwm|pol/i.test(one) && !/a?rgb|led|5 ?v|cable|kabel|\d ?mm/i.test(one));
  const read = new Set(
    clauses.map((one) => sheetPins(one.replace(/\s?\([^)]{0,12}\)/, '').trim()) ?? pinsOf(one, place.label)),
  );
  const [count] = read;
  return read.size === 1 && count !== undefined ? plain({ path: place.path, value: count }) : nothing;
};
const pinsOf = (text: string, label: string): string | undefined => {
  const bare = text.trim().replace(/[ -]?(?:connector|stecker|anschluss|molex|fan)$/i, '');
  const found = /^([2-4])[ -]?(?:pin|polig|pol)(?:nig)?(?:er)?(?: pwm| dc)?$/i.exec(bare)?.[1];
  return found ?? (/pin/i.test(label) && /^[2-4]$/.test(text.trim()) ? text.trim() : undefined);
};

const COUNT_WORDS: Readonly<Record<string, string>> = {
  single: '1',
  one: '1',
  ein: '1',
  eins: '1',
  dual: '2',
  two: '2',
  zwei: '2',
  triple: '3',
  three: '3',
  drei: '3',
  quad: '4',
  four: '4',
  vier: '4',
};

/** `2`, `2x`, `2 pcs`, `two`, `2 x 120 mm`. */
export const countIn = (value: string): string | undefined => {
  const text = value.trim().toLowerCase();
  const found =
    /^(\d{1,2}) ?(?:x|×|pcs?\.?|pieces?|stück|stk\.?|fans?|lüfter|modules?|module?|channels?|lanes?|kanäle)?$/.exec(
      text,
    )?.[1];
  return (
    found ??
    /^([1-9]) ?[x×*] ?\d{2,3} ?mm$/.exec(text)?.[1] ??
    COUNT_WORDS[text.replace(/[- ]?(?:channel|fans?|lüfter|kanal)$/, '')]
  );
};
export const counted: Taker = (value, { path }) => {
  const count = countIn(value);
  return count === undefined ? nothing : plain({ path, value: count });
};

/** A radiator’s class is no length: `240 mm`, `2 x 120 mm`. */
const radiatorClass: Taker = (value, place) => {
  if (/length|länge|width|breite|thick|dicke/i.test(place.label)) return nothing;
  const text = sheetRadiator(value);
  return text !== undefined && /^(?:120|140|180|200|240|280|360|400|420|480|560)$/.test(text)
    ? plain({ path: place.path, value: text })
    : nothing;
};

const sorted =
  (index: number): ((measures: Measures) => number | undefined) =>
  ({ mm }) =>
    mm.length === 3 ? mm.toSorted((a, b) => b - a)[index] : undefined;

export const radiatorTakers: Readonly<Record<string, Taker>> = {
  class: radiatorClass,
  length: sized(/length|länge/i, sorted(0)),
  width: sized(/width|breite/i, sorted(1)),
  thickness: (value, place) =>
    sized(/thick|dicke|tiefe/i, sorted(2))(
      value.replace(/ ?\(\d{2,3} ?mm (?:with|incl\.?|mit|inkl\.?) [^()]{3,20}\)$/i, ''),
      place,
    ),
};

/** `3 x 120 mm per side`: of how many fans, and how wide; what it takes on both sides together says neither. */
const radiatorFans =
  (which: 'fans' | 'fan-size'): Taker =>
  (value, { path }) => {
    const [, many, size] =
      /^([1-4]) ?[x×*] ?(80|92|120|140|180|200) ?mm(?: fans?| lüfter)?(?: (?:per|pro|je) (?:side|seite))?$/i.exec(
        value.trim(),
      ) ?? [];
    return orNothing(path, which === 'fans' ? many : size && `${size} mm`);
  };

/** `3-pin 5 V`: what a connector of lights says; one that speaks of two pairs says nothing. */
const lights =
  (which: 0 | 1): Taker =>
  (value, { path }) => {
    const volts = onlyOne(value, /(?<![\d.])(5|12) ?V(?:DC)?\b/gi);
    const many = onlyOne(value, /(?<!\d)([34])[ -]?(?:pins?|polig)\b/gi);
    if ((volts === '5' && many === '4') || (volts === '12' && many === '3')) return nothing;
    return orNothing(path, which === 0 ? volts && `${volts} V` : many);
  };

/** `27.8 dBA @ 1 m`: a level with the distance that it was measured at. */
const levelAt: Taker = (value, place) => {
  const [, level, metres] =
    /^(.{1,40}?dB.{0,5}?)[ ,(]{1,2}(?:@|at|in|bei) ?(\d(?:[.,]\d{1,2})?) ?m\)?$/i.exec(value.trim()) ?? [];
  if (level === undefined || metres === undefined) return undefined;
  const own = takeQuantity(level, place);
  if (own.facts.length === 0) return own;
  const path = [...place.path.slice(0, -1), 'level-at'];
  return plain(...own.facts, { path, value: `${Number(metres.replace(',', '.'))} m` });
};

/** A pitch is the same both ways. */
const pitch: Taker = sized(/./, ({ mm }) => (mm.length === 2 && mm[0] === mm[1] ? mm[0] : undefined));

export const fanTakers: Readonly<Record<string, Taker>> = {
  size: fanSize,
  thickness: fanThickness,
  pins,
  'hole-pitch': pitch,
  level: levelAt,
  'lights.voltage': lights(0),
  'lights.pins': lights(1),
};

/** The piece of `1.05 kg (net), 1.45 kg (gross)`, `Card 1105 g / Package 1620 g` that is not of a package. */
function ownMass(value: string): string {
  const pieces = value.split(/\s?[;/|]\s|,\s|(?<=\))\s/);
  if (pieces.length < 2 || !pieces.every((one) => /\d ?(?:k?g|lbs?)\b/i.test(one))) return value;
  const own = pieces.filter((one) => !isElsewhere(one));
  return own.length === 1 ? own[0]!.replace(ITSELF, '').trim() : value;
}
const ITSELF =
  /^(?:card|product|unit|net(?: weight)?|netto|karte|produkt|gerät):? | ?[([](?:netto|net|card|unit)[)\]]$/gi;

const mass: Taker = (value, place) => takeQuantity(ownMass(value.trim()), place);

export const anyTakers: Readonly<Record<string, Taker>> = { maker: name, model: name, mass };

export const radiatorPartTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  ...radiatorTakers,
  fans: radiatorFans('fans'),
  'fan-size': radiatorFans('fan-size'),
};

export const under = (group: string, takers: Readonly<Record<string, Taker>>): Readonly<Record<string, Taker>> =>
  Object.fromEntries(Object.entries(takers).map(([path, taker]) => [`${group}.${path}`, taker]));

/** What a text finds once, and nothing where it finds two different ones. */
export function onlyOne(text: string, pattern: RegExp): string | undefined {
  const found = new Set([...text.matchAll(pattern)].map((match) => match[1] ?? match[0]));
  return found.size === 1 ? [...found][0] : undefined;
}

export const orNothing = (path: readonly string[], value: string | undefined): Take =>
  value === undefined ? nothing : plain({ path, value });
