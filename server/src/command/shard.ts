// `fettle check --shard`: judges a share of a run’s files, and reports it so that `fettle merge` can put all together.
import type { Doc } from '../core/parts/doc';
import type { Host } from '../host/host';
import { closingJson, openingJson, sectionJson, toJson } from '../report/json';
import type { JudgedFile } from '../report/plain';
import { listed, type FormatOptions } from '../report/section';
import { Tally } from '../report/tally';
import type { Loader } from '../session/loader';
import { isTooLong, mendable, Mending, type Wanted } from '../session/mending';
import type { RunTrouble } from '../session/run-trouble';
import { States } from '../session/states';
import type { Ours } from '../session/walk';
import { buildsAmong, pathsOf, type CheckRun } from './judged';
import { isSettings, judgingOf, type Judgings } from './settings-from';
import { dealt, plainTally, ShareBudget, type Share, type ShareFile, type SharePiece, type ShareRun } from './shares';
import { absentIn, movedIn } from './stale';
import type { World } from './world';

export interface ShardOptions {
  readonly share: Share;
  readonly host: Host;
  readonly loader: Loader;
  readonly files: readonly Ours[];
  readonly look: Omit<FormatOptions, 'shown'>;
  readonly run: Omit<ShareRun, 'tree' | 'files' | 'builds' | 'version' | 'language'>;
  readonly on: string;
}

export interface ShardDone {
  readonly text: string;
  readonly tally: Tally;
  readonly troubles: readonly RunTrouble[];
}

/** Settings that decide nothing are judged after all others, as in a whole run. */
const inOrder = (files: readonly Ours[], host: Host, world: World): readonly Ours[] =>
  host === world.host ? files : [...files.filter((file) => !isSettings(file)), ...files.filter(isSettings)];

export async function judgeShard(options: ShardOptions, world: World, step: () => void): Promise<ShardDone> {
  const { share, host, look, on } = options;
  const files = inOrder(options.files, host, world);
  const shard = new Shard({ ...options, files }, world);
  for (const i of dealt(files, share)) {
    await shard.judge(i);
    step();
  }
  const run: ShareRun = {
    ...options.run,
    version: world.version,
    language: look.language.tag,
    tree: await treeOf(files, host, world),
    files: files.length,
    builds: buildsAmong(files),
  };
  const { tally, reports, judged, beside } = shard;
  const troubles = [...run.walked, ...shard.troubles, ...(files.length === 0 ? run.ifNothing : [])];
  const report = JSON.parse(
    `${openingJson({ on, from: look.from })}${reports.map(toJson).join(',')}${closingJson(tally, troubles, look)}`,
  ) as object;
  const facts = { ...share, run, judged, beside: Object.fromEntries(beside) };
  const whole = { ...report, shard: facts };
  const text = toJson({ ...whole, shard: { ...facts, digest: digestOf(whole, world) } });
  return { text: `${text}\n`, tally, troubles };
}

/** Of a report whose own digest is left out. */
export const digestOf = (report: object, { digest }: Pick<World, 'digest'>): string => digest(JSON.stringify(report));

/** All files of a run with what stands in them: two shares of different states are never put together. */
async function treeOf(files: readonly Ours[], host: Host, world: World): Promise<string> {
  const lines: string[] = [];
  // Settings that decide nothing are judged all the same.
  for (const file of files)
    for (const from of host !== world.host && isSettings(file) ? [host, world.host] : [host]) {
      const state = await new States(world.digest).of(from, file.root, file.name);
      lines.push(JSON.stringify([host.shown(file.root, file.name), state]));
    }
  return world.digest(lines.join('\n'));
}

class Shard {
  readonly tally = new Tally();
  readonly judged: ShareFile[] = [];
  readonly reports: JudgedFile[] = [];
  readonly beside = new Map<string, string>();
  private readonly judging: Judgings;
  private readonly mending: Mending;
  private readonly budget: ShareBudget;
  private readonly wanted: Wanted;
  private readonly listed: ReadonlySet<string>;
  /** How many builds stand at a file of the run or behind it. */
  private readonly behind: readonly number[];

  constructor(
    private readonly options: ShardOptions,
    private readonly world: World,
  ) {
    const { host, loader, files, run } = options;
    this.judging = judgingOf({ host, loader, files, alone: run.alone }, world);
    this.wanted = run.allFixes ? 'all' : 'first';
    this.mending = new Mending(loader, this.wanted, 0);
    this.budget = new ShareBudget(this.wanted, buildsAmong(files));
    this.listed = pathsOf(host, files);
    let left = buildsAmong(files);
    this.behind = files.map(({ kind }) => (kind === 'build' ? left-- : left));
  }

  get troubles(): readonly RunTrouble[] {
    return this.judged.flatMap(({ troubles }) => troubles);
  }

  async judge(file: number): Promise<void> {
    const { host, files } = this.options;
    const before = new Set(this.judging.troubles);
    const pieces: SharePiece[] = [];
    for await (const run of this.judging.of(files[file]!)) pieces.push(await this.piece(run, this.behind[file]!));
    const troubles = this.judging.troubles.filter((trouble) => !before.has(trouble));
    this.judged.push({ file, pieces, troubles, isApart: host !== this.world.host && isSettings(files[file]!) });
  }

  private async piece(run: CheckRun, behind: number): Promise<SharePiece> {
    const { section, root, brought } = run;
    const { host } = this.options;
    const look: FormatOptions = { ...this.options.look, shown: (doc: Doc) => host.shown(root, doc.name) };
    const { doc, block } = section;
    const own = mendable(listed(section, look));
    const isBlock = block !== undefined;
    const tally = new Tally();
    tally.add(section);
    this.note(run, look);
    Object.assign(this.mending.budget, this.budget.at(behind));
    let sought = 0;
    const report = await this.judging.guarded(run, async () => {
      const fixes = await this.mending.fixesOf(section, run.file, listed(section, look));
      sought = fixes.of.size;
      this.tally.notMended += fixes.notSought;
      return sectionJson({ ...section, fixes }, look);
    });
    // What a build brought may have been told by another share already, and then takes nothing.
    if (brought === undefined) this.budget.took(doc.kind, isTooLong(doc, this.wanted) ? 0 : own.length, isBlock);
    this.tally.join(tally);
    const places = new Map(listed(section, { ...look, accepted: true }).map((finding, i) => [finding, i]));
    return {
      at: report ? this.reports.push(report) - 1 : null,
      kind: doc.kind,
      isBlock,
      mendable: isTooLong(doc, this.wanted) ? [] : own.map((finding) => places.get(finding) ?? null),
      sought,
      tally: plainTally({ ...tally.data(), notMended: isTooLong(doc, this.wanted) ? own.length : 0 }),
      ...(brought === undefined ? {} : { brought: look.shown(doc) }),
      absent: doc.kind === 'known' ? await absentIn(host, root, doc) : [],
      moved: movedIn(run),
    };
  }

  /** Files that others may have read as well, and that the digest of the run does not hold. */
  private note({ file }: CheckRun, { shown }: FormatOptions): void {
    for (const [path, doc] of file?.reads ?? [])
      if (doc && !this.listed.has(path) && !this.beside.has(shown(doc)))
        this.beside.set(shown(doc), this.world.digest(doc.text));
  }
}
