// What a bench sheet is made of: plain data in blocks that stay apart, so that only what changed is drawn anew.
import type { Grade } from '../../core/manifest/house-file';
import type { SignalWord } from '../../core/trade/signal-words';
import type { Language } from '../../core/words/language';
import type { Picture } from './pictures/picture';

/**
 * What something on the sheet stands for, by a key that no other line of the file changes: its path in the build, as
 * `parts.drives.scratch`, `expect.power.wall`, `steps.3` (counted from nought); in a part file `holm/s750::rating`.
 */
export type PlaceKey = string;

/** Text of one line, as it stands in files: whoever prints it escapes it. */
export interface Line {
  readonly text: string;
  readonly place?: PlaceKey;
  /** Findings about it, by their numbers on the sheet. */
  readonly findings?: readonly number[];
  /** Where the text is a grade: how it is marked. */
  readonly grade?: Grade;
}

/** A cell of a table; `write` is left empty, to be written in at the bench. */
export type Cell = Line | 'write';

export interface Row {
  readonly place?: PlaceKey;
  /** Whether it begins with a box to tick. */
  readonly tick: boolean;
  readonly cells: readonly [Line, ...Cell[]];
}

export interface Table {
  readonly type: 'table';
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
}

/** A box to tick, with what is to be done; `write` names what is to be written beside it. */
export interface Tick extends Line {
  readonly detail?: string;
  readonly write?: string;
}

/** A safety message: signal word, then hazard, consequence, avoidance and to whom it defers, in this order. */
export interface SheetCaution {
  readonly word: SignalWord;
  /** The word in another language, where the sheet is in one. */
  readonly called?: string;
  readonly sentences: readonly string[];
  readonly place?: PlaceKey;
}

export interface SheetStep {
  /** As it is counted on the sheet; instructions of a route are counted by themselves. */
  readonly number: number;
  readonly title: string;
  readonly place?: PlaceKey;
  /** To be read before it. */
  readonly cautions: readonly SheetCaution[];
  /** What it is done to, and where that goes. */
  readonly things: readonly Line[];
  readonly notes: readonly string[];
  readonly reasons: readonly string[];
  readonly findings: readonly number[];
  /** What is to be written in beside it. */
  readonly write?: string;
}

/** One figure or fact of a working, as deep as it stands below another. */
export interface WorkingRow extends Line {
  readonly depth: number;
  readonly value: string;
  /** Formula, source and origin, in words. */
  readonly from: string;
}

export interface SheetFinding {
  readonly number: number;
  readonly grade: Grade;
  readonly id: string;
  /** What is judged, in words of the build. */
  readonly subject: string;
  readonly place?: PlaceKey;
  readonly text: string;
  readonly accepted?: string;
  readonly caution?: SheetCaution;
  readonly mends: readonly string[];
  readonly working: readonly WorkingRow[];
}

export type Body =
  | { readonly type: 'lines'; readonly lines: readonly Line[] }
  | { readonly type: 'ticks'; readonly title?: string; readonly items: readonly Tick[]; readonly small?: true }
  | Table
  | { readonly type: 'steps'; readonly steps: readonly SheetStep[] }
  | { readonly type: 'cautions'; readonly cautions: readonly SheetCaution[] }
  | { readonly type: 'finding'; readonly finding: SheetFinding }
  | { readonly type: 'picture'; readonly picture: Picture }
  | { readonly type: 'write'; readonly labels: readonly string[] };

/** One part of the sheet; its `id` stays the same whatever else changes. */
export interface Block {
  readonly id: string;
  readonly heading: string;
  readonly level: 2 | 3;
  readonly bodies: readonly Body[];
}

export interface Sheet {
  /** The language that it is told in; absent: English. */
  readonly language?: Language;
  readonly title: string;
  readonly purpose: string;
  /** What was found, in one sentence: the first thing to read. */
  readonly verdict: string;
  readonly worst?: Grade;
  /** Where and when: a line each. */
  readonly facts: readonly Line[];
  /** To be written in by whoever works by it. */
  readonly write: readonly string[];
  readonly blocks: readonly Block[];
}

export const lines = (...of: readonly Line[]): Body => ({ type: 'lines', lines: of });
export const table = (caption: string, columns: readonly string[], rows: readonly Row[]): Body => ({
  type: 'table',
  caption,
  columns,
  rows,
});

/** A text of a file on one line. */
export const oneLine = (text: string): string => (/[^\S ]| {2}/.test(text) ? text.replace(/\s+/g, ' ') : text).trim();

export const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
