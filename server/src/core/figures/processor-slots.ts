// Figures of slots that have other lanes with other processor families, or none at all.
import type { Build } from '../build/build';
import type { Fact } from '../parts/fact';
import { sameProcessorName } from '../trade/processor-names';
import { copyWith, counted, decidedBy, missing, type Figure, type Missing } from './figure';
import type { Slot } from './slots';

/** One end of a PCIe link. */
export interface End {
  readonly lanes: Figure;
  readonly generation: Figure;
}

type Row = NonNullable<Slot['by-processor']['value']>[number];

/** The line for the build’s processor, or what would tell it; neither where no line is for it. */
export interface Line {
  readonly row?: Row;
  readonly missingFacts: readonly Missing[];
  readonly decidedBy: readonly Fact<unknown>[];
}

/** Undefined for a slot that is the same with every processor, and without a processor. */
export function lineFor({ parts: { processor } }: Build, slot: Slot): Line | undefined {
  const rows = slot['by-processor'].value;
  if (!rows || !processor) return undefined;
  const { family, maker } = processor.part;
  if (family.value === undefined)
    return { missingFacts: [missing(family, `family of ${processor.label}`)], decidedBy: [] };
  const row = rows.find((one) => one.family.value && sameProcessorName(one.family.value, family.value!, maker.value));
  return { ...(row ? { row } : {}), missingFacts: [], decidedBy: [family, slot['by-processor']] };
}

/** A slot’s wiring with the build’s processor: as its line says; while the family is unknown, what any line may say. */
export function withProcessor(build: Build, slot: Slot, end: End): End {
  const line = lineFor(build, slot);
  if (!line) return end;
  return {
    lanes: changed(slot, line, 'lanes', end.lanes),
    generation: changed(slot, line, 'generation', end.generation),
  };
}

function changed(slot: Slot, line: Line, key: 'lanes' | 'generation', own: Figure): Figure {
  const read = (row: Row): Figure => counted(row[key], own.label);
  if (line.missingFacts.length === 0) return decidedBy(line.row?.[key].entry ? read(line.row) : own, ...line.decidedBy);
  const any = slot['by-processor'].value!.filter((row) => row[key].entry).map(read);
  const lo = Math.min(own.lo, ...any.map((one) => one.lo));
  const hi = Math.max(own.hi, ...any.map((one) => one.hi));
  return lo === own.lo && hi === own.hi
    ? own
    : copyWith(own, { lo, hi, missing: [...own.missing, ...line.missingFacts] });
}
