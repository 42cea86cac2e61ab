// Edits to documents: what each writes, what it leaves alone, and where it is refused.
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../../server/src/core/text';
import type { Edit } from '../../../server/src/core/text';
import {
  appendItem,
  insertEntry,
  insertItem,
  insertTopLevel,
  moveItem,
  parse,
  removeEntry,
  removeItem,
  renameKey,
  setValue,
} from '../../../server/src/core/yaml';
import type { ListNode, MapNode, Node, Parsed, Value } from '../../../server/src/core/yaml';

/** The node at a path such as `a.b` or `l.0`; the empty path is the root. */
function get(doc: Parsed, path: string): Node {
  let node = doc.root!;
  for (const step of path === '' ? [] : path.split('.')) {
    node = node.type === 'list' ? node.items[Number(step)]! : (node as MapNode).get(step)!.value;
  }
  return node;
}

function edited(text: string, edit: (doc: Parsed) => Edit[] | undefined): string | undefined {
  const edits = edit(parse(text));
  const result = edits && applyEdits(text, edits);
  if (result !== undefined) expect(parse(result).problems.filter(({ code }) => code === 'yaml-syntax')).toEqual([]);
  return result;
}

const set = (text: string, path: string, value: Value) => edited(text, (doc) => setValue(doc, get(doc, path), value));
const insert = (text: string, path: string, key: string, value: Value, opts?: Parameters<typeof insertEntry>[4]) =>
  edited(text, (doc) => insertEntry(doc, get(doc, path) as MapNode, key, value, opts));
const remove = (text: string, path: string, key: string) =>
  edited(text, (doc) => removeEntry(doc, get(doc, path) as MapNode, key));
const rename = (text: string, path: string, key: string, to: string) =>
  edited(text, (doc) => renameKey(doc, get(doc, path) as MapNode, key, to));
const append = (text: string, path: string, value: Value) =>
  edited(text, (doc) => appendItem(doc, get(doc, path) as ListNode, value));
const insertAt = (text: string, path: string, index: number, value: Value) =>
  edited(text, (doc) => insertItem(doc, get(doc, path) as ListNode, index, value));
const removeAt = (text: string, path: string, index: number) =>
  edited(text, (doc) => removeItem(doc, get(doc, path) as ListNode, index));
const move = (text: string, path: string, from: number, to: number) =>
  edited(text, (doc) => moveItem(doc, get(doc, path) as ListNode, from, to));
const big = { a: '1', b: '2', c: '3', d: '4' };

