// Files as plain trees: facts are taken away from them and put into them by path, and they are written out again.
import type { Path } from '../../../server/src/core/build/field-at';
import type { Node } from '../../../server/src/core/yaml';

/** A text, nothing, a list or a map of names. */
export type Tree = string | null | readonly Tree[] | ReadonlyMap<string, Tree>;

const isMap = (tree: Tree | undefined): tree is ReadonlyMap<string, Tree> => tree instanceof Map;
const isList = (tree: Tree | undefined): tree is readonly Tree[] => Array.isArray(tree);

export function treeOf(node: Node | undefined): Tree {
  if (!node) return null;
  if (node.type === 'list') return node.items.map(treeOf);
  if (node.type === 'map') return new Map(node.entries.map(({ key, value }) => [key, treeOf(value)]));
  return node.type === 'scalar' && node.style !== 'empty' ? node.text : null;
}

/** A tree as YAML: one line an entry of the outermost map, the rest in flow style with every text quoted. */
export const written = (tree: Tree): string =>
  isMap(tree) ? [...tree].map(([key, value]) => `${JSON.stringify(key)}: ${inFlow(value)}\n`).join('') : inFlow(tree);

function inFlow(tree: Tree): string {
  if (tree === null) return '';
  if (isMap(tree))
    return `{ ${[...tree].map(([key, value]) => `${JSON.stringify(key)}: ${inFlow(value)}`).join(', ')} }`;
  return isList(tree) ? `[${tree.map(inFlow).join(', ')}]` : JSON.stringify(tree);
}

export function at(tree: Tree, [step, ...rest]: Path): Tree | undefined {
  if (step === undefined) return tree;
  const below = isMap(tree) ? tree.get(String(step)) : isList(tree) ? tree[Number(step)] : undefined;
  return below === undefined ? undefined : at(below, rest);
}

/** The tree with a value at a path, whose maps are made where they are absent; undefined takes away what is there. */
export function put(tree: Tree, [step, ...rest]: Path, value: Tree | undefined): Tree {
  if (step === undefined) return value ?? null;
  if (typeof step === 'number') {
    const items = isList(tree) ? [...tree] : [tree];
    if (value === undefined && rest.length === 0) items.splice(step, 1);
    else items[step] = put(items[step] ?? null, rest, value);
    return items;
  }
  const map = new Map(isMap(tree) ? tree : []);
  if (value === undefined && rest.length === 0) map.delete(step);
  else map.set(step, put(map.get(step) ?? null, rest, value));
  return map;
}

/** A path as it is printed, `slots.M2_1.cover` or `processors[0].since`; names with dots in them are told by the tree. */
export function pathIn(tree: Tree, text: string): Path {
  if (text === '') return [];
  const index = /^\[(\d+)\]\.?/.exec(text);
  if (index) {
    const i = Number(index[1]);
    return [i, ...pathIn((isList(tree) ? tree[i] : undefined) ?? null, text.slice(index[0].length))];
  }
  const known = isMap(tree)
    ? [...tree.keys()].filter((key) => text === key || (/^[.[]/.test(text.slice(key.length)) && text.startsWith(key)))
    : [];
  const key = known.sort((a, b) => b.length - a.length)[0] ?? /^[^.[]+/.exec(text)![0];
  const below = (isMap(tree) ? tree.get(key) : undefined) ?? null;
  return [key, ...pathIn(below, text.slice(key.length).replace(/^\./, ''))];
}
