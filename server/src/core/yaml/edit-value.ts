// Setting a value in place: scalar or collection, in flow or block.
import type { Edit } from '../text/edit';
import {
  beginsLine,
  columnAt,
  endsLine,
  hasComment,
  indentStep,
  isBrokenAt,
  isWhollyFixable,
  lineEnd,
  lineEndAt,
  lineStartAt,
  ownsBlankLines,
  placeOf,
} from './layout';
import type { NodeContext } from './layout';
import type { Node, Parsed } from './nodes';
import {
  isListValue,
  isPrintable,
  isScalarValue,
  needsQuotes,
  printBlock,
  printFlow,
  printInline,
  printScalar,
} from './print';
import type { Value } from './print';

/**
 * Replaces a value in place; a scalar keeps its quotes where the text allows it. No edits where the
 * value is already so. Undefined where it cannot be done safely: not fixable, or comments stand
 * inside what would go.
 */
export function setValue(doc: Parsed, node: Node, value: Value): Edit[] | undefined {
  if (!isWhollyFixable(node) || isBrokenAt(doc, node.span) || !isPrintable(value)) return undefined;
  if (isAlready(node, value)) return [];
  const place = placeOf(doc, node);
  // Text that could not be placed anywhere makes the whole document doubtful.
  if (place && !place.parent && doc.problems.some(({ code }) => code === 'yaml-syntax')) return undefined;
  if (!place || hasComment(doc.text, node) || ownsBlankLines(doc.text, node)) return undefined;
  const inline = inlineText(node, value, place);
  return inline === undefined ? replaceByBlock(doc, node, value, place) : replaceByInline(doc, node, inline, place);
}

/** Whether the node says the value already, and says it so that every reader takes it for text. */
function isAlready(node: Node, value: Value): boolean {
  if (!isSame(node, value)) return false;
  return (
    !(
      node.type === 'scalar' &&
      node.style === 'plain' &&
      typeof value === 'string' &&
      needsQuotes(value) &&
      !/[,[\]{}]/.test(value)
    ) && !(node.type === 'scalar' && node.style === 'empty')
  );
}

/** Whether a node holds the value, comparing scalars as text. */
export function isSame(node: Node, value: Value): boolean {
  if (isScalarValue(value)) return node.type === 'scalar' && node.text === String(value ?? '');
  if (isListValue(value)) {
    return (
      node.type === 'list' &&
      node.items.length === value.length &&
      node.items.every((item, index) => isSame(item, value[index]!))
    );
  }
  const entries = Object.entries(value);
  return (
    node.type === 'map' &&
    node.entries.length === entries.length &&
    entries.every(([key, inner]) => {
      const entry = node.get(key);
      return entry !== undefined && isSame(entry.value, inner);
    })
  );
}

function inlineText(node: Node, value: Value, place: NodeContext): string | undefined {
  if (isScalarValue(value)) return printScalar(value, node.type === 'scalar' ? node.style : 'plain');
  return place.inFlow ? printFlow(value) : printInline(value, node.type !== 'scalar' && node.style === 'flow');
}

/** The offset after the colon of the entry that holds the node. */
function afterColon(doc: Parsed, place: NodeContext): number {
  return doc.text.indexOf(':', place.entry!.keySpan.end) + 1;
}

function isBlock(node: Node): boolean {
  return node.type !== 'scalar' && node.style === 'block';
}

function replaceByInline(doc: Parsed, node: Node, printed: string, place: NodeContext): Edit[] | undefined {
  const { text } = doc;
  if (!isBlock(node) || !place.entry) {
    const blank = /\s/.test(text[node.span.start - 1] ?? ' ') || node.span.end > node.span.start;
    return [{ span: node.span, text: blank ? printed : ` ${printed}` }];
  }
  const colon = afterColon(doc, place);
  const gap = text.slice(colon, node.span.start);
  if (!gap.includes('#')) return [{ span: { start: colon, end: node.span.end }, text: ` ${printed}` }];
  const lineDone = lineEndAt(text, colon);
  if (text.slice(lineDone, node.span.start).includes('#')) return undefined;
  return [
    { span: { start: colon, end: colon }, text: ` ${printed}` },
    { span: { start: lineDone, end: node.span.end }, text: '' },
  ];
}

function replaceByBlock(doc: Parsed, node: Node, value: Value, place: NodeContext): Edit[] | undefined {
  const { text } = doc;
  const step = indentStep(doc);
  if (!endsLine(text, node.span.end)) return undefined;
  if (!place.parent) {
    if (!beginsLine(text, node.span.start)) return undefined;
    return [{ span: node.span, text: blockText(doc, value, columnAt(text, node.span.start), step).trimStart() }];
  }
  const parentColumn = columnAt(text, place.parent.span.start);
  if (!place.entry) return replaceItemByBlock(doc, node, value, parentColumn + 2, step);
  if (isBlock(node)) return replaceBlockByBlock(doc, node, value, parentColumn, step);
  const colon = afterColon(doc, place);
  if (text.slice(colon, node.span.start).includes('#')) return undefined;
  return takeOutAndAppend(
    doc,
    { start: colon, end: node.span.end },
    '',
    lineEnd(text) + blockText(doc, value, parentColumn + step, step),
  );
}

function replaceBlockByBlock(
  doc: Parsed,
  node: Node,
  value: Value,
  parentColumn: number,
  step: number,
): Edit[] | undefined {
  const { text } = doc;
  if (!beginsLine(text, node.span.start)) return undefined;
  const own = columnAt(text, node.span.start);
  const column = own > parentColumn ? own : parentColumn + step;
  return [
    {
      span: { start: lineStartAt(text, node.span.start), end: node.span.end },
      text: blockText(doc, value, column, step),
    },
  ];
}

function replaceItemByBlock(doc: Parsed, node: Node, value: Value, column: number, step: number): Edit[] | undefined {
  const { text } = doc;
  const own = isBlock(node) ? columnAt(text, node.span.start) : column;
  const [first, ...rest] = printBlock(value, own, step);
  const needsBlank = node.span.start === node.span.end && text[node.span.start - 1] === '-';
  const eol = lineEnd(text);
  const head = (needsBlank ? ' ' : '') + first!.trimStart();
  return takeOutAndAppend(doc, node.span, head, rest.map((line) => eol + line).join(''));
}

/** Replaces a span by `head`, and puts `tail` at the end of its line, after any comment there. */
function takeOutAndAppend(doc: Parsed, span: Edit['span'], head: string, tail: string): Edit[] {
  const at = lineEndAt(doc.text, span.end);
  const tailOnly = doc.text.slice(span.end, at).trim() === '';
  if (tailOnly) return [{ span, text: head + tail }];
  return [
    { span, text: head },
    { span: { start: at, end: at }, text: tail },
  ];
}

function blockText(doc: Parsed, value: Value, column: number, step: number): string {
  return printBlock(value, column, step).join(lineEnd(doc.text));
}
