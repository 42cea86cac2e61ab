// How readers of outputs point at what they read: lines of a text, values in JSON, and what says nothing.
import type { Doc } from '../parts/doc';
import { endOfLines, type Span } from '../text';
import { readJson, type MapNode, type Node, type ScalarNode } from '../yaml';
import type { Said } from './as-built';
import { isFiller, type Reading, below } from './reading';

/** A value as a tool prints it, with its place. */
export interface Printed {
  readonly text: string;
  readonly doc: Doc;
  readonly span: Span;
}

/** A line of an output, without its end. */
export interface Line {
  readonly text: string;
  readonly start: number;
}

/** The lines of a text, whatever ends them; none of what follows the last end. */
export function* linesOf(text: string): Iterable<Line> {
  const ends = /\r\n|\n|\r/g;
  let start = 0;
  for (const { index, 0: end } of text.slice(0, endOfLines(text)).matchAll(ends)) {
    yield { text: text.slice(start, index), start };
    start = index + end.length;
  }
}

/** Values that a firmware’s maker left unfilled, or that were masked. Source: common practice. */
const MORE_FILLER = /^(?:other|not settable|<out of spec>|<bad index>|no (?:module installed|dimm|asset tag))$/i;

export const saysNothing = (text: string): boolean => isFiller(text) || MORE_FILLER.test(text.trim());

/** The value in the record’s words; undefined where the tool says nothing, or nothing that is understood. */
export function said(
  printed: Printed | undefined,
  what: string,
  put: (text: string) => string | undefined = (text) => text,
): Said | undefined {
  if (!printed) return undefined;
  const text = printed.text.trim();
  const own = saysNothing(text) ? undefined : put(text);
  return own === undefined || own === '' ? undefined : { ...printed, text: own, what };
}

/** The same of a number that stands for a word: 0 is an answer there. */
export function coded(
  printed: Printed | undefined,
  what: string,
  word: (text: string) => string | undefined,
): Said | undefined {
  const text = printed && word(printed.text.trim());
  return printed && text !== undefined ? saidAs(printed, text, what) : undefined;
}

/** The same place and words, for a value that a program worked out from them. */
export const saidAs = ({ doc, span }: Printed, text: string, what: string): Said => ({ text, doc, span, what });

/** The root of a JSON text that is whole; what is cut off or broken is not read at all. */
export const jsonOf = (doc: Doc): Node | undefined =>
  doc.kept(jsonOf, () => readJson(doc.text)?.root ?? null) ?? undefined;

/** The items of a list, or one by itself: where a tool prints a list of one, some print no list. */
export const itemsOf = (node: Node | undefined): readonly Node[] =>
  node === undefined ? [] : node.type === 'list' ? node.items : [node];

export const mapsOf = (node: Node | undefined): readonly MapNode[] =>
  itemsOf(node).filter((one): one is MapNode => one.type === 'map');

const isNull = ({ style, text }: ScalarNode): boolean => style === 'plain' && text === 'null';

/** A scalar of JSON; `null` and an empty text are none. */
export function printedAt(
  doc: Doc,
  node: Node | undefined,
  ...path: readonly (string | number)[]
): Printed | undefined {
  const at = below(node, ...path);
  return at?.type === 'scalar' && !isNull(at) && at.text !== '' ? { text: at.text, doc, span: at.span } : undefined;
}

/** A whole number of no more digits than a number holds exactly. */
export const wholeNumber = (text: string): number | undefined =>
  /^\d{1,15}$/.test(text.trim()) ? Number(text) : undefined;

/** Puts readings of a text into the record’s words, each at its line; undefined where there is none to put. */
export const sayer =
  (doc: Doc) =>
  <T>(read: Reading<T> | undefined, what: string, put: (value: T) => string | undefined): Said | undefined => {
    const text = read && put(read.value);
    return read && text !== undefined ? { text, what, ...lineAt(doc, read.line) } : undefined;
  };

/** A line of a text, from one; where it is not known, the start of the text. */
export function lineAt(doc: Doc, line: number | undefined): { doc: Doc; span: Span } {
  return { doc, span: line === undefined ? { start: 0, end: 0 } : doc.lines.lineSpan(line - 1) };
}
