// Answers that are left open, over workspaces with facts taken away; and what putting the facts in that they name does.
import { pathOf } from '../../../server/src/core/build/field-at';
import { checks } from '../../../server/src/core/checks/all';
import type { Check } from '../../../server/src/core/checks/check';
import type { Outcome } from '../../../server/src/core/checks/kit';
import type { Missing } from '../../../server/src/core/figures/figure';
import { eachOnce } from '../../../server/src/core/figures/missing-facts';
import type { Gap } from '../../../server/src/core/parts/fact';
import type { Tree } from './fact-trees';
import { Values, type Chance, type Seen } from './fact-values';
import type { Place, Workspace } from './fact-workspace';

/** An answer that is left open, and the facts that it names. */
export interface Case {
  readonly workspace: Workspace;
  /** What was taken away, in words. */
  readonly without: string;
  readonly check: Check;
  readonly key: string;
  readonly subjects: ReadonlySet<string>;
  readonly missing: readonly Missing[];
}

const ofBuilds = checks.filter(({ on }) => on === 'build');

export function casesOf(workspace: Workspace, without: string): Case[] {
  const answers = workspace.ask(ofBuilds);
  const subjects = new Set(answers.keys());
  return [...answers]
    .filter(([, { truth }]) => truth.is === undefined)
    .map(([key, { truth }]) => ({
      workspace,
      without,
      check: ofBuilds.find(({ id }) => key.startsWith(`${id} at `))!,
      key,
      subjects,
      missing: eachOnce(truth.missing),
    }));
}

export const known = ({ workspace, key, missing }: Case): string =>
  [workspace.name, key, ...missing.map(({ doc, path }) => `${doc.name} ${path}`).sort()].join('\n');

export interface Verdict {
  readonly is: 'holds' | 'broken' | 'unknown' | 'gone';
  readonly missing: readonly string[];
}

/** How an answer turns out; where its subject is gone, what else is asked by now. */
export function verdictOf({ check, key, subjects }: Case, workspace: Workspace): Verdict {
  const answers = workspace.ask([check]);
  const own = answers.get(key);
  const others = [...answers].filter(([one]) => !subjects.has(one)).map(([, outcome]) => outcome);
  const asked: readonly Outcome[] = own ? [own] : others;
  const missing = asked.flatMap(({ truth }) => truth.missing.map(({ path }) => path));
  const is = (value: boolean | undefined): boolean => asked.some(({ truth }) => truth.is === value);
  if (asked.length === 0) return { is: 'gone', missing };
  return { is: is(false) ? 'broken' : is(undefined) ? 'unknown' : 'holds', missing };
}

/** Where a missing fact belongs: below the map that stands nearest to it, or in the value that does not tell it. */
function placeOf({ doc, path, fact }: Missing): Place {
  if (!fact) return { file: doc.name, path: path.split('.') };
  const keys: string[] = fact.path === path ? [] : [path.slice(fact.path.length + 1)];
  const own = fact.node && pathOf(doc, fact.node);
  if (own) return { file: doc.name, path: [...own, ...keys] };
  keys.unshift(fact.key);
  let gap: Gap | undefined = fact.holder ? { map: fact.holder } : fact.gap;
  for (; gap && !gap.map; gap = gap.parent) if (gap.key !== undefined) keys.unshift(gap.key);
  const holder = gap?.map ? pathOf(doc, gap.map) : [];
  if (!holder) throw new Error(`no place for ${path}`);
  return { file: doc.name, path: [...holder, ...keys] };
}

export interface Slot {
  readonly place: Place;
  readonly values: readonly Tree[];
}

export function slotsOf({ workspace, missing }: Case, seen: Seen, chance: Chance): readonly Slot[] {
  const values = new Values(workspace.build, seen, chance);
  return missing.map((lack) => {
    const place = placeOf(lack);
    const field = workspace.fieldAt(place);
    return {
      place,
      values: field ? values.of(field, keyOf(place, lack.fact !== undefined && lack.fact.path !== lack.path)) : [],
    };
  });
}

export interface Trial {
  readonly verdicts: ReadonlySet<string>;
  /** Facts that changed the answer by themselves, once the others were put in. */
  readonly needed: ReadonlySet<number>;
  /** What was still missing with all named facts put in. */
  readonly more: ReadonlySet<string>;
  readonly tries: number;
}

/** Where some fact has turned nothing yet, so many times as much is tried. */
const patience = 4;

