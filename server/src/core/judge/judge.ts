// Runs checks: on a file by itself, on a build with its parts, and on what the build accepts.
import type { Build } from '../build/build';
import { inspect } from '../build/inspect';
import { knownFindings } from '../build/known-findings';
import { Reads, type RoleSet } from '../build/reads';
import { WorkspaceConfig } from '../build/workspace-config';
import { checks as allChecks } from '../checks/all';
import { isFirm, type Check, type FoundFinding } from '../checks/check';
import type { Outcome } from '../checks/kit';
import type { Doc, DocKind } from '../parts/doc';
import type { Guide } from '../guide/guide';
import { acceptedFor } from './accept';
import {
  addCounts,
  findingOf,
  inOrder,
  isAsked,
  noCounts,
  type Answer,
  type Counts,
  type Finding,
  type Judgement,
  type Result,
} from './finding';

export interface JudgeOptions {
  readonly checks?: readonly Check[];
  /** In tests: a check that throws is not caught. */
  readonly throwOn?: boolean;
  /** Answers already known, of checks that are not among `checks`: see `checksBeside`. */
  readonly known?: readonly Answer[];
  /** The day that counts as today, for what depends on it in a file by itself. */
  readonly today?: string;
}

/** Asked whenever findings have come, which only ever grow in number: false where the rest need not be known. */
export type GoOn = (found: readonly Finding[]) => boolean;

/** Everything that can be said of a build: its own text first, then the build with its parts. */
export function judgeBuild(build: Build, options: JudgeOptions = {}): Judgement {
  return judgeWhile(build, () => true, options).judgement!;
}

/** The same, given up once `goOn` answers false: then without a judgement, but with the check that was asked last. */
export function judgeWhile(
  build: Build,
  goOn: GoOn,
  options: JudgeOptions = {},
): { readonly judgement?: Judgement; readonly last?: Check } {
  const run = new Run(build.doc, build, options);
  if (!goOn(run.findings)) return {};
  const checks = options.checks ?? allChecks;
  for (const check of checks) {
    if (check.on !== 'file' && check.on !== 'build') continue;
    const before = run.findings.length;
    run.ask(check);
    if (run.findings.length > before && !goOn(run.findings)) return { last: check };
  }
  const found = run.findings.map(({ id, subject, grade, measure }) => ({ id, subject, grade, measure }));
  for (const check of checks) if (check.on === 'accept') run.ask(check, found);
  return { judgement: run.done() };
}

/** The checks that are still to be asked where some answers are known. */
export function checksBeside(known: readonly Answer[]): Check[] {
  const answered = new Set(known.map(({ check }) => check));
  return allChecks.filter((check) => !answered.has(check));
}

/** What can be said of a file by itself: for part files, house settings and known findings. */
export function judgeFile(doc: Doc, options: JudgeOptions = {}): Judgement {
  const run = new Run(doc, undefined, options);
  for (const check of options.checks ?? allChecks)
    if (check.on === 'file' || standsIn[check.on] === doc.kind) run.ask(check);
  return run.done();
}

/** The checks that are asked of one kind of file alone. */
const standsIn: Partial<Record<Check['on'], DocKind>> = { settings: 'house', known: 'known' };

/** What can be said of a guide beside its fenced blocks, each of which is judged as a file of its own. */
export function judgeGuide(guide: Guide, options: JudgeOptions = {}): Judgement {
  const run = new Run(guide.doc, undefined, options, guide);
  for (const check of options.checks ?? allChecks) if (check.on === 'guide') run.ask(check);
  return run.done();
}

/** What a check of builds answers of the steps of a guide. */
function askOfSteps(guide: Guide, id: string): readonly Outcome[] {
  const made = guide.stepsBuild;
  const check = checkNamed(id);
  const taken: Outcome[] = [];
  if (made && check?.on === 'build') check.test(made.build, (outcome) => taken.push(outcome));
  return taken;
}

