// Reads the plain subset of YAML, in which nearly all files are written, some ten times as fast as the library: block
// maps and lists, scalars and flow collections on one line, comments. Anything else, and anything doubtful, is refused
// and left to the library; what is read here is what the library reads, to the last offset.
import { EntryMap, type Entry, type ListNode, type MapNode, type Node, type ScalarNode } from './nodes';

/** The root of a plain text; undefined where the library is to read it. */
export function readPlain(text: string): MapNode | undefined {
  return isPlainText(text) ? new PlainReader(text).read() : undefined;
}

/** Whether a text is short enough, and its signs are read alike by everyone. */
export const isPlainText = (text: string): boolean => text.length <= longest && !notPlain.test(text);

/** In UTF-16 units: no text of this length passes a limit of reading. */
const longest = 100_000;
const deepest = 20;
/** Entries of one map: each name is held against all before it. */
const mostEntries = 200;

/** Marks, controls and lone line ends that a plain text has none of, and what a merge leaves. */
const notPlain = /[^\n\r\x20-\x7e\u00a1-\u2027\u202a-\ufefe\uff00-\uffff]|\r(?!\n)|<{7}/;

const [newLine, carriage, space, quote, hash, apostrophe, comma, dash, colon, backslash] = [...'\n\r "#\',-:\\'].map(
  (sign) => sign.charCodeAt(0),
) as [number, number, number, number, number, number, number, number, number, number];
const [openList, closeList, openMap, closeMap] = [...'[]{}'].map((sign) => sign.charCodeAt(0)) as [
  number,
  number,
  number,
  number,
];

/** Signs by code that a plain scalar, or a name, may begin with; past ASCII all may. */
const begins = signs('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_+./~(^$;');
/** Signs that a name holds; of spaces and colons, those within it. */
const inName = signs('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_+./~()^$;-');

function signs(all: string): readonly boolean[] {
  const is = Array.from({ length: 128 }, () => false);
  for (const sign of all) is[sign.charCodeAt(0)] = true;
  return is;
}

const isFlowSign = (unit: number): boolean =>
  unit === comma || unit === openList || unit === closeList || unit === openMap || unit === closeMap;

class PlainReader {
  /** Where the content of the line that is read begins, and in which column; no column past the end. */
  private at = 0;
  private column = 0;
  /** Where what was read last ended. */
  private end = 0;

  constructor(private readonly text: string) {}

  read(): MapNode | undefined {
    this.seek(0);
    if (this.column !== 0) return undefined;
    const root = this.blockMap(0, 0);
    return root && this.column < 0 ? root : undefined;
  }

  /** Moves from the start of a line to the next content. */
  private seek(lineStart: number): void {
    const { text } = this;
    for (let start = lineStart; start < text.length; ) {
      let at = start;
      while (text.charCodeAt(at) === space) at++;
      if (at < text.length && text.charCodeAt(at) !== hash && !this.endsAt(at)) {
        this.at = at;
        this.column = at - start;
        return;
      }
      const lineEnd = text.indexOf('\n', at);
      start = lineEnd < 0 ? text.length : lineEnd + 1;
    }
    this.at = text.length;
    this.column = -1;
  }

  /** Whether a line or the text ends at an offset. */
  private endsAt(offset: number): boolean {
    const unit = this.text.charCodeAt(offset);
    return unit === newLine || unit === carriage || offset >= this.text.length;
  }

  private pastSpaces(offset: number): number {
    let at = offset;
    while (this.text.charCodeAt(at) === space) at++;
    return at;
  }

  /** Leaves a line whose content has ended; false where more stands on it than a comment. */
  private leaveLine(): boolean {
    const at = this.pastSpaces(this.end);
    if (!this.endsAt(at) && (this.text.charCodeAt(at) !== hash || at === this.end)) return false;
    const lineEnd = this.text.indexOf('\n', at);
    this.seek(lineEnd < 0 ? this.text.length : lineEnd + 1);
    return true;
  }

