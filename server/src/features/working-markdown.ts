// The working of an answer as lines of a list: its value, its formula or source, and what went into it.
import { writtenAt } from '../core/figures/figure';
import type { Used } from '../core/figures/truth';
import type { Grade } from '../core/manifest/house-file';
import type { Step } from '../core/judge/working-steps';
import type { Doc } from '../core/parts/doc';
import type { Span } from '../core/text';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import { code, item, type Block, type Piece } from './prose';
import type { MarkupContent } from './shapes';

const deepest = 4;

export interface HoverOptions {
  readonly kind: MarkupContent['kind'];
  /** Absent: English. */
  readonly language?: Language;
  /** What shows the whole working of a finding, as people find it; else the command line. */
  readonly workings?: string;
  /** The lightest grade of finding that the client shows by itself above a hover, where it does. */
  readonly shownFrom?: Grade;
}

/** Where a working is shown: the file that is looked at, and the way to a line of any. */
export interface Shown {
  readonly home: Doc;
  /** The address of a file; undefined where links are of no use. */
  readonly uriOf?: (doc: Doc) => string;
  /** So many characters of a formula are shown; all where nothing is said. */
  readonly longest?: number;
  /** Absent: English. */
  readonly language?: Language;
}

/** A working as a list; steps within steps stand below them. */
export function workingBlocks(steps: readonly Step[], shown: Shown, depth = 0, most = deepest): Block[] {
  return steps.flatMap((step) => blocksOf(step, shown, depth, most));
}

function blocksOf(step: Step, shown: Shown, depth: number, most: number): Block[] {
  if (depth > most) return [];
  return [
    item(depth, ...lineOf(step, shown)),
    ...step.inputs.flatMap((input) => blocksOf(input, shown, depth + 1, most)),
  ];
}

function lineOf({ label, value, figure, formula, repeated, from, source }: Step, shown: Shown): Piece[] {
  const language = shown.language ?? english();
  return [
    ...(figure
      ? [language.plain(label), ': ', { strong: language.label(value) }]
      : [code(label), ': ', ...(from ? [code(value)] : [value])]),
    ...(formula ? [' = ', cut(language.plain(formula), shown.longest)] : []),
    ...(repeated ? [` (${language.plain('as above')})`] : []),
    ...(from ? written(from.doc, from.span, shown, language) : []),
    ...(source && !from ? [` (${language.plain(source)})`] : []),
  ];
}

const cut = (formula: string, longest = formula.length): string =>
  formula.length > longest ? `${formula.slice(0, formula.lastIndexOf(' ', longest - 1) + 1)}…` : formula;

function written(doc: Doc, span: Span, { home, uriOf }: Shown, language: Language): Piece[] {
  const line = doc.lines.positionAt(span.start).line + 1;
  const text = doc === home ? language.words`line ${line}` : language.words`${doc.name}, line ${line}`;
  return [' (', uriOf ? { text, href: `${uriOf(doc)}#L${line}` } : text, ')'];
}

/**
 * So many lines of a working, in their order: what is held against each other before what it was worked out from. The
 * last line says how many there are besides.
 */
export function atMost(blocks: readonly Block[], most: number, depth = 0, language = english()): readonly Block[] {
  if (blocks.length <= most) return blocks;
  const more = language.words`… and ${blocks.length - most + 1} lines more.`;
  return [...uppermost(blocks, most - 1), item(depth, more)];
}

/** The lines that stand highest, in their order. */
export function uppermost(blocks: readonly Block[], most: number): readonly Block[] {
  const depths = blocks.map((block) => (block.type === 'item' ? block.depth : 0));
  const highest = depths.map((_, i) => i).sort((a, b) => depths[a]! - depths[b]! || a - b);
  const kept = new Set(highest.slice(0, most));
  return blocks.filter((_, i) => kept.has(i));
}

/** Whether a fact, or a figure with all that it was worked out from and decided by, stands at a place in a file. */
export function readFrom(used: Used, doc: Doc, span: Span): boolean {
  const from = used.type === 'fact' ? writtenAt(used) : used.from;
  if (from?.doc === doc && from.span.start === span.start) return true;
  if (used.type === 'fact') return false;
  return (
    (!from && used.inputs.some((input) => readFrom(input, doc, span))) ||
    used.decidedBy.some((fact) => readFrom(fact, doc, span))
  );
}
