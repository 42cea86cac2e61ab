// A text laid out anew: indentation by two blanks, and blanks where they belong. What it says does not change.
import type { Edit } from '../text/edit';
import { applyEdits } from '../text/edit';
import type { Span } from '../text/span';
import { columnAt, lineEnd, lineEndAt, lineStartAt, nextLineAt, trailingBlockText } from './layout';
import type { Entry, ListNode, MapNode, Node, Parsed } from './nodes';
import { parse } from './parse';

/** Edits that touch blanks alone; or why there are none. */
export type Relaid = { readonly edits: readonly Edit[] } | { readonly refused: string };

const step = 2;

/** How the text is to be laid out. Whatever is doubtful is refused, and so is what would be read otherwise after. */
export function relayout(doc: Parsed): Relaid {
  const { text, root, problems } = doc;
  const [first] = problems;
  if (first) return { refused: `the text is not sound yet. ${first.message}` };
  if (/^\t| \t *[^\s#]/m.test(text)) return { refused: 'tabs stand in it.' };
  if (/^(?:%|(?:---|\.\.\.)(?:\s|$))/m.test(text))
    return { refused: 'marks of documents (%, --- or ...) stand in it.' };
  const pass = new Pass(text);
  if (root) pass.lay(root, 0, true);
  const edits = pass.edits(root);
  if (pass.doubt !== undefined) return { refused: pass.doubt };
  return saysTheSame(doc, parse(applyEdits(text, edits)))
    ? { edits }
    : { refused: 'it would be read otherwise if its blanks changed.' };
}

class Pass {
  doubt: string | undefined;
  /** By the start of a line: the column at which its text is to begin. */
  private readonly columns = new Map<number, number>();
  /** Spans of values of several lines: the lines within go along with the first. */
  private readonly held: Held[] = [];
  private readonly gaps: Edit[] = [];

  constructor(private readonly text: string) {}

  /** `column`: where a block below begins. `begins`: whether it begins on a line of its own. */
  lay(node: Node, column: number, begins: boolean): void {
    if (node.type !== 'scalar' && node.style === 'block') {
      if (node.type === 'map') this.layMap(node, column, begins);
      else this.layList(node, column, begins);
    } else if (begins) {
      const start = this.firstOnLine(node.span.start);
      this.begin(start, column);
      this.value(node, start, column);
    }
  }

  /** Where the line begins of something that may have an anchor before it. */
  private firstOnLine(offset: number): number {
    const start = lineStartAt(this.text, offset);
    return start + this.text.slice(start, offset + 1).search(/[^ ]/);
  }

  private layMap(map: MapNode, column: number, begins: boolean): void {
    map.entries.forEach((entry, i) => {
      if (entry.merged || !this.isPlain(entry)) {
        this.doubt ??= 'a key in it is written in a way that leaves doubt.';
        return;
      }
      if (i > 0 || begins) this.begin(entry.keySpan.start, column);
      const isAligned = [map.entries[i - 1], map.entries[i + 1]].some((one) => one && this.isAligned(entry, one));
      this.layValue(entry, column, isAligned);
    });
  }

  /** Whether only blanks and one colon stand between a key and its value, comments and line ends apart. */
  private isPlain({ keySpan, value }: Entry): boolean {
    const colon = keySpan.end + this.text.slice(keySpan.end).search(/[^ ]/);
    return this.text[colon] === ':' && isComment(this.text.slice(colon + 1, Math.max(value.span.start, colon + 1)));
  }

  private layValue({ keySpan, value }: Entry, column: number, isAligned: boolean): void {
    const { text } = this;
    const colon = text.indexOf(':', keySpan.end);
    this.gap({ start: keySpan.end, end: colon }, '');
    if (value.type === 'scalar' && value.style === 'empty') return;
    const isBelow = /[\r\n]/.test(text.slice(colon, value.span.start));
    if (isBelow) return this.lay(value, column + step, true);
    const gap = { start: colon + 1, end: value.span.start };
    if (!isAligned) this.gap(gap, ' ');
    this.value(value, keySpan.start, column);
  }

  /** Whether the values of two neighbours begin in one column: someone lined them up. */
  private isAligned(own: Entry, other: Entry): boolean {
    const behind = ({ keySpan, value }: Entry): number => value.span.start - keySpan.start;
    return behind(own) === behind(other) && !/[\r\n]/.test(this.text.slice(other.keySpan.end, other.value.span.start));
  }

  private layList(list: ListNode, column: number, begins: boolean): void {
    const { text } = this;
    let from = list.span.start;
    list.items.forEach((item, i) => {
      const dash = text.indexOf('-', i === 0 ? list.span.start : from);
      const between = text.slice(dash + 1, item.span.start);
      const isEmpty = item.type === 'scalar' && item.style === 'empty';
      const before = i === 0 ? '' : text.slice(from, dash);
      if (dash < 0 || !isComment(before) || !(isEmpty || isComment(between))) {
        this.doubt ??= 'a list in it is written in a way that leaves doubt.';
        return;
      }
      if (i > 0 || begins) this.begin(dash, column);
      from = Math.max(item.span.end, dash + 1);
      if (isEmpty) return;
      if (/[\r\n]/.test(between)) return this.lay(item, column + step, true);
      this.gap({ start: dash + 1, end: item.span.start }, ' ');
      if (item.type !== 'scalar' && item.style === 'block') this.lay(item, column + step, false);
      else this.value(item, item.span.start, column + step);
    });
  }

  /** A value that is a text or stands in braces or brackets: `key` begins its entry, now in `column`. */
  private value(node: Node, key: number, column: number): void {
    const { start, end } = node.span;
    if (/[\r\n]/.test(this.text.slice(start, end))) {
      this.held.push({ span: node.span, by: column - columnAt(this.text, key), isText: node.type === 'scalar' });
      if (node.type === 'scalar' && node.style === 'block' && /^[|>][-+]?\d/.test(this.text.slice(start, start + 3)))
        this.doubt ??= 'a text in it says itself how far it is indented.';
    } else if (node.type !== 'scalar') this.flow(node);
  }

  /** Braces and brackets on one line: blanks inside braces, one behind each comma. */
  private flow(node: MapNode | ListNode): void {
    const { text } = this;
    const parts =
      node.type === 'map'
        ? node.entries.map(({ span, value }) => ({ span, value }))
        : node.items.map((value) => ({ span: value.span, value }));
    const pad = node.type === 'map' ? ' ' : '';
    const [first, last] = [parts[0], parts.at(-1)];
    if (!first || !last || !/[}\]]/.test(text[node.span.end - 1]!)) return;
    this.blank({ start: node.span.start + 1, end: first.span.start }, pad);
    parts.forEach(({ span }, i) => {
      const next = parts[i + 1];
      if (next && /^ *, *$/.test(text.slice(span.end, next.span.start)))
        this.gap({ start: span.end, end: next.span.start }, ', ');
    });
    this.blank({ start: last.span.end, end: node.span.end - 1 }, pad);
    if (node.type === 'map')
      for (const { keySpan, value } of node.entries)
        if (
          !(value.type === 'scalar' && value.style === 'empty') &&
          /^ *: +$/.test(text.slice(keySpan.end, value.span.start))
        )
          this.gap({ start: keySpan.end, end: value.span.start }, ': ');
    for (const { value } of parts) if (value.type !== 'scalar') this.flow(value);
  }

  private blank(span: Span, by: string): void {
    if (/^ *$/.test(this.text.slice(span.start, span.end))) this.gap(span, by);
  }

  private gap(span: Span, by: string): void {
    if (this.text.slice(span.start, span.end) !== by) this.gaps.push({ span, text: by });
  }

  private begin(offset: number, column: number): void {
    this.columns.set(lineStartAt(this.text, offset), column);
  }

  /** All edits: indentation line by line, blanks at line ends, and those between. */
  edits(root: Node | undefined): Edit[] {
    const { text } = this;
    const edits = [...this.gaps];
    const lines = this.lines();
    let below: Line | undefined;
    let at = this.held.length - 1;
    for (const line of lines.reverse()) {
      while (at > 0 && this.held[at]!.span.start >= line.end) at--;
      const held = this.held[at];
      const to = this.columnOf(line, held, below);
      if (to !== undefined && to !== line.column)
        edits.push({ span: { start: line.start, end: line.start + line.column }, text: ' '.repeat(Math.max(0, to)) });
      const isInside = held?.isText && held.span.start < line.end && held.span.end > line.end;
      const from = line.isBlank ? line.start : line.start + text.slice(line.start, line.end).trimEnd().length;
      if (!isInside && from < line.end) edits.push({ span: { start: from, end: line.end }, text: '' });
      if (!line.isBlank && !line.isComment) below = line;
    }
    const isKept = root && trailingBlockText(root);
    if (text !== '' && !/[\r\n]$/.test(text) && !isKept)
      edits.push({ span: { start: text.length, end: text.length }, text: lineEnd(text) });
    return merged(edits);
  }

  private lines(): Line[] {
    const lines: Line[] = [];
    for (
      let start = this.text.startsWith('\uFEFF') ? 1 : 0;
      start < this.text.length;
      start = nextLineAt(this.text, start)
    ) {
      const end = lineEndAt(this.text, start);
      const whole = this.text.slice(start, end);
      const isBlank = whole.trim() === '';
      lines.push({
        start,
        end,
        isBlank,
        column: whole.length - whole.trimStart().length,
        isComment: whole.trimStart().startsWith('#'),
      });
      if (end === this.text.length) break;
    }
    return lines;
  }

  /** The column of a line’s text: its own, as its value’s first line moved, or as the line below a comment. */
  private columnOf(line: Line, held: Held | undefined, below: Line | undefined): number | undefined {
    if (held && held.span.start < line.start && held.span.end > line.start) {
      if (!line.isBlank) return line.column + held.by;
      if (held.isText && held.by !== 0 && line.end > line.start) this.doubt ??= 'blanks stand on a line of a text.';
      return undefined;
    }
    const own = this.columns.get(line.start);
    if (own !== undefined || !line.isComment) return own;
    const to = below && this.columns.get(below.start);
    return to === undefined ? undefined : Math.max(0, line.column + to - below!.column);
  }
}

