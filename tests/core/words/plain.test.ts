// Texts that were put together in English, in German: titles of fixes, labels, lines of the bench sheet.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { referents } from '../../../server/src/core/parts/field';
import { ORDER_RULES } from '../../../server/src/core/trade/work-order';
import table from '../../../server/src/core/words/de-plain.json';
import { languageIn } from '../../../server/src/core/words/languages';

const source = join(__dirname, '../../../server/src');
const fixtures = join(__dirname, '../../checks');
const textsBelow = (folder: string, end: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith(end))
    .map((path) => readFileSync(join(folder, path), 'utf8'));

const german = languageIn('de');
const templates: readonly (readonly [string, string])[] = Object.entries(table);

/** What titles of fixes are in the fixtures: each was proven, and is offered. */
const titles = new Set(
  textsBelow(fixtures, '.md').flatMap((text) => [...text.matchAll(/^Fix[^:\n]*: (.+)$/gm)].map(([, title]) => title!)),
);

/** Words at which a label goes on with what was put in. */
const joints = /(?:^|(?<= ))(?:of|at|in|on|for|from|to|less|used|wanted) | \(|, /;

describe('the German templates of plain texts', () => {
  it('are of texts that the product says', () => {
    const said = textsBelow(source, '.ts')
      .join('\n')
      .replace(/['`]\s*\+\s*['`]/g, '')
      .replaceAll('\\`', '`')
      .replace(/\s+/g, ' ')
      .toLowerCase();
    const isSaid = (part: string): boolean => said.includes(part.trim().toLowerCase().replace(/[.s]$/, ''));
    // A label may be put into another one: `width of` and `the radiator of`.
    const isJoined = (part: string): boolean => part.split(joints).every(isSaid);
    expect(templates.flatMap(([key]) => (key.split(/\{\d+\}/).every(isJoined) ? [] : [key]))).toEqual([]);
  });

  it('put the same pieces in', () => {
    const piecesOf = (words: string): string => `${(words.match(/\{\d+\}/g) ?? []).sort()}`;
    // An `s` for more than one is of English alone.
    const withoutPlural = (key: string): string => key.replace(/(?<=\p{L})\{\d+\}$/u, '');
    expect(templates.filter(([key, own]) => piecesOf(withoutPlural(key)) !== piecesOf(own))).toEqual([]);
  });

  it('hold the titles of the fixes that the fixtures bring', () => {
    expect(titles.size).toBeGreaterThan(200);
    const untold = [...titles].filter((title) => german.plain(title) === title);
    expect(untold.length / titles.size, untold.join('\n')).toBeLessThan(0.02);
  });
});

it.each([
  ['ways of access', ['read', 'write']],
  ['kinds of things that have names', referents],
  ['reasons of an order of work', [...new Set(ORDER_RULES.map(({ because }) => because))]],
])('%s have German words in every sentence', (_, words) => {
  expect(words.filter((word) => german.label(word) === word)).toEqual([]);
});

describe('a plain text', () => {
  it('is told with what is put in where the language has it', () => {
    expect(german.plain('Move scratch to M2_1')).toBe('scratch nach M2_1 umsetzen');
    expect(german.plain('Limit the processor to 125 W (brings cooler-capacity-short)')).toBe(
      'Den Prozessor auf 125 W begrenzen (bringt cooler-capacity-short mit sich)',
    );
    expect(german.plain('Insert wear strap before fit memory')).toBe(
      '„Antistatikband anlegen“ vor „Arbeitsspeicher einbauen“ einfügen',
    );
  });

  it('has what a fix brings behind all of its title', () => {
    expect(german.plain('Use tarn/hall-9 as case (brings too-heavy-to-lift-alone)')).toBe(
      'tarn/hall-9 als Gehäuse verwenden (bringt too-heavy-to-lift-alone mit sich)',
    );
    expect(german.plain('Take the paste out; the cooler brings its own (brings paste-missing)')).toMatch(
      /^Die Paste streichen; .* \(bringt paste-missing mit sich\)$/,
    );
  });

  it('is told on both sides of a colon', () => {
    expect(german.plain('free slots: PCIE_1 and PCIE_2')).toBe('freie Steckplätze: PCIE_1 und PCIE_2');
    expect(german.plain('system in M2_1, from the chipset: PCIe 3 x4')).toContain('vom Chipsatz: PCIe 3 x4');
  });

  it('begins a line with a capital where its word does', () => {
    expect(german.plain('Fit board')).toBe('Mainboard einbauen');
    expect(german.plain('capacity of scratch')).toBe('Kapazität von scratch');
    expect(german.label('processor or supply')).toBe('Prozessor oder Netzteil');
  });

  it('is left as it is where no template has it', () => {
    for (const text of ['', 'Norrvik B7 Forge', '{0}', 'constructor', '__proto__', 'Write ', 'of'])
      expect(german.plain(text)).toBe(text);
    expect(languageIn('en').plain('Move scratch to M2_1')).toBe('Move scratch to M2_1');
  });
});
