// How well each choice would serve a build in one place: tried by the checks, ranked, and told in a few words.
import type { Placed } from '../core/build/build';
import { referentsOf } from '../core/build/references';
import { costOf, promisedCurrency } from '../core/figures/cost';
import { derive, isExact, type Figure } from '../core/figures/figure';
import { amountPast, excessOf, type Measure } from '../core/figures/measure';
import { takenPlaces } from '../core/figures/places';
import { partDraw } from '../core/figures/power';
import { show } from '../core/figures/sentence';
import { compareRows, type Finding } from '../core/judge/finding';
import { tryParts, tryPlaces, type Trial } from '../core/judge/trials';
import { roles, type Role } from '../core/manifest/places';
import type { Doc } from '../core/parts/doc';
import type { Field } from '../core/parts/field';
import type { CurrencyCode } from '../core/quantity';
import type { Language } from '../core/words/language';
import type { Span } from '../core/text';
import type { View } from './shapes';

/** What is tried where, for whoever types there. */
export interface Place {
  readonly placed: Placed;
  /** `use`, or the key of the place that is named. */
  readonly key: string;
  /** The text that a choice would replace. */
  readonly replaces: Span;
  /** What is typed of it so far. */
  readonly typed: string;
}

/** A choice as it is offered. */
export interface Fit {
  readonly name: string;
  /** What speaks against it, or what it would change; empty where nothing was tried. */
  readonly words: string;
  readonly isAgainst: boolean;
}

/** What is kept of a trial. */
interface Kept {
  readonly name: string;
  readonly against?: Finding;
  readonly brings: readonly Finding[];
  readonly unstated: Finding | undefined;
  readonly price: Figure | undefined;
  readonly watts: Figure | undefined;
  readonly nearest: Measure | undefined;
}

/** Everything that trials rest on but the text that is being typed. */
interface Ground {
  readonly around: string;
  readonly key: string;
  readonly files: readonly unknown[];
}

/** Places of a build whose trials are kept: the one that is typed in, and those just left. */
const mostKept = 4;

/** What one trial counts at least, as a share of a whole one: the build is put together for each. */
const leastSpent = 0.1;

/** Ranks choices, and keeps what was tried while a name is typed; it belongs to a session. */
export class Fits {
  private readonly grounds: { readonly ground: Ground; readonly tried: Map<string, Kept> }[] = [];

  /**
   * Choices in the order of how well they would serve. More are tried, those that match what is typed first, for as
   * many checks as so many whole trials ask: what is soon given up counts little. `isWhole` once all were tried.
   */
  ranked(
    view: View,
    place: Place,
    names: readonly string[],
    docs: readonly Doc[],
    most: number,
    language: Language,
  ): { readonly fits: readonly Fit[]; readonly isWhole: boolean } {
    const tried = this.triedAt(groundOf(view, place, docs));
    const wanted = new Set([...names.filter((name) => name.startsWith(place.typed)), ...names]);
    const left = [...wanted].filter((name) => !tried.has(name));
    let spent = 0;
    for (const trial of trials(view, place, left)) {
      tried.set(trial.name, keptOf(view, trial));
      spent += Math.max(trial.asked, leastSpent);
      if (spent >= most) break;
    }
    const known = names.flatMap((name) => tried.get(name) ?? []);
    const taken = takenBy(view, place);
    const tier = ({ name, against }: Kept): number => (taken.has(name) ? 1 : 0) + (against ? 2 : 0);
    const [free, used, ...others] = [0, 1, 3, 2].map((wished) => known.filter((one) => tier(one) === wished));
    const told = teller(view, place, taken, known, language);
    const untried = names.filter((name) => !tried.has(name)).map((name) => ({ name, words: '', isAgainst: false }));
    return {
      fits: [...inOrder(free!).map(told), ...untried, ...inOrder(used!).map(told), ...others.flat().map(told)],
      isWhole: untried.length === 0,
    };
  }

