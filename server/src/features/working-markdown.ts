// The working of an answer as lines of a list: its value, its formula or source, and what went into it.
import { writtenAt } from '../core/figures/figure';
import type { Used } from '../core/figures/truth';
import type { Step } from '../core/judge/working-steps';
import type { Doc } from '../core/parts/doc';
import type { Span } from '../core/text';
import { code, item, type Block, type Piece } from './prose';

const deepest = 4;
const mostLines = 24;

/** A working as a list; steps within steps stand below them. `home` is the file that is looked at. */
export function workingBlocks(steps: readonly Step[], home: Doc, depth = 0): Block[] {
  const blocks = steps.flatMap((step) => blocksOf(step, home, depth));
  if (blocks.length <= mostLines) return blocks;
  return [...blocks.slice(0, mostLines), item(depth, `… and ${blocks.length - mostLines} lines more.`)];
}

function blocksOf(step: Step, home: Doc, depth: number): Block[] {
  if (depth > deepest) return [];
  return [item(depth, ...lineOf(step, home)), ...step.inputs.flatMap((input) => blocksOf(input, home, depth + 1))];
}

function lineOf({ label, value, figure, formula, repeated, from, source }: Step, home: Doc): Piece[] {
  return [
    ...(figure ? [label, ': ', { strong: value }] : [code(label), ': ', ...(from ? [code(value)] : [value])]),
    ...(formula ? [' = ', formula] : []),
    ...(repeated ? [' (as above)'] : []),
    ...(from ? written(from.doc, from.span, home) : []),
    ...(source && !from ? [` (${source})`] : []),
  ];
}

function written(doc: Doc, span: Span, home: Doc): Piece[] {
  const line = doc.lines.positionAt(span.start).line + 1;
  return doc === home ? [` (line ${line})`] : [' (', code(doc.name), `, line ${line})`];
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
