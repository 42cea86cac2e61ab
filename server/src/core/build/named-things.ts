// The things that a name can stand for, by kind: who lists them, and where each has its name.
import { CHECK_IDS } from '../manifest/check-ids';
import type { Doc } from '../parts/doc';
import type { Fact, Group } from '../parts/fact';
import type { Referent, Table } from '../parts/field';
import type { Kind, Kinds } from '../parts/kinds';
import type { Span } from '../text';
import type { Build } from './build';
import { kindOfPart, partFacts, type Placed } from './placed';

/** In what a name is looked up: a build with its parts, or a file that stands by itself. */
export type Scope = Build | Doc;

export interface NamedThing {
  readonly name: string;
  /** Where its name stands; undefined for what no file of the workspace lists. */
  readonly place?: { readonly doc: Doc; readonly span: Span };
  /** What is stated of it, where it has fields of its own. */
  readonly facts?: Group<Table>;
  readonly placed?: Placed;
  /** What names it, where that is a fact of its own and no entry of a list. */
  readonly by?: Fact<string>;
}

/** One list of things; `things` is undefined where no file states the list. */
export interface ThingList {
  readonly by?: Placed;
  readonly fact?: Fact<unknown>;
  readonly things?: readonly NamedThing[];
}

const none: readonly ThingList[] = [];

/** The lists of things of a kind. Only the parts that hold such a list are read. */
const listsOf: Readonly<Record<Referent, (scope: Scope) => readonly ThingList[]>> = {
  slot: (scope) => ofPart(scope, 'board', ({ slots }) => keysOf(slots)),
  port: (scope) => ofPart(scope, 'board', ({ ports }) => keysOf(ports)),
  header: (scope) => ofPart(scope, 'board', ({ headers }) => keysOf(headers)),
  'memory slot': (scope) => ofPart(scope, 'board', ({ memory }) => itemsOf(memory.slots)),
  'firmware version': (scope) => ofPart(scope, 'board', ({ firmware }) => itemsOf(firmware.versions)),
  'fan place': (scope) => ofPart(scope, 'case', (box) => keysOf(box['fan-places'])),
  'radiator place': (scope) => ofPart(scope, 'case', (box) => keysOf(box['radiator-places'])),
  bay: (scope) => ofPart(scope, 'case', ({ bays }) => keysOf(bays)),
  'display output': (scope) => [
    ...('parts' in scope ? scope.parts.graphics : []).map((by) => ({ by, ...keysOf(by.part.outputs) })),
    ...ofPart(scope, 'board', (board) => keysOf(board['display-outputs'])),
  ],
  drive: (scope) => ('parts' in scope ? [{ things: scope.parts.drives.flatMap(byOwnName) }] : none),
  part: (scope) => ('parts' in scope ? [{ things: callNames(scope.all()) }] : none),
  step: (scope) => ('parts' in scope ? [{ things: stepsOf(scope) }] : none),
  check: () => [{ things: CHECK_IDS.map((name) => ({ name })) }],
  // Which files and findings there are is not known to a build: whoever has the folder or the judgement adds them.
  'part file': () => none,
  finding: () => none,
};

export const thingLists = (scope: Scope, kind: Referent): readonly ThingList[] => listsOf[kind](scope);

/** All that a name stands for among things of some kinds. */
export function thingsNamed(scope: Scope, kinds: readonly Referent[], name: string): readonly NamedThing[] {
  return kinds.flatMap((kind) => {
    if (kind === 'part') return 'parts' in scope ? partCalled(scope, name) : [];
    if (kind === 'part file') return 'parts' in scope ? fileOf(scope, name) : [];
    return thingLists(scope, kind).flatMap(({ things }) => things?.filter((thing) => thing.name === name) ?? []);
  });
}

/** The part that a text names: by its own name, its part file, its slot or its role. */
export function partNamed(build: Build, text: string): Placed | undefined {
  const all = build.all();
  return (
    all.find((placed) => ownName(placed)?.value === text) ??
    all.find((placed) => placed.used?.name === text || placed.path === text) ??
    all.find((placed) => slotOf(placed)?.value === text) ??
    all.find((placed) => placed.role === text || placed.kind === text)
  );
}

