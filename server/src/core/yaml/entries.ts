// A map's entries: keys read as text, keys that stand twice, and merges (`<<`).
import { isAlias, isScalar } from 'yaml';
import type { Pair, Scalar, YAMLMap } from 'yaml';
import { quoted } from '../text/escape';
import type { Span } from '../text/span';
import type { Anchors } from './anchors';
import { lastLineOf } from './faulty-lines';
import type { Entry, Node, Problem } from './nodes';
import { rangeOf, tagName, textOf } from './source';

/** A key as text. `sure` is false where it is anchored, tagged, an alias, or written after `?`. */
export interface Key {
  readonly text: string;
  readonly span: Span;
  readonly sure: boolean;
}

/** An entry whose value is still being read; `key` is undefined where the key is no text. */
export interface Draft {
  readonly key: Key | undefined;
  readonly pair: Pair;
  readonly sure: boolean;
  value: Node | undefined;
}

/** Whether a key asks for a merge: `<<` without quotes. */
export function isMergeKey(key: unknown): boolean {
  return isScalar(key) && key.source === '<<' && key.type === 'PLAIN';
}

/** The keys that stand more than once. */
export function repeatedKeys(map: YAMLMap): Set<unknown> {
  const seen = new Set<unknown>();
  const twice = new Set<unknown>();
  for (const { key } of map.items) {
    if (!isScalar(key) || isMergeKey(key)) continue;
    const text = key.source ?? '';
    if (seen.has(text)) twice.add(text);
    seen.add(text);
  }
  return twice;
}

/**
 * The key below lines that lack their colon, which the library took for its beginning: a name of a block map stands on
 * one line, but behind `?`. Undefined where there are none.
 */
export function keyBelowFault(key: unknown, text: string): Key | undefined {
  if (!isScalar(key) || key.type !== 'PLAIN' || key.tag || key.anchor) return undefined;
  const span = rangeOf(key, text);
  const last = lastLineOf(span, text);
  return !last || followsQuestionMark(text, span.start)
    ? undefined
    : { text: text.slice(last.start, last.end), span: last, sure: false };
}

/** Reads a key; undefined, with a problem, where it is a map or a list. */
export function readKey(key: unknown, text: string, anchors: Anchors, problems: Problem[]): Key | undefined {
  const span = rangeOf(key, text);
  if (isScalar(key)) return scalarKey(key, span, text, anchors, problems);
  if (isAlias(key)) {
    const target = anchors.resolve(key.source, span, 0);
    if (target?.type === 'scalar') {
      problems.push({
        code: 'alias-or-merge-used',
        message:
          `The name is given by the alias ${quoted(key.source)}; Fettle reads it, but makes no fixes here, ` +
          'so write the name out.',
        span,
      });
      return { text: target.text, span, sure: false };
    }
  }
  problems.push({
    code: 'key-not-text',
    message: 'A map or a list stands here where a name should; write a name before the colon.',
    span,
  });
  return undefined;
}

function scalarKey(key: Scalar, span: Span, text: string, anchors: Anchors, problems: Problem[]): Key | undefined {
  const name = textOf(key, span, text);
  const missing = span.start === span.end;
  const colon = missing ? span.start + text.slice(span.start).search(/\S|$/) : span.end;
  // The library makes a nameless entry of what it could not place; that is already reported.
  if (missing && text[colon] !== ':') return undefined;
  if (missing)
    problems.push({
      code: 'key-not-text',
      message: 'A name is missing before the colon; write one.',
      span: { start: colon, end: colon + 1 },
    });
  if (key.tag)
    problems.push({
      code: 'tag-used',
      message: `The tag ${quoted(tagName(key.tag))} has no meaning on a name; take the tag out.`,
      span,
    });
  if (key.anchor) {
    anchors.close(key.anchor, { type: 'scalar', text: name, style: 'plain', span, fixable: false });
  }
  const sure = !key.anchor && !key.tag && !missing && !followsQuestionMark(text, span.start);
  return { text: name, span, sure };
}

function followsQuestionMark(text: string, offset: number): boolean {
  let at = offset - 1;
  while (at >= 0 && (text[at] === ' ' || text[at] === '\t' || text[at] === '\n' || text[at] === '\r')) at--;
  return text[at] === '?' && at < offset - 1;
}

/** The entries of a map in order, merged ones last; written ones win over merged ones. */
export function entriesOf(
  drafts: readonly Draft[],
  problems: Problem[],
  isBroken: (span: Span) => boolean,
): { entries: Entry[]; merges: boolean } {
  const entries: Entry[] = [];
  const seen = new Set<string>();
  const merges: Draft[] = [];
  for (const draft of drafts) {
    if (isMergeKey(draft.pair.key)) merges.push(draft);
    else if (draft.key) entries.push(entryOf(draft, draft.key, seen, problems, isBroken));
  }
  for (const draft of merges) merge(draft, entries, seen, problems);
  return { entries, merges: merges.length > 0 };
}

function entryOf(
  draft: Draft,
  key: Key,
  seen: Set<string>,
  problems: Problem[],
  isBroken: (span: Span) => boolean,
): Entry {
  const value = draft.value!;
  const span = { start: key.span.start, end: Math.max(key.span.end, value.span.end) };
  const fixable =
    draft.sure && value.fixable && !isBroken({ start: span.start, end: Math.max(key.span.end, value.span.start) });
  const entry: Entry = { key: key.text, keySpan: key.span, value, span, fixable };
  if (!seen.has(key.text)) {
    seen.add(key.text);
    return entry;
  }
  problems.push({
    code: 'key-twice',
    message: `${quoted(key.text)} stands twice in this map and only the first is read; take one of them out.`,
    span: key.span,
  });
  return { ...entry, repeated: true };
}

function merge(draft: Draft, entries: Entry[], seen: Set<string>, problems: Problem[]): void {
  const span = draft.key!.span;
  const value = draft.value!;
  const sources = value.type === 'list' ? value.items : [value];
  const usable = sources.every((source) => source.type === 'map');
  const message = usable
    ? 'Fettle reads what << merges in, but makes no fixes in this map; write the entries out to have them.'
    : 'What << merges in is not a map, so nothing is merged; write the entries out.';
  problems.push({ code: 'alias-or-merge-used', message, span });
  for (const source of sources) {
    if (source.type !== 'map') continue;
    for (const entry of source.entries) {
      if (seen.has(entry.key)) continue;
      seen.add(entry.key);
      entries.push({ ...entry, fixable: false, merged: true });
    }
  }
}