  private triedAt(ground: Ground): Map<string, Kept> {
    const at = this.grounds.findIndex((one) => isSame(one.ground, ground));
    const found = at < 0 ? { ground, tried: new Map<string, Kept>() } : this.grounds.splice(at, 1)[0]!;
    this.grounds.unshift(found);
    this.grounds.length = Math.min(this.grounds.length, mostKept);
    return found.tried;
  }
}

function groundOf({ doc, build }: View, { placed, key, replaces }: Place, docs: readonly Doc[]): Ground {
  const others = build!.all().map((one) => (key === 'use' && one.path === placed.path ? undefined : one.used?.file));
  return {
    around: `${doc.text.slice(0, replaces.start)}\0${doc.text.slice(replaces.end)}`,
    key: `${doc.name}\n${placed.path}\n${key}`,
    files: [build!.house, build!.today, ...others, ...docs],
  };
}

const isSame = (a: Ground, b: Ground): boolean =>
  a.key === b.key &&
  a.around === b.around &&
  a.files.length === b.files.length &&
  a.files.every((file, i) => file === b.files[i]);

const trials = ({ build, judgement }: View, { placed, key }: Place, names: readonly string[]): Iterable<Trial> =>
  names.length === 0
    ? []
    : key === 'use'
      ? tryParts(build!, judgement, placed, names)
      : tryPlaces(build!, judgement, placed, key, names);

function keptOf(view: View, { name, placed, build, against, brings, nearest }: Trial): Kept {
  return {
    name,
    ...(against ? { against } : {}),
    brings,
    unstated: brings.find((one) => isOpen(one, placed)),
    price: priceOf(view, placed),
    watts: partDraw(build, placed),
    nearest,
  };
}

/** In the currency of the cost promised, else in its own. */
function priceOf({ build }: View, placed: Placed): Figure | undefined {
  const currency = promisedCurrency(build!) ?? (placed.part.price.value?.currency as CurrencyCode | undefined);
  return currency === undefined ? undefined : costOf(placed, currency);
}

/** What falls short for certain, then what could, then what is only worth knowing; of alike ones the cheaper. */
function inOrder(good: readonly Kept[]): Kept[] {
  const rows = new Map(good.map((one) => [one, rowOf(one)]));
  return [...good].sort((a, b) => compareRows(rows.get(a)!, rows.get(b)!));
}

function rowOf({ brings, price }: Kept): number[] {
  const heavy = brings.filter(({ atWorst }) => atWorst !== 'note' && atWorst !== 'unknown');
  const open = heavy.filter(({ grade }) => grade === 'unknown').length;
  return [
    heavy.length - open,
    open,
    brings.length - heavy.length,
    price && isExact(price) ? price.lo : Number.MAX_VALUE,
  ];
}

/** Keys of places that hold one thing; a fan place or a bay may hold several. */
const single: ReadonlySet<string> = new Set(['slot', 'port', 'header', 'pump-header', 'light-header']);

/** The other part that has a place already, by the place’s name. */
function takenBy({ build }: View, { placed, key }: Place): ReadonlyMap<string, string> {
  if (!single.has(key)) return new Map();
  const [own] = referentsOf((roles[placed.role] as Role).fields[key] as Field);
  const others = takenPlaces(build!).filter((one) => one.kind === own && one.placed.path !== placed.path);
  return new Map(others.map(({ name, placed: { label } }) => [name, label]));
}

/** What stands there now, to compare with; nothing where that is not known. */
function currentOf(view: View, { placed, key }: Place): Partial<Pick<Kept, 'name' | 'price' | 'watts'>> {
  if (key !== 'use' || !placed.used?.file) return {};
  return { name: placed.used.name, price: priceOf(view, placed), watts: partDraw(view.build!, placed) };
}

