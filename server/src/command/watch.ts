// `fettle check --watch`: checks, then checks again what a change touches, until the run is ended; its status is that
// of the files as they stand then.
import type { Doc } from '../core/parts/doc';
import { houseName, isTrouble, splitPath, type Host } from '../host/host';
import { safe } from '../report/layout';
import { listed, type Section } from '../report/section';
import { Tally } from '../report/tally';
import { Loader } from '../session/loader';
import type { RunTrouble } from '../session/run-trouble';
import { withUsers } from '../session/users';
import { walk, type Ours, type Walked } from '../session/walk';
import type { CheckRun } from './judged';
import { Mending } from '../session/mending';
import type { OnlyNew } from './only-new';
import { tellTroubles } from './output';
import { hostFor, judgingOf } from './settings-from';
import type { Printer } from './printers';
import type { Status, World } from './world';

export interface WatchOptions {
  readonly on: string;
  readonly settingsFrom?: string;
  readonly alone: boolean;
  readonly allFixes: boolean;
  /** What a change is narrowed to; absent where everything is listed. */
  readonly onlyNew?: OnlyNew;
  /** A printer over a way to show names of files, and the look that it prints by. */
  readonly printer: (shown: (doc: Doc) => string) => {
    readonly print: Printer;
    readonly look: Parameters<typeof listed>[1];
  };
  readonly status: (tally: Tally, troubles: readonly RunTrouble[]) => Status;
}

/** What is kept of a file that was judged. */
interface Kept {
  readonly file: Ours;
  readonly tally: Tally;
  /** The paths that its judgement rests on, those of files that are not there among them. */
  readonly rests: ReadonlySet<string>;
}

/** The files as they lie, and as they are judged: by the settings of a revision, where one is named. */
interface Hosts {
  readonly plain: Host;
  readonly host: Host;
}

/** So many changed files are named. */
const mostNamed = 5;

export async function watchCheck(paths: readonly string[], options: WatchOptions, world: World): Promise<Status> {
  const watcher = await world.watch(paths);
  try {
    const run = new WatchRun(paths, options, world);
    await run.everything();
    watcher.add(run.besides());
    for (let changed = await watcher.next(); changed; changed = await watcher.next()) {
      await run.again(changed);
      watcher.add(run.besides());
    }
    return run.status();
  } finally {
    await watcher.close();
  }
}

class WatchRun {
  private readonly loader: Loader;
  private readonly kept = new Map<string, Kept>();
  private troubles: readonly RunTrouble[] = [];
  /** Whole paths of what was named. */
  private asked: readonly string[] = [];
  private readonly watched = new Set<string>();

  constructor(
    private readonly paths: readonly string[],
    private readonly options: WatchOptions,
    private readonly world: World,
  ) {
    this.loader = new Loader(() => options.on);
  }

  /** Roots, links and folders may be others by now: each round has a host of its own. */
  private hosts(): Hosts {
    const plain = this.world.anew();
    return { plain, host: hostFor(this.options.settingsFrom, { ...this.world, host: plain }) };
  }

  async everything(): Promise<void> {
    const hosts = this.hosts();
    const { host } = hosts;
    this.kept.clear();
    this.loader.texts.forgetAll();
    const named = await Promise.all(this.paths.map((path) => host.find(path)));
    this.asked = named.flatMap((found) => (isTrouble(found) ? [] : [host.pathIn(found.root, found.name)]));
    const below = await walk(host, this.paths);
    const walked = this.options.alone ? below : await withUsers(host, this.loader, below);
    const [language, count] = [this.world.language(), walked.files.length];
    this.world.out(`${count === 1 ? language.word('watching 1 file.') : language.words`watching ${count} files.`}\n\n`);
    await this.judge(hosts, walked, () => '');
  }

