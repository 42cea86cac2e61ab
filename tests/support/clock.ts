// A clock that stands until it is told: what waits for a pause waits for `pass`.
import type { Environment } from '../../server/src/language/serve';

export class Clock {
  private readonly waiting = new Map<number, () => void>();
  private count = 0;

  readonly after: Environment['after'] = (_, done) => {
    const number = ++this.count;
    this.waiting.set(number, done);
    return () => void this.waiting.delete(number);
  };

  /** Time enough goes by for everything that waits. */
  pass(): void {
    const due = [...this.waiting.values()];
    this.waiting.clear();
    for (const done of due) done();
  }
}
