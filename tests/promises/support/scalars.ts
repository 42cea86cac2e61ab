// Every value of a file that can be written otherwise, with what else could stand there.
import { meaningOf, type Path } from '../../../server/src/core/build/field-at';
import type { Doc } from '../../../server/src/core/parts/doc';
import type { Field } from '../../../server/src/core/parts/field';
import { readScalar } from '../../../server/src/core/parts/scalar';
import type { Span } from '../../../server/src/core/text';
import type { Node, ScalarNode } from '../../../server/src/core/yaml';

export interface ScalarAt {
  readonly doc: Doc;
  readonly path: Path;
  readonly node: ScalarNode;
  readonly field: Field | undefined;
}

/** All scalars of a document, in the order in which they stand. */
export function* scalarsOf(doc: Doc, node = doc.parsed.root, path: Path = []): Iterable<ScalarAt> {
  if (!node) return;
  if (node.type === 'scalar') yield { doc, path, node, field: meaningOf(doc, path)?.field };
  if (node.type === 'list') for (const [i, item] of node.items.entries()) yield* scalarsOf(doc, item, [...path, i]);
  if (node.type === 'map') for (const { key, value } of node.entries) yield* scalarsOf(doc, value, [...path, key]);
}

/** The keys of every map in which a word is a key: names that could stand in its stead. */
export function siblingNames(docs: Iterable<Doc>, word: string): string[] {
  const names = new Set<string>();
  const visit = (node: Node | undefined): void => {
    if (node?.type === 'list') node.items.forEach(visit);
    if (node?.type !== 'map') return;
    if (node.get(word)) for (const { key } of node.entries) names.add(key);
    for (const { value } of node.entries) visit(value);
  };
  for (const doc of docs) visit(doc.parsed.root);
  names.delete(word);
  return [...names];
}

/** Texts that mean something else in the same place. */
export function othersFor({ node: { text }, field }: ScalarAt, names: (word: string) => readonly string[]): string[] {
  if (!field || text === '') return [];
  const valid = (one: string): boolean =>
    one !== text && (field.type === 'text' || readScalar(field as never, one).slip === undefined);
  switch (field.type) {
    case 'quantity':
    case 'count':
    case 'form':
      return [scaled(text, 2), scaled(text, 0.5)].filter(valid);
    case 'choice': {
      const i = field.choices.indexOf(text);
      const { length } = field.choices;
      return [...new Set([field.choices[(i + 1) % length]!, field.choices[(i + 2) % length]!])].filter(valid);
    }
    case 'flag':
      return [text === 'true' ? 'false' : 'true'];
    case 'date':
      return [text.replace(/^\d{4}/, (year) => String(Number(year) - 3))].filter(valid);
    case 'text':
    case 'version':
      return [...names(text).slice(0, 2)];
    default:
      return [];
  }
}

/** The last number in a text times a factor, whole where it was whole. */
const scaled = (text: string, factor: number): string =>
  text.replace(/\d+(?:\.\d+)?(?=\D*$)/, (number) => {
    const value = Number(number) * factor;
    return String(number.includes('.') ? value : Math.max(0, Math.round(value)));
  });

export const holds = (outer: Span, inner: Span): boolean => outer.start <= inner.start && outer.end >= inner.end;

/** A text quoted as the one was that it stands for. */
export const quoteFor = (was: string, text: string): string =>
  /^["']/.test(was) ? was[0] + text + was[0] : /[:#{}[\],]/.test(text) ? `"${text}"` : text;
