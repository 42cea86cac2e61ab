// Three-valued truth: true, false, or undecided with the facts that are missing or the value at which it turns.
import type { Fact } from '../parts/fact';
import { missing, uniqueMissing, type Figure, type Missing } from './figure';
import { say, type Said } from './say';

export type Used = Figure | Fact<unknown>;

export interface Truth {
  readonly is: boolean | undefined;
  /** Facts that would decide it; empty when decided, or when a range is all that leaves it open. */
  readonly missing: readonly Missing[];
  /** For a range that straddles the limit: when it would hold, in words. */
  readonly breakEven?: Said;
  /** What went into the answer. */
  readonly uses: readonly Used[];
}

export const sure = (is: boolean, ...uses: Used[]): Truth => ({ is, missing: [], uses });

/** Cannot be said, because these facts are missing. */
export const lacking = (lacks: readonly Missing[], ...uses: Used[]): Truth => ({ is: undefined, missing: lacks, uses });

/** Whether `a` is at most `limit`. */
export function atMost(a: Figure, limit: Figure): Truth {
  return compare(a, limit, a.hi <= limit.lo, a.lo > limit.hi, () => say`Holds if ${a.label} is at most ${limit}; it is ${a}.`);
}

/** Whether `a` is less than `limit`. */
export function lessThan(a: Figure, limit: Figure): Truth {
  return compare(a, limit, a.hi < limit.lo, a.lo >= limit.hi, () => say`Holds if ${a.label} is less than ${limit}; it is ${a}.`);
}

/** Whether `a` is at least `limit`. */
export function atLeast(a: Figure, limit: Figure): Truth {
  return compare(a, limit, a.lo >= limit.hi, a.hi < limit.lo, () => say`Holds if ${a.label} is at least ${limit}; it is ${a}.`);
}

function compare(a: Figure, b: Figure, holds: boolean, fails: boolean, breakEven: () => Said): Truth {
  const uses = [a, b];
  if (holds || fails) return { is: holds, missing: [], uses };
  const lacks = uniqueMissing(uses);
  return { is: undefined, missing: lacks, uses, ...(lacks.length === 0 ? { breakEven: breakEven() } : {}) };
}

/** Whether a fact has a value for which `test` answers true; undecided when it is not stated. */
export function fits<T>(fact: Fact<T>, what: string, test: (value: T) => boolean): Truth {
  return fact.value === undefined ? lacking([missing(fact, what)], fact) : sure(test(fact.value), fact);
}

/** Whether two stated values pass `test`; undecided when either is not stated. */
export function agree<A, B>(a: Fact<A>, aWhat: string, b: Fact<B>, bWhat: string, test: (a: A, b: B) => boolean): Truth {
  const lacks = [...(a.value === undefined ? [missing(a, aWhat)] : []), ...(b.value === undefined ? [missing(b, bWhat)] : [])];
  return lacks.length > 0 ? lacking(lacks, a, b) : sure(test(a.value as A, b.value as B), a, b);
}

/** True when all are; false as soon as one is; undecided else. */
export function all(...truths: readonly Truth[]): Truth {
  return combine(truths, false);
}

/** True as soon as one is; false when all are; undecided else. */
export function any(...truths: readonly Truth[]): Truth {
  return combine(truths, true);
}

export function not(truth: Truth): Truth {
  return { ...truth, is: truth.is === undefined ? undefined : !truth.is };
}

/** `deciding` is the value of a single truth that decides the whole. */
function combine(truths: readonly Truth[], deciding: boolean): Truth {
  const decided = truths.filter((truth) => truth.is === deciding);
  if (decided.length > 0) return sure(deciding, ...decided.flatMap((truth) => truth.uses));
  const open = truths.filter((truth) => truth.is === undefined);
  const uses = truths.flatMap((truth) => truth.uses);
  if (open.length === 0) return sure(!deciding, ...uses);
  const breakEven = open.find((truth) => truth.breakEven)?.breakEven;
  return { is: undefined, missing: uniqueMissing(open), uses, ...(breakEven ? { breakEven } : {}) };
}
