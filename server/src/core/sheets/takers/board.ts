// How the values of boards are read: the outline, memory in one line, slots, ports and headers by the printed name.
import { BOARD_SIZE_WORDS } from '../../trade/board-words';
import { BOARD_CONNECTOR_WORDS } from '../../trade/connector-words';
import { HEADER_WORDS } from '../../trade/header-words';
import { sheetPins } from '../../trade/sheet-forms';
import { wordOf } from '../../trade/vocabulary';
import { measuresOf } from '../measures';
import { takeQuantity } from '../take-quantity';
import { nothing, plain, together, type Take, type Taken, type Taker } from '../taken';
import { anyTakers, mmText, onlyOne, orNothing } from './common';
import { connectors, countedIn, kindOf, rearOutputs } from './connectors';
import { linkIn } from './devices';
import { classIn, eccIn, shapeIn, typesIn } from './memory-words';
import { ecc, socket } from './processing';

/** The only size that a text names, before its measures. */
const size: Taker = (value, { path }) => {
  const names = value
    .replace(/\bform factor\b|\bformfaktor\b/gi, ' ')
    .split(/\s?[,;()/|]\s?|\s(?=\d)/)
    .map((piece) => wordOf(BOARD_SIZE_WORDS, piece.trim()))
    .filter((word) => word !== undefined);
  const [only] = names;
  return new Set(names).size === 1 ? plain({ path, value: only! }) : nothing;
};

/** Edges by the outline’s name. Source: ATX Specification 2.2; microATX 1.2; Mini-ITX 2.0. */
const OUTLINES: readonly (readonly [width: number, depth: number])[] = [
  [305, 244],
  [244, 244],
  [170, 170],
];
const edge =
  (which: 0 | 1): Taker =>
  (value, { path, said }) => {
    const measures = measuresOf(value, { ...(said.unit ? { unit: said.unit } : {}) });
    if (measures?.mm.length !== 2) return nothing;
    const [a = 0, b = 0] = measures.mm.toSorted((x, y) => y - x);
    const outline = OUTLINES.find(([width, depth]) => Math.abs(width - a) <= 1 && Math.abs(depth - b) <= 1);
    return outline ? plain({ path, value: mmText([a, b][which]!) }) : nothing;
  };

/** What several words may stand between in one line on memory. */
const type: Taker = (value, { path }) => {
  const found = typesIn(value);
  return found.length === 1 ? plain({ path, value: found[0]! }) : nothing;
};

const most: Taker = (value, place) => {
  const isAlone = /^\D{0,14}\d{1,4}(?:[.,]\d)? ?[GT]B\)?$/i.test(value.trim());
  if (isAlone && /max|capacity|kapazität|ausbau/i.test(place.label)) return takeQuantity(value, place);
  const text = value.replace(/\b(?:each|per (?:slot|dimm|module)|pro (?:slot|modul))\b.{0,20}/gi, ' ');
  const found =
    onlyOne(
      text,
      /(?:max(?:\.|imum|imal)?|up to|bis(?: zu)?)[: ]{0,2}(?:memory|capacity|speicher)?[: ]{0,2}(\d{1,4} ?[GT]B)\b/gi,
    ) ?? onlyOne(text, /(?<![\d.])(\d{1,4} ?[GT]B)(?= ?\(?max)/gi);
  return found === undefined ? nothing : takeQuantity(found, place);
};

const fromLine =
  (read: (text: string) => string | undefined): Taker =>
  (value, { path }) =>
    orNothing(path, read(value));

const eccInLine: Taker = (value, place) => {
  if (/ecc/i.test(place.label)) return ecc(value, place);
  const said = eccIn(value);
  return said === false ? plain({ path: place.path, value: 'false' }) : nothing;
};

/** Names of processor families: each begins as a name does and ends before `series`. */
const families: Taker = (value, { path }) => {
  const text = value.replace(/^(?:supports?|unterstützt|for|für) /i, '');
  const names = text.split(/\s?[,;]\s?|\s(?:and|und|&)\s/).map((piece) =>
    piece
      .replace(/^(?:the )/i, '')
      .replace(/[- ](?:series|serie|family|familie)?(?: ?(?:desktop )?(?:processors?|prozessoren|cpus?))?$/i, '')
      .trim(),
  );
  const isName = (one: string): boolean => /^[A-Z][A-Za-z]{2,14} [A-Z][A-Za-z]{0,8} ?\d{1,3}$/.test(one);
  if (names.length === 0 || !names.every(isName)) return nothing;
  return plain(...names.map((name, index): Taken => ({ path: [...path, String(index), 'family'], value: name })));
};

const SLOT_NAME =
  /(?<![\w.])(M\.?2_?[A-Z]{0,3}_?\d{1,2}|M2[A-Z]_?\w{0,4}|PCI_?EX?\d{0,2}_\d{1,2}|PCI_E\d|PCIEX?\d{1,2})(?![\w.])/g;

/** Slots by the name printed on the board; a slot whose name nobody prints has none here. */
export const slots: Taker = (value, { path, label }) => {
  const own = namesIn(label);
  if (own.length === 1) return slotFacts(path, own[0]!, value);
  const clauses = value.split(/\s?[;•\n]\s?|(?<=\)), ?/).filter((clause) => namesIn(clause).length === 1);
  return clauses.length === 0
    ? nothing
    : together(clauses.map((clause) => slotFacts(path, namesIn(clause)[0]!, clause)));
};

const namesIn = (text: string): string[] => [...new Set([...text.matchAll(SLOT_NAME)].map(([one]) => one))];
export const isSlotLabel = (label: string): boolean => namesIn(label).length === 1;

