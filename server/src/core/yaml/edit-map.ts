// Edits to maps: entries put in, taken out, renamed.
import type { Edit } from '../text/edit';
import { isSame, setValue } from './edit-value';
import {
  beginsLine,
  canLoseLinesAfter,
  columnAt,
  indentStep,
  isBrokenAt,
  isWhollyFixable,
  lineAfter,
  lineEnd,
  lineStartAt,
} from './layout';
import { spanOfLines } from './lines';
import type { Entry, MapNode, Parsed } from './nodes';
import { isPrintable, printEntry, printFlow, printScalar } from './print';
import type { Value } from './print';

export interface InsertOptions {
  /** The key to stand before or after; where it is missing, the new entry comes last. */
  readonly before?: string;
  readonly after?: string;
  /**
   * A comment on the entry's first line, or on that of an only value to be filled in; without its `#`. A flow map has
   * no place for one.
   */
  readonly comment?: string;
}

/**
 * Adds an entry: in a block on a line of its own with its siblings' indentation, in flow inside the
 * braces. No edits where the map has it already; undefined where it has the key with another value,
 * or where the edit would not be safe.
 */
export function insertEntry(
  doc: Parsed,
  map: MapNode,
  key: string,
  value: Value,
  opts: InsertOptions = {},
): Edit[] | undefined {
  const there = map.get(key);
  if (there) return isSame(there.value, value) ? [] : undefined;
  if (!map.fixable || !isPrintable(value) || /[\0-\x1f\x7f]/.test(opts.comment ?? '')) return undefined;
  return map.style === 'flow' ? insertInFlow(doc, map, key, value, opts) : insertInBlock(doc, map, key, value, opts);
}

function insertInFlow(doc: Parsed, map: MapNode, key: string, value: Value, opts: InsertOptions): Edit[] | undefined {
  const { text } = doc;
  if (text[map.span.start] !== '{' || text[map.span.end - 1] !== '}' || opts.comment) return undefined;
  const printed = `${printScalar(key)}: ${printFlow(value)}`.trimEnd();
  const before = opts.before === undefined ? undefined : map.get(opts.before);
  if (before)
    return before.fixable && !isBrokenAt(doc, before.span) ? [insertion(before.span.start, `${printed}, `)] : undefined;
  const after = (opts.after === undefined ? undefined : map.get(opts.after)) ?? map.entries.at(-1);
  if (after) return isWritten(doc, after) ? [insertion(after.span.end, `, ${printed}`)] : undefined;
  const inside = { start: map.span.start + 1, end: map.span.end - 1 };
  return text.slice(inside.start, inside.end).trim() === '' && !isBrokenAt(doc, map.span)
    ? [{ span: inside, text: ` ${printed} ` }]
    : undefined;
}

/** Whether an entry has a colon of its own and can be read. */
function isWritten(doc: Parsed, entry: Entry): boolean {
  return !isBrokenAt(doc, entry.span) && (entry.value.style !== 'empty' || entry.value.span.start > entry.keySpan.end);
}

function insertInBlock(doc: Parsed, map: MapNode, key: string, value: Value, opts: InsertOptions): Edit[] | undefined {
  const { text } = doc;
  const first = map.entries[0];
  // A tag, an anchor or a question mark before the first key hides the map's column.
  if (!first || !/^[ -]*$/.test(text.slice(lineStartAt(text, first.keySpan.start), first.keySpan.start)))
    return undefined;
  const place = neighbours(map, opts);
  const column = columnAt(text, first.keySpan.start);
  const beside = (place.after ?? place.before!).value;
  const wide = beside.type !== 'scalar' && beside.style === 'flow';
  const comment = opts.comment ? `  # ${opts.comment}` : '';
  const lines = printEntry(key, value, column, indentStep(doc), wide, comment);
  const eol = lineEnd(text);
  if (!place.after) {
    const at = place.before!.keySpan.start;
    return !place.before!.fixable || isBrokenAt(doc, place.before!.keySpan)
      ? undefined
      : [insertion(at, lines.join(eol).trimStart() + eol + ' '.repeat(column))];
  }
  const at = isWritten(doc, place.after) ? lineAfter(doc, place.after, place.after.value) : undefined;
  return at === undefined ? undefined : [insertion(at, eol + lines.join(eol))];
}

