// Three-valued truth: true, false, or undecided with the facts that are missing or the value at which it turns.
import type { Fact } from '../parts/fact';
import { isBounded, missing, type Figure, type Missing } from './figure';
import { uniqueMissing } from './missing-facts';
import { pick, reversed, type Measure } from './measure';
import { isAtMost } from './near';

export type Used = Figure | Fact<unknown>;

export interface Truth {
  readonly is: boolean | undefined;
  /** Facts that would decide it; empty when decided, or when a range is all that leaves it open. */
  readonly missing: readonly Missing[];
  /** What went into the answer. */
  readonly uses: readonly Used[];
  /** The numbers that decided it, or would: by how much it is broken where it is, where a range turns where open. */
  readonly measure: Measure | undefined;
}

const none: readonly Missing[] = [];

/** Every truth is made here: one shape is read quickest. */
const truth = (is: Truth['is'], missingFacts: readonly Missing[], uses: readonly Used[], measure?: Measure): Truth => ({
  is,
  missing: missingFacts,
  uses,
  measure,
});

/**
 * The same truth, with what decides whether it is asked at all, or in which way. What is not stated decides
 * nothing.
 */
export function given(
  { is, missing: missingFacts, uses, measure }: Truth,
  ...grounds: readonly (Used | undefined)[]
): Truth {
  const stated = grounds.filter((one): one is Used => one?.type === 'figure' || one?.node !== undefined);
  return truth(is, missingFacts, [...uses, ...stated], measure);
}

export const sure = (is: boolean, ...uses: Used[]): Truth => truth(is, none, uses);

/** Cannot be said, because these facts are missing. */
export const lacking = (missingFacts: readonly Missing[], ...uses: Used[]): Truth =>
  truth(undefined, missingFacts, uses);

/** Whether `a` is at most `limit`. */
export function atMost(a: Figure, limit: Figure): Truth {
  return compare(
    { figure: a, limit, worse: 'more' },
    isAtMost(a.hi, a, limit.lo, limit),
    !isAtMost(a.lo, a, limit.hi, limit),
  );
}

/** Whether `a` is less than `limit`. */
export function lessThan(a: Figure, limit: Figure): Truth {
  return compare(
    { figure: a, limit, worse: 'more', strict: true },
    !isAtMost(limit.lo, limit, a.hi, a),
    isAtMost(limit.hi, limit, a.lo, a),
  );
}

/** Whether `a` is at least `limit`. */
export function atLeast(a: Figure, limit: Figure): Truth {
  return compare(
    { figure: a, limit, worse: 'less' },
    isAtMost(limit.hi, limit, a.lo, a),
    !isAtMost(limit.lo, limit, a.hi, a),
  );
}

function compare(measure: Measure, holds: boolean, fails: boolean): Truth {
  const uses = [measure.figure, measure.limit];
  if (holds || fails) return truth(holds, none, uses, measure);
  return truth(undefined, uniqueMissing(uses), uses, measure);
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

export function not({ is, missing: missingFacts, uses, measure }: Truth): Truth {
  return truth(is === undefined ? undefined : !is, missingFacts, uses, measure && reversed(measure));
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
  return truth(undefined, uniqueMissing(open), uses, open.find(hasRange)?.measure);
}

/** Whether a number and its limit are both known well enough to be said. */
const hasRange = ({ measure }: Truth): boolean =>
  measure !== undefined && isBounded(measure.figure) && isBounded(measure.limit);