function slotFacts(path: readonly string[], name: string, said: string): Take {
  const text = said.replace(name, ' ').replace(/[×*]/g, 'x');
  const own = (key: string, value: string | readonly string[]): Taken => ({ path: [...path, name, key], value });
  const isM2 = /^M/.test(name);
  const facts = isM2 ? m2Facts(text, own) : pcieFacts(text, own);
  const from = onlyOne(
    text
      .replace(/\bCPU\b|prozessor/gi, 'processor')
      .replace(/\bPCH\b|chipsatz/gi, 'chipset')
      .toLowerCase(),
    /(?:from|by|via|vom|über) (?:the )?(processor|chipset)\b|\b(processor|chipset)(?=[ -]attached)/g,
  );
  if (facts.length === 0) return nothing;
  return plain(own('kind', isM2 ? 'M.2' : 'PCIe'), ...facts, ...(from ? [own('from', from)] : []));
}

type Own = (key: string, value: string | readonly string[]) => Taken;

/** The lanes that a slot really has, where its length says more. */
const MODE =
  /(?:\(|runs? at|supports?|mode:?|läuft mit|elektrisch|electrical(?:ly)?|max\.?) ?(?:up to )?x ?(16|8|4|2|1)\b/i;

function pcieFacts(text: string, own: Own): Taken[] {
  const [, generation, length] =
    /\b(?:PCIe|PCI-?E|PCI Express)[ -]?(?:Gen ?)?([1-6])(?:\.0)? ?x ?(16|8|4|1)\b/i.exec(text) ?? [];
  const mode = MODE.exec(text)?.[1];
  if (generation === undefined || length === undefined) return [];
  const several = [...text.matchAll(/\bx ?(16|8|4|2|1)\b/gi)].length > 2;
  return [
    own('length', `x${length}`),
    ...(several ? [] : [own('lanes', mode ?? length)]),
    own('generation', generation),
  ];
}

function m2Facts(text: string, own: Own): Taken[] {
  const sizes = [
    ...new Set(
      [...text.matchAll(/(?<!\d)(22(?:30|42|60|80|110)|110(?= ?\))?)(?!\d)/g)]
        .map(([one]) => one)
        .filter((one) => one.length > 3),
    ),
  ];
  const key = onlyOne(text.toUpperCase(), /\b(?:KEY[ -]?([ABEM])\b|(?<![A-Z])([ABEM])[ -]KEY\b)/g)
    ?.replace(/^.*([ABEM])(?: KEY|-KEY)?$/, '$1')
    .trim();
  const link = linkIn(text.replace(/SATA[^,;)]{0,12}/gi, ' '));
  const hasSata = /\bSATA\b/i.test(text) && !/no SATA|kein SATA|nicht SATA/i.test(text);
  const carries = [...(link ? [link] : []), ...(link && hasSata ? ['SATA'] : [])];
  const isBounded = /up to 22|bis 22|max/i.test(text);
  return [
    ...(key && /^[ABEM]$/.test(key) ? [own('key', key)] : []),
    ...(sizes.length > 0 && !isBounded ? [own('sizes', sizes)] : []),
    ...(carries.length > 0 ? [own('carries', carries)] : []),
  ];
}

const PORT_NAME = /(?<!\w)(SATA\d?_?[A-Z]?\d{1,2}|SATA6G_\d{1,2}|S_?ATA_\d)(?!\w)/g;
/** Ports by their printed names. */
const ports: Taker = (value, { path }) => {
  const names = [...new Set([...value.matchAll(PORT_NAME)].map(([one]) => one))].filter(
    (one) => /_|\d$/.test(one) && !/^SATA[123]$/.test(one),
  );
  if (names.length === 0 || /[~–]| to | bis |-SATA/i.test(value)) return nothing;
  const generation = /6(?:\.0)? ?Gb|SATA ?(?:III|3)\b/i.test(value) ? '3' : undefined;
  return plain(
    ...names.map(
      (name): Taken =>
        generation
          ? { path: [...path, name, 'generation'], value: generation }
          : { path: [...path, name], value: '{}' },
    ),
  );
};

const HEADER_NAME = /^[A-Z][A-Z0-9]{0,9}(?:_[A-Z0-9]{1,8}){1,3}$/;
export const isHeaderLabel = (label: string): boolean =>
  HEADER_NAME.test(label.trim()) && headerKind(label) !== undefined;

const headerKind = (name: string): string | undefined =>
  wordOf(HEADER_WORDS, name.trim()) ?? wordOf(HEADER_WORDS, name.trim().replace(/_?\d{1,2}$/, ''));

/** A header under the name that is printed on the board. */
export const headers: Taker = (value, { path, label }) => {
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

/** Of internal connectors, those of power alone. */
const boardPower: Taker = (value, place) => {
  if (/^power|strom|atx|cpu|main/i.test(place.label)) return connectors(value, place);
  const all = countedIn(value).map(({ count, name }) => ({
    count,
    kind: /power|atx|eps|strom/i.test(name)
      ? kindOf(BOARD_CONNECTOR_WORDS, name.replace(/\bpower\b/gi, ' '), '')
      : undefined,
  }));
  const read = all.filter((one) => one.kind !== undefined && one.count !== undefined);
  return read.length === 0
    ? nothing
    : plain(...read.map(({ count, kind }): Taken => ({ path: [...place.path, kind!], value: String(count) })));
};

export const boardTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  size,
  width: edge(0),
  depth: edge(1),
  socket,
  processors: families,
  'memory.type': type,
  'memory.shape': fromLine(shapeIn),
  'memory.module': fromLine(classIn),
  'memory.ecc': eccInLine,
  'memory.most': most,
  slots,
  ports,
  headers,
  'power-connectors': boardPower,
  'display-outputs': rearOutputs,
};
