// How a document is laid out: its line ends, columns, indentation, comments, and what surrounds a node.
import type { Span } from '../text/span';
import { children } from './nodes';
import type { Entry, ListNode, MapNode, Node, Parsed } from './nodes';

/** The document's own line end, by its first line. */
export function lineEnd(text: string): string {
  return /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
}

function isBreak(unit: string | undefined): boolean {
  return unit === '\n' || unit === '\r';
}

/** Where the line of an offset starts, after a byte order mark. */
export function lineStartAt(text: string, offset: number): number {
  let at = offset;
  while (at > 0 && !isBreak(text[at - 1])) at--;
  return at === 0 && text[0] === '\uFEFF' && offset > 0 ? 1 : at;
}

/** Where the line of an offset ends, before its line end. */
export function lineEndAt(text: string, offset: number): number {
  let at = offset;
  while (at < text.length && !isBreak(text[at])) at++;
  return at;
}

/** The start of the next line, or the text's end. */
export function nextLineAt(text: string, offset: number): number {
  const at = lineEndAt(text, offset);
  return text.startsWith('\r\n', at) ? at + 2 : Math.min(at + 1, text.length);
}

/** The start of the line above, or -1 for the first line. */
export function previousLineAt(text: string, lineStart: number): number {
  if (lineStart <= 0 || !isBreak(text[lineStart - 1])) return -1;
  return lineStartAt(text, lineStart - (text.endsWith('\r\n', lineStart) ? 2 : 1));
}

export function columnAt(text: string, offset: number): number {
  return offset - lineStartAt(text, offset);
}

/** Whether only blanks stand before the offset on its line. */
export function beginsLine(text: string, offset: number): boolean {
  return /^ *$/.test(text.slice(lineStartAt(text, offset), offset));
}

/** Whether only blanks or a comment follow the offset on its line. */
export function endsLine(text: string, offset: number): boolean {
  return /^[ \t]*$|^[ \t]+#/.test(text.slice(offset, lineEndAt(text, offset)));
}

/** How far the document indents: by its first nested block. */
export function indentStep(doc: Parsed): number {
  const open = doc.root ? [doc.root] : [];
  for (let node = open.pop(); node; node = open.pop()) {
    for (const child of children(node)) {
      if (child.type === 'scalar' || child.style === 'flow') continue;
      const step = columnAt(doc.text, child.span.start) - columnAt(doc.text, node.span.start);
      if (step > 0 && node.type === 'map' && beginsLine(doc.text, child.span.start)) return step;
      open.push(child);
    }
  }
  return 2;
}

/** Where a node stands: its parent and its entry or number in it; undefined entries for the root. */
export interface NodeContext {
  readonly parent: MapNode | ListNode | undefined;
  readonly entry: Entry | undefined;
  /** Whether braces or brackets stand around it. */
  readonly inFlow: boolean;
}

/** Finds a node by itself; undefined where it is none of this document's own. */
export function placeOf(doc: Parsed, node: Node): NodeContext | undefined {
  if (doc.root === node) return { parent: undefined, entry: undefined, inFlow: false };
  const open: { node: Node; inFlow: boolean }[] = doc.root ? [{ node: doc.root, inFlow: false }] : [];
  for (let next = open.pop(); next; next = open.pop()) {
    const parent = next.node;
    if (parent.type === 'scalar') continue;
    const inFlow = next.inFlow || parent.style === 'flow';
    const entry =
      parent.type === 'map' ? parent.entries.find(({ value, merged }) => value === node && !merged) : undefined;
    if (entry || (parent.type === 'list' && parent.items.includes(node))) return { parent, entry, inFlow };
    for (const child of ownChildren(parent)) {
      if (child.span.start <= node.span.start && child.span.end >= node.span.end) open.push({ node: child, inFlow });
    }
  }
  return undefined;
}

/** The children written inside the node itself: none of what a merge brought in. */
export function ownChildren(node: Node): readonly Node[] {
  return node.type === 'map'
    ? node.entries.filter((entry) => !entry.merged).map((entry) => entry.value)
    : children(node);
}

