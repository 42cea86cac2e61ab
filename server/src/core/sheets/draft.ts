// What a sheet says of one part: facts that are plain, what it may say, where it disagrees with itself, what was left.
import type { Field } from '../parts/field';
import type { Kind } from '../parts/kinds';
import { isBlank, isHedged, isMisread, labelKey, plainLine, withoutMarks } from './clean';
import { chooseColumns, type Line } from './columns';
import { chooseInline } from './inline-variants';
import type { Indexes, Match, Target } from './label-index';
import { Matcher } from './matching';
import { agree } from './agree';
import { displayModes } from './modes';
import { namedByTitle } from './named-by-title';
import { numbered } from './numbered';
import { unrepeated } from './repeats';
import { sharingOf } from './sharing';
import type { Sheet } from './sheet';
import { take } from './take';
import { looseLines, titleLines } from './title-facts';
import { nothing, type Place, type Take, type Taken } from './taken';

/** A fact with the line, or lines, that it was read from. */
export interface Drafted extends Taken {
  /** From 1; absent where what was read has no lines. */
  readonly line?: number;
  /** The sheet’s own words. */
  readonly said: string;
  readonly file?: string;
}

export interface Unread {
  readonly line: number;
  readonly text: string;
  readonly file?: string;
}

export interface Draft {
  readonly kind: Kind;
  readonly title?: string;
  readonly facts: readonly Drafted[];
  readonly perhaps: readonly Drafted[];
  /** Facts of one path whose lines disagree. */
  readonly disagreeing: readonly (readonly Drafted[])[];
  readonly unread: readonly Unread[];
  /** Names of the variants, where the sheet tells several apart and none was chosen. */
  readonly variants: readonly string[];
}

const mostLines = 3000;

/** Drafts facts of a kind of part from a sheet; of several variants, those of the one that is named. */
export function draftFrom(sheet: Sheet, kind: Kind, indexes: Indexes, variant?: string): Draft {
  const whole = wholeOf(sheet);
  const matcher = new Matcher(kind, whole, indexes);
  const columns = chooseColumns(sheet, variant);
  const inline = chooseInline(columns.lines.slice(0, mostLines), matcher, variant);
  const read = unrepeated(
    inline.lines.map((line) => ({ line, ...new LineReader(line, matcher, sheet, whole).read() })),
  );
  const found = numbered(read);
  const sharing = kind === 'board' ? sharingOf(inline.lines, sheet.loose, found) : undefined;
  const all = [
    ...found,
    ...(sharing?.found ?? []),
    ...displayModes(
      kind,
      inline.lines,
      read.flatMap(({ found }) => found),
    ),
  ];
  const { facts, disagreeing } = agree(
    byBestName(all.filter(({ isPlain, fact }) => isPlain && !fact.path[0]!.startsWith('%')).map(({ fact }) => fact)),
  );
  const known = new Set([...facts, ...disagreeing.flat()].map(({ path }) => path.join('.')));
  const perhaps = all
    .filter(({ isPlain, fact }) => !isPlain && !known.has(fact.path.join('.')))
    .map(({ fact }) => fact);
  const isNamed = all.some(({ fact }) => fact.path.join() === 'model');
  const named = isNamed ? [] : namedByTitle(sheet, kind, facts);
  const isAsked = columns.undecided.length > 0 || inline.isUndecided;
  return {
    kind,
    ...(sheet.title === undefined ? {} : { title: sheet.title }),
    facts: withModel([
      ...facts,
      ...(isAsked ? [] : ofTitle(sheet, matcher, whole, [...all.map(({ fact }) => fact)])),
      // Of several variants the maker is one.
      ...named.filter(({ path }) => !isAsked || path.join() === 'maker'),
    ]),
    perhaps: perhaps.filter(({ path }) => !path[0]!.startsWith('%')),
    disagreeing,
    unread: [...read.flatMap(({ unread }) => unread), ...sheet.loose]
      .filter(({ line }) => !sharing?.lines.has(line))
      .toSorted((a, b) => a.line - b.line),
    variants: isAsked ? [...columns.variants, ...inline.variants] : [],
  };
}

const wholeOf = (sheet: Sheet): string =>
  [sheet.title ?? '', ...sheet.rows.map(({ label, heading, cells }) => `${heading} ${label} ${cells.join(' ')}`)]
    .join('\n')
    .slice(0, 100_000)
    .toLowerCase();

export interface Found {
  readonly fact: Drafted;
  readonly isPlain: boolean;
}

const EITHER = /^(?:net|netto)(?: weight)? ?\/ ?(?:gross|brutto) ?(weight|gewicht)?$/i;
const BOTH =
  /^(.{3,30}?) ?[([](?:card|product|net|netto|unit|produkt|karte) ?\/ ?(?:packag|gross|brutto|verpack)\w{0,6}[)\]]$/i;

/** `Product` and the like before a name, without a mark between: they may be its first word. */
const isVague = ({ isLoose, label }: Line): boolean =>
  isLoose && /^(?:product|produkt|make|maker|brand|series|vendor|marke)$/i.test(label);

class LineReader {
  constructor(
    private readonly line: Line,
    private readonly matcher: Matcher,
    private readonly sheet: Sheet,
    private readonly whole: string,
  ) {}

