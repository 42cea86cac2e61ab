// Reading YAML: nodes, spans, problems, and the hazards a text can hold.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from '../../../server/src/core/yaml';
import type { MapNode, Node, Parsed } from '../../../server/src/core/yaml';
import { limits } from '../../../server/src/core/yaml/limits';
import { busyFactor, cpuMsOf } from '../../support/cpu';
import { plain, walk } from './projection';

const root = (parsed: Parsed) => parsed.root as MapNode;
const codes = (text: string) => parse(text).problems.map((problem) => problem.code);
const sliceOf = (text: string, node: Node | undefined) => node && text.slice(node.span.start, node.span.end);

describe('values', () => {
  it('keeps every value as the text that stands there', () => {
    const text = 'firmware: 1.08\nno: no\ntime: 12:30\nnull: null\nsure: true\nhex: 0x1F\n';
    expect(plain(parse(text).root)).toEqual(
      new Map([
        ['firmware', '1.08'],
        ['no', 'no'],
        ['time', '12:30'],
        ['null', 'null'],
        ['sure', 'true'],
        ['hex', '0x1F'],
      ]),
    );
    expect(codes(text)).toEqual([]);
  });

  it('tells the styles apart and decodes them', () => {
    const text = "a: x y # c\nb: 'it''s'\nc: \"a\\tb\"\nd: |\n  one\n  two\n\ne: >-\n  one\n  two\nf:\n";
    const map = root(parse(text));
    const seen = map.entries.map(
      ({ value }) => value.type === 'scalar' && [value.style, value.text, sliceOf(text, value)],
    );
    expect(seen).toEqual([
      ['plain', 'x y', 'x y'],
      ['single', "it's", "'it''s'"],
      ['double', 'a\tb', '"a\\tb"'],
      ['block', 'one\ntwo\n', '|\n  one\n  two'],
      ['block', 'one two', '>-\n  one\n  two'],
      ['empty', '', ''],
    ]);
  });

  it.each([
    ['LF', '\n'],
    ['CRLF', '\r\n'],
    ['a lone CR', '\r'],
  ])('reads the same with %s line ends', (_, eol) => {
    const text = 'a: 1\nb: "x\n  y"\nc: |\n  one\n  two\nd:\n  - e\n  - f: g\n';
    const parsed = parse(text.replaceAll('\n', eol));
    expect(parsed.problems).toEqual([]);
    expect(plain(parsed.root)).toEqual(plain(parse(text).root));
  });

  it('puts an empty value right after its colon or dash', () => {
    const text = '\uFEFFbench:   # later\nlist:\n  -\n  - x\nlast:';
    const map = root(parse(text));
    expect(map.get('bench')?.value.span).toEqual({ start: 7, end: 7 });
    const list = map.get('list')!.value;
    expect(list.type === 'list' && list.items[0]!.span.start).toBe(text.indexOf('-') + 1);
    expect(map.get('last')?.value.span).toEqual({ start: text.length, end: text.length });
  });

  it('spans a map from its first key to its last value, without comments', () => {
    const text = '# head\na:\n  b: 1\n  c: 2   # tail\n# end\n';
    const map = root(parse(text));
    expect(sliceOf(text, map)).toBe('a:\n  b: 1\n  c: 2');
    expect(sliceOf(text, map.get('a')!.value)).toBe('b: 1\n  c: 2');
  });

  it('has no root for an empty file or one of comments alone', () => {
    for (const text of ['', '\n', '# only\n', '---\n', '\uFEFF'])
      expect(parse(text)).toMatchObject({ root: undefined, problems: [] });
  });
});

