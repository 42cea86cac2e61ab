// The stated steps against the rules of order: which stand before what they need.
import type { Build, Placed } from '../build/build';
import type { StepKind } from '../trade/steps';
import { ORDER_RULES, type OrderRule, type Strength } from '../trade/work-order';
import type { Fact } from '../parts/fact';
import { memo, memoOf } from './memo';
import { statedSteps, type Step } from './steps';
import { binds } from './asked-steps';
import { given, lacking, not, sure, type Truth } from './truth';

/** All steps of one kind done to one part: a step may be done again. */
export interface StepGroup {
  readonly kind: StepKind;
  readonly part?: Placed;
  readonly steps: readonly [Step, ...Step[]];
}

/** A step that stands wholly before one that has to come first. */
export interface Fault {
  readonly later: StepGroup;
  readonly because: string;
  /** Whether the rule binds this build. */
  readonly binds: Truth;
  readonly hurts: boolean;
}

/** A step, with those that stand before it though they need it. */
export interface Ordered {
  readonly group: StepGroup;
  readonly faults: readonly Fault[];
  /** Whether it stands where it has to. */
  readonly truth: Truth;
}

const rulesBefore: Readonly<Record<Strength, Map<StepKind, OrderRule[]>>> = {
  needed: new Map(),
  reach: new Map(),
  usual: new Map(),
};
for (const rule of ORDER_RULES) {
  const of = rulesBefore[rule.strength];
  const listed = of.get(rule.before);
  if (listed) listed.push(rule);
  else of.set(rule.before, [rule]);
}

/** The stated steps, those that are the same step done again together. */
export const stepGroups = memo((build: Build): readonly StepGroup[] => {
  const groups = new Map<string, { kind: StepKind; part?: Placed; steps: [Step, ...Step[]] }>();
  for (const step of statedSteps(build)) {
    if (step.kind === undefined) continue;
    const group = groups.get(step.label);
    if (group) group.steps.push(step);
    else groups.set(step.label, { kind: step.kind, steps: [step], ...(step.part ? { part: step.part } : {}) });
  }
  return [...groups.values()];
});

/** The groups of each kind. */
const groupsOfKind = memo((build: Build): ReadonlyMap<StepKind, readonly StepGroup[]> => {
  const by = new Map<StepKind, StepGroup[]>();
  for (const group of stepGroups(build)) {
    const same = by.get(group.kind);
    if (same) same.push(group);
    else by.set(group.kind, [group]);
  }
  return by;
});

/**
 * The stated steps that come after something that needs them, by the rules of a strength, and for `needed` by the
 * build’s own `after:`.
 */
export const ordered = memoOf((build: Build, strength: Strength): readonly Ordered[] => {
  const groups = stepGroups(build);
  const own = strength === 'needed' && groups.some((group) => group.steps.some((step) => step.group.after.node));
  return groups.flatMap((group) => {
    const faults = [...ruleFaults(build, group, strength), ...(own ? ownFaults(groups, group) : [])];
    return faults.length === 0 ? [] : [{ group, faults, truth: truthOf(faults) }];
  });
});

function ruleFaults(build: Build, group: StepGroup, strength: Strength): Fault[] {
  const byKind = groupsOfKind(build);
  const faults: Fault[] = [];
  for (const rule of rulesBefore[strength].get(group.kind) ?? []) {
    for (const later of byKind.get(rule.after) ?? []) {
      if (standsBefore(later, group) && !served(byKind, rule.or, later)) {
        const bound = given(
          binds(build, rule.when, group.part, later.part),
          ...whichParts(group),
          ...whichParts(later),
        );
        faults.push({ later, because: rule.because, binds: bound, hurts: rule.hurts === true });
      }
    }
  }
  return faults;
}

/** What says to which part steps are done. */
const whichParts = ({ steps }: StepGroup): readonly (Fact<unknown> | undefined)[] => [
  steps[0].group.part,
  steps[0].partBy,
];

/** Whether the step that serves as well stands before. */
function served(
  byKind: ReadonlyMap<StepKind, readonly StepGroup[]>,
  or: StepKind | undefined,
  later: StepGroup,
): boolean {
  return (
    or !== undefined && (byKind.get(or)?.some((group) => group.steps[0].index < later.steps.at(-1)!.index) ?? false)
  );
}

const standsBefore = (one: StepGroup, other: StepGroup): boolean => one.steps.at(-1)!.index < other.steps[0].index;

/** Steps whose own `after:` names this one, and that stand before it. */
function ownFaults(groups: readonly StepGroup[], group: StepGroup): Fault[] {
  return groups
    .filter(
      (later) =>
        standsBefore(later, group) &&
        !contradicts(group.kind, later.kind) &&
        later.steps.some((step) => step.group.after.value?.some((name) => name.value === group.kind)),
    )
    .map((later) => ({ later, because: 'its `after:` says so', binds: sure(true), hurts: false }));
}

/** Whether an `after:` asks for what a rule forbids: that is a circle, and no matter of order. */
const contradicts = (before: StepKind, after: StepKind): boolean =>
  rulesBefore.needed.get(after)?.some((rule) => rule.after === before && rule.when === undefined) ?? false;

function truthOf(faults: readonly Fault[]): Truth {
  if (faults.some((fault) => fault.binds.is === true))
    return sure(false, ...faults.flatMap((fault) => fault.binds.uses));
  const open = faults.filter((fault) => fault.binds.is === undefined);
  if (open.length === 0) return sure(true);
  return open.length === 1 ? not(open[0]!.binds) : lacking(open.flatMap((fault) => fault.binds.missing));
}

/** The faults that are certain, by where the later step stands. */
export const certain = (faults: readonly Fault[]): readonly Fault[] =>
  faults.filter((fault) => fault.binds.is === true).sort((a, b) => a.later.steps[0].index - b.later.steps[0].index);

/** Whether a step may stand at another place without coming to stand against a rule that its order keeps now. */
export function mayMove(build: Build, step: Step, to: number): boolean {
  const now = statedSteps(build);
  const rest = now.filter((one) => one !== step);
  const at = rest.findIndex((one) => one.index >= to);
  const then = at < 0 ? [...rest, step] : [...rest.slice(0, at), step, ...rest.slice(at)];
  return ORDER_RULES.every(
    (rule) =>
      (rule.before !== step.kind && rule.after !== step.kind) ||
      eachTime.has(rule.before) ||
      keeps(then, rule) ||
      !keeps(now, rule) ||
      binds(build, rule.when).is === false,
  );
}

/** Done each time hands go in: where they have to stand is judged from one time with power to the next. */
const eachTime: ReadonlySet<StepKind> = new Set(['unplug mains', 'drain residual charge', 'equalise', 'wear strap']);

/** Whether steps in this order have a rule's earlier step before the last of its later ones. */
function keeps(row: readonly Step[], rule: OrderRule): boolean {
  const first = row.findIndex(({ kind }) => kind === rule.before);
  const last = row.findLastIndex(({ kind }) => kind === rule.after);
  return first < 0 || last < 0 || first < last;
}
