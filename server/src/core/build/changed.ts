// What of a build is another than in an earlier state of it: told by roles and sections, as what was read is noted.
import { roleNames, type RoleName } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { MapNode } from '../yaml';
import type { Build } from './build';
import { isSection, rolesOf, type RoleSet, type SectionName } from './reads';

export type Changed = readonly (RoleName | SectionName)[];

/** The roles and sections in which two texts differ; undefined where they cannot be told apart by their keys. */
export function changedIn(before: Doc, after: Doc): Changed | undefined {
  const [old, anew] = [wholeRoot(before), wholeRoot(after)];
  if (!old || !anew) return undefined;
  const sections = differing(before, old, after, anew);
  const others = sections.filter((name) => name !== 'parts');
  if (!others.every(isSection)) return undefined;
  if (others.length === sections.length) return others;
  const [oldParts, newParts] = [old.get('parts')?.value, anew.get('parts')?.value];
  if (oldParts?.type !== 'map' || newParts?.type !== 'map') return undefined;
  const roles = differing(before, oldParts, after, newParts);
  return roles.every(isRole) ? [...others, ...roles] : undefined;
}

/** The same of two builds, the files of their parts too; undefined where anything may be another. */
export function changedOf(before: Build, after: Build): RoleSet | undefined {
  const isSame = before.house === after.house && before.today === after.today && before.machine === after.machine;
  if (!isSame) return undefined;
  const names = before.doc === after.doc ? [] : changedIn(before.doc, after.doc);
  return names && rolesOf([...names, ...roleNames.filter((role) => !sameFiles(role, before, after))]);
}

function sameFiles(role: RoleName, before: Build, after: Build): boolean {
  const [old, anew] = [before.of(role), after.of(role)];
  return old.length === anew.length && old.every(({ used }, i) => used?.file === anew[i]!.used?.file);
}

const isRole = (name: string): name is RoleName => (roleNames as readonly string[]).includes(name);

/** A text whose keys each stand for themselves: read without problems, and without what refers elsewhere. */
function wholeRoot(doc: Doc): MapNode | undefined {
  const { root, problems } = doc.parsed;
  return root?.type === 'map' && problems.length === 0 && !/[&*]|<</.test(doc.text) ? root : undefined;
}

function differing(before: Doc, old: MapNode, after: Doc, anew: MapNode): string[] {
  const keys = new Set([...old.entries, ...anew.entries].map(({ key }) => key));
  return [...keys].filter((key) => textOf(before, old, key) !== textOf(after, anew, key));
}

function textOf(doc: Doc, map: MapNode, key: string): string | undefined {
  const entry = map.get(key);
  return entry && doc.text.slice(entry.keySpan.start, Math.max(entry.keySpan.end, entry.value.span.end));
}