class Run {
  readonly findings: Finding[] = [];
  private readonly answers: Answer[] = [];
  private readonly failed: { id: string; error: string }[] = [];
  private readonly counts = { ...noCounts };
  /** The check that is asked, and what it told so far. */
  private asked!: Check;
  private taken: Result[] = [];
  private off = 0;

  constructor(
    private readonly doc: Doc,
    private readonly build: Build | undefined,
    private readonly options: JudgeOptions,
    private readonly guide?: Guide,
  ) {
    for (const answer of options.known ?? []) this.add(answer);
  }

  /** Asks a check: one of builds only where there is one, one of what is accepted with all that was found. */
  ask(check: Check, found: readonly FoundFinding[] = []): void {
    this.asked = check;
    this.taken = [];
    const reads = new Reads();
    const view = this.build?.viewedBy(reads);
    try {
      if (check.on === 'file') check.test(inspect(this.doc), this.report);
      else if (check.on === 'settings') check.test(new WorkspaceConfig(this.doc), checkNamed, this.report);
      else if (check.on === 'known') check.test(knownFindings(this.doc), this.options.today, this.report);
      else if (check.on === 'guide') check.test(this.guide!, this.report, (id) => askOfSteps(this.guide!, id));
      else if (!view) return;
      else if (check.on === 'build') check.test(view, this.report);
      else check.test(view, found, this.report);
      this.add(answerOf(check, this.taken, reads.roles));
    } catch (error) {
      if (this.options.throwOn) throw error;
      this.failed.push({ id: check.id, error: error instanceof Error ? error.message : String(error) });
    }
  }

  /**
   * Takes an outcome in with its finding, if it is one; leaves it out where the house has switched the check off.
   * Sentences are made as outcomes come, so that a fault in one is the check’s, and what it reads is noted.
   */
  private readonly report = (outcome: Outcome): void => {
    const check = this.asked;
    const own = outcome.grade ?? check.grade;
    const house = (this.build ?? this.guide)?.house;
    const grade = house ? house.grade(check.id, own, own === 'harm' || isFirm(check)) : own;
    if (grade === 'off') this.off += outcome.truth.is === true ? 0 : 1;
    else {
      const finding = isAsked(outcome, grade) ? findingOf(check, outcome, grade) : undefined;
      this.taken.push({ outcome, finding });
    }
  };

  private add(answer: Answer): void {
    const { counts, findings } = answer;
    this.answers.push(answer);
    addCounts(this.counts, counts);
    for (const finding of findings) this.findings.push(this.build ? withAcceptance(this.build, finding) : finding);
  }

  done(): Judgement {
    return {
      findings: inOrder(this.findings),
      answers: this.options.known ? this.answers.sort((a, b) => placeOf(a) - placeOf(b)) : this.answers,
      failed: this.failed,
      off: this.off,
      counts: this.counts,
    };
  }
}

function answerOf(check: Check, taken: readonly Result[], roles: RoleSet): Answer {
  const counts = { ...noCounts };
  for (const result of taken) counts[endOf(result)]++;
  return { check, taken, findings: taken.flatMap(({ finding }) => finding ?? []), counts, roles };
}

function endOf({ outcome: { truth }, finding }: Result): keyof Counts {
  if (!finding) return truth.is === true ? 'held' : 'unasked';
  return truth.is === undefined ? 'unknown' : 'broken';
}

/** Checks in the order in which they are asked. */
const places: ReadonlyMap<Check, number> = new Map(
  [...allChecks.filter(({ on }) => on !== 'accept'), ...allChecks.filter(({ on }) => on === 'accept')].map(
    (check, i) => [check, i],
  ),
);
const placeOf = ({ check }: Answer): number => places.get(check) ?? places.size;

const checkNamed = (id: string): Check | undefined => allChecks.find((check) => check.id === id);

/** The finding, with the build’s reason where the build accepts it. */
function withAcceptance(build: Build, finding: Finding): Finding {
  const accepted = acceptedFor(build, finding);
  return accepted ? { ...finding, accepted } : finding;
}
