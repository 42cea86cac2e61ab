// Figures of M.2 modules: how far they stand out above and below their boards.
import { M2_BOARD_MM, M2_COMPONENTS_MM, M2_THINNEST_MM } from '../trade/m2';
import { between, copyWith, decidedBy, derive, figure, missing, type Figure } from './figure';
import type { Drive } from './storage';

const manuals = 'drive makers’ M.2 module manuals';

/** Without a heat sink, what stands out on a side keeps to the standard. */
const bare = (label: string, { part }: Drive): Figure =>
  decidedBy(between(0, M2_COMPONENTS_MM, 'length', label, { unit: 'mm', source: manuals }), part['heat-sink']);

/**
 * How far a module stands out above its board. A thickness may count the board and what is below it, or not: a sheet
 * does not tell, unless it is too little for the whole.
 */
export function heightAbove(drive: Drive): Figure {
  const { 'height-above': above, thickness, 'heat-sink': sink } = drive.part;
  const label = `height of ${drive.label} above its board`;
  if (above.node) return figure(above, label);
  if (sink.value === false && (!thickness.value || thickness.value.hi >= M2_THINNEST_MM)) return bare(label, drive);
  const printed = figure(thickness, `thickness of ${drive.label}`);
  if (printed.hi < M2_THINNEST_MM || printed.missing.length > 0) return printed;
  const rest = copyWith(
    between(0, M2_BOARD_MM + M2_COMPONENTS_MM, 'length', 'board and components below it, where they are counted in', {
      unit: 'mm',
      source: `${manuals}; from memory: a module’s board is 0.8 mm`,
    }),
    { missing: [missing(above, label)] },
  );
  const work = (whole: number, less: number): number => Math.max(0, whole - less);
  return derive(label, 'length', [printed, rest], 'thickness − what is below', work, { unit: 'mm' });
}

/** How far components stand out below a module’s board. */
export function heightBelow(drive: Drive): Figure {
  const { 'height-below': below } = drive.part;
  const label = `height of ${drive.label} below its board`;
  return below.node
    ? figure(below, label)
    : copyWith(between(0, M2_COMPONENTS_MM, 'length', label, { unit: 'mm', source: manuals }), {
        missing: [missing(below, label)],
      });
}
