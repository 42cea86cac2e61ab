// A text under several rounds of edits, kept as pieces, so that all rounds come out as edits of the first text.
import type { Edit } from '../core/text';

/** A stretch of the first text, or text put in. */
type Part = { readonly start: number; readonly end: number } | { readonly put: string };

const lengthOf = (part: Part): number => ('put' in part ? part.put.length : part.end - part.start);

export class Rewrite {
  private parts: Part[];

  constructor(private readonly first: string) {
    this.parts = [{ start: 0, end: first.length }];
  }

  /** Makes edits against the text as it stands now. They must not overlap. */
  apply(edits: readonly Edit[]): void {
    const ordered = [...edits].sort((a, b) => b.span.start - a.span.start || b.span.end - a.span.end);
    for (const { span, text } of ordered) this.replace(span.start, span.end, text);
  }

  private replace(start: number, end: number, text: string): void {
    const put: Part[] = text === '' ? [] : [{ put: text }];
    this.parts = [...this.cut(0, start), ...put, ...this.cut(end, Infinity)];
  }

  /** The pieces of the text between two offsets. */
  private cut(from: number, to: number): Part[] {
    const kept: Part[] = [];
    let at = 0;
    for (const part of this.parts) {
      const length = lengthOf(part);
      const start = Math.max(from - at, 0);
      const end = Math.min(to - at, length);
      if (start < end)
        kept.push(
          'put' in part ? { put: part.put.slice(start, end) } : { start: part.start + start, end: part.start + end },
        );
      at += length;
    }
    return kept;
  }

  text(): string {
    return this.parts.map((part) => ('put' in part ? part.put : this.first.slice(part.start, part.end))).join('');
  }

  /** Edits that turn the first text into this one, in order of place. */
  edits(): Edit[] {
    const edits: Edit[] = [];
    let done = 0;
    let put = '';
    const close = (start: number): void => {
      if (put !== this.first.slice(done, start)) edits.push({ span: { start: done, end: start }, text: put });
      put = '';
    };
    for (const part of this.parts) {
      if ('put' in part) {
        put += part.put;
        continue;
      }
      close(part.start);
      done = part.end;
    }
    close(this.first.length);
    return edits;
  }
}
