// What changed between two records of a finished machine, fact by fact: what came, went, moved, was swapped, or says
// something else of itself now.
import { counted, figure, type Figure } from '../core/figures/figure';
import { recordOf } from '../core/machine/as-built';
import { asBuiltFile, type AsBuilt } from '../core/manifest/as-built';
import type { Doc } from '../core/parts/doc';
import type { Fact } from '../core/parts/fact';
import type { Quantity } from '../core/quantity';
import type { ChangedFact, RecordChange, RecordComparison } from './comparison';
import { differenceOf } from './movements';
import { agree, decisive, factOf, isAnother, matchThings, textOf, thingKinds } from './record-items';
import type { Thing, ThingKind } from './record-items';
import { shortValue } from './short-value';

/** A record of one side. */
export interface RecordSide {
  readonly doc: Doc;
  /** A file’s path as people see it. */
  readonly shown: (doc: Doc) => string;
}

type Place = NonNullable<ChangedFact['before']>;

export function recordChanges(before: RecordSide, after: RecordSide): RecordComparison {
  const [was, now] = [recordOf(before.doc), recordOf(after.doc)];
  const work = new Records(was, now, before, after);
  return {
    ...(was.taken.text ? { takenBefore: was.taken.text } : {}),
    ...(now.taken.text ? { takenAfter: now.taken.text } : {}),
    changes: work.changes(),
  };
}

const singles = ['board', 'processor', 'uplink'] as const;

class Records {
  private readonly isSameLoad: boolean;

  constructor(
    private readonly was: AsBuilt,
    private readonly now: AsBuilt,
    private readonly before: RecordSide,
    private readonly after: RecordSide,
  ) {
    const isLoaded = (record: AsBuilt): boolean => toolsOf(record).has('lspci under load');
    this.isSameLoad = isLoaded(was) === isLoaded(now);
  }

  changes(): readonly RecordChange[] {
    const { was, now } = this;
    const root = (record: AsBuilt): Thing => record as unknown as Thing;
    return [
      ...this.factChanges(root(was), root(now), ['from'], 'outputs read'),
      ...singles.flatMap((key) =>
        this.factChanges(
          was[key] as unknown as Thing,
          now[key] as unknown as Thing,
          Object.keys(asBuiltFile[key].fields),
          key === 'uplink' ? 'link to the chipset' : key,
        ),
      ),
      ...this.factChanges(root(was), root(now), ['memory-ecc'], 'memory'),
      ...thingKinds.flatMap((kind) => this.listChanges(kind)),
    ];
  }

  private listChanges(kind: ThingKind): readonly RecordChange[] {
    const [was, now] = [this.was[kind.key], this.now[kind.key]] as unknown as readonly Fact<readonly Thing[]>[];
    if (!was?.value || !now?.value) return this.sectionChange(was, now, kind);
    const { pairs, gone, come } = matchThings(was.value, now.value, kind);
    // What was not looked for is neither gone nor new.
    const [fewer, more] = [lostTools(this.was, this.now, kind), lostTools(this.now, this.was, kind)];
    return [
      ...pairs.flatMap(([a, b]) => this.thingChanges(a, b, kind)),
      ...gone.map(
        (one): RecordChange => ({
          kind: fewer ? 'not-shown' : 'removed',
          thing: called(one, kind),
          before: placeOf(this.before, one.$.map ?? one.$),
        }),
      ),
      ...come.map(
        (one): RecordChange => ({
          kind: more ? 'shown' : 'added',
          thing: called(one, kind),
          after: placeOf(this.after, one.$.map ?? one.$),
        }),
      ),
    ];
  }

