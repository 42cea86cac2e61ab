// What a board's sheet says of things that cannot be used at once: `SATA_4 will be disabled when M2_3 is populated`.
import type { Line } from './columns';
import { plainLine } from './clean';
import type { Found } from './draft';
import type { LooseLine } from './sheet';

/** Names as they are printed, by their letters and figures alone. */
type Names = ReadonlyMap<string, string>;

interface Said {
  readonly line: number;
  readonly text: string;
  /** The slot that the line itself is of. */
  readonly owner?: string;
}

interface Claim {
  readonly slot: string;
  readonly key: 'takes-from' | 'halves';
  readonly others: readonly string[];
  readonly isPlain: boolean;
  readonly said: Said;
}

const OFF =
  /disabled|(?:un|not (?:be )?)available|deaktiviert|abgeschaltet|nicht (?:verfügbar|nutzbar)|entf(?:ällt|allen)/i;
const WHEN = /\b(?:when|if|once|while|as soon as|wenn|sobald|falls|bei|wird(?=.{1,40}(?:belegt|genutzt)))\b/i;
const IN_USE = /populated|occupied|in use|installed|installing|used|fitted|belegt|genutzt|bestückt|belegung/i;
/** A condition on what stands in the slot: another drive there takes nothing. */
const OF_A_KIND = /\b(?:SATA|NVMe|PCI-?E)[ -]?(?:based|type|mod(?:e|us)|ssd|device|drive|M\.?2)|\bx[1-8]\b/i;
const HALVED = /(?:runs?|running|operat\w{1,4}|works?|reduced|limited|drops?|läuft|laufen)\b.{0,30}\bx ?8\b/i;
const SHARED = /\bshar(?:es?|ed|ing)\b|\bteil(?:t|en)\b|\bgeteilt\b/i;

const keyOf = (name: string): string => name.replace(/[^A-Za-z0-9]/g, '').toUpperCase();

/** `SATA 5/6`, `SATA ports 3 and 4`, `SATA_3~6`: each by its own name. */
const spread = (text: string): string =>
  text
    .replace(/\b(S?ATA\w{0,3}?)[ _]?(?:ports? |connectors? |anschl\w{1,5} )?(?=\d{1,2}(?!\w))/gi, '$1_')
    .replace(
      /\b(S?ATA\w{0,3}?_)(\d{1,2})((?: ?(?:[/&,]|and|und|or|oder) ?(?:S?ATA\w{0,3}?_)?\d{1,2}(?!\w)){1,7})/gi,
      (_all, stem: string, first: string, rest: string) =>
        [first, ...[...rest.matchAll(/(\d{1,2})(?!\w)/g)].map(([one]) => one)].map((one) => `${stem}${one}`).join(' '),
    )
    .replace(
      /\b(S?ATA\w{0,3}?_)(\d{1,2}) ?[~–-] ?(?:S?ATA\w{0,3}?_)?(\d{1,2})(?!\w)/gi,
      (_all, stem: string, first: string, last: string) =>
        Array.from({ length: Math.max(0, Number(last) - Number(first)) + 1 }, (_, at) => `${stem}${Number(first) + at}`)
          .slice(0, 16)
          .join(' '),
    );

const LIKE_A_NAME = /(?<![\w.])(?:M\.?2|PCI|S?ATA)[A-Za-z0-9._]{0,12}(?![\w])/g;

/** The names of slots and ports that a text has; undefined where it has one more that the board has not. */
function namesIn(text: string, names: Names): string[] | undefined {
  const found: string[] = [];
  for (const [one] of text.matchAll(LIKE_A_NAME)) {
    const name = names.get(keyOf(one));
    if (name !== undefined) found.push(name);
    else if (/\d$/.test(one) && !/^(?:M\.?2|SATA[123]|PCIe? ?[1-6](?:\.0)?)$/i.test(one)) return undefined;
  }
  return [...new Set(found)];
}

/** Main clause and condition of a sentence, whichever comes first. */
function clausesOf(sentence: string): readonly [main: string, condition: string] | undefined {
  const at = WHEN.exec(sentence);
  if (!at) return undefined;
  const before = sentence.slice(0, at.index);
  if (/\d/.test(before)) return [before, sentence.slice(at.index)];
  const comma = sentence.indexOf(',', at.index);
  return comma < 0 ? undefined : [sentence.slice(comma), sentence.slice(at.index, comma)];
}

