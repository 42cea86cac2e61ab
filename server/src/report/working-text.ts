// The working of a finding laid out for a terminal: a table where it fits, else each origin on a line of its own.
import type { Step } from '../core/judge/working-steps';
import { english } from '../core/words/languages';
import { block, columns, padded, pageWidth, safe } from './layout';
import { lineOf, type FormatOptions } from './section';

interface Row {
  readonly depth: number;
  readonly label: string;
  readonly value: string;
  /** Formula and source, in words. */
  readonly words: string;
  /** File and line: one word that must stay whole, so that it can be clicked and copied. */
  readonly origin: string;
}

/** Where lines stand, and the language of words; absent: English. */
type Look = Pick<FormatOptions, 'shown'> & Partial<Pick<FormatOptions, 'language'>>;

/** Labels wider than this stand on their line with their value behind them. */
const widestLabel = 58;

/** The lines of a working in a column that starts at `from`: label by depth, value, then formula, origin and source. */
export function workingText(steps: readonly Step[], from: number, look: Look): string[] {
  const rows = steps.flatMap((step) => rowsOf(step, 0, look));
  return tableText(rows, from) ?? rows.flatMap((row) => tallText(row, from, columnAfter(rows, labelOf, widestLabel)));
}

function rowsOf(step: Step, depth: number, look: Look): Row[] {
  const { language = english() } = look;
  const words = [
    step.formula && `= ${language.plain(step.formula)}`,
    step.repeated && `(${language.plain('as above')})`,
    step.source && language.plain(step.source),
  ]
    .filter(Boolean)
    .join('; ');
  const row = {
    depth,
    label: safe(step.figure ? language.plain(step.label) : step.label),
    value: safe(step.figure ? language.label(step.value) : step.value),
    words,
    origin: step.from ? lineOf(step.from, look) : '',
  };
  return [row, ...step.inputs.flatMap((input) => rowsOf(input, depth + 1, look))];
}

const labelOf = ({ depth, label }: Row): string => '  '.repeat(depth) + label;
const restOf = ({ words, origin }: Row): string => [origin, words].filter(Boolean).join('; ');

/** How far from the edge the column after some texts starts; texts wider than `most` do not count. */
function columnAfter(rows: readonly Row[], textOf: (row: Row) => string, most = Infinity): number {
  return Math.max(0, ...rows.map((row) => columns(textOf(row))).filter((width) => width <= most)) + 2;
}

/** One line a row, in three columns; undefined where one of them would not fit. */
function tableText(rows: readonly Row[], from: number): string[] | undefined {
  const value = from + columnAfter(rows, labelOf);
  const rest = value + columnAfter(rows, (row) => row.value);
  if (rows.some((row) => rest + columns(safe(restOf(row))) > pageWidth)) return undefined;
  return rows.map((row) =>
    (padded(padded(padded('', from) + labelOf(row), value) + row.value, rest) + safe(restOf(row))).trimEnd(),
  );
}

/** A row with what stands behind it on lines of their own below. */
function tallText(row: Row, from: number, valueAt: number): string[] {
  const indent = from + 2 * row.depth;
  const head =
    columns(labelOf(row)) + 2 > valueAt
      ? block(`${row.label}: ${row.value}`, indent)
      : block(row.value, from + valueAt, padded('', from) + labelOf(row));
  return [...head, ...[row.words, row.origin].filter(Boolean).flatMap((text) => block(text, indent + 4))];
}
