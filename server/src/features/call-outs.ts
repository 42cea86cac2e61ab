// Call-outs: a part file and the builds that use it, a build and the parts it uses, as an editor’s hierarchy of calls.
import { kindOfPart } from '../core/build/placed';
import { visible } from '../core/text';
import { symbolKinds, type Range } from './shapes';
import { subjectAt, usesIn, wholeFile, type Named } from './subject';

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
  const isPart = doc.kind === 'part';
  const title = isPart ? (doc.topText('model') ?? doc.topText('kind')) : doc.topText('build');
  const detail = isPart ? kindOfPart(doc) : doc.name;
  return {
    name: visible((isPart ? partName : title?.text) ?? doc.name),
    kind: isPart ? symbolKinds.object : symbolKinds.file,
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