  /** Judges what changed and what rests on it; anew from the start where settings came, went or changed. */
  async again(changed: readonly string[]): Promise<void> {
    const hosts = this.hosts();
    const { host } = hosts;
    const named = changed.map((path) => safe(this.shownPath(host, path)));
    const more = named.length - mostNamed;
    const language = this.world.language();
    const rest = more > 0 ? language.words` and ${more} more` : '';
    this.world.out(`${language.words`changed: ${named.slice(0, mostNamed).join(', ')}`}${rest}\n\n`);
    if (changed.some((path) => path.endsWith(houseName))) return this.everything();
    for (const path of changed) this.loader.texts.forget(path);
    const files = new Map<string, Ours>();
    for (const path of changed) {
      const before = this.kept.get(path);
      const [now] = (await walk(host, [path])).files;
      if (now && (before || this.isAsked(path))) files.set(path, { ...now, named: before?.file.named ?? false });
      else this.kept.delete(path);
    }
    for (const [path, { file, rests }] of this.kept)
      if (changed.some((one) => rests.has(one)) && !files.has(path)) files.set(path, file);
    const shown = new Set([...files.values()].map((file) => host.shown(file.root, file.name)).concat(named));
    this.troubles = this.troubles.filter(({ path }) => !shown.has(path));
    await this.judge(hosts, { files: [...files.values()], troubles: this.troubles });
  }

  private shownPath(host: Host, path: string): string {
    const kept = this.kept.get(path)?.file;
    if (kept) return host.shown(kept.root, kept.name);
    const found = host.find(path);
    if (found instanceof Promise || isTrouble(found)) return splitPath(path)[1];
    return host.shown(found.root, found.name);
  }

  private isAsked(path: string): boolean {
    return this.asked.some(
      (one) => path === one || path.startsWith(/[\\/]$/.test(one) || one === '' ? one : `${one}/`),
    );
  }

  /** @param nothing what is said of a file of which nothing is listed. */
  private async judge(
    { host, plain }: Hosts,
    { files, troubles }: Walked,
    nothing = (path: string): string => `${this.world.language().words`${safe(path)}: nothing to list.`}\n\n`,
  ): Promise<void> {
    const { options, loader, world } = this;
    const judging = judgingOf({ host, loader, files, alone: options.alone }, { ...world, host: plain });
    let root = '';
    const { print, look } = options.printer((doc) => host.shown(root, doc.name));
    const builds = files.filter(({ kind }) => kind === 'build').length;
    const mending = new Mending(loader, options.allFixes ? 'all' : 'first', builds);
    const byPath = new Map(files.map((file) => [host.pathIn(file.root, file.name), file]));
    const judged = new Set<string>();
    for await (const found of judging.sections()) {
      root = found.root;
      const run = options.onlyNew ? { ...found, section: await options.onlyNew.narrowed(found) } : found;
      this.keep(host, run, byPath, judged);
      const text = await judging.guarded(run, async () => print.section(await withFixes(run, mending, look)));
      world.out(text === '' ? nothing(host.shown(root, run.section.doc.name)) : (text ?? ''));
    }
    // What was not read is known again once it is there.
    for (const [path, file] of byPath)
      if (!judged.has(path)) this.kept.set(path, { file, tally: new Tally(), rests: new Set([path]) });
    this.troubles = [...troubles, ...judging.troubles];
    tellTroubles(this.troubles, world);
    world.out(print.close(this.tally(), this.troubles));
  }

  /** A guide comes as several sections of one file. */
  private keep(
    host: Host,
    { section, root, file }: CheckRun,
    byPath: ReadonlyMap<string, Ours>,
    judged: Set<string>,
  ): void {
    const { name, kind } = section.doc;
    const path = file?.place.path ?? host.pathIn(root, name);
    const before = judged.has(path) ? this.kept.get(path) : undefined;
    const tally = before?.tally ?? new Tally();
    tally.add(section);
    const ours = byPath.get(path) ?? { root, name, kind, named: false };
    judged.add(path);
    this.kept.set(path, { file: ours, tally, rests: new Set([path, ...(file?.reads.keys() ?? [])]) });
  }

  private tally(): Tally {
    const all = new Tally();
    for (const { tally } of this.kept.values()) all.join(tally);
    return all;
  }

  /** Files that judgements rest on and that lie outside of what is watched so far. */
  besides(): readonly string[] {
    const besides = new Set<string>();
    for (const { rests } of this.kept.values())
      for (const path of rests) if (!this.watched.has(path) && !this.isAsked(path)) besides.add(path);
    for (const path of besides) this.watched.add(path);
    return [...besides];
  }

  status(): Status {
    return this.options.status(this.tally(), this.troubles);
  }
}

async function withFixes(
  { section, file }: CheckRun,
  mending: Mending,
  look: Parameters<typeof listed>[1],
): Promise<Section> {
  return { ...section, fixes: await mending.fixesOf(section, file, listed(section, look)) };
}
