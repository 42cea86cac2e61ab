// Sentences with figures in them: the text, and the figures and facts that stand behind its numbers.
import type { Fact } from '../parts/fact';
import { formatQuantity, type Dimension, type UnitName } from '../quantity';
import type { Figure } from './figure';

/** A sentence and what it was made of, in order. */
export interface Said {
  readonly text: string;
  readonly figures: readonly Figure[];
  readonly facts: readonly Fact<unknown>[];
  /** What stands in the text for each of `figures`. */
  readonly shown: readonly string[];
}

type Piece = Figure | Fact<unknown> | Said | string;

/**
 * A sentence as a template: figures print with their unit, facts as they are written in their file.
 * Numbers enter a sentence in no other way, so that each can be traced.
 */
export function say(words: TemplateStringsArray, ...pieces: readonly Piece[]): Said {
  const figures = pieces.filter((piece): piece is Figure => typeof piece === 'object' && 'type' in piece && piece.type === 'figure');
  const shown = showAll(figures);
  const said = { figures: [] as Figure[], facts: [] as Fact<unknown>[], shown: [] as string[] };
  let text = words[0]!;
  let next = 0;
  pieces.forEach((piece, i) => {
    text += render(piece, () => shown[next++]!, said) + words[i + 1]!;
  });
  return { text, ...said };
}

function render(piece: Piece, show: () => string, said: { figures: Figure[]; facts: Fact<unknown>[]; shown: string[] }): string {
  if (typeof piece === 'string') return piece;
  if (!('type' in piece)) {
    said.figures.push(...piece.figures);
    said.facts.push(...piece.facts);
    said.shown.push(...piece.shown);
    return piece.text;
  }
  if (piece.type === 'fact') {
    said.facts.push(piece);
    return piece.text === '' ? 'not stated' : piece.text;
  }
  const shown = show();
  said.figures.push(piece);
  said.shown.push(shown);
  return shown;
}

/** Several sentences, one after the other. */
export function join(...said: readonly Said[]): Said {
  return {
    text: said.map((one) => one.text).join(' '),
    figures: said.flatMap((one) => one.figures),
    facts: said.flatMap((one) => one.facts),
    shown: said.flatMap((one) => one.shown),
  };
}

/** Prints figures so that different values of one dimension look different, in the unit of the first of them. */
export function showAll(figures: readonly Figure[]): string[] {
  const unitOf = new Map<string, UnitName | undefined>();
  for (const one of figures) if (one.unit && !unitOf.has(one.dimension)) unitOf.set(one.dimension, one.unit);
  for (let digits = 4; ; digits++) {
    const shown = figures.map((one) => show(one, unitOf.get(one.dimension), digits));
    if (digits >= 9 || !shown.some((text, i) => figures.some((other, j) => j < i && shown[j] === text && differs(other, figures[i]!)))) return shown;
  }
}

function differs(a: Figure, b: Figure): boolean {
  return a.dimension === b.dimension && (a.lo !== b.lo || a.hi !== b.hi) && Math.abs(a.lo - b.lo) > 1e-9 * Math.abs(a.lo);
}

/** Rates below it that are worked out read better in MB/s; one that a file states stays in the file’s unit. */
const gigabyte = 1e9;

/** One figure as text, `at least`, `at most` and `to` included; `not known` where nothing bounds it. */
export function show(one: Figure, unit = one.unit, digits = 4): string {
  if (one.lo === -Infinity && one.hi === Infinity) return 'not known';
  if (one.dimension === 'count') return showCount(one.lo, one.hi, digits);
  const written = unit === 'GB/s' && !one.from && Math.max(one.lo, Number.isFinite(one.hi) ? one.hi : one.lo) < gigabyte ? 'MB/s' : unit;
  return formatQuantity(one.lo, one.hi, one.dimension as Dimension, { ...(written ? { unit: written } : {}), ...(one.currency ? { currency: one.currency } : {}), digits });
}

function showCount(lo: number, hi: number, digits: number): string {
  const text = (n: number): string => String(Number.isInteger(n) ? n : Number(n.toPrecision(digits)));
  if (lo === hi) return text(lo);
  if (lo === -Infinity) return `at most ${text(hi)}`;
  return hi === Infinity ? `at least ${text(lo)}` : `${text(lo)} to ${text(hi)}`;
}