/** The fact by which a text names a part; undefined where it goes by its role or its place in the list. */
export function namedBy(placed: Placed, text: string): Fact<string> | undefined {
  const { use } = placed.at as { use?: Fact<string> };
  return [ownName(placed), use, slotOf(placed)].find((fact) => fact?.value === text);
}

function ofPart<K extends Kind & ('board' | 'case')>(
  scope: Scope,
  kind: K,
  list: (part: Group<Kinds[K]>) => Omit<ThingList, 'by'>,
): readonly ThingList[] {
  if (!('parts' in scope))
    return kindOfPart(scope) === kind ? [list(partFacts(scope, kind) as unknown as Group<Kinds[K]>)] : none;
  const by = scope.parts[kind] as Placed | undefined;
  return by ? [{ by, ...list(by.part as unknown as Group<Kinds[K]>) }] : none;
}

function keysOf(fact: Fact<ReadonlyMap<string, unknown>>): Omit<ThingList, 'by'> {
  if (!fact.value) return { fact };
  return { fact, things: [...fact.value].map(([name, value]) => keyed(fact, name, value as Group<Table>)) };
}

/** What a key names stands where its own map or value is stated first: in the build, before the part file. */
function keyed(list: Fact<unknown>, name: string, value: Group<Table> | Fact<unknown>): NamedThing {
  const isGroup = '$' in value;
  const { doc, entry } = isGroup ? (value as Group<Table>).$ : (value as Fact<unknown>);
  const written = entry ?? (list.node?.type === 'map' ? list.node.get(name) : undefined);
  const place = written && !written.merged ? { doc: entry ? doc : list.doc, span: written.keySpan } : undefined;
  return { name, ...(place ? { place } : {}), ...(isGroup ? { facts: value as Group<Table> } : {}) };
}

function itemsOf(fact: Fact<readonly Fact<string>[]>): Omit<ThingList, 'by'> {
  return fact.value ? { fact, things: fact.value.flatMap(written) } : { fact };
}

function written({ value, doc, node }: Fact<string>): NamedThing[] {
  return value === undefined ? [] : [{ name: value, ...(node ? { place: { doc, span: node.span } } : {}) }];
}

const ownName = ({ at }: Placed): Fact<string> | undefined => (at as { name?: Fact<string> }).name;
const slotOf = ({ at }: Placed): Fact<string> | undefined => (at as { slot?: Fact<string> }).slot;

function byOwnName(placed: Placed): NamedThing[] {
  const fact = ownName(placed);
  return fact ? written(fact).map((thing) => ({ ...thing, placed, by: fact })) : [];
}

/** What each part is best called: its own name, else its part file where no other part uses it, else its slot. */
function callNames(all: readonly Placed[]): NamedThing[] {
  const names = all.flatMap((placed) => {
    const isOnly = all.filter(({ used }) => used && used.name === placed.used?.name).length === 1;
    const sole = all.filter(({ role }) => role === placed.role).length === 1 ? placed.role : undefined;
    const name = ownName(placed)?.value ?? (isOnly ? placed.used?.name : undefined) ?? slotOf(placed)?.value ?? sole;
    return name === undefined ? [] : [{ name, place: placeOf(placed), placed }];
  });
  return names.filter(({ name }, i) => names.findIndex((one) => one.name === name) === i);
}

/** A part is found by its own name; where it has none, by what it stands for. */
function placeOf(placed: Placed): NonNullable<NamedThing['place']> {
  return { doc: placed.doc, span: ownName(placed)?.node?.span ?? placed.used?.span ?? placed.span };
}

function partCalled(build: Build, name: string): NamedThing[] {
  const placed = partNamed(build, name);
  return placed ? [{ name, place: placeOf(placed), placed }] : [];
}

function fileOf(build: Build, name: string): NamedThing[] {
  const doc = build.find(name);
  return doc ? [{ name, place: { doc, span: { start: 0, end: 0 } } }] : [];
}

const stepsOf = ({ file: { steps } }: Build): NamedThing[] =>
  (steps.value ?? []).flatMap((step) => written(step.do as Fact<string>));
