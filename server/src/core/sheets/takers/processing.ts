// How the values of processors, coolers and memory are read.
import { sheetGeneration } from '../../trade/sheet-forms';
import { SOCKET_WORDS } from '../../trade/processor-names';
import { wordOf } from '../../trade/vocabulary';
import { wordSet } from '../clean';
import { leftOver, onAxis } from '../measures';
import { takeQuantity, withDots } from '../take-quantity';
import { doubtful, nothing, plain, type Taker } from '../taken';
import { anyTakers, counted, fanTakers, onlyOne, orNothing, radiatorTakers, sized, under } from './common';
import { linkIn } from './links';
import { classIn, eccIn, kitIn, ranksIn, ratesIn, shapeIn, typesIn } from './memory-words';

const SOCKET =
  /(?<![\w-])((?:FC)?LGA[ -]?\d{3,4}(?:-\d)?|AM[2-6]\+?|FM[12]\+?|sTRX4|sWRX8|sTR5|TR4|SP[3-6])(?![\w-]|[.,]\d)/gi;

/** The only socket that a text names. */
export const socket: Taker = (value, { path }) => {
  const found = new Set([...value.matchAll(SOCKET)].map(([one]) => wordOf(SOCKET_WORDS, one) ?? one));
  const [only] = found;
  if (found.size === 1) return plain({ path, value: only! });
  return found.size === 0 ? orNothing(path, wordOf(SOCKET_WORDS, value)) : nothing;
};

const NO_GRAPHICS = wordSet(
  'no|none|nein|keine|kein|without|ohne|not included|discrete graphics required|discrete graphics card required|' +
    'nicht vorhanden|no integrated graphics|✗',
);
const HAS_GRAPHICS = /^(?:yes|ja|included|integrated|✓|vorhanden)$/i;

/** Whether it draws pictures: yes, no, or what its graphics are called. */
const graphics: Taker = (value, { path }) => {
  const text = value.trim();
  if (NO_GRAPHICS.has(text.toLowerCase())) return plain({ path, value: 'false' });
  const isNamed =
    text.length <= 60 &&
    /^\p{L}/u.test(text) &&
    /graphics|grafik|\d/i.test(text) &&
    !/require|erforderlich|discrete|separat|dediziert/i.test(text);
  return HAS_GRAPHICS.test(text) || isNamed ? plain({ path, value: 'true' }) : nothing;
};

const types: Taker = (value, { path }) => {
  const found = typesIn(value);
  return found.length > 0 ? plain({ path, value: found }) : nothing;
};

const fastest: Taker = (value, { path, whole }) => {
  const rates = ratesIn(value, whole);
  return rates && rates.length > 0 ? plain({ path, value: `${Math.max(...rates)} MT/s` }) : nothing;
};

/** Chips that correct within themselves, and the width of the module, beside a plain yes or no. */
const BESIDE_ECC =
  /,? ?(?:plus|and|und|with|mit|\+|;) on-?die ecc|[([](?:on-?die ecc|x ?\d{2})[^()]{0,20}[)\]]|, ?x ?(?:72|80)$/gi;

