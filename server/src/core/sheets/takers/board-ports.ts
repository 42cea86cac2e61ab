// Ports and headers of a board, by the names printed on it; those without one are counted.
import { HEADER_WORDS, type HeaderKind } from '../../trade/header-words';
import { sheetPins } from '../../trade/sheet-forms';
import { wordOf } from '../../trade/vocabulary';
import { nothing, plain, type Taken, type Taker } from '../taken';
import { isOfSharing, namesOf, thingsIn, unnamed, type Counted } from './board-things';
import { onlyOne } from './common';

const PORT_NAME = /(?<!\w)(SATA\d?_?[A-Z]?\d{1,2}|SATA6G_\d{1,2}|S_?ATA_\d)(?!\w)/g;

const generationOf = (text: string): string | undefined =>
  /6(?:[.,]0)? ?Gb|SATA ?6G\b|SATA[ -]?(?:III|3(?:\.0)?)(?![\d.])/i.test(text) ? '3' : undefined;

const portFacts = (path: readonly string[], names: readonly string[], text: string): readonly Taken[] => {
  const generation = generationOf(text);
  return names.map(
    (name): Taken =>
      generation ? { path: [...path, name, 'generation'], value: generation } : { path: [...path, name], value: '{}' },
  );
};

/** Ports by their printed names, or so many as are counted. */
export const ports: Taker = (value, { path, label, heading }) => {
  const counted = thingsIn(label, value, heading).filter(({ what }) => what === 'ports');
  if (counted.length > 0)
    return plain(...counted.flatMap((thing) => portFacts(path, namesOf(thing, 'SATA'), thing.text)));
  const names = [...new Set([...value.matchAll(PORT_NAME)].map(([one]) => one))].filter(
    (one) => /_|\d$/.test(one) && !/^SATA[123]$/.test(one),
  );
  if (names.length > 0 && (/[~–]| to | bis |-SATA/i.test(value) || isOfSharing(value))) return nothing;
  if (names.length > 0) return plain(...portFacts(path, names, value.replace(PORT_NAME, ' ')));
  const bare = value.replace(/, ?RAID [\d/, ]{1,20}$/i, '').trim();
  const alone = /^(\d{1,2}) ?x?(?: ?(?:(?:x )?SATA.{0,12}|(?:ports?|anschlüsse)(?: ?\(6 ?Gb[^()]{1,6}\))?))?$/i.exec(
    bare,
  )?.[1];
  if (alone === undefined || !/SATA/i.test(label) || Number(alone) > 16) return nothing;
  const all = Array.from({ length: Number(alone) }, (_, index) => unnamed('SATA', `${index + 1} ${label}`));
  return plain(...portFacts(path, all, `${label} ${value}`));
};

const HEADER_NAME = /^[A-Z][A-Z0-9]{0,9}(?:_[A-Z0-9]{1,8}){1,3}$/;
export const isHeaderLabel = (label: string): boolean =>
  HEADER_NAME.test(label.trim()) && headerKind(label) !== undefined;

const headerKind = (name: string): HeaderKind | undefined =>
  wordOf(HEADER_WORDS, name.trim()) ?? wordOf(HEADER_WORDS, name.trim().replace(/_?\d{1,2}$/, ''));

/** What counted headers are called in a sheet, and how ours are named where nothing is printed. */
const CALLED: readonly (readonly [kind: HeaderKind, stem: string, words: RegExp])[] = [
  ['pump', 'PUMP', /pump|pumpe/i],
  ['fan', 'CPU_FAN', /\bCPU[ _-]?(?:opt(?:ional)?[ _-]?|cooler )?(?:fan|lüfter)/i],
  ['fan', 'SYS_FAN', /(?:\b|_)fans?(?:\b|_?\d)|lüfter/i],
  ['front audio', 'F_AUDIO', /[aá]udio|AAFP/i],
  ['front USB-C', 'F_USB_C', /USB.{0,40}(?:type[ -]?[ce]\b|USB-?C\b|key-a)|(?:type[ -]?[ce]\b|USB-?C\b)/i],
  ['front USB 3', 'F_USB3', /USB(?:-A)? ?(?:3(?:\.[012])?|5 ?Gb)/i],
  ['front USB 2.0', 'F_USB', /USB(?:-A)? ?2(?:\.0)?/i],
  ['RGB', 'RGB', /A?RGB|LED strip|rainbow|addressable/i],
  ['front panel', 'F_PANEL', /(?:front|system)[ -]?panel|painel frontal|panel frontal|power (?:switch|button)/i],
];

