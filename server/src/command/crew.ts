// Several threads at one run: files are dealt out in stretches, and reported in their order, whoever judged them.
import { Doc } from '../core/parts/doc';
import type { Host } from '../host/host';
import type { Threads } from '../host/threads';
import type { Tally } from '../report/tally';
import type { Loader } from '../session/loader';
import type { RunTrouble } from '../session/run-trouble';
import { fileRef } from '../session/texts';
import { buildsAmong } from './judged';
import type { Printed } from './one-by-one';
import { Mending } from '../session/mending';
import { separators } from './printers';
import type { Stale } from './stale';
import { Stretches, type Piece, type Setup, type Stretch, type StretchReport } from './stretch';

/** Files of one stretch. */
const ofStretch = 40;
/** Stretches that are dealt out before the first of them is reported, for each thread. */
const ahead = 4;
/** So many builds at the start of a run have fixes looked for, one after the other. */
const mendedBuilds = 100;

/** Fewer files are judged sooner than threads have started and compiled what they run. */
const fewFiles = 2_500;
const mostThreads = 8;
/** Each thread compiles what it runs for itself and has a heap of its own: on fewer cores that costs what it brings. */
const fewCores = 4;

/** How many threads judge so many files, where nothing else is asked for. */
export const threadsFor = (files: number, cores: number): number =>
  files < fewFiles || cores < fewCores ? 1 : Math.min(cores, mostThreads);

export interface CrewOptions {
  readonly host: Host;
  readonly loader: Loader;
  readonly setup: Setup;
  readonly threads: Threads;
  readonly count: number;
}

export class Crew implements Printed {
  private readonly told = new Map<string, RunTrouble>();
  private readonly brought = new Set<string>();
  private readonly mending: Mending;
  private readonly own: Stretches;
  private readonly stretches: readonly Stretch[];
  private readonly firstDealt: number;
  private readonly coming = new Map<number, Promise<StretchReport | undefined>>();

  constructor(private readonly options: CrewOptions) {
    const { host, loader, setup } = options;
    this.mending = new Mending(loader, setup.allFixes ? 'all' : 'first', this.buildsIn({ from: 0, to: Infinity }));
    this.own = new Stretches(host, loader, setup, this.mending);
    const starts = Array.from({ length: Math.ceil(setup.files.length / ofStretch) }, (_, i) => i * ofStretch);
    this.stretches = starts.map((from) => ({ from, to: Math.min(from + ofStretch, setup.files.length) }));
    this.firstDealt = this.findFirst();
  }

  get troubles(): readonly RunTrouble[] {
    return [...this.told.values()];
  }

  end(): Promise<void> {
    return this.options.threads.end();
  }

  async *texts(tally: Tally, stale: Stale): AsyncGenerator<string> {
    let between = '';
    for await (const piece of this.pieces(stale)) {
      tally.take(piece.tally);
      yield piece.text === undefined ? '' : between + piece.text;
      if (piece.text !== undefined) between = separators[this.options.setup.format];
    }
  }

  private async *pieces(stale: Stale): AsyncGenerator<Piece> {
    const { host, loader } = this.options;
    for (let i = 0; i < this.stretches.length; i++) {
      const { pieces, troubles } = await this.reportOf(i);
      for (const trouble of troubles) this.told.set(`${trouble.path}\n${trouble.trouble}`, trouble);
      for (const piece of pieces) {
        const { brought, known, root, moved } = piece;
        if (brought !== undefined && this.brought.has(brought)) continue;
        if (brought !== undefined) this.brought.add(brought);
        const doc = known === undefined ? undefined : await loader.texts.read(fileRef(host, root, known));
        stale.take(root, doc instanceof Doc ? doc : undefined, moved);
        yield piece;
      }
    }
  }

  /** A stretch whose findings may still have fixes looked for, or whose thread failed, is judged here. */
  private async reportOf(index: number): Promise<StretchReport> {
    for (
      let i = Math.max(this.firstDealt, index);
      i < Math.min(index + this.options.count * ahead, this.stretches.length);
      i++
    )
      if (!this.coming.has(i)) this.coming.set(i, this.deal(this.stretches[i]!));
    const stretch = this.stretches[index]!;
    const report = await this.coming.get(index);
    this.coming.set(index, Promise.resolve(undefined));
    if (!report || (report.notSought > 0 && this.mending.isOpen)) return this.own.report(stretch);
    this.mending.pass(this.buildsIn(stretch));
    return report;
  }

  private deal(stretch: Stretch): Promise<StretchReport | undefined> {
    return this.options.threads.run(stretch).then(
      (report) => report as StretchReport,
      () => undefined,
    );
  }

  /** The first stretches have their fixes looked for here, while the threads judge those behind them. */
  private findFirst(): number {
    if (this.options.setup.allFixes) return 0;
    let builds = 0;
    const at = this.stretches.findIndex((stretch) => (builds += this.buildsIn(stretch)) > mendedBuilds);
    return at < 0 ? this.stretches.findLastIndex((stretch) => this.buildsIn(stretch) > 0) + 1 : at;
  }

  private buildsIn({ from, to }: Stretch): number {
    return buildsAmong(this.options.setup.files.slice(from, to));
  }
}
