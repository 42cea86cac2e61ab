// Layout changes blanks alone: every value, key, comment and line end stays, a second time changes nothing, and what
// is doubtful is left as it is.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits, type Edit } from '../../../server/src/core/text';
import { columnOfNew, parse, relayout, type Node } from '../../../server/src/core/yaml';
import { readSamples } from '../../support/samples';

const { docs } = readSamples();

function laid(text: string): string {
  const relaid = relayout(parse(text));
  if ('refused' in relaid) throw new Error(relaid.refused);
  return applyEdits(text, relaid.edits);
}

const refused = (text: string): string | undefined => {
  const relaid = relayout(parse(text));
  return 'refused' in relaid ? relaid.refused : undefined;
};

/** Keys and values, as nested arrays. */
function values(node: Node | undefined): unknown {
  if (!node) return null;
  if (node.type === 'scalar') return node.text;
  return node.type === 'list' ? node.items.map(values) : node.entries.map(({ key, value }) => [key, values(value)]);
}

const comments = (text: string): string[] => text.match(/#[^\r\n]*/g)?.map((one) => one.trimEnd()) ?? [];

describe('lays out', () => {
  test.each([
    ['indentation by two', 'a:\n    b:\n        c: 1\n', 'a:\n  b:\n    c: 1\n'],
    ['lists below their key', 'a:\n- b: 1\n  c: 2\n- d\n', 'a:\n  - b: 1\n    c: 2\n  - d\n'],
    ['dashes', 'a:\n  -   b: 1\n      c: 2\n', 'a:\n  - b: 1\n    c: 2\n'],
    ['a root that is indented', '  a: 1\n  b: 2\n', 'a: 1\nb: 2\n'],
    ['colons', 'a :   1\nbb: 2\n', 'a: 1\nbb: 2\n'],
    ['braces and brackets', 'a: {b: 1,c: [x,y ] }\n', 'a: { b: 1, c: [x, y] }\n'],
    ['blanks at line ends', 'a: 1  \n   \nb: 2 \t\n', 'a: 1\n\nb: 2\n'],
    ['comments with the line below', 'a:\n    # of b\n    b: 1\n', 'a:\n  # of b\n  b: 1\n'],
    ['texts of several lines along with their key', 'a:\n    b: |\n      x\n       y\n', 'a:\n  b: |\n    x\n     y\n'],
    ['the last line’s end', 'a: 1', 'a: 1\n'],
  ])('%s', (_, text, wanted) => {
    expect(laid(text)).toBe(wanted);
  });

  test.each([
    ['values that were lined up', 'parts:\n  board:     { use: a/b }\n  processor: { use: a/c }\n'],
    ['blank lines', 'a: 1\n\n\nb: 2\n'],
    ['blanks within values', 'a: "x   y"\nb: it  is\n'],
    ['blanks before a comment', 'a: 1        # one\nb: 22       # two\n'],
    ['blanks in a text of several lines', 'a: |\n  x  \n  y\n'],
  ])('leaves %s', (_, text) => {
    expect(laid(text)).toBe(text);
  });

  test('every sample is laid out already', () => {
    for (const [name, { kind, text }] of docs) if (kind !== 'guide') expect(laid(text), name).toBe(text);
  });
});

test.each([
  ['what is no YAML', 'a: {\nb: 1\n'],
  ['a key that stands twice', 'a: 1\na: 2\n'],
  ['tabs', 'a:\n\tb: 1\n'],
  ['aliases', 'a: &x 1\nb: *x\n'],
  ['several documents', 'a: 1\n---\nb: 2\n'],
  ['keys written with ?', '? a\n: 1\n'],
  ['a text that says how far it is indented', 'a:\n   b: |2\n       x\n'],
])('refuses %s, and says why', (_, text) => {
  expect(refused(text)).toMatch(/\.$/);
});

describe('whatever the blanks', () => {
  /** A sample with its blanks disturbed so that it reads the same. */
  const disturbed = fc
    .tuple(
      fc.constantFrom(...docs.values()),
      fc.infiniteStream(fc.nat(3)),
      fc.boolean(),
      fc.integer({ min: 1, max: 4 }),
    )
    .map(([{ text }, random, isCrlf, wide]) => {
      const next = (): number => random.next().value as number;
      const lines = text.split('\n').map((line) => {
        const indent = /^ */.exec(line)![0].length;
        const body = line.slice(indent).replace(/: (?=[^\s#|>][^#]*$)/, () => `:${' '.repeat(1 + next())}`);
        return ' '.repeat((indent / 2) * (wide + 1)) + body + ' '.repeat(next());
      });
      return lines.join(isCrlf ? '\r\n' : '\n');
    });

  test('keys, values, comments and line ends stay, and a second time changes nothing', () => {
    let tried = 0;
    fc.assert(
      fc.property(disturbed, (text) => {
        if (refused(text) !== undefined) return;
        tried++;
        const after = laid(text);
        expect(values(parse(after).root)).toEqual(values(parse(text).root));
        expect(comments(after)).toEqual(comments(text));
        expect(after.includes('\r\n')).toBe(text.includes('\r\n'));
        expect(laid(after)).toBe(after);
      }),
      { numRuns: 150 },
    );
    expect(tried).toBeGreaterThan(100);
  });

  test('any text is laid out or refused, by edits of blanks alone', () => {
    const piece = fc.constantFrom(
      'a',
      'b: ',
      ': ',
      '- ',
      '\n',
      '\n  ',
      '\r\n',
      '    ',
      '{',
      '}',
      '[',
      ']',
      ', ',
      '#',
      ' # c',
      '"',
      "'",
      '|',
      '>',
      '\t',
      '?',
      '&x ',
      '*x',
      '---',
      'é',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        const text = pieces.join('');
        const relaid = relayout(parse(text));
        if ('refused' in relaid) return;
        const blank = ({ span, text: by }: Edit): boolean => /^\s*$/.test(text.slice(span.start, span.end) + by);
        expect(relaid.edits.filter((edit) => !blank(edit))).toEqual([]);
        const after = applyEdits(text, relaid.edits);
        expect(values(parse(after).root)).toEqual(values(parse(text).root));
        expect(laid(after)).toBe(after);
      }),
      { numRuns: 3_000 },
    );
  });
});

test('a text behind an anchor is laid out at once', () => {
  const text = '&x a\r\n    a';
  const relaid = relayout(parse(text));
  if ('refused' in relaid) throw new Error(relaid.refused);
  const after = applyEdits(text, relaid.edits);
  expect(laid(after)).toBe(after);
});

test.each([
  ['place:\n', 2],
  ['place: # where\n', 2],
  ['a:\n  b:\n', 4],
  ['a:\n  b: 1\n', 2],
  ['a:\n  - b: 1\n', 4],
  ['a:\n  - do: x\n    caution:\n', 6],
  ['a:\n  - caution:\n', 6],
  ['a:\n  - fit cooler\n', 2],
  ['a:\n  -\n', 4],
  ['a: { b: 1,\n', undefined],
  ['a: 1\n\n', undefined],
  ['', undefined],
])('a new line after %j begins in column %s', (text, column) => {
  expect(columnOfNew(parse(text), text.length)).toBe(column);
});
