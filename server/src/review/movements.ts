// What moved between two states of a build: figures before and after, with the stated facts that moved them.
import type { Build } from '../core/build/build';
import type { Figure } from '../core/figures/figure';
import { excessOf } from '../core/figures/measure';
import { show } from '../core/figures/sentence';
import type { Used } from '../core/figures/truth';
import type { Doc, StatedAt } from '../core/parts/doc';
import type { ChangedFact, Movement } from './comparison';
import { quantitiesOf, type Quantity } from './quantities';
import { shortValue } from './short-value';

export interface BuildSide {
  readonly build: Build;
  /** A file’s path as people see it. */
  readonly shown: (doc: Doc) => string;
}

/** Changed facts named of one movement at most. */
const mostFacts = 8;

/** Every figure that is not the same on both sides. */
export function movements(before: BuildSide, after: BuildSide): Movement[] {
  const old = quantitiesOf(before.build);
  const left = new Set(old);
  const byKey = (at: 0 | 1): Map<string, Quantity> => new Map(old.map((one) => [one.keys[at], one]));
  const [named, meant] = [byKey(0), byKey(1)];
  const come = quantitiesOf(after.build).map((now) => {
    const first = named.get(now.keys[0]);
    const was = first && left.has(first) ? first : undefined;
    if (was) left.delete(was);
    return { now, was };
  });
  const pairs = come.map(({ now, was }) => {
    const other = was ?? meant.get(now.keys[1]);
    if (was || !other || !left.delete(other)) return { now, was };
    return { now, was: other };
  });
  return [
    ...pairs.flatMap(({ now, was }) => moved(was, now, before, after)),
    ...[...left].flatMap((was) => moved(was, undefined, before, after)),
  ];
}

function moved(was: Quantity | undefined, now: Quantity | undefined, before: BuildSide, after: BuildSide): Movement[] {
  if (was && now && isSame(was.figure, now.figure)) return cancelled(was, now, before, after);
  const [a, b] = [was && said(was.figure), now && said(now.figure)];
  // What is not there on one side and not known on the other has not moved.
  if ((a ?? unknownWord) === unknownWord && (b ?? unknownWord) === unknownWord) return [];
  const isBetter = was && now && betterment(was, now);
  return [
    {
      what: (now ?? was)!.what,
      ...(a === undefined ? {} : { before: a }),
      ...(b === undefined ? {} : { after: b }),
      ...differenceOf(was?.figure, now?.figure),
      ...(isBetter === undefined ? {} : { isBetter }),
      why: changedFacts(was?.figure, now?.figure, before, after),
    },
  ];
}

/** A figure that stayed though at least two of its operands are others: shown, as what cancels out hides a change. */
function cancelled(was: Quantity, now: Quantity, before: BuildSide, after: BuildSide): Movement[] {
  const [old, anew] = [operandsOf(was.figure), operandsOf(now.figure)];
  const value = said(now.figure);
  if (value === unknownWord || apart(old, anew) + apart(anew, old) < 4) return [];
  const why = changedFacts(was.figure, now.figure, before, after);
  return [{ what: now.what, before: value, after: value, cancels: true, why }];
}

/** How many of these values the others lack. */
function apart(these: readonly string[], those: readonly string[]): number {
  const left = [...those];
  return these.filter((one) => {
    const at = left.indexOf(one);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  }).length;
}

/** The stated numbers behind a figure, by path and value: not by file, which a renamed part changes. */
function operandsOf(figure: Figure): string[] {
  const operands: string[] = [];
  const seen = new Set<Figure>();
  const waiting = [figure];
  for (let one = waiting.pop(); one; one = waiting.pop()) {
    if (seen.has(one)) continue;
    seen.add(one);
    waiting.push(...one.inputs);
    if (one.from) operands.push(`${one.from.path} ${one.lo} ${one.hi}`);
  }
  return operands;
}

const unknownWord = 'not known';
/** So little is lost in adding up in another order. */
const lostInSums = 1e-9;

const isSame = (a: Figure, b: Figure): boolean =>
  a.dimension === b.dimension && a.currency === b.currency && isNear(a.lo, b.lo) && isNear(a.hi, b.hi);
