// What the extension’s manifest says stands beside it in each language, and nothing else does.
import { readFileSync } from 'node:fs';
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
