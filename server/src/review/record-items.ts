// Which things of two records of a machine are the same: by the masked key, by what they call themselves, by place.
import type { OutputName } from '../core/manifest/as-built';
import type { Fact, Group } from '../core/parts/fact';
import type { Table } from '../core/parts/field';

/** One thing of a record, its facts by their keys. */
export type Thing = Group<Table>;

/** A list of the record, and how its things are told apart. */
export interface ThingKind {
  readonly key: 'memory' | 'devices' | 'drives' | 'displays' | 'temperatures' | 'fans';
  readonly noun: string;
  /** What a thing calls itself; of several the first that both state decides. */
  readonly ids: readonly string[];
  /** Where it sits; of several the first that both state decides. */
  readonly places: readonly string[];
  /** A key that is the same of one thing, always. */
  readonly within?: string;
  /** The outputs that show such things. */
  readonly tools: readonly OutputName[];
}

const byPci = ['at', 'port', 'address'] as const;
const sensors: readonly OutputName[] = ['sensors', 'sensors under load'];
export const thingKinds: readonly ThingKind[] = [
  {
    key: 'memory',
    noun: 'memory',
    ids: ['reports'],
    places: ['slot', 'locator'],
    tools: ['dmidecode', 'decode-dimms', 'CIM'],
  },
  { key: 'devices', noun: 'card', ids: ['id', 'reports'], places: byPci, tools: ['lspci', 'lspci under load', 'CIM'] },
  { key: 'drives', noun: 'drive', ids: ['reports'], places: byPci, tools: ['lsblk', 'smartctl', 'CIM'] },
  { key: 'displays', noun: 'display', ids: ['id', 'reports'], places: ['connector'], tools: ['EDID', 'CIM'] },
  { key: 'temperatures', noun: 'temperature', ids: ['sensor'], places: [], within: 'read', tools: sensors },
  { key: 'fans', noun: 'fan', ids: ['sensor'], places: [], within: 'read', tools: sensors },
];

export const factOf = (thing: Thing, key: string): Fact<unknown> | undefined =>
  (thing as Readonly<Record<string, unknown>>)[key] as Fact<unknown> | undefined;

/** A value that is stated, be it readable or not. */
export const textOf = (thing: Thing, key: string): string | undefined => factOf(thing, key)?.text || undefined;

/** Whether two things agree in a key; undefined where either does not state it. */
export function agree(a: Thing, b: Thing, key: string): boolean | undefined {
  const [was, now] = [textOf(a, key), textOf(b, key)];
  return was === undefined || now === undefined ? undefined : was.toUpperCase() === now.toUpperCase();
}

/** The first key that both state. */
export const decisive = (a: Thing, b: Thing, keys: readonly string[]): string | undefined =>
  keys.find((key) => agree(a, b, key) !== undefined);

const agreeBy = (a: Thing, b: Thing, keys: readonly string[]): boolean | undefined => {
  const key = decisive(a, b, keys);
  return key === undefined ? undefined : agree(a, b, key);
};

/** Whether another thing has taken its place, of the same name or not. */
export const isAnother = (a: Thing, b: Thing, { ids }: ThingKind): boolean => {
  const sameKey = agree(a, b, 'key');
  return sameKey === false || (sameKey === undefined && agreeBy(a, b, ids) === false);
};

const written = (thing: Thing): string =>
  Object.keys(thing)
    .map((key) => `${key}:${textOf(thing, key) ?? ''}`)
    .join('\n');

export interface Matched {
  readonly pairs: readonly (readonly [Thing, Thing])[];
  readonly gone: readonly Thing[];
  readonly come: readonly Thing[];
}

/** What could be matched in two ways is left: nothing is said to have moved that may be another. */
export function matchThings(before: readonly Thing[], after: readonly Thing[], kind: ThingKind): Matched {
  const [gone, come] = [new Set(before), new Set(after)];
  const pairs: [Thing, Thing][] = [];
  const take = (a: Thing, b: Thing): void => {
    gone.delete(a);
    come.delete(b);
    pairs.push([a, b]);
  };
  for (const is of waysOf(kind))
    for (const a of [...gone]) {
      const own = [...come].filter((b) => is(a, b));
      const rivals = [...gone].filter((one) => own[0] && is(one, own[0]));
      if (own[0] && (areAlike(own) || areAlike(rivals))) take(a, own[0]);
    }
  return { pairs, gone: [...gone], come: [...come] };
}

const areAlike = (all: readonly Thing[]): boolean => new Set(all.map(written)).size === 1;

/** The surest first. Which of two that are wholly alike is which says nothing. */
function waysOf({ ids, places, within }: ThingKind): readonly ((a: Thing, b: Thing) => boolean)[] {
  const mayBe = (a: Thing, b: Thing): boolean => within === undefined || textOf(a, within) === textOf(b, within);
  return [
    (a, b) => agree(a, b, 'key') === true,
    (a, b) => written(a) === written(b),
    (a, b) => mayBe(a, b) && agreeBy(a, b, ids) === true && agreeBy(a, b, places) === true,
    (a, b) => mayBe(a, b) && agreeBy(a, b, ids) === true && agree(a, b, 'key') !== false,
    (a, b) => agree(a, b, 'name') === true,
    (a, b) => agreeBy(a, b, places) === true,
  ];
}
