// Tables turned round: labels in the first row, and a part in each of the others.
import { isBlank } from './clean';
import type { IsLabel, SheetRow } from './sheet';

/** A row of cells as it stands, from 1. */
export interface CellRow {
  readonly cells: readonly string[];
  readonly line: number;
}

/** Whether cells are the labels of what stands below them. */
export const areLabels = (cells: readonly string[], isLabel: IsLabel): boolean =>
  cells.length > 2 && cells.filter((cell) => isLabel(cell)).length >= 3;

/** Each label with a cell for each part. */
export function across(head: CellRow, parts: readonly CellRow[], table: number, heading = ''): SheetRow[] {
  return head.cells.map((label, index) => ({
    label,
    heading,
    cells: parts.map(({ cells }) => cells[index] ?? ''),
    line: parts[0]?.line ?? head.line,
    table,
  }));
}

/**
 * Whether rows below labels are parts: several, as wide, none of them labels again, and what stands in them is filled.
 * One alone may be the first of a list that was cut off.
 */
export function areParts(head: CellRow, parts: readonly CellRow[], isLabel: IsLabel): boolean {
  return (
    parts.length > 1 &&
    parts.every(
      ({ cells }) =>
        cells.length === head.cells.length && !isBlank(cells[0]!) && cells.filter((cell) => isLabel(cell)).length < 2,
    ) &&
    parts.every(({ cells }) => cells.slice(1).some((cell) => /\d/.test(cell)))
  );
}
