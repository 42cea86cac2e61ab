// The only importer of markdown-it: which lines of a Markdown text are fenced blocks, and which are prose.
import ParserBlock, { type Token } from 'markdown-it/lib/parser_block.mjs';

/** A fenced block: what stands behind its fence, its lines’ own texts, and the first and last line of those. */
export interface Fence {
  readonly info: string;
  /** The line of the opening fence. */
  readonly line: number;
  /** The text of each line, without what a quote or a list puts before it. */
  readonly lines: readonly string[];
  readonly closed: boolean;
}

/** Lines that are read as prose: the first, and the one after the last. */
export interface Prose {
  readonly from: number;
  readonly to: number;
  readonly type: 'heading' | 'paragraph' | 'html';
}

export interface Blocks {
  readonly fences: readonly Fence[];
  readonly prose: readonly Prose[];
}

/** Deeper quotes and lists are read as text. */
const deepest = 60;

/** The blocks of a text by its lines, which may end in any way. */
export function blocksOf(lines: readonly string[]): Blocks {
  const tokens: Token[] = [];
  const block = new ParserBlock();
  // A table is read as lines of prose; a definition of a link holds nothing of ours.
  block.ruler.disable(['table', 'reference']);
  block.parse(lines.join('\n'), { block, options: { html: true, maxNesting: deepest } }, {}, tokens);
  const fences: Fence[] = [];
  const prose: Prose[] = [];
  for (const [i, { type, info, content, map }] of tokens.entries()) {
    if (!map) continue;
    const [from, to] = map;
    if (type === 'fence') {
      const own = content === '' ? [] : content.replace(/\n$/, '').split('\n');
      fences.push({ info: info.trim(), line: from, lines: own, closed: to - from > own.length + 1 });
    } else if (type === 'html_block') prose.push({ from, to, type: 'html' });
    else if (type === 'inline')
      prose.push({ from, to, type: tokens[i - 1]?.type === 'heading_open' ? 'heading' : 'paragraph' });
  }
  return { fences, prose };
}
