// What every edit keeps, over generated documents: all but its own field, comments, line ends.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../../server/src/core/text';
import type { Edit } from '../../../server/src/core/text';
import {
  appendItem,
  insertEntry,
  insertItem,
  moveItem,
  parse,
  removeEntry,
  removeItem,
  renameKey,
  setValue,
} from '../../../server/src/core/yaml';
import type { Node, Parsed, Value } from '../../../server/src/core/yaml';
import { dashAt } from '../../../server/src/core/yaml/layout';
import { plain, walk } from './projection';

type Tree = { text: string } | { map: [string, Tree][]; flow: boolean } | { list: Tree[]; flow: boolean };

const key = fc.constantFrom(
  'use',
  'firmware',
  'slots',
  'M2_1',
  'written-per-day',
  '"quoted key"',
  '__proto__',
  'constructor',
);
const scalar = fc
  .constantFrom('a', '1.08', '"1.08"', "'it''s'", '31 °C', '3840x2160 @ 120 Hz', '"a # b"', 'no', '', 'x:y')
  .map((text): Tree => ({ text }));
const blockText = fc
  .constantFrom('|\n~one\n~two\n', '>-\n~one\n\n~two\n', '|+\n~kept\n\n')
  .map((text): Tree => ({ text }));
const tree = fc.letrec<{ any: Tree; coll: Tree }>((tie) => ({
  any: fc.oneof({ depthSize: 'small' }, scalar, blockText, tie('coll')),
  coll: fc.oneof(
    fc.record({
      map: fc.uniqueArray(fc.tuple(key, tie('any')), { minLength: 1, maxLength: 4, selector: ([name]) => name }),
      flow: fc.boolean(),
    }),
    fc.record({ list: fc.array(tie('any'), { minLength: 1, maxLength: 4 }), flow: fc.boolean() }),
  ),
})).coll;

/** Writes a tree with numbered comments wherever one can stand. */
class Writer {
  comments = 0;
  constructor(
    private readonly noise: readonly boolean[],
    private readonly step: number,
  ) {}

  private maybe(text: () => string): string {
    if (this.noise[this.comments % this.noise.length]) return text();
    this.comments++;
    return '';
  }

  private tail = () => this.maybe(() => ` # c${++this.comments}`);
  private line = (indent: number) => this.maybe(() => `${' '.repeat(indent)}# c${++this.comments}\n`);

  flow(node: Tree): string {
    if ('text' in node) return /^[|>]/.test(node.text) ? 'b' : node.text || '""';
    if ('list' in node) return `[${node.list.map((item) => this.flow(item)).join(', ')}]`;
    return `{ ${node.map.map(([name, value]) => `${name}: ${this.flow(value)}`).join(', ')} }`;
  }

  /** What follows a colon or dash, to the end of its last line. */
  value(node: Tree, indent: number): string {
    if ('text' in node && /^[|>]/.test(node.text)) return ` ${node.text.replaceAll('~', ' '.repeat(indent))}`;
    if ('text' in node || node.flow) return `${`${this.flowOrEmpty(node)}`}${this.tail()}\n`;
    return `${this.tail()}\n${this.block(node, indent)}`;
  }

  private flowOrEmpty(node: Tree): string {
    return 'text' in node && node.text === '' ? '' : ` ${this.flow(node)}`;
  }

  block(node: Tree, indent: number): string {
    const pad = ' '.repeat(indent);
    if ('text' in node) throw new Error('no collection');
    if ('list' in node)
      return node.list.map((item) => `${this.line(indent)}${pad}-${this.value(item, indent + this.step)}`).join('');
    return node.map
      .map(([name, value]) => `${this.line(indent)}${pad}${name}:${this.value(value, indent + this.step)}`)
      .join('');
  }
}

const documents = fc
  .record({
    root: tree,
    noise: fc.array(fc.boolean(), { minLength: 1, maxLength: 7 }),
    step: fc.constantFrom(2, 4),
    eol: fc.constantFrom('\n', '\r\n', '\r'),
    bom: fc.boolean(),
    ended: fc.boolean(),
  })
  .map(({ root, noise, step, eol, bom, ended }) => {
    const written = new Writer(noise, step).block({ ...root, flow: false } as Tree, 0);
    const text = ended ? written : written.replace(/\n$/, '');
    // A document of one line shows no line end to keep.
    return { text: (bom ? '\uFEFF' : '') + text.replaceAll('\n', eol), eol: text.includes('\n') ? eol : '\n' };
  });

