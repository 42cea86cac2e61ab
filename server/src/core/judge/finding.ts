// What the judge says: findings, and how many checks held, broke and stayed open.
import type { KnownFinding } from '../build/known-findings';
import { haveCommon, rolesOf, type AreaName, type RoleSet } from '../build/reads';
import type { Check } from '../checks/check';
import type { FixIdea, Outcome, Target } from '../checks/kit';
import { writtenAt, type Missing } from '../figures/figure';
import type { Measure } from '../figures/measure';
import { eachOnce } from '../figures/missing-facts';
import { standing, type Sentence } from '../figures/sentence';
import type { Used } from '../figures/truth';
import { grades, type Grade } from '../manifest/house-file';
import type { StatedAt } from '../parts/doc';
import { shownText } from '../parts/fact';
import { openWords } from './open-words';
import { compareTexts } from '../text';

/** Why a finding is shown as accepted: the build’s own words. */
export interface Accepted {
  readonly because: string;
  /** What was weighed: by how much it may be broken. */
  readonly atMost?: string;
  readonly until?: string;
  readonly by?: string;
}

/**
 * A record that speaks of the finding: it `counts`, and the finding is accepted by it; or its day is `past`; or the
 * finding is `worse` than what was recorded.
 */
export interface KnownBy {
  readonly state: 'counts' | 'past' | 'worse';
  readonly by: string;
  readonly until: string;
  /** Absent where it was recorded just now. */
  readonly record?: KnownFinding;
}

export interface Finding extends Target {
  readonly id: string;
  readonly check: Check;
  readonly grade: Grade;
  /** What it would be if it were broken: where it is undecided, the grade that the missing facts could bring. */
  readonly atWorst: Grade;
  readonly said: Sentence;
  /** For grade unknown: the facts that would decide it; empty where a range leaves it open. */
  readonly missing: readonly Missing[];
  /** What went into the answer; the working is printed from these and from the sentence’s figures. */
  readonly uses: readonly Used[];
  readonly caution?: string;
  /** By how much it is broken, where a number decides. */
  readonly measure?: Measure;
  readonly accepted?: Accepted;
  readonly known?: KnownBy;
  readonly fixes?: () => Iterable<FixIdea | undefined>;
}

export interface Counts {
  readonly held: number;
  readonly broken: number;
  readonly unknown: number;
  /** Left open, and nobody is asked: see `isAsked`. */
  readonly unasked: number;
}

export const noCounts: Counts = { held: 0, broken: 0, unknown: 0, unasked: 0 };

const ends = Object.keys(noCounts) as readonly (keyof Counts)[];

/** Adds counts to those that are kept. */
export function addCounts(to: { -readonly [K in keyof Counts]: number }, more: Counts): void {
  for (const end of ends) to[end] += more[end];
}

/** An outcome with its finding; without one where it holds, or is left open unasked. */
export interface Result {
  readonly outcome: Outcome;
  readonly finding: Finding | undefined;
}

/** What one check answered, what that comes to in this house, and which areas of the build it read. */
export interface Answer {
  readonly check: Check;
  /** Every outcome; of an answer that was carried over from another text, worked out when it is asked for. */
  readonly taken: readonly Result[];
  readonly findings: readonly Finding[];
  readonly counts: Counts;
  readonly roles: RoleSet;
}

export interface Judgement {
  /** Worst first, then by place. */
  readonly findings: readonly Finding[];
  readonly counts: Counts;
  readonly answers: readonly Answer[];
  /** Records of known findings that nothing found answers to any more. */
  readonly cleared?: readonly KnownFinding[];
  /** Findings left out, since the settings switch their checks off. */
  readonly off: number;
  /** Checks that failed by a fault of their own. */
  readonly failed: readonly { readonly id: string; readonly error: string }[];
}

/** Answers that stand whatever changes in these areas: of the text by itself, and of checks that read none of them. */
export function answersApart(before: Judgement, changed: Iterable<AreaName>): readonly Answer[] {
  const others = rolesOf(changed);
  return before.answers.filter(
    ({ check, roles }) => check.on === 'file' || (check.on === 'build' && !haveCommon(roles, others)),
  );
}