  private blockMap(column: number, depth: number): MapNode | undefined {
    const entries: Entry[] = [];
    do {
      const start = this.at;
      if (!this.name(start)) return undefined;
      const end = this.end;
      const value = this.valueOf(end + 1, column, depth + 1);
      if (!value || !take(entries, this.text.slice(start, end), start, end, value)) return undefined;
    } while (this.column === column);
    return this.column > column ? undefined : mapOf(entries, entries[0]!.keySpan.start, lastEnd(entries), 'block');
  }

  /** Whether a name and its colon stand at an offset. */
  private name(start: number): boolean {
    const { text } = this;
    // What ends a document stands at the margin, and nowhere that is plain.
    if (!isOf(begins, text.charCodeAt(start)) || text.startsWith('... ', start)) return false;
    let at = start + 1;
    for (; text.charCodeAt(at) !== colon || !(this.endsAt(at + 1) || text.charCodeAt(at + 1) === space); at++) {
      const unit = text.charCodeAt(at);
      if (unit === space ? text.charCodeAt(at + 1) === space : unit !== colon && !isOf(inName, unit)) return false;
    }
    this.end = at;
    return text.charCodeAt(at - 1) !== space && at - start < 1000;
  }

  /** What stands after a colon, on its line or below it. */
  private valueOf(from: number, column: number, depth: number): Node | undefined {
    const at = this.pastSpaces(from);
    if (!this.endsAt(at) && (this.text.charCodeAt(at) !== hash || at === from)) return this.inline(at, depth);
    this.end = from;
    if (depth > deepest || !this.leaveLine()) return undefined;
    if (this.isItem() && this.column >= column) return this.blockList(this.column, depth);
    return this.column > column ? this.blockMap(this.column, depth) : scalarOf('', 'empty', from, from);
  }

  private inline(at: number, depth: number): Node | undefined {
    const node = this.single(at, depth) ?? this.plain(at);
    return node && this.leaveLine() ? node : undefined;
  }

  private isItem(): boolean {
    return this.text.charCodeAt(this.at) === dash && this.text.charCodeAt(this.at + 1) === space;
  }

  private blockList(column: number, depth: number): ListNode | undefined {
    const items: Node[] = [];
    const { at: start } = this;
    while (this.column === column && this.isItem()) {
      const item = this.item(this.pastSpaces(this.at + 1), column, depth + 1);
      if (!item) return undefined;
      items.push(item);
    }
    if (this.column > column) return undefined;
    return listOf(items, start, Math.max(items.at(-1)!.span.end, start), 'block');
  }

  private item(at: number, column: number, depth: number): Node | undefined {
    if (depth > deepest || this.endsAt(at) || this.text.charCodeAt(at) === hash) return undefined;
    if (!this.name(at)) return this.inline(at, depth);
    const inside = column + at - this.at;
    this.at = at;
    this.column = inside;
    return this.blockMap(inside, depth);
  }

  /** A quoted scalar or a flow collection; neither where something else stands. */
  private single(at: number, depth: number): Node | undefined {
    const unit = this.text.charCodeAt(at);
    if (unit === quote || unit === apostrophe) return this.quoted(at, unit);
    if (depth > deepest) return undefined;
    return unit === openMap ? this.flowMap(at, depth) : unit === openList ? this.flowList(at, depth) : undefined;
  }

  private quoted(at: number, mark: number): ScalarNode | undefined {
    for (let end = at + 1; !this.endsAt(end); end++) {
      const unit = this.text.charCodeAt(end);
      if (unit === backslash && mark === quote) return undefined;
      if (unit !== mark) continue;
      if (this.text.charCodeAt(end + 1) === mark) return undefined;
      this.end = end + 1;
      return scalarOf(this.text.slice(at + 1, end), mark === quote ? 'double' : 'single', at, end + 1);
    }
    return undefined;
  }