describe('setValue', () => {
  it.each<[string, Value, string]>([
    ['a: 1   # c\n', '2', 'a: "2"   # c\n'],
    ['a: 1\n', 2, 'a: 2\n'],
    ["a: 'x'\n", "it's", "a: 'it''s'\n"],
    ['a: "x"\n', 'y', 'a: "y"\n'],
    ['a: "1.08"\n', 1.2, 'a: "1.2"\n'],
    ["a: 'x'\n", 'one\ntwo', 'a: "one\\ntwo"\n'],
    ['a:\n', 'x', 'a: x\n'],
    ['a: # c\n', 'x', 'a: x # c\n'],
    ['a:   \nb: 1\n', 'x', 'a: x   \nb: 1\n'],
    ['a: x\n  y z # c\n', 'w', 'a: w # c\n'],
    ['a: |\n  one\n  two\n\nb: 1\n', 'x', 'a: x\n\nb: 1\n'],
    ['a: x\r\nb: y\r\n', 'z', 'a: z\r\nb: y\r\n'],
    ['\uFEFFa: x', 'z', '\uFEFFa: z'],
    ['a: x # c\nb: y\n', { p: 'q' }, 'a: { p: q } # c\nb: y\n'],
    ['a: x # c\nb: y\n', big, 'a: # c\n  a: "1"\n  b: "2"\n  c: "3"\n  d: "4"\nb: y\n'],
    ['a:\r\nb: y\r\n', { p: { q: 'r' } }, 'a:\r\n  p: { q: r }\r\nb: y\r\n'],
    ['a: [x, y] # c\n', ['A2', 'B2'], 'a: [A2, B2] # c\n'],
    ['a:\n  b: 1\n  c: 2 # d\nb: y\n', 'x', 'a: x # d\nb: y\n'],
    ['a: # c\n  b: 1\nb: y\n', 'x', 'a: x # c\nb: y\n'],
    ['a:\n  - b\n  - c\nb: y\n', big, 'a:\n  a: "1"\n  b: "2"\n  c: "3"\n  d: "4"\nb: y\n'],
    ['a:\n- b\n- c\n', big, 'a:\n  a: "1"\n  b: "2"\n  c: "3"\n  d: "4"\n'],
  ])('%j to %j', (text, value, expected) => {
    expect(set(text, 'a', value)).toBe(expected);
    expect(set(expected, 'a', value)).toBe(expected);
  });

  it('fills an empty value in flow', () => {
    expect(set('a: { b:, c: 1 }\n', 'a.b', 'x')).toBe('a: { b: x, c: 1 }\n');
  });

  it('works on items, with their dash and comment', () => {
    expect(set('- a # c\n- b\n', '0', big)).toBe('- a: "1" # c\n  b: "2"\n  c: "3"\n  d: "4"\n- b\n');
    expect(set('l:\n  -\n  - b\n', 'l.0', 'x')).toBe('l:\n  - x\n  - b\n');
    expect(set('l:\n  -\n  - b\n', 'l.0', big)).toBe('l:\n  - a: "1"\n    b: "2"\n    c: "3"\n    d: "4"\n  - b\n');
    expect(set('l:\n  - a: 1\n    b: 2\n', 'l.0', 'x')).toBe('l:\n  - x\n');
  });

  it('quotes what another reader would not take for text', () => {
    const quoted = [
      '1.10',
      '12:30',
      'A: b',
      '# x',
      '@here',
      'true',
      'No',
      'null',
      '~',
      '',
      ' x',
      '-',
      '- x',
      '0x1F',
      '1e3',
      '.5',
      '1_000',
      'a #b',
      'a:',
      '[x',
      '{',
      '*x',
      '&x',
      '!x',
      '%x',
      '>',
      '|',
      '"',
      "'x",
      '`x',
      '?',
      'on',
      'y',
      '<<',
      '=',
      '.inf',
      '---',
    ];
    for (const text of quoted)
      expect([text, set('a: x\n', 'a', text)]).toEqual([text, `a: "${text.replace('"', '\\"')}"\n`]);
    const bare = [
      'B7 Forge',
      '6000 MT/s',
      '2027-06-30',
      'norrvik/b7-forge',
      'a#b',
      'x:y',
      '3.5 in',
      '31 °C',
      'M2_1',
      '24-pin',
      "it's",
      'nine',
    ];
    for (const text of bare) expect(set('a: x\n', 'a', text)).toBe(`a: ${text}\n`);
  });

  it('adds quotes to text that lacks them, and then changes nothing', () => {
    expect(set('a: 1.10\n', 'a', '1.10')).toBe('a: "1.10"\n');
    expect(set('a: 1.10\n', 'a', 1.1)).toBe('a: 1.1\n');
    expect(parse(set('a: "x"\n', 'a', '\u0000\t"\\\u2028\ud800')!).root).toMatchObject({
      entries: [{ value: { text: '\u0000\t"\\\u2028\ud800' } }],
    });
  });

  it('refuses where it could mean two things or lose a comment', () => {
    for (const text of [
      'a: &x 1\n',
      'a: *x\n',
      'a: !t 1\n',
      'a: 1\na: 2\n',
      'a: { b: 1 c: 2 }\n',
      'a: { b: &x 1 }\nc: *x\n',
      'a:\n  b: 1\n  # c\n  d: 1\n',
      'a: | # c\n  x\n',
      'a: |+\n  x\n\nb: 1\n',
      '? a\n: b\n',
    ]) {
      expect([text, set(text, 'a', 'z')]).toEqual([text, undefined]);
    }
    expect(set('a: 1\n', 'a', Number.NaN)).toBeUndefined();
    expect(set('b: &x { a: 1 }\n', 'b.a', 'z')).toBeUndefined();
    const other = parse('a: 1\n');
    expect(setValue(parse('a: 1\n'), (other.root as MapNode).entries[0]!.value, 'z')).toBeUndefined();
  });
});

