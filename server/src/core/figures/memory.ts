// Figures of memory: modules and the slots they fill, channels, the speed they reach, bandwidth and capacity.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import { channelsFilled } from '../trade/memory';
import { uniqueMissing } from './missing-facts';
import {
  copyWith,
  between,
  counted,
  decidedBy,
  figure,
  least,
  missing,
  number,
  times,
  total,
  unknown,
  writtenAt,
  type Figure,
  type Missing,
} from './figure';
import { valuesOf } from './lists';
import { memo } from './memo';
import { alike } from './memory-sizes';
import { howMany } from './power';

export type Kit = Placed<'memory'>;
export type Board = Placed<'board'>;

const counts = { source: 'counted in the build' } as const;

/** Modules of all kits that go into slots; memory soldered to the board takes none. */
export const modules = memo((build: Build): Figure => total('modules', 'count', build.parts.memory.map(inSlots)));

/** How many modules of a kit take a slot: none that is soldered; left open where only its name speaks of that. */
export function inSlots(kit: Kit): Figure {
  const { soldered, name } = kit.at;
  const many = howMany(kit);
  if (soldered.value === true) return decidedBy(number(0, many.label, 'soldered to the board'), soldered);
  if (soldered.value === false || !NAMES_SOLDERED.test(name.value ?? '')) return decidedBy(many, soldered);
  const open = between(0, many.hi, 'count', many.label, counts);
  return decidedBy(copyWith(open, { missing: [missing(soldered, `whether ${kit.label} is soldered`)] }), name);
}

/** Names under which builds list memory that comes with the board. Source: common practice. */
const NAMES_SOLDERED = /\b(?:soldered|on[- ]?board)\b/i;

/** What all modules hold. */
export const memoryCapacity = memo((build: Build): Figure => {
  const { memory, board } = build.parts;
  const soldered = board?.part.memory.soldered;
  const own = soldered?.node && !memory.some(({ at }) => at.soldered.value === true) ? [soldered] : [];
  const each = alike([
    ...memory.map((kit) => moduleCapacity(kit)),
    ...own.map((size) => figure(size, 'memory soldered to the board')),
  ]);
  const unit = each.find((one) => one.unit)?.unit;
  return total(
    'memory in all',
    'data-size',
    each.map((one, i) => {
      const kit = memory[i];
      return kit ? times(one, howMany(kit)) : one;
    }),
    unit ? { unit } : {},
  );
});

export const moduleCapacity = (kit: Kit): Figure => figure(kit.part.capacity, `capacity of ${kit.label}`);

/** Slots that a kit names; undefined when it names none. */
export const slotsNamed = (kit: Kit): readonly Fact<string>[] | undefined => kit.at.slots.value;

/** How many memory slots the board has. */
export function boardSlots(board: Board): Figure {
  const { slots } = board.part.memory;
  const label = `memory slots of ${board.label}`;
  if (!slots.value) return unknown('count', label, [missing(slots, label)]);
  return copyWith(number(slots.value.length, label, 'counted in the board’s list'), { from: writtenAt(slots) });
}

/** The order in which the board wants its slots filled: those to fill first, then the others as they stand. */
export function fillOrder(
  board: Board,
): { readonly order: readonly string[] } | { readonly missingFacts: readonly Missing[] } {
  const { slots, 'fill-first': first } = board.part.memory;
  const all = valuesOf(slots);
  const early = valuesOf(first);
  if (all && early) return { order: [...early, ...all.filter((slot) => !early.includes(slot))] };
  const missingFacts = [
    ...(all ? [] : [missing(slots, `memory slots of ${board.label}`)]),
    ...(early ? [] : [missing(first, `slots to fill first on ${board.label}`)]),
  ];
  return { missingFacts };
}

/** The slots that are filled, kit by kit: those a kit names, else the next in the board’s order; or what would tell. */
export interface Filling {
  readonly byKit: readonly (readonly string[])[];
  readonly missingFacts: readonly Missing[];
}

