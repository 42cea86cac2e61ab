// The public face of the npm package: what it gives, and its functions with what each takes, returns and throws. The
// package publishes this text behind that of `report/plain.ts`, as `dist/api.d.ts`.
import type { Explained, Grade, JudgedFile, NotRead } from '../report/plain';

export type * from '../report/plain';

/** Texts by their path, with `/` between folders: `desk.pcbuild.yaml`, `parts/boreas/tower-155.part.yaml`. */
export type Files = Readonly<Record<string, string>> | ReadonlyMap<string, string>;

export interface ReadOptions {
  /** Of a folder: the files as they stand in this revision of its git repository, such as `main`. */
  readonly revision?: string;
  /**
   * Of a folder: judge by the settings as they stand in this revision, whatever the files say. A change that someone
   * else proposes then switches nothing off.
   */
  readonly settingsFrom?: string;
}

/** The files of a folder, a revision or a set of texts; judged only when asked. */
export interface Workspace {
  /** Builds by their path from the folder, in order. */
  readonly builds: readonly string[];
  /** Part files by their path from the folder, in order. */
  readonly parts: readonly string[];
  /** What could not be looked into: then the lists above are not whole. */
  readonly notRead: readonly NotRead[];
}

export interface JudgeOptions {
  /** The day that counts as today, as `2027-06-30`; without it the day in UTC. */
  readonly on?: string;
  /** Which proven fixes of each finding are looked for: `best` unless said otherwise. Each costs some judging. */
  readonly fixes?: 'none' | 'best' | 'all';
  /** Whether the figures behind each finding are given: yes unless said otherwise. */
  readonly working?: boolean;
  /** The language of messages: `en` unless said otherwise. */
  readonly language?: 'en' | 'de';
}

export interface JudgedBuild extends JudgedFile {
  /** What the checks that found something are about, by their ids. */
  readonly explained: Readonly<Record<string, Explained>>;
  /** Findings whose fixes were not looked for, since they are many. */
  readonly fixesNotSought: number;
  /** Files that could not be read and checks that failed: where there are any, what is silent has not been proven. */
  readonly notRead: readonly NotRead[];
}

export interface CompareOptions {
  /** The day that counts as today on both sides, as `2027-06-30`; without it the day in UTC. */
  readonly on?: string;
}

/** A finding on one of two sides. */
export interface ComparedFinding {
  readonly id: string;
  readonly grade: Grade;
  /** What is judged, in words of the build: `parts.cooler`. */
  readonly subject: string;
  readonly text: string;
  readonly file: string;
  /** Counted from one. */
  readonly line: number;
  readonly fingerprint: string;
  /** By how much it is broken, where a number decides: `12 W`. */
  readonly excess?: string;
  /** Facts it waits for. */
  readonly missing: readonly string[];
  /** Why the build accepts it. */
  readonly accepted?: string;
  /** The safety message: signal word, then hazard, consequence, avoidance, and to whom it defers. */
  readonly caution?: { readonly word: string; readonly sentences: readonly string[] };
  /** It says that something was not read. */
  readonly unread: boolean;
}

/**
 * `worse`, `better`: the same subject with another grade or number. `undecided`: it was broken, and waits for facts now
 * or cannot be judged. `silenced`: settings switch its check off or make it lighter. `accepted`: the build accepts now
 * what it did not.
 */
export interface FindingChange {
  readonly kind: 'new' | 'worse' | 'undecided' | 'silenced' | 'accepted' | 'cleared' | 'better' | 'unchanged';
  readonly before?: ComparedFinding;
  readonly after?: ComparedFinding;
}

/** A stated fact that differs between the sides; a side is absent where it is not stated. Lines count from one. */
export interface ChangedFact {
  readonly what: string;
  readonly before?: { readonly file: string; readonly line: number; readonly text: string };
  readonly after?: { readonly file: string; readonly line: number; readonly text: string };
}

/** A figure that moved, before → after, both absolute and with their units. */
export interface Movement {
  readonly what: string;
  readonly before?: string;
  readonly after?: string;
  /** With its sign, where both are exact: `+12 W`. */
  readonly difference?: string;
  /** Whether that is for the better; absent where it depends. */
  readonly isBetter?: boolean;
  /** The figure is the same, though several of the facts behind it are others. */
  readonly cancels?: true;
  readonly why: readonly ChangedFact[];
}

/**
 * What changed of a thing in a finished machine, by two records of it. `moved`: it sits elsewhere; `swapped`: another
 * is in its place; `not-shown`, `shown`: no output shows it now, or none did before.
 */
export interface RecordChange {
  readonly kind: 'added' | 'removed' | 'moved' | 'swapped' | 'changed' | 'shown' | 'not-shown';
  readonly thing: string;
  /** The record’s key; absent where the thing as a whole is meant. */
  readonly fact?: string;
  readonly before?: ChangedFact['before'];
  readonly after?: ChangedFact['after'];
  readonly difference?: string;
  readonly isBetter?: boolean;
}

/** One file on both sides: a build with what it rests on, or a part file or settings by themselves. */
export interface FileComparison {
  readonly kind: JudgedFile['kind'];
  /** `touched`: its text is the same, files that it rests on differ. */
  readonly state: 'added' | 'removed' | 'moved' | 'changed' | 'touched';
  readonly file: string;
  readonly movedFrom?: string;
  readonly title?: string;
  /** Files that it rests on and that differ, itself left out. */
  readonly because: readonly string[];
  readonly worstBefore?: Grade;
  readonly worstAfter?: Grade;
  readonly findings: readonly FindingChange[];
  readonly moved: readonly Movement[];
  readonly newlyUnknown: readonly string[];
  readonly newlyKnown: readonly string[];
  /** Steps of the work that came, went or stand elsewhere. */
  readonly steps: readonly { readonly kind: 'added' | 'removed' | 'moved'; readonly step: string }[];
  /** Of a machine’s record that stands on both sides: the days of reading, and what changed. */
  readonly record?: {
    readonly takenBefore?: string;
    readonly takenAfter?: string;
    readonly changes: readonly RecordChange[];
  };
}

export interface Comparison {
  readonly before: string;
  readonly after: string;
  readonly on: string;
  /** Files that differ or rest on files that do; those with the worst changes first. */
  readonly files: readonly FileComparison[];
  readonly covers: { readonly builds: number; readonly touched: number; readonly unknown: number };
  /** What was not read on either side: then the comparison is not whole. */
  readonly troubles: readonly (NotRead & { readonly side: 'before' | 'after' })[];
}

/** The version of Fettle, as `1.2.0`. */
export declare const version: string;

/**
 * Finds the builds and part files of a folder of this machine, of a revision of git, or of texts in memory. Files are
 * read when they are first needed and then kept: read the workspace again to see a change. Nothing outside the folder's
 * workspace is read, nothing is run but git, and only for `revision` and `settingsFrom`.
 * @throws Error where there is no such folder or revision; its message says which.
 */
export declare function readWorkspace(from: string | Files, options?: ReadOptions): Promise<Workspace>;

/**
 * Judges one build of a workspace with every file that it rests on; the result is plain data.
 * @param file its path as in `workspace.builds`
 * @throws Error where the workspace has no such build, or it cannot be read; its message says why. What is wrong inside
 *   a build is a finding and never thrown.
 */
export declare function judgeBuild(workspace: Workspace, file: string, options?: JudgeOptions): Promise<JudgedBuild>;

/**
 * What a change does to the builds: two workspaces compared, each build that differs or rests on a file that does. The
 * result is plain data.
 */
export declare function compare(before: Workspace, after: Workspace, options?: CompareOptions): Promise<Comparison>;
