// Spans: where something stands in a text, as UTF-16 offsets.

/** A half-open range of UTF-16 offsets. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Whether an offset lies in the span or at its very end (where a cursor still belongs to it). */
export function touches(span: Span, offset: number): boolean {
  return offset >= span.start && offset <= span.end;
}

/** Whether the offset would split a surrogate pair or a CRLF. */
export function splitsCharacter(text: string, offset: number): boolean {
  if (offset <= 0 || offset >= text.length) return false;
  const before = text.charCodeAt(offset - 1);
  const after = text.charCodeAt(offset);
  if (before === 0x0d && after === 0x0a) return true;
  return before >= 0xd800 && before <= 0xdbff && after >= 0xdc00 && after <= 0xdfff;
}

/** The offset brought inside the text, and before any surrogate pair or CRLF it would split. */
export function clampOffset(text: string, offset: number): number {
  const inside = Number.isNaN(offset) ? 0 : Math.trunc(Math.min(Math.max(offset, 0), text.length));
  return splitsCharacter(text, inside) ? inside - 1 : inside;
}

/** A span brought inside the text: never reversed, never splitting a surrogate pair or CRLF. */
export function clampSpan(text: string, start: number, end: number): Span {
  const from = clampOffset(text, start);
  const to = Number.isNaN(end) ? from : Math.min(Math.max(Math.trunc(end), from), text.length);
  return { start: from, end: splitsCharacter(text, to) ? to + 1 : to };
}
