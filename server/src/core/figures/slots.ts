// The board's slots: which part sits in which, which are free, and what filling one takes from others.
import type { Build, Placed } from '../build/build';
import type { board } from '../parts/board';
import type { Fact, Group } from '../parts/fact';
import type { Link } from '../trade/links';
import { missing, type Missing } from './figure';
import { memo, memoOf } from './memo';

export type Slot = Group<(typeof board)['slots']['of']['fields']>;
/** A part that can sit in a slot of the board. */
export type Seated = Placed<'drives'> | Placed<'graphics'> | Placed<'cards'>;

/**
 * The slot a part names: found, or not known for want of some fact. `by`: the fact that names it; undefined for one
 * that is only thought of.
 */
export type Seat = { readonly by?: Fact<string>; readonly missingFacts: readonly Missing[] } & (
  | { readonly name: string; readonly slot: Slot }
  | { readonly name?: string; readonly slot?: undefined }
);

export const placeOf = (placed: Seated): Fact<string> => placed.at.slot;

/** The slot that a part sits in, or the fact that would tell: the part’s slot, or the slot among the board’s. */
export function seatOf(build: Build, placed: Seated): Seat {
  const at = placeOf(placed);
  if (at.value === undefined) return { by: at, missingFacts: [missing(at, `slot of ${placed.label}`)] };
  const { board } = build.parts;
  const slot = board?.part.slots.value?.get(at.value);
  if (slot) return { by: at, name: at.value, slot, missingFacts: [] };
  return { by: at, name: at.value, missingFacts: board ? [slotMissing(board, at.value)] : [] };
}

/** What a drive’s bus is called among links; no slot carries SAS. */
export const linkBuses = { NVMe: 'PCIe', SATA: 'SATA', USB: 'USB', SAS: undefined } as const;

/**
 * Whether a slot carries a bus, by its kind or its list; undefined where it has no list, or one that cannot be read
 * whole.
 */
export function carriesBus({ kind, carries }: Slot, bus: Link['bus'] | undefined): boolean | undefined {
  if (kind.value === 'PCIe') return bus === 'PCIe';
  if (carries.value?.some(({ value }) => value !== undefined && value.bus === bus)) return true;
  return carries.value?.every(({ value }) => value !== undefined) ? false : undefined;
}

function slotMissing(board: Placed<'board'>, name: string): Missing {
  const { slots } = board.part;
  return { doc: slots.doc, path: `${slots.path}.${name}`, fact: slots, what: `slot ${name} of ${board.label}` };
}

/** All parts that can sit in slots. */
export const seated = memo((build: Build): readonly Seated[] => [
  ...build.parts.graphics,
  ...build.parts.cards,
  ...build.parts.drives,
]);

/** The slots that are filled, by name, with the parts that say they sit there. */
export const filled = memo((build: Build): ReadonlyMap<string, readonly Seated[]> => {
  const by = new Map<string, Seated[]>();
  for (const placed of seated(build)) {
    const name = placeOf(placed).value;
    if (name !== undefined) by.set(name, [...(by.get(name) ?? []), placed]);
  }
  return by;
});

/** The card in a slot that carries M.2 drives, of which then several may name that slot. */
export const carrierIn = (build: Build, name: string): Placed<'cards'> | undefined =>
  build.parts.cards.find(({ at, part }) => at.slot.value === name && (part.carries.value ?? 0) > 0);

/** Slots of the board in which nothing says it sits. */
export const freeSlots = memo((build: Build): readonly (readonly [string, Slot])[] => {
  return [...(build.parts.board?.part.slots.value ?? [])].filter(([name]) => !filled(build).has(name));
});

/** A filled slot that does something to another name, or of which nothing states whether it does. */
export interface Effect {
  readonly by: string;
  readonly does: boolean;
  /** The slots’ names as the parts in it state them, and the list of what filling it does. */
  readonly byFacts: readonly Fact<unknown>[];
  readonly missingFacts: readonly Missing[];
}

type SharingKey = 'takes-from' | 'halves';
/** One filled slot: the names its list holds, and what would tell of more. */
interface Acting {
  readonly by: string;
  readonly of: readonly Seated[];
  readonly names: readonly (string | undefined)[];
  readonly byFacts: readonly Fact<unknown>[];
  readonly missingFacts: readonly Missing[];
}

const acting = {
  'takes-from': memo((build) => actingBy(build, 'takes-from')),
  halves: memo((build) => actingBy(build, 'halves')),
} as const;

function actingBy(build: Build, way: SharingKey): readonly Acting[] {
  const { board } = build.parts;
  if (!board) return [];
  return [...filled(build)].map(([by, of]): Acting => {
    const list = board.part.slots.value?.get(by)?.[way];
    const byFacts = [...of.map(placeOf), ...(list ? [list] : [])];
    if (!list) return { by, of, names: [], byFacts, missingFacts: [slotMissing(board, by)] };
    const names = list.value?.map((item) => item.value) ?? [];
    const open = list.value === undefined || names.includes(undefined);
    return {
      by,
      of,
      names,
      byFacts,
      missingFacts: open ? [missing(list, `what ${by} ${way === 'halves' ? 'halves' : 'switches off'}`)] : [],
    };
  });
}

/** What the filled slots that name nothing in particular leave open, by who is thought of as leaving. */
const leftOpen = {
  'takes-from': memoOf((build: Build, mover: Seated | undefined) => effectsOf(build, undefined, 'takes-from', mover)),
  halves: memoOf((build: Build, mover: Seated | undefined) => effectsOf(build, undefined, 'halves', mover)),
} as const;
/** All names that a filled slot does something to. */
const named = {
  'takes-from': memo((build) => namedBy(build, 'takes-from')),
  halves: memo((build) => namedBy(build, 'halves')),
} as const;

const namedBy = (build: Build, way: SharingKey): ReadonlySet<string | undefined> =>
  new Set(acting[way](build).flatMap(({ names }) => names));

/**
 * What the other filled slots do to `name`, a slot or a port: `takes-from` switches it off, `halves` halves its lanes.
 * A part that names no slot is not counted as filling one; nor is `mover`, which is thought of as leaving its slot.
 * For all places that are free and that no slot names it is the same list.
 */
export function effectsOn(build: Build, name: string, way: SharingKey, mover?: Seated): readonly Effect[] {
  return named[way](build).has(name) || filled(build).has(name)
    ? effectsOf(build, name, way, mover)
    : leftOpen[way](build, mover);
}

function effectsOf(build: Build, name: string | undefined, way: SharingKey, mover?: Seated): readonly Effect[] {
  return acting[way](build).flatMap(({ by, of, names, byFacts, missingFacts }) => {
    if (by === name || of.every((one) => one === mover)) return [];
    const does = name !== undefined && names.includes(name);
    return does || missingFacts.length > 0 ? [{ by, does, byFacts, missingFacts: does ? [] : missingFacts }] : [];
  });
}
