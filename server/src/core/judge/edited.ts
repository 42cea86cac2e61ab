// Judges a build whose text was edited: only the checks that look at what changed are asked again.
import { Build } from '../build/build';
import { isSection, type SectionName } from '../build/reads';
import { roleNames, type RoleName } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { MapNode } from '../yaml';
import { answersApart, type Judgement } from './finding';
import { checksBeside, judgeBuild } from './judge';

type Changed = readonly (RoleName | SectionName)[];

/** The same as judging the changed text from anew, as far as findings go by id, subject and grade. */
export function judgeEdited(build: Build, before: Judgement, changed: Doc): Judgement {
  const names = changedIn(build.doc, changed);
  if (!names) return judgeBuild(new Build(changed, build.find, build.house, build.today));
  const known = answersApart(before, names).filter(({ check }) => check.on === 'build');
  return judgeBuild(build.withText(changed, names), { known, checks: checksBeside(known) });
}

/** The roles and sections in which two texts differ; undefined where they cannot be told apart by their keys. */
function changedIn(before: Doc, after: Doc): Changed | undefined {
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
