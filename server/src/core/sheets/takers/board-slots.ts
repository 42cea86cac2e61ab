// Slots of a board, by the names printed on it; those without one are counted.
import { nothing, plain, together, type Take, type Taken, type Taker } from '../taken';
import { isCounted, isOfSharing, namesOf, thingsIn } from './board-things';
import { onlyOne } from './common';
import { hasBrokenWidth, linkIn } from './links';

const SLOT_NAMES: readonly RegExp[] = [
  /(?<![\w.])(?:M\.?2_?[A-Z]{0,3}_?\d{1,2}|M2[A-Z]{0,2}_[A-Z0-9]{1,5}|M2[A-Z])(?![\w.])/g,
  /(?<![\w.])(?:PCI_?EX?\d{0,2}_\d{1,2}|PCI_E\d|PCIE\d|PCIEX?\d{1,2})(?![\w.])/g,
];

const namesIn = (text: string): string[] => [
  ...new Set(SLOT_NAMES.flatMap((words) => [...text.matchAll(words)].map(([one]) => one))),
];
export const isSlotLabel = (label: string): boolean => namesIn(label).length === 1;
/** Whether a line lists slots by their names, beside what it counts: `M.2_1 slot (Key M), 4 x SATA`. */
export const listsSlots = (text: string): boolean => text.split(BETWEEN_SLOTS).some((one) => isSlotClause(one));

/** `M.2 interface: 2 PCIe 4.0 x4`, and behind it form and key. */
const M2_BY_PROPERTY = /^M\.2 (?:interface|slots?|sockets?): (\d) (?:x )?(PCI.{4,200})$/i;

/** What begins a slot’s own words in a list that commas part. */
const NEXT_NAMED = /, ?(?=(?:M\.?2_\d|M2[A-Z]?_\w{1,4}|PCI_?EX?\d{0,2}(?:_\d)?) (?:slot|socket|connector|steckplatz))/i;

/** Clauses that each name one slot, with the clauses behind them that name none and count nothing. */
function namedClauses(value: string): string[] {
  const found: string[] = [];
  let isOpen = false;
  for (const clause of value.split(BETWEEN_SLOTS).flatMap((one) => one.split(NEXT_NAMED))) {
    if (isOfSharing(clause)) continue;
    if (isOpen && namesIn(clause).length === 0 && !isCounted(clause)) found.push(`${found.pop()!}, ${clause}`);
    else {
      isOpen = isSlotClause(clause);
      if (isOpen) found.push(clause);
    }
  }
  return found;
}

/** Slots by their printed names, or so many as are counted; a line on what one takes from others says just that. */
export const slots: Taker = (value, { path, label, heading }) => {
  const counted = thingsIn(label, value, heading).filter(({ what }) => what === 'slots');
  const of = counted.map((thing) => {
    const isM2 = /\bM\.?2/i.test(thing.text);
    const [only] = thing.names.length === 0 && thing.count === 1 ? namesIn(thing.text) : [];
    const stem = !isM2 ? 'PCIE' : isForWireless(thing.text) ? 'M2_WIFI' : 'M2';
    const names = only === undefined ? namesOf(thing, stem) : [only];
    const said = thing.names.reduce((text, name) => text.replaceAll(name, ' '), thing.text);
    return together(names.map((name) => slotFacts(path, name, said, isM2, heading)));
  });
  const own = namesIn(label);
  const [, count, words] = M2_BY_PROPERTY.exec(value) ?? [];
  if (count !== undefined && words !== undefined) {
    const names = namesOf({ what: 'slots', count: Number(count), text: words, names: [] }, 'M2');
    return together(names.map((name) => slotFacts(path, name, words, true, heading)));
  }
  if (counted.length === 0 && own.length === 1) return slotFacts(path, own[0]!, value);
  const clauses = namedClauses(value).filter(
    (clause) => !counted.some(({ text }) => text.includes(namesIn(clause)[0]!)),
  );
  return together([...of, ...clauses.map((clause) => slotFacts(path, namesIn(clause)[0]!, clause))]);
};

/** Slots of one line, and things that are counted behind them. */
const BETWEEN_SLOTS = /\s?[;•\n]\s?|, ?(?=\d{1,2} ?[x×] ?\p{L})|(?<=\)), ?(?=M\.?2|PCI)/u;
const isSlotClause = (clause: string): boolean =>
  /^(?:M\.?2|PCI)/.test(clause) && namesIn(clause).length === 1 && !isOfSharing(clause);

const isForWireless = (text: string): boolean => /wi-?fi|wlan|wireless|\bkey[ -]?E\b|\bE[ -]key\b/i.test(text);

function slotFacts(path: readonly string[], name: string, said: string, isM2 = /^M/.test(name), heading = ''): Take {
  const text = said.replaceAll(name, ' ').replace(/[×*]/g, 'x');
  if (hasBrokenWidth(text)) return nothing;
  const own: Own = (key, value) => ({ path: [...path, name, key], value });
  const facts = isM2 ? m2Facts(text, own) : pcieFacts(text, own);
  const from = sourceOf(text) ?? sourceAbove(heading);
  if (facts === undefined || (facts.length === 0 && !name.includes('#'))) return nothing;
  return plain(own('kind', isM2 ? 'M.2' : 'PCIe'), ...facts, ...(from ? [own('from', from)] : []));
}

