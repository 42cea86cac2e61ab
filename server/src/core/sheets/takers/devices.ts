// How the values of drives, cards and displays are read.
import type { QuantityField } from '../../parts/field';
import { parseM2Size } from '../../trade/m2';
import { parseErrorRate } from '../../trade/storage';
import { parseCardOpenings } from '../../trade/slot-words';
import { leftOver, measuresOf, onAxis, type Measures } from '../measures';
import { takeQuantity, withDots } from '../take-quantity';
import { doubtful, nothing, plain, type Taker } from '../taken';
import { anyTakers, mmText, onlyOne, orNothing, sized } from './common';
import { connectors, outputs } from './connectors';
import { link, withoutCompatible } from './links';

const bus: Taker = (value, { path }) => {
  const text = withoutCompatible(value);
  const isNvme = /nvme|nvm express/i.test(text) || /\bPCI(?:e|-e| express)/i.test(text);
  const isSata = /\bSATA\b|serial ata|s-ata/i.test(text);
  const isSas = /\bSAS\b/.test(text);
  const isUsb = /\bUSB\b/i.test(text);
  const found = [isNvme && 'NVMe', isSata && 'SATA', isSas && 'SAS', isUsb && 'USB'].filter((one) => one !== false);
  return found.length === 1 ? plain({ path, value: found[0]! }) : nothing;
};