describe('insertEntry', () => {
  it.each<[string, string, string]>([
    ['a: 1\n', '', 'a: 1\nk: v\n'],
    ['a: 1', '', 'a: 1\nk: v'],
    ['a: 1 # c\n\n# end\n', '', 'a: 1 # c\nk: v\n\n# end\n'],
    ['a: 1\r\nb: 2\r\n', '', 'a: 1\r\nb: 2\r\nk: v\r\n'],
    ['a:\n    b: 1\nc: 2\n', 'a', 'a:\n    b: 1\n    k: v\nc: 2\n'],
    ['l:\n  - b: 1\n  - c: 1\n', 'l.0', 'l:\n  - b: 1\n    k: v\n  - c: 1\n'],
    ['a:\n  b:\n    c: |\n      x\n\nd: 1\n', 'a', 'a:\n  b:\n    c: |\n      x\n  k: v\n\nd: 1\n'],
    ['a: { b: 1 } # c\n', 'a', 'a: { b: 1, k: v } # c\n'],
    ['a: {b: 1,}\n', 'a', 'a: {b: 1, k: v,}\n'],
    ['a: { b: }\n', 'a', 'a: { b:, k: v }\n'],
    ['a: {}\n', 'a', 'a: { k: v }\n'],
    ['a: {  }\n', 'a', 'a: { k: v }\n'],
    ['a:\nb:\n', '', 'a:\nb:\nk: v\n'],
  ])('%j at %j', (text, path, expected) => {
    expect(insert(text, path, 'k', 'v')).toBe(expected);
    expect(insert(expected, path, 'k', 'v')).toBe(expected);
  });

  it('stands where it is asked to', () => {
    expect(insert('# head\na: 1\n# b\nb: 2\n', '', 'k', 'v', { before: 'a' })).toBe('# head\nk: v\na: 1\n# b\nb: 2\n');
    expect(insert('a: 1 # c\n# b\nb: 2\n', '', 'k', 'v', { before: 'b' })).toBe('a: 1 # c\nk: v\n# b\nb: 2\n');
    expect(insert('a: 1 # c\nb: 2\n', '', 'k', 'v', { after: 'a' })).toBe('a: 1 # c\nk: v\nb: 2\n');
    expect(insert('- a: 1\n  b: 2\n', '0', 'k', 'v', { before: 'a' })).toBe('- k: v\n  a: 1\n  b: 2\n');
    expect(insert('a: { b: 1, c: 2 }\n', 'a', 'k', 'v', { before: 'c' })).toBe('a: { b: 1, k: v, c: 2 }\n');
    expect(insert('a: { b: 1, c: 2 }\n', 'a', 'k', 'v', { after: 'b' })).toBe('a: { b: 1, k: v, c: 2 }\n');
    expect(insert('a: 1\n', '', 'k', 'v', { after: 'nowhere' })).toBe('a: 1\nk: v\n');
  });

  it('writes comments, keys in quotes, and bigger values as the document indents', () => {
    expect(insert('a: 1\n', '', 'k', 'v', { comment: 'as stated' })).toBe('a: 1\nk: v  # as stated\n');
    expect(insert('a: { b: 1 }\n', 'a', 'k', 'v', { comment: 'x' })).toBeUndefined();
    expect(insert('a: 1\n', '', 'k', 'v', { comment: 'x\ny: 2' })).toBeUndefined();
    expect(insert('a: 1\n', '', 'no', 'v')).toBe('a: 1\n"no": v\n');
    expect(insert('a:\n    b: 1\n', '', 'k', { l: [{ x: '1 m' }, big] })).toBe(
      'a:\n    b: 1\nk:\n    l:\n        - { x: 1 m }\n        - a: "1"\n          b: "2"\n          c: ' +
        '"3"\n          d: "4"\n',
    );
    expect(insert('p:\n  a: { use: x }\n', 'p', 'k', { use: 'z', slots: ['A2', 'B2'] })).toBe(
      'p:\n  a: { use: x }\n  k: { use: z, slots: [A2, B2] }\n',
    );
    expect(insert('a: 1\n', '', '__proto__', 'v')).toBe('a: 1\n__proto__: v\n');
  });

  it('refuses where it would not be safe', () => {
    for (const text of [
      'a: { b: 1\n',
      'a: { <<: *x }\n',
      'a: &x { b: 1 }\n',
      'a: { k: w }\n',
      'a: {\n  # c\n}\n',
      'a: { b }\n',
      'a: !t { b: 1 }\n',
    ])
      expect([text, insert(text, 'a', 'k', 'v')]).toEqual([text, undefined]);
    expect(insert('b: 1\na: |+\n  x\n\n', '', 'k', 'v')).toBeUndefined();
    expect(insert('b: 1\na: |\n  x\n     \n', '', 'k', 'v')).toBeUndefined();
    expect(insert('a: 1\nb\n', '', 'k', 'v')).toBeUndefined();
  });

  it('goes beside half-typed lines that are not its neighbours', () => {
    const doc = parse('a: { b: 1 c: 2 }\nd: 1\n');
    expect(applyEdits(doc.text, insertEntry(doc, doc.root as MapNode, 'k', 'v')!)).toBe(
      'a: { b: 1 c: 2 }\nd: 1\nk: v\n',
    );
  });
});

