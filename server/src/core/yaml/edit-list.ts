// Edits to lists: items put in, taken out, moved.
import type { Edit } from '../text/edit';
import type { Span } from '../text/span';
import { setValue } from './edit-value';
import {
  canLoseLinesAfter,
  columnAt,
  dashAt,
  indentStep,
  isBrokenAt,
  isWhollyFixable,
  lineAfter,
  lineEnd,
  lineEndAt,
  lineStartAt,
  ownsBlankLines,
  trailingBlockText,
} from './layout';
import { spanOfLines } from './lines';
import type { ListNode, Parsed } from './nodes';
import { isPrintable, printFlow, printItem } from './print';
import type { Value } from './print';

/** Adds an item at the end, in the style of its list. Undefined where that would not be safe. */
export function appendItem(doc: Parsed, list: ListNode, value: Value): Edit[] | undefined {
  const { text } = doc;
  if (!list.fixable || !isPrintable(value)) return undefined;
  const last = list.items.at(-1);
  if (list.style === 'flow') return appendInFlow(doc, list, printFlow(value));
  if (!last) return undefined;
  const at = lineAfter(doc, { span: { start: list.span.start, end: last.span.end } }, last);
  if (at === undefined) return undefined;
  const eol = lineEnd(text);
  const wide = last.type !== 'scalar' && last.style === 'flow';
  const lines = printItem(value, columnAt(text, list.span.start), indentStep(doc), wide);
  return [{ span: { start: at, end: at }, text: eol + lines.join(eol) }];
}

/**
 * Puts an item before another one, in the style of its list; at the end like `appendItem`. Undefined where that would
 * not be safe.
 */
export function insertItem(doc: Parsed, list: ListNode, index: number, value: Value): Edit[] | undefined {
  const next = list.items[index];
  if (!next) return index === list.items.length ? appendItem(doc, list, value) : undefined;
  if (!list.fixable || !isPrintable(value) || isBrokenAt(doc, next.span)) return undefined;
  if (list.style === 'flow')
    return [{ span: { start: next.span.start, end: next.span.start }, text: `${printFlow(value)}, ` }];
  const { text } = doc;
  const dash = dashAt(text, list, index);
  const previous = list.items[index - 1];
  if (
    dash === undefined ||
    !/^[ -]*$/.test(text.slice(lineStartAt(text, dash), dash)) ||
    (previous && trailingBlockText(previous))
  )
    return undefined;
  const column = columnAt(text, list.span.start);
  const eol = lineEnd(text);
  const lines = printItem(value, column, indentStep(doc), next.type !== 'scalar' && next.style === 'flow');
  return [{ span: { start: dash, end: dash }, text: lines.join(eol).trimStart() + eol + ' '.repeat(column) }];
}

function appendInFlow(doc: Parsed, list: ListNode, printed: string): Edit[] | undefined {
  const { text } = doc;
  if (text[list.span.end - 1] !== ']') return undefined;
  const last = list.items.at(-1);
  if (last) {
    return isBrokenAt(doc, last.span) || !isWhollyFixable(last)
      ? undefined
      : [{ span: { start: last.span.end, end: last.span.end }, text: `, ${printed}` }];
  }
  const inside = { start: list.span.start + 1, end: list.span.end - 1 };
  return text.slice(inside.start, inside.end).trim() === '' && !isBrokenAt(doc, list.span)
    ? [{ span: inside, text: printed }]
    : undefined;
}

/**
 * Takes an item out with its own lines and the comment behind it, or with one comma; the last one
 * leaves `[]`. No edits where there is no such item.
 */
export function removeItem(doc: Parsed, list: ListNode, index: number): Edit[] | undefined {
  const item = list.items[index];
  if (!item) return [];
  if (!list.fixable || !isWhollyFixable(item) || isBrokenAt(doc, item.span)) return undefined;
  if (list.items.length === 1) return setValue(doc, list, []);
  return list.style === 'flow' ? removeFromFlow(doc, list, index) : removeLines(doc, list, index);
}

function removeFromFlow(doc: Parsed, list: ListNode, index: number): Edit[] | undefined {
  const { span } = list.items[index]!;
  const previous = list.items[index - 1];
  const cut = previous
    ? { start: previous.span.end, end: span.end }
    : { start: span.start, end: list.items[index + 1]!.span.start };
  const gaps = doc.text.slice(cut.start, span.start) + doc.text.slice(span.end, cut.end);
  return gaps.includes('#') ? undefined : [{ span: cut, text: '' }];
}

function removeLines(doc: Parsed, list: ListNode, index: number): Edit[] | undefined {
  const { text } = doc;
  const item = list.items[index]!;
  const dash = dashAt(doc.text, list, index);
  if (dash === undefined || lineAfter(doc, item, item) === undefined) return undefined;
  const start = lineStartAt(text, dash);
  if (index === 0 && text.slice(start, dash).trim() !== '') {
    // The first dash shares its line with what holds the list: the next item takes its place.
    const next = dashAt(doc.text, list, 1);
    const gap = next === undefined ? '#' : text.slice(lineEndAt(text, item.span.end), next);
    return gap.includes('#') ? undefined : [{ span: { start: dash, end: next! }, text: '' }];
  }
  const lines = spanOfLines(text, { start, end: item.span.end });
  return canLoseLinesAfter(text, list.items[index - 1], lines) ? [{ span: lines, text: '' }] : undefined;
}

/**
 * Moves an item to another number in its list. Comments behind items go with them; lines of
 * comments and blank lines between items stay. No edits where nothing would change.
 */
export function moveItem(doc: Parsed, list: ListNode, from: number, to: number): Edit[] | undefined {
  const isItem = (index: number) => Number.isInteger(index) && index >= 0 && index < list.items.length;
  if (!isItem(from) || !isItem(to) || !list.fixable || isBrokenAt(doc, list.span)) return undefined;
  const low = Math.min(from, to);
  const slots: Span[] = [];
  for (let index = low; index <= Math.max(from, to); index++) {
    const span = isWhollyFixable(list.items[index]!) ? slotOf(doc, list, index) : undefined;
    if (!span) return undefined;
    slots.push(span);
  }
  if (list.style === 'block' && slots.length > 1 && commentsCouldJoinText(doc, list, low, slots)) return undefined;
  const texts = slots.map((span) => doc.text.slice(span.start, span.end));
  texts.splice(to - low, 0, ...texts.splice(from - low, 1));
  return slots
    .map((span, index) => ({ span, text: texts[index]! }))
    .filter(({ span, text }) => doc.text.slice(span.start, span.end) !== text);
}

/** What moves with an item: in flow the item, in a block from its dash to the end of its last line. */
function slotOf(doc: Parsed, list: ListNode, index: number): Span | undefined {
  const item = list.items[index]!;
  if (list.style === 'flow') return item.span;
  const start = dashAt(doc.text, list, index);
  const end = lineAfter(doc, item, item);
  return start === undefined || end === undefined || ownsBlankLines(doc.text, item) ? undefined : { start, end };
}

/** Whether a moved block text could come to stand before a comment line and swallow it. */
function commentsCouldJoinText(doc: Parsed, list: ListNode, low: number, slots: readonly Span[]): boolean {
  if (!slots.some((_, index) => trailingBlockText(list.items[low + index]!))) return false;
  const gaps = slots.map(({ end }, index) => doc.text.slice(end, slots[index + 1]?.start ?? end));
  const after = /^[ \t\r\n]*#?/.exec(doc.text.slice(slots.at(-1)!.end))![0];
  return gaps.some((gap) => gap.includes('#')) || after.endsWith('#');
}
