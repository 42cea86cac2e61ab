// Answers to what may be written: at once with what could be tried of the parts, the rest of them while nobody waits.
import { languageOf } from '../core/words/names';
import type { CancellationToken } from 'vscode-languageserver/node';
import { completion } from '../features/completion';
import type { CompletionList } from '../features/completion-item';
import { Fits } from '../features/fit';
import type { Position } from '../features/shapes';
import type { PartIndex } from '../session/part-index';
import type { AnalyzedFile } from '../session/session';
import type { Shared } from './findings';
import { wordsOf } from './guard';
import { withParts } from './with-parts';

/** How many parts are tried whole for one answer: counted, so that a slow machine answers the same. */
const triedAtOnce = 12;
/** How many while nobody waits, before others get their turn. */
const triedAtATime = 4;
/** How many turns are taken where nobody has asked yet. */
const turnsAhead = 10;

export class Completions {
  private readonly fits = new Fits();
  /** The file that the rest is tried for; only the last one asked about matters. */
  private going: AnalyzedFile | undefined;

  constructor(
    private readonly shared: Shared,
    private readonly shelf: PartIndex,
    private readonly pause: () => Promise<void>,
  ) {}

  async answer(judged: AnalyzedFile, position: Position, token: CancellationToken): Promise<CompletionList> {
    const { untried, ...list } = await this.list(judged, position, token, triedAtOnce);
    this.going = judged;
    if (untried)
      void this.tryRest(judged, position).catch((error: unknown) =>
        this.shared.log(`textDocument/completion: ${wordsOf(error)}`),
      );
    return list;
  }

  /** Tries the first of what may stand in a place that nobody has asked about yet. */
  async ahead(judged: AnalyzedFile, position: Position, stopped: () => boolean): Promise<void> {
    for (let turn = 0; turn < turnsAhead; turn++) {
      await this.pause();
      if (stopped() || this.going === judged || !this.shared.session.holds(judged)) return;
      const { untried } = await this.list(judged, position, never, triedAtATime);
      if (!untried) return;
    }
  }

  /** Tries what is left for as long as the text stays; the next answer then has it. */
  private async tryRest(judged: AnalyzedFile, position: Position): Promise<void> {
    for (let untried: boolean | undefined = true; untried; ) {
      await this.pause();
      if (this.going !== judged || !this.shared.session.holds(judged)) return;
      ({ untried } = await this.list(judged, position, never, triedAtATime));
    }
  }

  private list(
    judged: AnalyzedFile,
    position: Position,
    token: CancellationToken,
    trials: number,
  ): Promise<CompletionList> {
    const { client } = this.shared;
    return withParts(this.shared, this.shelf, judged, token, false, (parts) =>
      completion(judged, position, {
        language: languageOf(this.shared.language, judged.build),
        markup: client.markdown ? 'markdown' : 'plaintext',
        snippets: client.snippets,
        labelDetails: client.labelDetails,
        resolves: client.resolvesItems,
        ...(client.own.suggest === undefined ? {} : { again: client.own.suggest }),
        parts,
        fits: this.fits,
        trials,
      }),
    );
  }
}

const never: CancellationToken = { isCancellationRequested: false, onCancellationRequested: () => ({ dispose() {} }) };
