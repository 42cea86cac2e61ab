// A picture in another language: its words are told anew where they stand, and cut where they would leave the page.
import { htmlText } from '../../../core/text';
import type { Language } from '../../../core/words/language';
import { large, pageWidth, small } from './draw';
import { cut } from './measure';
import type { Picture } from './picture';

export function pictureIn(language: Language, picture: Picture): Picture {
  const { svg, title, words } = picture;
  const told = (escaped: string): string => language.plain(plainText(escaped));
  return {
    ...picture,
    title: language.plain(title),
    words: words.map((line) => language.plain(line)),
    svg: svg
      .replace(/<(title|desc)>([^<]*)</g, (_, tag: string, text: string) => `<${tag}>${htmlText(told(text))}<`)
      .replace(/ aria-label="([^"]*)"/g, (_, text: string) => ` aria-label="${htmlText(told(text))}"`)
      .replace(/(<text [^<>]*>)([^<]*)</g, (_, open: string, text: string) => `${open}${drawn(open, told(text))}<`),
  };
}

/** A line that begins at its place ends on the page. */
function drawn(open: string, text: string): string {
  if (open.includes('text-anchor')) return htmlText(text);
  const at = Number(/ x="([^"]*)"/.exec(open)?.[1] ?? 0);
  return htmlText(cut(text, pageWidth - at, open.includes('p-small') ? small : large));
}

const escapes: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

const plainText = (escaped: string): string =>
  escaped.replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => escapes[name]!);
