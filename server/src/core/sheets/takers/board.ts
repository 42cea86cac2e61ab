// How the values of boards are read: the outline, memory in one line, slots, ports and headers by the printed name.
import { BOARD_SIZE_WORDS } from '../../trade/board-words';
import { BOARD_CONNECTOR_WORDS } from '../../trade/connector-words';
import { wordOf } from '../../trade/vocabulary';
import { measuresOf } from '../measures';
import { takeQuantity } from '../take-quantity';
import { nothing, plain, type Taken, type Taker } from '../taken';
import { anyTakers, mmText, onlyOne, orNothing } from './common';
import { headers, ports } from './board-ports';
import { slots } from './board-slots';
import { countFirst, thingsIn } from './board-things';
import { connectors, countedIn, kindOf, rearOutputs } from './connectors';
import { classIn, eccIn, shapeIn, typesIn } from './memory-words';
import { ecc, socket } from './processing';

/** The only size that a text names, before its measures. */
const size: Taker = (value, { path }) => {
  const names = value
    .replace(/\bform factor\b|\bformfaktor\b/gi, ' ')
    .split(/\s?[,;()/|•]\s?|\s(?=\d)/)
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
/** The rear edge of ATX and of E-ATX, however deep a board is. Source: ATX Specification 2.2; SSI EEB 2011. */
const FULL_REAR_MM = 304.8;
const edge =
  (which: 0 | 1): Taker =>
  (value, { path, said }) => {
    const measures = measuresOf(value, { ...(said.unit ? { unit: said.unit } : {}) });
    if (measures?.mm.length !== 2) return nothing;
    const [a = 0, b = 0] = measures.mm.toSorted((x, y) => y - x);
    const outline = OUTLINES.find(([width, depth]) => Math.abs(width - a) <= 1 && Math.abs(depth - b) <= 1);
    if (outline) return plain({ path, value: mmText([a, b][which]!) });
    const rear = [a, b].find((one) => Math.abs(one - FULL_REAR_MM) <= 1);
    if (rear === undefined || a > 335 || b < 150) return nothing;
    return plain({ path, value: mmText(which === 0 ? rear : rear === a ? b : a) });
  };

/** What several words may stand between in one line on memory. */
const type: Taker = (value, { path }) => {
  const found = typesIn(value);
  return found.length === 1 ? plain({ path, value: found[0]! }) : nothing;
};

const most: Taker = (value, place) => {
  const whole = value.replace(/ ?\(\d{1,3} ?GB (?:per|pro|each|je|single)\b[^()]{0,20}\)$/i, '').trim();
  const isAlone = /^\D{0,14}\d{1,4}(?:[.,]\d)? ?[GT]B\)?$/i.test(whole);
  if (isAlone && /m[aá]x|capacity|kapazität|ausbau/i.test(place.label)) return takeQuantity(whole, place);
  const text = value
    .replace(/\b(?:each|per (?:slot|dimm|module)|pro (?:slot|modul))\b.{0,20}/gi, ' ')
    .replace(/\b(?:memory|capacity|speicher)\b/gi, ' ')
    .replace(/\s+/g, ' ');
  const found =
    onlyOne(text, /(?:max(?:\.|imum|imal)?|up to|bis(?: zu)?|at[eé]|hasta|hingga)[: ]{0,2}(\d{1,4} ?[GT]B)\b/gi) ??
    onlyOne(text, /(?<![\d.]|\d,)(\d{1,4} ?[GT]B)(?= ?\(?max)/gi);
  return found === undefined ? nothing : takeQuantity(found, place);
};

const fromLine =
  (read: (text: string) => string | undefined): Taker =>
  (value, { path }) =>
    orNothing(path, read(value));

const eccInLine: Taker = (value, place) => {
  if (/ecc/i.test(place.label)) return ecc(value, place);
  const said = eccIn(value);
  const isServer = said === true && /^(?:RDIMM|LRDIMM)$/.test(classIn(value) ?? '');
  return said === false || isServer ? plain({ path: place.path, value: String(said) }) : nothing;
};

const SERIES = /[- ](?:series|serie|family|familie)?(?: ?(?:desktop )?(?:processors?|prozessoren|cpus?))?$/i;

/** Names of processor families: each begins as a name does and ends before `series`; `Calder C6, C7` are two. */
const families: Taker = (value, { path }) => {
  const text = value
    .replace(/^.{0,40}\bfor (?=[A-Z])|^(?:supports?|unterstützt|for|für) /i, '')
    .replace(/^(?:LGA|AM)[ -]?\d{1,4}\+? ?\(([^()]{3,60})\)$/i, '$1')
    .replace(/\(.{0,60}\)/g, ' ')
    .replace(
      /\b(?:supports?|unterstützt|suporta|soporta|mendukung) (?:processadores |procesadores |prosesor )?/gi,
      ' ',
    );
  let maker = '';
  const names = text
    .split(/\s?[,;/•]\s?|\s(?:and|und|e|y|dan|&)\s/)
    .map((piece) =>
      piece
        .trim()
        .replace(/^(?:the )/i, '')
        .trim()
        .replace(SERIES, '')
        .trim(),
    )
    .filter((name) => !/^(?:socket|sockel) |^(?:LGA|AM\d)/i.test(name))
    .map((name) => {
      maker = FAMILY.exec(name)?.[1] ?? maker;
      return /^[A-Z]{1,4}-?\d{1,3}$/.test(name) && maker !== '' ? `${maker} ${name}` : name;
    });
  if (names.length === 0 || !names.every((one) => FAMILY.test(one))) return nothing;
  return plain(...names.map((name, index): Taken => ({ path: [...path, String(index), 'family'], value: name })));
};
const FAMILY = /^([A-Z][A-Za-z]{2,14}) [A-Z][A-Za-z]{0,8} ?\d{1,3}$/;

/** The most that a processor may draw on it: `TDP up to 350 W`. */
const processorPower: Taker = (value, { path }) => {
  const watts = onlyOne(value, /\bTDP[: ]{0,2}(?:of |von )?(?:up to|bis(?: zu)?|max\.?)[: ]{0,2}(\d{2,3}) ?W\b/gi);
  return orNothing(path, watts && `${watts} W`);
};

const flashback: Taker = (value, { path, label }) =>
  thingsIn(label, value, '').some(({ what }) => what === 'flashback') ? plain({ path, value: 'true' }) : undefined;

/** Of internal connectors, those of power alone. */
const boardPower: Taker = (value, place) => {
  const named = /^power|strom|atx|cpu|main/i.test(place.label) ? connectors(value, place) : undefined;
  if (named && named.facts.length > 0) return named;
  const all = countedIn(countFirst(place.label, value)).map(({ count, name }) => ({
    count,
    kind: /power|atx|eps|strom|12 ?V/i.test(name) ? powerKind(name) : undefined,
  }));
  const counts = new Map<string, number>();
  for (const { count, kind } of all)
    if (kind !== undefined && count !== undefined) counts.set(kind, (counts.get(kind) ?? 0) + count);
  return plain(...[...counts].map(([kind, count]): Taken => ({ path: [...place.path, kind], value: String(count) })));
};

const powerKind = (name: string): string | undefined =>
  kindOf(
    BOARD_CONNECTOR_WORDS,
    name
      .split(/[([]/)[0]!
      .replace(/\b(?:main )?power\b|strom(?:anschlüsse|anschluss|stecker|buchsen?|versorgung)?/gi, ' '),
    '',
  ) ?? kindOf(BOARD_CONNECTOR_WORDS, name, '');

/** `(32 GB single DIMM capacity)`, `max. 48 GB per DIMM`. */
const largest: Taker = (value, place) => {
  if (/per (?:slot|dimm|module)|module size|pro slot|modulgröße/i.test(place.label)) return undefined;
  const each = /(?<![\d.])(\d{1,3} ?GB) (?:single[ -]DIMM|per (?:DIMM|slot|module)|pro (?:DIMM|Slot|Modul))/gi;
  const found = onlyOne(value, each);
  return found === undefined ? nothing : takeQuantity(found, place);
};

export const boardTakers: Readonly<Record<string, Taker>> = {
  ...anyTakers,
  size,
  width: edge(0),
  depth: edge(1),
  socket,
  'processor-power': processorPower,
  processors: families,
  'firmware.update-without-processor': flashback,
  'memory.type': type,
  'memory.shape': fromLine(shapeIn),
  'memory.module': fromLine(classIn),
  'memory.ecc': eccInLine,
  'memory.most': most,
  'memory.largest-module': largest,
  slots,
  ports,
  headers,
  'power-connectors': boardPower,
  'display-outputs': rearOutputs,
};
