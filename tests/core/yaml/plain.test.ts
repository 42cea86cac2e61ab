// Plain texts are read as the library reads them, to the last offset; whatever is not plain is left to it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseAny } from '../../../server/src/core/yaml/parse';
import { readPlain } from '../../../server/src/core/yaml/plain';

/** Whether a text is plain; where it is, it must be read as the library reads it. */
function isPlain(text: string): boolean {
  const root = readPlain(text);
  if (root) expect({ text, root: JSON.stringify(root), problems: [] }).toEqual(slow(text));
  return root !== undefined;
}

const slow = (text: string): unknown => {
  const { root, problems } = parseAny(text);
  return { text, root: JSON.stringify(root), problems };
};

const samples = join(import.meta.dirname, '../../../samples');
const files = readdirSync(samples, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.yaml'));

describe('the plain subset of YAML', () => {
  it('holds nearly all that is written', () => {
    const texts = files.map((name) => readFileSync(join(samples, name), 'utf8'));
    const plain = texts.filter(isPlain);
    expect(plain.length).toBeGreaterThan(texts.length * 0.9);
    expect(plain.filter((text) => isPlain(text.replaceAll('\n', '\r\n')))).toHaveLength(plain.length);
  });

  it.each([
    'a: 1\nb:\n  c: x\n',
    'a:\n- x\n- y: 1\n  z: 2\nb: [1, { c: d }]',
    'a: # of it\n  b: 1\n# at the edge\n  c: 2\n\n',
    'a: []\nb: { c: {}, d: [ ] }\n',
    'a: -5 °C\nb: "x # y"   # z\nc: \'\'\r\nd:\r\n',
    'a: {b: c, d: [e]}  ',
  ])('reads %j', (text) => expect(isPlain(text)).toBe(true));

  it.each([
    '',
    '# nothing\n',
    '- a\n',
    'a: 1\na: 2\n',
    'a: 1\n  b\n',
    'a: b: c\n',
    'a: &x 1\n',
    'a: *x\n',
    'a: !t x\n',
    'a: |\n  x\n',
    '---\na: 1\n',
    'a: 1\n...\n',
    '%YAML 1.1\n---\na: 1\n',
    'a:\t1\n',
    'a: "x\\ny"\n',
    "a: 'it''s'\n",
    'a: "x\n  y"\n',
    'a: [b,\n  c]\n',
    'a: {b}\n',
    'a: [b: c]\n',
    '? a\n: b\n',
    '<<: x\n',
    '\uFEFFa: 1\n',
    'a: 1\r\rb: 2\n',
    ' a: 1\n',
    'a:\n   b: 1\n  c: 2\n',
    '<<<<<<< a\nb: 1\n=======\nb: 2\n>>>>>>> c\n',
    `${Array.from({ length: 30 }, (_, i) => `${' '.repeat(i)}a:\n`).join('')}${' '.repeat(30)}b: 1\n`,
    `a: ${'['.repeat(5000)}`,
  ])('leaves %j to the library', (text) => expect(isPlain(text)).toBe(false));

  const word = fc.constantFrom(
    ...['a', 'b', 'c', 'd e', 'M2_1', '1:30', '-5', '°C', '#', '"q"', "'s'", '"', "'", '-', '- ', ':', ': ', ',', '?'],
    ...[
      '{',
      '}',
      '[',
      ']',
      '{ a: b }',
      '[x, y]',
      '[]',
      '{ }',
      '&x',
      '*x',
      '!t',
      '|',
      '>',
      '~',
      '<<',
      '---',
      '...',
      '\t',
      '%',
      '@',
    ],
    ...['`', ' #c', 'a:', 'b: ', 'use: m/x', '\\', '\u00a0', '😀', '\u0085', '=', '+', '(', ')', '"a" ', "'b',", '??'],
  );
  const line = fc
    .tuple(fc.constantFrom(0, 0, 0, 1, 2, 2, 2, 4, 4, 6), fc.array(word, { maxLength: 5 }), fc.boolean())
    .map(([indent, words, spaced]) => ' '.repeat(indent) + words.join(spaced ? ' ' : ''));
  const end = fc.constantFrom('\n', '\n', '\n', '\n', '\r\n', '\n\n', '\r');
  const hostile = fc
    .array(fc.tuple(line, end), { maxLength: 7 })
    .map((lines) => lines.map(([text, after]) => text + after).join(''));

  it('is read as the library reads it, however hostile the text', () => {
    fc.assert(
      fc.property(hostile, (text) => void isPlain(text)),
      // The end of a document, with more behind it.
      { numRuns: 1500, examples: [['... a:\n']] },
    );
  });

  /** A line that is likely in files: names, values, items, at some indentation. */
  const value = fc.constantFrom(
    '',
    ' 1',
    ' x y',
    ' "q"',
    " 's t' ",
    ' [a, b]',
    ' { c: d, e: [1], f: [ ] }',
    ' {}',
    ' -5',
    ' # c',
  );
  const likely = fc
    .tuple(fc.constantFrom('', '  ', '  ', '    ', '   '), fc.constantFrom('', '', '- ', '-  ', '# '), value, fc.nat(5))
    .map(([indent, mark, text, name]) => `${indent}${mark}${'abcdef'[name]}:${text}`);
  const file = fc
    .array(fc.tuple(fc.oneof(likely, fc.constantFrom('- x', '  - x', '', '  ', ' # c')), end), { maxLength: 9 })
    .map((lines) => lines.map(([text, after]) => text + after).join(''));

  it('is read as the library reads it, as files are written', () => {
    fc.assert(
      fc.property(file, (text) => void isPlain(text)),
      { numRuns: 2500 },
    );
  });

  it('is read as the library reads it, cut and changed anywhere', () => {
    const text = readFileSync(join(samples, 'survey-desk.pcbuild.yaml'), 'utf8').slice(0, 700);
    const cut = fc.tuple(fc.nat(text.length), fc.nat(12), word);
    fc.assert(
      fc.property(cut, ([at, length, by]) => void isPlain(text.slice(0, at) + by + text.slice(at + length))),
      { numRuns: 300 },
    );
  });
});
