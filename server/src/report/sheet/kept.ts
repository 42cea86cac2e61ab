// What a sheet keeps from one state of its build to the next: parts of which all that they were made from is as it was.
import type { Build } from '../../core/build/build';
import { changedOf } from '../../core/build/changed';
import { haveCommon, Reads, type RoleSet } from '../../core/build/reads';

/** Everything that a part depends on beside the build: texts, and parts that are kept themselves. */
type Told = readonly (string | object)[];

/** A part as it was made, with what it was made from: areas of the build, and what it was told beside. */
interface Part {
  readonly value: unknown;
  readonly roles: RoleSet;
  readonly told: Told;
  /** What of the build has changed since it was made or found to stand. */
  changed: RoleSet;
  /** For how many states of the build nobody has asked for it. */
  unasked: number;
}

/** A part that nobody asks for any more is forgotten after so many states. */
const mostUnasked = 10;

/** Belongs to whoever shows the sheet of one build again and again; nothing of it depends on lines. */
export class Kept {
  private build: Build | undefined;
  private readonly parts = new Map<string | object, Part>();
  /** Blocks that every sheet has, as they were last made. */
  private readonly blocks = new Map<string, object>();
  private readonly made = new WeakMap<object, unknown>();

  /** The sheet, or some of it, is to be made of this state of the build. */
  begin(build: Build): this {
    if (this.build === build) return this;
    const changed = this.build && changedOf(this.build, build);
    this.build = build;
    if (changed === undefined) this.parts.clear();
    else
      this.parts.forEach((part, name) => {
        part.changed |= changed;
        if (++part.unasked > mostUnasked) this.parts.delete(name);
      });
    return this;
  }

  /**
   * A part that is made of the build, which notes what is read of it, and of what it is `told`. `name`: a text, or the
   * very thing that it is a part for. `roles`: what that rests on where it is not told all of it.
   */
  part<T>(name: string | object, told: Told, make: (build: Build) => T, roles: RoleSet = 0): T {
    const kept = this.standing(name, told, roles);
    if (kept) return kept.value as T;
    const reads = new Reads();
    const value = make(this.build!.viewedBy(reads));
    this.parts.set(name, { value, roles: reads.roles | roles, told, changed: 0, unasked: 0 });
    return value;
  }

  /** A part that is made of what it is told alone. */
  ofText<T>(name: string, told: Told, make: () => T): T {
    const kept = this.standing(name, told, 0);
    if (kept) return kept.value as T;
    const value = make();
    this.parts.set(name, { value, roles: 0, told, changed: 0, unasked: 0 });
    return value;
  }

  private standing(name: string | object, told: Told, roles: RoleSet): Part | undefined {
    const kept = this.parts.get(name);
    if (!kept || haveCommon(kept.roles | roles, kept.changed) || !isSame(kept.told, told)) return undefined;
    kept.changed = 0;
    kept.unasked = 0;
    return kept;
  }

  /** A block that says what the one of that id said before is that one. */
  asBefore<B extends { readonly id: string }>(block: B): B {
    const before = this.blocks.get(block.id);
    if (before && isAlike(before, block)) return before as B;
    this.blocks.set(block.id, block);
    return block;
  }

  /** What is made of a part alone: once for as long as the part is kept. */
  of<P extends object, T>(part: P, make: (part: P) => T): T {
    if (!this.made.has(part)) this.made.set(part, make(part));
    return this.made.get(part) as T;
  }
}

const isSame = (some: Told, others: Told): boolean =>
  some.length === others.length && some.every((one, i) => one === others[i]);

/** Whether plain data says the same. */
function isAlike(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((item, i) => isAlike(item, other[i]));
  if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) return false;
  const [some, others] = [one as Readonly<Record<string, unknown>>, other as Readonly<Record<string, unknown>>];
  for (const key in others) if (!(key in some)) return false;
  for (const key in some) if (!(key in others) || !isAlike(some[key], others[key])) return false;
  return true;
}
