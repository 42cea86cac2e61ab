// What a name at a place of a file stands for, and where another file names the same: a part file, a thing that a part
// file lists, or one that a build alone knows.
import type { Build, Placed } from '../core/build/build';
import { thingLists, thingsNamed, type NamedThing, type Scope } from '../core/build/named-things';
import { referenceAt, referencesIn, type Reference } from '../core/build/references';
import { ownSteps } from '../core/figures/steps';
import { roleNames } from '../core/manifest/places';
import type { Doc } from '../core/parts/doc';
import type { Fact } from '../core/parts/fact';
import type { Referent } from '../core/parts/field';
import { touches, type Span } from '../core/text';
import type { Reading } from './shapes';

type Place = NonNullable<NamedThing['place']>;

/** A file that may name a subject; `partName`: the name of the part whose file it is. */
export interface Named extends Reading {
  readonly partName?: string;
}

export interface Subject {
  readonly name: string;
  /** What kinds of thing it may be. */
  readonly kinds: readonly Referent[];
  /** The part whose file lists it, or that it is itself; undefined for what the build at hand alone knows. */
  readonly part?: string;
  /** Where the build at hand gives it its name, for what no part file lists. */
  readonly places: readonly Place[];
  /** A step in words of the writer’s own: the same words are the same step in every build. */
  readonly isOwnStep?: true;
  /** The name as it stands where the cursor is; undefined where the part file as a whole is meant. */
  readonly at?: Span;
}

/** A subject in one file: where it is given its name there, and where that name is used. */
export interface Uses {
  readonly given: readonly Span[];
  readonly used: readonly Reference[];
}

/** Kinds of things that a part file, or a build in its stead, lists by names. */
const listed: readonly Referent[] = [
  'slot',
  'port',
  'header',
  'memory slot',
  'firmware version',
  'fan place',
  'radiator place',
  'bay',
  'display output',
];

/** What is named at an offset of a file. */
export function subjectAt(view: Named, offset: number): Subject | undefined {
  const scope = view.build ?? view.doc;
  const reference = referenceAt(view.doc, offset);
  if (reference) return ofReference(view, reference);
  const own = view.build && ownNameAt(view.build, offset);
  if (own) return { name: own.value!, kinds: ['drive', 'part'], places: [placeOf(own)], at: own.node!.span };
  return listedAt(view, scope, offset) ?? ownStepAt(view, offset) ?? wholePart(view, offset);
}

/** A part file by its name. */
export const wholeFile = (name: string): Subject => ({ name, kinds: ['part file'], part: name, places: [] });

function ofReference(view: Named, { to, name, fact }: Reference): Subject {
  const scope = view.build ?? view.doc;
  const at = fact.node.span;
  if (to.includes('part file')) return { ...wholeFile(name), at };
  const things = thingsNamed(scope, to, name);
  // A part that goes by the name of its file: that file is what is named.
  if (to.includes('part') && things[0]?.placed?.used?.name === name) return { ...wholeFile(name), at };
  const listing = to.find((kind) => listingPart(view, scope, kind, name) !== undefined);
  const part = listing && listingPart(view, scope, listing, name);
  return {
    name,
    kinds: listing ? [listing] : to,
    ...(part ? { part } : {}),
    places: things.flatMap(({ place }) => place ?? []),
    at,
  };
}

/** The part whose file lists a name, by the build that uses it or by the file itself. */
function listingPart(view: Named, scope: Scope, kind: Referent, name: string): string | undefined {
  const isAmong = (things: readonly NamedThing[] | undefined): boolean =>
    things?.some((one) => one.name === name) === true;
  for (const { by, things } of thingLists(scope, kind)) {
    if (!by) return isAmong(things) ? view.partName : undefined;
    if (by.used?.file && thingLists(by.used.file, kind).some((list) => isAmong(list.things))) return by.used.name;
  }
  return undefined;
}

