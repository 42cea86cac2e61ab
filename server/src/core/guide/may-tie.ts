// The quick look at a Markdown text, before it is read. It imports nothing: editors take it before they start a server.

const mark = /<!--\s*(?:fettle\s*:|\/\s*fettle\s*-->)/;
const fence = /(?:```|~~~)[ \t]*(?:pcbuild|part)(?:[\s{]|$)/;

/**
 * Whether a text has words without which nothing ties it to a build: a fence, a mark, or front matter that names a
 * build. Where it has none, it is tied to none; where it has some, reading it tells.
 */
export const mayTie = (text: string): boolean =>
  fence.test(text) || mark.test(text) || headNames(text, '.pcbuild.yaml');

/** Whether something stands in the front matter. */
function headNames(text: string, name: string): boolean {
  if (!/^\uFEFF?---[ \t]*[\r\n]/.test(text)) return false;
  const end = /[\r\n](?:---|\.\.\.)[ \t]*(?:[\r\n]|$)/.exec(text)?.index;
  return end !== undefined && text.slice(0, end).includes(name);
}
