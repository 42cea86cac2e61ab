// Runs checks: on a file by itself, on a build with its parts, and on what the build accepts.
import { Build } from '../build/build';
import { inspect } from '../build/inspect';
import { checks as allChecks } from '../checks/all';
import type { Check } from '../checks/check';
import type { Outcome } from '../checks/kit';
import type { Doc } from '../parts/doc';
import { acceptedFor } from './accept';
import { findingOf, inOrder, type Answer, type Finding, type Judgement, type Taken } from './finding';

export interface JudgeOptions {
  readonly checks?: readonly Check[];
  /** In tests: a check that throws is not caught. */
  readonly throwOn?: boolean;
  /** Answers already known; checks that are among them are not run. */
  readonly known?: readonly Answer[];
}

/** Everything that can be said of a build: its own text first, then the build with its parts. */
export function judgeBuild(build: Build, options: JudgeOptions = {}): Judgement {
  const checks = options.checks ?? allChecks;
  const run = new Run(build, options);
  for (const check of checks) {
    if (check.on === 'file') run.answer(check, () => check.test(inspect(build.doc)));
    else if (check.on === 'build') run.answer(check, () => check.test(build));
  }
  const found = run.findings.map(({ id, place, grade }) => ({ id, path: place.path, grade }));
  for (const check of checks) if (check.on === 'accept') run.answer(check, () => check.test(build, found));
  return run.done((finding) => acceptedFor(build, finding));
}

/** What can be said of a file by itself: for part files and house settings. */
export function judgeFile(doc: Doc, options: JudgeOptions = {}): Judgement {
  const run = new Run(undefined, options);
  for (const check of options.checks ?? allChecks) {
    if (check.on === 'file') run.answer(check, () => check.test(inspect(doc)));
  }
  return run.done(() => undefined);
}

class Run {
  readonly findings: Finding[] = [];
  private readonly answers: Answer[] = [];
  private readonly failed: { id: string; error: string }[] = [];
  private held = 0;
  private broken = 0;
  private unknown = 0;
  private readonly known: ReadonlyMap<Check, Answer>;

  constructor(private readonly build: Build | undefined, private readonly options: JudgeOptions) {
    this.known = new Map(options.known?.map((answer) => [answer.check, answer]));
  }

  answer(check: Check, test: () => Iterable<Outcome>): void {
    const answer = this.known.get(check) ?? this.test(check, test);
    if (!answer) return;
    this.answers.push(answer);
    for (const { outcome, finding } of answer.taken) this.count(outcome, finding);
  }

  private test(check: Check, test: () => Iterable<Outcome>): Answer | undefined {
    const reads = this.build?.reads ?? { mask: 0 };
    reads.mask = 0;
    try {
      const outcomes: Outcome[] = [];
      const taken: Taken[] = [];
      // Sentences are made here, so that a fault in one is the check’s, and what it reads is in the mask.
      for (const outcome of test()) {
        outcomes.push(outcome);
        this.take(check, outcome, taken);
      }
      return { check, outcomes, taken, mask: reads.mask };
    } catch (error) {
      if (this.options.throwOn) throw error;
      this.failed.push({ id: check.id, error: error instanceof Error ? error.message : String(error) });
      return undefined;
    }
  }

  /** Takes an outcome in with its finding; leaves it out where the house has switched the check off. */
  private take(check: Check, outcome: Outcome, taken: Taken[]): void {
    const own = outcome.grade ?? check.grade;
    const grade = this.build ? this.build.house.grade(check.id, own) : own;
    if (grade !== 'off') taken.push({ outcome, finding: findingOf(check, outcome, grade) });
  }

  private count(outcome: Outcome, finding: Finding | undefined): void {
    if (!finding) this.held++;
    else if (finding.grade === 'unknown' && outcome.truth.is === undefined) this.unknown++;
    else this.broken++;
    if (finding) this.findings.push(finding);
  }

  done(accepted: (finding: Finding) => Finding['accepted']): Judgement {
    const findings = this.findings.map((finding) => {
      const why = accepted(finding);
      return why ? { ...finding, accepted: why } : finding;
    });
    return {
      findings: inOrder(findings), answers: this.answers, failed: this.failed,
      counts: { held: this.held, broken: this.broken, unknown: this.unknown },
    };
  }
}