/** A value of several lines; they move `by` so many columns. */
interface Held {
  readonly span: Span;
  readonly by: number;
  readonly isText: boolean;
}

interface Line extends Span {
  readonly column: number;
  readonly isBlank: boolean;
  readonly isComment: boolean;
}

/** Edits of one place as one. */
function merged(edits: readonly Edit[]): Edit[] {
  const seen = new Set<string>();
  return edits
    .filter(({ span, text }) => {
      const key = `${span.start} ${span.end} ${text}`;
      return !seen.has(key) && seen.add(key);
    })
    .sort((a, b) => a.span.start - b.span.start);
}

/** Whether two texts hold the same keys, values and comments in the same order. */
function saysTheSame(a: Parsed, b: Parsed): boolean {
  return b.problems.length === 0 && said(a.root) === said(b.root) && commentsIn(a.text) === commentsIn(b.text);
}

function said(node: Node | undefined): string {
  if (!node) return '';
  if (node.type === 'scalar') return JSON.stringify([node.style, node.text]);
  if (node.type === 'list') return `${node.style}[${node.items.map(said).join()}]`;
  return `${node.style}{${node.entries.map(({ key, value }) => `${JSON.stringify(key)}:${said(value)}`).join()}}`;
}

/** Whether a text is blank but for comments. */
const isComment = (text: string): boolean =>
  text.split(/[\r\n]+/).every((line) => line.trim() === '' || line.trim().startsWith('#'));

const commentsIn = (text: string): string => text.replace(/[ \t\r\n]+/g, '');
