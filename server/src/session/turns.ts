// Long work in stretches, between which others have their turn.

export class Turns {
  private begun = performance.now();

  /** Without `pause` the work is done in one stretch. `stretchMs`: how long a stretch lasts at least. */
  constructor(
    private readonly pause: (() => Promise<void>) | undefined,
    private readonly stretchMs: number,
  ) {}

  /** Whether others are to have their turn now. */
  get isOver(): boolean {
    return this.pause !== undefined && performance.now() - this.begun >= this.stretchMs;
  }

  /** Lets them have it; the next stretch begins behind it. */
  async give(): Promise<void> {
    await this.pause?.();
    this.begun = performance.now();
  }
}
