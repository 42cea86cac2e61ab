// Names in guides: in their fenced blocks, each as in a file of its own, and in the marks of drives and steps.
import type { Build } from '../core/build/build';
import { partNamed } from '../core/build/named-things';
import { ownSteps } from '../core/figures/steps';
import type { Guide } from '../core/guide/guide';
import type { Doc, SourceLocation } from '../core/parts/doc';
import type { Fact } from '../core/parts/fact';
import { touches, type Edit, type Position, type Span } from '../core/text';
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

/** Every place of a file, or of the blocks and marks of a guide, that names a subject. */
export const referencesWithin = (file: Named, subject: Subject, declares: boolean): Location[] => [
  ...filesIn(file).flatMap((one) => referencesTo(one, subject, declares)),
  ...marksNaming(file, subject),
];

/** The places of a guide’s marks that name a subject. */
export const marksNaming = ({ guide, doc, uriOf }: Named, subject: Subject): Location[] =>
  guide ? markSpans(guide, subject).map((span) => ({ uri: uriOf(doc), range: doc.lines.rangeOf(span) })) : [];

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

/** The edits of a guide’s marks that name a subject which is renamed; undefined where no mark can say it. */
export function markEdits(guide: Guide, subject: Subject, name: string): readonly Edit[] | undefined {
  const spans = markSpans(guide, subject);
  if (spans.length > 0 && (/[<>\p{Cc}]/u.test(name) || name.includes('--') || name.trim() !== name)) return undefined;
  return spans.map((span) => ({ span, text: name }));
}

/** Where the marks of a guide name a drive or a part of its build, or a step in a writer’s own words. */
function markSpans(guide: Guide, { name, places, kinds, isOwnStep }: Subject): Span[] {
  const isOwn = places.some(({ doc: at }) => at.name === guide.build?.doc.name);
  const isDrive = isOwn && kinds.includes('drive');
  if (!isDrive && !isOwnStep && !kinds.includes('part file')) return [];
  return namesInMarks(guide).flatMap((one) =>
    one.name === name && (isOwnStep ? one.what === 'step' : one.what === 'part' || (isDrive && one.what === 'drive'))
      ? [one.at]
      : [],
  );
}

interface NameInMark {
  readonly what: 'drive' | 'part' | 'step';
  readonly name: string;
  readonly at: Span;
}

/** The drives that marked values name, the parts of marked steps, and the steps in a writer’s own words. */
const namesInMarks = ({ ties: { values, steps } }: Guide): NameInMark[] => [
  ...values.flatMap(({ name, marker: { words } }): NameInMark[] => {
    const own = /^drives\.(.+)\.[^.]+$/.exec(name)?.[1];
    const start = words.start + 'drives.'.length;
    return own === undefined ? [] : [{ what: 'drive', name: own, at: { start, end: start + own.length } }];
  }),
  ...steps.flatMap(({ kind, says, part, span }): NameInMark[] => {
    const name = kind ? part : says;
    const at = { start: span.end - name.length, end: span.end };
    return name === '' ? [] : [{ what: kind ? 'part' : 'step', name, at }];
  }),
];

/** What a mark names at an offset, and where its build gives that the name. */
export function namedByMark(
  guide: Guide,
  offset: number,
): (NameInMark & { readonly given: SourceLocation }) | undefined {
  const named = namesInMarks(guide).find(({ at }) => touches(at, offset));
  const given = named && guide.build && givenIn(guide.build, named);
  return given && { ...named, given };
}

function givenIn(build: Build, { what, name }: NameInMark): SourceLocation | undefined {
  if (what === 'step') {
    const step = ownSteps(build).find(({ text }) => text === name);
    return step && { doc: build.doc, span: step.span };
  }
  const at = partNamed(build, name)?.at as { name?: Fact<string>; use?: Fact<string> } | undefined;
  const by = [at?.name, at?.use].find((fact) => fact?.value === name);
  return by?.node && { doc: by.doc, span: by.node.span };
}
