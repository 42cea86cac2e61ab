// Folding: what stands below a key or in an item over several lines, and comments of several lines.
import type { Doc } from '../core/parts/doc';
import type { Node } from '../core/yaml';

export interface FoldingRange {
  readonly startLine: number;
  readonly endLine: number;
  readonly kind?: 'comment';
}

/** The ranges of a file that can be folded, in order, at most so many: the outer ones first where there are more. */
export function foldingRanges(doc: Doc, most: number): FoldingRange[] {
  const found = new Map<number, FoldingRange & { readonly depth: number }>();
  const texts: FoldingRange[] = [];
  const lineOf = (offset: number): number => doc.lines.positionAt(offset).line;
  const add = (start: number, node: Node, depth: number): void => {
    const [startLine, endLine] = [lineOf(start), lineOf(node.span.end)];
    if (node.type === 'scalar' && endLine > startLine) texts.push({ startLine, endLine });
    // One fold a line: the outermost that begins there.
    if (endLine > startLine && !found.has(startLine)) found.set(startLine, { startLine, endLine, depth });
  };
  const waiting: { readonly node: Node; readonly depth: number }[] = [];
  if (doc.parsed.root) waiting.push({ node: doc.parsed.root, depth: 0 });
  for (let at = waiting.pop(); at; at = waiting.pop()) {
    const { node, depth } = at;
    const children =
      node.type === 'map'
        ? node.entries.filter(({ merged }) => !merged).map(({ keySpan, value }) => ({ start: keySpan.start, value }))
        : node.type === 'list'
          ? node.items.map((value) => ({ start: value.span.start, value }))
          : [];
    for (const { start, value } of children) add(start, value, depth);
    waiting.push(...children.map(({ value }) => ({ node: value, depth: depth + 1 })).reverse());
  }
  for (const range of commentsIn(doc, texts)) if (!found.has(range.startLine)) found.set(range.startLine, range);
  return [...found.values()]
    .sort((a, b) => a.depth - b.depth || a.startLine - b.startLine)
    .slice(0, most)
    .sort((a, b) => a.startLine - b.startLine)
    .map(({ depth: _, ...range }) => range);
}

/** Blocks of lines that are comments and nothing else; a text of several lines may look like some. */
function commentsIn(doc: Doc, texts: readonly FoldingRange[]): (FoldingRange & { readonly depth: number })[] {
  const blocks: (FoldingRange & { readonly depth: number })[] = [];
  const isText = (line: number): boolean => texts.some(({ startLine, endLine }) => startLine < line && line <= endLine);
  let first = -1;
  const lines = doc.text.split(/\r\n|\r|\n/);
  for (const [i, line] of [...lines, ''].entries()) {
    const isComment = /^[ \t]*#/.test(line) && !isText(i);
    if (isComment && first < 0) first = i;
    if (isComment || first < 0) continue;
    if (i - 1 > first) blocks.push({ startLine: first, endLine: i - 1, kind: 'comment', depth: 0 });
    first = -1;
  }
  return blocks;
}