/** The finding of an outcome; undefined when it holds. */
export function findingOf(check: Check, outcome: Outcome, grade: Grade): Finding | undefined {
  const { truth, subject, underline } = outcome;
  if (truth.is === true) return undefined;
  const said = standing(truth.is === false ? outcome.broken() : openWords(outcome));
  const caution = outcome.caution ?? check.caution;
  const isBroken = truth.is === false;
  return {
    id: check.id,
    check,
    grade: isBroken ? grade : 'unknown',
    atWorst: grade,
    subject,
    underline,
    said,
    missing: eachOnce(truth.missing),
    uses: truth.uses,
    caution: isBroken ? caution : undefined,
    measure: isBroken ? outcome.measure : undefined,
    fixes: isBroken ? outcome.fixes : undefined,
  };
}

/**
 * Whether an open answer is a question to anyone: not where custom stands for the fact, nor where all that the missing
 * facts could bring is a note.
 */
export const isAsked = ({ truth, usual }: Outcome, grade: Grade): boolean =>
  truth.is !== undefined || (usual === undefined && (grade !== 'note' || truth.missing.length === 0));

/** A line that a finding rests on, with what stands there. */
export interface Related extends StatedAt {
  readonly what: string;
}

/**
 * The lines that a finding rests on beside its own, those that decide first: the numbers that are held against each
 * other and what the sentence names, of a sum its largest parts, each in turn. No more is looked at than `most` asks
 * for: hundreds of findings may each rest on a sum of hundreds of parts.
 */
export function relatedTo({ underline, uses, said, measure }: Finding, most = Infinity): readonly Related[] {
  const roots = [...(measure ? [measure.figure, measure.limit] : []), ...said.facts, ...said.figures, ...uses];
  // The same figures enter many sums: each is looked at once.
  const seen = new Set<Used>();
  const related = new Map<string, Related>();
  let open = roots.map((root) => linesOf(root, seen));
  while (open.length > 0 && related.size < most)
    open = open.filter((lines) => {
      const { done, value } = lines.next();
      if (done) return false;
      const { doc, span } = value;
      const key = `${doc.name}\n${span.start}`;
      if ((doc !== underline.doc || span.start !== underline.span.start) && !related.has(key)) related.set(key, value);
      return true;
    });
  return [...related.values()].slice(0, most);
}

function* linesOf(used: Used, seen: Set<Used>): Generator<Related, undefined> {
  if (seen.has(used)) return;
  seen.add(used);
  if (used.type === 'fact') {
    const from = writtenAt(used);
    if (from) yield { ...placeOf(from), what: `${used.path}: ${shownText(used)}` };
    return;
  }
  if (used.from) yield { ...placeOf(used.from), what: used.label };
  else for (const one of byWeight(used.inputs)) yield* linesOf(one, seen);
  for (const one of used.decidedBy) yield* linesOf(one, seen);
}

const placeOf = ({ doc, span, path }: StatedAt): StatedAt => ({ doc, span, path });

/** Largest first; what is not known comes last. */
const byWeight = (inputs: readonly Used[]): readonly Used[] =>
  inputs.length < 3 ? inputs : [...inputs].sort((a, b) => weightOf(b) - weightOf(a));

const weightOf = (used: Used): number => (used.type === 'figure' && Number.isFinite(used.hi) ? Math.abs(used.hi) : -1);

/** What makes two findings one when two judgements are compared: the check, its subject and the grade. */
export const likenessOf = ({ id, subject, grade }: Finding): string => `${id}\n${subject}\n${grade}`;

/** How many findings there are of each grade, worst first. */
export function countsByGrade(findings: readonly Finding[]): number[] {
  const counts = grades.map(() => 0);
  for (const { grade } of findings) counts[rank[grade]]!++;
  return counts;
}

/** The worst grade that undecided findings could come to. */
export const worstOf = (findings: readonly Finding[]): Grade =>
  grades[Math.min(grades.length - 1, ...findings.map(({ atWorst }) => rank[atWorst]))]!;

/** Compares two rows of numbers: the first that differ decide. */
export function compareRows(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return 0;
}

const rank = Object.fromEntries(grades.map((grade, i) => [grade, i])) as Record<Grade, number>;

/** Worst first; within a grade by file, place and id, so that the order never depends on anything else. */
export function inOrder(findings: readonly Finding[]): Finding[] {
  return [...findings].sort(
    (a, b) =>
      rank[a.grade] - rank[b.grade] ||
      compareTexts(a.underline.doc.name, b.underline.doc.name) ||
      a.underline.span.start - b.underline.span.start ||
      compareTexts(a.id, b.id) ||
      compareTexts(a.said.text, b.said.text),
  );
}
