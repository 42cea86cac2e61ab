// What checks are written with: places, outcomes, and the fixes they may offer.
import type { Build, Placed } from '../build/build';
import type { Figure } from '../figures/figure';
import type { Measure } from '../figures/measure';
import type { Truth } from '../figures/truth';
import type { Sentence } from '../figures/sentence';
import type { Grade } from '../manifest/house-file';
import type { RoleName } from '../manifest/places';
import type { Doc, SourceLocation } from '../parts/doc';
import type { Fact } from '../parts/fact';
import type { Edit, Span } from '../text';
import { insertEntry, insertTopLevel, removeEntry, setValue, type Entry, type MapNode, type Value } from '../yaml';

/** What an outcome is about, and where it shows. The two need not be the same place. */
export interface Target {
  /**
   * What is judged, in words of the build: `parts.supply`, `bench.strap`. Acceptance, fixes and comparisons go by it,
   * so it never depends on which file states a fact, nor on whether it is stated.
   */
  readonly subject: string;
  /** Where a reader is to look: always in the file that is being judged. */
  readonly underline: SourceLocation;
}

/** A change of text that would clear a finding; it is proven on a copy before anyone is offered it. */
export interface TextFix {
  readonly type: 'text';
  readonly title: string;
  readonly doc: Doc;
  readonly edits: readonly Edit[];
}
/** Another part of the parts folder in this place: the judge looks for the best that clear the finding. */
export interface SwapFix {
  readonly type: 'swap';
  readonly placed: Placed;
}
/** Places for all parts of some roles: the judge looks for those that break least. */
export interface AssignFix {
  readonly type: 'assign';
  readonly roles: readonly RoleName[];
  readonly what: string;
}
export type FixIdea = TextFix | SwapFix | AssignFix;

export interface Outcome extends Target {
  readonly truth: Truth;
  /** The finding’s sentence; asked for only when the check is broken. */
  readonly broken: () => Sentence;
  /** What is known where it cannot be decided, in words better than “may be over the limit”. */
  readonly open?: () => Sentence;
  /** Another grade than the check’s own, where this case is worse or lighter. */
  readonly grade?: Grade;
  readonly caution?: string;
  /** By how much it is broken, where the truth’s own comparison does not tell. */
  readonly measure?: Measure;
  readonly fixes?: () => Iterable<FixIdea | undefined>;
  /**
   * What the trade takes for granted where no file states otherwise, as `the box of … holds a power cord`. The answer
   * stays open and nobody is asked for a fact; `missing` tells it among what is usual.
   */
  readonly usual?: () => string;
}

export type Words = Pick<Outcome, 'broken' | 'open' | 'grade' | 'caution' | 'measure' | 'fixes' | 'usual'>;

/** Takes what a check finds out, outcome by outcome. */
export type Reporter = (outcome: Outcome) => void;

/** The answer of a check about one thing. `truth` says whether it holds. */
export const outcome = (
  { subject, underline }: Target,
  truth: Truth,
  { broken, open, grade, caution, measure, fixes, usual }: Words,
): Outcome => ({
  subject,
  underline,
  truth,
  broken,
  open,
  grade,
  caution,
  measure: measure ?? truth.measure,
  fixes,
  usual,
});

export const target = (subject: string, doc: Doc, span: Span): Target => ({ subject, underline: { doc, span } });

/**
 * A part; `fact` is the one of its facts that is judged. A key that stands with the part, such as its slot, is a
 * subject of its own; a fact of the part file is not, unless `what` names it.
 */
export function at(placed: Placed, fact?: Fact<unknown>, what?: string): Target {
  const own = fact && what === undefined && isOwnKey(placed, fact) ? fact.path : placed.path;
  return { subject: what === undefined ? own : `${placed.path}.${what}`, underline: underlineOf(placed, fact) };
}

const isOwnKey = ({ at: keys }: Placed, fact: Fact<unknown>): boolean =>
  (keys as unknown as Record<string, unknown>)[fact.key] === fact;

/** A fact of a part where the build itself states it, else the part. */
export function underlineOf(placed: Placed, fact?: Fact<unknown>): SourceLocation {
  const { doc } = placed;
  if (fact?.doc === doc && fact.node) return { doc, span: spanOf(fact) };
  return { doc, span: placed.used?.span ?? shortSpan(placed) };
}

/** A single role is pointed at by its key; an item of many lines by its first entry. */
function shortSpan({ map, span }: Placed): Span {
  const first = map?.style === 'block' ? map.entries[0] : undefined;
  return first && span === map!.span ? first.span : span;
}

