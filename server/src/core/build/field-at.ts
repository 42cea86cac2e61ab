// Which field of the format a path of keys leads to, and which table of keys stands there.
import { roles, type Role, type RoleName } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { Field, Table } from '../parts/field';
import type { Node } from '../yaml';
import type { Build } from './build';
import { partsAs, type Placed } from './placed';
import { tableOf, tableOfRole } from './tables';

/** What stands under `parts:`. */
export const partsMeaning = 'The parts, each under its role.';

export type Path = readonly (string | number)[];

/** What a path means: a field, or a place whose keys are a table's, or names of someone's own. */
export interface Meaning {
  readonly field?: Field;
  /** The keys that may stand in a map here. */
  readonly table?: Table;
  /** One sentence on the place, where it is no field. */
  readonly what?: string;
  /** In `parts:`, the role and the part's number in it. */
  readonly role?: RoleName;
  readonly index?: number;
  /** The path below the part, for facts and place keys. */
  readonly below?: Path;
}

/** The path of a value that stands in a document; undefined where it is none of the document’s own. */
export function pathOf(doc: Doc, value: Node): Path | undefined {
  const path: (string | number)[] = [];
  for (let node = doc.parsed.root; node !== value; ) {
    const step = node && stepTowards(node, value);
    if (!step) return undefined;
    path.push(step.key);
    node = step.node;
  }
  return path;
}

/** The entry or item of a node that holds a value. What a merge brought in is written elsewhere. */
function stepTowards(node: Node, { span }: Node): { readonly key: string | number; readonly node: Node } | undefined {
  const holds = (one: Node): boolean => one.span.start <= span.start && one.span.end >= span.end;
  if (node.type === 'list') {
    const index = node.items.findIndex(holds);
    return index < 0 ? undefined : { key: index, node: node.items[index]! };
  }
  const entry = node.type === 'map' ? node.entries.find(({ value, merged }) => !merged && holds(value)) : undefined;
  return entry && { key: entry.key, node: entry.value };
}

/** Follows a path through the tables; undefined where it leads to nothing known. */
export function meaningOf(doc: Doc, path: Path): Meaning | undefined {
  if (doc.kind === 'build' && path[0] === 'parts') return meaningInParts(path);
  const table = tableOf(doc);
  if (!table) return path.length === 0 ? { table: {} } : undefined;
  return follow({ table: doc.kind === 'build' ? withParts(table) : table }, path);
}

/** The parts stand behind the place, before what they must achieve. */
function withParts(table: Table): Table {
  const { format, build, purpose, place, ...others } = table;
  const parts = { type: 'group', fields: {}, what: partsMeaning, example: '' } as const;
  return { format, build, purpose, place, parts, ...others } as Table;
}

function meaningInParts(path: Path): Meaning | undefined {
  if (path.length === 1) return { what: partsMeaning, table: roleTable() };
  const name = path[1];
  if (typeof name !== 'string' || !Object.hasOwn(roles, name)) return undefined;
  const role = name as RoleName;
  const { several, what } = roles[role] as Role;
  const rest = path.slice(2);
  if (several && rest.length === 0) return { what, role };
  const index = several ? rest.shift() : 0;
  if (typeof index !== 'number') return undefined;
  const start: Meaning = { table: tableOfRole(roles[role] as Role), what };
  const found = rest.length === 0 ? start : follow(start, rest);
  return found && { ...found, role, index, below: rest };
}

/** The roles as keys, so that they can be offered and explained like any other. */
function roleTable(): Table {
  return Object.fromEntries(
    Object.entries(roles).map(([name, { what }]) => [name, { type: 'group' as const, fields: {}, what, example: '' }]),
  );
}

function follow(start: Meaning, path: Path): Meaning | undefined {
  let at: Meaning | undefined = start;
  for (const step of path) {
    at = at && stepInto(at, step);
    if (!at) return undefined;
  }
  return at;
}

function stepInto({ field, table }: Meaning, step: string | number): Meaning | undefined {
  if (table) {
    return typeof step === 'string' && Object.hasOwn(table, step) ? into(table[step] as Field) : undefined;
  }
  if (field?.type === 'list' && typeof step === 'number') return into(field.of as Field);
  return field?.type === 'named' && typeof step === 'string' ? into(field.of as Field) : undefined;
}

const into = (field: Field): Meaning => (field.type === 'group' ? { field, table: field.fields } : { field });

/** The part at a role and number; undefined where the build has none there. */
export function placedAt(build: Build, role: RoleName, index: number): Placed | undefined {
  return partsAs(role, build.parts).find((placed) => placed.index === index);
}
