// Where the value of a path stands in a file, and which paths begin on a line: `parts.drives.scratch`, `steps.3`,
// `parts.drives[1].slot`. Keys may hold dots themselves.
import type { Span } from '../text';
import type { Entry, Node } from '../yaml';

export interface PathPlace {
  /** The key or item that the path leads to, or of as much of it as there is. */
  readonly span: Span;
  readonly node: Node;
  /** What is left of the path where it leads to nothing. */
  readonly rest: string;
}

/** The place of a path below a node; undefined where not even its first step leads anywhere. */
export function placeAt(root: Node, path: string): PathPlace | undefined {
  let [node, rest, span]: [Node, string, Span | undefined] = [root, path, undefined];
  while (rest !== '') {
    const step =
      node.type === 'map' ? stepInMap(node, rest) : node.type === 'list' ? stepInList(node, rest) : undefined;
    if (!step) break;
    rest = rest.slice(step.length).replace(/^\./, '');
    ({ node, span } = step);
  }
  return span && { span, node, rest };
}

interface PathStep {
  readonly length: number;
  readonly node: Node;
  readonly span: Span;
}

const begins = (path: string, key: string): boolean =>
  path.startsWith(key) && /^(?:$|[.[])/.test(path.slice(key.length));

/** Of keys that could each be meant, the longest: `main` and `main.left` may both be there. */
function stepInMap(map: Node & { type: 'map' }, path: string): PathStep | undefined {
  let found: Entry | undefined;
  for (const entry of map.entries)
    if (!entry.merged && entry.key !== '' && begins(path, entry.key) && entry.key.length > (found?.key.length ?? 0))
      found = entry;
  return found ? { length: found.key.length, node: found.value, span: found.keySpan } : asOnlyItem(map, path);
}

/** Where a list may stand, its only item may stand by itself. */
function asOnlyItem(map: Node & { type: 'map' }, path: string): PathStep | undefined {
  return path.startsWith('[0]') ? { length: 3, node: map, span: map.span } : byName(map, path);
}

function stepInList({ items }: Node & { type: 'list' }, path: string): PathStep | undefined {
  const [number, inBrackets, bare] = /^(?:\[(\d{1,6})\]|(\d{1,6})(?=$|[.[]))/.exec(path) ?? [];
  if (number !== undefined) {
    const node = items[Number(inBrackets ?? bare)];
    if (node) return { length: number.length, node, span: node.span };
  }
  for (const node of items) {
    const step = byName(node, path);
    if (step) return step;
  }
  return undefined;
}

/** An item led to by its own name stands where it gives that name. */
function byName(node: Node, path: string): PathStep | undefined {
  const name = nameOf(node);
  return name && begins(path, name.text) ? { length: name.text.length, node, span: name.span } : undefined;
}

/** The name that an item of a list gives itself. */
function nameOf(node: Node): (Node & { type: 'scalar' }) | undefined {
  const name = node.type === 'map' ? node.get('name')?.value : undefined;
  return name?.type === 'scalar' && name.text !== '' ? name : undefined;
}

export interface PathsOfLine {
  /** Paths of what begins on the line; an item of a list by its number and, where it has one, by its name. */
  readonly on: readonly string[];
  /** Paths of what the line lies in, the innermost first. */
  readonly around: readonly string[];
}

/** The paths of a line, given as the piece of the text from its start to its end. */
export function pathsOfLine(root: Node, line: Span): PathsOfLine {
  const on: string[] = [];
  const around: string[] = [];
  const waiting: { node: Node; paths: readonly string[] }[] = [{ node: root, paths: [''] }];
  for (let at = waiting.pop(); at; at = waiting.pop())
    for (const { node, span, paths } of below(at.node, at.paths)) {
      if (span.start > line.end || Math.max(span.end, node.span.end) < line.start) continue;
      if (span.start >= line.start) on.push(...paths);
      else around.unshift(...paths);
      waiting.push({ node, paths });
    }
  return { on, around };
}

interface Below {
  readonly node: Node;
  readonly span: Span;
  readonly paths: readonly string[];
}

function below(node: Node, paths: readonly string[]): readonly Below[] {
  if (node.type === 'map')
    return node.entries
      .filter(({ merged }) => !merged)
      .map(({ key, keySpan: span, value }) => ({
        node: value,
        span,
        paths: paths.map((path) => (path === '' ? key : `${path}.${key}`)),
      }));
  if (node.type === 'list')
    return node.items.map((item, i) => ({ node: item, span: item.span, paths: itemPaths(item, i, paths) }));
  return [];
}

function itemPaths(item: Node, index: number, paths: readonly string[]): readonly string[] {
  const name = nameOf(item);
  return paths.flatMap((path) => [
    path === 'steps' ? `${path}.${index}` : `${path}[${index}]`,
    ...(name === undefined ? [] : [`${path}.${name.text}`]),
  ]);
}
