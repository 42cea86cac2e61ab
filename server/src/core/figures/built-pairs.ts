// Parts of a build and what a machine has of their kind, paired: by name and number, by place, else by what is plain.
import type { Build, Placed } from '../build/build';
import type { BuiltDevice, BuiltDisplay, BuiltDrive } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import { CAPACITY_SHARE, isGraphicsClass } from '../trade/reported';
import { reportsAs } from './built-names';
import { memo } from './memo';
import { howMany } from './power';
import type { Drive } from './storage';

/** What a pairing needs to know of a thing in a machine. */
interface Thing {
  readonly name: Fact<string>;
}

export interface Pair<P extends Placed, T> {
  readonly placed: P;
  readonly wanted: number;
  /** The things that are it. */
  readonly found: readonly T[];
  /** Of what is left, the only thing that can stand in its place: it is another. */
  readonly instead: T | undefined;
  /** Things that may be it. */
  readonly perhaps: readonly T[];
}

export interface Pairs<P extends Placed, T> {
  readonly pairs: readonly Pair<P, T>[];
  /** Things that are no part of the build. */
  readonly left: readonly T[];
}

/** How things of one kind are told apart. */
interface Ways<P extends Placed, T> {
  /** Whether a thing is the part, by what it reports. */
  readonly names: (placed: P, thing: T) => 'same' | 'other' | 'open';
  /** Whether they stand in the same place; undefined where that is not known. */
  readonly place: (placed: P, thing: T) => boolean | undefined;
  /** Whether a thing has what the part plainly has, so that nothing else can be meant. */
  readonly fits: (placed: P, thing: T) => boolean;
  /** Whether a thing could stand where the part is to stand. */
  readonly kin: (placed: P, thing: T) => boolean;
}

function paired<P extends Placed, T extends Thing>(
  all: readonly P[],
  things: readonly T[],
  ways: Ways<P, T>,
): Pairs<P, T> {
  const work = new Pairing(all, things, ways);
  work.byOwnName();
  work.byReport();
  work.byPlace();
  work.byPlainness();
  return work.result();
}

class Pairing<P extends Placed, T extends Thing> {
  private readonly found = new Map<P, T[]>();
  private readonly free: Set<T>;

  constructor(
    private readonly all: readonly P[],
    things: readonly T[],
    private readonly ways: Ways<P, T>,
  ) {
    this.free = new Set(things);
    for (const placed of all) this.found.set(placed, []);
  }

  private wants(placed: P): number {
    const { lo } = howMany(placed);
    return (Number.isFinite(lo) ? Math.max(1, lo) : 1) - this.found.get(placed)!.length;
  }

  private take(placed: P, thing: T): void {
    if (this.free.delete(thing)) this.found.get(placed)!.push(thing);
  }

  /** A record says whose a thing is. */
  byOwnName(): void {
    for (const thing of [...this.free]) {
      const name = thing.name.value;
      const own = this.all.find(
        (placed) => name !== undefined && (placed.path === `parts.${name}` || placed.path.endsWith(`.${name}`)),
      );
      if (own) this.take(own, thing);
    }
  }

  /** Parts of one name are told apart by their places; where these do not tell, only if all of them are there. */
  byReport(): void {
    for (const placed of this.all) {
      const same = this.mine(placed);
      const rivals = this.all.filter(
        (one) => this.wants(one) > 0 && same.some((thing) => this.ways.names(one, thing) === 'same'),
      );
      const here = same.filter((thing) => this.ways.place(placed, thing) === true);
      const chosen = rivals.length === 1 ? (same.length <= this.wants(placed) ? same : here) : here;
      for (const thing of chosen.slice(0, this.wants(placed))) this.take(placed, thing);
    }
    for (const placed of this.all) {
      const same = this.mine(placed);
      const rivals = this.all.filter(
        (one) => this.wants(one) > 0 && same.some((thing) => this.ways.names(one, thing) === 'same'),
      );
      // What is left of alike things is one part’s alone.
      if (rivals.length === 1) for (const thing of same.slice(0, this.wants(placed))) this.take(placed, thing);
    }
  }

