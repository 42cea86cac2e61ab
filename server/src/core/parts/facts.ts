// Facts read lazily from one or more maps by a table of fields; the first map that states a key wins.
import type { Entry, MapNode, Node } from '../yaml';
import type { Doc } from './doc';
import type { Fact, Gap, Group, GroupMeta } from './fact';
import { meanings, wordOf, type Vocabulary } from '../trade/vocabulary';
import type { Field, ListField, NamedField, ScalarField, Table } from './field';
import { limits } from './limits';
import { readNode } from './scalar';

/** A map to read from. `map` is undefined where the file has none, so that absent facts still know their place. */
export interface Source extends Gap {
  readonly doc: Doc;
  readonly entry?: Entry;
  readonly path: string;
  /** Of a map whose names are words of a vocabulary: a name is found under any of its spellings. */
  readonly names?: Vocabulary;
  /** Span of the whole, for an absent map the nearest thing that stands in the file. */
  readonly span: { readonly start: number; readonly end: number };
}

// Names with a `$` of its own: a field may be called anything else.
interface GroupImpl {
  $: GroupMeta;
  $sources: readonly Source[];
  $rest: Readonly<Record<string, unknown>> | undefined;
  $read: unknown[];
}

// Made once from tables that never change; nothing that was read is kept here.
const shapes = new WeakMap<Table, object>();

/**
 * Reads a group. `sources` are in order of precedence: what is spelled out in a build before the part file.
 * The last source is where an absent fact belongs. `rest` is the group as all sources but the first state it: what the
 * first does not state is taken from there, so that a part file is read once for all builds that use it.
 */
export function readGroup<T extends Table>(
  table: T,
  name: string,
  sources: readonly Source[],
  rest?: Group<T>,
): Group<T> {
  const home = sources[sources.length - 1]!;
  const first = sources.find((source) => source.map) ?? home;
  const impl = Object.create(shapeOf(table)) as GroupImpl;
  impl.$ = {
    doc: first.doc,
    path: first.path,
    name,
    span: first.span,
    stated: first.map !== undefined,
    map: first.map,
    entry: first.entry,
  };
  impl.$sources = sources;
  impl.$rest = rest as GroupImpl['$rest'];
  impl.$read = [];
  return impl as unknown as Group<T>;
}

/** One prototype a table, with a getter a field, so that nothing is read that no check asks for. */
function shapeOf(table: Table): object {
  let shape = shapes.get(table);
  if (!shape) {
    shape = Object.create(null) as object;
    Object.keys(table).forEach((key, i) => {
      const field = table[key] as Field;
      Object.defineProperty(shape, key, {
        enumerable: true,
        get(this: GroupImpl) {
          return (this.$read[i] ??= readIn(this, field, key));
        },
      });
    });
    shapes.set(table, shape);
  }
  return shape;
}

function readIn({ $rest: rest, $sources: sources }: GroupImpl, field: Field, key: string): unknown {
  if (!rest) return readField(field, key, sources);
  if (!sources[0]!.map?.get(key)) return rest[key];
  return readField(field, key, sources, rest[key]);
}

/**
 * Every fact is made here, with the same keys in the same order: facts are read everywhere, and one shape is read
 * quickest.
 */
export function makeFact(
  value: unknown,
  text: string,
  key: string,
  path: string,
  field: Field,
  doc: Doc,
  entry?: Entry,
  node?: Node,
  holder?: MapNode,
  gap?: Gap,
  replaced?: Fact<unknown>,
): Fact<unknown> {
  return { type: 'fact', value, text, key, path, field, doc, entry, node, holder, gap, replaced };
}

/** The entry of a name in a source, under any spelling of it. */
function entryIn({ map, names }: Source, key: string): Entry | undefined {
  const exact = map?.get(key);
  if (exact || !map || !names) return exact;
  return map.entries.find((entry) => wordOf(names, entry.key) === key);
}

/** A name as it is written, as a fact of its own: an item of a list, or a key. */
export function nameFact(field: Field, doc: Doc, path: string, node: Node & { type: 'scalar' }): Fact<string> {
  return makeFact(node.text, node.text, path, path, field, doc, undefined, node) as Fact<string>;
}

const below = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** `rest`: the same field as all sources but the first state it, where that is read already. */
function readField(field: Field, key: string, sources: readonly Source[], rest?: unknown): unknown {
  if (field.type === 'group')
    return readGroup(
      field.fields,
      key,
      sources.map((source) => childSource(source, key)),
      rest as Group<Table> | undefined,
    );
  if (field.type === 'named') return readNamed(field, key, sources);
  for (let i = 0; i < sources.length; i++) {
    const entry = entryIn(sources[i]!, key);
    if (!entry) continue;
    const replaced =
      i + 1 < sources.length
        ? (((i === 0 && rest) || readField(field, key, sources.slice(i + 1))) as Fact<unknown>)
        : undefined;
    return factFrom(field, sources[i]!, entry, replaced?.entry ? replaced : undefined);
  }
  return absent(field, key, sources[sources.length - 1]!);
}

