// What is likely to be asked for next is made ready while nobody waits: the kinds of all part files once a build is
// opened, and the first trials for the part that the cursor rests at.
import { partNear } from '../features/part-near';
import type { Position } from '../features/shapes';
import type { PartIndex } from '../session/part-index';
import type { Completions } from './completions';
import type { Shared } from './findings';
import type { After } from './grace';
import { wordsOf } from './guard';

/** Milliseconds without a step after which nobody is taken to wait: an editor asks much when it opens a file. */
const quietMs = 150;

export class Ahead {
  private takeBack: () => void = () => undefined;
  /** Counts steps: what was begun before the last one is given up. */
  private step = 0;

  constructor(
    private readonly shared: Shared,
    private readonly shelf: PartIndex,
    private readonly completions: Completions,
    private readonly after: After,
  ) {}

  /** A file was opened, or the cursor rests in one. Files that only the client can read are not asked for unbidden. */
  likely(uri: string, position?: Position): void {
    this.takeBack();
    const own = ++this.step;
    const { client, session, log } = this.shared;
    if (client.own.files === true || session.kindAt(uri) !== 'build') return;
    this.takeBack = this.after(
      quietMs,
      () =>
        void this.prepare(uri, position, () => this.step !== own || !session.isOpen(uri)).catch((error: unknown) =>
          log(`making ready for ${uri}: ${wordsOf(error)}`),
        ),
    );
  }

  private async prepare(uri: string, position: Position | undefined, stopped: () => boolean): Promise<void> {
    const { session, client } = this.shared;
    const judged = await session.judge(uri);
    if (!judged?.build || stopped()) return;
    await this.shelf.note(judged, stopped);
    // Nobody would tell of a file that comes: the kinds that are noted stay, the list is made anew.
    if (!client.watches) this.shelf.forget();
    const place = position && !stopped() ? partNear(judged, position) : undefined;
    if (place) await this.completions.ahead(judged, place, stopped);
  }
}