describe('removeEntry', () => {
  it.each<[string, string, string]>([
    ['a: 1\nk: 2 # c\n# d\nb: 3\n', '', 'a: 1\n# d\nb: 3\n'],
    ['a: 1\r\nk:\r\n  x: 1 # c\r\n  y: 2\r\nb: 3\r\n', '', 'a: 1\r\nb: 3\r\n'],
    ['a: 1\nk: 2', '', 'a: 1'],
    ['a: 1\r\nk: 2', '', 'a: 1'],
    ['\uFEFFk: 1\na: 2\n', '', '\uFEFFa: 2\n'],
    ['l:\n  - k: 1 # c\n    b: 2\n', 'l.0', 'l:\n  - b: 2\n'],
    ['l:\n  - b: 1\n    k: 2\n', 'l.0', 'l:\n  - b: 1\n'],
    ['p:\n  k: 1\nb: 2\n', 'p', 'p: {}\nb: 2\n'],
    ['p: { k: 1 }\n', 'p', 'p: {}\n'],
    ['p: { k: 1, b: 2 }\n', 'p', 'p: { b: 2 }\n'],
    ['p: { b: 2, k: 1 }\n', 'p', 'p: { b: 2 }\n'],
    ['p: { b: 2, k: [1, 2], c: 3 } # x\n', 'p', 'p: { b: 2, c: 3 } # x\n'],
    ['a: |\n  x\n\nk: 1\nb: 2\n', '', 'a: |\n  x\n\nb: 2\n'],
  ])('%j from %j', (text, path, expected) => {
    expect(remove(text, path, 'k')).toBe(expected);
    expect(remove(expected, path, 'k')).toBe(expected);
  });

  it('refuses where it would not be safe', () => {
    for (const text of [
      'k: &x 1\na: *x\n',
      'k: { b: &x 1 }\na: *x\n',
      'k: 1\nk: 2\nb: 3\n',
      'k: { a: 1 b: 2 }\nc: 1\n',
      'a: 1\nk: |+\n  x\n\n',
      'a: |\n  x\nk: 1\n  # now text\nb: 2\n',
      'p: 1\nk: "x\n',
    ])
      expect([text, remove(text, '', 'k')]).toEqual([text, undefined]);
    expect(remove('p: {\n  k: 1, # c\n  b: 2 }\n', 'p', 'k')).toBeUndefined();
  });
});

it('renameKey keeps the quotes and refuses a key that is taken', () => {
  expect(rename('"k" : 1 # c\n', '', 'k', 'n')).toBe('"n" : 1 # c\n');
  expect(rename("'k': 1\n", '', 'k', "it's")).toBe("'it''s': 1\n");
  expect(rename('a: { k: 1 }\n', 'a', 'k', 'yes')).toBe('a: { "yes": 1 }\n');
  expect(rename('k: 1\n', '', 'k', 'k')).toBe('k: 1\n');
  expect(rename('k: 1\nn: 2\n', '', 'k', 'n')).toBeUndefined();
  expect(rename('&x k: 1\n', '', 'k', 'n')).toBeUndefined();
  expect(rename('a: 1\n', '', 'k', 'n')).toBeUndefined();
});

