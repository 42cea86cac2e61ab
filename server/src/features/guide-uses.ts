// Names in guides: in their fenced blocks, each as in a file of its own, and in the marks of drives and steps.
import type { Guide } from '../core/guide/guide';
import type { Doc } from '../core/parts/doc';
import type { Edit, Position } from '../core/text';
import { referencesTo } from './references';
import { renameEdits } from './rename';
import type { Location } from './shapes';
import type { Named, Subject } from './subject';

/** What of a file is read as a file: itself, or the fenced blocks of a guide. */
export const filesIn = <F extends Named>(file: F): readonly F[] =>
  file.guide ? file.guide.blocks.map((block) => ({ ...file, guide: undefined, ...block })) : [file];

/** The fenced block of a guide that a position lies in; any other file itself. */
export function fileAt<F extends Named>(file: F, position: Position): F {
  const at = file.guide?.blocks.findIndex(({ doc }) => doc.holds(position)) ?? -1;
  return at < 0 ? file : filesIn(file)[at]!;
}

/** Every place of a file, or of the blocks of a guide, that names a subject. */
export const referencesWithin = (file: Named, subject: Subject, declares: boolean): Location[] =>
  filesIn(file).flatMap((one) => referencesTo(one, subject, declares));

export interface EditsOfDoc {
  readonly doc: Doc;
  readonly edits: readonly Edit[];
}

/** The edits that rename a subject in a file, or in all of a guide; undefined where they would not be safe. */
export function renameWithin(file: Named, subject: Subject, name: string): readonly EditsOfDoc[] | undefined {
  const found: EditsOfDoc[] = [];
  for (const one of filesIn(file)) {
    const edits = renameEdits(one, subject, name);
    if (!edits) return undefined;
    found.push({ doc: one.doc, edits });
  }
  const marked = file.guide ? markEdits(file.guide, subject, name) : [];
  if (!marked || !file.guide) return marked && found;
  return [...found, { doc: file.doc, edits: marked }];
}

/** The edits of a guide’s marks where a drive or a part of its build is renamed; undefined where no mark can say it. */
export function markEdits({ doc, ties, build }: Guide, subject: Subject, name: string): readonly Edit[] | undefined {
  const isOwn = subject.places.some(({ doc: at }) => at.name === build?.doc.name);
  const isDrive = isOwn && subject.kinds.includes('drive');
  if (!isDrive && !subject.kinds.includes('part file')) return [];
  const old = subject.name;
  const spans = [
    ...ties.values.flatMap(({ name: figure, marker: { words } }) =>
      isDrive && figure.startsWith(`drives.${old}.`) ? [words.start + 'drives.'.length] : [],
    ),
    ...ties.steps.flatMap(({ part, span }) => (part === old ? [span.end - old.length] : [])),
  ].map((start) => ({ start, end: start + old.length }));
  if (spans.length > 0 && (/[<>\p{Cc}]/u.test(name) || name.includes('--') || name.trim() !== name)) return undefined;
  return spans.filter(({ start, end }) => doc.text.slice(start, end) === old).map((span) => ({ span, text: name }));
}