function headerFacts(path: readonly string[], thing: Counted, ofEach?: string): readonly Taken[] {
  const bare = thing.text.replace(/ ?\([^()]{0,40}\)/g, '');
  const called = CALLED.filter(([, , words]) => words.test(thing.text) || words.test(bare));
  const isBoth = /pump/i.test(thing.text) && /\bfan\b|lüfter/i.test(thing.text);
  const [first] = called;
  if (
    !first ||
    (isBoth && !/pump(?:[ -]fan)/i.test(thing.text)) ||
    /thunderbolt|\bTPM|COM\b|serial|clear|jumper/i.test(thing.text)
  )
    return [];
  const [kind, stem] = first;
  const isTurning = kind === 'fan' || kind === 'pump';
  const pins = isTurning ? (/(?<!\d)([34])[ -]?(?:pins?|polig|pol)\b/i.exec(thing.text)?.[1] ?? ofEach) : undefined;
  const [volts, poles] = kind === 'RGB' ? lightsOf(thing.text) : [];
  const printed = isTurning ? PRINTED.exec(thing.text)?.[0] : undefined;
  if (printed === undefined && /^[A-Z]+_[A-Z]/.test(thing.text)) return [];
  const names = printed !== undefined && thing.count === 1 ? [printed] : namesOf(thing, printed ?? stem);
  return names.flatMap((name) => [
    { path: [...path, name, 'kind'], value: kind },
    ...(pins ? [{ path: [...path, name, 'pins'], value: pins }] : []),
    ...(volts && poles
      ? [
          { path: [...path, name, 'pins'], value: poles },
          { path: [...path, name, 'voltage'], value: `${volts} V` },
        ]
      : []),
  ]);
}

/** What a clause begins with, where that is a name on the board: `CPU_FAN`, `CHA_FAN1`. */
const PRINTED = /^(?:CPU|SYS|CHA|W|AIO|PUMP|CASE|REAR|EXT)_(?:FAN|OPT|PUMP)(?:_?\d)?(?![\w/])/;

/** Volts and pins of a header for lights, where both are said and go together. */
function lightsOf(text: string): readonly [volts?: string, pins?: string] {
  const volts = onlyOne(text, /(?<![\d.])(5|12) ?V\b/gi);
  const pins = onlyOne(text, /(?<!\d)([34])[ -]?(?:pins?|polig|pol)\b/gi);
  return (volts === '5' && pins === '3') || (volts === '12' && pins === '4') ? [volts, pins] : [];
}

/** A header under the name that is printed on the board. */
export const headers: Taker = (value, { path, label, heading }) => {
  const counted = thingsIn(label, value, heading).filter(({ what }) => what === 'headers');
  const ofEach = /\((?:all|each|je|alle) ([34])[ -]?(?:pins?|polig)\)$/i.exec(value.trim())?.[1];
  if (counted.length > 0) return plain(...counted.flatMap((thing) => headerFacts(path, thing, ofEach)));
  if (!isHeaderLabel(label)) return nothing;
  const name = label.trim();
  const kind = headerKind(name)!;
  const pins =
    kind === 'fan' || kind === 'pump'
      ? sheetPins((/^\d ?-?pins?/i.exec(value.trim())?.[0] ?? value).split(/[,;(]/)[0]!.trim())
      : undefined;
  const isRead =
    pins !== undefined ||
    wordOf(HEADER_WORDS, value) === kind ||
    /header|connector|anschluss|fan|lüfter|pump/i.test(value);
  if (!isRead) return nothing;
  return plain(
    { path: [...path, name, 'kind'], value: kind },
    ...(pins ? [{ path: [...path, name, 'pins'], value: pins }] : []),
  );
};