describe('half-typed text', () => {
  it('keeps the nodes around it', () => {
    const parsed = parse('format: 1\nparts:\n  boa\n  cooler: { use: x\nexpect:\n  cost: 3\n');
    expect(root(parsed).get('format')?.value).toMatchObject({ text: '1', fixable: true });
    expect(parsed.problems.length).toBeGreaterThan(0);
  });

  it('says what is wrong in plain words, once a place', () => {
    const messages = (text: string) => parse(text).problems.map((problem) => problem.message);
    expect(messages('a: 1\nb\nc: 2\n')).toEqual([expect.stringContaining('colon')]);
    expect(messages('a: { b: 1\nc: 2\n')).toEqual([expect.stringContaining('missing }')]);
    expect(messages('a: [1 2\n')).toEqual([expect.stringContaining('missing ]')]);
    expect(messages('a: "x\n')).toEqual([expect.stringContaining('closing "')]);
    expect(messages('a: b: c\n')).toEqual([expect.stringContaining('same line')]);
    expect(messages('a:\n\tb: 1\n')[0]).toContain('tab');
  });

  it('makes no promise of a fix for the broken value, but for its neighbours', () => {
    const map = root(parse('good: 1\nbad: { a: 1 b: 2 }\nalso: { c: 3 }\n'));
    expect(map.get('bad')).toMatchObject({ fixable: false, value: { fixable: false } });
    expect(map.get('good')?.fixable).toBe(true);
    expect(map.get('also')?.fixable).toBe(true);
  });

  it('caps a flood of errors, says so, and offers no fix there', () => {
    const parsed = parse('- { a: 1 b: 2 }\n'.repeat(limits.syntaxProblems + 50));
    expect(parsed.problems).toHaveLength(limits.syntaxProblems + 1);
    expect(parsed.problems.at(-1)).toMatchObject({
      code: 'limits-reached',
      message: expect.stringContaining('50 more'),
    });
    walk(parsed.root, (node) => expect(node.fixable).toBe(false));
  });
});

/** Processor time that the longest of texts may take. */
const mostMs = 4_000;

describe('hazards', () => {
  it('is done with a flood of errors, anchors or directives in little time', async () => {
    for (const text of [
      '} '.repeat(140_000),
      `a: ${'&x '.repeat(140_000)}`,
      `a: ${'!x '.repeat(140_000)}`,
      '%X\n'.repeat(140_000),
      `[${','.repeat(290_000)}]`,
      '*x '.repeat(70_000),
      `p: { ${Array.from({ length: 14_000 }, (_, i) => `a${i}: 1 b${i}: 2, `).join('')}}`,
    ]) {
      const ms = await cpuMsOf(() => expect(parse(text).problems.length).toBeLessThan(limits.syntaxProblems + 5));
      expect(ms, text.slice(0, 8)).toBeLessThan(mostMs * busyFactor);
    }
  });

  it('reads 64 levels and refuses 65, in flow and in block', () => {
    const flow = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);
    const dashes = (depth: number) => `${'- '.repeat(depth)}x`;
    const indented = (depth: number) => Array.from({ length: depth }, (_, i) => `${' '.repeat(i)}k:`).join('\n');
    for (const nested of [flow, dashes, indented]) {
      expect(parse(nested(limits.depth))).toMatchObject({ problems: [], root: expect.anything() });
      expect(parse(nested(limits.depth + 1))).toMatchObject({
        problems: [{ code: 'limits-reached' }],
        root: undefined,
      });
    }
  });

  it('survives a million opening brackets', () => {
    for (const sign of ['[', '{', '- ', '? ', '{a: ']) expect(codes(sign.repeat(400_000))).toEqual(['limits-reached']);
  });

  it('refuses more bytes than the limit, counting UTF-8', () => {
    expect(codes(`# ${'x'.repeat(limits.bytes - 2)}`)).toEqual([]);
    expect(codes(`# ${'x'.repeat(limits.bytes - 1)}`)).toEqual(['limits-reached']);
    expect(codes(`# ${'€'.repeat(limits.bytes / 3 + 1)}`)).toEqual(['limits-reached']);
    expect(codes(`# ${'😀'.repeat((limits.bytes - 2) / 4)}`)).toEqual([]);
  });

  it('refuses more tokens than the limit', () => {
    for (const text of ['- a\n', '\n', '# c\n', '{}: '])
      expect(codes(text.repeat(limits.tokens + 1))).toEqual(['limits-reached']);
    expect(codes('\n'.repeat(limits.tokens - 1))).toEqual([]);
  });

  it('finds a key that stands twice among 30,000 in little time', async () => {
    const text = `${Array.from({ length: 30_000 }, (_, i) => `k${i}: 1\n`).join('')}k7: 2\n`;
    let parsed = parse('');
    expect(await cpuMsOf(() => (parsed = parse(text)))).toBeLessThan(mostMs * busyFactor);
    expect(parsed.problems).toMatchObject([{ code: 'key-twice', message: expect.stringContaining('`k7`') }]);
    expect(root(parsed).get('k7')).toMatchObject({ value: { text: '1' }, fixable: false });
    expect(root(parsed).entries.at(-1)).toMatchObject({ repeated: true, fixable: false });
  });

  it('takes __proto__, constructor and toString as plain names', () => {
    const parsed = parse('__proto__: 1\nconstructor: 2\ntoString: { __proto__: 3 }\n');
    expect(parsed.problems).toEqual([]);
    expect(root(parsed).entries.map((entry) => entry.key)).toEqual(['__proto__', 'constructor', 'toString']);
    expect(root(parsed).get('hasOwnProperty')).toBeUndefined();
    expect(root(parsed).get('__proto__')?.value).toMatchObject({ text: '1' });
    expect(codes('__proto__: 1\n__proto__: 2\n')).toEqual(['key-twice']);
  });

  it('reports a request for YAML 1.1 and reads by the rules of 1.2', () => {
    const parsed = parse('%YAML 1.1\n---\na: no\nb: 1:30\nc: 017\n');
    expect(parsed.problems).toMatchObject([{ code: 'yaml-1.1-asked-for', span: { start: 0, end: 9 } }]);
    expect(plain(parsed.root)).toEqual(
      new Map([
        ['a', 'no'],
        ['b', '1:30'],
        ['c', '017'],
      ]),
    );
    expect(codes('%YAML 1.2\n---\na: no\n')).toEqual([]);
  });

  it('reads the first of several documents', () => {
    const parsed = parse('a: 1\n---\nb: 2\n');
    expect(parsed.problems).toMatchObject([{ code: 'several-documents', span: { start: 5, end: 8 } }]);
    expect(plain(parsed.root)).toEqual(new Map([['a', '1']]));
  });
});

