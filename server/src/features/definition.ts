// Definition: from a name to where the thing that it stands for has it: a part file, a line of one or of the build, a
// finding, the page on a check.
import { thingsNamed } from '../core/build/named-things';
import { referenceAt } from '../core/build/references';
import { checks } from '../core/checks/all';
import type { Span } from '../core/text';
import type { Node } from '../core/yaml';
import { emptyRange, type Location, type Position, type View } from './shapes';
import { subjectAt } from './subject';

/**
 * Where the thing named at a place is described; where the place itself gives the name, that place. Undefined where
 * nothing is named, or nothing has that name. `pages`: the scheme under which the client opens pages on checks.
 */
export function definition(view: View, position: Position, pages?: string): Location | undefined {
  const { doc, build } = view;
  const offset = doc.lines.offsetAt(position);
  const reference = referenceAt(doc, offset);
  if (!reference) return ownPlace(view, offset);
  const { to, name, fact } = reference;
  if (to.includes('finding')) return placeOfFinding(view, name);
  if (to.includes('check')) return pageOf(name, pages);
  const places = thingsNamed(build ?? doc, to, name).flatMap(({ place }) => place ?? []);
  const place = places.find((one) => one.doc !== doc || one.span.start !== fact.node.span.start);
  return place && { uri: view.uriOf(place.doc), range: place.doc.lines.rangeOf(place.span) };
}

/** A name where it is given is its own definition: an editor then shows what uses it. */
function ownPlace(view: View, offset: number): Location | undefined {
  const subject = subjectAt(view, offset);
  return subject?.at && !subject.isOwnStep
    ? { uri: view.uriOf(view.doc), range: view.doc.lines.rangeOf(subject.at) }
    : undefined;
}

function pageOf(id: string, pages: string | undefined): Location | undefined {
  return pages && checks.some((check) => check.id === id)
    ? { uri: `${pages}:/${id}.md`, range: emptyRange }
    : undefined;
}

/** The place of a finding, as an acceptance names it; where nothing is found there any more, what stands there. */
function placeOfFinding({ doc, judgement, uriOf }: View, path: string): Location | undefined {
  const found = judgement.findings.find(({ subject, underline }) => subject === path && underline.doc === doc);
  const span = found?.underline.span ?? (doc.parsed.root && spanAt(doc.parsed.root, path));
  return span && { uri: uriOf(doc), range: doc.lines.rangeOf(span) };
}

/** Where the value of a path stands: `parts.drives.scratch`, `parts.drives[1].slot`. Keys may hold dots themselves. */
function spanAt(root: Node, path: string): Span | undefined {
  let [node, rest, span]: [Node, string, Span | undefined] = [root, path, undefined];
  while (rest !== '') {
    const step =
      node.type === 'map' ? stepInMap(node, rest) : node.type === 'list' ? stepInList(node, rest) : undefined;
    if (!step) return undefined;
    rest = rest.slice(step.length).replace(/^\./, '');
    ({ node, span } = step);
  }
  return span;
}

interface PathStep {
  readonly length: number;
  readonly node: Node;
  readonly span: Span;
}

const begins = (path: string, key: string): boolean =>
  path.startsWith(key) && /^(?:$|[.[])/.test(path.slice(key.length));

function stepInMap(map: Node & { type: 'map' }, path: string): PathStep | undefined {
  const entry = map.entries.find(({ key, merged }) => !merged && key !== '' && begins(path, key));
  return entry && { length: entry.key.length, node: entry.value, span: entry.keySpan };
}

function stepInList({ items }: Node & { type: 'list' }, path: string): PathStep | undefined {
  const [number, index] = /^\[(\d{1,6})\]/.exec(path) ?? [];
  if (number !== undefined) {
    const node = items[Number(index)];
    return node && { length: number.length, node, span: node.span };
  }
  for (const node of items) {
    const name = node.type === 'map' ? node.get('name')?.value : undefined;
    if (name?.type === 'scalar' && name.text !== '' && begins(path, name.text))
      return { length: name.text.length, node, span: name.span };
  }
  return undefined;
}
