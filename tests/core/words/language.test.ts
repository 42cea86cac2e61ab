// Messages in other languages: how a sentence is put into one, and that every sentence found can be.
import { describe, expect, it } from 'vitest';
import { checks } from '../../../server/src/core/checks/all';
import { copyWith, number, type Figure } from '../../../server/src/core/figures/figure';
import { join, sentence, type Sentence } from '../../../server/src/core/figures/sentence';
import { keyOf, Language } from '../../../server/src/core/words/language';
import { english, languageFor, languageIn } from '../../../server/src/core/words/languages';
import { everyFinding } from '../../support/every-finding';
import { accented, known, pseudo } from '../../support/pseudo';

const table = (own: Record<string, string>): Language => new Language('xx', (one) => own[one]);
const millimetres = (lo: number, hi = lo): Figure =>
  copyWith(number(0, 'height'), { dimension: 'length', lo, hi, unit: 'mm' });

describe('a sentence in another language', () => {
  const said = sentence`The cooler is ${millimetres(160)} high; ${'the case'} lets in ${millimetres(150)}.`;

  it('puts its pieces where that language has them', () => {
    const own = table({ 'The cooler is {0} high; {1} lets in {2}.': '{2} < {0} ({1})', 'the case': 'das Gehäuse' });
    expect(own.said(said)).toBe('150 mm < 160 mm (das Gehäuse)');
  });

  it('is the English one where that language has no words for it', () => {
    expect(table({}).said(said)).toBe(said.text);
  });

  it('translates what is put in by itself', () => {
    const inner = sentence`${millimetres(150, Infinity)} of ${millimetres(10, 20)}`;
    const own = table({ '{0} of {1}': '{0} von {1}', 'at least {0}': 'mindestens {0}', '{0} to {1}': '{0} bis {1}' });
    expect(own.said(sentence`${inner}, ${millimetres(3)}`)).toBe('mindestens 150 mm von 10 bis 20 mm, 3 mm');
    expect(own.said(join(inner, sentence`${'x'}`))).toBe('mindestens 150 mm von 10 bis 20 mm x');
  });

  it('never reads what is put in as a template', () => {
    const own = table({ '{0} fits.': '{0} passt.' });
    expect(own.said(sentence`${'{0} {1}'} fits.`)).toBe('{0} {1} passt.');
    expect(own.words`${'{0}'} fits.`).toBe('{0} passt.');
  });
});

describe('the language of a tag', () => {
  it('is one that Fettle speaks', () => {
    for (const tag of ['de', 'de-AT', 'de_DE.UTF-8', 'DE']) expect(languageFor(tag).tag).toBe('de');
    for (const tag of [undefined, '', 'C', 'C.UTF-8', 'en_GB', 'fr', 'dev', '__proto__'])
      expect(languageFor(tag).tag).toBe('en');
  });

  it('has no words that come from elsewhere', () => {
    expect(languageIn('de').word('constructor')).toBe('constructor');
  });
});

const found = everyFinding();
const hasWords = ({ words }: Sentence): boolean => words.some((own) => /\p{L}/u.test(own));
const inner = (said: Sentence): readonly Sentence[] => [
  said,
  ...said.pieces.flatMap((piece) => (typeof piece === 'object' && !('type' in piece) ? inner(piece) : [])),
];

describe('every finding of the fixtures', () => {
  it('reads in English as it is written', () => {
    const own = english();
    expect(found.length).toBeGreaterThan(500);
    for (const {
      finding: { said },
    } of found)
      expect(own.said(said)).toBe(said.text);
  });

  it('is made of templates that are in the list of messages', () => {
    const bare = found.flatMap(({ finding: { said } }) =>
      inner(said)
        .filter((one) => hasWords(one) && !known.has(keyOf(one.words)))
        .map(({ words }) => keyOf(words)),
    );
    expect([...new Set(bare)]).toEqual([]);
  });

  it('keeps all its figures and facts in a language of accents, and is longer by two fifths', () => {
    const own = pseudo();
    for (const {
      finding: { said },
    } of found) {
      const text = own.said(said);
      for (const one of said.facts) if (one.text !== '') expect(text).toContain(one.text);
      for (const number of said.shown.flatMap((one) => one.match(/[\d.]+/g) ?? [])) expect(text).toContain(number);
      if (inner(said).some(hasWords)) expect(text).toContain('⟦');
    }
    expect(accented('The {0}.')).toBe('⟦Thé {0}.~~⟧');
  });

  it('has words of its own, but for what a text’s own reading says of it', () => {
    const bare = found.filter(({ finding: { said, check } }) => check.area !== 'text' && !inner(said).some(hasWords));
    expect(bare.map(({ finding: { id } }) => id)).toEqual([]);
  });

  it('says why, and warns, in words of the list', () => {
    for (const { what, why } of checks) for (const one of [what, why]) expect(known).toContain(one);
  });
});
