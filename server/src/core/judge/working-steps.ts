// The working of an answer: every figure and fact behind it, down to the lines and sources it came from.
import { formulaOf, type Figure } from '../figures/figure';
import { show, type Sentence } from '../figures/sentence';
import type { Used } from '../figures/truth';
import type { StatedAt } from '../parts/doc';
import { shownText, type Fact } from '../parts/fact';
import type { UnitName } from '../quantity';
import type { Finding } from './finding';

/** One step of a working: a figure, or a fact as its file states it. */
export interface Step {
  readonly label: string;
  /** As it reads in the finding’s sentence; `not known`, `not stated` where there is none. */
  readonly value: string;
  readonly formula?: string;
  readonly source?: string;
  readonly from?: StatedAt;
  readonly inputs: readonly Step[];
  /** Set where the same figure stood before; its inputs stand there. */
  readonly repeated?: true;
  /** The figure itself; undefined for a fact that is no figure. */
  readonly figure?: Figure;
}

/**
 * The working of a finding: the figures of its sentence first, as they read there; then whatever else the answer
 * rests on.
 */
export const workingOf = ({ said, uses }: Pick<Finding, 'said' | 'uses'>): readonly Step[] =>
  stepsOf([...said.figures, ...said.facts, ...uses], said);

/**
 * The working of figures and facts; those in a sentence read as they do there. What went into a figure stands below
 * it, once.
 */
export function stepsOf(used: readonly Used[], said?: Pick<Sentence, 'figures' | 'shown'>): readonly Step[] {
  const shown = new Map<Figure, string>();
  const unitOf = new Map<string, UnitName>();
  said?.figures.forEach((one, i) => {
    shown.set(one, said.shown[i]!);
    if (one.unit && !unitOf.has(one.dimension)) unitOf.set(one.dimension, one.unit);
  });
  const told: Printed = { shown, unitOf, met: new Set(), leaves: new Set() };
  const all = new Set(used);
  const roots = new Set([...all].slice(0, mostShown));
  const rest = all.size - roots.size;
  const steps = [...roots]
    .filter((one) => !isWithin(one, roots))
    .map((one) => (one.type === 'fact' ? factStep(one) : figureStep(one, told)))
    .filter((step) => step.inputs.length > 0 || isNew(step, told));
  return rest === 0 ? steps : [...steps, { label: `${rest} more values`, value: 'not shown', inputs: [] }];
}

/** So many values are shown of one answer; a board of hundreds of slots brings one or more for each. */
const mostShown = 150;

/** What has been said so far, and how numbers of one dimension read. */
interface Printed {
  readonly shown: ReadonlyMap<Figure, string>;
  readonly unitOf: ReadonlyMap<string, UnitName>;
  readonly met: Set<Figure>;
  readonly leaves: Set<string>;
}

function isNew({ label, value, from }: Step, { leaves }: Printed): boolean {
  const key = `${label}\n${value}\n${from?.doc.name ?? ''}\n${from?.span.start ?? ''}`;
  return !leaves.has(key) && leaves.add(key) !== undefined;
}

/** A fact that a figure among the roots was read from says nothing new. */
function isWithin(used: Used, roots: ReadonlySet<Used>): boolean {
  if (used.type !== 'fact' || !used.node) return false;
  return [...roots].some(
    (root) =>
      root.type === 'figure' &&
      root.from?.doc === used.doc &&
      root.from.span.start === used.node!.span.start &&
      show(root) === used.text,
  );
}

function figureStep(one: Figure, told: Printed): Step {
  const { met, shown, unitOf } = told;
  const repeated = one.inputs.length + one.decidedBy.length > 0 && met.has(one);
  met.add(one);
  const lack = one.inputs.length === 0 && one.missing.length > 0 ? one.missing[0]! : undefined;
  return {
    label: one.label,
    value: shown.get(one) ?? show(one, unitOf.get(one.dimension) ?? one.unit),
    figure: one,
    formula: formulaOf(one),
    ...(one.source ? { source: one.source } : {}),
    ...(one.from ? { from: one.from } : {}),
    ...(lack ? { source: `not stated: ${lack.what}` } : {}),
    ...(repeated ? { repeated } : {}),
    inputs: repeated ? [] : [...one.inputs.map((input) => figureStep(input, told)), ...one.decidedBy.map(factStep)],
  };
}

function factStep(fact: Fact<unknown>): Step {
  const stated = fact.node !== undefined;
  return {
    label: fact.path,
    value: stated ? shownText(fact) || '(empty)' : 'not stated',
    inputs: [],
    ...(stated ? { from: { doc: fact.doc, span: fact.node!.span, path: fact.path } } : {}),
  };
}
