// Every fact of a build and its parts that can be taken away.
import { meaningOf, type Path } from '../../../server/src/core/build/field-at';
import type { Doc } from '../../../server/src/core/parts/doc';
import type { Node } from '../../../server/src/core/yaml';

/** What makes a build the build it is: its parts and what they are. */
const kept = new Set(['format', 'build', 'parts', 'kind', 'use', 'name', 'expect', 'accept', 'steps']);

/** The paths of all facts, groups and lists with what is in them; of `steps` and the like, nothing. */
export function* factPaths(doc: Doc, node = doc.parsed.root, path: Path = []): Iterable<Path> {
  if (!node || node.type === 'scalar') return;
  for (const [key, value] of entriesOf(node)) {
    const at = [...path, key];
    if (path.length === 0 && typeof key === 'string' && kept.has(key) && key !== 'parts') continue;
    const isFact = typeof key === 'string' && !kept.has(key) && meaningOf(doc, at)?.field !== undefined;
    if (isFact) yield at;
    yield* factPaths(doc, value, at);
  }
}

const entriesOf = (node: Node): readonly (readonly [string | number, Node])[] =>
  node.type === 'list'
    ? [...node.items.entries()]
    : node.type === 'map'
      ? node.entries.map(({ key, value }) => [key, value] as const)
      : [];
