// A run that takes what the run before it judged, where all of that still stands, and judges the rest.
import { isTrouble, type Host } from '../host/host';
import type { Store } from '../host/store';
import { safe } from '../report/layout';
import type { Tally } from '../report/tally';
import { Doc } from '../core/parts/doc';
import type { LoadedFile, Loader } from '../session/loader';
import { Mending } from '../session/mending';
import { shortPath, type RunTrouble } from '../session/run-trouble';
import { fileRef } from '../session/texts';
import type { Ours } from '../session/walk';
import { buildsAmong, Judging, pathsOf } from './judged';
import { KeptJudgements } from './kept-judgements';
import type { Printed } from './one-by-one';
import { isWhole, separators, type Format } from './printers';
import type { Stale } from './stale';
import { Stretches, type Piece, type Setup } from './stretch';
import { refusal, type World } from './world';

/** @throws Refusal where nothing can be kept in the folder. */
export function keptRun(
  folder: string,
  format: Format,
  loader: Loader,
  setup: Omit<Setup, 'format'>,
  world: World,
): KeptRun {
  const store = world.store(folder);
  if (isTrouble(store)) throw refusal`${shortPath(folder)}: ${store}`;
  if (!isWhole(format)) throw refusal`--cache keeps what is written as text or JSON.`;
  return new KeptRun(world.host, loader, { ...setup, format }, store, world);
}

export class KeptRun implements Printed {
  private readonly judging: Judging;
  private readonly mending: Mending;
  private readonly own: Stretches;
  private readonly kept: KeptJudgements;

  constructor(
    private readonly host: Host,
    private readonly loader: Loader,
    private readonly setup: Setup,
    store: Store,
    { digest, program }: World,
  ) {
    const { files, alone, allFixes } = setup;
    this.judging = new Judging({ host, loader, files, alone });
    this.mending = new Mending(loader, allFixes ? 'all' : 'first', buildsAmong(files));
    this.own = new Stretches(host, loader, setup, this.mending);
    const tried = new Map<string, Promise<string>>();
    const partsOf = (file: Ours, folders: readonly string[]): Promise<string> => {
      const key = JSON.stringify([file.root, folders]);
      const asking = { place: fileRef(host, file.root, file.name), house: { folders } };
      if (!tried.has(key)) tried.set(key, this.mending.partsTried(asking).then(digest));
      return tried.get(key)!;
    };
    const listed = pathsOf(host, files);
    this.kept = new KeptJudgements({ host, store, setup, listed, partsOf, digest, program: program() });
  }

  get troubles(): readonly RunTrouble[] {
    return this.judging.troubles;
  }

  /** Says why nothing could be kept for the next run, which changes nothing of this one. */
  tell({ err, language }: World): void {
    if (this.kept.failed !== undefined)
      err(`fettle: ${safe(language().words`nothing is kept for the next run: ${this.kept.failed}`)}\n`);
  }

  async *texts(tally: Tally, stale: Stale): AsyncGenerator<string> {
    let between = '';
    for (const file of this.setup.files) {
      this.kept.turn(file);
      for (const piece of (await this.kept.of(file, this.mending.budget)) ?? (await this.judged(file))) {
        const { known, root, moved, text } = piece;
        tally.take(piece.tally);
        const doc = known === undefined ? undefined : await this.loader.texts.read(fileRef(this.host, root, known));
        stale.take(root, doc instanceof Doc ? doc : undefined, moved);
        yield text === undefined ? '' : between + text;
        if (text !== undefined) between = separators[this.setup.format];
      }
    }
    this.kept.end();
  }

  private async judged(file: Ours): Promise<readonly Piece[]> {
    const before = this.judging.troubles.length;
    const pieces: Piece[] = [];
    let loaded: LoadedFile | undefined;
    for await (const run of this.judging.of(file)) {
      loaded ??= run.file;
      const { notSought: _, ...piece } = await this.own.piece(run, this.judging);
      pieces.push(piece);
    }
    const isUntroubled = this.judging.troubles.length === before;
    await this.kept.keep(file, isUntroubled ? loaded : undefined, pieces);
    return pieces;
  }
}
