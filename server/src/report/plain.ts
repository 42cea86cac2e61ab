// The plain shapes in which findings leave the program: JSON of `fettle check`, and the library. Nothing is imported
// here, so that the package can publish this file as it stands. Lines and characters count from zero.

/** Worst first: could hurt someone or ruin a part; will not go together; falls short; worth knowing; open. */
export type Grade = 'harm' | 'stop' | 'shortfall' | 'note' | 'unknown';

/** A place in a text: both count from zero, characters in UTF-16 units. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

/** From `start` up to, and without, `end`. */
export interface Range {
  readonly start: Position;
  readonly end: Position;
}

/** Where something stands: its file as the workspace names it, and its path in the file, such as `parts.cooler`. */
export interface Place {
  readonly file: string;
  readonly range: Range;
  readonly path: string;
}

/** A fact that no file states and that an answer waits for: `line` is where it would belong, where that is known. */
export interface MissingFact {
  readonly file: string;
  readonly line?: number;
  readonly path: string;
  readonly what: string;
}

/** One figure or fact behind a finding, with those it was worked out from. */
export interface WorkingStep {
  readonly label: string;
  /** With its unit, as people read it. */
  readonly value: string;
  readonly dimension?: string;
  /** In the dimension’s base unit; absent where the value is open downwards. */
  readonly low?: number;
  /** In the dimension’s base unit; absent where the value is open upwards. */
  readonly high?: number;
  readonly formula?: string;
  readonly source?: string;
  readonly from?: Place;
  /** Its inputs stand at an earlier step with the same label. */
  readonly repeated?: boolean;
  readonly inputs: readonly WorkingStep[];
}

/** A finding by its check, grade and place in words of the file. */
export interface NamedFinding {
  readonly id: string;
  readonly grade: Grade;
  readonly path: string;
}

/** A fix that was applied to a copy and judged: its finding is gone, and nothing as bad has come. */
export interface Fix {
  readonly title: string;
  readonly file: string;
  /** They do not overlap, and hold for the text that was judged. */
  readonly edits: readonly { readonly range: Range; readonly text: string }[];
  /** Lighter findings that it brings. */
  readonly brings: readonly NamedFinding[];
  /** All findings that it clears. */
  readonly clears: readonly NamedFinding[];
  /** It mends by giving way: a promise lowered, a stated fact written otherwise, a safety text replaced. */
  readonly givesWay: boolean;
}

/** A safety message, in the signal words of the trade’s standard. */
export interface Caution {
  readonly word: string;
  readonly hazard: string;
  readonly consequence: string;
  readonly avoidance: string;
  readonly defersTo: string;
}

export interface Finding extends Place {
  /** The check’s id, such as `cooler-too-tall`; never used for another meaning. */
  readonly id: string;
  readonly grade: Grade;
  readonly message: string;
  /** Of grade unknown: the facts that would decide it; empty where a range leaves it open. */
  readonly missing: readonly MissingFact[];
  /** Further lines that it rests on, those that decide first. */
  readonly related: readonly (Place & { readonly what: string })[];
  readonly caution?: Caution;
  /** By how much it is broken, where a number decides; `amount` in the dimension’s base unit. */
  readonly excess?: { readonly value: string; readonly dimension: string; readonly amount: number };
  /** Present where the build accepts it: its own words. */
  readonly accepted?: {
    readonly because: string;
    readonly atMost?: string;
    readonly until?: string;
    readonly by?: string;
  };
  /** Present where it is recorded as known: by whom, until when, and whether it still is let stand. */
  readonly known?: { readonly state: 'counts' | 'past' | 'worse'; readonly by: string; readonly until: string };
  readonly working?: readonly WorkingStep[];
  /** Stays the same when lines move, keys are reordered or parts are renamed; no two of a file are alike. */
  readonly fingerprint: string;
  /** Proven fixes, best first, as far as they were looked for. */
  readonly fixes: readonly Fix[];
}

/** A total of a build: known, or known within bounds, which are in the dimension’s base unit. */
export interface Total {
  /** With its unit, as people read it. */
  readonly value: string;
  readonly dimension: string;
  readonly currency?: string;
  readonly low?: number;
  readonly high?: number;
}

/** What is judged of one file. */
export interface JudgedFile {
  readonly file: string;
  readonly kind: 'build' | 'part' | 'house' | 'known' | 'asbuilt' | 'guide' | 'output';
  /** What the build is called. */
  readonly name?: string;
  /** The worst grade among findings that are not accepted; null where there are none. */
  readonly worst: Grade | null;
  /** How many answers of checks held, broke, wait for facts, and were left open unasked. */
  readonly checks: {
    readonly held: number;
    readonly broken: number;
    readonly unknown: number;
    readonly unasked: number;
  };
  /** What a build comes to in all; a total of which nothing is known is left out. */
  readonly totals?: { readonly cost?: Total; readonly sustainedDraw?: Total; readonly wallPower?: Total };
  /** Worst first, then by place. */
  readonly findings: readonly Finding[];
}

/** What a check is about. */
export interface Explained {
  readonly what: string;
  readonly why: string;
  readonly grade: Grade;
  readonly area: string;
  readonly source: string;
  /** What the check does not see. */
  readonly limits: readonly string[];
  /** Where it gives another grade, and what it leaves to other checks. */
  readonly remarks: readonly string[];
}

/** What kept a file from being read, or a check from being run; `path` is empty where it concerns everything. */
export interface NotRead {
  readonly path: string;
  readonly trouble: string;
}