const flagOfEcc = (path: readonly string[], said: string, label: string) => {
  const value = said.replace(BESIDE_ECC, ' ').trim();
  const read = eccIn(/\becc\b/i.test(value) ? value : `${/ecc|error|fehler/i.test(label) ? 'ECC: ' : ''}${value}`);
  const bare =
    /^(?:yes|ja|sim|sí|si|ya|supported|✓|✔|true|unterstützt)$/i.test(value.trim()) &&
    /ecc|error|fehler|erro/i.test(label);
  if (/^(?:no|nein|não|tidak|✗|✘|×|false)$/i.test(value.trim()) && /ecc|error|fehler/i.test(label))
    return plain({ path, value: 'false' });
  return bare
    ? plain({ path, value: 'true' })
    : orNothing(path, read === undefined || (read && !/\becc\b/i.test(value)) ? undefined : String(read));
};
/** What it needs beside it is another part’s fact. */
const NEEDS = /[([](?:requires?|needs|with|mit|benötigt|nur mit) [^()]{0,20}(?:mobo|board|platform)[^()]{0,20}[)\]]$/i;
/** Beside other words of one line, what is said of support alone. */
const eccBeside: Taker = (value, place) => {
  if (!/^(?:memory|memory support|arbeitsspeicher)$/i.test(place.label)) return ecc(value, place);
  const said = value.split(/, ?/);
  const yes = said.some((one) => /^ECC (?:support(?:ed)?|unterstützt)$/i.test(one));
  const no = said.some((one) => /^(?:non-ECC|no ECC|ECC (?:unsupported|not supported|nicht unterstützt))$/i.test(one));
  return orNothing(place.path, yes === no ? undefined : String(yes));
};
export const ecc: Taker = (value, { path, label }) => flagOfEcc(path, value.replace(NEEDS, '').trim(), label);

const channels: Taker = (value, place) => {
  const own = counted(value, place);
  if (own && own.facts.length > 0) return own;
  const word = onlyOne(value.toLowerCase(), /\b(single|dual|triple|quad|two|four|zwei|vier)[ -]?(?:channel|kan[aä]l)/g);
  const figure = /(?<!\d)([1-8]) ?(?:channels?|kanäle)\b/i.exec(value)?.[1];
  return (word ?? figure) === undefined ? nothing : counted((word ?? figure)!, place);
};

/** Beside other words of one line, only what is called the most. */
const mostMemory: Taker = (value, place) => {
  if (/max|most|size|ausbau|größe|kapazität/i.test(place.label)) return undefined;
  const found = onlyOne(value, /(?:max(?:\.|imum|imal)?|up to|bis(?: zu)?)[: ]{0,2}(\d{1,4} ?[GT]B)\b/gi);
  return found === undefined ? nothing : takeQuantity(found, place);
};

/** `28/24` under `(Total/Usable)`: those that are left for use. */
const lanes: Taker = (value, place) => {
  const [, , usable] = /^(\d{1,3}) ?\/ ?(\d{1,3})$/.exec(value.trim()) ?? [];
  if (usable !== undefined && /total ?\/ ?usable/i.test(place.label)) return counted(usable, place);
  if (/^pci(?:e|[ -]express)$/i.test(place.label.trim()))
    return orNothing(place.path, /, ?(\d{1,2}) lanes?$/i.exec(value.trim())?.[1]);
  const whole = /^(\d{1,3}) ?x? PCI/i.exec(value.trim())?.[1];
  const left = onlyOne(
    value.replace(/(?<!\d)(\d{1,3}) (usable|nutzbar|verfügbar|available)/gi, '$2 $1'),
    /(?:verfügbar|usable|nutzbar|available):? ?(\d{1,3})\b/gi,
  );
  const own = counted(left ?? whole ?? value, place) ?? nothing;
  if (left !== undefined) return own;
  return /native|total/i.test(place.label) ? doubtful(...own.facts) : own;
};

const generation: Taker = (value, { path, label }) =>
  orNothing(
    path,
    /lanes/i.test(label)
      ? onlyOne(value, /\bPCI(?:e|-?E| Express) ?(?:Gen ?)?([3-7])(?:\.0)?(?![\d.])/gi)
      : (sheetGeneration(value) ?? sheetGeneration(value.replace(/, ?\d{1,2} lanes?$/i, ''))),
  );

const CLAIMED = /(?<![\d.]|\d,)(\d{2,3}(?:[.,]\d)?) ?W ?\(([^()]{2,40})\)/g;
/** `125 W (base power), 250 W (max. turbo power)`: each by what stands behind it. */
const powers =
  (own: RegExp, isPeak: boolean): Taker =>
  (value, place) => {
    const found = [...value.matchAll(CLAIMED)].filter(([, , words]) => own.test(words!));
    if (found.length === 1) return takeQuantity(`${found[0]![1]} W`, place);
    return isPeak && /tdp/i.test(place.label) ? nothing : undefined;
  };