  private mine(placed: P): T[] {
    return this.wants(placed) > 0 ? [...this.free].filter((thing) => this.ways.names(placed, thing) === 'same') : [];
  }

  /** What sits in the part’s own place, and may be it, is it. */
  byPlace(): void {
    for (const placed of this.all) {
      const here = [...this.free].filter(
        (thing) => this.mayBe(placed, thing) && this.ways.place(placed, thing) === true,
      );
      if (here.length === 1 && this.wants(placed) === 1 && this.ways.fits(placed, here[0]!))
        this.take(placed, here[0]!);
    }
  }

  private mayBe(placed: P, thing: T): boolean {
    return this.wants(placed) > 0 && this.ways.names(placed, thing) !== 'other' && this.ways.kin(placed, thing);
  }

  /** One part and one thing that fit each other and nothing else. */
  byPlainness(): void {
    const fitting = (placed: P): T[] =>
      [...this.free].filter((thing) => this.mayBe(placed, thing) && this.ways.fits(placed, thing));
    const wanting = this.all.filter((placed) => this.wants(placed) > 0);
    const plain = wanting.flatMap((placed) => {
      const own = fitting(placed);
      const isOnly = own.every((thing) => !wanting.some((one) => one !== placed && fitting(one).includes(thing)));
      return own.length > 0 && own.length === this.wants(placed) && isOnly ? [{ placed, own }] : [];
    });
    for (const { placed, own } of plain) for (const thing of own) this.take(placed, thing);
  }

  result(): Pairs<P, T> {
    const wanting = this.all.filter((placed) => this.wants(placed) > 0);
    const kin = (placed: P): T[] => [...this.free].filter((thing) => this.ways.kin(placed, thing));
    const perhapsOf = (placed: P): T[] => kin(placed).filter((thing) => this.mayBe(placed, thing));
    const insteadOf = (placed: P): T | undefined => {
      const own = kin(placed);
      const rivals = wanting.filter((one) => kin(one).length > 0);
      const here = own.filter((thing) => this.ways.place(placed, thing) === true);
      const only = here.length === 1 ? here[0] : own.length === 1 && rivals.length === 1 ? own[0] : undefined;
      const isOther = only && (!this.mayBe(placed, only) || !this.ways.fits(placed, only));
      return isOther ? only : undefined;
    };
    const pairs = this.all.map((placed) => {
      const isWanting = wanting.includes(placed);
      const instead = isWanting ? insteadOf(placed) : undefined;
      return {
        placed,
        wanted: this.wants(placed) + this.found.get(placed)!.length,
        found: this.found.get(placed)!,
        instead,
        perhaps: isWanting && !instead ? perhapsOf(placed).filter((thing) => this.ways.fits(placed, thing)) : [],
      };
    });
    const spoken = new Set(pairs.flatMap(({ instead, perhaps }) => [...(instead ? [instead] : []), ...perhaps]));
    return { pairs, left: [...this.free].filter((thing) => !spoken.has(thing)) };
  }
}

/** Whether a place of the build and one of the machine are the same; undefined where either is not told. */
function samePlace(build: Build, slot: Fact<string>, { at, port }: BuiltDevice | BuiltDrive): boolean | undefined {
  const named = slot.value;
  if (named === undefined) return undefined;
  const port2 = build.parts.board?.part.slots.value?.get(named)?.at.value;
  if (port2 !== undefined && port.value !== undefined) return plainPort(port2) === plainPort(port.value);
  return at.value === undefined ? undefined : plainName(at.value) === plainName(named);
}

const plainPort = (port: string): string => port.toLowerCase().replace(/^0000:/, '');

/** `PCIE_1` and `PCIE1 ` are one name; a firmware’s table drops signs. */
export const plainName = (name: string): string => name.toUpperCase().replace(/[^A-Z0-9]/g, '');

