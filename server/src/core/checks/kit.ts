// What checks are written with: places, outcomes, and the fixes they may offer.
import type { Build, Placed } from '../build/build';
import type { Truth } from '../figures/truth';
import type { Sentence } from '../figures/sentence';
import type { Grade } from '../manifest/house-file';
import type { RoleName } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { Fact } from '../parts/fact';
import type { Edit, Span } from '../text';
import { insertEntry, insertTopLevel, removeEntry, setValue, type Entry, type MapNode, type Value } from '../yaml';

/** Where a finding stands: always in the file that is being judged. */
export interface SourceLocation {
  readonly doc: Doc;
  readonly span: Span;
  /** The place in words of the file: `parts.supply`, `bench.strap`. */
  readonly path: string;
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

export interface Outcome {
  readonly place: SourceLocation;
  readonly truth: Truth;
  /** The finding’s sentence; asked for only when the check is broken. */
  readonly broken: () => Sentence;
  /** Another grade than the check’s own, where this case is worse or lighter. */
  readonly grade?: Grade;
  readonly caution?: string;
  readonly fixes?: () => Iterable<FixIdea | undefined>;
}

type Words = Pick<Outcome, 'broken' | 'grade' | 'caution' | 'fixes'>;

/** Takes what a check finds out, outcome by outcome. */
export type Reporter = (outcome: Outcome) => void;

/** The answer of a check at one place. `truth` says whether it holds. */
export const outcome = (place: SourceLocation, truth: Truth, { broken, grade, caution, fixes }: Words): Outcome => ({
  place,
  truth,
  broken,
  grade,
  caution,
  fixes,
});

/** The place of a part, or of one of its keys where the build itself states that key. */
export function at(placed: Placed, fact?: Fact<unknown>): SourceLocation {
  if (fact?.doc === placed.doc && fact.node)
    return { doc: placed.doc, span: nonEmptySpan(fact.node.span, fact.entry?.keySpan), path: fact.path };
  return { doc: placed.doc, span: placed.used?.span ?? shortSpan(placed), path: placed.path };
}

/** A single role is pointed at by its key; an item of many lines by its first entry. */
function shortSpan({ map, span }: Placed): Span {
  const first = map?.style === 'block' ? map.entries[0] : undefined;
  return first && span === map!.span ? first.span : span;
}

/**
 * The place of a key of the build outside `parts:`; where it is absent, the nearest group above it that is stated,
 * else the build’s name.
 */
export function atKey(build: Build, fact: Fact<unknown>): SourceLocation {
  if (fact.doc === build.doc && fact.node)
    return { doc: build.doc, span: nonEmptySpan(fact.node.span, fact.entry?.keySpan), path: fact.path };
  return atPath(build, fact.path);
}

/**
 * The place of a path: its last key that is stated, else the build’s name. `path` stays whole, whatever is stated of
 * it.
 */
export function atPath(build: Build, path: string): SourceLocation {
  return { doc: build.doc, span: nearestKey(build, path) ?? atBuild(build).span, path };
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

/** The build as a whole: its name, or its first line. */
export function atBuild(build: Build): SourceLocation {
  const name = build.file.build;
  if (name.node) return { doc: build.doc, span: name.node.span, path: 'build' };
  return { doc: build.doc, span: build.doc.lines.lineSpan(0), path: 'build' };
}

/** An empty value has no text of its own to underline: its key stands in. */
function nonEmptySpan(span: Span, keySpan: Span | undefined): Span {
  return span.end > span.start || !keySpan ? span : keySpan;
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
