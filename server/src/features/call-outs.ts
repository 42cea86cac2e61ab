// Call-outs: a part file and the builds that use it, a build and the parts it uses, as an editor’s hierarchy of calls.
import { kindOfPart } from '../core/build/placed';
import { visible } from '../core/text';
import type { Range } from './shapes';
import { subjectAt, usesIn, wholeFile, type Named } from './subject';

/** The protocol’s numbers. */
const kinds = { file: 1, object: 19 } as const;

export interface CallItem {
  name: string;
  kind: number;
  detail?: string;
  uri: string;
  range: Range;
  selectionRange: Range;
}

/** A file as an item: a part by its name, a build by its title. */
export function itemOf(file: Named): CallItem {
  const { doc, partName } = file;
  const { root } = doc.parsed;
  const keys = doc.kind === 'part' ? ['model', 'kind'] : ['build'];
  const title = keys.flatMap((key) => (root?.type === 'map' ? (root.get(key)?.value ?? []) : []))[0];
  const text = title?.type === 'scalar' && title.text !== '' ? title.text : undefined;
  const detail = doc.kind === 'part' ? kindOfPart(doc) : doc.name;
  return {
    name: visible(doc.kind === 'part' ? (partName ?? doc.name) : (text ?? doc.name)),
    kind: doc.kind === 'part' ? kinds.object : kinds.file,
    ...(detail === undefined ? {} : { detail: visible(detail) }),
    uri: file.uriOf(doc),
    range: doc.lines.rangeOf({ start: 0, end: doc.text.length }),
    selectionRange: doc.lines.rangeOf(title?.span ?? { start: 0, end: 0 }),
  };
}

/** The part that is named at an offset; undefined where the file at hand itself is meant. */
export function partNamedAt(file: Named, offset: number): string | undefined {
  const subject = subjectAt(file, offset);
  return subject?.kinds.includes('part file') ? subject.name : undefined;
}

/** Where a file uses a part. */
export const callsOf = (file: Named, part: string): Range[] =>
  usesIn(file, wholeFile(part)).used.map(({ fact }) => file.doc.lines.rangeOf(fact.node.span));
