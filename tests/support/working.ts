// Holds a finding to its working: every number of its sentence is found there, and every figure follows from its
// inputs.
import { uniqueMissing } from '../../server/src/core/figures/missing-facts';
import { show } from '../../server/src/core/figures/sentence';
import type { Figure } from '../../server/src/core/figures/figure';
import type { Finding } from '../../server/src/core/judge/finding';
import { workingOf, type Step } from '../../server/src/core/judge/working-steps';

/**
 * Numbers that stand by themselves; those within names, such as DDR5, M2_1 or 16-pin, are no numbers of the sentence,
 * nor are those by which dmidecode names its tables.
 */
const standing = /(?<![\p{L}\p{N}_/.,:-])(?<!dmidecode, type )[-−+]?\d+(?:\.\d+)?(?![\p{L}\p{N}_/-]|[.,:]\d)/gu;

export const numbersIn = (text: string): string[] => text.match(standing) ?? [];

/** What is wrong with a finding’s working, in words; empty when all is well. */
export function faultsOf(finding: Finding): string[] {
  const steps = workingOf(finding).flatMap(all);
  const told = new Set(steps.flatMap((step) => [...numbersIn(step.value), ...numbersIn(step.label)]));
  // A fact in the sentence is written there as its file writes it.
  for (const fact of finding.said.facts) for (const number of numbersIn(fact.text)) told.add(number);
  for (const number of openNumbers(finding)) told.add(number);
  const untold = numbersIn(finding.said.text).filter((number) => !told.has(number));
  return [
    ...untold.map((number) => `${number} is not in the working`),
    ...steps.flatMap((step) => (step.figure ? faultsOfFigure(step.figure) : [])),
  ].map((fault) => `${finding.id} at ${finding.subject}: ${fault}: ${finding.said.text}`);
}

/** An undecided finding names facts, and says how many more there are than it names. */
function openNumbers({ missing }: Finding): string[] {
  const names = [...new Set(missing.map((lack) => lack.what))];
  return [...names.flatMap(numbersIn), ...(names.length > 3 ? [String(names.length - 3)] : [])];
}

const all = (step: Step): Step[] => [step, ...step.inputs.flatMap(all)];

function faultsOfFigure(one: Figure): string[] {
  const name = `${one.label} (${show(one)})`;
  if (Number.isNaN(one.lo) || Number.isNaN(one.hi) || one.lo > one.hi) return [`${name} is no range`];
  if (one.work) return followsFrom(one, one.work) ? [] : [`${name} does not follow from its inputs by its formula`];
  if (one.inputs.length > 0) return [`${name} has inputs and no work`];
  const origin = one.from ?? one.source ?? one.missing[0];
  return origin ? [] : [`${name} comes from nowhere`];
}

/**
 * Works the figure out again at every corner of its inputs. With exact inputs the bounds are equal; where inputs are
 * open, a sum of what cannot be negative may know more than its corners, never less.
 */
function followsFrom(one: Figure, work: (...inputs: number[]) => number): boolean {
  let lo = Infinity;
  let hi = -Infinity;
  for (const corner of corners(one.inputs)) {
    const value = work(...corner);
    lo = Math.min(lo, Number.isNaN(value) ? -Infinity : value);
    hi = Math.max(hi, Number.isNaN(value) ? Infinity : value);
  }
  const bounded = one.inputs.every((input) => Number.isFinite(input.lo) && Number.isFinite(input.hi));
  // A fact missing beside the inputs, such as whether something counts at all, can only widen the range.
  const widened = one.missing.length > uniqueMissing(one.inputs).length;
  if (widened && bounded) return one.lo <= lo && one.hi >= hi;
  if (widened) return one.lo <= hi && one.hi >= lo;
  if (bounded) return same(lo, one.lo) && same(hi, one.hi);
  return (lo <= one.lo || same(lo, one.lo)) && (hi >= one.hi || same(hi, one.hi));
}

function corners(inputs: readonly Figure[]): number[][] {
  if (inputs.filter((input) => input.lo !== input.hi).length > 10)
    return [inputs.map((input) => input.lo), inputs.map((input) => input.hi)];
  return inputs.reduce<number[][]>(
    (known, { lo, hi }) =>
      known.flatMap((corner) =>
        lo === hi
          ? [[...corner, lo]]
          : [
              [...corner, lo],
              [...corner, hi],
            ],
      ),
    [[]],
  );
}

const same = (a: number, b: number): boolean => a === b || Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