function claimIn(sentence: string, said: Said, slots: Names, all: Names, lanes: Names): Claim | undefined {
  const clauses = clausesOf(sentence);
  if (!clauses) return undefined;
  const [main, condition] = clauses;
  const key = OFF.test(main) ? 'takes-from' : HALVED.test(main) ? 'halves' : undefined;
  if (key === undefined || !IN_USE.test(condition)) return undefined;
  const filled = namesIn(condition, all);
  const others = namesIn(main, all);
  if (!filled || !others || filled.length > 1) return undefined;
  const slot = filled[0] ?? said.owner;
  const rest = others.filter((one) => one !== slot);
  if (slot === undefined || !slots.has(keyOf(slot)) || rest.length === 0) return undefined;
  const isWhole = key === 'takes-from' || rest.every((one) => lanes.get(one) === '16');
  return { slot, key, others: rest, isPlain: isWhole && !OF_A_KIND.test(condition), said };
}

/** `M2_2 shares bandwidth with SATA_5`: which of them is off, and when, is not said. */
function sharedIn(sentence: string, said: Said, slots: Names, all: Names): Claim | undefined {
  if (!SHARED.test(sentence)) return undefined;
  const found = namesIn(sentence, all);
  const slot = found?.find((one) => slots.has(keyOf(one))) ?? said.owner;
  const others = found?.filter((one) => one !== slot) ?? [];
  if (slot === undefined || others.length === 0) return undefined;
  return { slot, key: 'takes-from', others, isPlain: false, said };
}

export interface Sharing {
  readonly found: readonly Found[];
  /** Lines that it was read from. */
  readonly lines: ReadonlySet<number>;
}

/** What is off, or has half its lanes, while a slot is filled; what shares with it, and hangs on more, is doubtful. */
export function sharingOf(lines: readonly Line[], loose: readonly LooseLine[], found: readonly Found[]): Sharing {
  const of = (root: string): string[] => [
    ...new Set(found.flatMap(({ fact: { path } }) => (path[0] === root ? [path[1]!] : []))),
  ];
  const slots = new Map(of('slots').map((name) => [keyOf(name), name]));
  const all: Names = new Map([...of('ports').map((name): [string, string] => [keyOf(name), name]), ...slots]);
  if (slots.size === 0) return { found: [], lines: new Set() };
  const lanes = new Map(
    found.flatMap(({ fact: { path, value } }) =>
      path[0] === 'slots' && path[2] === 'lanes' ? [[path[1]!, String(value)] as const] : [],
    ),
  );
  const texts = [...lines.map(({ label, text, line }) => ({ text: `${label}: ${text}`, line })), ...loose]
    .filter(({ text }) => OFF.test(text) || SHARED.test(text) || HALVED.test(text))
    .map(({ text, line }): Said => {
      const [owner] = namesIn(spread(plainLine(text)).split(':')[0]!, slots) ?? [];
      return { text: plainLine(text), line, ...(owner === undefined ? {} : { owner }) };
    });
  const claims = texts.flatMap((said) =>
    spread(said.text)
      .split(/(?<=[\w)])\. |[;•]/)
      .flatMap((sentence) => {
        const claim = claimIn(sentence, said, slots, all, lanes) ?? sharedIn(sentence, said, slots, all);
        return claim ? [claim] : [];
      }),
  );
  return { found: factsOf(claims), lines: new Set(claims.map(({ said }) => said.line)) };
}

/** Claims of one slot put together; one that is plain goes before those in doubt. */
function factsOf(claims: readonly Claim[]): Found[] {
  const keys = new Set(claims.map(({ slot, key }) => `${slot} ${key}`));
  return [...keys].flatMap((at) => {
    const own = claims.filter(({ slot, key }) => `${slot} ${key}` === at);
    const isPlain = own.some((claim) => claim.isPlain);
    const kept = own.filter((claim) => claim.isPlain === isPlain);
    const [{ slot, key, said }] = kept as [Claim, ...Claim[]];
    const value = [...new Set(kept.flatMap(({ others }) => others))];
    return [{ fact: { path: ['slots', slot, key], value, line: said.line, said: said.text }, isPlain }];
  });
}