/** What boards list is the family’s name alone: `Calder C9 Desktop Processors`. */
const family: Taker = (value, place) =>
  /[()]/.test(value)
    ? nothing
    : anyTakers.model!(
        value.replace(/(?: (?:desktop|mobile|server|series|serie|family|processors?|prozessoren|cpus?)){1,3}$/i, ''),
        place,
      );

const chipsetLink: Taker = (value, { path }) => orNothing(path, linkIn(value));

export const processorTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  family,
  socket,
  'power.sustained': powers(/base|\btdp\b|\bpl1\b|grund|basis/i, false),
  'power.peak': powers(/turbo|\bpl2\b|\bppt\b/i, true),
  'chipset-link': chipsetLink,
  graphics,
  'memory.types': types,
  'memory.fastest': fastest,
  'memory.channels': channels,
  'memory.most': mostMemory,
  'memory.ecc': eccBeside,
  lanes,
  generation,
};

export const isLiquid = (whole: string): boolean => /radiator|\baio\b|liquid|wasserkühl|all-in-one/.test(whole);

/** Above the processor: a tower’s height; of a liquid cooler’s block no sheet says from where it is measured. */
const coolerHeight: Taker = (value, place) => {
  if (isLiquid(place.whole)) return nothing;
  return sized(/height|höhe|altura|tinggi/i, (measures) => onAxis(measures, 'H'))(value, place);
};

/** Sockets in any list: `LGA1700/1200/115x`, `Calder: LGA1851; AM5, AM4`. */
const sockets: Taker = (value, { path }) => {
  const names: string[] = [];
  let kind = '';
  for (const piece of value.split(/\s?[,;/&|]\s?|\s(?:and|und)\s|\s-\s/)) {
    const text = piece
      .replace(/^[A-Z][A-Za-z]{1,12}:? (?=(?:socket |fc)?(?:lga|am|fm|s?tr|sp) ?-?\d)/i, '')
      .replace(/^socket:? /i, '')
      .trim();
    if (text === '') continue;
    kind = /^(?:FC)?(LGA|AM|FM)(?=[ -]?\d)/i.exec(text)?.[1]?.toUpperCase() ?? kind;
    const full = /^\d{3,4}x?(?:-\d)?$/i.test(text) ? `${kind || 'LGA'}${text}` : text;
    const word = wordOf(SOCKET_WORDS, full) ?? classOf(full);
    if (word === undefined) return nothing;
    names.push(word);
  }
  return names.length > 0 ? plain({ path, value: [...new Set(names)] }) : nothing;
};
/** Classes that a list names in one word. */
const classOf = (text: string): string | undefined => {
  const found = /^LGA ?-?(115x|20xx)$/i.exec(text)?.[1];
  return found === undefined ? undefined : `LGA${found.toLowerCase()}`;
};

/** `included (1 g syringe)`, `vorappliziert`. */
const coolerPaste: Taker = (value, { path }) => {
  if (/pre-?(?:applied|printed)|vor(?:ab )?(?:aufgetragen|appliziert)/i.test(value)) {
    return /pad/i.test(value) ? undefined : plain({ path, value: 'paste applied' });
  }
  return /\b(?:tube|syringe|spritze)\b/i.test(value) && !/optional|not|nicht|ohne/i.test(value)
    ? plain({ path, value: 'tube in the box' })
    : undefined;
};

/** `Pure copper, nickel plated`: the plating in whatever words. */
const base: Taker = (value, { path }) =>
  /\b(?:copper|kupfer|cobre|C1100)\b/i.test(value) && /nickel|vernickelt|niquelad/i.test(value) && value.length <= 60
    ? plain({ path, value: 'nickel-plated copper' })
    : undefined;

const fanCount: Taker = (value, place) => counted(value, place);

