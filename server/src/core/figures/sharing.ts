// Whether two places of a board could take lanes from each other, by where their lanes come from.
import type { Build } from '../build/build';
import type { Missing } from './figure';
import { wiringOf } from './lanes';
import { memo } from './memo';
import type { Slot } from './slots';

/**
 * Whether a slot shares nothing with another as far as anyone would build it: their lanes come from different sides, or
 * the processor brings enough for all slots on it. Source: common practice; a switch shares lanes of one side only.
 */
export function sharesNothing(build: Build, slot: Slot | undefined, other: Slot | undefined): boolean {
  if (isMain(slot)) return true;
  const sides = [sideOf(slot), sideOf(other)];
  if (sides.includes('processor') && enoughForAll(build)) return true;
  return !sides.includes(undefined) && sides[0] !== sides[1];
}

/** Whether facts are all of what slots halve, none of which shares anything with this slot. */
export function asksOfSharingAlone(build: Build, slot: Slot | undefined, facts: readonly Missing[]): boolean {
  const slots = [...(build.parts.board?.part.slots.value?.values() ?? [])];
  return (
    facts.length > 0 &&
    facts.every(({ fact }) => {
      const by = slots.find(({ halves }) => halves === fact);
      return by !== undefined && (sharesNothing(build, by, slot) || halvesNone(by, slot));
    })
  );
}

/** Where a slot’s lanes come from: as stated; no chipset has 16 for one slot. */
const sideOf = (slot: Slot | undefined): 'processor' | 'chipset' | undefined =>
  slot?.from.value ?? (isMain(slot) ? 'processor' : undefined);

/** A slot of 16 lanes gives lanes away to others, and takes none from them. */
const isMain = (slot: Slot | undefined): boolean => slot?.kind.value === 'PCIe' && slot.lanes.value === 16;

/** Sockets of modules switch each other off, where they share at all, and halve none. */
export const halvesNone = (slot: Slot | undefined, other: Slot | undefined): boolean =>
  slot?.kind.value === 'M.2' && other?.kind.value === 'M.2';

/** A SATA port is the chipset’s: a slot on the processor that carries no SATA leaves it alone. */
export const sparesPorts = (slot: Slot | undefined): boolean =>
  isMain(slot) ||
  (slot?.from.value === 'processor' &&
    (slot.kind.value === 'PCIe' ||
      (slot.carries.value?.every(({ value }) => value !== undefined && value.bus !== 'SATA') ?? false)));

/** Whether the processor brings lanes for every slot on it at once, and for those that may be on it. */
const enoughForAll = memo((build: Build): boolean => {
  const { board, processor } = build.parts;
  const brought = processor?.part.lanes.value;
  const slots = [...(board?.part.slots.value?.values() ?? [])];
  if (brought === undefined) return false;
  const wanted = slots
    .filter((slot) => sideOf(slot) !== 'chipset')
    .reduce((sum, slot) => sum + wiringOf(build, slot).lanes.hi, 0);
  return wanted <= brought;
});
