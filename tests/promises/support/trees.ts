// Plausible builds as trees of text, drawn from the tables of fields: mostly right, with the slips that people make.
import fc from 'fast-check';
import { buildFile } from '../../../server/src/core/manifest/build-file';
import { roleNames, roles, type Role, type RoleName } from '../../../server/src/core/manifest/places';
import type { Field, Table } from '../../../server/src/core/parts/field';
import { kinds, type Kind } from '../../../server/src/core/parts/kinds';
import { kindOfPart } from '../../../server/src/core/build/placed';
import { readSamples } from '../../support/samples';

export type Tree =
  | { readonly text: string }
  | { readonly map: readonly (readonly [string, Tree])[]; readonly flow: boolean }
  | { readonly list: readonly Tree[]; readonly flow: boolean };

/** Names that objects have of their own, and names in other scripts. */
export const oddNames = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'läufer',
  '🌊',
  'Ａ１',
  'a b',
  '0',
  'null',
] as const;

const textOf = (text: string): Tree => ({ text });
const texts = (...all: readonly string[]): fc.Arbitrary<Tree> => fc.constantFrom(...all).map(textOf);

/** Mostly the first, now and then one of the others. */
const mostly = <T>(usual: fc.Arbitrary<T>, ...rare: readonly fc.Arbitrary<T>[]): fc.Arbitrary<T> =>
  fc.oneof(
    { weight: 12 * Math.max(1, rare.length), arbitrary: usual },
    ...rare.map((arbitrary) => ({ weight: 2, arbitrary })),
  );

const number = (text: string): string => /[\d.]+/.exec(text)?.[0] ?? '1';
const unit = (text: string): string => text.replace(/^[\d.\s]+/, '');

/** A quantity as it stands in the example, another of the same unit, or one of the ways to get it wrong. */
function quantities(example: string): fc.Arbitrary<Tree> {
  const [n, u] = [number(example), unit(example)];
  const near = [0.1, 0.5, 1, 1, 1.2, 2, 10].map((factor) => `${Number((Number(n) * factor).toPrecision(3))} ${u}`);
  return mostly(
    texts(example, ...near, `${n} to ${Number(n) * 2} ${u}`),
    texts(n, `${n}${u}`, `${n},5 ${u}`, `${n} ${u.toLowerCase()}`, `${n} ${u.toUpperCase()}`),
    texts(
      `${n} kg`,
      `${n} parsec`,
      `-${n} ${u}`,
      `~${n} ${u}`,
      `1e99 ${u}`,
      '',
      'unknown',
      `${n} ${u} ${u}`,
      '５ mm',
      '1.2.3',
    ),
  );
}

function scalars(field: Field): fc.Arbitrary<Tree> {
  const { example } = field;
  switch (field.type) {
    case 'quantity':
      return quantities(example);
    case 'count':
      return mostly(texts('1', '2', '3', '4', '8', example), texts('0', '-1', '1.5', 'two', '1e3', '007', ''));
    case 'flag':
      return mostly(texts('true', 'false'), texts('yes', 'No', 'on', '1', '', 'TRUE'));
    case 'choice':
      return mostly(
        texts(...field.choices),
        texts(...field.choices.flatMap((one) => [one.slice(1), `${one}s`, one.toUpperCase()]), 'none of them', ''),
      );
    case 'date':
      return mostly(
        texts('2026-10-03', '2024-02-29', '2027-06-30', example),
        texts('2027-13-01', '3.10.2026', 'soon', ''),
      );
    case 'version':
      return mostly(texts('1.02', '1.08', '1.20', '1.31', example), texts('1.2', 'F7c', '', ...oddNames));
    case 'text':
    case 'form':
      return mostly(texts(example, ...(field.usual ?? [])), texts('', '~', 'no', '1:30', ...oddNames));
    default:
      return texts(example);
  }
}

const flows = fc.boolean();

/** Names under which things stand: those of the samples' boards and cases, so that checks meet, and odd ones. */
const names = mostly(
  fc.constantFrom(
    'M2_1',
    'M2_2',
    'PCIE_1',
    'PCIE_2',
    'SATA_1',
    'SATA_5',
    'CPU_FAN',
    'SYS_FAN_1',
    'A',
    'B',
    'A2',
    'B2',
    'front',
    'rear',
    'top',
    'scratch',
    'archive',
    'EPS 8-pin',
    '24-pin',
    'DP_1',
    '3.5 in',
  ),
  fc.constantFrom(...oddNames),
);

const made = new WeakMap<object, fc.Arbitrary<Tree>>();

export function ofField(field: Field): fc.Arbitrary<Tree> {
  let arbitrary = made.get(field);
  if (!arbitrary)
    made.set(
      field,
      (arbitrary = mostly(make(field), texts('', 'x', '[]'), fc.constant<Tree>({ list: [textOf('x')], flow: true }))),
    );
  return arbitrary;
}

