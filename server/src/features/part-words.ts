// A used part in words: maker, model, the key facts its file states, and where that file is.
import type { Placed } from '../core/build/build';
import { kinds } from '../core/parts/kinds';
import type { Doc } from '../core/parts/doc';
import type { Fact } from '../core/parts/fact';
import type { Field, Table } from '../core/parts/field';
import type { Language } from '../core/words/language';
import { code, item, paragraph, strong, type Block, type Piece } from './prose';

const mostFacts = 10;
/** Told in the heading, or of no use at a glance. */
const told = new Set(['kind', 'maker', 'model', 'source', 'in-the-box', 'price-read']);

/** What a build uses at a place. */
export function partBlocks(placed: Placed, language: Language, uriOf?: (doc: Doc) => string): Block[] {
  const { used } = placed;
  if (!used) return [];
  if (!used.file)
    return [paragraph(...language.pieces`No part file of the name ${code(used.name)} is in the parts folders.`)];
  const part = placed.part as unknown as Record<string, Fact<unknown>>;
  const name: Piece[] = [part.maker, part.model].flatMap((fact) => (fact?.node ? [strong(fact.text), ' '] : []));
  return [
    paragraph(...(name.length > 0 ? name : [strong(used.name), ' ']), `(${placed.kind})`),
    ...keyFacts(placed, language),
    paragraph(
      ...language.pieces`From ${uriOf ? { text: used.file.name, href: uriOf(used.file) } : code(used.file.name)}`,
      ...sourceOf(placed, language),
      '.',
    ),
  ];
}

/** The first facts of the kind that are stated, in the order of its table, as they are written. */
function keyFacts(placed: Placed, language: Language): Block[] {
  const table = kinds[placed.kind] as Table;
  const facts = Object.keys(table).filter((key) => !told.has(key) && isPlain(table[key] as Field));
  const part = placed.part as unknown as Record<string, Fact<unknown>>;
  const stated = facts.flatMap((key) => (part[key]?.node ? [part[key]] : []));
  const ownWords = language.word(' (spelled out in the build)');
  return stated
    .slice(0, mostFacts)
    .map((fact) => item(0, `${fact.key}: `, code(fact.text), ...(fact.doc === placed.doc ? [ownWords] : [])));
}

const isPlain = (field: Field): boolean => field.type !== 'group' && field.type !== 'named';

function sourceOf(placed: Placed, language: Language): Piece[] {
  const { source } = placed.part as unknown as { source: Record<'title' | 'revision' | 'read', Fact<string>> };
  if (!source.title.node) return [];
  return [
    language.words`; read in ${source.title.text}`,
    ...(source.revision.node ? [language.words`, revision ${source.revision.text}`] : []),
    ...(source.read.node ? [language.words`, on ${source.read.text}`] : []),
  ];
}
