// What a sheet keeps from one state of its build to the next: parts of which all that they were made from is as it was.
import type { Build } from '../../core/build/build';
import { changedOf } from '../../core/build/changed';
import { haveCommon, Reads, type RoleSet } from '../../core/build/reads';

/** A part as it was made, with what it was made from: roles and sections of the build, and what it was told beside. */
interface Part {
  readonly value: unknown;
  readonly roles: RoleSet;
  readonly told: readonly string[];
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
  private readonly parts = new Map<string, Part>();
  private readonly made = new WeakMap<object, unknown>();

  /** The sheet, or some of it, is to be made of this state of the build. */
  begin(build: Build): this {
    const changed = this.build && changedOf(this.build, build);
    this.build = build;
    if (changed === undefined) this.parts.clear();
    for (const [name, part] of this.parts) {
      part.changed |= changed!;
      if (++part.unasked > mostUnasked) this.parts.delete(name);
    }
    return this;
  }

  /**
   * A part that is made of the build, which notes what is read of it, and of what it is `told`: everything else that
   * it depends on, as text. `roles`: what that rests on where the text does not say all of it.
   */
  part<T>(name: string, told: readonly string[], make: (build: Build) => T, roles: RoleSet = 0): T {
    const kept = this.parts.get(name);
    if (kept && !haveCommon(kept.roles | roles, kept.changed) && isSame(kept.told, told)) return stands<T>(kept);
    const reads = new Reads();
    const value = make(this.build!.viewedBy(reads));
    this.parts.set(name, { value, roles: reads.roles | roles, told, changed: 0, unasked: 0 });
    return value;
  }

  /** A part that is made of what it is told alone. */
  ofText<T>(name: string, told: readonly string[], make: () => T): T {
    const kept = this.parts.get(name);
    if (kept && isSame(kept.told, told)) return stands<T>(kept);
    const value = make();
    this.parts.set(name, { value, roles: 0, told, changed: 0, unasked: 0 });
    return value;
  }

  /** What is made of a part alone: once for as long as the part is kept. */
  of<P extends object, T>(part: P, make: (part: P) => T): T {
    if (!this.made.has(part)) this.made.set(part, make(part));
    return this.made.get(part) as T;
  }
}

function stands<T>(part: Part): T {
  part.changed = 0;
  part.unasked = 0;
  return part.value as T;
}

const isSame = (some: readonly string[], others: readonly string[]): boolean =>
  some.length === others.length && some.every((text, i) => text === others[i]);