const SHAPES: readonly (readonly [string, RegExp])[] = [
  ['M.2', /\bM\.?2\b|(?<!\d)22(?:30|42|60|80|110)(?!\d)/i],
  ['2.5 in', /(?<![\d.])2[.,]5 ?(?:-?in(?:ch)?|"|”|″|zoll|-zoll)/i],
  ['3.5 in', /(?<![\d.])3[.,]5 ?(?:-?in(?:ch)?|"|”|″|zoll|-zoll)/i],
  ['card', /add-in card|\bAIC\b|\bHHHL\b/i],
];
const shape: Taker = (value, { path }) => {
  const found = SHAPES.filter(([, pattern]) => pattern.test(value));
  return found.length === 1 ? plain({ path, value: found[0]![0] }) : nothing;
};

/** The only M.2 size that a text names. */
const m2Size: Taker = (value, { path }) => {
  const found = new Set(
    [
      ...value.matchAll(
        /(?<!\d)(22(?:30|42|60|80|110))(?!\d)|(?<![\d.])22 ?(?:mm)? ?[x×] ?(30|42|60|80|110)(?![\d.])/gi,
      ),
    ].map(([, whole, length]) => whole ?? `22${length}`),
  );
  const [only] = found;
  return found.size === 1 && parseM2Size(only!) ? plain({ path, value: only! }) : nothing;
};

const key: Taker = (value, { path, label }) => {
  if (/form|bauform/i.test(label)) {
    const [, ahead, behind] = /(?:\b([BM])[- ]key|\bkey[ -]?([BM]))\)?$/i.exec(value.trim()) ?? [];
    return /\bM\.2\b/i.test(value) ? orNothing(path, (ahead ?? behind)?.toUpperCase()) : nothing;
  }
  const found = /^(?:M\.2 )?(?:key[ -]?)?([ABEM](?: ?[+&] ?[ABEM])?)(?:[ -]?key(?:ed)?)?$/i.exec(value.trim())?.[1];
  return orNothing(
    path,
    found?.toUpperCase().replace(/ /g, '').replace('&', '+').replace('M+B', 'B+M').replace('E+A', 'A+E'),
  );
};

/** A drive’s shape fixes two of its measures. Source: SFF-8201, SFF-8301, PCI Express M.2 Specification. */
const FACES: readonly (readonly [readonly [number, number], number])[] = [
  [[100, 69.85], 0.6],
  [[147, 101.6], 1],
  [[80, 22], 0.3],
];
const driveThickness: Taker = (value, place) => {
  const isPlain = /thick|dicke|height|höhe|espess?|ketebalan/i;
  return sized(isPlain, (measures) =>
    FACES.map(([face, within]) => leftOver(measures, face, within)).find((one) => one !== undefined),
  )(value, place);
};

const tbw: Taker = (value, { path }) => {
  const text = value
    .replace(/(?<=\d)[.,](?=\d{3}(?:\D|$))/g, '')
    .replace(/\s?(?:[([][^()[\]]{0,30}DWPD[^()[\]]{0,30}[)\]]|[/,;] ?\d(?:[.,]\d{1,2})? ?DWPD)$/i, '')
    .trim();
  const [, figure, unit] = /^(?:TBW:? ?)?(\d{1,6}(?:[.,]\d{1,2})?) ?(TBW|TB written|TB|PBW|PB)?$/i.exec(text) ?? [];
  if (figure === undefined || (unit === undefined && !/^TBW/i.test(text))) return nothing;
  const tb = Number(figure.replace(',', '.')) * (/^PB/i.test(unit ?? '') ? 1000 : 1);
  return tb >= 10 ? plain({ path, value: `${Number(tb.toFixed(3))} TB` }) : nothing;
};

/** `5.0 W (maximal), 0.03 W (idle)`: what stands beside a word for the most. */
const drivePeak: Taker = (value, { path, label }) => {
  if (/max|peak|spin|start|spitze|maks|máx/i.test(label)) return undefined;
  const watts = onlyOne(withDots(value), /(?<![\d.])(\d{1,2}(?:\.\d{1,2})?) ?W ?\((?:max(?:imum|imal|\.)?|peak)\)/gi);
  return orNothing(path, watts && `${Number(watts)} W`);
};

const errors: Taker = (value, { path }) => {
  const text = value.replace(/^[<≤] ?/, '');
  return orNothing(path, parseErrorRate(text) === undefined ? undefined : text);
};

/** The upper end of `-300 to 3,050 m`: no drive is limited to three metres. */
const highest: Taker = (value, place) =>
  takeQuantity(value.replace(/(?<=\d)[.,](?=\d{3} ?m)/g, ''), {
    ...place,
    field: { ...(place.field as QuantityField), full: true },
  });

export const driveTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  bus,
  link,
  shape,
  size: m2Size,
  key,
  thickness: driveThickness,
  endurance: (value, place) =>
    place.said.unit || !/TBW/i.test(place.label)
      ? tbw(value, place)
      : tbw(/^[\d.,]+$/.test(value.trim()) ? `${value} TBW` : value, place),
  'unrecoverable-errors': errors,
  highest,
  'draw.peak': drivePeak,
};

const openings: Taker = (whole, { path }) => {
  const pieces = whole.split(/, /).filter((one) => /slot/i.test(one));
  const value = pieces.length === 1 ? pieces[0]! : whole;
  const text = value
    .replace(/^[\d.]{1,5} ?mm ?[,/(] ?/, '')
    .replace(/-?(?:slots?|fach)(?: (?:wide|width|design|card))?$/i, ' slot')
    .replace(/[()]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  const isSaid = /slot/i.test(value);
  const found = isSaid || /^\d(?:[.,]\d{1,2})?$/.test(text) ? parseCardOpenings(text) : undefined;
  return found === undefined ? nothing : plain({ path, value: String(found) });
};

/** Heights of cards behind brackets of both heights. Source: PCI Express Card Electromechanical Specification. */
const OUTLINES_MM: readonly number[] = [68.9, 111.15];
const outlineOf = (mm: readonly number[]): number | undefined =>
  mm.length === 2 ? mm.find((one) => OUTLINES_MM.some((height) => Math.abs(one - height) <= 0.3)) : undefined;

/** Of three measures without axes the one that stands out: no graphics card is higher than long. */
function longestOf({ mm, axes }: Measures): number | undefined {
  const [length = 0, next = 0] = mm.toSorted((a, b) => b - a);
  return mm.length === 3 && axes === undefined && length >= 1.25 * next && length <= 400 ? length : undefined;
}

const cardLength: Taker = (value, place) =>
  sized(/length|länge|comprimento|longitud|panjang/i, (measures) => {
    const height = place.kind === 'card' ? outlineOf(measures.mm) : undefined;
    const own = onAxis(measures, 'L') ?? (height === undefined ? undefined : measures.mm.find((one) => one !== height));
    return own ?? (place.kind === 'graphics' ? longestOf(measures) : undefined);
  })(value, place);

const cardHeight: Taker = (value, place) => {
  const measures = measuresOf(value, { ...(place.said.axes ? { axes: place.said.axes } : {}) });
  if (!measures) return /height|höhe/i.test(place.label) ? undefined : nothing;
  const isAcross = place.kind === 'card' && measures.axes === 'LH';
  const height = place.kind === 'card' ? (isAcross ? measures.mm[1] : outlineOf(measures.mm)) : undefined;
  return orNothing(place.path, height === undefined ? undefined : mmText(height));
};

/** Across the cooler, where the other two axes are named beside it: `L x H x T`. */
const cardThickness: Taker = (value, place) => {
  const [, alone] = /^([\d.]{1,5} ?mm) ?[,/(] ?[\d.]{1,4}[ -]slots?\)?$/i.exec(value.trim()) ?? [];
  if (alone !== undefined && /thick|dicke/i.test(place.label)) return takeQuantity(alone, place);
  if (!measuresOf(value)) return /thick|dicke/i.test(place.label) ? undefined : nothing;
  return sized(/thick|dicke/i, (measures) =>
    /L/.test(measures.axes ?? '') && /H/.test(measures.axes ?? '') ? onAxis(measures, 'D') : undefined,
  )(value, place);
};

/** `2 axial fans`, `dual blower`: what its fans are; on how many nothing hangs. */
const cooling: Taker = (value, { path }) => {
  const found = [
    /\baxial|axial-?lüfter/i.test(value) && 'open',
    /\b(?:blower|radial)|radiallüfter/i.test(value) && 'blower',
    /\b(?:passive?|fanless|lüfterlos)\b/i.test(value) && 'passive',
    /\b(?:liquid|water|hybrid|aio)\b|wasser/i.test(value) && 'liquid',
  ].filter((one) => one !== false);
  return found.length === 1 ? plain({ path, value: found[0]! }) : found.length === 0 ? undefined : nothing;
};

/** A connector that a breakout cable parts among several drives: how many there are says not how many it takes. */
const OF_SEVERAL = /\bSFF-?\d|mini-?SAS|slim-?SAS|oculink|breakout/i;

/** `8 internal`, `4 x SATA`, `2 x SFF-8643 (8 drives)`; ports of a network or a display are none for drives. */
const drivePorts: Taker = (value, { path, label, kind }) => {
  if (kind !== 'card') return nothing;
  if (OF_SEVERAL.test(value)) {
    const inAll = onlyOne(value, /(?<![\w-])(\d{1,2}) (?:(?:internal|SATA|SAS) )*(?:drives|devices|laufwerke)\b/gi);
    return /\bx ?4\b|each|je\b|expander/i.test(value) ? nothing : orNothing(path, inAll);
  }
  const [, many, words = ''] = /^(\d{1,2})(?: ?x)?(?: (.{2,40}))?$/i.exec(value.trim()) ?? [];
  const isOfDrives = /\b(?:SATA|SAS|drives?)\b|laufwerk/i;
  const isInternal = /^(?:internal|intern)(?: ports?)?$/i.test(words);
  return many !== undefined && (isOfDrives.test(`${label} ${words}`) || isInternal)
    ? plain({ path, value: many })
    : nothing;
};
const portKind: Taker = (value, { path, kind }) => {
  const found = onlyOne(value.toUpperCase().replace(/MINI-?SAS(?: HD)?/g, 'SAS'), /\b(SAS|SATA)\b/g);
  return kind === 'card' ? orNothing(path, found) : nothing;
};

/**
 * `Power` alone is a card’s draw; beside display outputs it may be its plugs or the supply’s. What a card without
 * them draws at most it may draw for long; what it draws typically it exceeds.
 */
const cardPower: Taker = (value, place) => {
  if (place.kind === 'graphics')
    return /^(?:power|max\.? power consumption)$/i.test(place.label.trim()) ? nothing : undefined;
  const { facts, perhaps } = takeQuantity(value, place);
  if (/\btyp|average|avg|durchschnitt|mittel/i.test(`${place.label} ${value}`)) return doubtful(...facts, ...perhaps);
  return /max/i.test(`${place.label} ${value}`) ? plain(...facts, ...perhaps) : undefined;
};

/** Of a bracket for both heights, that which is fitted. */
const bracket: Taker = (value, { path }) => {
  const full = value.search(/full[ -](?:height|profile)|volle höhe|standard/i);
  const low = value.search(/low[ -]?profile|half[ -]height|halbe höhe/i);
  if (full < 0 && low < 0) return undefined;
  if (full >= 0 && low >= 0 && / (?:and|und|&) /i.test(value)) return nothing;
  const isFull = low < 0 || (full === 0 && /included|enclosed|optional|beilieg|liegt bei|enthalten/i.test(value));
  if (low === 0 && /included|enclosed|optional|beilieg|liegt bei|enthalten/i.test(value))
    return plain({ path, value: 'low profile' });
  return isFull || full < 0 ? plain({ path, value: isFull ? 'full height' : 'low profile' }) : nothing;
};

/** `4 x M.2 (Key M)`: how many drives a carrier takes. */
const carries: Taker = (value, { path, kind }) =>
  kind === 'card' ? orNothing(path, /^(\d) ?(?:x ?M\.?2\b.{0,60})?$/i.exec(value.trim())?.[1]) : nothing;

export const cardTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  link,
  length: cardLength,
  height: cardHeight,
  thickness: cardThickness,
  cooling,
  bracket,
  carries,
  'power.sustained': cardPower,
  'drive-ports': drivePorts,
  'port-kind': portKind,
  openings: (value, place) =>
    /^(?:width|breite|form factor|bauform)/i.test(place.label) && !/slot/i.test(value + place.label)
      ? nothing
      : openings(value, place),
  connectors,
  outputs,
};

const SIZES: readonly (readonly [RegExp, string])[] = [
  [/\b(?:full ?hd|fhd)\b/i, '1920x1080'],
  [/\b(?:wqhd|qhd)\b/i, '2560x1440'],
  [/\buwqhd\b/i, '3440x1440'],
];
/** `2560 x 1440 @ 144 Hz`: one size and one rate; a rate of its own line is put to it later. */
const modes: Taker = (value, { path }) => {
  const text = value.replace(/(?<=\d)[.,](?=\d{3} ?[x×*@(]|\d{3}$)/g, '').replace(/[×*]/g, 'x');
  const sizes = new Set(
    [...text.matchAll(/(?<![\d.]|\d,)(\d{3,5}) ?x ?(\d{3,5})(?![\d.])/g)].map(([, w, h]) => `${w}x${h}`),
  );
  if (sizes.size === 0) for (const [name, size] of SIZES) if (name.test(text)) sizes.add(size);
  const rates = new Set(
    [...text.matchAll(/(?<![\d.]|\d,)(\d{2,3}(?:[.,]\d{1,2})?) ?Hz/gi)].map(([, hz]) => Number(hz!.replace(',', '.'))),
  );
  const [size] = sizes;
  const [rate] = rates;
  if (sizes.size !== 1 || rates.size > 1 || /oc|overclock|interpol|up to|bis zu/i.test(text)) return nothing;
  return plain({
    path: rate === undefined ? ['%size'] : path,
    value: rate === undefined ? size! : [`${size} @ ${rate} Hz`],
  });
};

/** What it draws in use, with the word for it before or behind. */
const AHEAD = /(?:^|[\s,;(])(?:typ(?:\.|ical|isch)?|on|normal|betrieb)[:. )]{0,3}(\d{1,3}(?:\.\d{1,2})?) ?W\b/i;
const PEAK_AHEAD = /(?:^|[\s,;(])max(?:\.|imum|imal)?[: ]{1,3}(\d{1,3}(?:\.\d{1,2})?) ?W\b(?! ?\()/i;
const PEAK = /(?<![\d.<]|\d,)(\d{1,3}(?:\.\d{1,2})?) ?W(?:att)? ?\(?(?:max|peak)/i;
const BEHIND = /(?<![\d.]|\d,)(\d{1,3}(?:\.\d{1,2})?) ?W(?:att)? ?\(?(?:typ(?:\.|ical|isch)?|on|normal|betrieb)/i;

export const displayTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  modes,
  inputs: outputs,
  'draw.typical': (value, { path }) => {
    const text = withDots(value).trim();
    const ahead = AHEAD.exec(text)?.[1];
    const behind = BEHIND.exec(text)?.[1];
    const watts = ahead ?? behind;
    return watts === undefined ? undefined : plain({ path, value: `${Number(watts)} W` });
  },
  'draw.peak': (value, { path, label }) => {
    const text = withDots(value).trim();
    const watts = PEAK.exec(text)?.[1] ?? (/[,;]/.test(text) ? PEAK_AHEAD.exec(text)?.[1] : undefined);
    if (watts !== undefined) return plain({ path, value: `${Number(watts)} W` });
    return /max/i.test(label) ? undefined : nothing;
  },
};
