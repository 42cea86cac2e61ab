// Text for hovers and pages: written once as pieces, printed as Markdown or as plain text.
import { markdownCode, markdownFence, markdownLine, markdownText, visible } from '../core/text';
import type { MarkupContent } from './shapes';

/** A piece of a line. A bare string is prose; whatever it holds, it is shown as text and never read as Markdown. */
export type Piece = string | { readonly code: string } | { readonly strong: string } | Link;
/** A way to a place in a file, or to a page; where nothing follows links, its text alone. */
export interface Link {
  readonly text: string;
  readonly href: string;
}
export type Line = readonly Piece[];
export type Block =
  | { readonly type: 'paragraph'; readonly line: Line }
  | { readonly type: 'heading'; readonly line: Line }
  | { readonly type: 'item'; readonly line: Line; readonly depth: number }
  | { readonly type: 'verbatim'; readonly text: string; readonly language: string };

export const code = (text: string): Piece => ({ code: text });
export const strong = (text: string): Piece => ({ strong: text });
export const paragraph = (...line: Piece[]): Block => ({ type: 'paragraph', line });
export const heading = (...line: Piece[]): Block => ({ type: 'heading', line });
export const item = (depth: number, ...line: Piece[]): Block => ({ type: 'item', line, depth });
export const verbatim = (text: string, language: string): Block => ({ type: 'verbatim', text, language });

/** Prints blocks in the wanted kind of markup. */
export function markup(blocks: readonly Block[], kind: MarkupContent['kind']): MarkupContent {
  return { kind, value: kind === 'markdown' ? markdown(blocks) : plain(blocks) };
}

/** Markdown without HTML or images, and no link but our own: every character that could mean something is escaped. */
export function markdown(blocks: readonly Block[]): string {
  return joined(blocks, (block) => {
    switch (block.type) {
      case 'paragraph':
        return inline(block.line);
      case 'heading':
        return `### ${inline(block.line)}`;
      case 'item':
        return `${'  '.repeat(block.depth)}- ${inline(block.line)}`;
      case 'verbatim':
        return markdownFence(block.text, block.language);
    }
  });
}

export function plain(blocks: readonly Block[]): string {
  return joined(blocks, (block) => {
    switch (block.type) {
      case 'paragraph':
      case 'heading':
        return plainLine(block.line);
      case 'item':
        return `${'  '.repeat(block.depth)}- ${plainLine(block.line)}`;
      case 'verbatim':
        return lines(block.text)
          .map((line) => `  ${line}`)
          .join('\n');
    }
  });
}

/** Items follow one another without a gap; everything else stands apart. */
function joined(blocks: readonly Block[], print: (block: Block) => string): string {
  return blocks
    .map((block, i) => {
      const gap = i === 0 ? '' : block.type === 'item' && blocks[i - 1]!.type === 'item' ? '\n' : '\n\n';
      return gap + print(block);
    })
    .join('');
}

function inline(line: Line): string {
  return markdownLine(
    line
      .map((piece) => {
        if (typeof piece === 'string') return markdownText(piece);
        if ('href' in piece) return `[${markdownText(piece.text)}](${plainAddress(piece.href)})`;
        return 'code' in piece ? markdownCode(piece.code) : `**${markdownText(piece.strong.trim())}**`;
      })
      .join(''),
  );
}

/** An address that ends nothing around it: what Markdown could read otherwise stands in its encoded form. */
const plainAddress = (href: string): string =>
  href
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .replace(/[^\w\-.~:/?#@!$&+,;=%]/gu, (one) =>
      one < '\x80' ? `%${one.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}` : encodeURIComponent(one),
    );

function plainLine(line: Line): string {
  return line.map((piece) => visible(textOf(piece))).join('');
}

function textOf(piece: Piece): string {
  if (typeof piece === 'string') return piece;
  return 'href' in piece ? piece.text : 'code' in piece ? piece.code : piece.strong;
}

const lines = (text: string): string[] => text.replace(/^\n|\n$/g, '').split(/\r\n|\r|\n/);
