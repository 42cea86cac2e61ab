// What a comparison of two workspaces says, as plain data: nothing in it holds a file’s text or a build.
import type { CautionWords } from '../core/checks/page';
import type { Grade } from '../core/manifest/house-file';
import type { DocKind } from '../core/parts/doc';

/** A finding on one of the two sides. */
export interface ComparedFinding {
  readonly id: string;
  readonly grade: Grade;
  /** What is judged, in words of the build. */
  readonly subject: string;
  readonly text: string;
  readonly file: string;
  /** Counted from one. */
  readonly line: number;
  /** Stable within its file: see `fingerprints`. */
  readonly fingerprint: string;
  /** By how much it is broken, where a number decides: `12 W`. */
  readonly excess?: string;
  /** Facts it waits for. */
  readonly missing: readonly string[];
  /** Why the build accepts it. */
  readonly accepted?: string;
  /** The safety message of what could hurt someone or ruin a part. */
  readonly caution?: CautionWords;
  /** Says that something was not read: it stands whatever the other side says. */
  readonly unread: boolean;
}

/**
 * `worse`, `better`: the same subject with another grade or number. `undecided`: it was broken, and waits for facts now
 * or cannot be judged. `silenced`: settings switch its check off or make it lighter. `accepted`: the build accepts now
 * what it did not.
 */
export const changeKinds = [
  'new',
  'worse',
  'undecided',
  'silenced',
  'accepted',
  'cleared',
  'better',
  'unchanged',
] as const;
export type ChangeKind = (typeof changeKinds)[number];

export interface FindingChange {
  readonly kind: ChangeKind;
  readonly before?: ComparedFinding;
  readonly after?: ComparedFinding;
}

/** A stated fact that differs between the sides, and so moved a figure; a side is absent where it is not stated. */
export interface ChangedFact {
  readonly what: string;
  readonly before?: { readonly file: string; readonly line: number; readonly text: string };
  readonly after?: { readonly file: string; readonly line: number; readonly text: string };
}

/** Something that moved, before → after, both absolute. */
export interface Movement {
  /** `power at the wall`, `read rate of scratch`. */
  readonly what: string;
  /** Absent where the thing is not there on that side. */
  readonly before?: string;
  readonly after?: string;
  /** With its sign, where both are exact: `+12 W`. */
  readonly difference?: string;
  /** Whether that is for the better; absent where it depends. */
  readonly isBetter?: boolean;
  /** The figure is the same, though several of the facts behind it are others. */
  readonly cancels?: true;
  /** The changed lines it rests on. */
  readonly why: readonly ChangedFact[];
}

/** Steps of the work that the parts give, in words; a moved step stands elsewhere among those that stayed. */
export interface StepChange {
  readonly kind: 'added' | 'removed' | 'moved';
  readonly step: string;
}

/**
 * What changed of a thing in a finished machine, by two records of it. `moved`: it sits elsewhere; `swapped`: another
 * is in its place, by its name or by the key made from its serial number; `not-shown`, `shown`: no output shows it now,
 * or none did before, so that nothing is said of whether it is there.
 */
export interface RecordChange {
  readonly kind: 'added' | 'removed' | 'moved' | 'swapped' | 'changed' | 'shown' | 'not-shown';
  /** `drive scratch`, `memory D5-6000-32 in A2`, `board`. */
  readonly thing: string;
  /** The record’s key; absent where the thing as a whole is meant. */
  readonly fact?: string;
  readonly before?: ChangedFact['before'];
  readonly after?: ChangedFact['after'];
  /** With its sign, where both are exact: `+382 h`. */
  readonly difference?: string;
  /** Absent where it depends. */
  readonly isBetter?: boolean;
}

/** Two records of one machine. */
export interface RecordComparison {
  /** The days on which the machine was read. */
  readonly takenBefore?: string;
  readonly takenAfter?: string;
  readonly changes: readonly RecordChange[];
}

/** How a file differs: `touched`: its text is the same, files that it rests on differ. */
export type FileState = 'added' | 'removed' | 'moved' | 'changed' | 'touched';

/** One file on both sides: a build with what it rests on, or a part file or settings by themselves. */
export interface FileComparison {
  readonly kind: DocKind;
  readonly state: FileState;
  /** As it is called on the later side, else on the earlier. */
  readonly file: string;
  /** Where it was before, if elsewhere. */
  readonly movedFrom?: string;
  readonly title?: string;
  /** Files that it rests on and that differ, itself left out. */
  readonly because: readonly string[];
  readonly worstBefore?: Grade;
  readonly worstAfter?: Grade;
  readonly findings: readonly FindingChange[];
  readonly moved: readonly Movement[];
  /** Facts that no file states any more, or that are asked for the first time. */
  readonly newlyUnknown: readonly string[];
  readonly newlyKnown: readonly string[];
  readonly steps: readonly StepChange[];
  /** Of a machine’s record that stands on both sides. */
  readonly record?: RecordComparison;
}

export interface Trouble {
  readonly side: 'before' | 'after';
  readonly path: string;
  readonly trouble: string;
}

export interface Comparison {
  /** How the sides are called: a revision with its first digits, `working tree`, a folder. */
  readonly before: string;
  readonly after: string;
  /** The day that counts as today on both sides. */
  readonly on: string;
  /** Files that differ or rest on files that do; those with the worst changes first. */
  readonly files: readonly FileComparison[];
  readonly covers: {
    /** Builds on either side. */
    readonly builds: number;
    /** Those of them that the change touches. */
    readonly touched: number;
    /** Answers that wait for facts in the touched builds, after the change. */
    readonly unknown: number;
  };
  /** What was not read on either side: then the comparison is not whole. */
  readonly troubles: readonly Trouble[];
}

/** Whether the change alters what is judged or any figure: false for one of layout and names alone. */
export const altersAnything = ({ files }: Comparison): boolean => files.some(alters);

/** Whether a file’s change shows in anything but its text. */
export const alters = (file: FileComparison): boolean =>
  file.findings.some(({ kind }) => kind !== 'unchanged') || movesOf(file) > 0;

/** How much of a file moves that is no finding. */
export const movesOf = ({ moved, newlyUnknown, newlyKnown, steps, record }: FileComparison): number =>
  moved.length + newlyUnknown.length + newlyKnown.length + steps.length + (record?.changes.length ?? 0);

/** What a change brings is new, or got worse. */
export const isBrought = ({ kind }: FindingChange): boolean => kind === 'new' || kind === 'worse';