/** `220W+`: so much it carries off. */
const ratedPower: Taker = (value, place) => takeQuantity(value.replace(/(?<=W)\+$/i, ''), place);

export const coolerTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  'rated-power': ratedPower,
  sockets,
  height: coolerHeight,
  paste: coolerPaste,
  base,
  ...under('fans', { ...fanTakers, count: fanCount }),
  ...under('radiator', radiatorTakers),
  'pump.pins': fanTakers.pins!,
};

const module: Taker = (value, { path, whole, label }) => {
  const own = kitIn(value);
  const all = kitIn(whole);
  if (/kit|gesamt|total/i.test(label) && own.eachGb === undefined) return kitShare(path, own.wholeGb, all.modules);
  if (own.eachGb !== undefined) {
    const agrees = own.wholeGb === undefined || own.wholeGb === own.eachGb * (own.modules ?? 1);
    return agrees ? plain({ path, value: `${own.eachGb} GB` }) : nothing;
  }
  if (own.wholeGb === undefined) return nothing;
  if (all.eachGb !== undefined && (own.wholeGb === all.eachGb || own.wholeGb === all.eachGb * (all.modules ?? 1)))
    return plain({ path, value: `${all.eachGb} GB` });
  const isOfKit = all.modules === undefined && /\bkit\b/.test(whole);
  if (/module|modul/i.test(label) || (all.modules === undefined && !isOfKit) || all.modules === 1)
    return plain({ path, value: `${own.wholeGb} GB` });
  return doubtful({ path, value: `${own.wholeGb} GB` });
};

function kitShare(path: readonly string[], wholeGb: number | undefined, modules: number | undefined) {
  const each = wholeGb !== undefined && modules !== undefined ? wholeGb / modules : Number.NaN;
  return Number.isInteger(each) ? plain({ path, value: `${each} GB` }) : nothing;
}

const modules: Taker = (value, { path, label }) => {
  const { modules: found } = kitIn(value);
  if (found !== undefined) return plain({ path, value: String(found) });
  const bare = /modul|quantity|anzahl|kit/i.test(label) ? /^([1-8]) ?x?(?: ?pcs)?$/.exec(value.trim())?.[1] : undefined;
  return orNothing(path, bare);
};

const oneRate: Taker = (value, { path, whole }) => {
  const rates = ratesIn(value, whole);
  return rates?.length === 1 ? plain({ path, value: `${rates[0]} MT/s` }) : nothing;
};

/** 133.35 mm, or 69.6 mm, long; the lower of the rest is its thickness. Source: JEDEC MO-309, MO-310. */
const moduleHeight: Taker = sized(/height|höhe|altura|tinggi/i, (measures) => {
  const named = onAxis(measures, 'H');
  const two = { ...measures, mm: measures.mm.toSorted((a, b) => b - a).slice(0, 2) };
  const rest = leftOver(two, [133.35], 1) ?? leftOver(two, [69.6], 0.5) ?? leftOver(two, [67.6], 0.5);
  return rest !== undefined && rest >= 18 && (named === undefined || named === rest) ? rest : undefined;
});

const type: Taker = (value, { path }) => {
  const found = typesIn(value);
  return found.length === 1 ? plain({ path, value: found[0]! }) : nothing;
};
const voltage: Taker = (value, place) => {
  const only = onlyOne(withDots(value), /(?<![\d.]|\d,)(\d\.\d{1,3}) ?V\b/gi);
  return only === undefined ? takeQuantity(value, place) : plain({ path: place.path, value: `${Number(only)} V` });
};

export const memoryTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  type,
  shape: (value, { path }) => orNothing(path, shapeIn(value)),
  class: (value, { path }) => orNothing(path, classIn(value)),
  ecc,
  capacity: module,
  'modules-in-kit': modules,
  ranks: (value, { path }) => orNothing(path, ranksIn(value)),
  'standard-speed': oneRate,
  'rated-speed': oneRate,
  voltage,
  height: moduleHeight,
};
