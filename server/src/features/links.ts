// Links: from the name of a part or of another file to that file, and addresses of sources that are plain text. Nothing
// is fetched.
import { referencesIn } from '../core/build/references';
import type { Doc } from '../core/parts/doc';
import type { Span } from '../core/text';
import { nodeAt, type Node } from '../core/yaml';

export interface PartLink {
  readonly name: string;
  readonly span: Span;
}

/** The names of part files in a file, in order. */
export const partLinks = (doc: Doc): PartLink[] =>
  referencesIn(doc)
    .filter(({ to }) => to.includes('part file'))
    .map(({ name, fact }) => ({ name, span: fact.node.span }));

export interface FileLink {
  /** Below the workspace’s root. */
  readonly file: string;
  readonly span: Span;
}

/** The files that another names by their paths: settings their records, a record of what is known, or of a machine. */
export function fileLinks(doc: Doc): FileLink[] {
  const { kind, name } = doc;
  if (kind === 'known') {
    const files = doc.topValue('files');
    return files?.type === 'map' ? files.entries.map(({ key, keySpan }) => ({ file: key, span: keySpan })) : [];
  }
  const named = kind === 'house' ? doc.topValue('known') : kind === 'asbuilt' ? doc.topValue('build') : undefined;
  const above = kind === 'asbuilt' ? name.slice(0, name.lastIndexOf('/') + 1) : '';
  return (named?.type === 'list' ? named.items : named ? [named] : []).flatMap((node) =>
    node.type === 'scalar' && node.text !== '' ? [{ file: `${above}${node.text}`, span: node.span }] : [],
  );
}

/** What a known finding is about, where one stands at an offset: its file, and the path of its subject there. */
export function knownPlaceAt(doc: Doc, offset: number): { readonly file: string; readonly path: string } | undefined {
  if (doc.kind !== 'known') return undefined;
  const [files, file, findings, index] = nodeAt(doc.parsed, offset)?.path ?? [];
  if (files !== 'files' || typeof file !== 'string' || findings !== 'findings' || index === undefined) return undefined;
  const at = [files, file, findings, index, 'at'].reduce<Node | undefined>(
    (node, step) =>
      node?.type === 'map'
        ? node.get(String(step))?.value
        : node?.type === 'list'
          ? node.items[Number(step)]
          : undefined,
    doc.parsed.root,
  );
  // What is behind a colon is an aspect of it.
  return at?.type === 'scalar' ? { file, path: at.text.replace(/:[a-z-]+$/, '') } : undefined;
}

export interface AddressLink {
  readonly address: string;
  readonly span: Span;
}

/** A whole value that is an address on the web, without a name or a password in it. */
const address = /^https:\/\/[a-z0-9.-]+(?::\d{1,5})?(?:[/?#][\w\-.~:/?#[\]@!$&'()*+,;=%]*)?$/i;
const longest = 2_000;

export function addressLinks(doc: Doc): AddressLink[] {
  const found: AddressLink[] = [];
  const waiting: Node[] = doc.parsed.root ? [doc.parsed.root] : [];
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    if (node.type === 'map') waiting.push(...node.entries.flatMap(({ value, merged }) => (merged ? [] : [value])));
    else if (node.type === 'list') waiting.push(...node.items);
    else if (node.text.length <= longest && address.test(node.text))
      found.push({ address: node.text, span: node.span });
  }
  return found.sort((a, b) => a.span.start - b.span.start);
}