  /** A plain scalar up to the end of its line or a comment; in a flow collection, to the next of its signs. */
  private plain(start: number, inFlow = false): ScalarNode | undefined {
    const { text } = this;
    if (!isOf(begins, text.charCodeAt(start)) && !isNegative(text, start)) return undefined;
    let end = start;
    for (let at = start; !this.endsAt(at); at++) {
      const unit = text.charCodeAt(at);
      if (unit === space) continue;
      if (unit === hash && text.charCodeAt(at - 1) === space) break;
      if (inFlow && isFlowSign(unit)) break;
      if (unit === colon && this.isAfterName(at + 1, inFlow)) return undefined;
      end = at + 1;
    }
    this.end = end;
    return scalarOf(text.slice(start, end), 'plain', start, end);
  }

  private isAfterName(at: number, inFlow: boolean): boolean {
    const unit = this.text.charCodeAt(at);
    return unit === space || this.endsAt(at) || (inFlow && isFlowSign(unit));
  }

  private flowMap(start: number, depth: number): MapNode | undefined {
    const entries: Entry[] = [];
    if (this.isEmptyFlow(start, closeMap)) return mapOf(entries, start, this.end, 'flow');
    for (let at = this.pastSpaces(start + 1); ; at = this.pastSpaces(this.end + 1)) {
      if (!this.name(at)) return undefined;
      const end = this.end;
      const value = this.inFlow(this.pastSpaces(end + 1), depth + 1);
      if (!value || !take(entries, this.text.slice(at, end), at, end, value)) return undefined;
      this.end = this.pastSpaces(this.end);
      const unit = this.text.charCodeAt(this.end);
      if (unit === closeMap) return mapOf(entries, start, ++this.end, 'flow');
      if (unit !== comma) return undefined;
    }
  }

  private flowList(start: number, depth: number): ListNode | undefined {
    const items: Node[] = [];
    if (this.isEmptyFlow(start, closeList)) return listOf(items, start, this.end, 'flow');
    for (let at = this.pastSpaces(start + 1); ; at = this.pastSpaces(this.end + 1)) {
      const item = this.inFlow(at, depth + 1);
      if (!item) return undefined;
      items.push(item);
      this.end = this.pastSpaces(this.end);
      const unit = this.text.charCodeAt(this.end);
      if (unit === closeList) return listOf(items, start, ++this.end, 'flow');
      if (unit !== comma) return undefined;
    }
  }

  private isEmptyFlow(start: number, close: number): boolean {
    const at = this.pastSpaces(start + 1);
    if (this.text.charCodeAt(at) !== close) return false;
    this.end = at + 1;
    return true;
  }

  private inFlow(at: number, depth: number): Node | undefined {
    return this.single(at, depth) ?? this.plain(at, true);
  }
}

const isOf = (is: readonly boolean[], unit: number): boolean => (unit < 128 ? is[unit]! : unit >= 128);

function isNegative(text: string, at: number): boolean {
  const after = text.charCodeAt(at + 1);
  return text.charCodeAt(at) === dash && after >= 0x30 && after <= 0x39;
}

const scalarOf = (text: string, style: ScalarNode['style'], start: number, end: number): ScalarNode => ({
  type: 'scalar',
  text,
  style,
  span: { start, end },
  fixable: true,
});

const listOf = (items: readonly Node[], start: number, end: number, style: ListNode['style']): ListNode => ({
  type: 'list',
  span: { start, end },
  fixable: true,
  style,
  items,
});

const mapOf = (entries: readonly Entry[], start: number, end: number, style: MapNode['style']): MapNode =>
  new EntryMap({ start, end }, true, style, entries);

const lastEnd = (entries: readonly Entry[]): number => entries[entries.length - 1]!.span.end;

/** Adds an entry; false where its name stands already, or too many do. */
function take(entries: Entry[], key: string, start: number, end: number, value: Node): boolean {
  if (entries.length >= mostEntries) return false;
  for (const entry of entries) if (entry.key === key) return false;
  const span = { start, end: Math.max(end, value.span.end) };
  entries.push({ key, keySpan: { start, end }, value, span, fixable: true });
  return true;
}
