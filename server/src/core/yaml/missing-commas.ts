// Commas that are missing within braces and brackets. The library reads what stands on both sides as one thing, and
// says so of each piece of it; what is at fault is the one place between.
import type { Edit } from '../text/edit';
import type { Span } from '../text/span';
import { plainMessage } from './messages';

/** What the library says of a text. */
export interface LibraryError {
  readonly code: string;
  readonly message: string;
  readonly pos: readonly [number, number];
}

export interface Fault {
  readonly message: string;
  readonly span: Span;
  /** What is to stand there, where that has one reading, and the edit that writes it. */
  readonly meant?: { readonly text: string; readonly edit: Edit };
}

/** How much of a line is looked at on either side of a place. */
const most = 500;

/** Where something begins that a comma is to stand before, for each error that shows one to be missing. */
export function commasMissing(errors: readonly LibraryError[], text: string): ReadonlyMap<LibraryError, Span> {
  return new Map(
    errors.flatMap((error) => {
      const place = placeOf(error, errors, text);
      return place ? [[error, place] as const] : [];
    }),
  );
}

/** The fault where a comma is missing; none where another error tells of it; undefined where it is something else. */
export function commaFaults(
  error: LibraryError,
  commas: ReadonlyMap<LibraryError, Span>,
  text: string,
): Fault[] | undefined {
  const at = commas.get(error);
  if (at) return [faultAt(at, text)];
  const [start] = error.pos;
  for (const [{ code, pos }, place] of commas) {
    const from = code === 'BLOCK_IN_FLOW' || code === 'MULTILINE_IMPLICIT_KEY' ? pos[0] : place.start;
    if (start >= from && (start <= pos[1] || isOneLine(text, place.start, start))) return [];
  }
  return undefined;
}

/** Whether no line ends between two places; far apart, they count as on two. */
const isOneLine = (text: string, from: number, to: number): boolean =>
  to - from <= most && !/[\r\n]/.test(text.slice(from, to));

const lineBehind = (text: string, at: number): string => /^[^\r\n]*/.exec(text.slice(at, at + most))![0];

function lineBefore(text: string, at: number): string {
  const before = text.slice(Math.max(at - most, 0), at);
  return before.slice(Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1);
}

/** Whether something is wrong only since a comma is missing right before or right behind it. */
export const besideComma = ({ start, end }: Span, commas: Iterable<Span>, text: string): boolean =>
  [...commas].some(
    (place) =>
      (end <= place.start && text.slice(end, place.start).trim() === '') ||
      (start >= place.end && text.slice(place.end, start).trim() === ''),
  );

function placeOf({ code, message, pos }: LibraryError, all: readonly LibraryError[], text: string): Span | undefined {
  const [start, end] = pos;
  if (code === 'MISSING_CHAR' && message.startsWith('Missing , '))
    return text[start] === ':' ? undefined : wordAt(text, start);
  if (code === 'UNEXPECTED_TOKEN' && message.endsWith(' at node end'))
    return isOpenBefore(text, start) ? wordAt(text, start) : undefined;
  if (!all.some((one) => one.code === 'BLOCK_IN_FLOW' && one.pos[0] <= start && end <= one.pos[1])) return undefined;
  if (code === 'MULTILINE_IMPLICIT_KEY') {
    const whole = text.slice(start, end);
    const line = whole.slice(Math.max(whole.lastIndexOf('\n'), whole.lastIndexOf('\r')) + 1).trimStart();
    return line === '' || line === whole ? undefined : { start: end - line.length, end };
  }
  const isLong = all.some((one) => one.code === 'MULTILINE_IMPLICIT_KEY' && one.pos[0] === start);
  return code === 'BLOCK_IN_FLOW' && !isLong ? keyBehindValue(text, start) : undefined;
}

/** The key in `150 mm mass: 900 g`: behind a value on one line, with a colon of its own. */
function keyBehindValue(text: string, start: number): Span | undefined {
  const line = lineBehind(text, start);
  const colon = line.search(/:(?=\s)/);
  const before = line.slice(0, Math.max(colon, 0));
  const at = Math.max(before.lastIndexOf(' '), before.lastIndexOf('\t')) + 1;
  const isKey = /^(?:"[^"]*"|'[^']*'|[\w.-]+)$/.test(before.slice(at));
  const isValue = !/[#,:[\]{}]/.test(before.slice(0, at).replace(/"[^"]*"|'[^']*'/g, ''));
  return at > 0 && isKey && isValue ? { start: start + at, end: start + colon } : undefined;
}

function faultAt(span: Span, text: string): Fault {
  const message = plainMessage('', 'Missing , between');
  const end = text.slice(0, span.start).trimEnd().length;
  const line = lineBefore(text, end);
  // Behind a comment a comma would be part of it.
  if (/(?:^|\s)#/.test(line)) return { message, span };
  const from = Math.max(...[',', '{', '[', ':'].map((sign) => line.lastIndexOf(sign, line.length - 2))) + 1;
  const before = line.slice(from).trimStart();
  // An anchor, alias or tag may belong to either side, and a colon asks for a value.
  if (/(?:^|\s)[&*!]|:$/.test(before) || /[&*!]/.test(text.charAt(span.start))) return { message, span };
  const written = `${before}, ${text.slice(span.start, Math.min(span.end, span.start + most))}`;
  return { message, span, meant: { text: written, edit: { span: { start: end, end }, text: ',' } } };
}

function wordAt(text: string, start: number): Span {
  return { start, end: start + Math.max(1, /^[^\s,:[\]{}]*/.exec(lineBehind(text, start))![0].length) };
}

/** Whether a brace or bracket of the same line is still open at a place behind one that closes, or behind quotes. */
function isOpenBefore(text: string, at: number): boolean {
  const line = lineBefore(text, at).trimEnd();
  if (!/[}\]"']/.test(line.slice(-1))) return false;
  let depth = 0;
  for (const [sign] of line.matchAll(/"[^"]*"|'[^']*'|[{}[\]]/g))
    if (sign === '{' || sign === '[') depth++;
    else if (sign === '}' || sign === ']') depth--;
  return depth > 0;
}
