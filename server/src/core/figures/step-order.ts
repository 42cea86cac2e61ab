// The stated steps against the rules of order: which stand before what they need.
import type { Build, Placed } from '../build/build';
import type { StepKind } from '../trade/steps';
import { ORDER_RULES, type OrderRule, type Strength } from '../trade/work-order';
import { statedSteps, type Step } from './steps';
import { binds } from './work-order';
import { lacking, not, sure, type Truth } from './truth';

/** All steps of one kind done to one part: a step may be done again. */
export interface StepGroup { readonly kind: StepKind; readonly part?: Placed; readonly steps: readonly [Step, ...Step[]] }

/** A step that stands wholly before one that has to come first. */
export interface Fault { readonly later: StepGroup; readonly because: string; /** Whether the rule binds this build. */ readonly binds: Truth }

/** A step, with those that stand before it though they need it. */
export interface Ordered { readonly group: StepGroup; readonly faults: readonly Fault[]; /** Whether it stands where it has to. */ readonly truth: Truth }

const rulesBefore = new Map<StepKind, OrderRule[]>();
for (const rule of ORDER_RULES) rulesBefore.set(rule.before, [...(rulesBefore.get(rule.before) ?? []), rule]);

/** The stated steps, those that are the same step done again together. */
export function stepGroups(build: Build): readonly StepGroup[] {
  const groups = new Map<string, { kind: StepKind; part?: Placed; steps: [Step, ...Step[]] }>();
  for (const step of statedSteps(build)) {
    if (step.kind === undefined) continue;
    const group = groups.get(step.label);
    if (group) group.steps.push(step);
    else groups.set(step.label, { kind: step.kind, steps: [step], ...(step.part ? { part: step.part } : {}) });
  }
  return [...groups.values()];
}

/** Each stated step against the rules of a strength, and for `needed` against the build’s own `after:`. */
export function ordered(build: Build, strength: Strength): readonly Ordered[] {
  const groups = stepGroups(build);
  return groups.map((group) => {
    const faults = [...ruleFaults(build, groups, group, strength), ...(strength === 'needed' ? ownFaults(groups, group) : [])];
    return { group, faults, truth: truthOf(faults) };
  });
}

function ruleFaults(build: Build, groups: readonly StepGroup[], group: StepGroup, strength: Strength): Fault[] {
  const rules = (rulesBefore.get(group.kind) ?? []).filter((rule) => rule.strength === strength);
  return rules.flatMap((rule) => groups.filter((later) => later.kind === rule.after && standsBefore(later, group)).map((later): Fault =>
    ({ later, because: rule.because, binds: binds(build, rule.when, group.part, later.part) })));
}

const standsBefore = (one: StepGroup, other: StepGroup): boolean => one.steps.at(-1)!.index < other.steps[0].index;

/** Steps whose own `after:` names this one, and that stand before it. */
function ownFaults(groups: readonly StepGroup[], group: StepGroup): Fault[] {
  return groups.filter((later) => standsBefore(later, group) && later.steps.some((step) => step.group.after.value?.some((name) => name.value === group.kind)))
    .map((later) => ({ later, because: 'its `after:` says so', binds: sure(true) }));
}

function truthOf(faults: readonly Fault[]): Truth {
  if (faults.some((fault) => fault.binds.is === true)) return sure(false, ...faults.flatMap((fault) => fault.binds.uses));
  const open = faults.filter((fault) => fault.binds.is === undefined);
  if (open.length === 0) return sure(true);
  return open.length === 1 ? not(open[0]!.binds) : lacking(open.flatMap((fault) => fault.binds.missing));
}

/** The faults that are certain, by where the later step stands. */
export const certain = (faults: readonly Fault[]): readonly Fault[] =>
  faults.filter((fault) => fault.binds.is === true).sort((a, b) => a.later.steps[0].index - b.later.steps[0].index);