  /** A list that one record does not have: no output showed such things there. */
  private sectionChange(
    was: Fact<readonly Thing[]> | undefined,
    now: Fact<readonly Thing[]> | undefined,
    { key }: ThingKind,
  ): readonly RecordChange[] {
    if (!was?.value === !now?.value) return [];
    const words = (fact: Fact<readonly Thing[]>): string => `${fact.value?.length ?? 0} listed`;
    return now?.value
      ? [{ kind: 'shown', thing: key, after: placeOf(this.after, now.node, words(now)) }]
      : [{ kind: 'not-shown', thing: key, before: placeOf(this.before, was!.node, words(was!)) }];
  }

  private thingChanges(a: Thing, b: Thing, kind: ThingKind): readonly RecordChange[] {
    const thing = called(b, kind, a);
    const isSwapped = isAnother(a, b, kind);
    const by = decisive(a, b, kind.places);
    const id = decisive(a, b, kind.ids);
    const swappedBy = !isSwapped ? undefined : id !== undefined && agree(a, b, id) === false ? id : 'key';
    const isMoved = by !== undefined && agree(a, b, by) === false;
    // Where one word for the place decides, the others only follow it; so does a PCI address, which is counted anew.
    const told = new Set([...(by === undefined ? [] : kind.places), ...(swappedBy ? ['key', swappedBy] : [])]);
    const rest = Object.keys(asBuiltFile[kind.key].of.fields).filter((key) => !told.has(key));
    return [
      ...(swappedBy ? [this.between('swapped', thing, swappedBy, a, b)] : []),
      ...(isMoved ? [this.between('moved', thing, by, a, b)] : []),
      ...this.factChanges(a, b, rest, thing, isSwapped),
    ];
  }

  private factChanges(
    a: Thing,
    b: Thing,
    keys: readonly string[],
    thing: string,
    isSwapped = false,
  ): readonly RecordChange[] {
    return keys.flatMap((key): readonly RecordChange[] => {
      const [was, now] = [factOf(a, key), factOf(b, key)];
      const [isTold, isToldNow] = [isStated(was), isStated(now)];
      if (!isTold && !isToldNow) return [];
      if (!isTold || !isToldNow) return [this.between(isToldNow ? 'shown' : 'not-shown', thing, key, a, b)];
      if (isSame(was!, now!)) return [];
      const isComparable = !isSwapped && (key !== 'link' || (this.isSameLoad && agree(a, b, 'read') !== false));
      const weighed = isComparable ? weigh(key, was!, now!) : {};
      return [{ ...this.between('changed', thing, key, a, b), ...weighed }];
    });
  }

  private between(kind: RecordChange['kind'], thing: string, key: string, a: Thing, b: Thing): RecordChange {
    const [was, now] = [factOf(a, key), factOf(b, key)];
    const [onlyBefore, onlyAfter] = listed(was, now);
    return {
      kind,
      thing,
      fact: key,
      ...(isStated(was) ? { before: placeOf(this.before, was!.node, onlyBefore ?? was!.text) } : {}),
      ...(isStated(now) ? { after: placeOf(this.after, now!.node, onlyAfter ?? now!.text) } : {}),
    };
  }
}

const isStated = (fact: Fact<unknown> | undefined): boolean =>
  fact !== undefined && (fact.value !== undefined || fact.text !== '');

/** The tools that a record was put together from, without their versions. */
const toolsOf = ({ from }: AsBuilt): ReadonlySet<string> =>
  new Set((from.value ?? []).map(({ text }) => text.replace(/ [\d.]+$/, '')));

/** Whether a tool that showed such things to the first record is not among those of the second. */
function lostTools(one: AsBuilt, other: AsBuilt, { tools }: ThingKind): boolean {
  const [own, theirs] = [toolsOf(one), toolsOf(other)];
  return tools.some((tool) => own.has(tool) && !theirs.has(tool));
}

/** `drive scratch`, `memory D5-6000-32 in A2`: as the later record says it. */
function called(thing: Thing, { noun, ids, places, within }: ThingKind, other = thing): string {
  const first = (keys: readonly string[]): string | undefined =>
    [thing, other].flatMap((one) => keys.map((key) => textOf(one, key))).find((text) => text !== undefined);
  const name = first(['name']);
  if (name !== undefined) return `${noun} ${name}`;
  const [own, place, read] = [first([...ids].reverse()), first(places), within && first([within])];
  return [noun, ...(own ? [own] : []), ...(place ? ['in', place] : []), ...(read ? [`(${read})`] : [])].join(' ');
}