describe('lists', () => {
  it.each<[string, Value, string]>([
    ['l:\n  - a # c\n# d\n', 'x', 'l:\n  - a # c\n  - x\n# d\n'],
    ['l:\n- a\n- b', 'x', 'l:\n- a\n- b\n- x'],
    ['l:\r\n  - a: 1\r\n    b: 2\r\n', { p: 'q' }, 'l:\r\n  - a: 1\r\n    b: 2\r\n  - { p: q }\r\n'],
    [
      'l:\n  - { a: 1, b: 2, c: 3, d: 4 }\n',
      big,
      'l:\n  - { a: 1, b: 2, c: 3, d: 4 }\n  - { a: "1", b: "2", c: "3", d: "4" }\n',
    ],
    ['l: [a, b] # c\n', 'x', 'l: [a, b, x] # c\n'],
    ['l: []\n', 'x, y', 'l: ["x, y"]\n'],
    ['l:\n  -\n', 'x', 'l:\n  -\n  - x\n'],
  ])('appendItem: %j and %j', (text, value, expected) => expect(append(text, 'l', value)).toBe(expected));

  it.each<[string, number, Value, string | undefined]>([
    ['l: [a, b]\n', 0, 'x', 'l: [x, a, b]\n'],
    ['l: [a, b]\n', 2, 'x', 'l: [a, b, x]\n'],
    ['l: [a, b]\n', 3, 'x', undefined],
    ['l:\n  - a # c\n  - b\n', 0, 'x', 'l:\n  - x\n  - a # c\n  - b\n'],
    ['l:\n- a # c\n# over b\n- b\n', 1, 'x', 'l:\n- a # c\n# over b\n- x\n- b\n'],
    [
      'l:\r\n  - a\r\n  - b\r\n',
      1,
      big,
      'l:\r\n  - a\r\n  - a: "1"\r\n    b: "2"\r\n    c: "3"\r\n    d: "4"\r\n  - b\r\n',
    ],
    ['l:\n  - { a: b }\n', 0, { p: 'q' }, 'l:\n  - { p: q }\n  - { a: b }\n'],
    ['l:\n  - |+\n    text\n\n  - b\n', 1, 'x', undefined],
    ['l: &l [a]\n', 0, 'x', undefined],
  ])('insertItem: %j at %j: %j', (text, index, value, expected) =>
    expect(insertAt(text, 'l', index, value)).toBe(expected),
  );

  it.each<[string, number, string]>([
    ['l:\n  - a\n  - b # c\n  # d\n  - e\n', 1, 'l:\n  - a\n  # d\n  - e\n'],
    ['l:\n  - a\n  -\n    b: 1\n    c: 2\n  - e\n', 1, 'l:\n  - a\n  - e\n'],
    ['l:\r\n  - a\r\n  - # why\r\n    b: 1\r\n  - e', 1, 'l:\r\n  - a\r\n  - e'],
    ['l:\n  - a\n  - b', 1, 'l:\n  - a'],
    ['l:\n  - a # c\n', 0, 'l: [] # c\n'],
    ['l: [a, b, c]\n', 0, 'l: [b, c]\n'],
    ['l: [a, b, c]\n', 2, 'l: [a, b]\n'],
    ['l: [a]\n', 0, 'l: []\n'],
    ['l: [a]\n', 5, 'l: [a]\n'],
    ['l:\n  - - a\n    - b\n', 0, 'l: []\n'],
  ])('removeItem: %j at %j', (text, index, expected) => expect(removeAt(text, 'l', index)).toBe(expected));

  it('removes the first item of a list in a list', () => {
    expect(removeAt('- - a # c\n  - b\n- c\n', '0', 0)).toBe('- - b\n- c\n');
  });

  it.each<[string, number, number, string]>([
    [
      'l:\n  - a # 1\n\n  # d\n  - b: 1\n    c: 2 # 2\n  - e',
      0,
      2,
      'l:\n  - b: 1\n    c: 2 # 2\n\n  # d\n  - e\n  - a # 1',
    ],
    ['l:\n  - a\n  - b\n  - c\n', 2, 0, 'l:\n  - c\n  - a\n  - b\n'],
    ['l: [a, b , c] # x\n', 0, 1, 'l: [b, a , c] # x\n'],
    ['l:\n  - a\n  - b\n', 1, 1, 'l:\n  - a\n  - b\n'],
  ])('moveItem: %j from %j to %j', (text, from, to, expected) => expect(move(text, 'l', from, to)).toBe(expected));

  it('refuses where it would not be safe', () => {
    expect(move('l:\n  - a\n  - b\n', 'l', 0, 2)).toBeUndefined();
    expect(move('l:\n  - a\n  - |\n    x\n     # text\n', 'l', 0, 1)).toBe('l:\n  - |\n    x\n     # text\n  - a\n');
    expect(move('l:\n  - a\n    # c\n  - |\n   x\n', 'l', 0, 1)).toBeUndefined();
    expect(move('l:\n  - &x a\n  - *x\n', 'l', 0, 1)).toBeUndefined();
    expect(append('l: &x [a]\n', 'l', 'x')).toBeUndefined();
    expect(append('l: [a b, [c\n', 'l', 'x')).toBeUndefined();
    expect(removeAt('l: [a, # c\n b]\n', 'l', 1)).toBeUndefined();
  });
});

it.each([
  ['', 'k: v\n'],
  ['# c\n', '# c\nk: v\n'],
  ['# c', '# c\nk: v'],
  ['# c\r\n', '# c\r\nk: v\r\n'],
  ['\uFEFF', '\uFEFFk: v\n'],
  ['---\n', '---\nk: v\n'],
  ['a: 1\n', 'a: 1\nk: v\n'],
  ['{ a: 1 }\n', '{ a: 1, k: v }\n'],
  ['a: 1\n...\n', 'a: 1\nk: v\n...\n'],
  ['- a\n', undefined],
  ['text\n', undefined],
  ['...\n', undefined],
])('insertTopLevel: %j', (text, expected) => {
  expect(edited(text, (doc) => insertTopLevel(doc, 'k', 'v'))).toBe(expected);
});
