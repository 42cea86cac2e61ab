// Keys for facts that no file states, put in where they belong with nothing behind them, to be filled in.
import type { Build } from '../build/build';
import { meaningOf, pathOf } from '../build/field-at';
import type { Missing } from '../figures/figure';
import { Doc } from '../parts/doc';
import type { Gap } from '../parts/fact';
import type { Field } from '../parts/field';
import { applyEdits, type Edit } from '../text';
import { insertEntry, setValue, type MapNode, type Value } from '../yaml';
import type { Finding, Judgement } from './finding';
import { judgeBuild, judgeFile } from './judge';
import { withDoc } from './prove';

/** A change that puts a key in; what waits for its fact waits on until someone fills it in. */
export interface FillIn {
  readonly lack: Missing;
  readonly title: string;
  readonly doc: Doc;
  readonly edits: readonly Edit[];
  /** The build with the key put in. */
  readonly after: Judged;
}

export interface Judged {
  readonly build: Build;
  readonly judgement: Judgement;
}

/**
 * The change that puts the key of a missing fact into the file it belongs to. Undefined where that is not safe, where
 * another name is missing rather than a key, and where the key would change any answer before it is filled in.
 */
export function fillIn(before: Judged, lack: Missing): FillIn | undefined {
  const spot = spotOf(lack);
  const edits = spot && editsAt(lack, spot);
  if (!edits || edits.length === 0) return undefined;
  const changed = new Doc(lack.doc.name, lack.doc.kind, applyEdits(lack.doc.text, edits));
  const after = asUnknownAsBefore(before, lack, changed);
  return after && { lack, title: titleOf(lack, spot), doc: lack.doc, edits, after };
}

/** The map that stands nearest to the fact, and the keys from there down to it. */
interface Spot {
  readonly map: MapNode;
  readonly keys: readonly string[];
}

function spotOf({ fact, path }: Missing): Spot | undefined {
  // Where the paths differ, what is missing is a name that only the part itself can have.
  if (!fact || fact.entry || fact.path !== path) return undefined;
  const keys = [fact.key];
  let gap: Gap | undefined = fact.holder ? { map: fact.holder } : fact.gap;
  for (; gap && !gap.map; gap = gap.parent) if (gap.key !== undefined) keys.unshift(gap.key);
  return gap?.map && { map: gap.map, keys };
}

function editsAt({ doc, fact }: Missing, { map, keys }: Spot): readonly Edit[] | undefined {
  const [key, ...below] = keys as [string, ...string[]];
  const value = below.reduceRight<Value>((inner, name) => ({ [name]: inner }), null);
  const there = map.get(key);
  if (there)
    return there.value.type === 'scalar' && there.value.style === 'empty'
      ? setValue(doc.parsed, there.value, value)
      : undefined;
  const after = keyBefore(doc, map, key);
  const comment = map.style === 'block' ? commentOf(fact!.field) : undefined;
  return insertEntry(doc.parsed, map, key, value, {
    ...(after === undefined ? {} : { after }),
    ...(comment ? { comment } : {}),
  });
}

/** The stated key after which a key usually stands, by the order in which the fields are described. */
function keyBefore(doc: Doc, map: MapNode, key: string): string | undefined {
  const path = pathOf(doc, map);
  const known = Object.keys((path && meaningOf(doc, path)?.table) ?? {});
  return known.slice(0, Math.max(known.indexOf(key), 0)).findLast((name) => map.get(name));
}

const longestComment = 72;

/** Where such a fact is usually found, or what it is. */
function commentOf({ printed, what }: Field): string {
  const words =
    printed === undefined ? what : `Usually stated by ${printed.charAt(0).toLowerCase()}${printed.slice(1)}`;
  const [first = ''] = words.split(/[.;](?:\s|$)/);
  return first.length <= longestComment ? first : `${first.slice(0, first.lastIndexOf(' ', longestComment))} …`;
}

function titleOf({ doc, path }: Missing, { keys }: Spot): string {
  const key = keys.join('.');
  const holder = path.slice(0, -key.length - 1);
  return `Add \`${key}:\` to ${holder === '' ? '' : `${holder} in `}${doc.name}, to be filled in`;
}

/** What comes of the key put in, where it decides nothing, brings nothing and leaves the fact missing. */
function asUnknownAsBefore(
  { build, judgement: { findings } }: Judged,
  { doc, path }: Missing,
  changed: Doc,
): Judged | undefined {
  if (changed.parsed.problems.length > doc.parsed.problems.length) return undefined;
  if (doc.kind === 'part' && !isNoBetterKnown(judgeFile(doc).findings, judgeFile(changed).findings)) return undefined;
  const whole = withDoc(build, doc, changed);
  const judgement = judgeBuild(whole);
  const isMissing = judgement.findings.some(({ missing }) =>
    missing.some((lack) => lack.doc.name === doc.name && lack.path === path),
  );
  return isMissing && isNoBetterKnown(findings, judgement.findings) ? { build: whole, judgement } : undefined;
}

/** Whether the same is found, apart from more that is unknown. What is found may stand at the new key now. */
function isNoBetterKnown(before: readonly Finding[], after: readonly Finding[]): boolean {
  const then = countsOf(before);
  const now = countsOf(after);
  return [...new Set([...then.keys(), ...now.keys()])].every((key) => {
    const [was, is] = [then.get(key) ?? 0, now.get(key) ?? 0];
    return was === is || (is > was && key.startsWith('unknown '));
  });
}

function countsOf(findings: readonly Finding[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { id, grade } of findings) counts.set(`${grade} ${id}`, (counts.get(`${grade} ${id}`) ?? 0) + 1);
  return counts;
}