/** One of several things that a check judges of the same subject. */
export const aspectOf = ({ subject, underline }: Target, name: string): Target => ({
  subject: `${subject}:${name}`,
  underline,
});

/** A fact that is stated. */
export const atFact = (fact: Fact<unknown>, subject = fact.path): Target => target(subject, fact.doc, spanOf(fact));

/**
 * A key of the build outside `parts:`. Where it is absent, the nearest group above it that is stated is underlined,
 * else the build’s name.
 */
export function atKey(build: Build, fact: Fact<unknown>): Target {
  return fact.doc === build.doc && fact.node ? atFact(fact) : atPath(build, fact.path);
}

/** A path: its last key that is stated is underlined, else the build’s name. */
export function atPath(build: Build, path: string, subject = path): Target {
  return target(subject, build.doc, nearestKey(build, path) ?? nameOf(build));
}

/** The key of the nearest stated group above a path; undefined where not even its first word is stated. */
function nearestKey(build: Build, path: string): Span | undefined {
  let node = build.doc.parsed.root;
  let span: Span | undefined;
  for (const key of path.split('.')) {
    const entry: Entry | undefined = node?.type === 'map' ? node.get(key) : undefined;
    if (!entry) return span;
    span = entry.keySpan;
    node = entry.value;
  }
  return span;
}

/** The build as a whole: its name is underlined, or its first line. */
export const atBuild = (build: Build, subject = 'build'): Target => target(subject, build.doc, nameOf(build));

const nameOf = ({ doc, file }: Build): Span => file.build.node?.span ?? doc.lines.lineSpan(0);

/** An empty value has no text of its own to underline: its key stands in. */
function spanOf({ node, entry }: Fact<unknown>): Span {
  const { span } = node!;
  return span.end > span.start || !entry ? span : entry.keySpan;
}

/** Sets a value anywhere in a file by its keys, making the maps that are absent; undefined where that is not safe. */
export function put(doc: Doc, keys: readonly string[], value: Value, title: string): TextFix | undefined {
  const root = doc.parsed.root;
  if (root && root.type !== 'map') return undefined;
  const edits = root ? putIn(doc, root, keys, value) : insertTopLevel(doc.parsed, keys[0]!, nest(keys.slice(1), value));
  return edits && { type: 'text', title, doc, edits };
}

function putIn(doc: Doc, map: MapNode, keys: readonly string[], value: Value): Edit[] | undefined {
  const [key, ...rest] = keys;
  const entry = map.get(key!);
  if (!entry)
    return map === doc.parsed.root
      ? insertTopLevel(doc.parsed, key!, nest(rest, value))
      : insertEntry(doc.parsed, map, key!, nest(rest, value));
  if (rest.length === 0) return setValue(doc.parsed, entry.value, value);
  if (entry.value.type === 'map') return putIn(doc, entry.value, rest, value);
  return entry.value.type === 'scalar' && entry.value.style === 'empty'
    ? setValue(doc.parsed, entry.value, nest(rest, value))
    : undefined;
}

function nest(keys: readonly string[], value: Value): Value {
  return keys.reduceRight<Value>((inner, key) => ({ [key]: inner }), value);
}

/** Sets one of a part’s keys in the build: the part’s own key, or a fact spelled out over the part file’s. */
export function putOn(placed: Placed, key: string, value: Value, title: string): TextFix | undefined {
  if (!placed.map) return undefined;
  const edits = putIn(placed.doc, placed.map, [key], value);
  return edits && { type: 'text', title, doc: placed.doc, edits };
}

/** Sets a stated fact where it is stated. */
export function change(fact: Fact<unknown>, value: Value, title: string): TextFix | undefined {
  const edits = fact.node && setValue(fact.doc.parsed, fact.node, value);
  return edits && { type: 'text', title, doc: fact.doc, edits };
}

/** Takes a stated fact out, key and all. */
export function takeOut(fact: Fact<unknown>, title: string): TextFix | undefined {
  const edits = fact.holder && fact.entry && removeEntry(fact.doc.parsed, fact.holder, fact.key);
  return edits && { type: 'text', title, doc: fact.doc, edits };
}

/** The best places for all parts of these roles; `what` names them in the fix’s title. */
export const assign = (what: string, ...roles: readonly RoleName[]): AssignFix => ({ type: 'assign', roles, what });

/** Another part of the folder in this place. */
export const swap = (placed: Placed): SwapFix => ({ type: 'swap', placed });

/** The words for one, or for any other number. */
export const some = ({ lo, hi }: Figure, one: string, several: string): string =>
  lo === 1 && hi === 1 ? one : several;
