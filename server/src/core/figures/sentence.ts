// Sentences with figures in them: the text, and the figures and facts that stand behind its numbers.
import type { Fact } from '../parts/fact';
import { formatQuantity, type Dimension } from '../quantity';
import type { Figure } from './figure';

/** A sentence and what it was made of, in order. */
export interface Sentence {
  readonly text: string;
  readonly figures: readonly Figure[];
  readonly facts: readonly Fact<unknown>[];
  /** What stands in the text for each of `figures`. */
  readonly shown: readonly string[];
  /** The words around the pieces, as they are written, one more than there are pieces. */
  readonly words: readonly string[];
  /** What was put in between, from which the sentence is made in another language. */
  readonly pieces: readonly Piece[];
}

export type Piece = Figure | Fact<unknown> | Sentence | string;

/**
 * A sentence as a template: figures print with their unit, facts as they are written in their file.
 * Numbers enter a sentence in no other way, so that each can be traced.
 */
export function sentence(words: TemplateStringsArray, ...pieces: readonly Piece[]): Sentence {
  const own = pieces.filter(isFigure);
  const ownShown = own.length > 0 ? showAll(own) : [];
  const [figures, facts, shown]: [Figure[], Fact<unknown>[], string[]] = [[], [], []];
  let text = unfolded(words[0]!);
  let next = 0;
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i]!;
    if (typeof piece === 'string') {
      text += piece;
    } else if (!('type' in piece)) {
      figures.push(...piece.figures);
      facts.push(...piece.facts);
      shown.push(...piece.shown);
      text += piece.text;
    } else if (piece.type === 'fact') {
      facts.push(piece);
      text += piece.text === '' ? 'not stated' : piece.text;
    } else {
      figures.push(piece);
      text += shown[shown.push(ownShown[next++]!) - 1]!;
    }
    text += unfolded(words[i + 1]!);
  }
  return { text, figures, facts, shown, words, pieces };
}

/** Whether what is said begins with a label of ours, `the radiator of …`, which is no name that stands as it is. */
export function opensWithArticle({ words, pieces: [first] }: Sentence): boolean {
  if (words[0] !== '' || first === undefined) return false;
  if (typeof first === 'string') return first.startsWith('the ');
  return !('type' in first) && opensWithArticle(first);
}

/** A sentence that stands by itself: its first letter is a capital, unless a name begins it. */
export const standing = (said: Sentence): Sentence =>
  opensWithArticle(said) ? { ...said, text: capital(said.text) } : said;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A line break in the template, with the blanks that indent the next line, is one blank in the sentence. */
export const unfolded = (words: string): string => (words.includes('\n') ? words.replace(/\n */g, ' ') : words);

const isFigure = (piece: Piece): piece is Figure =>
  typeof piece === 'object' && 'type' in piece && piece.type === 'figure';

/** Several sentences, one after the other. */
export function join(...said: readonly Sentence[]): Sentence {
  return {
    text: said.map((one) => one.text).join(' '),
    figures: said.flatMap((one) => one.figures),
    facts: said.flatMap((one) => one.facts),
    shown: said.flatMap((one) => one.shown),
    words: ['', ...said.slice(1).map(() => ' '), ''],
    pieces: said,
  };
}

/** Prints figures so that different values of one dimension look different, in the unit of the first of them. */
export function showAll(figures: readonly Figure[]): string[] {
  for (let digits = 4; ; digits++) {
    const shown = figures.map((one) =>
      show(one, figures.find(({ unit, dimension }) => unit && dimension === one.dimension)?.unit, digits),
    );
    if (digits >= 9 || !looksAlike(figures, shown)) return shown;
  }
}

/** Whether two values of one dimension differ and read the same. */
function looksAlike(figures: readonly Figure[], shown: readonly string[]): boolean {
  for (let i = 1; i < shown.length; i++)
    for (let j = 0; j < i; j++) if (shown[i] === shown[j] && differs(figures[i]!, figures[j]!)) return true;
  return false;
}

function differs(a: Figure, b: Figure): boolean {
  return (
    a.dimension === b.dimension && (a.lo !== b.lo || a.hi !== b.hi) && Math.abs(a.lo - b.lo) > 1e-9 * Math.abs(a.lo)
  );
}

/** Rates below it that are worked out read better in MB/s; one that a file states stays in the file’s unit. */
const gigabyte = 1e9;

/** One figure as text, `at least`, `at most` and `to` included; `not known` where nothing bounds it. */
export function show(one: Figure, unit = one.unit, digits = 4): string {
  if (one.lo === -Infinity && one.hi === Infinity) return 'not known';
  if (one.dimension === 'count') return showCount(one.lo, one.hi, digits);
  const written =
    unit === 'GB/s' && !one.from && Math.max(one.lo, Number.isFinite(one.hi) ? one.hi : one.lo) < gigabyte
      ? 'MB/s'
      : unit;
  return formatQuantity(one.lo, one.hi, one.dimension as Dimension, { unit: written, currency: one.currency, digits });
}

function showCount(lo: number, hi: number, digits: number): string {
  const text = (n: number): string => String(Number.isInteger(n) ? n : Number(n.toPrecision(digits)));
  if (lo === hi) return text(lo);
  if (lo === -Infinity) return `at most ${text(hi)}`;
  return hi === Infinity ? `at least ${text(lo)}` : `${text(lo)} to ${text(hi)}`;
}
