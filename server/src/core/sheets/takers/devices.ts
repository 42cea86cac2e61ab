// How the values of drives, cards, displays and supplies are read.
import { parseM2Size } from '../../trade/m2';
import { parseErrorRate } from '../../trade/storage';
import { BADGE_WORDS, MODULAR_WORDS } from '../../trade/sheet-words';
import { SUPPLY_FORM_WORDS, SUPPLY_STANDARD_WORDS, RAIL_WORDS } from '../../trade/supply-sheet-words';
import { parseCardOpenings } from '../../trade/slot-words';
import { meanings, wordOf } from '../../trade/vocabulary';
import { leftOver, measuresOf, onAxis } from '../measures';
import { withDots } from '../take-quantity';
import { nothing, plain, type Taker } from '../taken';
import { anyTakers, orNothing, sized } from './common';
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

const key: Taker = (value, { path }) => {
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
  const isPlain = /thick|dicke|height|höhe/i;
  return sized(isPlain, (measures) =>
    FACES.map(([face, within]) => leftOver(measures, face, within)).find((one) => one !== undefined),
  )(value, place);
};

const tbw: Taker = (value, { path }) => {
  const text = value.replace(/(?<=\d)[.,](?=\d{3}(?:\D|$))/g, '').trim();
  const [, figure, unit] = /^(?:TBW:? ?)?(\d{1,6}(?:[.,]\d{1,2})?) ?(TBW|TB written|TB|PBW|PB)?$/i.exec(text) ?? [];
  if (figure === undefined || (unit === undefined && !/^TBW/i.test(text))) return nothing;
  const tb = Number(figure.replace(',', '.')) * (/^PB/i.test(unit ?? '') ? 1000 : 1);
  return tb >= 10 ? plain({ path, value: `${Number(tb.toFixed(3))} TB` }) : nothing;
};

const errors: Taker = (value, { path }) => {
  const text = value.replace(/^[<≤] ?/, '');
  return orNothing(path, parseErrorRate(text) === undefined ? undefined : text);
};

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
};

const openings: Taker = (value, { path }) => {
  const text = value
    .replace(/-?(?:slots?|fach)(?: (?:wide|width|design|card))?$/i, ' slot')
    .replace(/[()]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  const isSaid = /slot/i.test(value);
  const found = isSaid || /^\d(?:[.,]\d{1,2})?$/.test(text) ? parseCardOpenings(text) : undefined;
  return found === undefined ? nothing : plain({ path, value: String(found) });
};

export const cardTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  link,
  length: sized(/length|länge/i, (measures) => onAxis(measures, 'L')),
  height: (value) => (measuresOf(value) ? nothing : undefined),
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
    [...text.matchAll(/(?<![\d.])(\d{3,5}) ?x ?(\d{3,5})(?![\d.])/g)].map(([, w, h]) => `${w}x${h}`),
  );
  if (sizes.size === 0) for (const [name, size] of SIZES) if (name.test(text)) sizes.add(size);
  const rates = new Set([...text.matchAll(/(\d{2,3}(?:\.\d{1,2})?) ?Hz/gi)].map(([, hz]) => Number(hz)));
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
const PEAK = /(?<![\d.<])(\d{1,3}(?:\.\d{1,2})?) ?W(?:att)? ?\(?(?:max|peak)/i;
const BEHIND = /(\d{1,3}(?:\.\d{1,2})?) ?W(?:att)? ?\(?(?:typ(?:\.|ical|isch)?|on|normal|betrieb)/i;

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
    const watts = PEAK.exec(withDots(value).trim())?.[1];
    if (watts !== undefined) return plain({ path, value: `${Number(watts)} W` });
    return /max/i.test(label) ? undefined : nothing;
  },
};

/** Two of a supply’s measures are fixed by its form. Source: ATX12V, SFX12V, TFX12V and Flex ATX design guides. */
const SUPPLY_FACES: readonly (readonly [number, number])[] = [
  [150, 86],
  [125, 63.5],
  [85, 65],
  [81.5, 40.5],
];
const supplyDepth: Taker = sized(/depth|tiefe|length|länge/i, (measures) => {
  const rest = SUPPLY_FACES.map((face) => leftOver(measures, face, 0.6)).find((one) => one !== undefined);
  return rest !== undefined && rest >= 90 && rest <= 260 ? rest : undefined;
});

