// Whether two places of a board could take lanes from each other, by where their lanes come from.
import type { Build } from '../build/build';
import { wiringOf } from './lanes';
import { memo } from './memo';
import type { Slot } from './slots';

/**
 * Whether a slot shares nothing with another as far as anyone would build it: their lanes come from different sides, or
 * the processor brings enough for all slots on it. Source: common practice; a switch shares lanes of one side only.
 */
export function sharesNothing(build: Build, slot: Slot | undefined, other: Slot | undefined): boolean {
  const side = slot?.from.value;
  const otherSide = other?.from.value;
  if (side === undefined || otherSide === undefined) return false;
  return side !== otherSide || (side === 'processor' && enoughForAll(build));
}

/** A SATA port is the chipset’s: a slot on the processor that carries no SATA leaves it alone. */
export const sparesPorts = (slot: Slot | undefined): boolean =>
  slot?.from.value === 'processor' &&
  (slot.kind.value === 'PCIe' ||
    (slot.carries.value?.every(({ value }) => value !== undefined && value.bus !== 'SATA') ?? false));

/** Whether the processor brings lanes for every slot on it at once. */
const enoughForAll = memo((build: Build): boolean => {
  const { board, processor } = build.parts;
  const brought = processor?.part.lanes.value;
  const slots = [...(board?.part.slots.value?.values() ?? [])];
  if (brought === undefined || slots.some(({ from }) => from.value === undefined)) return false;
  const wanted = slots
    .filter(({ from }) => from.value === 'processor')
    .reduce((sum, slot) => sum + wiringOf(build, slot).lanes.hi, 0);
  return wanted <= brought;
});
