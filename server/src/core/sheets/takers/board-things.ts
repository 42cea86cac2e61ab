// What a board’s sheet counts: `2 x M.2 connectors (M2A, M2B)`, `4x SATA`: how many, words, names.

export type BoardThing = 'slots' | 'ports' | 'headers' | 'power-connectors' | 'display-outputs' | 'flashback';

export interface Counted {
  readonly what: BoardThing;
  readonly count: number;
  readonly text: string;
  /** Names that are printed on the board, as many as there are things; empty where none are said. */
  readonly names: readonly string[];
}

const COUNT = /^(\d{1,2}) ?(?:[x×*] ?(?!\dR)(?=[\p{L}\d(+])|(?=M\.2|SATA|PCIe|HDMI)|(?:mal|pcs|Stück) )/iu;
const COUNT_BEHIND =
  /^(.{3,120}?(?:slots?|ports?|headers?|connectors?|sockets?|anschlüsse|steckplätze|SATA)) ?[x×*:] ?(\d{1,2})$/i;
const mostOfAKind = 16;

/** The words of a line in order, where its label is itself a count and no label: `1 x PCIe slot: runs at x4`. */
export const countFirst = (label: string, value: string): string => {
  if (COUNT.test(label)) return `${label}: ${value}`;
  const alone = /\bM\.?2\b/i.test(label) ? /^(\d{1,2})(?= ?\(|$)/.exec(value)?.[1] : undefined;
  return alone === undefined ? value : `${alone} x ${label} ${value.slice(alone.length)}`;
};

export const isCounted = (text: string): boolean => COUNT.test(text);

/** Things of a line that are counted; those of a heading’s list are read without it. */
export function thingsIn(label: string, value: string, heading: string): readonly Counted[] {
  const above = COUNT.test(label) ? heading : `${heading} ${label}`;
  if (NOT_OF_IT.test(above) || IN_ALL.test(value)) return [];
  return clausesOf(countFirst(label, value)).flatMap((clause) => {
    const found = countedIn(clause);
    return found ? eachOf(found).flatMap((one) => thingOf(one, above, COUNT.test(label) ? '' : label)) : [];
  });
}

interface Clause {
  readonly count: number;
  readonly text: string;
}

/** A thing by its own words, else with those of its label: `Fan headers: 1x CPU`. */
function thingOf(one: Clause, above: string, label: string): Counted[] {
  const own = whatIs(one.text, above);
  const text = own ? one.text : `${one.text} ${label}`;
  const what = own ?? whatIs(text, above);
  return what ? [{ ...one, text, what, names: namesFor(one) }] : [];
}

/** `2 x M.2 (1x PCIe 5.0 x4, 1x PCIe 4.0 x4)`: each with its own words where the numbers add up; else without any. */
function eachOf(clause: Clause): readonly Clause[] {
  const [whole, inner] = /\(([^()]{0,120}\d ?[x×] ?(?:PCIe|M\.2|x|gen)[^()]{0,120})\)/i.exec(clause.text) ?? [];
  if (whole === undefined || inner === undefined || !COUNT.test(inner)) return [clause];
  const outer = clause.text.replace(whole, ' ').trim();
  const items = inner.split(/\s?[,;+]\s?|\s(?:and|und|&)\s/).map(countedIn);
  const total = items.reduce((sum, item) => sum + (item?.count ?? Number.NaN), 0);
  if (total !== clause.count) return [{ count: clause.count, text: outer }];
  return items.map((item) => ({ count: item!.count, text: `${outer} ${item!.text}` }));
}

const NOT_OF_IT = /accessor|zubehör|lieferumfang|bundle|contents|package|cables|kabel/i;

/** A sentence on what is off while another is filled. */
export const isOfSharing = (text: string): boolean =>
  /disabled|unavailable|not available|shar(?:es?|ed|ing)\b|occupied|deaktiviert|teilt|geteilt|nicht verfügbar/i.test(
    text,
  );

/** What sums up the lines below it. */
const IN_ALL = /\b(?:in total|totals?|insgesamt|up to|bis zu) (?:\w{2,10} )?(?:of )?\d/i;

/** A note below its list begins with the mark that leads to it: what it says is of no thing alone. */
const withoutNotes = (text: string): string =>
  text
    .split(/(?:^|[,;\n]) ?(?=\*{1,3} ?\p{L})/u)
    .filter((one, i) => i === 0 || !/^\*/.test(one))
    .join('');

const clausesOf = (text: string): string[] =>
  closed(
    withoutNotes(text).split(
      /\s?[;•\n]\s?|,\s?(?=\d{1,2} ?[x×] ?[\p{L}\d])|\s(?:\+|and|und|&)\s(?=\d{1,2} ?[x×] ?\p{L})/u,
    ),
  ).map((one) => one.trim());

/** Pieces of brackets put together again. */
export function closed(pieces: readonly string[]): string[] {
  const whole: string[] = [];
  let isOpen = false;
  for (const piece of pieces) {
    if (isOpen) whole.push(`${whole.pop()!}, ${piece}`);
    else whole.push(piece);
    const last = whole.at(-1)!;
    isOpen = last.lastIndexOf('(') > last.lastIndexOf(')');
  }
  return whole;
}

function countedIn(clause: string): Clause | undefined {
  const text = clause.trim();
  const ahead = COUNT.exec(text);
  const [, words, behind] = ahead ? [] : (COUNT_BEHIND.exec(text) ?? []);
  const count = Number(ahead?.[1] ?? behind);
  if (!(count >= 1 && count <= mostOfAKind)) return undefined;
  const rest = ahead ? text.slice(ahead[0].length) : words!;
  return COUNT.test(rest) ? undefined : { count, text: rest };
}

const NO_THING =
  /cable|kabel|adapter|bracket|riser|heatsink|kühlkörper|screw|schraube|thermal|included module|antenn|sticker/i;
const KINDS: readonly (readonly [BoardThing, RegExp])[] = [
  ['headers', /\b(?:A?RGB|LED)[ -]?(?:header|connector|strip|stiftleiste|anschluss)/i],
  [
    'power-connectors',
    /\d[ -]?(?:pin|pol).{0,30}(?:ATX|EPS|12 ?V|power|strom)|(?:ATX|EPS|12 ?V|power).{0,30}\d[ -]?(?:pin|pol)/i,
  ],
  [
    'headers',
    /\b(?:fans?|pump|headers?|stiftleisten?|AAFP|front panel|painel frontal)\b|lüfter|pumpe|[A-Z]_FAN|_PUMP/i,
  ],
  ['flashback', /flash ?back|flash (?:bios )?(?:\w{1,8} )?button|(?:bios|firmware)[- ](?:flash|update)[- ]button/i],
  ['slots', /\bM\.?2\b|\bM2[A-Z_]|\bPCI(?:e|-?E|[ -]Express)\b(?=.{0,80}x ?\d)/i],
  ['ports', /\bS-?ATA\b|serial ata/i],
  ['display-outputs', /\bHDMI\b|display ?port|\bDP\b|\bDVI\b|\bVGA\b|d-sub/i],
];
const OUTSIDE = /rear|back|extern|outside|rückseit|hinten/i;
const INSIDE = /internal|intern[ao]?s?\b|header|onboard i\/o|front/i;

function whatIs(text: string, above: string): BoardThing | undefined {
  if (NO_THING.test(text)) return undefined;
  const found = KINDS.find(([, words]) => words.test(text))?.[0];
  if (found === 'headers') return OUTSIDE.test(above) && !INSIDE.test(text) ? undefined : found;
  if (found === undefined && INSIDE.test(above) && !OUTSIDE.test(above))
    return /\bUSB|[aá]udio|A?RGB|panel|painel/i.test(text) && !/\bports?\b/i.test(text.replace(/\([^()]{0,30}\)/g, ' '))
      ? 'headers'
      : undefined;
  return found;
}

const NAME = /^[A-Z][A-Z0-9._+-]{1,15}$/;
const NO_NAMES: readonly RegExp[] = [
  /^(?:PCIE?|PCI-E|M\.?2|SATA|SATA3|CPU|DDR\d|DIMM|USB|NVME|SSD|PCH|WIFI|ATX|EPS|GEN\d|RAID|PWM|DC)$/i,
  /^(?:HDMI|VGA|DVI|A?RGB|X\d{1,2}|\d{3,})$/i,
];

/** Names of headers without figures: `AAFP`, `JFP`, `JAUD`. */
const HEADER_ALONE = /^(?:AAFP|J[A-Z]{2,8})$/;

/** Names in brackets, or a row of them: `(PCIEX16)`, `(M2A_CPU, M2B_SB)`, `(SATA6G_1~4)`. */
function namesFor({ count, text }: Clause): string[] {
  for (const [, inner] of text.matchAll(/[([]([^()[\]]{2,80})[)\]]/g)) {
    const names = inner!.split(/\s?[,/&]\s?|\s(?:and|und)\s/).flatMap(rowOf);
    const areNames = names.every(
      (one) =>
        NAME.test(one) && (/[\d_]/.test(one) || HEADER_ALONE.test(one)) && !NO_NAMES.some((words) => words.test(one)),
    );
    if (areNames && names.length === count && new Set(names).size === count) return names;
  }
  return [];
}

function rowOf(text: string): string[] {
  const [, stem, first, last] =
    /^([A-Z][A-Z0-9_]{1,9}?[A-Z_])(\d{1,2}) ?[~–-] ?(?:\1)?(\d{1,2})$/.exec(text.trim()) ?? [];
  const [from, to] = [Number(first), Number(last)];
  if (stem === undefined || !(to > from) || to - from >= mostOfAKind) return [text.trim()];
  return Array.from({ length: to - from + 1 }, (_, index) => `${stem}${from + index}`);
}

/** A name that stands for the number which a thing without one gets in the order of the sheet. */
export const unnamed = (stem: string, mark: string): string => `${stem}#${mark}`;

/** The names of a clause’s things: those printed, else places for numbers. */
export const namesOf = ({ names, count, text }: Counted, stem: string): readonly string[] =>
  names.length > 0 ? names : Array.from({ length: count }, (_, index) => unnamed(stem, `${index + 1} ${text}`));