export const filling = memo((build: Build): Filling => {
  const { board, memory } = build.parts;
  const named = memory.map((kit) => slotsNamed(kit)?.flatMap((slot) => slot.value ?? []));
  if (!named.includes(undefined)) return { byKit: named as string[][], missingFacts: [] };
  if (!board) return { byKit: [], missingFacts: [{ doc: build.doc, path: 'parts.board', what: 'the board' }] };
  if (modules(build).missing.length > 0) return { byKit: [], missingFacts: modules(build).missing };
  const order = nextSlots(build, board);
  if ('missingFacts' in order) return { byKit: [], missingFacts: order.missingFacts };
  const free = order.order.filter((slot) => !named.some((own) => own?.includes(slot)));
  return { byKit: memory.map((kit, i) => named[i] ?? free.splice(0, inSlots(kit).hi)), missingFacts: [] };
});

/** Where every slot is filled, no order is needed to say which ones. */
function nextSlots(build: Build, board: Board): ReturnType<typeof fillOrder> {
  const all = valuesOf(board.part.memory.slots);
  return all && modules(build).lo === all.length ? { order: all } : fillOrder(board);
}

/** The board’s channels by name, each with its slots; undefined when not stated in full. */
export function channelsOf(board: Board): ReadonlyMap<string, readonly string[]> | undefined {
  const by = new Map<string, readonly string[]>();
  for (const [name, slots] of board.part.memory.channels.value ?? []) {
    const own = valuesOf(slots);
    if (!own) return undefined;
    by.set(name, own);
  }
  return by.size === 0 ? undefined : by;
}

/** Channels that the filled slots use, no more than the processor has. */
export const channelsUsed = memo((build: Build): Figure => {
  const { board, processor } = build.parts;
  const onBoard = boardChannels(build, board);
  if (!processor) return onBoard;
  return least('memory channels used', [
    onBoard,
    counted(processor.part.memory.channels, `memory channels of ${processor.label}`),
  ]);
});

function boardChannels(build: Build, board: Board | undefined): Figure {
  const label = 'channels of the filled slots';
  const channels = board && channelsOf(board);
  const { byKit, missingFacts } = filling(build);
  const open = [
    ...missingFacts,
    ...(board && !channels ? [missing(board.part.memory.channels, `memory channels of ${board.label}`)] : []),
  ];
  if (!board) open.push({ doc: build.doc, path: 'parts.board', what: 'the board' });
  if (open.length > 0)
    return copyWith(between(1, mostChannels(build), 'count', label, counts), {
      missing: uniqueMissing([{ missing: open }]),
    });
  const used = channelsFilled(channels!, byKit.flat());
  return copyWith(number(used, label, 'the board’s channels with a module in them'), {
    from: writtenAt(board!.part.memory.channels),
  });
}

/** A DIMM fills one channel; a CAMM2 module may fill two. */
function mostChannels(build: Build): number {
  return build.parts.memory.reduce((sum, kit) => {
    const { value } = kit.part.shape;
    return sum + howMany(kit).hi * (value === 'DIMM' || value === 'SO-DIMM' ? 1 : 2);
  }, 0);
}

/**
 * Channels of the machine: as the processor states them, else as the board lists them, else by the letters of its
 * slots. Source of the last: common practice, A1 and A2 share a channel.
 */
export const channelCount = memo((build: Build): Figure => {
  const { board, processor } = build.parts;
  const label = 'memory channels';
  if (processor?.part.memory.channels.node) return counted(processor.part.memory.channels, label);
  const channels = board && channelsOf(board);
  if (board && channels) return decidedBy(number(channels.size, label), board.part.memory.channels);
  const letters = board && valuesOf(board.part.memory.slots)?.map((slot) => /^([A-Z])[-_]?\d$/.exec(slot)?.[1]);
  if (board && letters && letters.length > 0 && !letters.includes(undefined))
    return decidedBy(number(new Set(letters).size, label, 'common practice'), board.part.memory.slots);
  const where = processor ? processor.part.memory.channels : board?.part.memory.channels;
  return unknown('count', label, where ? [missing(where, label)] : []);
});
