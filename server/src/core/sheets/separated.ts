// The rows of a sheet kept as comma-, semicolon- or tab-separated values.
import { parse } from 'csv-parse/browser/esm/sync';
import { across, areLabels, type CellRow } from './across';
import { plainLine } from './clean';
import { lastLineOf, sheetLimits, type IsLabel, type Sheet, type SheetRow } from './sheet';
import { linesSheet } from './text-lines';

interface Recorded {
  readonly record: readonly string[];
  readonly line: number;
}

/** The mark that parts the most of the first lines alike. */
function delimiterOf(text: string): string {
  const lines = text
    .split(/\r\n?|\n/)
    .filter((line) => line.trim() !== '')
    .slice(0, 20);
  const counts = [';', '\t', ',', '|'].map((mark) => ({
    mark,
    lines: lines.filter((line) => line.includes(mark)).length,
  }));
  return counts.toSorted((a, b) => b.lines - a.lines)[0]?.mark ?? ',';
}

function recordsOf(text: string): Recorded[] {
  try {
    // It counts lines by one kind of line end alone.
    const records = parse(text.replace(/\r\n?/g, '\n'), {
      delimiter: delimiterOf(text),
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: false,
      bom: true,
      info: true,
    }) as unknown as { readonly record: readonly string[]; readonly info: { readonly lines: number } }[];
    return records.map(({ record, info }) => ({
      record,
      line: Math.max(1, info.lines - record.join('').split('\n').length + 1),
    }));
  } catch {
    // Quotes that never end: such a text is no table, and is read as lines.
    return [];
  }
}

/** Reads a table with a label in front of each row, or with labels in its first row and a part in each other. */
export function separatedSheet(whole: string, isLabel: IsLabel): Sheet {
  const text = whole.slice(0, sheetLimits.characters);
  const records = recordsOf(text).slice(0, sheetLimits.rows);
  if (records.length === 0) {
    const lines = text.split(/\r\n?|\n/).map((one, index) => ({ text: one, line: index + 1 }));
    return { ...linesSheet(lines, isLabel), ...lastLineOf(text) };
  }
  const filled = records.map(({ record, line }) => ({
    record: record.map(plainLine).slice(0, sheetLimits.cells),
    line,
  }));
  const head = filled.find(({ record }) => record.some((cell) => cell !== ''));
  const isAcross = head !== undefined && areLabels(head.record, isLabel);
  const rows = isAcross ? across(cellsOf(head), partsBelow(filled, head), 0) : down(filled);
  const title = filled
    .find(({ record }) => record.filter((cell) => cell !== '').length === 1)
    ?.record.find((cell) => cell !== '');
  const loose = filled
    .filter(({ record }) => record.filter((cell) => cell !== '').length === 1)
    .map(({ record, line }) => ({ text: record.join(' ').trim(), line }));
  return {
    ...(title === undefined ? {} : { title }),
    ...(isAcross ? { isOfParts: true } : {}),
    rows,
    loose,
    notes: new Map(),
    ...lastLineOf(text),
  };
}

const cellsOf = ({ record, line }: Recorded): CellRow => ({ cells: record, line });
const partsBelow = (records: readonly Recorded[], head: Recorded): readonly CellRow[] =>
  records
    .slice(records.indexOf(head) + 1)
    .filter(({ record }) => record.some((cell) => cell !== ''))
    .map(cellsOf);

/** A row whose label alone is filled is the heading of those below. */
function down(records: readonly Recorded[]): SheetRow[] {
  const rows: SheetRow[] = [];
  let heading = '';
  for (const { record, line } of records) {
    const last = record.findLastIndex((cell) => cell !== '');
    const [label = '', ...cells] = record.slice(0, last + 1);
    if (cells.length === 0) heading = label;
    else rows.push({ label, heading, cells, line, table: 0 });
  }
  return rows;
}
