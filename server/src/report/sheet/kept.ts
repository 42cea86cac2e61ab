// What a sheet keeps from one state of its build to the next: parts of which all that they were made from is as it was.
import type { Build } from '../../core/build/build';
import { changedOf } from '../../core/build/changed';
import { haveCommon, Reads, type RoleSet } from '../../core/build/reads';

/** A part as it was made, with what it was made from: roles and sections of the build, and what it was told beside. */
interface Part {
  readonly value: unknown;
  readonly roles: RoleSet;
  readonly told: readonly string[];
}

/** Belongs to whoever shows the sheet of one build again and again; nothing of it depends on lines. */
export class Kept {
  private build: Build | undefined;
  /** What is another in the build than before; undefined where that may be anything. */
  private changed: RoleSet | undefined;
  private before: ReadonlyMap<string, Part> = new Map();
  private parts = new Map<string, Part>();
  private readonly made = new WeakMap<object, unknown>();

  /** The sheet is to be made of this state of the build. What the sheet before did not make use of is forgotten. */
  begin(build: Build): this {
    this.changed = this.build && changedOf(this.build, build);
    this.build = build;
    this.before = this.parts;
    this.parts = new Map();
    return this;
  }

  /**
   * A part that is made of the build, which notes what is read of it, and of what it is `told`: everything else that
   * it depends on, as text. `roles`: what that rests on where the text does not say all of it.
   */
  part<T>(name: string, told: readonly string[], make: (build: Build) => T, roles: RoleSet = 0): T {
    const kept = this.before.get(name);
    const stands =
      kept && this.changed !== undefined && !haveCommon(kept.roles | roles, this.changed) && isSame(kept.told, told);
    if (stands) return this.take(name, kept) as T;
    const reads = new Reads();
    const value = make(this.build!.viewedBy(reads));
    this.parts.set(name, { value, roles: reads.roles | roles, told });
    return value;
  }

  /** A part that is made of what it is told alone. */
  ofText<T>(name: string, told: readonly string[], make: () => T): T {
    const kept = this.before.get(name);
    if (kept && isSame(kept.told, told)) return this.take(name, kept) as T;
    const value = make();
    this.parts.set(name, { value, roles: 0, told });
    return value;
  }

  private take(name: string, kept: Part): unknown {
    this.parts.set(name, kept);
    return kept.value;
  }

  /** What is made of a part alone: once for as long as the part is kept. */
  of<P extends object, T>(part: P, make: (part: P) => T): T {
    if (!this.made.has(part)) this.made.set(part, make(part));
    return this.made.get(part) as T;
  }
}

const isSame = (some: readonly string[], others: readonly string[]): boolean =>
  some.length === others.length && some.every((text, i) => text === others[i]);