function placeOf({ doc, shown }: RecordSide, at: Pick<Thing['$'], 'span'> | undefined, words?: string): Place {
  const span = at?.span ?? { start: 0, end: 0 };
  const line = doc.lines.positionAt(span.start).line + 1;
  return { file: shown(doc), line, text: shortValue(words || doc.text.slice(span.start, span.end)) };
}

/** Of two lists what only one of them has; both undefined where these are none. */
function listed(
  was: Fact<unknown> | undefined,
  now: Fact<unknown> | undefined,
): readonly [string | undefined, string | undefined] {
  const texts = (fact: Fact<unknown> | undefined): readonly string[] | undefined =>
    Array.isArray(fact?.value) ? (fact.value as Fact<unknown>[]).map(({ text }) => text) : undefined;
  const [old, anew] = [texts(was), texts(now)];
  const only = (these: readonly string[] | undefined, those: readonly string[] | undefined): string | undefined =>
    these && (these.filter((one) => !those?.includes(one)).join(', ') || 'none more');
  return [only(old, anew), only(anew, old)];
}

function isSame(was: Fact<unknown>, now: Fact<unknown>): boolean {
  if (Array.isArray(was.value) && Array.isArray(now.value)) {
    const [old, anew] = listed(was, now);
    return old === anew;
  }
  if (was.text === now.text) return true;
  const [a, b] = [was.value, now.value];
  if (a === undefined || b === undefined || was.field.type === 'text' || was.field.type === 'version') return false;
  if (was.field.type === 'quantity') return sameAmount(a as Quantity, b as Quantity);
  return JSON.stringify(a) === JSON.stringify(b);
}

const sameAmount = (a: Quantity, b: Quantity): boolean => a.dimension === b.dimension && a.lo === b.lo && a.hi === b.hi;

/** Of these more is better, or less; of the others it depends. */
const BETTER: Readonly<Record<string, 'more' | 'less'>> = {
  running: 'more',
  worn: 'less',
  'media-errors': 'less',
  temperature: 'less',
};
const BEST: Readonly<Record<string, string>> = { health: 'passed', warning: 'false' };

function weigh(key: string, was: Fact<unknown>, now: Fact<unknown>): Pick<RecordChange, 'difference' | 'isBetter'> {
  if (key === 'link') return linkBetterment(was.value, now.value);
  if (BEST[key] !== undefined) return { isBetter: now.text === BEST[key] };
  const [a, b] = [figureOf(was), figureOf(now)];
  if (!a || !b) return {};
  const difference = differenceOf(a, b);
  if (difference.difference === undefined || BETTER[key] === undefined) return difference;
  return { ...difference, isBetter: (BETTER[key] === 'more') === b.lo > a.lo };
}

function figureOf(fact: Fact<unknown>): Figure | undefined {
  if (fact.value === undefined) return undefined;
  if (fact.field.type === 'quantity') return figure(fact as Fact<Quantity>, fact.key);
  return fact.field.type === 'count' ? counted(fact as Fact<number>, fact.key) : undefined;
}

/** Better or worse where lanes and generation do not disagree. */
function linkBetterment(was: unknown, now: unknown): Pick<RecordChange, 'isBetter'> {
  const [a, b] = [was, now] as readonly ({ generation?: number; lanes?: number } | undefined)[];
  if (!a?.generation || !a.lanes || !b?.generation || !b.lanes) return {};
  const isMore = b.generation >= a.generation && b.lanes >= a.lanes;
  const isLess = b.generation <= a.generation && b.lanes <= a.lanes;
  return isMore === isLess ? {} : { isBetter: isMore };
}
