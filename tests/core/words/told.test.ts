// All that a reader meets has German words: what a language of accents leaves bare is from a file, or a word of the
// format.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checks } from '../../../server/src/core/checks/all';
import type { Node } from '../../../server/src/core/yaml';
import { completion } from '../../../server/src/features/completion';
import { Fits } from '../../../server/src/features/fit';
import { hover } from '../../../server/src/features/hover';
import { fettleIn } from '../../support/command';
import { pseudoGerman } from '../../support/pseudo';
import { readSamples } from '../../support/samples';
import { view } from '../../support/view';

const samples = Object.fromEntries([...readSamples().docs].map(([name, { text }]) => [name, text]));
const schemas = join(__dirname, '../../../schemas');

const wordsIn = (text: string): string[] => text.match(/[A-Za-z][A-Za-z0-9]*/g) ?? [];
const onOneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Words of files, ids and the format: they are the same in every language. */
const own = new Set(['fettle', 'Fettle', 'Zq', 'zq', 'MHz', ...['Harm', 'Stop', 'Shortfall', 'Note']]);
/** Texts of files of several words, the sources that checks name, and standards by their titles. */
const given = [
  'ANSI/ESD S1.1 annex B',
  'ATX Version 3 design guide',
  'ATX12V Power Supply Design Guide',
  'HDMI Specification',
  'NFPA 70, National Electrical Code',
  'PCI Express Base Specification',
  'Serial ATA',
  'US Standard Atmosphere 1976',
  'VESA DisplayPort Standard',
];

function gather(node: Node | undefined): void {
  if (node?.type === 'scalar') {
    for (const word of wordsIn(node.text)) own.add(word);
    if (node.text.includes(' ')) given.push(onOneLine(node.text));
  } else if (node?.type === 'list') for (const item of node.items) gather(item);
  else if (node?.type === 'map')
    for (const { key, value } of node.entries) {
      for (const word of wordsIn(key)) own.add(word);
      gather(value);
    }
}
for (const [name, doc] of readSamples().docs) {
  for (const word of wordsIn(name)) own.add(word);
  gather(doc.parsed.root);
}
for (const { id, source } of checks) {
  for (const word of wordsIn(id)) own.add(word);
  given.push(onOneLine(source));
}
for (const name of readdirSync(schemas)) {
  const text = readFileSync(join(schemas, name), 'utf8').replace(/"description": "(?:[^"\\]|\\.)*"/g, '');
  for (const word of wordsIn(text)) own.add(word);
}
given.sort((a, b) => b.length - a.length);

/** Words that no name and no key needs by themselves: where one stands bare, a sentence is in English. */
const english = new Set(
  (
    'the of is are a an and or to on for not no with by from it its that what which than as at be can has have this ' +
    'only more was were if where when before after each all none over behind between'
  ).split(' '),
);

/** Stretches of a text with a word that is neither told nor given. */
function untold(text: string): string[] {
  let left = onOneLine(text.replace(/\\(?=[^A-Za-z0-9\s])/g, ''))
    // What can be typed: marks of guides, code, commands.
    .replace(/<!--.*?-->|`+[^`]*`+|\b\w+(?:-\w+)+\b|\bfettle [a-z]+ [\w.-]+/g, ' ')
    .replace(/\d in\b|(?:\d|°C|[GMT]B\/s) to (?=[\d.]+ )|--[a-z-]+|[\w/-]+\.[\w.:/-]+/g, ' ');
  for (const one of given) if (one.length > 8) left = left.split(one).join(' ');
  return left
    .split(/[⟦⟧|]|~~+|(?<=[.!?]) (?=[A-Z])/)
    .filter((part) =>
      [...part.matchAll(/(?<![\p{L}\p{N}_./[-])[A-Za-z][A-Za-z0-9]*(?![\p{L}_[/])/gu)].some(
        ([word]) => /[aeioucnsyz]/i.test(word) && (!own.has(word) || english.has(word)),
      ),
    );
}

const builds = ['survey-desk', 'gallery-wall', 'counter-pc'].map((name) => `${name}.pcbuild.yaml`);

describe('the command', () => {
  it.each([
    ...builds.flatMap((file) => [
      ['missing', file],
      ['order', file],
      ['swap', file, 'parts.cooler'],
      ['sheet', file, '--markdown'],
    ]),
    ['settings', '.'],
    ['uses', 'norrvik/b7-forge'],
    ['new', 'Zq'],
    ['explain'],
  ])('%s %s', async (...words) => {
    const { out, err, files } = await fettleIn(pseudoGerman(), samples, ...words.filter(Boolean));
    expect(out + err).toMatch(/[⟦⟧]/);
    expect(untold([out, err, ...files.values()].join('\n'))).toEqual([]);
  });
});

describe('an editor', () => {
  const language = pseudoGerman();
  const files = Object.entries(samples).filter(([name]) => /b7-forge|s750|tower-168/.test(name));

  it.each(files)('hovers over every key of %s', (name, text) => {
    const shown = view(`¦${text}`, samples, name).view;
    const lines = text.split('\n');
    const bare = lines.flatMap((line, i) => {
      const character = line.search(/[a-z]/);
      if (character < 0 || line.trim().startsWith('#')) return [];
      const found = hover(shown, { line: i, character }, { kind: 'markdown', language });
      const [meaning = ''] = (found?.contents.value ?? '').split(/\n\n(?=⟦Góéš íñtó)/);
      return untold(meaning);
    });
    expect([...new Set(bare)]).toEqual([]);
  });

  it.each(['kind: cooler\n¦', 'kind: board\n¦', 'parts:\n  drives: [{ ¦ }]\n', '¦'])('completes %j', (marked) => {
    const name = marked.startsWith('kind') ? 'parts/zq/zq.part.yaml' : 'zq.pcbuild.yaml';
    const { view: shown, position } = view(marked, samples, name);
    const options = { markup: 'markdown', snippets: true, parts: () => [], fits: new Fits(), trials: 9 } as const;
    const { items } = completion(shown, position, { ...options, language });
    expect(items.length).toBeGreaterThan(3);
    expect(items.flatMap(({ documentation }) => untold(documentation?.value ?? ''))).toEqual([]);
  });
});
