// What the extension says, in its manifest and while it runs, stands beside it in each language, and nothing else does.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const read = (file: string): string => readFileSync(join(__dirname, '../../client', file), 'utf8');
const named = [...read('package.json').matchAll(/"%([\w.]+)%"/g)].map((match) => match[1]!).sort();
const wordsOf = (file: string): Record<string, string> => JSON.parse(read(file)) as Record<string, string>;
const places = (text: string): string[] => (text.match(/command:[\w.]+|`[^`]*`/g) ?? []).sort();

it('names words that are there, in English and in German', () => {
  expect(named.length).toBeGreaterThan(30);
  for (const file of ['package.nls.json', 'package.nls.de.json'])
    expect(Object.keys(wordsOf(file)).sort()).toEqual([...new Set(named)]);
});

it('keeps commands and quoted values in every language', () => {
  const german = wordsOf('package.nls.de.json');
  for (const [key, text] of Object.entries(wordsOf('package.nls.json')))
    expect(places(german[key]!), key).toEqual(places(text));
});

/** What the client and its panel say while they run: each `l10n.t('…')`, and `word('…')` of the panel’s page. */
const sources = readdirSync(join(__dirname, '../../client/src'), { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .map((path) => ({ path, text: read(`src/${path}`) }));
const calls = sources.flatMap(({ text }) => text.match(/\b(?:l10n\.t|word)\(/g) ?? []);
const said = sources.flatMap(({ text }) =>
  [...text.matchAll(/\b(?:l10n\.t|word)\(\s*'([^'\\]*)'/g)].map((match) => match[1]!),
);
const german = wordsOf('l10n/bundle.l10n.de.json');

it('says nothing while it runs that has no German words', () => {
  expect(said.length).toBeGreaterThan(40);
  // One call hands on what the panel’s page says.
  expect(said.length).toBe(calls.length - 1);
  expect(Object.keys(german).sort()).toEqual([...new Set(said)].sort());
});

it('puts the same into German words as into English ones', () => {
  const puts = (text: string): string[] => (text.match(/\{\d\}/g) ?? []).sort();
  for (const [english, words] of Object.entries(german)) expect(puts(words), english).toEqual(puts(english));
});

it('shows no text that it does not say so', () => {
  const shown =
    /(?:\bshow\w+Message\(|\bnew Error\(|\b(?:title|prompt|placeHolder|label|description|detail|text|tooltip|openLabel|why): )['"`](?!Fettle: \$\{|Markdown').*/g;
  const bare = sources.flatMap(({ path, text }) => (text.match(shown) ?? []).map((one) => `${path}: ${one}`));
  expect(bare).toEqual([]);
});