/** Puts the named facts in, at the ends of what they may be and at others. */
export function tried(one: Case, slots: readonly Slot[], chance: Chance, most: number): Trial {
  const verdicts = new Map<string, readonly number[]>();
  const needed = new Set<number>();
  const more = new Set<string>();
  let tries = 0;
  const own = one.missing.map(({ path }) => path);
  const answer = (picks: readonly number[]): string => {
    tries++;
    const { is, missing } = verdictOf(
      one,
      one.workspace.withAll(slots.map(({ place, values }, i) => [place, values[picks[i]!]!] as const)),
    );
    // What names a fact that was put in, or one in it, had a value that does not tell.
    const others = missing.filter(
      (path) => !own.some((named) => path === named || path.startsWith(`${named}.`) || path.startsWith(`${named}[`)),
    );
    if (is === 'unknown' && missing.length > 0 && others.length === 0) return 'untold';
    if (is === 'unknown') more.add([...new Set(others)].join(', ') || 'a range');
    if (!verdicts.has(is)) verdicts.set(is, picks);
    return is;
  };
  const turns = (a: string, b: string): boolean => a !== b && a !== 'untold' && b !== 'untold';
  // One fact after the other from this assignment to that: where the answer turns, the fact at hand matters.
  const walk = (from: readonly number[], to: readonly number[]): void => {
    let picks = [...from];
    let was = answer(picks);
    for (const i of shuffled(
      slots.map((_, at) => at),
      chance,
    )) {
      if (picks[i] === to[i]) continue;
      picks = picks.with(i, to[i]!);
      const is = answer(picks);
      if (turns(was, is)) needed.add(i);
      was = is;
    }
  };
  if (slots.length === 1) {
    for (const i of chance.some([...slots[0]!.values.keys()], most)) answer([i]);
    if (verdicts.size > 1) needed.add(0);
    return { verdicts: new Set(verdicts.keys()), needed, more, tries };
  }
  const random = (): number[] =>
    slots.map(({ values }) => chance.below(chance.below(3) > 0 ? Math.min(2, values.length) : values.length));
  // From where all stand at one end, one after the other goes to the other.
  for (const end of [0, 1])
    for (const i of slots.keys()) {
      const base = slots.map(({ values }) => Math.min(end, values.length - 1));
      if (tries < most && !needed.has(i)) walk(base, base.with(i, Math.min(1 - end, slots[i]!.values.length - 1)));
    }
  while (tries < most * patience && needed.size < slots.length) {
    walk(random(), random());
    const idle = slots.findIndex((_, i) => !needed.has(i));
    if (idle < 0) break;
    const base = random();
    const is = new Set(
      chance
        .some([...slots[idle]!.values.keys()], 8)
        .map((value) => answer(base.with(idle, value)))
        .filter((one) => one !== 'untold'),
    );
    if (is.size > 1) needed.add(idle);
  }
  return { verdicts: new Set(verdicts.keys()), needed, more, tries };
}

function shuffled<T>(all: readonly T[], chance: Chance): T[] {
  const left = [...all];
  return all.map(() => left.splice(chance.below(left.length), 1)[0]!);
}

/** The key under which such values are seen elsewhere; of a name, that of the map it stands in. */
function keyOf({ path }: Place, isNamed: boolean): string {
  const last = path.at(-1);
  return typeof last === 'number' ? `${path.at(-2)}[]` : isNamed ? `${path.at(-2)}.*` : String(last);
}

/**
 * Facts that are stated nowhere and that the answer does not name, though one of them alone decides it. So many are
 * drawn and tried at a few values each.
 */
export function strangersOf(one: Case, seen: Seen, chance: Chance, many: number): readonly string[] {
  const { workspace, missing } = one;
  const { build } = workspace;
  const values = new Values(build, seen, chance);
  const files = [build.doc.name, ...[...build.dependsOn].map((name) => `parts/${name}.part.yaml`)];
  const absent = files.flatMap((file) => workspace.absentIn(file).map((place) => ({ place, file })));
  return chance
    .some(absent, many)
    .filter(({ place, file }) => {
      const path = place.path.join('.');
      const isNamed = missing.some((lack) =>
        lack.doc.name === file
          ? isWithin(lack.path, path)
          : file === build.doc.name && isWithin(lack.path, ofPart(path)),
      );
      if (isNamed) return false;
      const some = chance.some(values.of(workspace.fieldAt(place)!, String(place.path.at(-1))), 3);
      return some.some((value) => verdictOf(one, workspace.with(place, value)).is !== 'unknown');
    })
    .map(({ place, file }) => `${file}:${place.path.join('.')}`);
}

/** Whether one path is the other, or lies above or below it; a fact that the build spells out is the part’s. */
const isWithin = (named: string, path: string): boolean => {
  const plain = named.replace(/\[(\d+)\]/g, '.$1');
  return plain === path || plain.startsWith(`${path}.`) || path.startsWith(`${plain}.`);
};

/** The path of a fact below its part, where the build spells it out. */
const ofPart = (path: string): string => path.replace(/^parts\.\w+\.(?:\d+\.)?/, '');
