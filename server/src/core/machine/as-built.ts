// A machine as facts: read from its record, or put together from what outputs say, each fact at its own line.
import { asBuiltFile, type AsBuilt } from '../manifest/as-built';
import type { Doc } from '../parts/doc';
import type { Fact, Group } from '../parts/fact';
import { makeFact, readGroup } from '../parts/facts';
import type { Field, Table } from '../parts/field';
import { readScalar } from '../parts/scalar';
import type { Span } from '../text';
import type { ScalarNode } from '../yaml';

/** What an output says, in the words of the record’s field, with the line and the tool’s own name for it. */
export interface Said {
  readonly text: string;
  readonly doc: Doc;
  readonly span: Span;
  /** The tool’s words for the value: `type 17, Configured Memory Speed`. */
  readonly what: string;
}

/** What outputs say, laid out as the record is. */
export type Told = { readonly [key: string]: Said | Told | readonly (Said | Told)[] | undefined };

/** A record beside a build. */
export const recordOf = (doc: Doc): AsBuilt =>
  doc.kept(recordOf, () => {
    const { root } = doc.parsed;
    const map = root?.type === 'map' ? root : undefined;
    return readGroup(asBuiltFile, '', [{ doc, path: '', span: { start: 0, end: 0 }, ...(map ? { map } : {}) }]);
  });

/** The facts of what was told; `doc` stands for the outputs where none says anything. */
export const machineOf = (told: Told, doc: Doc): AsBuilt =>
  groupOf(asBuiltFile, told, { doc, path: '', name: '' }) as unknown as AsBuilt;

interface At {
  readonly doc: Doc;
  readonly path: string;
  readonly name: string;
}

function groupOf(table: Table, told: Told, { doc, path, name }: At): Group<Table> {
  const $ = { doc, path, name, span: { start: 0, end: 0 }, stated: true };
  const facts = Object.entries(table).map(([key, field]) => {
    const at = { doc, path: path === '' ? key : `${path}.${key}`, name: key };
    return [key, factsOf(field as Field, Object.hasOwn(told, key) ? told[key] : undefined, at)] as const;
  });
  return { ...Object.fromEntries(facts), $ } as unknown as Group<Table>;
}

function factsOf(field: Field, told: Told[string], at: At): unknown {
  if (field.type === 'group') return groupOf(field.fields, (told ?? {}) as Told, at);
  if (field.type === 'list') return listOf(field.of as Field, told as readonly (Said | Told)[] | undefined, field, at);
  return factOf(field, told as Said | undefined, at);
}

function listOf(of: Field, told: readonly (Said | Told)[] | undefined, field: Field, at: At): Fact<unknown> {
  const items = told?.map((one, i) => {
    const place = { ...at, path: `${at.path}[${i}]` };
    return of.type === 'group' ? groupOf(of.fields, one as Told, place) : factOf(of, one as Said, place);
  });
  return makeFact(items, '', at.name, at.path, field, at.doc);
}

function factOf(field: Field, said: Said | undefined, at: At): Fact<unknown> {
  if (!said) return makeFact(undefined, '', at.name, at.path, field, at.doc);
  const { text, doc, span, what } = said;
  const node: ScalarNode = { type: 'scalar', text, style: 'plain', span, fixable: false };
  const { value } = readScalar(field as Parameters<typeof readScalar>[0], text);
  return makeFact(value, text, at.name, what, field, doc, undefined, node);
}
