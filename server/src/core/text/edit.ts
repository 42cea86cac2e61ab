// Text edits: applied all at once, against the text they were made for.
import type { Span } from './span';

/** Replace what stands in `span` by `text`; an empty span inserts. */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/**
 * Whether two of the edits claim the same text. Two insertions at one place count as claiming it
 * too: their order would decide the outcome.
 */
export function editsOverlap(edits: readonly Edit[]): boolean {
  return overlapIn(inOrder(edits));
}

/**
 * The text with all edits made. The order of the edits does not matter.
 * @throws RangeError when edits overlap or lie outside the text.
 */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const ordered = inOrder(edits);
  if (overlapIn(ordered)) throw new RangeError('Edits overlap.');
  let result = '';
  let done = 0;
  for (const { span, text: inserted } of ordered) {
    if (span.start < 0 || span.end < span.start || span.end > text.length) {
      throw new RangeError(`Edit ${span.start}..${span.end} lies outside the text of ${text.length}.`);
    }
    result += text.slice(done, span.start) + inserted;
    done = span.end;
  }
  return result + text.slice(done);
}

function inOrder(edits: readonly Edit[]): Edit[] {
  return [...edits].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
}

function overlapIn(ordered: readonly Edit[]): boolean {
  return ordered.some((edit, index) => {
    const before = ordered[index - 1];
    if (!before) return false;
    const bothInsertHere = before.span.start === edit.span.end && before.span.end === edit.span.start;
    return bothInsertHere || edit.span.start < before.span.end;
  });
}
