// A comment of a pull request in Markdown: a table that is seen at once, everything else folded, within what a comment
// holds. Whatever comes from a file is prose that notifies nobody and links to nothing.
import { markdownCode, markdownLine, markdownQuiet } from '../core/text';
import type { Language } from '../core/words/language';
import { readerLimits } from './reader-limits';

/** By this line the comment is found again and edited in place; no text of a file can hold it. */
export const marker = '<!-- fettle-comment -->';

/** Rows that the table has; what more there is stands folded, worst first. */
export const mostRows = 8;

/** A longer text is cut: the files hold all of it. */
const longestText = 700;

export const prose = (text: string): string => markdownLine(markdownQuiet(cut(text)));

/** What may be copied, as a path, a place, a revision: forges look for nothing in code. What is odd is prose. */
export const code = (text: string): string => (copied.test(text) ? markdownCode(cut(text)) : prose(text));
const copied = /^[\p{L}\p{N} _.,:()[\]/-]+$/u;

function cut(text: string): string {
  const characters = [...text.slice(0, 2 * longestText)];
  return characters.length > longestText || text.length > 2 * longestText
    ? `${characters.slice(0, longestText).join('')}…`
    : text;
}

/** Cells are Markdown already. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

export interface Comment {
  /** What it comes to, in words of our own. */
  readonly heading: string;
  /** Lines that are seen at once, as Markdown; a table may take several. */
  readonly seen: readonly string[];
  /** What the fold is called. */
  readonly summary: string;
  /** What is folded, the worst first, as Markdown; made only where it finds room. */
  readonly folded: readonly (() => string)[];
  /** Things that were not even brought here. */
  readonly alsoCut?: number;
  readonly language: Language;
}

/** The whole comment; what finds no room in the fold is counted. */
export function commentText({ heading, seen, summary, folded, alsoCut = 0, language }: Comment): string {
  const head = [marker, `### ${heading}`, ...seen].join('\n\n');
  const [before, after] = [`\n\n<details><summary>${summary}</summary>\n\n`, '\n\n</details>\n'];
  if (folded.length === 0) return `${head}\n`;
  let room = readerLimits.commentCharacters.most - [head, before, after].join('').length - keptFree;
  const fitting: string[] = [];
  for (const make of folded) {
    const block = make();
    room -= block.length + 2;
    if (room < 0) break;
    fitting.push(block);
  }
  const cut = folded.length - fitting.length + alsoCut;
  const found =
    cut === 1
      ? language.word('1 file more found no room in this comment.')
      : language.words`${cut} files more found no room in this comment.`;
  const more = cut > 0 ? [found] : [];
  return head + before + [...fitting, ...more].join('\n\n') + after;
}

/** For the line that says what found no room. */
const keptFree = 200;

/** The first of a list, and how many there are besides. */
export const firstOf = (all: readonly string[], most: number, language: Language): string[] =>
  all.length > most ? [...all.slice(0, most), language.words`… and ${all.length - most} more`] : [...all];

/** Says how many rows the table lacks. */
export function foldedBelow(count: number, language: Language): string[] {
  if (count <= 0) return [];
  return [
    count === 1 ? language.word('1 file more is folded below.') : language.words`${count} files more are folded below.`,
  ];
}
