// The places that a build’s parts take: slots, ports, headers, memory slots, bays and mounts, with what offers them.
import type { Build, Placed } from '../build/build';
import { thingLists, type NamedThing, type ThingList } from '../build/named-things';
import { referentsOf } from '../build/references';
import { roleNames, roles, type Role, type RoleName } from '../manifest/places';
import type { Fact } from '../parts/fact';
import type { Field, Referent } from '../parts/field';
import { missing, type Missing } from './figure';
import { memo, memoOf } from './memo';

/** The things that a part is put into, or plugged into. */
export const placeKinds = [
  'slot',
  'port',
  'header',
  'memory slot',
  'fan place',
  'radiator place',
  'bay',
  'display output',
] as const satisfies readonly Referent[];
export type PlaceKind = (typeof placeKinds)[number];

/** One place that a part names. */
export interface NamedPlace {
  readonly placed: Placed;
  readonly kind: PlaceKind;
  readonly name: string;
  /** The fact of the build that names it. */
  readonly fact: Fact<string>;
}

/** The keys by which the parts of a role name their places, from the tables. */
const placeKeys = new Map<RoleName, readonly (readonly [string, PlaceKind])[]>(
  roleNames.flatMap((role) => {
    const keys = Object.entries((roles[role] as Role).fields).flatMap(([key, field]) => {
      const [kind] = referentsOf(field.type === 'list' ? (field.of as Field) : (field as Field));
      return isPlace(kind) ? [[key, kind] as const] : [];
    });
    return keys.length > 0 ? [[role, keys] as const] : [];
  }),
);

function isPlace(kind: Referent | undefined): kind is PlaceKind {
  return (placeKinds as readonly (Referent | undefined)[]).includes(kind);
}

/** Every place that the build names, in the order of the parts. */
export const takenPlaces = memo((build: Build): readonly NamedPlace[] =>
  build.of(...placeKeys.keys()).flatMap((placed) => placesOf(placed)),
);

function placesOf(placed: Placed): NamedPlace[] {
  const facts = placed.at as unknown as Record<string, Fact<string | readonly Fact<string>[]>>;
  return (placeKeys.get(placed.role) ?? []).flatMap(([key, kind]) => {
    const fact = facts[key]!;
    const named = Array.isArray(fact.value) ? (fact.value as Fact<string>[]) : [fact as Fact<string>];
    return named.flatMap((one) => (one.value === undefined ? [] : [{ placed, kind, name: one.value, fact: one }]));
  });
}

/** What is listed of things, by whom, and what would tell of more. */
export interface Offered {
  readonly by: readonly Placed[];
  readonly names: readonly string[];
  /** The lists themselves, where files state them, and what names the things of a list that no one fact states. */
  readonly lists: readonly Fact<unknown>[];
  readonly namedBy: ReadonlyMap<string, Fact<string>>;
  readonly missingFacts: readonly Missing[];
}

/** What offers places of a kind: the board, the case, or for pictures every card as well; undefined where none is. */
export const offered = memoOf((build: Build, kind: PlaceKind): Offered | undefined => {
  const lists = thingLists(build, kind);
  return lists.length === 0 ? undefined : offeredBy(lists);
});

/** The names in some lists, and the lists that no file states. */
export function offeredBy(lists: readonly ThingList[]): Offered {
  return {
    by: lists.flatMap(({ by }) => by ?? []),
    names: lists.flatMap(({ things }) => things?.map(nameOf) ?? []),
    lists: lists.flatMap(({ fact }) => (fact?.node ? [fact] : [])),
    namedBy: new Map(lists.flatMap(({ things }) => things?.flatMap(({ name, by }) => (by ? [[name, by]] : [])) ?? [])),
    missingFacts: lists.flatMap(({ things, fact, by }) =>
      things || !fact ? [] : [missing(fact, by ? `${wordsOf(fact)} of ${by.label}` : wordsOf(fact))],
    ),
  };
}

const nameOf = ({ name }: NamedThing): string => name;

/** Outputs of a card and of a board are called alike; other lists by their key. */
const wordsOf = ({ key }: Fact<unknown>): string =>
  key === 'outputs' || key === 'display-outputs' ? 'display outputs' : key;
