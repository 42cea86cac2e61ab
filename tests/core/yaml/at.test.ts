// What stands at an offset: keys, values, and the gaps where one would be typed.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nodeAt, parse } from '../../../server/src/core/yaml';

/** `|` marks the offset. Shown as: where, path, and who decides: what is typed, what is replaced. */
function at(marked: string): string {
  const offset = marked.indexOf('|');
  const text = marked.replace('|', '');
  const found = nodeAt(parse(text), offset);
  if (!found) return 'comment';
  const holder = found.entry ? 'entry' : found.list ? 'list' : found.map ? 'map' : 'none';
  const typed = found.where === 'gap' ? '' : ` ${found.prefix}<${text.slice(found.replace.start, found.replace.end)}>`;
  return `${found.where} /${found.path.join('/')} ${holder}${typed}`;
}

describe('on text', () => {
  it.each([
    ['par|ts:\n  a: 1', 'key /parts entry par<parts>'],
    ['parts|:\n  a: 1', 'key /parts entry parts<parts>'],
    ['parts:\n  a: 1|2 # c', 'value /parts/a entry 1<12>'],
    ['a: [x, y|z]', 'value /a/1 list y<yz>'],
    ['a: { b: 1, co|l: 2 }', 'key /a/col entry co<col>'],
    ['a: { b: 1, col: 2| }', 'value /a/col entry 2<2>'],
    ['- a\n- b|', 'value /1 list b<b>'],
    ['- x: 1\n  y|: 2', 'key /0/y entry y<y>'],
    ['parts:\n  boa|', 'value /parts entry boa<boa>'],
    ['a: 1\nboa|', 'key /boa entry boa<boa>'],
    ['a: { bo| }', 'key /a/bo entry bo<bo>'],
    ['a: "x |y"', 'value /a entry "x <"x y">'],
    ['a: # c\n  x|', 'value /a entry x<x>'],
  ])('%j', (marked, expected) => expect(at(marked)).toBe(expected));
});

describe('in a gap', () => {
  it.each([
    ['|', 'gap / none'],
    ['a:|', 'gap /a entry'],
    ['a: |', 'gap /a entry'],
    ['a: |\nb: 1', 'gap /a entry'],
    ['a:  | # c', 'gap /a entry'],
    ['a: 1\n|', 'gap / map'],
    ['a: 1\n|\nb: 2', 'gap / map'],
    ['a:\n  b: 1\n  |', 'gap /a map'],
    ['a:\n  b: 1\n  |\nc: 2', 'gap /a map'],
    ['a:\n  b: 1\n|\nc: 2', 'gap / map'],
    ['a:\n  b:\n    c: 1\n\n  |', 'gap /a map'],
    ['a:\n  b:\n    c: 1\n\n    |', 'gap /a/b map'],
    ['a:\r\n  b: 1\r\n  |\r\nc: 2', 'gap /a map'],
    ['a:\n  |\nb: 1', 'gap /a entry'],
    ['a:\n|\nb: 1', 'gap / map'],
    ['a:\n  |\n  b: 1', 'gap /a map'],
    ['a:\n  # c\n  |\n\n  b: 1', 'gap /a map'],
    ['a:\n|\n  b: 1', 'gap / map'],
    ['a:\n  l:\n    |\n    - x', 'gap /a/l list'],
    ['l:\n  - |', 'gap /l/0 list'],
    ['l:\n  - x\n  - |', 'gap /l/1 list'],
    ['l:\n  - x\n  -|\n  - z', 'gap /l/1 list'],
    ['l:\n  - x\n  |', 'gap /l list'],
    ['l:\n  - x: 1\n    |', 'gap /l/0 map'],
    ['l:\n  - x: 1\n  |', 'gap /l list'],
    ['a: { | }', 'gap /a map'],
    ['a: {|}', 'gap /a map'],
    ['a: { b: 1, | }', 'gap /a map'],
    ['a: { b: | }', 'gap /a/b entry'],
    ['a: { b: | , c: 1 }', 'gap /a/b entry'],
    ['a: [x, |]', 'gap /a list'],
    ['a: [|]', 'gap /a list'],
    ['|  a: 1', 'gap / map'],
    ['a: { b: 1, |\n', 'gap /a map'],
  ])('%j', (marked, expected) => expect(at(marked)).toBe(expected));
});

it.each(['# x|', 'a: 1 # x|', 'a: # x|', 'a:\n  b: 1\n  # x|\n  c: 2', 'a: [x, # y|\n z]', 'a: { b: 1, # c|\n d: 2 }'])(
  'is undefined in a comment: %j',
  (marked) => {
    expect(at(marked)).toBe('comment');
  },
);

it('finds every written key and value of any document by its own place', () => {
  const word = fc.stringMatching(/^[a-z]{1,5}$/);
  const maps = fc.dictionary(word, fc.oneof(word, fc.dictionary(word, word, { minKeys: 1, maxKeys: 3 })), {
    minKeys: 1,
    maxKeys: 4,
  });
  fc.assert(
    fc.property(maps, (value) => {
      const text = Object.entries(value)
        .map(([key, inner]) =>
          typeof inner === 'string'
            ? `${key}: ${inner}\n`
            : `${key}:\n${Object.entries(inner)
                .map(([k, v]) => `  ${k}: ${v}\n`)
                .join('')}`,
        )
        .join('');
      const doc = parse(text);
      if (doc.root?.type !== 'map') throw new Error('no map');
      for (const entry of doc.root.entries) {
        expect(nodeAt(doc, entry.keySpan.end)).toMatchObject({ where: 'key', path: [entry.key] });
        if (entry.value.type !== 'map')
          expect(nodeAt(doc, entry.span.end)).toMatchObject({ where: 'value', path: [entry.key] });
        else
          for (const inner of entry.value.entries)
            expect(nodeAt(doc, inner.keySpan.start)).toMatchObject({ where: 'key', path: [entry.key, inner.key] });
      }
    }),
    { numRuns: 200 },
  );
});

it('answers at every offset of any text', () => {
  const parts = fc.array(
    fc.constantFrom(
      'a',
      ': ',
      '- ',
      '\n',
      '\n  ',
      '\r\n',
      '[',
      ']',
      '{',
      '}',
      ',',
      '"',
      ' # ',
      '&x ',
      '*x',
      '|\n',
      '<<: ',
    ),
    { maxLength: 25 },
  );
  fc.assert(
    fc.property(
      parts.map((all) => all.join('')),
      (text) => {
        const doc = parse(text);
        for (let offset = 0; offset <= text.length; offset++) {
          const found = nodeAt(doc, offset);
          if (found) expect(found.replace.start <= offset && offset <= found.replace.end).toBe(true);
        }
      },
    ),
    { numRuns: 500 },
  );
});
