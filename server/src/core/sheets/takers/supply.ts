// How the values of supplies are read.
import { BADGE_WORDS, MODULAR_WORDS } from '../../trade/sheet-words';
import { RAIL_WORDS, SUPPLY_FORM_WORDS, SUPPLY_STANDARD_WORDS } from '../../trade/supply-sheet-words';
import { meanings, wordOf } from '../../trade/vocabulary';
import { leftOver } from '../measures';
import { takeQuantity, withDots } from '../take-quantity';
import { doubtful, nothing, plain, together, type Take, type Taker } from '../taken';
import { anyTakers, onlyOne, orNothing, sized } from './common';
import { connectors } from './connectors';

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

/** `850 W continuous`. */
const rating: Taker = (value, place) =>
  takeQuantity(value.replace(/[ (]{1,2}(?:continuous|kontinuierlich|dauerhaft|Dauerleistung)\)?$/i, ''), place);

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
  const mains = onlyOne(value, /(?<!\d)(115|230) ?V\b(?: (?:AC|EU|internal))?/gi);
  if (metals.size === 1)
    return /80 ?(?:plus|\+)/i.test(text + label) || wordOf(BADGE_WORDS, text)
      ? plain({ path, value: metal! }, ...(mains ? [{ path: ['badge-mains'], value: `${mains} V` }] : []))
      : nothing;
  return metals.size === 0 && /^80 ?(?:plus|\+)(?: (?:standard|certified))?$/i.test(text)
    ? plain({ path, value: 'white' })
    : nothing;
};

const form: Taker = (value, { path }) => {
  const pieces = value
    .split(/\s?[/,;]\s?/)
    .flatMap((one) => meanings(SUPPLY_FORM_WORDS, one.replace(/\(.{0,60}\)/g, '').trim()));
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
  const said = /\b(?:fully|semi|non|voll|teil|partly)[ -]?modular(?:es)?\b/i.exec(value)?.[0];
  const first = /^(fixed|fest|non-modular)(?=, )/i.exec(value)?.[0];
  const text = (said ?? first ?? value).replace(/ (?:design|cabling|cables|kabel|psu|netzteil)$/i, '').trim();
  const isWord = !/^(?:no|none|yes|full|semi)$/i.test(text) || /modul/i.test(label);
  return orNothing(path, isWord ? wordOf(MODULAR_WORDS, text) : undefined);
};

const mains =
  (which: 0 | 1): Taker =>
  (value, { path }) => {
    const found = [...value.matchAll(/(?<![\d.])(\d{2,3}) ?V?(?:AC)? ?(?:-|–|~|to|bis) ?(\d{3}) ?V(?:AC)?(?!\d)/gi)];
    const areRanges = found.length > 0 && found.every(([, low, high]) => Number(low) < Number(high));
    if (!areRanges || found[0]!.index > 6 || /switch|select|schalter/i.test(value)) return nothing;
    const [lows, highs] = [1, 2].map((end) => found.map((one) => Number(one[end])));
    return plain({ path, value: `${which === 0 ? Math.min(...lows!) : Math.max(...highs!)} V` });
  };

