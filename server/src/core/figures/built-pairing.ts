// Pairs parts of a build with things of a machine: by own names, by what is reported, by place, else by what is plain.
import type { Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import { howMany } from './power';

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
  /** Parts that nothing tells apart, this one among them: which of the things found is whose stays open. */
  readonly alike: readonly P[];
}

export interface Pairs<P extends Placed, T> {
  readonly pairs: readonly Pair<P, T>[];
  /** Things that are no part of the build. */
  readonly left: readonly T[];
}

/** How things of one kind are told apart. */
export interface Ways<P extends Placed, T> {
  /** Whether a thing is the part, by what it reports. */
  readonly names: (placed: P, thing: T) => 'same' | 'other' | 'open';
  /** Whether they stand in the same place; undefined where that is not known. */
  readonly place: (placed: P, thing: T) => boolean | undefined;
  /** Whether a thing has what the part plainly has, so that nothing else can be meant. */
  readonly fits: (placed: P, thing: T) => boolean;
  /** Whether a thing could stand where the part is to stand. */
  readonly kin: (placed: P, thing: T) => boolean;
  /** What tells two alike things apart for as long as they are there, in outputs and in the record of them. */
  readonly mark: (thing: T) => string;
}

export function paired<P extends Placed, T extends Thing>(
  all: readonly P[],
  things: readonly T[],
  ways: Ways<P, T>,
): Pairs<P, T> {
  const work = new Pairing(all, things, ways);
  work.byOwnName();
  work.byReport();
  work.byPlace();
  work.byPlainness();
  work.byNumber();
  return work.result();
}

class Pairing<P extends Placed, T extends Thing> {
  private readonly found = new Map<P, T[]>();
  private readonly free: Set<T>;
  private readonly alike = new Map<P, readonly P[]>();

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
      const rivals = this.rivalsFor(same);
      const here = same.filter((thing) => this.ways.place(placed, thing) === true);
      const chosen = rivals.length === 1 ? (same.length <= this.wants(placed) ? same : here) : here;
      for (const thing of chosen.slice(0, this.wants(placed))) this.take(placed, thing);
    }
    for (const placed of this.all) {
      const same = this.mine(placed);
      const rivals = this.rivalsFor(same);
      // What is left of alike things is one part’s alone.
      if (rivals.length === 1) for (const thing of same.slice(0, this.wants(placed))) this.take(placed, thing);
    }
  }

  /** The parts that still want one of these things by its report. */
  private rivalsFor(things: readonly T[]): P[] {
    return this.all.filter(
      (one) => this.wants(one) > 0 && things.some((thing) => this.ways.names(one, thing) === 'same'),
    );
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
    const wanting = this.all.filter((placed) => this.wants(placed) > 0);
    const plain = wanting.flatMap((placed) => {
      const own = this.fitting(placed);
      const isOnly = own.every((thing) => !wanting.some((one) => one !== placed && this.fitting(one).includes(thing)));
      return own.length > 0 && own.length === this.wants(placed) && isOnly ? [{ placed, own }] : [];
    });
    for (const { placed, own } of plain) for (const thing of own) this.take(placed, thing);
  }

  private fitting(placed: P): T[] {
    return [...this.free].filter((thing) => this.mayBe(placed, thing) && this.ways.fits(placed, thing));
  }

  /** Drives of a mirror: parts of one model that claim the same things have them between them. */
  byNumber(): void {
    const claims = (placed: P): T[] => {
      const same = this.mine(placed);
      return same.length > 0 ? same : this.fitting(placed);
    };
    for (const placed of this.all) {
      const things = claims(placed);
      const rivals = this.all.filter(
        (one) => this.wants(one) > 0 && claims(one).some((thing) => things.includes(thing)),
      );
      const isOneModel = rivals.every((one) => sameModel(one, placed) && isSameSet(claims(one), things));
      const wanted = rivals.reduce((sum, one) => sum + this.wants(one), 0);
      const isNamed = things.every((thing) => this.ways.names(placed, thing) === 'same');
      if (rivals.length < 2 || !isOneModel || (things.length > wanted && !isNamed)) continue;
      for (const one of rivals) {
        this.alike.set(one, rivals);
        const own = things.filter((thing) => this.free.has(thing)).sort(byMark(this.ways.mark));
        const elsewhere = (thing: T): boolean => this.ways.place(one, thing) === false;
        const nearest = [...own.filter((thing) => !elsewhere(thing)), ...own.filter(elsewhere)];
        for (const thing of nearest.slice(0, this.wants(one))) this.take(one, thing);
      }
    }
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
        alike: this.alike.get(placed) ?? [placed],
      };
    });
    const spoken = new Set(pairs.flatMap(({ instead, perhaps }) => [...(instead ? [instead] : []), ...perhaps]));
    return { pairs, left: [...this.free].filter((thing) => !spoken.has(thing)) };
  }
}

const byMark =
  <T>(mark: (thing: T) => string) =>
  (a: T, b: T): number =>
    mark(a) < mark(b) ? -1 : 1;

const isSameSet = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a.length === b.length && a.every((one) => b.includes(one));

const sameModel = ({ part: a }: Placed, { part: b }: Placed): boolean =>
  a.maker.value === b.maker.value && a.model.value === b.model.value;
