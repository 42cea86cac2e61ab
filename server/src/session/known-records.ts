// Which records of known findings speak of a file: those under its name, else those of a file that was moved.
import { knownByFile, type KnownFinding } from '../core/build/known-findings';
import { kindOfFile, type Doc } from '../core/parts/doc';
import { lastStep, nameBelow, staysBelow } from '../host/host';
import type { FileRef } from './texts';

/** How whoever loads a file reads others for it. */
export interface RecordReader {
  readonly place: FileRef;
  /** A file of known findings that counts though no settings name it, by its path. */
  readonly alsoKnown: string | undefined;
  readonly textOf: (name: string) => Doc | undefined;
  /** Whether something is still to be read: what is not there may yet come. */
  readonly isPending: () => boolean;
  readonly isTroubled: (name: string) => boolean;
  /** Of the settings that name the files. */
  readonly tell: (trouble: string) => void;
}

/** So many files of known findings are read, and so many files looked at for having been moved. */
const mostKnown = 20;
const mostMoved = 8;

/** The records of a file; nothing lets a finding of such a record file itself stand. */
export function recordsOf(
  doc: Doc,
  title: string | undefined,
  named: readonly string[],
  reader: RecordReader,
): readonly KnownFinding[] {
  if (doc.kind === 'known') return [];
  const all = docsOf(named, reader).map(knownByFile);
  const own = all.flatMap((files) => files.get(doc.name) ?? []);
  return own.length > 0 ? own : all.flatMap((files) => movedFrom(files, doc, title, reader));
}

/** A file that is not there any more, and is called alike or holds a build of the same name. */
function movedFrom(
  files: ReadonlyMap<string, readonly KnownFinding[]>,
  doc: Doc,
  title: string | undefined,
  { textOf, isTroubled }: RecordReader,
): readonly KnownFinding[] {
  const own = lastStep(doc.name);
  const likely = [...files].filter(
    ([name, [first]]) =>
      kindOfFile(name) === doc.kind &&
      staysBelow(name) &&
      (lastStep(name) === own || (title !== undefined && first?.title === title)),
  );
  if (likely.length > mostMoved) return [];
  return likely.find(([name]) => !textOf(name) && !isTroubled(name))?.[1] ?? [];
}

function docsOf(named: readonly string[], reader: RecordReader): readonly Doc[] {
  const { place, alsoKnown, textOf } = reader;
  if (named.length > mostKnown)
    reader.tell(`names more than ${mostKnown} files of known findings; those past them are not read.`);
  const own = named.slice(0, mostKnown).filter((name) => isKnownFile(name, reader));
  const docs = own.flatMap((name) => docAt(name, reader) ?? []);
  const also = alsoKnown === undefined ? undefined : nameBelow(place.host.pathIn(place.root, ''), alsoKnown);
  const more = also === undefined || own.includes(also) || !staysBelow(also) ? undefined : textOf(also);
  return more ? [...docs, more] : docs;
}

function docAt(name: string, { place, alsoKnown, textOf, isPending, isTroubled, tell }: RecordReader): Doc | undefined {
  const doc = textOf(name);
  const isBeingMade = place.host.pathIn(place.root, name) === alsoKnown;
  if (!doc && !isBeingMade && !isPending() && !isTroubled(name))
    tell(`names a file of known findings that is not there, ${JSON.stringify(name)}.`);
  return doc;
}

function isKnownFile(name: string, { tell }: RecordReader): boolean {
  if (staysBelow(name) && kindOfFile(name) === 'known') return true;
  tell(
    `names ${JSON.stringify(name)} as a file of known findings, which is not read; expected a path below it that ` +
      'ends in .known.yaml.',
  );
  return false;
}