/** Whether the node and all below it may be changed or taken out as a whole. */
export function isWhollyFixable(node: Node): boolean {
  const open = [node];
  for (let next = open.pop(); next; next = open.pop()) {
    if (!next.fixable || (next.type === 'map' && next.entries.some((entry) => !entry.fixable))) return false;
    open.push(...children(next));
  }
  return true;
}

/** Whether text that cannot be read lies on the lines of the span, or is the next thing below them but a comment. */
export function isBrokenAt(doc: Parsed, span: Span): boolean {
  const next = span.end + /^(?:\s|#[^\r\n]*)*/.exec(doc.text.slice(span.end))![0].length;
  const end = Math.max(next, lineEndAt(doc.text, span.end));
  const start = lineStartAt(doc.text, span.start);
  return doc.problems.some(({ code, span: at }) => code === 'yaml-syntax' && at.start <= end && at.end >= start);
}

/** Whether a comment stands inside the node, between its parts. */
export function hasComment(text: string, node: Node): boolean {
  const open = [node];
  for (let next = open.pop(); next; next = open.pop()) {
    if (next.type === 'scalar') {
      if (
        next.style === 'block' &&
        /^[^\r\n]*[ \t]#/.test(text.slice(next.span.start, lineEndAt(text, next.span.start)))
      )
        return true;
      continue;
    }
    const parts =
      next.type === 'map'
        ? next.entries.flatMap(({ keySpan, value }) => [keySpan, value.span])
        : next.items.map(({ span }) => span);
    let at = next.span.start;
    for (const part of [...parts, { start: next.span.end, end: next.span.end }]) {
      if (text.slice(at, part.start).includes('#')) return true;
      at = part.end;
    }
    open.push(...children(next));
  }
  return false;
}

/** Where a node's last written value is a block text (`|`, `>`), that value. */
export function trailingBlockText(node: Node): Node | undefined {
  let last: Node | undefined = node;
  while (last && last.type !== 'scalar' && last.style === 'block') last = ownChildren(last).at(-1);
  return last?.type === 'scalar' && last.style === 'block' ? last : undefined;
}

/** Whether lines below the node belong to its text though they look blank: `|+`, or lines of blanks. */
export function ownsBlankLines(text: string, node: Node): boolean {
  const block = trailingBlockText(node);
  if (!block) return false;
  if (keepsLineEnds(text, block)) return true;
  const after = /^[ \t\r\n]*/.exec(text.slice(block.span.end))![0].split(/\r\n|\r|\n/);
  const lines = block.span.end + after.join('\n').length >= text.length ? after.slice(1) : after.slice(1, -1);
  return lines.some((line) => line !== '');
}

/** Whether a block text keeps every line end after it (`|+`). */
export function keepsLineEnds(text: string, block: Node): boolean {
  return /^[|>]\d?\+/.test(text.slice(block.span.start, block.span.end));
}

/** The line end after a node where a new line may begin, or undefined where none safely can. */
export function lineAfter(doc: Parsed, part: { readonly span: Span }, node: Node): number | undefined {
  const { text } = doc;
  if (isBrokenAt(doc, part.span) || !endsLine(text, part.span.end) || ownsBlankLines(text, node)) return undefined;
  return lineEndAt(text, part.span.end);
}

/** The offset of an item's dash: in the list's column, on the item's line or above it. */
export function dashAt(text: string, list: ListNode, index: number): number | undefined {
  if (index === 0) return list.span.start;
  const column = columnAt(text, list.span.start);
  const from = list.items[index - 1]!.span.end;
  for (let line = lineStartAt(text, list.items[index]!.span.start); line > from; line = previousLineAt(text, line)) {
    if (text[line + column] === '-' && text.slice(line, line + column).trim() === '') return line + column;
  }
  return undefined;
}

/**
 * Whether a node that ends in a block text can lose the lines in `cut` after it: a comment left
 * behind could become part of that text, and a kept line end could be gone.
 */
export function canLoseLinesAfter(text: string, node: Node | undefined, cut: Span): boolean {
  const block = node && trailingBlockText(node);
  if (!block) return true;
  const next = /^[ \t\r\n]*#?/.exec(text.slice(cut.end))![0];
  return (
    !next.endsWith('#') &&
    !(keepsLineEnds(text, block) && (cut.end === text.length || /[\r\n]$/.test(next) || /^[\r\n]/.test(next)))
  );
}
