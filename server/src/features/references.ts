// References and rename within one file: the name a build gives to a part, and everything in it that uses the name.
import { partNamed, thingsNamed, type NamedThing } from '../core/build/named-things';
import { referenceAt, referencesIn, type Reference } from '../core/build/references';
import type { Build, Placed } from '../core/build/build';
import { roleNames } from '../core/manifest/places';
import type { Fact } from '../core/parts/fact';
import type { Edit, Span } from '../core/text';
import { renameKey, setValue } from '../core/yaml';
import { documentEdit, type Location, type Position, type Range, type View, type WorkspaceEdit } from './shapes';

/** A name and all that shares it in the file at hand: where it is given, and where it is used. */
interface Uses {
  readonly name: string;
  readonly given: readonly Span[];
  readonly used: readonly Reference[];
}

/** Every place of the file that names the same thing; with `declares`, also where the thing has its name. */
export function references(view: View, position: Position, declares: boolean): Location[] {
  const { doc } = view;
  const uses = usesAt(view, doc.lines.offsetAt(position));
  if (!uses) return [];
  const spans = [...(declares ? uses.given : []), ...uses.used.map(({ fact }) => fact.node.span)];
  return spans
    .sort((a, b) => a.start - b.start)
    .map((span) => ({ uri: view.uriOf(doc), range: doc.lines.rangeOf(span) }));
}

function usesAt({ doc, build }: View, offset: number): Uses | undefined {
  const scope = build ?? doc;
  const reference = referenceAt(doc, offset);
  const own = reference ? undefined : build && givenAt(build, offset);
  const name = reference?.name ?? own?.value;
  if (name === undefined) return undefined;
  const things = reference ? thingsNamed(scope, reference.to, name) : [{ name, place: { doc, span: own!.node!.span } }];
  const places = things.flatMap(({ place }) => place ?? []);
  const isSame = (thing: NamedThing): boolean =>
    places.some(({ doc: of, span }) => of === thing.place?.doc && span.start === thing.place.span.start);
  return {
    name,
    given: places.filter((place) => place.doc === doc && place.span.end > 0).map(({ span }) => span),
    used: referencesIn(doc).filter((one) => one.name === name && thingsNamed(scope, one.to, name).some(isSame)),
  };
}

/** The own name of a part that stands at an offset. */
function givenAt(build: Build, offset: number): Fact<string> | undefined {
  return namedParts(build)
    .map(({ at }) => (at as { name: Fact<string> }).name)
    .find(({ node }) => node && node.span.start <= offset && offset <= node.span.end);
}

const namedParts = (build: Build): readonly Placed[] =>
  build.of(...roleNames).filter(({ at }) => (at as { name?: Fact<string> }).name?.value !== undefined);

/** What would be renamed at a place; undefined where no part’s own name, nor a use of one, stands there. */
export function prepareRename(view: View, position: Position): { range: Range; placeholder: string } | undefined {
  const { doc } = view;
  const renamed = renamedAt(view, position);
  if (!renamed) return undefined;
  const offset = doc.lines.offsetAt(position);
  const { given, used, name } = renamed.uses;
  const span = [...given, ...used.map(({ fact }) => fact.node.span)].find(
    (one) => one.start <= offset && offset <= one.end,
  );
  return span && { range: doc.lines.rangeOf(span), placeholder: name };
}

/** The change that gives a part another name everywhere in its build; a text where it cannot be. */
export function rename(view: View, position: Position, newName: string): WorkspaceEdit | string {
  const { doc, build } = view;
  const renamed = renamedAt(view, position);
  if (!build || !renamed) return 'Only the names that a build gives to its parts can be renamed.';
  const { fact, uses } = renamed;
  const name = newName.trim();
  if (name === '') return 'A name cannot be empty.';
  if (name === uses.name) return { documentChanges: [] };
  if (partNamed(build, name)) return `Another part is called ${name} already.`;
  const edits = [setValue(doc.parsed, fact.node!, name), ...uses.used.map((use) => renamedUse(use, name))];
  edits.push(...acceptedPaths(build, uses.name, name));
  if (edits.some((edit) => edit === undefined))
    return `${uses.name} stands where a change could mean two things, such as an alias; rename it by hand.`;
  return {
    documentChanges: [
      documentEdit(
        view,
        doc,
        edits.flatMap((edit) => edit ?? []),
      ),
    ],
  };
}

function renamedAt(view: View, position: Position): { fact: Fact<string>; uses: Uses } | undefined {
  const { doc, build } = view;
  const uses = build && usesAt(view, doc.lines.offsetAt(position));
  const fact = uses && namedParts(build).map(({ at }) => (at as { name: Fact<string> }).name);
  const own = fact?.find(({ node }) => node && uses!.given.some(({ start }) => start === node.span.start));
  return own && uses && { fact: own, uses };
}

function renamedUse({ fact, keyOf, name }: Reference, newName: string): Edit[] | undefined {
  return keyOf ? renameKey(fact.doc.parsed, keyOf, name, newName) : setValue(fact.doc.parsed, fact.node, newName);
}

/** Accepted findings go along: their places name the part, or the promise made to it. */
function acceptedPaths(build: Build, name: string, newName: string): (Edit[] | undefined)[] {
  return (build.file.accept.value ?? []).flatMap(({ at }) => {
    const path = at.value;
    const [, before] = /^(parts\.[^.]+\.|expect\.drives\.)/.exec(path ?? '') ?? [];
    if (path === undefined || before === undefined || !at.node) return [];
    const rest = path.slice(before.length);
    if (rest !== name && !rest.startsWith(`${name}.`)) return [];
    return [setValue(at.doc.parsed, at.node, before + newName + rest.slice(name.length))];
  });
}