/** The slot in which a thing sits, by the board’s own list of ports, else by the firmware’s table; with its fact. */
export function slotBuilt(
  build: Build,
  thing: BuiltDevice | BuiltDrive,
): { name: string; by: Fact<string> } | undefined {
  const slots = [...(build.parts.board?.part.slots.value ?? [])];
  const { port, at } = thing;
  const byPort = slots.find(
    ([, slot]) =>
      slot.at.value !== undefined && port.value !== undefined && plainPort(slot.at.value) === plainPort(port.value),
  );
  if (byPort) return { name: byPort[0], by: port };
  const byName = slots.find(([name]) => at.value !== undefined && plainName(name) === plainName(at.value));
  return byName && { name: byName[0], by: at };
}

export const driveThings = (build: Build): readonly BuiltDrive[] => build.machine?.drives.value ?? [];
const devices = (build: Build): readonly BuiltDevice[] => build.machine?.devices.value ?? [];

/** Drives of the build against drives of the machine. */
export const drivePairs = memo(
  (build: Build): Pairs<Drive, BuiltDrive> =>
    paired(build.parts.drives, driveThings(build), {
      names: (placed, { reports }) => reportsAs(placed, reports),
      place: (placed, thing) => samePlace(build, placed.at.slot, thing),
      fits: (placed, thing) => sameCapacity(placed, thing) && isKin(placed, thing),
      kin: isKin,
    }),
);

/** No drive of another bus stands for it, where both are told. */
const isKin = ({ part: { bus } }: Drive, thing: BuiltDrive): boolean =>
  bus.value === undefined || thing.bus.value === undefined || bus.value === thing.bus.value;

/** What a drive says of its room is within a hundredth of what its maker states; false where either is not told. */
export function sameCapacity({ part: { capacity } }: Drive, { capacity: found }: BuiltDrive): boolean {
  if (!capacity.value || !found.value) return false;
  const off = capacity.value.hi * CAPACITY_SHARE;
  return found.value.hi >= capacity.value.lo - off && found.value.lo <= capacity.value.hi + off;
}

/** Cards of the build, graphics among them, against devices of the machine. */
export type Card = Placed<'graphics'> | Placed<'cards'>;
export const cardPairs = memo(
  (build: Build): Pairs<Card, BuiltDevice> =>
    paired<Card, BuiltDevice>([...build.parts.graphics, ...build.parts.cards], devices(build), {
      names: (placed, { id, reports }) => reportsAs(placed, id, reports),
      place: (placed, thing) => samePlace(build, placed.at.slot, thing),
      // Of graphics there is one class; what another card is, its class does not tell.
      fits: (placed, thing) =>
        isKinCard(placed, thing) && (placed.role === 'graphics' || samePlace(build, placed.at.slot, thing) === true),
      kin: isKinCard,
    }),
);

const isKinCard = ({ role }: Card, { class: code }: BuiltDevice): boolean =>
  code.value === undefined || (role === 'graphics') === isGraphicsClass(code.value);

/** Displays of the build against those that the machine sees. */
export const displayPairs = memo(
  (build: Build): Pairs<Placed<'displays'>, BuiltDisplay> =>
    paired(build.parts.displays, build.machine?.displays.value ?? [], {
      names: (placed, { id, reports }) => reportsAs(placed, id, reports),
      place: () => undefined,
      fits: () => true,
      kin: () => true,
    }),
);

/** One place of the build with what the machine has for it, of whatever kind. */
export type AnyPair = Pair<Drive, BuiltDrive> | Pair<Card, BuiltDevice> | Pair<Placed<'displays'>, BuiltDisplay>;

export const anyPairs = (build: Build): readonly AnyPair[] => [
  ...drivePairs(build).pairs,
  ...cardPairs(build).pairs,
  ...displayPairs(build).pairs,
];
