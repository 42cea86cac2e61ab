// The comments of a guide that speak to Fettle: `<!-- fettle: power.wall -->` and `<!-- /fettle -->`.
import type { Span } from '../text';
import type { Prose } from './markdown';

/** One comment of ours: what it says, where its words stand, and where the whole comment does. */
export interface Marker {
  readonly says: string;
  /** Its words; of a closing comment, all of it. */
  readonly words: Span;
  readonly span: Span;
  readonly closes: boolean;
  /** The prose it stands in, by number: a value and its marks stand in the same. */
  readonly prose: number;
}

const opening = '<!--';
const closing = '-->';

/** The markers in prose, in order; `spanOf` gives where lines of prose stand. */
export function markersIn(text: string, prose: readonly Prose[], spanOf: (prose: Prose) => Span): Marker[] {
  return prose.flatMap((one, i) => {
    const { start, end } = spanOf(one);
    const own = text.slice(start, end);
    return own.includes(opening)
      ? commentsIn(own, one.type !== 'html').flatMap((at) => markerAt(own, at, start, i))
      : [];
  });
}

function markerAt(own: string, { start, end }: Span, shift: number, prose: number): Marker[] {
  const body = own.slice(start + opening.length, end - closing.length);
  const span = { start: shift + start, end: shift + end };
  if (/^\s*\/\s*fettle\s*$/.test(body)) return [{ says: '', words: span, span, closes: true, prose }];
  const head = /^\s*fettle\s*:/.exec(body)?.[0];
  if (head === undefined) return [];
  const says = body.slice(head.length).trim();
  const from = span.start + opening.length + head.length;
  const at = from + (body.length - head.length - body.slice(head.length).trimStart().length);
  return [{ says, words: { start: at, end: at + says.length }, span, closes: false, prose }];
}

/** Comments of some prose; none within code, and none behind a backslash. */
function commentsIn(own: string, hasCode: boolean): Span[] {
  const found: Span[] = [];
  const runs = hasCode ? runsOf(own) : new Map<number, number[]>();
  for (let at = 0; at < own.length; ) {
    const char = own[at];
    if (hasCode && char === '\\') at += 2;
    else if (hasCode && char === '`') at = afterCode(own, at, runs);
    else if (char === '<' && own.startsWith(opening, at)) {
      const end = own.indexOf(closing, at + opening.length);
      if (end < 0) return found;
      found.push({ start: at, end: end + closing.length });
      at = end + closing.length;
    } else at++;
  }
  return found;
}

/** Where runs of backticks begin, by their length. */
function runsOf(own: string): Map<number, number[]> {
  const runs = new Map<number, number[]>();
  for (const { 0: run, index } of own.matchAll(/`+/g)) {
    const same = runs.get(run.length);
    if (same) same.push(index);
    else runs.set(run.length, [index]);
  }
  return runs;
}

/** Behind the code that begins here, or behind the backticks where none does. */
function afterCode(own: string, at: number, runs: ReadonlyMap<number, number[]>): number {
  let length = 0;
  while (own[at + length] === '`') length++;
  const same = runs.get(length) ?? [];
  while (same.length > 0 && same[0]! <= at) same.shift();
  return same.length > 0 ? same[0]! + length : at + length;
}