const isNear = (a: number, b: number): boolean =>
  a === b ||
  (Number.isFinite(a) && Number.isFinite(b) && Math.abs(a - b) <= lostInSums * Math.max(Math.abs(a), Math.abs(b)));

/** That something is no less than nothing says nothing of it. */
const said = (one: Figure): string =>
  one.hi === Infinity && one.lo <= 0 && one.dimension !== 'temperature'
    ? unknownWord
    : show(one).replaceAll(/(^|\s)-(?=\d)/g, '$1−');

const isExact = (one: Figure): boolean => one.lo === one.hi && Number.isFinite(one.lo);

/** With its sign, where both are exact and of one kind. */
export function differenceOf(was: Figure | undefined, now: Figure | undefined): { difference?: string } {
  if (!was || !now || !isExact(was) || !isExact(now) || was.currency !== now.currency) return {};
  if (was.dimension !== now.dimension) return {};
  const by = excessOf({ figure: now, limit: was, worse: 'more' });
  return { difference: by.lo > 0 ? `+${show(by)}` : show(by).replace(/^-/, '−') };
}

/** Better or worse where both ends move that way; undefined where it depends, or is not known on a side. */
function betterment(was: Quantity, now: Quantity): boolean | undefined {
  const better = now.better;
  const [a, b] = [was.figure, now.figure];
  if (!better || said(a) === unknownWord || said(b) === unknownWord) return undefined;
  const isLess = b.lo <= a.lo && b.hi <= a.hi;
  const isMore = b.lo >= a.lo && b.hi >= a.hi;
  if (isLess === isMore) return undefined;
  return (better === 'less') === isLess;
}

interface Stated {
  readonly key: string;
  readonly kind: string;
  readonly path: string;
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

/** The facts behind two figures that differ: of one place, else of one path, as where one part stands for another. */
function changedFacts(
  was: Figure | undefined,
  now: Figure | undefined,
  before: BuildSide,
  after: BuildSide,
): ChangedFact[] {
  const [old, anew] = [statedIn(was, before), statedIn(now, after)];
  const left = new Map([...old].filter(([key, { text }]) => anew.get(key)?.text !== text));
  const come = [...anew].filter(([key, { text }]) => old.get(key)?.text !== text).map(([, stated]) => stated);
  const changes: ChangedFact[] = [];
  for (const stated of come) {
    const other =
      left.get(stated.key) ?? [...left.values()].find(({ kind, path }) => kind === stated.kind && path === stated.path);
    if (other) left.delete(other.key);
    changes.push({ what: stated.path, ...(other ? { before: place(other) } : {}), after: place(stated) });
  }
  for (const stated of left.values()) changes.push({ what: stated.path, before: place(stated) });
  return changes.slice(0, mostFacts);
}

const place = ({ file, line, text }: Stated): NonNullable<ChangedFact['before']> => ({ file, line, text });

/** All that is stated behind a figure, each place once. */
function statedIn(of: Figure | undefined, { shown }: BuildSide): Map<string, Stated> {
  const stated = new Map<string, Stated>();
  const seen = new Set<Used>();
  const waiting: Used[] = of ? [of] : [];
  for (let used = waiting.pop(); used; used = waiting.pop()) {
    if (seen.has(used)) continue;
    seen.add(used);
    if (used.type === 'figure') waiting.push(...used.inputs, ...used.decidedBy);
    const from = used.type === 'figure' ? used.from : used.node && { ...used, span: used.node.span };
    if (from) stated.set(keyOf(from), statedAt(from, shown(from.doc)));
  }
  return stated;
}

const keyOf = ({ doc, path }: StatedAt): string => `${doc.name}\n${path}`;

function statedAt(from: StatedAt, file: string): Stated {
  const { doc, span, path } = from;
  return {
    key: keyOf(from),
    kind: doc.kind,
    path,
    file,
    line: doc.lines.positionAt(span.start).line + 1,
    text: shortValue(doc.text.slice(span.start, span.end)),
  };
}
