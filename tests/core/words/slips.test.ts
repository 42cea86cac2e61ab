// Slips of the pen in what is said, found by their looks: numbers with the wrong plural, articles, doubled words and
// signs, signs that do not close. The rules of spelling: common practice of both languages.
import { describe, expect, it } from 'vitest';
import { checks } from '../../../server/src/core/checks/all';
import type { Fact } from '../../../server/src/core/parts/fact';
import { judgeBuild } from '../../../server/src/core/judge/judge';
import { languageOf } from '../../../server/src/core/words/names';
import { english, languageIn } from '../../../server/src/core/words/languages';
import type { Language } from '../../../server/src/core/words/language';
import { sheetOf } from '../../../server/src/report/sheet/sheet';
import { today } from '../../support/bench';
import { everyFinding } from '../../support/every-finding';
import { readSamples } from '../../support/samples';

/** What a text must not hold, and what of it is no slip. */
const both: readonly (readonly [string, RegExp, RegExp?])[] = [
  ['two blanks', /\S {2}\S/],
  ['a blank before a sign', / [,;.:!?](?=\s|$)/],
  ['a sign twice', /,,|;;|::|(?<!\.)\.\.(?!\.|\/)/],
  ['a value of the program', /\bundefined\b|\bNaN\b|\[object/],
];
const inEnglish: typeof both = [
  ...both,
  // `1 of 1 modules`, `1 less`.
  ['one of several', /(?<![\d.,:+–-]|of )\b1 (?!(?:as|is|was|has|less|draws|takes|needs|ms)\b)[a-z]{2,}s\b/],
  [
    'several of one',
    /(?<!\.)\b[2-9] (?:answer|cable|card|connector|day|dot|drive|fan|header|lane|module|screw|year)\b(?! )/,
  ],
  ['a word twice', /\b(at|the|of|a|an|is|and|or|to|in|by|for|with) \1\b/],
  ['a before a vowel', /(?<!\d )\b[Aa] [aeio](?!ne\b|nce\b)[a-z]*|\ban (?=[bcdfgjklmnpqrtvwz])[a-z]{2,}/],
];
const inGerman: typeof both = [
  ...both,
  ['a word twice', /\b(ein|eine|von|und|oder|zu|mit|für|ist|sind|wird) \1\b/],
  ['another case behind von', /\bvon (?:die|das|ein|eine) \p{L}/u],
];

/** The slips in a text, in which what files state is put aside. */
function slipsIn(text: string, rules: typeof both, quotes: string): string[] {
  const found = rules.flatMap(([what, slip]) => (slip.test(text) ? [`${what}: ${text}`] : []));
  const count = (sign: string): number => text.split(sign).length;
  for (const pair of ['()', '[]', quotes])
    if (count(pair[0]!) !== count(pair[1]!)) found.push(`${pair} does not close: ${text}`);
  return found;
}

const withoutFacts = (text: string, facts: readonly Fact<unknown>[]): string =>
  facts.reduce((left, { text: stated }) => (stated.length > 3 ? left.replaceAll(stated, 'x') : left), text);

const found = everyFinding();

describe.each([
  ['English', english(), inEnglish, '“”'],
  ['German', languageIn('de'), inGerman, '„“'],
] as const)('in %s', (_, language: Language, rules, quotes) => {
  it('no finding of the fixtures has a slip', () => {
    const slips = found.flatMap(({ finding: { said, missing } }) => {
      const names = missing.map(({ what }) => language.label(what));
      return [language.said(said), ...names].flatMap((text) => slipsIn(withoutFacts(text, said.facts), rules, quotes));
    });
    expect(found.length).toBeGreaterThan(1000);
    expect([...new Set(slips)]).toEqual([]);
  });

  it('no check says of itself with a slip what it judges', () => {
    const texts = checks.flatMap(({ what, why, limits = [], remarks = [] }) => [what, why, ...limits, ...remarks]);
    expect(texts.flatMap((text) => slipsIn(language.word(text), rules, quotes))).toEqual([]);
  });

  it('no label of a working or line of the bench sheet has a slip', () => {
    const texts = readSamples().builds.flatMap((build) => {
      const own = languageOf(language, build);
      const sheet = sheetOf(build, judgeBuild(build), { date: today, fileName: build.doc.name, language: own });
      return sheet.blocks.flatMap(({ heading, bodies }) => [
        heading,
        ...bodies.flatMap((body) => {
          if (body.type === 'finding') return body.finding.working.flatMap(({ text, from }) => [text, from]);
          if (body.type === 'picture') return [body.picture.title, ...body.picture.words];
          return body.type === 'lines' ? body.lines.map(({ text }) => text) : [];
        }),
      ]);
    });
    expect(texts.length).toBeGreaterThan(1000);
    expect([...new Set(texts.flatMap((text) => slipsIn(text, rules, quotes)))]).toEqual([]);
  });
});

it.each([
  ['Fans and pumps bring 1 connectors.', 'one of several'],
  ['all run at at most 6000 MT/s', 'a word twice'],
  ['It is a odd number.', 'a before a vowel'],
  ['It ends here ..', 'a sign twice'],
  ['one  two', 'two blanks'],
])('%s is found', (text, what) => {
  expect(slipsIn(text, inEnglish, '“”').join()).toContain(what);
});
