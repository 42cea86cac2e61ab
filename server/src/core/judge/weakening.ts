// Fixes that mend by giving way: a promise lowered, a part’s stated fact written otherwise, a safety text replaced.
// They come after all others and are never the preferred one.
import { pathOf, type Path } from '../build/field-at';
import type { Check } from '../checks/check';
import type { TextFix } from '../checks/kit';
import { roles, type RoleName } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { Edit, Span } from '../text';
import type { Node } from '../yaml';

/** Keys of a promise that say where it is meant, and promise nothing themselves. */
const whereMeant: ReadonlySet<string | number | undefined> = new Set(['port', 'at']);

/** Keys of a step or a caution that someone at the bench reads. */
const read: ReadonlySet<string | number | undefined> = new Set([
  'do',
  'note',
  'word',
  'hazard',
  'consequence',
  'avoidance',
]);

/** What a fix gives up, in words. What puts a slip of the pen right gives up nothing: checks of the text find those. */
export function givenUp({ doc, edits }: Pick<TextFix, 'doc' | 'edits'>, { area }: Check): string | undefined {
  if (area === 'text' || area === 'guide') return undefined;
  for (const edit of edits) {
    const lost = edit.span.end > edit.span.start ? lostBy(doc, edit) : undefined;
    if (lost !== undefined) return lost;
  }
  return undefined;
}

function lostBy(doc: Doc, { span, text }: Edit): string | undefined {
  if (doc.kind !== 'build') return `rewrites what ${doc.name} states`;
  const path = pathAround(doc, span);
  const last = path.at(-1);
  if (path[0] === 'expect') return whereMeant.has(last) ? undefined : 'changes what is promised';
  if (path[0] === 'parts') return text.trim() !== '' && isFactOfPart(path) ? 'rewrites what a part is' : undefined;
  return path[0] === 'steps' && read.has(last) ? 'replaces words of a step' : undefined;
}

/** The path of the innermost value around a place. */
function pathAround(doc: Doc, span: Span): Path {
  let at: Node | undefined = doc.parsed.root;
  for (let next = at; next; next = innerAround(next, span)) at = next;
  return (at && pathOf(doc, at)) ?? [];
}

function innerAround(node: Node, { start, end }: Span): Node | undefined {
  const inner = node.type === 'map' ? node.entries.map(({ value }) => value) : node.type === 'list' ? node.items : [];
  return inner.find(({ span }) => span.start <= start && span.end >= end && span.end > span.start);
}

/** What a build says of a part is a plan where it is a key of the role, else a fact of the part. */
function isFactOfPart(path: Path): boolean {
  const role = roles[path[1] as RoleName] as (typeof roles)[RoleName] | undefined;
  const key = role && path[role.several ? 3 : 2];
  return typeof key === 'string' && !Object.hasOwn(role!.fields, key);
}