/** Puts what was found of a choice into words; what all choices bring alike is not told of each. */
function teller(
  view: View,
  place: Place,
  taken: ReadonlyMap<string, string>,
  all: readonly Kept[],
  language: Language,
): (of: Kept) => Fit {
  const now = currentOf(view, place);
  const { kind } = place.placed;
  const judged = all.filter(({ against }) => !against);
  const isTold = ({ id, grade }: Finding): boolean =>
    judged.length === 1 || judged.some(({ brings }) => !brings.some((one) => one.id === id && one.grade === grade));
  return ({ name, against, brings, unstated, price, watts, nearest }) => {
    const by = taken.get(name);
    if (by !== undefined) return { name, words: language.words`taken by ${by}`, isAgainst: against !== undefined };
    if (against) return { name, words: reasonOf(against, kind, language), isAgainst: true };
    const shorts = brings.filter((one) => one.grade === 'shortfall' && isTold(one));
    const short = shorts.find(({ measure }) => measure) ?? shorts[0];
    const open = brings.find((one) => one === unstated && isTold(one));
    const isNow = name === now.name;
    const words = [
      ...(place.key === 'use' ? [changed(now.price, price, isNow), changed(now.watts, watts, isNow)] : []),
      short
        ? reasonOf(short, kind, language)
        : open
          ? language.words`not decided: ${reasonOf(open, kind, language)}`
          : leftOf(place, nearest, language),
    ];
    return { name, words: words.filter((word) => word !== undefined).join(', '), isAgainst: false };
  };
}

/** It may come to harm or stop: a fact is missing in the part’s own file that would tell. */
const isOpen = ({ grade, atWorst, missing }: Finding, { used }: Placed): boolean =>
  grade === 'unknown' && (atWorst === 'harm' || atWorst === 'stop') && missing.some(({ doc }) => doc === used?.file);

/** What another part in a place changes of price and power; empty where that is not known. */
export function changedBy(view: View, placed: Placed, name: string): string {
  const build = view.build!.withPart(placed, name);
  const there = build.inPlaceOf(placed);
  if (!there) return '';
  const words = [
    changed(priceOf(view, placed), priceOf(view, there), false),
    changed(partDraw(view.build!, placed), partDraw(build, there), false),
  ];
  return words.filter((word) => word !== undefined).join(', ');
}

/** How a number changes, or what it is where it takes the place of nothing known. */
function changed(before: Figure | undefined, after: Figure | undefined, isNow: boolean): string | undefined {
  if (!after || !isExact(after) || after.lo === 0) return undefined;
  if (isNow || !before || !isExact(before) || before.currency !== after.currency) return show(after);
  const { lo } = derive('', after.dimension, [after, before], '', (a, b) => a - b);
  if (lo === 0) return undefined;
  const size = { ...after, lo: Math.abs(lo), hi: Math.abs(lo) };
  return `${lo > 0 ? '+' : '−'}${show(size)}`;
}

/**
 * `14 mm too tall`; the thing that a check’s name begins with is left out where it is the part itself. Ids are no words
 * in other languages: there they stand whole.
 */
function reasonOf({ id, measure }: Finding, kind: string, language: Language): string {
  const words = id.replace(/^m2-/, 'M.2-').split('-');
  const own = words[0] === kind ? words.slice(1) : words;
  const amount = measure && amountOf(excessOf(measure), amountPast(measure));
  if (language.tag !== 'en') return amount ? language.words`${id} by ${amount}` : id;
  const at = own.indexOf('too');
  if (!amount) return own.join(' ');
  return at < 0 ? `${own.join(' ')} by ${amount}` : [...own.slice(0, at), amount, ...own.slice(at)].join(' ');
}

const amountOf = (excess: Figure, past: number): string | undefined =>
  Number.isFinite(past) && past > 0 ? show(excess, excess.unit, 3) : undefined;

function leftOf({ key }: Place, measure: Measure | undefined, language: Language): string | undefined {
  if (key !== 'use' || !measure) return undefined;
  const left = -amountPast(measure);
  const unit = measure.limit.unit ?? measure.figure.unit;
  return language.words`${show({ ...excessOf(measure), lo: left, hi: left }, unit, 3)} to spare`;
}
