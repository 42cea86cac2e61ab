// Lines: the one place that converts between offsets and line-and-character positions.
import { clampOffset } from './span';
import type { Span } from './span';

/** Zero based line and UTF-16 character, as the Language Server Protocol counts them. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

export interface Range {
  readonly start: Position;
  readonly end: Position;
}

/**
 * Where the lines of a text end that have an end. A last one without may be cut off: what a tool or a page printed is
 * believed up to here alone, for a figure that lacks its end is another figure.
 */
export const endOfLines = (text: string): number => Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r')) + 1;

/** The lines of one text. Line ends are LF, CRLF and a lone CR, as in the protocol. */
export class Lines {
  private readonly starts: readonly number[];

  constructor(private readonly text: string) {
    this.starts = lineStarts(text);
  }

  /** How many lines there are; a text with no line end has one. */
  get count(): number {
    return this.starts.length;
  }

  /** The position of an offset, which is first clamped into the text. */
  positionAt(offset: number): Position {
    const at = clampOffset(this.text, offset);
    const line = this.lineOf(at);
    return { line, character: at - this.starts[line]! };
  }

  /** The offset of a position; one past a line's end means that line's end. */
  offsetAt(position: Position): number {
    if (!(position.line >= 0)) return 0;
    const line = Math.trunc(position.line);
    if (line >= this.count) return this.text.length;
    const { start, end } = this.lineSpan(line);
    const character = position.character > 0 ? Math.trunc(Math.min(position.character, end - start)) : 0;
    return clampOffset(this.text, start + character);
  }

  rangeOf(span: Span): Range {
    return { start: this.positionAt(span.start), end: this.positionAt(span.end) };
  }

  /** A line's own text without its line end; a line out of range is the nearest one. */
  lineSpan(line: number): Span {
    const index = Math.min(Math.max(Math.trunc(line) || 0, 0), this.count - 1);
    const start = this.starts[index]!;
    let end = this.starts[index + 1] ?? this.text.length;
    if (index + 1 < this.count) {
      end -= this.text[end - 1] === '\n' && this.text[end - 2] === '\r' && end - 2 >= start ? 2 : 1;
    }
    return { start, end };
  }

  private lineOf(offset: number): number {
    let low = 0;
    let high = this.count - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if (unit === 0x0a || (unit === 0x0d && text.charCodeAt(i + 1) !== 0x0a)) starts.push(i + 1);
  }
  return starts;
}
