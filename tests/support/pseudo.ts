// A language that nobody speaks: English words with accents in brackets, longer by two fifths. What stands bare in its
// output went past the catalogue.
import german from '../../server/src/core/words/de.json';
import fields from '../../server/src/core/words/de-fields.json';
import plainGerman from '../../server/src/core/words/de-plain.json';
import ofTexts from '../../server/src/core/words/de-text.json';
import { Language } from '../../server/src/core/words/language';
import { allMessages } from './messages';

export const known: ReadonlySet<string> = new Set(allMessages());

const accents: Record<string, string> = {
  ...{ a: 'á', e: 'é', i: 'í', o: 'ó', u: 'ú', c: 'ç', n: 'ñ', s: 'š', y: 'ý', z: 'ž' },
  ...{ A: 'Á', E: 'É', I: 'Í', O: 'Ó', U: 'Ú', C: 'Ç', N: 'Ñ', S: 'Š', Y: 'Ý', Z: 'Ž' },
};

/** Words that are looked up and are in the list of messages; whatever is put into them keeps its place. */
export const pseudo = (): Language =>
  new Language('qps', (english) => (known.has(english) ? accented(english) : undefined));

export function accented(english: string): string {
  const own = english.replace(/\{\d+\}|[a-z]/gi, (part) => accents[part] ?? part);
  const letters = english.replace(/\{\d+\}/g, '').length;
  const [, before, inner, after] = /^(\s*)([^]*?)(\s*)$/.exec(own)!;
  return `${before}⟦${inner}${'~'.repeat(Math.ceil(letters * 0.4))}⟧${after}`;
}

const plain = Object.fromEntries(Object.keys(plainGerman).map((english) => [english, accented(english)]));
const inGerman: ReadonlySet<string> = new Set([german, fields, ofTexts].flatMap((one) => Object.keys(one)));

/** The same, of what has German words, and with the texts that are put together in English. */
export const pseudoGerman = (): Language =>
  new Language('qps', (english) => (inGerman.has(english) ? accented(english) : undefined), plain);
