// Whole lines of a document, for taking them out.
import type { Span } from '../text/span';
import { lineEndAt, nextLineAt } from './layout';

/**
 * The span to take out so that its lines are gone with one line end: the one after it, or for the
 * last line of a text without a last line end, the one before it.
 */
export function spanOfLines(text: string, span: Span): Span {
  const end = nextLineAt(text, span.end);
  if (end > lineEndAt(text, span.end)) return { start: span.start, end };
  let start = span.start;
  if (text[start - 1] === '\n') start -= 1;
  if (text[start - 1] === '\r') start -= 1;
  return { start, end };
}
