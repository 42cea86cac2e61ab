// Laying a text out: the whole on request, a new line as it is begun.
import type { Doc } from '../core/parts/doc';
import type { Edit } from '../core/text';
import { columnOfNew, relayout } from '../core/yaml';
import type { Position, TextEdit } from './shapes';

/** Edits that change blanks alone; or why there are none. */
export type Formatted = { readonly edits: TextEdit[] } | { readonly refused: string };

export function formatted(doc: Doc): Formatted {
  const relaid = relayout(doc.parsed);
  return 'refused' in relaid ? relaid : { edits: relaid.edits.map((edit) => editOf(doc, edit)) };
}

/** The indentation of a line that was just begun. */
export function indented(doc: Doc, position: Position): TextEdit[] {
  const column = columnOfNew(doc.parsed, doc.lines.offsetAt(position));
  const span = doc.lines.lineSpan(position.line);
  if (column === undefined || span.end - span.start === column) return [];
  return [editOf(doc, { span, text: ' '.repeat(column) })];
}

const editOf = (doc: Doc, { span, text }: Edit): TextEdit => ({ range: doc.lines.rangeOf(span), newText: text });
