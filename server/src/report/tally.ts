// What a run comes to: builds by their worst grade, checks by their answer.
import { checks as allChecks } from '../core/checks/all';
import type { Check } from '../core/checks/check';
import { grades, type Grade } from '../core/manifest/house-file';
import { atLeastAsBad } from '../core/build/workspace-config';
import { addSettings, type SettingsUsed } from './left-out';
import { mostListed, type Section } from './section';

/** What is counted one by one. */
const counts = [
  ...(['accepted', 'recorded', 'cleared', 'cut', 'known', 'along'] as const),
  ...(['otherFiles', 'notMended', 'off', 'unread'] as const),
] as const;

function addEach<K extends string>(to: Record<K, number>, from: Readonly<Record<K, number>>): void {
  for (const name of Object.keys(from) as K[]) to[name] += from[name];
}

const checkById: ReadonlyMap<string, Check> = new Map(allChecks.map((check) => [check.id, check]));

export type Worst = Grade | 'clear';

type Numbers = Omit<Tally, 'found' | 'add' | 'join' | 'data' | 'take' | 'buildCount' | 'lighterThan' | 'reaches'>;

/** A tally as plain data, which can be handed from one thread to another: checks by their ids. */
export interface TallyData extends Numbers {
  readonly found: readonly string[];
}

export class Tally {
  readonly builds: Record<Worst, number> = { harm: 0, stop: 0, shortfall: 0, note: 0, unknown: 0, clear: 0 };
  readonly checks = { held: 0, broken: 0, unknown: 0, unasked: 0 };
  /** Findings by grade, those left out that a build accepts. */
  readonly findings: Record<Grade, number> = { harm: 0, stop: 0, shortfall: 0, note: 0, unknown: 0 };
  accepted = 0;
  /** Findings let stand by a file of known findings, and records there that nothing found answers to any more. */
  recorded = 0;
  cleared = 0;
  /** Builds and guides that nobody named, and that rest on what was named. */
  along = 0;
  /** Findings past the most that are listed of one file. */
  cut = 0;
  /** Findings left out, since they stood before the change that is looked at. */
  known = 0;
  otherFiles = 0;
  /** The checks that found something. */
  readonly found = new Set<Check>();
  /** Findings whose fixes were not looked for. */
  notMended = 0;
  /** Findings of checks that settings switch off, and those settings. */
  off = 0;
  readonly settings: SettingsUsed = { off: new Set(), regraded: new Map() };
  /** Findings that say that something was not read. */
  unread = 0;

  add({ doc, judgement, settings, along }: Section): void {
    this.along += along ? 1 : 0;
    if (settings) addSettings(this.settings, settings);
    this.off += judgement.off;
    const open = judgement.findings.filter((finding) => !finding.accepted);
    for (const finding of open) {
      this.findings[finding.grade]++;
      this.found.add(finding.check);
      if (finding.check.unread) this.unread++;
    }
    const recorded = judgement.findings.filter(({ known, accepted }) => known && accepted).length;
    this.recorded += recorded;
    this.cleared += judgement.cleared?.length ?? 0;
    this.accepted += judgement.findings.length - open.length - recorded;
    this.cut += Math.max(0, judgement.findings.length - mostListed);
    for (const answer of ['held', 'broken', 'unknown', 'unasked'] as const)
      this.checks[answer] += judgement.counts[answer];
    if (doc.kind === 'build') this.builds[open[0]?.grade ?? 'clear']++;
    else this.otherFiles++;
  }

  /** Adds what another run comes to. */
  join(other: Tally): void {
    addEach(this.builds, other.builds);
    addEach(this.checks, other.checks);
    addEach(this.findings, other.findings);
    for (const name of counts) this[name] += other[name];
    for (const check of other.found) this.found.add(check);
    for (const id of other.settings.off) this.settings.off.add(id);
    for (const [id, grade] of other.settings.regraded) this.settings.regraded.set(id, grade);
  }

  data(): TallyData {
    return { ...this, found: [...this.found].map(({ id }) => id) };
  }

  /** Adds what another thread’s tally came to. */
  take(data: TallyData): void {
    const found = new Set(data.found.flatMap((id) => checkById.get(id) ?? []));
    this.join(Object.assign(new Tally(), data, { found }));
  }

  get buildCount(): number {
    return Object.values(this.builds).reduce((a, b) => a + b, 0);
  }

  /** Findings that are lighter than a grade, those left out that wait for facts. */
  lighterThan(limit: Grade): number {
    return grades.reduce(
      (sum, grade) => (grade === 'unknown' || atLeastAsBad(grade, limit) ? sum : sum + this.findings[grade]),
      0,
    );
  }

  /** Whether anything stands at or above a grade, or was not read. */
  reaches(limit: Grade): boolean {
    return this.unread > 0 || grades.some((grade) => this.findings[grade] > 0 && atLeastAsBad(grade, limit));
  }
}