const values: fc.Arbitrary<Value> = fc.oneof(
  fc.constantFrom<Value>('new', '2.10', '', 'it\'s "so"', 'a: b', 'two\nlines', 7, true, [], {}),
  fc.constantFrom<Value>(
    ['A2', 'B2'],
    { read: '5 GB/s' },
    [{ a: ['b'] }, 'c'],
    { a: { b: { c: 'd' } }, e: ['f'] },
    { a: { b: null } },
    { a: null, b: 'c' },
    Array.from({ length: 8 }, (_, i) => `i${i}`),
  ),
);

/** A value as the projection shows it. */
function shown(value: Value): unknown {
  if (typeof value !== 'object' || value === null) return String(value ?? '');
  return Array.isArray(value)
    ? value.map(shown)
    : new Map(Object.entries(value).map(([name, inner]) => [name, shown(inner as Value)]));
}

const commentsIn = (text: string) => text.match(/# c\d+/g) ?? [];
const textOf = ({ root }: Parsed) =>
  JSON.stringify(plain(root), (_, value) => (value instanceof Map ? ['map', ...value] : value));

/** Makes the edit and holds the outcome against `expected`; gives the new text. */
function hold(doc: Parsed, eol: string, edits: Edit[], expected: unknown, mayLose: string): string {
  const result = applyEdits(doc.text, edits);
  const after = parse(result);
  expect(after.problems).toEqual([]);
  expect(plain(after.root)).toEqual(expected);
  const lost = new Set(commentsIn(mayLose));
  const kept = (text: string) =>
    commentsIn(text)
      .filter((comment) => !lost.has(comment))
      .sort();
  expect(kept(result)).toEqual(kept(doc.text));
  expect(result.replaceAll(eol, '')).not.toMatch(/[\r\n]/);
  expect([result.startsWith('\uFEFF'), result.endsWith(eol)]).toEqual([
    doc.text.startsWith('\uFEFF'),
    doc.text.endsWith(eol),
  ]);
  return result;
}

/** All nodes with a projection of the whole document in which that node shows as `value`. */
function nodesOf(doc: Parsed): Node[] {
  const nodes: Node[] = [];
  walk(doc.root, (node) => nodes.push(node));
  return nodes;
}

function withValue(node: Node, target: Node, value: unknown): unknown {
  if (node === target) return value;
  if (node.type === 'scalar') return node.text;
  if (node.type === 'list') return node.items.map((item) => withValue(item, target, value));
  return new Map(node.entries.map((entry) => [entry.key, withValue(entry.value, target, value)]));
}

const pick = fc.nat({ max: 30 });
const runs = { numRuns: 1500 };
let made = 0;
let asked = 0;
const count = (edits: Edit[] | undefined): edits is Edit[] => {
  asked++;
  if (edits) made++;
  return edits !== undefined;
};

describe('over generated documents', () => {
  it('documents read without a problem', () => {
    fc.assert(
      fc.property(documents, ({ text }) => {
        expect(parse(text).problems).toEqual([]);
      }),
      runs,
    );
  });

  it('setValue sets that value alone, and then changes nothing', () => {
    fc.assert(
      fc.property(documents, pick, values, ({ text, eol }, at, value) => {
        const doc = parse(text);
        const nodes = nodesOf(doc);
        const index = at % nodes.length;
        const edits = setValue(doc, nodes[index]!, value);
        if (!count(edits)) return;
        const result = parse(hold(doc, eol, edits, withValue(doc.root!, nodes[index]!, shown(value)), ''));
        expect(setValue(result, nodesOf(result).find((_, i) => i === index)!, value)).toEqual([]);
      }),
      runs,
    );
  });

  it('insertEntry adds that entry alone', () => {
    fc.assert(
      fc.property(
        documents,
        pick,
        pick,
        values,
        fc.constantFrom('before', 'after', 'end'),
        ({ text, eol }, at, beside, value, where) => {
          const doc = parse(text);
          const maps = nodesOf(doc).filter((node) => node.type === 'map');
          const map = maps[at % Math.max(1, maps.length)];
          if (!map) return;
          const sibling = map.entries[beside % map.entries.length]!.key;
          const edits = insertEntry(doc, map, 'brand-new', value, where === 'end' ? {} : { [where]: sibling });
          if (!count(edits)) return;
          const expected = new Map(plain(map) as Map<string, unknown>).set('brand-new', shown(value));
          hold(doc, eol, edits, withValue(doc.root!, map, expected), '');
        },
      ),
      runs,
    );
  });

  it('removeEntry and renameKey touch that entry alone', () => {
    fc.assert(
      fc.property(documents, pick, pick, ({ text, eol }, at, which) => {
        const doc = parse(text);
        const maps = nodesOf(doc).filter((node) => node.type === 'map');
        const map = maps[at % Math.max(1, maps.length)];
        if (!map) return;
        const entry = map.entries[which % map.entries.length]!;
        const removed = removeEntry(doc, map, entry.key);
        if (count(removed)) {
          const rest = new Map(
            map.entries.filter((other) => other !== entry).map((other) => [other.key, plain(other.value)]),
          );
          const lineEnd = text.slice(entry.span.end).search(/[\r\n]|$/) + entry.span.end;
          hold(doc, eol, removed, withValue(doc.root!, map, rest), text.slice(entry.span.start, lineEnd));
        }
        const renamed = renameKey(doc, map, entry.key, 'brand-new');
        if (!count(renamed)) return;
        const expected = new Map(
          map.entries.map((other) => [other === entry ? 'brand-new' : other.key, plain(other.value)]),
        );
        hold(doc, eol, renamed, withValue(doc.root!, map, expected), '');
      }),
      runs,
    );
  });

  it('appendItem, insertItem, removeItem and moveItem touch that item alone', () => {
    fc.assert(
      fc.property(documents, pick, pick, pick, values, ({ text, eol }, at, from, to, value) => {
        const doc = parse(text);
        const lists = nodesOf(doc).filter((node) => node.type === 'list');
        const list = lists[at % Math.max(1, lists.length)];
        if (!list) return;
        const items = list.items.map(plain);
        const appended = appendItem(doc, list, value);
        if (count(appended)) hold(doc, eol, appended, withValue(doc.root!, list, [...items, shown(value)]), '');
        const inserted = insertItem(doc, list, from % items.length, value);
        if (count(inserted))
          hold(
            doc,
            eol,
            inserted,
            withValue(doc.root!, list, items.toSpliced(from % items.length, 0, shown(value))),
            '',
          );
        const index = from % items.length;
        const span = list.items[index]!.span;
        const lineEnd = text.slice(span.end).search(/[\r\n]|$/) + span.end;
        const lineStart = list.style === 'block' ? dashAt(text, list, index)! : span.start;
        const removed = removeItem(doc, list, index);
        if (count(removed))
          hold(
            doc,
            eol,
            removed,
            withValue(
              doc.root!,
              list,
              items.filter((_, i) => i !== index),
            ),
            text.slice(lineStart, lineEnd),
          );
        const target = to % items.length;
        const moved = moveItem(doc, list, index, target);
        if (!count(moved)) return;
        const order = [...items];
        order.splice(target, 0, ...order.splice(index, 1));
        hold(doc, eol, moved, withValue(doc.root!, list, order), '');
      }),
      runs,
    );
  });

  it('are not refused for the most part', () => {
    expect(made / asked).toBeGreaterThan(0.5);
  });
});

it('an edit never touches text that it cannot read', () => {
  const pieces = fc.array(
    fc.constantFrom(
      'a',
      'b',
      ': ',
      ':',
      '- ',
      '\n',
      '\n  ',
      '\r\n',
      '[',
      ']',
      '{',
      '}',
      ', ',
      '"',
      ' # c\n',
      '&x ',
      '*x',
      '|\n',
      '|+\n',
      '<<: ',
      '? ',
      '!t ',
    ),
    { maxLength: 30 },
  );
  fc.assert(
    fc.property(
      pieces.map((all) => all.join('')),
      pick,
      (text, at) => {
        const doc = parse(text);
        const nodes = nodesOf(doc);
        const node = nodes[at % Math.max(1, nodes.length)];
        if (!node) return;
        const tries = [
          setValue(doc, node, 'z'),
          setValue(doc, node, { k: [{ z: ['y'] }] }),
          ...(node.type === 'map' ? [insertEntry(doc, node, 'k', 'z'), removeEntry(doc, node, 'a')] : []),
          ...(node.type === 'list'
            ? [
                appendItem(doc, node, 'z'),
                insertItem(doc, node, 0, 'z'),
                removeItem(doc, node, 0),
                moveItem(doc, node, 0, 1),
              ]
            : []),
        ];
        for (const edits of tries) {
          const after = parse(applyEdits(text, edits ?? []));
          const errors = (parsed: Parsed) => parsed.problems.filter(({ code }) => code !== 'key-twice').length;
          if (errors(after) > errors(doc))
            throw new Error(`${JSON.stringify(after.text)} ${textOf(after)} ${JSON.stringify(after.problems)}`);
        }
      },
    ),
    {
      numRuns: 3000,
      examples: [
        // Broken text below a comment is what stands next to a value above it.
        ['a: b # c\n- ', 1],
        // The item is an anchor of nothing: it ends behind the line break.
        ['[&x \r\n]', 0],
      ],
    },
  );
});
