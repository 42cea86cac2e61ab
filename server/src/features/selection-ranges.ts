// Selection ranges: from the word under the cursor outwards, by entry, item and map, to the whole file.
import type { Doc } from '../core/parts/doc';
import { touches, type Span } from '../core/text';
import type { Node } from '../core/yaml';
import type { Position, Range } from './shapes';

export interface SelectionRange {
  range: Range;
  parent?: SelectionRange;
}

/** The ranges around a position, the innermost first; each lies in its parent. */
export function selectionRange(doc: Doc, position: Position): SelectionRange {
  const offset = doc.lines.offsetAt(position);
  let found: SelectionRange = { range: doc.lines.rangeOf({ start: 0, end: doc.text.length }) };
  let last: Span = { start: 0, end: doc.text.length };
  for (const span of spansAround(doc, offset)) {
    const isWithin = span.start >= last.start && span.end <= last.end;
    if (!isWithin || (span.start === last.start && span.end === last.end)) continue;
    found = { range: doc.lines.rangeOf(span), parent: found };
    last = span;
  }
  return found;
}

function spansAround({ parsed: { root } }: Doc, offset: number): Span[] {
  const spans: Span[] = [];
  for (let node: Node | undefined = root; node; ) {
    if (touches(node.span, offset)) spans.push(node.span);
    node = stepIn(node, offset, spans);
  }
  return spans;
}

/** The value that an offset leads into; the entry around it is noted, and a key where the offset is on one. */
function stepIn(node: Node, offset: number, spans: Span[]): Node | undefined {
  if (node.type === 'list') return node.items.find(({ span }) => touches(span, offset));
  if (node.type !== 'map') return undefined;
  const entry = node.entries.find(
    ({ keySpan, value, merged }) => !merged && touches({ start: keySpan.start, end: value.span.end }, offset),
  );
  if (!entry) return undefined;
  spans.push({ start: entry.keySpan.start, end: Math.max(entry.keySpan.end, entry.value.span.end) });
  if (!touches(entry.keySpan, offset)) return entry.value;
  spans.push(entry.keySpan);
  return undefined;
}
