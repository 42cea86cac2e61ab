// What checks of drives share: modules in their sockets, moves to free places and promises.
import type { Build, Placed } from '../../build/build';
import { missing } from '../../figures/figure';
import { freeSlots, seatOf, type Seat, type Slot } from '../../figures/slots';
import type { Drive } from '../../figures/storage';
import { agree, lacking, sure, type Truth } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { inUnit } from '../../quantity';
import type { Link } from '../../trade/links';
import { m2KeyFits, m2SizeCode, parseM2Keys, parseM2Size, type M2Size } from '../../trade/m2';
import { assign, putOn, type FixIdea } from '../kit';

/** An M.2 module where the build puts it. */
export interface Module {
  readonly placed: Drive | Placed<'cards'>;
  readonly seat: Seat;
}

/**
 * M.2 modules that name a slot: what is plainly no module, or sits in a PCIe slot, is left out;
 * a drive that does not state its shape is not.
 */
export function* modulesOf(build: Build): Iterable<Module> {
  const { board, drives, cards } = build.parts;
  if (!board) return;
  for (const placed of drives) {
    const shape = placed.part.shape.value;
    if (shape === undefined || shape === 'M.2') yield* inSocket(build, placed);
  }
  for (const placed of cards) {
    const edge = placed.part.edge.value;
    if (edge === 'M.2' || (edge === undefined && seatOf(build, placed).slot?.kind.value === 'M.2'))
      yield* inSocket(build, placed);
  }
}

function* inSocket(build: Build, placed: Module['placed']): Iterable<Module> {
  const seat = seatOf(build, placed);
  if (seat.name !== undefined && seat.slot?.kind.value !== 'PCIe') yield { placed, seat };
}

/** What says that a part is a module: a drive’s shape, a card’s edge. */
export const formOf = ({ part }: Module['placed']): Fact<unknown> => ('shape' in part ? part.shape : part.edge);

/** The size of a module: its own fact, or what stands beside its shape, as in `M.2 2280`. */
export function sizeOf({ part }: Module['placed']): Fact<M2Size> {
  if (part.size.node || !('shape' in part) || part.shape.value !== 'M.2') return part.size;
  const beside = parseM2Size(part.shape.text);
  return beside ? { ...part.shape, value: beside, replaced: undefined } : part.size;
}

/**
 * Whether a module’s notches meet the key of a socket. A module on four lanes is cut for key M, the only one that has
 * them.
 */
export function keyFits(
  slot: Slot,
  name: string,
  key: Module['placed']['part']['key'],
  label: string,
  link?: Fact<Link>,
): Truth {
  const lanes = link?.value?.bus === 'PCIe' ? link.value.lanes : 0;
  if (!key.node && lanes >= 4 && parseM2Keys(slot.key.value ?? '')?.includes('M')) return sure(true, slot.key, link!);
  return agree(key, `key of ${label}`, slot.key, `key of ${name}`, (module, socket) =>
    (parseM2Keys(socket) ?? []).some((one) => m2KeyFits(parseM2Keys(module) ?? [], one)),
  );
}

/** Whether a socket has a post for a module’s size. */
export function sizeFits({ sizes }: Slot, name: string, size: Fact<M2Size>, label: string): Truth {
  const unread = sizes.value?.find((one) => one.value === undefined);
  const wanted = size.value && m2SizeCode(size.value);
  if (wanted !== undefined && sizes.value?.some((one) => one.value && m2SizeCode(one.value) === wanted))
    return sure(true, size, sizes);
  const missingFacts = [
    ...(size.value ? [] : [missing(size, `size of ${label}`)]),
    ...(sizes.value && !unread ? [] : [missing(unread ?? sizes, `sizes of ${name}`)]),
  ];
  return missingFacts.length > 0 ? lacking(missingFacts) : sure(false, size, sizes);
}

/** Moves into free slots of the board that suit, in the board’s order; where none does, drives may change places. */
export function* moves(
  build: Build,
  placed: Module['placed'],
  suits: (slot: Slot) => boolean,
): Iterable<FixIdea | undefined> {
  const free = freeSlots(build).filter(([, slot]) => suits(slot));
  for (const [name] of free) yield putOn(placed, 'slot', name, `Move ${placed.label} to ${name}`);
  if (free.length === 0 && placed.role === 'drives') yield assign('drives', 'drives');
}

export { some } from '../kit';

/** A rate written so that it never promises more than is reached. */
export function floorRate(bytesPerSecond: number): string {
  const unit = bytesPerSecond >= 1e9 ? 'GB/s' : 'MB/s';
  const value = inUnit(bytesPerSecond, unit);
  return `${unit === 'GB/s' ? Math.floor(value * 100) / 100 : Math.floor(value)} ${unit}`;
}

/** A capacity written so that it never promises more than there is. */
export function floorSize(bytes: number): string {
  const unit = bytes >= 1e12 ? 'TB' : bytes >= 1e9 ? 'GB' : 'MB';
  const value = inUnit(bytes, unit);
  return `${unit === 'TB' ? Math.floor(value * 100) / 100 : Math.floor(value)} ${unit}`;
}

/**
 * Whether a drive may sit in a bay, held by screws: not where it plainly sits in a slot, stands outside on USB, or
 * has another shape.
 */
export function mayBeHoused({ at, part: { bus, shape } }: Drive): boolean {
  if (at.slot.value !== undefined || (bus.value === 'USB' && at.bay.value === undefined)) return false;
  return shape.value !== 'M.2' && shape.value !== 'card';
}