describe('aliases, merges, tags, odd keys', () => {
  it('gives what an alias stands for, where the alias stands, and offers no fix', () => {
    const text = 'a: &x { p: 1 }\nb: *x\nc: *x\n';
    const parsed = parse(text);
    expect(parsed.problems.map((problem) => problem.code)).toEqual(['alias-or-merge-used', 'alias-or-merge-used']);
    const b = root(parsed).get('b')!;
    expect(sliceOf(text, b.value)).toBe('*x');
    expect(plain(b.value)).toEqual(new Map([['p', '1']]));
    for (const key of ['a', 'b', 'c']) {
      expect(root(parsed).get(key)?.fixable).toBe(false);
      walk(root(parsed).get(key)!.value, (node) => expect(node.fixable).toBe(false));
    }
  });

  it('says where an alias stands for nothing or for itself', () => {
    expect(parse('a: *nope\n').problems).toMatchObject([
      { code: 'alias-unknown', message: expect.stringContaining('`nope`') },
    ]);
    expect(parse('a: &x [*x]\n').problems).toMatchObject([
      { code: 'alias-unknown', message: expect.stringContaining('inside') },
    ]);
    expect(codes('a: *x\nb: &x 1\n')).toEqual(['alias-unknown']);
  });

  it('takes the latest anchor of a name', () => {
    expect(plain(parse('a: &x 1\nb: &x 2\nc: *x\n').root)).toEqual(
      new Map([
        ['a', '1'],
        ['b', '2'],
        ['c', '2'],
      ]),
    );
  });

  it('keeps doubling aliases within the budget', () => {
    const lines = ['a0: &a0 [x, x]', ...Array.from({ length: 40 }, (_, i) => `a${i + 1}: &a${i + 1} [*a${i}, *a${i}]`)];
    const parsed = parse(lines.join('\n'));
    expect(parsed.problems.filter((problem) => problem.code === 'limits-reached')).toHaveLength(1);
    let count = 0;
    walk(parsed.root, () => count++);
    expect(count).toBeLessThan(limits.nodes * 2);
  });

  it('takes no more aliases than the limit', () => {
    const uses = (count: number) =>
      codes(`a: &x 1\nb: [${'*x, '.repeat(count)}]\n`).filter((code) => code === 'limits-reached').length;
    expect([uses(limits.aliases), uses(limits.aliases + 1)]).toEqual([0, 1]);
  });

  it('merges what is not written, earlier sources first', () => {
    const parsed = parse('a: &a { p: 1, q: 1 }\nb: &b { q: 2, r: 2 }\nc: { <<: [*a, *b], p: 3 }\n');
    const c = root(parsed).get('c')!.value as MapNode;
    expect(plain(c)).toEqual(
      new Map([
        ['p', '3'],
        ['q', '1'],
        ['r', '2'],
      ]),
    );
    expect(c.fixable).toBe(false);
    expect(c.get('p')).toMatchObject({ fixable: true });
    expect(c.get('q')).toMatchObject({ fixable: false, merged: true });
    expect(parsed.problems).toMatchObject([{ code: 'alias-or-merge-used', message: expect.stringContaining('<<') }]);
    expect(plain(parse('"<<": 1\n').root)).toEqual(new Map([['<<', '1']]));
  });

  it('reports tags and reads the value as written', () => {
    const parsed = parse('a: !!int 3\nb: !crate { c: 1 }\n');
    expect(parsed.problems.map((problem) => problem.message)).toEqual([
      expect.stringContaining('`!!int`'),
      expect.stringContaining('`!crate`'),
    ]);
    expect(plain(parsed.root)).toEqual(
      new Map<string, unknown>([
        ['a', '3'],
        ['b', new Map([['c', '1']])],
      ]),
    );
    expect(root(parsed).get('b')).toMatchObject({ fixable: false });
  });

  it('reports a key that is no text, and offers no fix after a question mark', () => {
    expect(codes('? [a]\n: b\n')).toEqual(['key-not-text']);
    expect(codes(': b\n')).toEqual(['key-not-text']);
    expect(parse('a:\r\n: ').problems).toMatchObject([{ code: 'key-not-text', span: { start: 4, end: 5 } }]);
    expect(root(parse('a: 1\n? [b]\n: c\n')).fixable).toBe(false);
    expect(root(parse('? a\n: b\n')).get('a')).toMatchObject({ fixable: false, value: { text: 'b' } });
  });
});

