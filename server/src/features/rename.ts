// Rename: the edits of one file that give a subject another name, and the words in which a rename is refused.
import { partNamed, thingLists } from '../core/build/named-things';
import type { Reference } from '../core/build/references';
import type { Doc } from '../core/parts/doc';
import { isPartName } from '../core/parts/part-name';
import type { Referent } from '../core/parts/field';
import type { Edit, Range, Span } from '../core/text';
import { nodeAt, renameKey, setValue } from '../core/yaml';
import { STEP_KINDS } from '../core/trade/steps';
import type { Build } from '../core/build/build';
import type { Language } from '../core/words/language';
import { namedParts, subjectAt, usesIn, type Named, type Subject } from './subject';

/** What would be renamed at a place; undefined where nothing stands there that can be. */
export function prepareRename(view: Named, offset: number): { range: Range; placeholder: string } | undefined {
  const subject = renamedAt(view, offset);
  return subject?.at && { range: view.doc.lines.rangeOf(subject.at), placeholder: subject.name };
}

/** What can be renamed at a place: a part file, a part’s own name, what a part file lists, a step of one’s own. */
export function renamedAt(view: Named, offset: number): Subject | undefined {
  const subject = subjectAt(view, offset);
  // A bay goes by a word of the format, which no house can change.
  if (!subject?.at || subject.kinds.includes('bay')) return undefined;
  if (subject.part !== undefined) return subject;
  if (subject.kinds.includes('step')) return subject.isOwnStep ? subject : undefined;
  const isNamed = ({ doc, span }: Subject['places'][number]): boolean => doc === view.doc && span.end > span.start;
  const { build } = view;
  if (!build || !subject.places.some(isNamed)) return undefined;
  if (!isOfParts(subject)) return subject;
  // A part that has no name of its own goes by its role or its slot, which is nothing to rename.
  const own = namedParts(build).map(({ at }) => (at as { name: { node?: { span: Span } } }).name.node?.span.start);
  return subject.places.some(({ span }) => own.includes(span.start)) ? subject : undefined;
}

const isOfParts = ({ kinds }: Subject): boolean => kinds.some((kind) => kind === 'drive' || kind === 'part');

const isStepKind = (name: string): boolean => (STEP_KINDS as readonly string[]).includes(name);

/** Why a subject cannot have another name; undefined where it can, as far as the file at hand tells. */
export function refusal(view: Named, subject: Subject, name: string, language: Language): string | undefined {
  if (name.trim() === '') return language.word('A name cannot be empty.');
  if (/\p{Cc}/u.test(name)) return language.word('A name is one line of text.');
  if (subject.kinds.includes('part file'))
    return isPartName(name)
      ? undefined
      : language.words`${JSON.stringify(name)} is not the name of a part file: a folder, a slash and a name,
          without blanks, such as norrvik/b7-forge.`;
  if (subject.isOwnStep)
    return isStepKind(name)
      ? language.words`${name} is a step of the list, which is judged; write it where it is meant.`
      : undefined;
  const { build } = view;
  if (build && isOfParts(subject) && partNamed(build, name))
    return language.words`Another part is called ${name} already.`;
  const taken = subject.kinds.find((kind) => isTaken(view, kind, name));
  return taken && language.words`Another ${language.label(taken)} is called ${name} already.`;
}

const isTaken = (view: Named, kind: Referent, name: string): boolean =>
  kind !== 'part' &&
  thingLists(view.build ?? view.doc, kind).some(({ things }) => things?.some((thing) => thing.name === name));

/** What keeps a file from being edited where it names a subject. */
export const doubtful = ({ doc }: Named, { name }: Subject, language: Language): string =>
  language.words`${doc.name} names ${name} where a change could mean two things, such as an alias;
    rename it there by hand first.`;

/** The edits that rename a subject in one file; empty where it is not named, undefined where they would not be safe. */
export function renameEdits(view: Named, subject: Subject, name: string): readonly Edit[] | undefined {
  const { doc, build } = view;
  const { given, used } = usesIn(view, subject);
  const edits = [
    ...given.map((span) => renamedGiven(view, span, subject.name, name)),
    ...used.map((use) => renamedUse(use, name)),
    ...(build ? acceptedPaths(build, subject, name) : []),
  ];
  if (edits.includes(undefined)) return undefined;
  const all = edits
    .flatMap((edit) => edit ?? [])
    .filter(({ span, text }) => doc.text.slice(span.start, span.end) !== text);
  return all.sort((a, b) => a.span.start - b.span.start);
}

/** The edits of house settings whose parts folders lie where a folder is moved; undefined where they are not safe. */
export function movedFolders(doc: Doc, from: string, to: string): readonly Edit[] | undefined {
  const value = doc.topValue('parts');
  const items = value?.type === 'list' ? value.items : value ? [value] : [];
  const edits = items.map((node) =>
    node.type === 'scalar' && (node.text === from || node.text.startsWith(`${from}/`))
      ? setValue(doc.parsed, node, to + node.text.slice(from.length))
      : [],
  );
  return edits.includes(undefined) ? undefined : edits.flatMap((edit) => edit ?? []);
}

/** A name is given by a key or by a value. */
function renamedGiven({ doc }: Named, span: Span, name: string, newName: string): readonly Edit[] | undefined {
  const at = nodeAt(doc.parsed, span.start);
  if (at?.where === 'key' && at.map) return renameKey(doc.parsed, at.map, name, newName);
  return at?.node ? setValue(doc.parsed, at.node, newName) : undefined;
}

function renamedUse({ fact, keyOf, name }: Reference, newName: string): readonly Edit[] | undefined {
  return keyOf ? renameKey(fact.doc.parsed, keyOf, name, newName) : setValue(fact.doc.parsed, fact.node, newName);
}

/** Where the paths of accepted findings name things of a kind. */
const pathsOf: Readonly<Partial<Record<Referent, RegExp>>> = {
  part: /^(parts\.[^.]+\.|expect\.drives\.)/,
  slot: /^(parts\.board\.slots\.)/,
  port: /^(parts\.board\.ports\.)/,
  header: /^(parts\.board\.headers\.)/,
  'fan place': /^(parts\.case\.fan-places\.)/,
  'radiator place': /^(parts\.case\.radiator-places\.)/,
};

/** Accepted findings go along: their places name the part, the promise made to it, or the thing. */
function acceptedPaths(build: Build, { name, kinds }: Subject, newName: string): (readonly Edit[] | undefined)[] {
  const kind = kinds.includes('drive') ? 'part' : kinds.find((one) => pathsOf[one]);
  const shape = kind && pathsOf[kind];
  if (!shape) return [];
  return (build.file.accept.value ?? []).flatMap(({ at }) => {
    const path = at.value;
    const [, before] = shape.exec(path ?? '') ?? [];
    if (path === undefined || before === undefined || !at.node) return [];
    const rest = path.slice(before.length);
    if (rest !== name && !rest.startsWith(`${name}.`)) return [];
    return [setValue(at.doc.parsed, at.node, before + newName + rest.slice(name.length))];
  });
}
