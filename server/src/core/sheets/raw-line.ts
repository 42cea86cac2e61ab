// One line of a plain text: its cells, and how it stands.
import { plainLine } from './clean';
import { sheetLimits } from './sheet';

export interface RawLine {
  readonly cells: readonly string[];
  /** Whether the cells were told apart by columns, and not by a colon. */
  readonly hasColumns: boolean;
  readonly indent: number;
  readonly line: number;
  readonly text: string;
  /** The line with its bullet, if it has one. */
  readonly start: string;
  /** Whether it begins with an empty column: it goes on with the row above. */
  readonly isCarried: boolean;
  /** Where the second of its columns stands, told apart by blanks; -1 where there is none. */
  readonly valueAt: number;
}

/** The lines of a text, numbered from 1. */
export function rawLines(texts: readonly string[]): RawLine[] {
  const isBarred = (at: number): boolean => texts[at]?.includes('|') ?? false;
  const isPadded = texts.every((text) => text.split('\t').filter((cell) => cell.trim() !== '').length <= 2);
  return texts.map((text, at) =>
    rawLine(
      isBarred(at) && !isBarred(at - 1) && !isBarred(at + 1) && LIST.test(text)
        ? text.replaceAll(' | ', ', ')
        : isPadded
          ? text.replace(/(?<=\S)\t+(?=\S)/g, '\t')
          : text,
      at + 1,
    ),
  );
}

/** `Inputs: 1x DisplayPort 1.4 | 2x HDMI 2.1`, alone among lines without bars: a list, and no row of a table. */
const LIST = /^[^|:]{2,60}: [^|]{1,60} \| [^|]/;

/** A line as it stands: its cells by tabs, bars, leaders or wide blanks, else by the first colon or equals sign. */
function rawLine(text: string, line: number): RawLine {
  const indent = text.length - text.trimStart().length;
  const body = text
    .trim()
    .replace(/^[•▪●◦‣·○■□➤►✓✔*+-]\s+/, '')
    .trim();
  const columns = columnsOf(body);
  const cells = columns.length > 1 ? splitHead(/^\t/.test(text) ? ['', ...columns] : columns) : pairOf(body);
  return {
    cells: cells.map(plainLine),
    hasColumns: columns.length > 1,
    indent,
    line,
    text: plainLine(body),
    start: text.trim().slice(0, 300),
    isCarried: /^\t/.test(text) && columns.length === 1,
    valueAt: columns.length > 1 && !text.includes('\t') ? text.indexOf(columns[1]!, indent + columns[0]!.length) : -1,
  };
}

function columnsOf(body: string): string[] {
  if (body.includes('\t')) return trimmedEnds(body.split('\t'));
  if (/^\|.*\|$/.test(body) || /\S \| \S/.test(body)) return barred(body);
  if (/\.{4}|(?: \.){3}|…{2}/.test(body)) return body.split(/\s?(?:\.{4,}|(?: \.){3,}|…{2,})\s?/).filter(Boolean);
  return body.split(/ {2,}/);
}

function barred(body: string): string[] {
  if (/^[|+\-=:\s]+$/.test(body)) return [];
  return trimmedEnds(body.replace(/^\|/, '').replace(/\|$/, '').split('|'));
}

/** A first cell that is empty carries a value on for the label above; empty ones at the end say nothing. */
function trimmedEnds(cells: readonly string[]): string[] {
  const last = cells.findLastIndex((cell) => cell.trim() !== '');
  return cells.slice(0, Math.min(last + 1, sheetLimits.cells)).map((cell) => cell.trim());
}

/** `Label: value | other value`: the colon of the first column parts it too. */
function splitHead(columns: readonly string[]): string[] {
  const [first = '', ...rest] = columns;
  if (first.endsWith(':')) return [first.slice(0, -1), ...rest];
  const [label, value] = rest.length > 1 ? [first] : pairOf(first);
  return value === undefined ? [first, ...rest] : [label!, value, ...rest];
}

/** At the first colon before a blank or at the end, or at ` = `, ` – `: a label is short, and no sentence. */
export function pairOf(body: string): string[] {
  const at = [...body.matchAll(/ ?[:：](?=\s|$)| = | [–—] /g)][0];
  const before = body.slice(0, at?.index ?? 0);
  if (at && / [–—] /.test(at[0]) && /^[-+−]?\d[\d.,]{0,8}(?: ?\S{1,3})?$/.test(before)) return [body];
  if (!at || at.index === 0 || at.index > 70 || before.lastIndexOf('(') > before.lastIndexOf(')')) return [body];
  return [body.slice(0, at.index), body.slice(at.index + at[0].length).trim()];
}

/** `* Actual speeds vary`, `1) with an optional bracket`. */
export function notesOf(lines: readonly RawLine[]): Map<string, string> {
  const notes = new Map<string, string>();
  for (const { start } of lines) {
    const [, mark, said] = /^(\*{1,3}|[†‡§¹²³⁴⁵]|\[\d\]|\d\))\s?(\S.{3,})$/.exec(start) ?? [];
    if (mark && said) notes.set(mark, `${notes.get(mark) ?? ''} ${said}`.trim());
  }
  return notes;
}
