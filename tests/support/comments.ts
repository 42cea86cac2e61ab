// A comment of a pull request as a forge shows it: what is seen at once, and what in it is alive.
import MarkdownIt from 'markdown-it';
import { marker } from '../../server/src/report/comment-parts';

type Token = ReturnType<MarkdownIt['parse']>[number];

export interface ReadComment {
  /** Lines that are seen before anything is unfolded; blank ones are none. */
  readonly seen: readonly string[];
  /** The text that a reader sees, all of it. */
  readonly text: string;
}

const ours = [marker, '</details>', /^<details><summary>[A-Za-z, ]+<\/summary>$/];
const isOurs = (html: string): boolean =>
  html
    .trim()
    .split('\n')
    .every((line) => ours.some((one) => (typeof one === 'string' ? one === line : one.test(line))));

/** What forges look for in the text that is shown, whatever escaped it. */
const alive: readonly RegExp[] = [
  /[@#!$&~%^][\p{L}\p{N}_"]/u,
  /\bG[HL]-\d/i,
  /(?<![\p{L}\p{N}])[0-9a-f]{7,64}(?![\p{L}\p{N}])/iu,
  /\[[a-z_]+:/i,
  /:\/\//,
  /www\./i,
];

/** Forges look for nothing in code. */
const shownText = ({ type, content }: Token): string => (type === 'code_inline' ? '`…`' : content);

/** @throws where anything in it links, notifies, refers, or is HTML that is not ours. */
export function readComment(comment: string): ReadComment {
  const tokens = new MarkdownIt({ html: true, linkify: true }).parse(comment, {});
  const all = tokens.flatMap((token): Token[] => [token, ...((token.children as Token[] | null) ?? [])]);
  for (const { type, content } of all) {
    if (/^(link_open|image|fence|code_block|hr|blockquote_open)$/.test(type))
      throw new Error(`alive: ${type} ${content}`);
    if (/^html/.test(type) && !isOurs(content)) throw new Error(`HTML: ${content}`);
  }
  const text = all
    .filter(({ type }) => type === 'inline')
    .map((token) => ((token.children as Token[] | null) ?? []).map(shownText).join(''))
    .join('\n');
  for (const one of alive)
    if (one.test(text)) throw new Error(`alive: ${text.slice(text.search(one) - 20).slice(0, 60)}`);
  // A line that begins so is an order to some forges.
  for (const line of comment.split('\n')) if (/^\s*\//.test(line)) throw new Error(`an order: ${line}`);
  if (comment.split(marker).length > 2) throw new Error('the marker stands more than once');
  const [before = ''] = comment.split('<details>');
  return { seen: before.split('\n').filter((line) => line.trim() !== ''), text: text.replaceAll('\u200b', '') };
}
