// The working of a figure or fact as lines of a list: its value, its formula or source, and what went into it.
import { show } from '../core/figures/say';
import type { Figure } from '../core/figures/figure';
import type { Used } from '../core/figures/truth';
import type { Doc } from '../core/parts/doc';
import type { Span } from '../core/text';
import { code, item, type Block, type Piece } from './prose';

const deepest = 4;
const mostLines = 24;

/** The working of what an answer used. What went into a figure stands below it, each figure once. */
export function workingBlocks(used: readonly Used[], home: Doc, depth = 0): Block[] {
  const met = new Set<Used>();
  const blocks: Block[] = [];
  for (const one of used) add(one, depth, home, met, blocks);
  if (blocks.length <= mostLines) return blocks;
  return [...blocks.slice(0, mostLines), item(depth, `… and ${blocks.length - mostLines} lines more.`)];
}

function add(used: Used, depth: number, home: Doc, met: Set<Used>, blocks: Block[]): void {
  if (met.has(used) || depth > deepest) return;
  met.add(used);
  if (used.type === 'fact') {
    blocks.push(item(depth, code(used.path), ': ', used.node ? code(used.text) : 'not stated', ...(used.node ? written(used.doc, used.node.span, home) : [])));
    return;
  }
  blocks.push(item(depth, ...figureLine(used, home)));
  for (const input of used.inputs) add(input, depth + 1, home, met, blocks);
}

/** One figure in one line. */
export function figureLine(one: Figure, home: Doc): Piece[] {
  const value = one.missing.length > 0 && one.inputs.length === 0 ? 'not stated' : show(one);
  const behind: Piece[] = one.from ? written(one.from.doc, one.from.span, home) : one.formula ? [' = ', one.formula] : [];
  return [one.label, ': ', { strong: value }, ...behind, ...(one.source && !one.from ? [` (${one.source})`] : [])];
}

function written(doc: Doc, span: Span, home: Doc): Piece[] {
  const line = doc.lines.positionAt(span.start).line + 1;
  return doc === home ? [` (line ${line})`] : [' (', code(doc.name), `, line ${line})`];
}

/** The figures among what was used, and those they were worked out from, that were read from a place in a file. */
export function readFrom(figure: Figure, doc: Doc, span: Span): boolean {
  if (figure.from) return figure.from.doc === doc && figure.from.span.start === span.start;
  return figure.inputs.some((input) => readFrom(input, doc, span));
}
