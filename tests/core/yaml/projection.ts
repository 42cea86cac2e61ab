// Nodes as plain values, for comparing documents; Maps, so that any key is a plain name.
import { children } from '../../../server/src/core/yaml/nodes';
import type { Node } from '../../../server/src/core/yaml';

/** Text for a scalar, an array for a list, a Map for a map (of repeated keys the first). */
export function plain(node: Node | undefined): unknown {
  if (!node || node.type === 'scalar') return node?.text;
  if (node.type === 'list') return node.items.map(plain);
  return new Map(node.entries.filter((entry) => !entry.repeated).map((entry) => [entry.key, plain(entry.value)]));
}

/** Visits every node, parents first. */
export function walk(node: Node | undefined, visit: (node: Node) => void): void {
  const open = node ? [node] : [];
  for (let next = open.pop(); next; next = open.pop()) {
    visit(next);
    open.push(...children(next));
  }
}
