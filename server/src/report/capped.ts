// The worst of many things that come one after the other: so many are kept, however many come.

interface Ranked<T> {
  readonly rank: number;
  readonly nth: number;
  readonly value: T;
}

export class Capped<T> {
  private held: Ranked<T>[] = [];
  /** What does not rank before this is not kept any more. */
  private bar = Infinity;
  offered = 0;

  constructor(private readonly most: number) {}

  /** The lower the rank, the worse; of alike ones the first stay. What is not kept is never made. */
  add(rank: number, make: () => T): void {
    const nth = this.offered++;
    if (rank >= this.bar) return;
    this.held.push({ rank, nth, value: make() });
    if (this.held.length >= 2 * this.most) this.trim();
  }

  /** Those kept, the worst first. */
  get all(): readonly T[] {
    this.trim();
    return this.held.map(({ value }) => value);
  }

  /** How many came and are not kept. */
  get cut(): number {
    return this.offered - Math.min(this.offered, this.most);
  }

  private trim(): void {
    this.held.sort((a, b) => a.rank - b.rank || a.nth - b.nth);
    if (this.held.length < this.most) return;
    this.held.length = this.most;
    this.bar = this.held.at(-1)?.rank ?? Infinity;
  }
}

/**
 * Room in a file that is written as things come: what is bad enough may take all of it, the rest leaves half to them.
 */
export class Room {
  private taken = 0;
  cut = 0;

  constructor(private readonly most: number) {}

  takes(size: number, isBad: boolean): boolean {
    if (this.taken + size > (isBad ? this.most : this.most / 2)) {
      this.cut++;
      return false;
    }
    this.taken += size;
    return true;
  }
}

/** The length of a text in UTF-8. */
export function utf8Bytes(text: string): number {
  let sum = text.length;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    // Half of a pair comes to two bytes, any other unit from U+0800 to three.
    if (unit > 0x7f) sum += unit > 0x7ff && (unit & 0xf800) !== 0xd800 ? 2 : 1;
  }
  return sum;
}