/** The entry to stand after, or where the new one comes first, the one to stand before. */
function neighbours(map: MapNode, opts: InsertOptions): { after?: Entry; before?: Entry } {
  const before = opts.before === undefined ? -1 : map.entries.findIndex((entry) => entry.key === opts.before);
  if (before === 0) return { before: map.entries[0]! };
  if (before > 0) return { after: map.entries[before - 1]! };
  return { after: (opts.after === undefined ? undefined : map.get(opts.after)) ?? map.entries.at(-1)! };
}

function insertion(at: number, text: string): Edit {
  return { span: { start: at, end: at }, text };
}

/**
 * Takes an entry out with its own lines and the comment behind it; the last one leaves `{}`. No
 * edits where the key is not there.
 */
export function removeEntry(doc: Parsed, map: MapNode, key: string): Edit[] | undefined {
  const entry = map.get(key);
  if (!entry) return [];
  if (!map.fixable || !entry.fixable || !isWhollyFixable(entry.value) || isBrokenAt(doc, entry.span)) return undefined;
  const index = map.entries.indexOf(entry);
  if (map.style === 'flow') return removeFromFlow(doc, map, index);
  return map.entries.length === 1 ? setValue(doc, map, {}) : removeLines(doc, map, index);
}

function removeFromFlow(doc: Parsed, map: MapNode, index: number): Edit[] | undefined {
  const { text } = doc;
  if (text[map.span.start] !== '{') return undefined;
  const { span } = map.entries[index]!;
  const [previous, next] = [map.entries[index - 1], map.entries[index + 1]];
  const cut = previous
    ? { start: previous.span.end, end: span.end }
    : next
      ? { start: span.start, end: next.span.start }
      : { start: map.span.start + 1, end: map.span.end - 1 };
  const gaps = text.slice(cut.start, span.start) + text.slice(span.end, cut.end);
  return gaps.includes('#') ? undefined : [{ span: cut, text: '' }];
}

function removeLines(doc: Parsed, map: MapNode, index: number): Edit[] | undefined {
  const { text } = doc;
  const entry = map.entries[index]!;
  if (lineAfter(doc, entry, entry.value) === undefined) return undefined;
  if (beginsLine(text, entry.keySpan.start)) {
    const lines = spanOfLines(text, { start: lineStartAt(text, entry.keySpan.start), end: entry.span.end });
    return canLoseLinesAfter(text, map.entries[index - 1]?.value, lines) ? [{ span: lines, text: '' }] : undefined;
  }
  const after = spanOfLines(text, { start: entry.keySpan.start, end: entry.span.end }).end;
  const rest = after + /^[ \t\r\n]*/.exec(text.slice(after))![0].length;
  return [{ span: { start: entry.keySpan.start, end: rest }, text: '' }];
}

/** Gives an entry another key, in its quotes where it has some. Undefined where that key is taken. */
export function renameKey(doc: Parsed, map: MapNode, key: string, to: string): Edit[] | undefined {
  const entry = map.get(key);
  if (!entry || !map.fixable || !entry.fixable || isBrokenAt(doc, entry.keySpan)) return undefined;
  if (key === to) return [];
  if (map.get(to)) return undefined;
  const quote = doc.text[entry.keySpan.start];
  const style = quote === '"' ? 'double' : quote === "'" ? 'single' : 'plain';
  return [{ span: entry.keySpan, text: printScalar(to, style) }];
}

/** Adds an entry to the document itself, also to an empty one. Undefined where the root is no map. */
export function insertTopLevel(doc: Parsed, key: string, value: Value, opts: InsertOptions = {}): Edit[] | undefined {
  const { text, root } = doc;
  if (root) return root.type === 'map' ? insertEntry(doc, root, key, value, opts) : undefined;
  if (doc.problems.length > 0 || !isPrintable(value) || /^\.\.\./m.test(text)) return undefined;
  const eol = lineEnd(text);
  const lines = printEntry(key, value, 0, 2).join(eol);
  const bare = text === '' || text === '\uFEFF';
  const ended = bare || /[\r\n]$/.test(text);
  return [insertion(text.length, ended ? lines + eol : eol + lines)];
}
