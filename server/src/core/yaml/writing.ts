// The entry that someone writes: the innermost one around a place, and those above it that end there.
import type { Span } from '../text/span';
import { lineEndAt, lineStartAt, nextLineAt, previousLineAt } from './layout';
import type { Entry, Node, Parsed } from './nodes';

export interface Writing {
  /** The lines of the innermost entry or item; a blank line is with the key above it that waits for its value. */
  readonly span: Span;
  /** The first lines of the entries around it that end with it: they are only begun. */
  readonly begun: readonly Span[];
  /** From the innermost of these to the place, where it holds keys and is no section of the file. */
  readonly thing?: Span;
}

/** What is being written at an offset. The text may be broken there, so lines and columns decide. */
export function writingAt(doc: Parsed, offset: number): Writing {
  const { text } = doc;
  const own = lineAt(text, offset);
  const above = own.isBlank ? lineAbove(text, own.start) : undefined;
  const waiting = above && isOpening(above) ? above : undefined;
  const value = valueAround(doc, offset);
  const span = {
    start: Math.min(own.start, waiting?.start ?? own.start, value?.start ?? own.start),
    end: Math.max(own.end, value?.end ?? own.end),
  };
  const first = value && value.start < own.start ? lineAt(text, value.start) : own;
  const column = first.isBlank ? offset - first.start : first.column;
  const begun = begunAround(text, { ...first, column }, lineBelow(text, span.end));
  const [inner] = begun;
  const isThing = inner && !(inner.isKey && (inner.column === 0 || lineBelow(text, inner.end)?.dashes.length));
  return {
    span,
    begun: begun.map(({ start, end }) => ({ start, end })),
    ...(isThing ? { thing: { start: inner.start, end: span.end } } : {}),
  };
}

/**
 * The column in which a new line at an offset begins: below a key that waits for its value two further in, else where
 * the line above begins. Undefined where that is not ours to say: the line says something, or stands within a value.
 */
export function columnOfNew(doc: Parsed, offset: number): number | undefined {
  const { text } = doc;
  const own = lineAt(text, offset);
  const before = previousLineAt(text, own.start);
  if (text.slice(own.start, own.end).trim() !== '' || before < 0 || valueAround(doc, offset)) return undefined;
  const above = lineAt(text, before);
  if (above.isBlank || /[,{[]$/.test(above.content)) return undefined;
  const { column, dashes, content } = above;
  if (isOpening(above)) return content === '' ? dashes.at(-1)! + 2 : column + 2;
  return dashes.length > 0 && !/^[^\s{["']+: /.test(content) ? dashes.at(-1) : column;
}

interface Line extends Span {
  readonly isBlank: boolean;
  /** Where its own text begins, dashes left out. */
  readonly column: number;
  readonly dashes: readonly number[];
  /** What stands after the dashes, without a comment. */
  readonly content: string;
}

function lineAt(text: string, offset: number): Line {
  const start = lineStartAt(text, offset);
  const end = lineEndAt(text, offset);
  const whole = text.slice(start, end);
  const lead = /^ *(?:-(?: +|$))*/.exec(whole)![0];
  const dashes = [...lead].flatMap((unit, i) => (unit === '-' ? [i] : []));
  const content = withoutComment(whole.slice(lead.length));
  return { start, end, isBlank: content === '' && dashes.length === 0, column: lead.length, dashes, content };
}

function withoutComment(text: string): string {
  const at = text.startsWith('#') ? 0 : text.search(/[ \t]#/);
  return (at < 0 ? text : text.slice(0, at)).trimEnd();
}

/** The nearest line above that says anything. */
function lineAbove(text: string, from: number): Line | undefined {
  for (let at = previousLineAt(text, from); at >= 0; at = previousLineAt(text, at)) {
    const line = lineAt(text, at);
    if (!line.isBlank) return line;
  }
  return undefined;
}

/** The nearest line below that says anything. */
function lineBelow(text: string, from: number): Line | undefined {
  for (let at = nextLineAt(text, from); at < text.length; at = nextLineAt(text, at)) {
    const line = lineAt(text, at);
    if (!line.isBlank) return line;
    if (lineEndAt(text, at) === text.length) return undefined;
  }
  return undefined;
}

/** Whether the line’s value is still to come, on the lines below it. */
const isOpening = ({ content, dashes }: Line): boolean =>
  content.endsWith(':') || (content === '' && dashes.length > 0) || /: [|>][-+\d]{0,2}$/.test(content);

interface Begun extends Span {
  readonly column: number;
  readonly isKey: boolean;
}

/** The entries and items around a line, innermost first, as long as nothing below belongs to them. */
function begunAround(text: string, from: Line, below: Line | undefined): Begun[] {
  const found: Begun[] = [];
  // A list may stand in the column of its key.
  let limit = from.column;
  let isItem = false;
  const take = (line: Line, column: number, isKey: boolean): void => {
    found.push({ start: line.start, end: line.end, column, isKey });
    limit = column;
    isItem = !isKey;
  };
  for (const dash of [...from.dashes].reverse()) take(from, dash, false);
  for (let line = lineAbove(text, from.start); line && (limit > 0 || isItem); line = lineAbove(text, line.start)) {
    const { column, dashes } = line;
    if (column < limit || (isItem && column === limit && dashes.length === 0)) {
      if (isOpening(line) && line.content !== '') take(line, column, true);
      else [limit, isItem] = [column, false];
    }
    for (const dash of [...dashes].reverse()) if (dash < limit) take(line, dash, false);
  }
  return found.filter(({ column, isKey }) => !below || !belongsTo(below, column, isKey));
}

function belongsTo(below: Line, column: number, isKey: boolean): boolean {
  const first = below.dashes[0] ?? below.column;
  return first > column || (isKey && first === column && below.dashes.length > 0);
}

/** The lines of a value of several lines that holds the offset: a text, or what stands in braces or brackets. */
function valueAround({ text, root }: Parsed, offset: number): Span | undefined {
  let from: { start: number; node: Node } | undefined = root && { start: root.span.start, node: root };
  while (from) {
    const { start, node }: { start: number; node: Node } = from;
    if (node.type === 'scalar' || node.style === 'flow') return linesOf(text, start, node.span.end, offset);
    if (node.type === 'map') {
      const entry: Entry | undefined = node.entries.findLast(
        ({ merged, keySpan }) => !merged && keySpan.start <= offset,
      );
      from = entry && { start: entry.keySpan.start, node: entry.value };
    } else {
      const item: Node | undefined = node.items.findLast(({ span }) => span.start <= offset);
      from = item && { start: item.span.start, node: item };
    }
  }
  return undefined;
}

/** The lines from a key to the end of its value, no further than lines stand below the key. */
function linesOf(text: string, key: number, end: number, offset: number): Span | undefined {
  if (offset > end) return undefined;
  const first = lineAt(text, key);
  const own = key === first.start + first.column ? (first.dashes.at(-1) ?? first.column) : key - first.start;
  let last = first.end;
  for (let at = nextLineAt(text, key); at < text.length && at <= end; at = nextLineAt(text, at)) {
    const line = lineAt(text, at);
    if (!line.isBlank && (line.dashes[0] ?? line.column) <= own) break;
    last = line.end;
    if (line.end >= text.length) break;
  }
  return offset <= last ? { start: first.start, end: last } : undefined;
}
