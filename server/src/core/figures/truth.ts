// Three-valued truth: true, false, or undecided with the facts that are missing or the value at which it turns.
import type { Fact } from '../parts/fact';
import { uniqueMissing } from './missing-facts';
import { missing, type Figure, type Missing } from './figure';
import { pick, reversed, type Measure } from './measure';
import { sentence, type Sentence } from './sentence';

export type Used = Figure | Fact<unknown>;

export interface Truth {
  readonly is: boolean | undefined;
  /** Facts that would decide it; empty when decided, or when a range is all that leaves it open. */
  readonly missing: readonly Missing[];
  /** For a range that straddles the limit: when it would hold, in words. */
  readonly breakEven?: Sentence;
  /** What went into the answer. */
  readonly uses: readonly Used[];
  /** The numbers that decided it: by how much it is broken where it is. */
  readonly measure: Measure | undefined;
}

const none: readonly Missing[] = [];

/** Every truth is made here: one shape is read quickest. */
const truth = (
  is: Truth['is'],
  missingFacts: readonly Missing[],
  uses: readonly Used[],
  measure?: Measure,
  breakEven?: Sentence,
): Truth => ({
  is,
  missing: missingFacts,
  breakEven,
  uses,
  measure,
});

/**
 * The same truth, with facts that decide whether it is asked at all, or in which way. What is not stated decides
 * nothing.
 */
export function given(
  { is, missing: missingFacts, uses, measure, breakEven }: Truth,
  ...facts: readonly (Fact<unknown> | undefined)[]
): Truth {
  const stated = facts.filter((fact): fact is Fact<unknown> => fact?.node !== undefined);
  return truth(is, missingFacts, [...uses, ...stated], measure, breakEven);
}

export const sure = (is: boolean, ...uses: Used[]): Truth => truth(is, none, uses);

/** Cannot be said, because these facts are missing. */
export const lacking = (missingFacts: readonly Missing[], ...uses: Used[]): Truth =>
  truth(undefined, missingFacts, uses);

/** Whether `a` is at most `limit`. */
export function atMost(a: Figure, limit: Figure): Truth {
  return compare(
    { figure: a, limit, worse: 'more' },
    a.hi <= limit.lo,
    a.lo > limit.hi,
    () => sentence`Holds if ${a.label} is at most ${limit}; it is ${a}.`,
  );
}

/** Whether `a` is less than `limit`. */
export function lessThan(a: Figure, limit: Figure): Truth {
  return compare(
    { figure: a, limit, worse: 'more' },
    a.hi < limit.lo,
    a.lo >= limit.hi,
    () => sentence`Holds if ${a.label} is less than ${limit}; it is ${a}.`,
  );
}

/** Whether `a` is at least `limit`. */
export function atLeast(a: Figure, limit: Figure): Truth {
  return compare(
    { figure: a, limit, worse: 'less' },
    a.lo >= limit.hi,
    a.hi < limit.lo,
    () => sentence`Holds if ${a.label} is at least ${limit}; it is ${a}.`,
  );
}

function compare(measure: Measure, holds: boolean, fails: boolean, breakEven: () => Sentence): Truth {
  const uses = [measure.figure, measure.limit];
  if (holds || fails) return truth(holds, none, uses, measure);
  const missingFacts = uniqueMissing(uses);
  return truth(undefined, missingFacts, uses, measure, missingFacts.length === 0 ? breakEven() : undefined);
}

/** Whether a fact has a value for which `test` answers true; undecided when it is not stated. */
export function fits<T>(fact: Fact<T>, what: string, test: (value: T) => boolean): Truth {
  return fact.value === undefined ? lacking([missing(fact, what)], fact) : sure(test(fact.value), fact);
}

/** Whether two stated values pass `test`; undecided when either is not stated. */
export function agree<A, B>(
  a: Fact<A>,
  aWhat: string,
  b: Fact<B>,
  bWhat: string,
  test: (a: A, b: B) => boolean,
): Truth {
  if (a.value !== undefined && b.value !== undefined) return sure(test(a.value, b.value), a, b);
  return lacking(
    [...(a.value === undefined ? [missing(a, aWhat)] : []), ...(b.value === undefined ? [missing(b, bWhat)] : [])],
    a,
    b,
  );
}

/** True when all are; false as soon as one is; undecided else. */
export function all(...truths: readonly Truth[]): Truth {
  return combine(truths, false);
}

/** True as soon as one is; false when all are; undecided else. */
export function any(...truths: readonly Truth[]): Truth {
  return combine(truths, true);
}

export function not({ is, missing: missingFacts, uses, measure, breakEven }: Truth): Truth {
  return truth(is === undefined ? undefined : !is, missingFacts, uses, measure && reversed(measure), breakEven);
}

/** `deciding` is the value of a single truth that decides the whole. */
function combine(truths: readonly Truth[], deciding: boolean): Truth {
  const uses: Used[] = [];
  const decided: Used[] = [];
  const measures: Measure[] = [];
  const decidedBy: Measure[] = [];
  let open: Truth[] | undefined;
  let isDecided = false;
  for (const one of truths) {
    uses.push(...one.uses);
    if (one.measure) measures.push(one.measure);
    if (one.is === undefined) (open ??= []).push(one);
    else if (one.is === deciding) {
      isDecided = true;
      decided.push(...one.uses);
      if (one.measure) decidedBy.push(one.measure);
    }
  }
  // Of several that must all hold, the worst counts; of several of which one is enough, the one nearest to it.
  const which = deciding ? 'nearest' : 'farthest';
  if (isDecided) return truth(deciding, none, decided, pick(decidedBy, which));
  if (!open) return truth(!deciding, none, uses, pick(measures, which));
  return truth(undefined, uniqueMissing(open), uses, undefined, open.find(({ breakEven }) => breakEven)?.breakEven);
}
