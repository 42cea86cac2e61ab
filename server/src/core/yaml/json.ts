// Reads JSON into nodes with their places, some ten times as fast as the library reads it as YAML. A comma before a
// closing bracket is passed over: sensors 3.6 prints one behind a chip without features. Anything else that is no JSON
// is refused, what is cut off among it.
import { limits } from './limits';
import { EntryMap, type Entry, type Node, type ScalarNode } from './nodes';

export interface JsonText {
  readonly root: Node;
  /** Whether the library reads the very same of it: not where a name stands twice, or far from its colon. */
  readonly isYaml: boolean;
}

/** The root of a JSON text, a map or a list; undefined for anything else. Of a name twice, `get` gives the first. */
export function readJson(text: string): JsonText | undefined {
  if (text.length > limits.bytes || !/^\s*[{[]/.test(text)) return undefined;
  const reader = new JsonReader(text);
  const root = reader.read();
  return root && { root, isYaml: reader.isYaml };
}

const [quote, backslash, comma, colon] = [...'"\\,:'].map((sign) => sign.charCodeAt(0)) as [
  number,
  number,
  number,
  number,
];
const [openList, closeList, openMap, closeMap] = [...'[]{}'].map((sign) => sign.charCodeAt(0)) as [
  number,
  number,
  number,
  number,
];

/** Past it the library takes no key in a flow map. */
const longestKey = 1000;
const bare = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?=[\s,\]}]|$)/y;
const escapes: Readonly<Record<string, string>> = { b: '\b', f: '\f', n: '\n', r: '\r', t: '\t' };

class JsonReader {
  isYaml = true;
  private at = 0;

  constructor(private readonly text: string) {}

  read(): Node | undefined {
    if (this.text.startsWith('\uFEFF')) this.at = 1;
    this.skip();
    const root = this.value(0);
    this.skip();
    return this.at === this.text.length ? root : undefined;
  }

  /** Passes over blanks and gives the sign that stands behind them. */
  private skip(): number {
    for (; ; this.at++) {
      const unit = this.text.charCodeAt(this.at);
      if (unit !== 0x20 && unit !== 0x0a && unit !== 0x0d && unit !== 0x09) return unit;
    }
  }

  private value(depth: number): Node | undefined {
    const unit = this.text.charCodeAt(this.at);
    if (unit === quote) return this.quoted();
    if (unit === openMap || unit === openList) {
      if (depth >= limits.depth) return undefined;
      return unit === openMap ? this.map(depth + 1) : this.list(depth + 1);
    }
    bare.lastIndex = this.at;
    const found = bare.exec(this.text)?.[0];
    return found === undefined ? undefined : this.scalar(found, 'plain', this.at, this.at + found.length);
  }

  private scalar(text: string, style: ScalarNode['style'], start: number, end: number): ScalarNode {
    this.at = end;
    return { type: 'scalar', text, style, span: { start, end }, fixable: true };
  }

  private quoted(): ScalarNode | undefined {
    const { text, at: start } = this;
    for (let end = start + 1; ; end++) {
      const unit = text.charCodeAt(end);
      if (unit === quote) return this.scalar(text.slice(start + 1, end), 'double', start, end + 1);
      if (unit === backslash) return this.escaped(start, end);
      if (!(unit >= 0x20)) return undefined;
    }
  }

  /** A text in quotes from its first backslash on. */
  private escaped(start: number, from: number): ScalarNode | undefined {
    const { text } = this;
    const pieces = [text.slice(start + 1, from)];
    for (let at = from; ; ) {
      const sign = text[at];
      if (sign === '"') return this.scalar(pieces.join(''), 'double', start, at + 1);
      if (sign === undefined || sign < ' ') return undefined;
      if (sign !== '\\') {
        pieces.push(sign);
        at++;
        continue;
      }
      const name = text[at + 1] ?? '';
      const code = name === 'u' ? /^[0-9a-fA-F]{4}$/.exec(text.slice(at + 2, at + 6))?.[0] : undefined;
      const plain = '"\\/'.includes(name) ? name : escapes[name];
      if (code === undefined && !plain) return undefined;
      pieces.push(code === undefined ? plain! : String.fromCharCode(Number.parseInt(code, 16)));
      at += code === undefined ? 2 : 6;
    }
  }

  private map(depth: number): Node | undefined {
    const start = this.at++;
    const entries: Entry[] = [];
    const names = new Set<string>();
    for (let unit = this.skip(); unit !== closeMap; unit = this.skip()) {
      const key = unit === quote ? this.quoted() : undefined;
      if (!key) return undefined;
      if (this.skip() !== colon) return undefined;
      const isFar = this.at - key.span.end > 0 && /\s/.test(this.text.slice(key.span.end, this.at));
      if (names.has(key.text) || isFar || key.text === '<<' || key.span.end - key.span.start > longestKey)
        this.isYaml = false;
      this.at++;
      this.skip();
      const value = this.value(depth);
      if (!value || !this.leave(closeMap)) return undefined;
      const span = { start: key.span.start, end: value.span.end };
      entries.push({ key: key.text, keySpan: key.span, value, span, fixable: true });
      names.add(key.text);
    }
    return new EntryMap({ start, end: ++this.at }, true, 'flow', entries);
  }

  private list(depth: number): Node | undefined {
    const start = this.at++;
    const items: Node[] = [];
    while (this.skip() !== closeList) {
      const value = this.value(depth);
      if (!value || !this.leave(closeList)) return undefined;
      items.push(value);
    }
    return { type: 'list', span: { start, end: ++this.at }, fixable: true, style: 'flow', items };
  }

  /** Passes over the comma behind a value; false where neither one stands there nor the end. */
  private leave(close: number): boolean {
    const unit = this.skip();
    if (unit === comma) this.at++;
    return unit === comma || unit === close;
  }
}
