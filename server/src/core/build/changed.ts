// What of a build is another than in an earlier state of it: told by areas, as what was read is noted.
import { roleNames, type RoleName } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { MapNode, Node } from '../yaml';
import type { Build } from './build';
import { partsAs } from './placed';
import { areasIn, isArea, isSection, rolesOf, type AreaName, type RoleSet } from './reads';

export type Changed = readonly AreaName[];

/** The areas in which two texts differ; undefined where they cannot be told apart by their keys. */
export function changedIn(before: Doc, after: Doc): Changed | undefined {
  const [old, anew] = [wholeRoot(before), wholeRoot(after)];
  if (!old || !anew) return undefined;
  const names = differing(before, old, after, anew);
  const sections = names.filter((name) => name !== 'parts');
  if (!sections.every(isSection)) return undefined;
  const others = sections.flatMap((name) =>
    changedBelow(name, before, old.get(name)?.value, after, anew.get(name)?.value),
  );
  if (sections.length === names.length) return others;
  const [oldParts, newParts] = [old.get('parts')?.value, anew.get('parts')?.value];
  if (oldParts?.type !== 'map' || newParts?.type !== 'map') return undefined;
  const roles = differing(before, oldParts, after, newParts);
  return roles.every(isRole) ? [...others, ...roles] : undefined;
}

/** What of a section or field is another, down to the fields that are told apart. */
function changedBelow(area: AreaName, before: Doc, old: Node | undefined, after: Doc, anew: Node | undefined): Changed {
  if (old?.type !== 'map' || anew?.type !== 'map') return areasIn(area);
  return differing(before, old, after, anew).flatMap((key) => {
    const path = `${area}.${key}`;
    return isArea(path) ? changedBelow(path, before, old.get(key)?.value, after, anew.get(key)?.value) : area;
  });
}

/** The same of two builds, the files of their parts too; undefined where anything may be another. */
export function changedOf(before: Build, after: Build): RoleSet | undefined {
  const isSame = before.house === after.house && before.today === after.today && before.machine === after.machine;
  if (!isSame) return undefined;
  const names = before.doc === after.doc ? [] : changedIn(before.doc, after.doc);
  return names && rolesOf(names) | rolesOf(roleNames.filter((role) => !sameFiles(role, before, after)));
}

function sameFiles(role: RoleName, before: Build, after: Build): boolean {
  const [old, anew] = [partsAs(role, before.parts), partsAs(role, after.parts)];
  return old.length === anew.length && old.every(({ used }, i) => used?.file === anew[i]!.used?.file);
}

const isRole = (name: string): name is RoleName => (roleNames as readonly string[]).includes(name);

/** A text whose keys each stand for themselves: read without problems, and without what refers elsewhere. */
function wholeRoot(doc: Doc): MapNode | undefined {
  const { root, problems } = doc.parsed;
  return root?.type === 'map' && problems.length === 0 && !/[&*]|<</.test(doc.text) ? root : undefined;
}

function differing(before: Doc, old: MapNode, after: Doc, anew: MapNode): string[] {
  const names = old.entries
    .filter(({ key }) => textOf(before, old, key) !== textOf(after, anew, key))
    .map(({ key }) => key);
  for (const { key } of anew.entries) if (!old.get(key)) names.push(key);
  return names;
}

function textOf(doc: Doc, map: MapNode, key: string): string | undefined {
  const entry = map.get(key);
  return entry && doc.text.slice(entry.keySpan.start, Math.max(entry.keySpan.end, entry.value.span.end));
}