const factor: Taker = (value, { path }) => {
  const found =
    /^(active|aktiv|activo|ativo|passive|passiv)(?:e[rs]?)?(?: pfc| power factor correction)?(?: ?[,(].{0,30})?$/i
      .exec(value.trim())?.[1]
      ?.toLowerCase();
  return found === undefined ? undefined : plain({ path, value: found.startsWith('a') ? 'active' : 'passive' });
};

const AT =
  /^([+-]?\d{1,2}(?:[.,]\d)? ?V\d?(?: ?(?:SB|stb|standby|aux))?) ?(?:@|:|=|-|–)? ?(\d{1,3}(?:[.,]\d{1,2})?) ?A$/i;

/** `+3.3V@20A, +5V@20A, +12V@70.8A`: every one of the line, those below nought left out. */
function railsIn(value: string): readonly (readonly [rail: string, amps: string])[] {
  const pieces = value.split(/\s?[;|•]\s?|\s?,\s|,(?=[+-])|\s\/\s/).filter((one) => one.trim() !== '');
  const read = pieces.map((one) => AT.exec(one.trim()));
  return pieces.length > 1 && read.every(Boolean) ? read.map((one) => [one![1]!, one![2]!] as const) : [];
}

/** `+3.3V / +5V / +12V`: a label of several. */
export const areRails = (label: string): boolean => {
  const names = label.split(/ ?\/ ?/);
  return names.length > 1 && names.every((one) => /\dV/i.test(one) && wordOf(RAIL_WORDS, one) !== undefined);
};

/** `+3.3V & +5V 120 W`: the limit that two rails share. */
export const isCombined = (label: string, text: string): boolean =>
  /combined|zusammen|gesamt|kombiniert|total/i.test(label + text) && combinedIn(`${label} ${text}`) !== undefined;

function combinedIn(text: string): { readonly rails: readonly string[]; readonly watts: number } | undefined {
  const names = [...withDots(text).matchAll(/[+](\d{1,2}(?:\.\d)?) ?V(?!\w)/gi)].map(([, volts]) => `+${volts}V`);
  const watts = onlyOne(text, /(?<![\d.,])(\d{2,4}) ?W(?:att)?\b/gi);
  const rails = [...new Set(names)].toSorted();
  return rails.join() === '+3.3V,+5V' && watts !== undefined ? { rails, watts: Number(watts) } : undefined;
}
const combined: Taker = (value, { path, label }) => {
  const found = combinedIn(`${label} ${value}`);
  return found === undefined
    ? nothing
    : plain(
        { path: [...path, '0', 'rails'], value: found.rails },
        { path: [...path, '0', 'power'], value: `${found.watts} W` },
      );
};

/** `+12V: 62.5 A`, where the label is the rail; else all of one line. */
const railCurrents: Taker = (value, place) => {
  const names = place.label.split(/ ?\/ ?/);
  const amps = value.split(/ ?\/ ?/);
  if (names.length > 1 && names.length === amps.length)
    return together(names.map((name, at) => railCurrent(place.path, name, amps[at]!)));
  if (wordOf(RAIL_WORDS, place.label) !== undefined) return railCurrent(place.path, place.label, value);
  return together(railsIn(value).map(([rail, amps]) => railCurrent(place.path, rail, `${amps} A`)));
};

function railCurrent(path: readonly string[], name: string, value: string): Take {
  const rail = wordOf(RAIL_WORDS, name);
  const [, amps] = /^(\d{1,3}(?:\.\d{1,2})?) ?A(?: ?\([\d.]{1,6} ?W\))?$/i.exec(withDots(value).trim()) ?? [];
  const volts = /^[+-]?(\d{1,2}(?:\.\d)?)V/.exec(rail ?? '')?.[1];
  if (rail === undefined || amps === undefined || volts === undefined) return nothing;
  if (rail.startsWith('-')) return nothing;
  return plain(
    { path: [...path, rail, 'voltage'], value: `${volts} V` },
    { path: [...path, rail, 'current'], value: `${Number(amps)} A` },
  );
}

const LOADED = /(?<![\d.])(\d{1,3}) ?% ?(?:load|last)?[:=@ ]{1,3}(\d{2}(?:\.\d{1,2})?) ?%/gi;
const AT_LOAD = /(?<![\d.])(\d{2}(?:\.\d{1,2})?) ?% ?(?:@|at|bei) ?(\d{1,3}) ?% ?(?:load|last)?/gi;
/** `20 %: 91.2 %, 50 %: 93 %`, `92 % at 50 % load`: each load with what is measured at it. */
const efficiency: Taker = (value, { path }) => {
  const text = withDots(value);
  const found = [
    ...[...text.matchAll(LOADED)].map(([, load, percent]) => [load!, percent!] as const),
    ...[...text.matchAll(AT_LOAD)].map(([, percent, load]) => [load!, percent!] as const),
  ].toSorted(([a], [b]) => Number(a) - Number(b));
  const isPlain =
    !/up to|bis zu|>|≥|min\b|max\b|typical|typisch/i.test(text) &&
    new Set(found.map(([load]) => load)).size === found.length &&
    found.every(([load, percent]) => Number(load) <= 100 && Number(percent) >= 60);
  if (!isPlain) return nothing;
  return plain(
    ...found.flatMap(([load, percent], at) => [
      { path: [...path, String(at), 'load'], value: `${load} %` },
      { path: [...path, String(at), 'percent'], value: `${Number(percent)} %` },
    ]),
  );
};

/** `12V-2x6 (600 W)`: the level that the cable signals, beside how many there are. */
const plugs: Taker = (value, place) => {
  const found = connectors(value, place) ?? nothing;
  const level = onlyOne(`${place.label} ${value}`, /(?:\(|12V-?2x6 |12VHPWR )(150|300|450|600) ?W\b/gi);
  const isSixteen = found.facts.some(({ path }) => path.at(-1) === '16-pin');
  if (level === undefined || !isSixteen) return found;
  return together([found, plain({ path: ['sixteen-pin-level'], value: `${level} W` })]);
};

/** `> 16 ms at full load`: what it promises at the least; at part of its load it bridges more. */
const holdUp: Taker = (value, place) => {
  const [, time = value, load] = /^(.{1,30}?),? \(?(?:at|bei|@) (.{1,24})$/i.exec(value.trim()) ?? [];
  const isFull = load === undefined || /^(?:100 ?%|full|rated|voll|nenn|max)/i.test(load);
  const { facts, perhaps } = takeQuantity(time.trim().replace(/^(?:>=?|≥|min\.?|at least|mindestens) ?/i, ''), place);
  return isFull ? { facts, perhaps } : doubtful(...facts, ...perhaps);
};

export const supplyTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  rating,
  depth: supplyDepth,
  efficiency,
  badge,
  form,
  standard,
  modular,
  connectors: plugs,
  'inlet.lowest': mains(0),
  'inlet.highest': mains(1),
  'power-factor': factor,
  'hold-up': holdUp,
  rails: railCurrents,
  combined,
};
