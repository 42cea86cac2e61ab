// How far a run is, on one line of a terminal that nothing else is written to, for what takes over a second.
import type { Language } from '../core/words/language';

/** A run is quiet for so long; then its line is written anew at most so often. */
const quietMs = 1_000;
const betweenMs = 200;
const clear = '\r\u001b[K';

export class Progress {
  private readonly begun: number;
  private last = 0;
  private done = 0;

  /** `write`: to a terminal; undefined where there is none, and nothing is ever written. `now` is in ms. */
  constructor(
    private readonly write: ((text: string) => void) | undefined,
    private readonly of: number,
    private readonly now: () => number,
    private readonly language: Language,
  ) {
    this.begun = now();
  }

  /** One more file is done. */
  step(): void {
    this.done = Math.min(this.done + 1, this.of);
    const now = this.now();
    if (!this.write || now - this.begun < quietMs || now - this.last < betweenMs) return;
    this.last = now;
    this.write(clear + this.language.words`${this.done} of ${this.of} files`);
  }

  /** Takes the line away. */
  end(): void {
    if (this.write && this.last > 0) this.write(clear);
    this.last = 0;
  }
}
