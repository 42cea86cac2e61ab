// A data sheet as rows: what every way of reading one gives, and what facts are drafted from.
import { endOfLines } from '../text';

/** One line of a table: a label, and a cell for each of its columns. */
export interface SheetRow {
  readonly label: string;
  /** The heading that it stands under; empty where there is none. */
  readonly heading: string;
  readonly cells: readonly string[];
  /** From 1. */
  readonly line: number;
  /** Rows of one table share a number. */
  readonly table: number;
  /** Whether label and value were told apart by a known label alone: `Socket AM5`. */
  readonly isLoose?: boolean;
}

/** A line that is no row of anything. */
export interface LooseLine {
  readonly text: string;
  readonly line: number;
}

export interface Sheet {
  readonly title?: string;
  /** The title of a page as a whole, beside its heading. */
  readonly page?: string;
  readonly rows: readonly SheetRow[];
  readonly loose: readonly LooseLine[];
  /** Whether each cell of a row is of a part of its own, where there is but one as well. */
  readonly isOfParts?: boolean;
  /** Notes below a table, by the mark that leads to them. */
  readonly notes: ReadonlyMap<string, string>;
  /** Where the text breaks off: within a line, or within a row of a page; absent of a whole one. */
  readonly brokenAt?: number;
}

/** Whether a text is a label that some field has; what stands alone on a line is known by it. */
export type IsLabel = (text: string) => boolean;

/** Where a text of lines breaks off: its last one has no end. */
export function lastLineOf(text: string): { readonly brokenAt?: number } {
  const end = endOfLines(text);
  return text.slice(end).trim() === '' ? {} : { brokenAt: end };
}

/** No data sheet is longer; past it nothing is read. */
export const sheetLimits = { characters: 1_000_000, rows: 5000, cells: 40, cellCharacters: 2000 } as const;