function listedAt(view: Named, scope: Scope, offset: number): Subject | undefined {
  for (const kind of [...listed, 'step'] as const)
    for (const { name, place } of thingLists(scope, kind).flatMap(({ things = [] }) => things)) {
      if (place?.doc !== view.doc || !touches(place.span, offset)) continue;
      const part = listingPart(view, scope, kind, name);
      const places = thingsNamed(scope, [kind], name).flatMap((thing) => thing.place ?? []);
      return { name, kinds: [kind], ...(part ? { part } : {}), places, at: place.span };
    }
  return undefined;
}

function ownStepAt({ build }: Named, offset: number): Subject | undefined {
  const node = (build ? ownSteps(build) : []).find(({ span }) => touches(span, offset));
  return node && { name: node.text, kinds: ['step'], places: [], isOwnStep: true, at: node.span };
}

/** A part file is named by what says what it is: its kind, its maker, its model. */
function wholePart({ doc, partName }: Named, offset: number): Subject | undefined {
  const { root } = doc.parsed;
  if (partName === undefined || root?.type !== 'map') return undefined;
  const isThere = ['kind', 'maker', 'model'].some((key) => {
    const entry = root.get(key);
    return entry && touches({ start: entry.keySpan.start, end: entry.value.span.end }, offset);
  });
  return isThere ? wholeFile(partName) : undefined;
}

/** Where one file names a subject. */
export function usesIn(view: Named, subject: Subject): Uses {
  const { doc, build } = view;
  const { name, kinds } = subject;
  if (kinds.includes('part file')) return { given: [], used: usesOfFile(build, doc, name) };
  if (subject.isOwnStep)
    return { given: build ? ownSteps(build).flatMap(({ text, span }) => (text === name ? [span] : [])) : [], used: [] };
  const given = sameThings(view, subject, kinds).flatMap(({ place }) => (place?.doc === doc ? [place.span] : []));
  const used = referencesIn(doc).filter((one) => one.name === name && sameThings(view, subject, one.to).length > 0);
  // What is listed under a name and a word of its own at once stands in both lists.
  return { given: given.filter((span, i) => given.findIndex(({ start }) => start === span.start) === i), used };
}

/** What a file knows under a subject’s name that is the subject. */
function sameThings(view: Named, subject: Subject, kinds: readonly Referent[]): NamedThing[] {
  const { name, part, places } = subject;
  const scope = view.build ?? view.doc;
  if (part === undefined) {
    const isSame = (a: Place, b: Place): boolean => a.doc.name === b.doc.name && a.span.start === b.span.start;
    return thingsNamed(scope, kinds, name).filter(({ place }) => places.some((one) => place && isSame(one, place)));
  }
  if (!view.build && view.partName !== part) return [];
  return kinds
    .filter((kind) => subject.kinds.includes(kind))
    .flatMap((kind) => thingLists(scope, kind))
    .filter(({ by }) => !by || by.used?.name === part)
    .flatMap(({ things = [] }) => things.filter((thing) => thing.name === name));
}

/** Where a file names a part file; a step may name a part so, too. */
function usesOfFile(build: Build | undefined, doc: Doc, name: string): Reference[] {
  const isPart = ({ to }: Reference): boolean =>
    to.includes('part') && build !== undefined && thingsNamed(build, to, name)[0]?.placed?.used?.name === name;
  return referencesIn(doc).filter((one) => one.name === name && (one.to.includes('part file') || isPart(one)));
}

const placeOf = ({ doc, node }: Fact<string>): Place => ({ doc, span: node!.span });

/** The own name of a part that stands at an offset. */
function ownNameAt(build: Build, offset: number): Fact<string> | undefined {
  return namedParts(build)
    .map(({ at }) => (at as { name: Fact<string> }).name)
    .find(({ node, doc }) => node && doc === build.doc && touches(node.span, offset));
}

/** The parts to which a build gives a name of their own. */
export const namedParts = (build: Build): readonly Placed[] =>
  build.of(...roleNames).filter(({ at }) => (at as { name?: Fact<string> }).name?.value !== undefined);