const badge: Taker = (value, { path, label }) => {
  const text = value
    .replace(/\(.{0,30}\)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const metals = new Set(
    [...text.matchAll(/\b(bronze|silver|silber|gold|platinum|platin|titanium|titan|white)\b/gi)].map(([one]) =>
      one
        .toLowerCase()
        .replace(/^silber$/, 'silver')
        .replace(/^platin$/, 'platinum')
        .replace(/^titan$/, 'titanium'),
    ),
  );
  const [metal] = metals;
  if (metals.size === 1)
    return /80 ?(?:plus|\+)/i.test(text + label) || wordOf(BADGE_WORDS, text)
      ? plain({ path, value: metal! })
      : nothing;
  return metals.size === 0 && /^80 ?(?:plus|\+)(?: (?:standard|certified))?$/i.test(text)
    ? plain({ path, value: 'white' })
    : nothing;
};

const form: Taker = (value, { path }) => {
  const pieces = value
    .split(/\s?[/,;]\s?/)
    .flatMap((one) => meanings(SUPPLY_FORM_WORDS, one.replace(/\(.{0,30}\)/g, '').trim()));
  const found = new Set(pieces);
  const [only] = found;
  return found.size === 1 ? plain({ path, value: only! }) : nothing;
};

const standard: Taker = (value, { path, label }) => {
  const whole = meanings(SUPPLY_STANDARD_WORDS, value);
  const tokens = [...value.matchAll(/\bATX(?:12V)? ?v?(?:er\.? ?|ersion )?(\d\.\d{1,2})/gi)].map(([one]) => one);
  const bare = /^v?(\d\.\d{1,2})$/.exec(value.trim())?.[1];
  const texts = tokens.length > 0 ? tokens : bare && /atx/i.test(label) ? [`ATX ${bare}`] : [];
  const found = new Set(whole.length > 0 ? whole : texts.flatMap((one) => meanings(SUPPLY_STANDARD_WORDS, one)));
  const [only] = found;
  return found.size === 1 ? plain({ path, value: only! }) : nothing;
};

const modular: Taker = (value, { path, label }) => {
  const text = value.replace(/ (?:design|cabling|cables|kabel|psu|netzteil)$/i, '').trim();
  const isWord = !/^(?:no|none|yes|full|semi)$/i.test(text) || /modul/i.test(label);
  return orNothing(path, isWord ? wordOf(MODULAR_WORDS, text) : undefined);
};

const mains =
  (which: 0 | 1): Taker =>
  (value, { path }) => {
    const [, low, high] =
      /^(?:AC )?(\d{2,3}) ?V?(?:AC)? ?(?:-|–|~|to|bis) ?(\d{3}) ?V(?:AC)?(?![\d])/i.exec(value.trim()) ?? [];
    if (low === undefined || high === undefined || Number(low) >= Number(high)) return nothing;
    return plain({ path, value: `${[low, high][which]} V` });
  };

const factor: Taker = (value, { path }) => {
  const found = /^(active|aktiv|passive|passiv)(?:e[rs]?)?(?: pfc| power factor correction)?(?: ?[,(].{0,30})?$/i
    .exec(value.trim())?.[1]
    ?.toLowerCase();
  return found === undefined ? undefined : plain({ path, value: found.startsWith('a') ? 'active' : 'passive' });
};

/** `+12V: 62.5 A`, where the label is the rail. */
export const railCurrent: Taker = (value, { path, label }) => {
  const rail = wordOf(RAIL_WORDS, label);
  const [, amps] = /^(\d{1,3}(?:\.\d{1,2})?) ?A$/i.exec(withDots(value).trim()) ?? [];
  const volts = /^[+-]?(\d{1,2}(?:\.\d)?)V/.exec(rail ?? '')?.[1];
  if (rail === undefined || amps === undefined || volts === undefined) return nothing;
  if (rail.startsWith('-')) return nothing;
  return plain(
    { path: [...path, rail, 'voltage'], value: `${volts} V` },
    { path: [...path, rail, 'current'], value: `${Number(amps)} A` },
  );
};

export const supplyTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  depth: supplyDepth,
  badge,
  form,
  standard,
  modular,
  connectors,
  'inlet.lowest': mains(0),
  'inlet.highest': mains(1),
  'power-factor': factor,
  rails: railCurrent,
};