  read(): { readonly found: readonly Found[]; readonly unread: readonly Unread[] } {
    const line = this.ofItself;
    const { text, marks } = withoutMarks(plainLine(line.text));
    if (isBlank(text)) return { found: [], unread: [] };
    if (isMisread(text)) return { found: [], unread: [{ line: line.line, text: this.said }] };
    const match = text.length > 400 ? undefined : this.matcher.match(line);
    const taken = match ? match.targets.map((target) => this.takeFor(target, match, text)) : [];
    const isUnsure =
      line.isUnsure || isVague(line) || (match?.isUnsure ?? false) || this.isNoted(marks + (match?.marks ?? ''));
    const facts = taken.flatMap((one) => one.facts);
    const perhaps = line.isLoose ? [] : taken.flatMap((one) => one.perhaps);
    const found = [
      ...facts.map((fact): Found => ({ fact: this.drafted(fact), isPlain: !isUnsure })),
      ...perhaps.map((fact): Found => ({ fact: this.drafted(fact), isPlain: false })),
    ];
    return { found, unread: found.length > 0 ? [] : [{ line: line.line, text: this.said }] };
  }

  /** The line without what the package has beside it: `Weight (card / package): 980 g / 1450 g`. */
  private get ofItself(): Line {
    const { line } = this;
    const name = EITHER.test(line.label) ? 'Net weight' : BOTH.exec(line.label)?.[1];
    const parts = line.text.split(/ ?\/ /);
    return name !== undefined && parts.length === 2 ? { ...line, label: name, text: parts[0]! } : line;
  }

  private get said(): string {
    const { label, text } = this.line;
    return plainLine(label === '' ? text : `${label}: ${text}`);
  }

  private drafted(taken: Taken): Drafted {
    return { ...taken, line: this.line.line, said: this.said };
  }

  private takeFor({ path, field }: Target, match: Match, text: string): Take {
    const { label, heading } = this.line;
    const place: Place = {
      kind: this.matcher.kind,
      path,
      field: field as Field,
      label,
      heading,
      said: match,
      whole: this.whole,
    };
    const own = take(text, place);
    return own.facts.length > 0 || own.perhaps.length > 0 ? own : this.maybe(text, place);
  }

  /** What stands before brackets or a comma may be the value, and what stands behind takes its plainness away. */
  private maybe(text: string, place: Place): Take {
    const [head = ''] = text.split(/\s?[(,;[]/);
    if (head === text || head.trim() === '' || place.field.type !== 'quantity') return nothing;
    const { facts, perhaps } = take(head.trim(), place);
    return { facts: [], perhaps: [...facts, ...perhaps] };
  }

  /** Whether a mark leads to a note that hedges. */
  private isNoted(marks: string): boolean {
    if (marks === '') return false;
    return [...this.sheet.notes].some(([mark, said]) => marks.includes(mark.replace(')', '')) && isHedged(said));
  }
}

/** What the title alone says: of nothing that some line speaks of. */
function ofTitle(sheet: Sheet, matcher: Matcher, whole: string, said: readonly Drafted[]): readonly Drafted[] {
  const known = new Set(said.map(({ path }) => path.join('.')));
  const read = (lines: readonly Line[]): Drafted[] =>
    lines
      .flatMap((line) => new LineReader(line, matcher, sheet, whole).read().found)
      .filter(({ isPlain, fact }) => isPlain && !known.has(fact.path.join('.')))
      .map(({ fact }) => fact);
  const unlabelled = sheet.rows.flatMap(({ label, cells, line }) =>
    label === '' && cells.length === 1 ? [{ text: cells[0]!, line }] : [],
  );
  const loose = agree(read(looseLines(matcher.kind, [...sheet.loose, ...unlabelled])));
  for (const { path } of [...loose.facts, ...loose.disagreeing.flat()]) known.add(path.join('.'));
  const titled = read(titleLines(matcher.kind, sheet.title)).map(({ path, value }) => ({
    path,
    value,
    said: plainLine(sheet.title!),
  }));
  return [...loose.facts, ...titled];
}

/** Rank of a label of the model’s name, 0 the best: a number stands beside a name, and for it where there is none. */
const rankOf = ({ said }: Drafted): number => {
  const label = said.split(':')[0]!;
  if (/^(?:model|modell)(?: ?name)?$/i.test(label)) return 0;
  return /number|nummer|code|\bn[or]\b/i.test(label) ? 2 : 1;
};

/** Of several lines with a model’s name those of the best label alone. */
function byBestName(facts: readonly Drafted[]): readonly Drafted[] {
  const names = facts.filter(({ path }) => path.join() === 'model');
  const best = Math.min(...names.map(rankOf));
  return names.length < 2 ? facts : facts.filter((fact) => !names.includes(fact) || rankOf(fact) === best);
}

/** A model’s name without the maker’s before it. */
function withModel(facts: readonly Drafted[]): readonly Drafted[] {
  const maker = facts.find(({ path }) => path.join() === 'maker')?.value;
  return facts.map((fact) => {
    if (fact.path.join() !== 'model' || typeof maker !== 'string' || typeof fact.value !== 'string') return fact;
    const rest = fact.value.slice(maker.length).trim();
    return rest !== '' &&
      labelKey(fact.value).startsWith(labelKey(maker)) &&
      fact.value.toLowerCase().startsWith(`${maker.toLowerCase()} `)
      ? { ...fact, value: rest }
      : fact;
  });
}