function childSource(source: Source, key: string): Source {
  const entry = entryIn(source, key);
  const path = below(source.path, entry?.key ?? key);
  if (entry?.value.type === 'map')
    return {
      doc: source.doc,
      map: entry.value,
      entry,
      path,
      span: entry.value.span,
      key: undefined,
      parent: undefined,
    };
  return { doc: source.doc, map: undefined, entry: undefined, path, span: source.span, key, parent: source };
}

function absent(field: Field, key: string, source: Source): Fact<unknown> {
  const path = below(source.path, key);
  return makeFact(
    undefined,
    '',
    key,
    path,
    field,
    source.doc,
    undefined,
    undefined,
    source.map,
    source.map ? undefined : source,
  );
}

function factFrom(
  field: ScalarField | ListField,
  source: Source,
  entry: Entry,
  replaced: Fact<unknown> | undefined,
): Fact<unknown> {
  const { key } = entry;
  const path = below(source.path, key);
  const { value, text } = readValue(field, key, entry.value, source, path);
  return makeFact(value, text, key, path, field, source.doc, entry, entry.value, source.map, undefined, replaced);
}

function readValue(
  field: ScalarField | ListField,
  key: string,
  node: Node,
  source: Source,
  path: string,
): { value: unknown; text: string } {
  const text =
    node.type === 'scalar' ? node.text : source.doc.text.slice(node.span.start, node.span.end).replaceAll('\r\n', '\n');
  if (field.type === 'list')
    return { value: node.type === 'list' ? readItems(field, key, node.items, source, path) : undefined, text };
  return { value: node.type === 'scalar' ? readNode(source.doc, field, node).value : undefined, text };
}

function readItems(list: ListField, key: string, items: readonly Node[], source: Source, path: string): unknown[] {
  const field: Field = list.of;
  return items.slice(0, list.most ?? limits.items).map((node, i) => {
    const at = `${path}[${i}]`;
    if (field.type === 'group') {
      const map =
        node.type === 'map'
          ? { map: node }
          : field.bare !== undefined && node.type === 'scalar'
            ? { map: standIn(field.bare, node) }
            : {};
      return readGroup(field.fields, String(i), [{ doc: source.doc, ...map, path: at, span: node.span }]);
    }
    const { value, text } = readValue(field as ScalarField, key, node, source, at);
    return makeFact(value, text, key, at, field, source.doc, undefined, node);
  });
}

/** A bare text read as a map of one key. It is not written as a map, so no edit may take it for one. */
function standIn(key: string, node: Node): MapNode {
  const entry: Entry = { key, keySpan: node.span, value: node, span: node.span, fixable: false };
  return {
    type: 'map',
    style: 'flow',
    span: node.span,
    fixable: false,
    entries: [entry],
    get: (wanted) => (wanted === key ? entry : undefined),
  };
}

/**
 * A map of names is joined name by name, so that a build can correct one slot of a board. Names of a vocabulary stand
 * under their canonical word; one that is not understood, or leaves open which it is, under itself.
 */
function readNamed(field: NamedField, key: string, sources: readonly Source[]): Fact<unknown> {
  const children = sources.map((source) => ({ ...childSource(source, key), names: field.names }));
  const first = children.find((child) => child.map);
  const stated = sources.find((source) => source.map?.get(key))?.map?.get(key);
  const home = sources[sources.length - 1]!;
  if (!first) return { ...absent(field, key, home), ...(stated ? { entry: stated, node: stated.value } : {}) };
  const value = new Map<string, unknown>();
  const plain = (name: string): string => (field.names && wordOf(field.names, name)) ?? name;
  for (const name of namesOf(children, plain, field.most ?? limits.items)) {
    const having = children.filter((child) => entryIn(child, name));
    const one = readField(field.of, name, having);
    value.set(name, isTwice(having[0]!, name) ? { ...(one as Fact<unknown>), value: undefined } : one);
  }
  return makeFact(value, '', key, first.path, field, first.doc, first.entry, first.entry?.value, home.map);
}

const namesOf = (children: readonly Source[], plain: (name: string) => string, most: number): Set<string> =>
  new Set(children.flatMap(({ map }) => map?.entries.slice(0, most).map((one) => plain(one.key)) ?? []));

/** Whether a map states a word under two spellings: which of them holds, or whether both add up, nobody knows. */
function isTwice({ map, names }: Source, word: string): boolean {
  return !!names && map!.entries.filter((entry) => wordOf(names, entry.key) === word).length > 1;
}

/** The names of a stated map that are not understood, or that may mean the word (without one: any) among others. */
export function unreadNames(map: Fact<ReadonlyMap<string, Fact<unknown>>>, word?: string): readonly Fact<unknown>[] {
  const { names } = map.field as NamedField;
  if (!names || !map.value) return [];
  return [...map.value].flatMap(([name, fact]) => {
    const meant = meanings(names, name);
    return meant.length === 0 || (meant.length > 1 && (word === undefined || meant.includes(word))) ? [fact] : [];
  });
}