describe('properties', () => {
  const yamlish = fc
    .array(
      fc.constantFrom(
        'a',
        'b: ',
        ': ',
        '- ',
        '\n',
        '\n  ',
        '\r\n',
        '\r',
        '\t',
        '[',
        ']',
        '{',
        '}',
        ',',
        '"',
        "'",
        '#',
        ' # c',
        '&x ',
        '*x',
        '<<: ',
        '!t ',
        '|',
        '>',
        '---\n',
        '...\n',
        '%YAML 1.1\n',
        '? ',
        '😀',
        '\ud800',
        '\uFEFF',
        '\\',
        '\0',
        '\x02',
        '\x18',
        '\x1f',
      ),
      { maxLength: 40 },
    )
    .map((parts) => parts.join(''));

  it('reads any text, with every span inside it and splitting nothing', () => {
    fc.assert(
      fc.property(fc.oneof(yamlish, fc.string({ unit: 'binary' }), fc.string()), (text) => {
        const parsed = parse(text);
        expect(parse(text)).toEqual(parsed);
        const inside = ({ start, end }: { start: number; end: number }) => {
          if (!(start >= 0 && start <= end && end <= text.length))
            throw new Error(`span ${start}..${end} in ${text.length}`);
          for (const at of [start, end])
            if (/^(\r\n|[\ud800-\udbff][\udc00-\udfff])$/.test(text.slice(at - 1, at + 1)))
              throw new Error(`${at} splits`);
        };
        for (const problem of parsed.problems) inside(problem.span);
        walk(parsed.root, (node) => {
          inside(node.span);
          if (node.type === 'map') for (const entry of node.entries) [entry.span, entry.keySpan].forEach(inside);
        });
      }),
      { numRuns: 3000 },
    );
  });
});
