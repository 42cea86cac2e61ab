// The table of fields that a file, a role or an entry of a build is read by.
import { asBuiltFile } from '../manifest/as-built';
import { buildFile } from '../manifest/build-file';
import { houseFile } from '../manifest/house-file';
import { knownFile } from '../manifest/known-file';
import { roles, type Role } from '../manifest/places';
import type { Doc } from '../parts/doc';
import { isDeep, type Field, type Table } from '../parts/field';
import { kinds } from '../parts/kinds';
import type { MapNode } from '../yaml';
import { kindOfPart } from './placed';

/** The fields a file of this kind may have at its top; undefined for a part of no known kind. */
export function tableOf(doc: Doc): Table | undefined {
  if (doc.kind === 'build') return buildFile;
  if (doc.kind === 'house') return houseFile;
  if (doc.kind === 'known') return knownFile;
  if (doc.kind === 'asbuilt') return asBuiltFile;
  const kind = kindOfPart(doc);
  return kind && kinds[kind];
}

const bothOf = (role: Role): Table => ({ ...kinds[role.kind], ...role.fields });
const tablesOfRoles: ReadonlyMap<Role, Table> = new Map(Object.values<Role>(roles).map((role) => [role, bothOf(role)]));

/** The fields of one entry under `parts:`: where it goes, and the part's own facts spelled out. */
export const tableOfRole = (role: Role): Table => tablesOfRoles.get(role) ?? bothOf(role);

/** The same for one entry as it is written: a key that is both is read as the kind of value that stands there. */
export function tableOfEntry(role: Role, map: MapNode): Table {
  const own = kinds[role.kind] as Table;
  const table = tableOfRole(role);
  const facts = map.entries.flatMap(({ key, value }) => {
    const fact = value.type !== 'scalar' && Object.hasOwn(role.fields, key) && Object.hasOwn(own, key) && own[key];
    return fact && isDeep(fact as Field) ? [[key, fact] as const] : [];
  });
  return facts.length === 0 ? table : { ...table, ...Object.fromEntries(facts) };
}