function make(field: Field): fc.Arbitrary<Tree> {
  if (field.type === 'group') return ofTable(field.fields, 4);
  if (field.type === 'list')
    return fc.record({ list: fc.array(ofField(field.of as Field), { maxLength: 3 }), flow: flows });
  if (field.type === 'named')
    return fc.record({
      map: fc.uniqueArray(fc.tuple(names, ofField(field.of)), { maxLength: 3, selector: ([name]) => name }),
      flow: flows,
    });
  return scalars(field);
}

const slipped = (key: string): string[] =>
  [key.slice(0, -1), `${key[1] ?? ''}${key[0]}${key.slice(2)}`, `${key}s`].filter((word) => word.length > 1);

/** One entry of a table, its key now and then misspelled. */
function entryOf(key: string, field: Field): fc.Arbitrary<readonly [string, Tree]> {
  return fc.tuple(mostly(fc.constant(key), fc.constantFrom(key, ...slipped(key))), ofField(field));
}

export function entriesOf(table: Table, most: number, least = 0): fc.Arbitrary<(readonly [string, Tree])[]> {
  const known = Object.entries(table).map(([key, field]) => entryOf(key, field as Field));
  const odd = fc.tuple(fc.constantFrom(...oddNames), texts('1', 'x', ''));
  if (known.length === 0) return fc.constant([]);
  return fc.uniqueArray(fc.oneof({ weight: 60, arbitrary: fc.oneof(...known) }, { weight: 1, arbitrary: odd }), {
    minLength: least,
    maxLength: most,
    selector: ([key]) => key,
  });
}

const ofTable = (table: Table, most: number): fc.Arbitrary<Tree> =>
  fc.record({ map: entriesOf(table, most), flow: flows });

const samples = readSamples();
const namesOfKind = new Map<Kind, string[]>();
for (const doc of samples.docs.values()) {
  const kind = doc.kind === 'part' ? kindOfPart(doc) : undefined;
  if (kind) namesOfKind.set(kind, [...(namesOfKind.get(kind) ?? []), doc.name.replace(/^parts\/|\.part\.yaml$/g, '')]);
}

/** A part where it stands: by name, spelled out, or both. */
function ofRole(role: Role): fc.Arbitrary<Tree> {
  const known = namesOfKind.get(role.kind) ?? ['a/b'];
  const use = mostly(
    texts(...known),
    texts('nobody/nothing', 'one', '../up/out', '__proto__/constructor', `${known[0]!}x`),
  );
  const { use: _, ...fields } = role.fields as Record<string, Field>;
  const one = fc
    .record({
      used: fc.option(
        use.map((tree) => ['use', tree] as const),
        { freq: 6 },
      ),
      own: entriesOf(fields, 4),
      facts: entriesOf(kinds[role.kind], 2),
      flow: flows,
    })
    .map(({ used, own, facts, flow }): Tree => {
      const map = new Map([...(used ? [used] : []), ...own, ...facts]);
      return { map: [...map], flow };
    });
  if (!role.several) return mostly(one, texts('', 'x'));
  return mostly(
    fc.record({ list: fc.array(one, { minLength: 1, maxLength: 3 }), flow: fc.constant(false) }),
    one,
    texts(''),
  );
}

const parts = fc.record({
  map: fc.uniqueArray(
    fc.oneof(
      ...roleNames.map((role: RoleName) =>
        fc.tuple(mostly(fc.constant<string>(role), fc.constantFrom(...slipped(role))), ofRole(roles[role])),
      ),
    ),
    { minLength: 4, maxLength: 9, selector: ([role]) => role },
  ),
  flow: fc.constant(false),
});

const { format: _, build: __, ...sections } = buildFile;

/** A build as a tree: its heading, its parts, some of the other sections in any order. */
export const buildTrees: fc.Arbitrary<Tree> = fc
  .record({
    title: texts('Survey desk', 'Counter PC', '"#1"', '🌊', '__proto__'),
    parts,
    rest: entriesOf(sections, 4),
    before: fc.boolean(),
  })
  .map(({ title, parts: held, rest, before }): Tree => {
    const head = [
      ['format', textOf('1')],
      ['build', title],
    ] as const;
    const body = [['parts', held]] as const;
    return { map: [...head, ...(before ? [...body, ...rest] : [...rest, ...body])], flow: false };
  });

/** A part file as a tree. */
export const partTrees: fc.Arbitrary<Tree> = fc.constantFrom(...(Object.keys(kinds) as Kind[])).chain((kind) =>
  entriesOf(kinds[kind], 9).map(
    (entries): Tree => ({
      map: [...new Map([['kind', textOf(kind)] as const, ...entries.filter(([key]) => key !== 'kind')])],
      flow: false,
    }),
  ),
);
