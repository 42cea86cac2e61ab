// A fenced block as a file of its own, whose places are places in the guide around it.
import { Doc, type DocKind } from '../parts/doc';
import { Lines, type Position, type Range, type Span } from '../text';
import type { Fence } from './markdown';

/** One line of a block: where its own text begins in the guide. */
interface FencedLine {
  readonly start: number;
  readonly inGuide: number;
}

/** The lines of a block, by offsets of the block and positions of the guide. */
class FencedLines extends Lines {
  constructor(
    text: string,
    private readonly rows: readonly FencedLine[],
    private readonly guide: Lines,
  ) {
    super(text);
  }

  override positionAt(offset: number): Position {
    return this.guide.positionAt(this.toGuide(offset));
  }

  /** A position before or after the block is its start or its end. */
  override offsetAt(position: Position): number {
    const at = this.guide.offsetAt(position);
    const row = this.rows.findLast(({ inGuide }) => inGuide <= at);
    if (!row) return 0;
    const next = this.rows[this.rows.indexOf(row) + 1];
    return Math.min(row.start + at - row.inGuide, next ? Math.max(row.start, next.start - 1) : Infinity, this.length);
  }

  override rangeOf({ start, end }: Span): Range {
    return { start: this.positionAt(start), end: this.positionAt(end) };
  }

  /** A line of the guide, as far as it lies in the block. */
  override lineSpan(line: number): Span {
    const first = super.positionAt(0).line + this.firstLine;
    return super.lineSpan(line - first);
  }

  toGuide(offset: number): number {
    const row = this.rows.findLast(({ start }) => start <= offset) ?? this.rows[0]!;
    return row.inGuide + Math.max(0, Math.min(offset, this.length) - row.start);
  }

  private get firstLine(): number {
    return this.guide.positionAt(this.rows[0]!.inGuide).line;
  }

  private get length(): number {
    return super.lineSpan(this.count).end;
  }
}

/** A fenced block: its text without what quotes and lists put before its lines. */
export class FencedDoc extends Doc {
  private constructor(
    readonly guide: Doc,
    kind: DocKind,
    text: string,
    /** Where the fence stands in the guide. */
    readonly opening: Span,
    readonly closed: boolean,
    private readonly fencedLines: FencedLines,
    private readonly before: string,
  ) {
    super(guide.name, kind, text);
  }

  static of(guide: Doc, kind: DocKind, fence: Fence): FencedDoc {
    const { lines, text } = guide;
    const opening = lines.lineSpan(fence.line);
    const rows: FencedLine[] = [];
    let own = '';
    for (const [i, line] of fence.lines.entries()) {
      const span = lines.lineSpan(fence.line + 1 + i);
      const inGuide = span.start + prefixOf(text.slice(span.start, span.end), line);
      rows.push({ start: own.length, inGuide });
      own += text.slice(inGuide, nextLine(lines, fence.line + 1 + i));
    }
    const line = text.slice(opening.start, opening.end);
    const before = line.slice(0, Math.max(0, line.search(/`{3,}|~{3,}/)));
    const after = fence.line + 1 + fence.lines.length;
    if (fence.closed) rows.push({ start: own.length, inGuide: endRow(lines, text, after, before.length) });
    else if (rows.length === 0) rows.push({ start: 0, inGuide: opening.end });
    return new FencedDoc(guide, kind, own, opening, fence.closed, new FencedLines(own, rows, lines), continued(before));
  }

  override get lines(): Lines {
    return this.fencedLines;
  }

  /** A new line begins as the lines of the block do. */
  override written(text: string): string {
    return text.replace(/\r\n|\r|\n/g, (end) => end + this.before);
  }

  toGuide({ start, end }: Span): Span {
    return { start: this.fencedLines.toGuide(start), end: this.fencedLines.toGuide(end) };
  }

  /** Whether a place of the guide lies between the fences. */
  holds(position: Position): boolean {
    const first = this.guide.lines.positionAt(this.opening.start).line;
    const last = this.fencedLines.positionAt(this.text.length).line;
    return position.line > first && (this.closed ? position.line < last : position.line <= last);
  }
}

/** What stands before a line’s own text. A tab that is cut in two stays whole, and is found where the text is read. */
function prefixOf(whole: string, own: string): number {
  if (whole.endsWith(own)) return whole.length - own.length;
  const start = whole.length - own.trimStart().length;
  return Math.max(0, whole[start - 1] === '\t' ? start - 1 : start);
}

const nextLine = (lines: Lines, line: number): number =>
  line + 1 < lines.count ? lines.lineSpan(line + 1).start : lines.lineSpan(line).end;

/** Where a line after the block’s last would begin: on the line of the closing fence, before the fence. */
function endRow(lines: Lines, text: string, line: number, before: number): number {
  const { start, end } = lines.lineSpan(line);
  const fence = text.slice(start, end).search(/`{3,}|~{3,}/);
  return start + Math.min(before, Math.max(0, fence));
}

/** What stands before the opening fence, as the next lines repeat it: the mark of a list item gives way to blanks. */
const continued = (before: string): string => before.replace(/[^>\s]/g, ' ');
