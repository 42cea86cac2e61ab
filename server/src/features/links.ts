// Links: from the name of a part to its file, and addresses of sources that are plain text. Nothing is fetched.
import { referencesIn } from '../core/build/references';
import type { Doc } from '../core/parts/doc';
import type { Span } from '../core/text';
import type { Node } from '../core/yaml';

export interface PartLink {
  readonly name: string;
  readonly span: Span;
}

/** The names of part files in a file, in order. */
export const partLinks = (doc: Doc): PartLink[] =>
  referencesIn(doc)
    .filter(({ to }) => to.includes('part file'))
    .map(({ name, fact }) => ({ name, span: fact.node.span }));

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