/** Where its lanes come from, as words in the line say it. */
const sourceOf = (text: string): string | undefined =>
  onlyOne(
    text
      .replace(/\bCPU\b|prozessor/gi, 'processor')
      .replace(/\bPCH\b|chipsatz/gi, 'chipset')
      .toLowerCase()
      .replace(/, (processor|chipset)$/, ' ($1)'),
    /(?:from|by|via|in|vom|über|an) (?:the |den )?(processor|chipset)\b|\b(processor|chipset)(?=[ -]attached|\))/g,
  );

/** What heads a list of slots: `K860 Chipset`, `Calder C7 Series Processors`, `CPU`. */
function sourceAbove(heading: string): string | undefined {
  const isChipset = /(?:^|\s)(?:chipset|chipsatz|PCH)$/i.test(heading);
  if (isChipset) return 'chipset';
  return /(?:^|\s)(?:CPU|processors?|prozessor(?:en)?)$/i.test(heading) ? 'processor' : undefined;
}

type Own = (key: string, value: string | readonly string[]) => Taken;

/** The lanes that a slot really has, where its length says more. */
const MODES: readonly RegExp[] = [
  /\((?:up to )?x ?(16|8|4|2|1)\b|\b(?:runs?|running|operates|works) (?:at|in) (?:up to )?x ?(16|8|4|2|1)\b/i,
  /\b(?:supports?|mode:?|max\.?|slot at|@) ?(?:up to )?x ?(16|8|4|2|1)\b/i,
  /(?:läuft mit|elektrisch|electrical(?:ly)?|angebunden mit) ?x ?(16|8|4|2|1)\b/i,
  /\bx ?(16|8|4|2|1) ?(?:mode|modus|electrical|elektrisch|lanes|speed|bandwidth|angebunden)/i,
];
const modeIn = (text: string): string | undefined => {
  for (const words of MODES) {
    const found = words.exec(text);
    if (found) return found[1] ?? found[2];
  }
  return undefined;
};

const LENGTHS: readonly RegExp[] = [
  /\bPCI(?:e|-?E|[ -]Express)[ -]?(?:Gen ?)?(?:[1-6](?:\.0)?(?:\/[1-6](?:\.0)?){0,3})? ?x ?(16|8|4|1)\b/gi,
  /\bx ?(16|8|4|1)(?=[ -](?:slots?|steckpl|connector))/gi,
];
const ADJACENT = /\bPCI(?:e|-?E|[ -]Express)[ -]?(?:Gen ?)?[1-6](?:\.0)? ?x ?(?:16|8|4|1)\b/i;
const GENERATION = /(?:\bPCI(?:e|-?E|[ -]Express)|\bGen)[ -]?(?:Gen ?)?([1-6])(?:\.0)?(?![\d/.])(?! ?\/ ?\d)/gi;
const SEVERAL_GENERATIONS = /\d\.0 ?\/ ?(?:PCIe ?)?\d\.0|gen ?\d ?\/ ?(?:gen ?)?\d/i;

function pcieFacts(text: string, own: Own): Taken[] | undefined {
  const length = LENGTHS.map((words) => onlyOne(text, words)).find((one) => one !== undefined);
  const generation = SEVERAL_GENERATIONS.test(text) ? undefined : onlyOne(text, GENERATION);
  const widths = new Set([...text.matchAll(/\bx ?(16|8|4|2|1)\b/gi)].map(([, lanes]) => lanes));
  const isSplit = /x ?\d{1,2} ?\/ ?x ?\d|x ?\d{1,2} (?:or|oder) x ?\d/i.test(text);
  const lanes = modeIn(text) ?? (widths.size === 1 && (ADJACENT.test(text) || length === '1') ? length : undefined);
  if (length === undefined && (lanes === undefined || generation === undefined)) return undefined;
  return [
    ...(length === undefined ? [] : [own('length', `x${length}`)]),
    ...(widths.size > 2 || isSplit || lanes === undefined ? [] : [own('lanes', lanes)]),
    ...(generation === undefined ? [] : [own('generation', generation)]),
    ...(/open[- ]end|offenes? ende/i.test(text) ? [own('open-ended', 'true')] : []),
  ];
}

const M2_KEY = /\bKEY[ -]?([ABEM])\b|(?<![A-Z])([ABEM])[ -]KEY\b/g;

function m2Facts(text: string, own: Own): Taken[] {
  const sizes = [...new Set([...text.matchAll(/(?<!\d)22(?:30|42|60|80|110)(?!\d)/g)].map(([one]) => one))];
  const keys = new Set([...text.toUpperCase().matchAll(M2_KEY)].map(([, behind, ahead]) => behind ?? ahead));
  const [key] = keys;
  // Source: PCI Express M.2 Specification: four lanes at most.
  if (/\bx ?(?:8|16)\b/i.test(text)) return [];
  const link = linkIn(text.replace(/SATA(?:[^,;)a-z]{0,12}(?:Gb\/s|Gbps)|[^,;)a-z]{0,3}(?:mode|modus))?/gi, ' '));
  const hasSata =
    /\bSATA\b/i.test(text.replace(/SATA ?\d?_?\d?(?: ?[/&] ?\d)*(?= (?:will|is|are|wird|werden))/gi, ' ')) &&
    !/no SATA|kein SATA|nicht SATA|shar|teilt|disabled|deaktiviert|unavailable/i.test(text);
  const isBounded = /up to 22|bis 22|max/i.test(text);
  return [
    ...(keys.size === 1 ? [own('key', key!)] : []),
    ...(sizes.length > 0 && !isBounded ? [own('sizes', sizes)] : []),
    ...(link ? [own('carries', hasSata ? [link, 'SATA'] : [link])] : []),
  ];
}
