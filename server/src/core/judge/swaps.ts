// Tries parts of the folder in a place of the build: what each brings and clears, and which are best.
import type { Build, Placed } from '../build/build';
import type { Check } from '../checks/check';
import type { Doc } from '../parts/doc';
import type { Kind } from '../parts/kinds';
import { answersApart, compareRows, countsByGrade, likenessOf, type Finding, type Judgement } from './finding';
import { checksBeside, judgeWhile, type GoOn } from './judge';

/** A part of the folder that may stand in for another of its kind. */
export interface Candidate {
  readonly name: string;
  readonly doc: Doc;
}
export type Candidates = (kind: Kind) => readonly Candidate[];

/**
 * A candidate in its place, with what the whole build would then be. Answers and build are not kept: many are
 * compared.
 */
export interface Swapped {
  readonly candidate: Candidate;
  readonly after: Omit<Judgement, 'answers'>;
  readonly brings: readonly Finding[];
  readonly clears: readonly Finding[];
}

/**
 * Judges the build with each candidate in a place, one when it is asked for. Only the checks that look at that place
 * run again; a candidate is given up, and left out, once `goOn` answers false to what was found so far.
 */
export function* trySwaps(
  build: Build,
  before: Judgement,
  placed: Placed,
  candidates: Iterable<Candidate>,
  goOn: GoOn = () => true,
): Iterable<Swapped> {
  const known = answersApart(before, [placed.role]);
  let checks = checksBeside(known);
  for (const candidate of candidates) {
    const changed = build.withPart(placed, candidate.name);
    const { judgement, last } = judgeWhile(changed, goOn, { known, checks });
    if (judgement) {
      const { findings, counts, failed, off } = judgement;
      yield {
        candidate,
        after: { findings, counts, failed, off },
        brings: newIn(findings, before.findings),
        clears: newIn(before.findings, findings),
      };
    }
    // What spoke against one candidate is likely to speak against the next.
    checks = firstOf(
      checks,
      judgement ? new Set(judgement.findings.map(({ check }) => check)) : new Set(last && [last]),
    );
  }
}

const firstOf = (checks: readonly Check[], first: ReadonlySet<Check>): Check[] => [
  ...checks.filter((check) => first.has(check)),
  ...checks.filter((check) => !first.has(check)),
];

/**
 * The best candidates for a place: the build with fewest of the worst findings first, then by name. `candidates` come
 * by name; one that cannot be among the first `most` any more is not judged to its end.
 */
export function bestSwaps(
  build: Build,
  before: Judgement,
  placed: Placed,
  candidates: readonly Candidate[],
  most: number,
): readonly Swapped[] {
  const best: { readonly swapped: Swapped; readonly counts: readonly number[] }[] = [];
  // Counts only grow, and of two alike the one with the later name loses.
  const mayBeBest: GoOn = (found) => best.length < most || compareRows(openCounts(found), best.at(-1)!.counts) < 0;
  for (const swapped of trySwaps(build, before, placed, candidates, mayBeBest)) {
    const counts = openCounts(swapped.after.findings);
    const at = best.findIndex((other) => compareRows(counts, other.counts) < 0);
    best.splice(at < 0 ? best.length : at, 0, { swapped, counts });
    if (best.length > most) best.pop();
  }
  return best.map(({ swapped }) => swapped);
}

/** What the build accepts does not count against a part. */
const openCounts = (findings: readonly Finding[]): readonly number[] =>
  countsByGrade(findings.filter(({ accepted }) => !accepted));

/** Findings of the first list that the second lacks. A finding that stands in both as it is costs no comparing. */
export function newIn(these: readonly Finding[], those: readonly Finding[]): Finding[] {
  const ours = new Set(these);
  const theirs = new Set(those);
  const left = new Map<string, number>();
  for (const one of those) if (!ours.has(one)) left.set(likenessOf(one), (left.get(likenessOf(one)) ?? 0) + 1);
  return these.filter((one) => {
    if (theirs.has(one)) return false;
    const n = left.get(likenessOf(one)) ?? 0;
    if (n > 0) left.set(likenessOf(one), n - 1);
    return n === 0;
  });
}
