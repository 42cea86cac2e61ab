// The whole workspace: every file of ours judged once on request, and kept true from then on as files change.
import type {
  CancellationToken,
  WorkspaceDiagnosticReport,
  WorkspaceDiagnosticParams,
} from 'vscode-languageserver/node';
import type { Diagnostic } from '../features/shapes';
import { grades, type Grade } from '../core/manifest/house-file';
import { Turns } from '../session/turns';
import { walk } from '../session/walk';
import { failure, notRead, type Findings, type Shared } from './findings';
import { wordsOf } from './guard';
import type { Hosts } from './hosts';
import type { WorkspaceChecked } from './requests';

/** How long one stretch of judging lasts before others get their turn. */
const stretchMs = 12;

/** What is kept of a file that is not open: what is shown, and the paths it rests on. */
interface ReportedFile {
  readonly diagnostics: Diagnostic[];
  readonly worst?: Grade;
  /** Why it could not be read. */
  readonly unread?: string;
  readonly paths: readonly string[];
  readonly resultId: string;
}

export class WorkspaceDiagnostics {
  private readonly kept = new Map<string, ReportedFile>();
  private readonly restingOn = new Map<string, Set<string>>();
  private readonly stale = new Set<string>();
  private isChecked = false;
  private isCatchingUp = false;
  private troubles: string[] = [];
  private count = 0;

  constructor(
    private readonly shared: Shared,
    private readonly hosts: Hosts,
    private readonly findings: Findings,
    private readonly pause: () => Promise<void>,
  ) {}

  /** Judges every file of ours below the workspace’s folders. */
  async check(token?: CancellationToken): Promise<WorkspaceChecked> {
    const found = await this.list();
    for (const uri of [...this.kept.keys()]) if (!found.has(uri)) this.drop(uri);
    await this.judgeAll(found, token);
    this.isChecked = true;
    this.findings.askToPull();
    return this.summary();
  }

  private async list(): Promise<Set<string>> {
    const uris = new Set<string>();
    this.troubles = [];
    for (const folder of this.hosts.folderUris) {
      const host = this.hosts.hostFor(folder);
      const { files, troubles } = await walk(host, [host.pathOf(folder) ?? folder], this.pause);
      for (const { root, name } of files) uris.add(host.uriOf(host.pathIn(root, name)));
      this.troubles.push(...troubles.map(({ path, trouble }) => (path === '' ? trouble : `${path} ${trouble}`)));
    }
    return uris;
  }

  private async judgeAll(uris: Iterable<string>, token?: CancellationToken): Promise<void> {
    const turns = new Turns(this.pause, stretchMs);
    for (const uri of uris) {
      if (token?.isCancellationRequested) return;
      await this.judge(uri);
      if (!turns.isOver) continue;
      this.shared.session.evict();
      await turns.give();
    }
  }

  private async judge(uri: string): Promise<void> {
    const { session, log } = this.shared;
    try {
      const judged = await session.judge(uri);
      if (!judged) return this.unread(uri);
      const { findings } = judged.judgement;
      const worst = findings.find(({ accepted }) => !accepted)?.grade;
      this.keep(uri, {
        diagnostics: this.findings.shown(judged),
        ...(worst ? { worst } : {}),
        paths: [...judged.reads.keys()],
        resultId: `whole ${++this.count}`,
      });
      if (judged.doc.kind === 'build' && !session.isOpen(uri)) session.texts.forget(judged.place.path);
    } catch (error) {
      log(`checking ${uri}: ${wordsOf(error)}`);
      this.keep(uri, {
        diagnostics: [failure(error, this.shared.language)],
        paths: [session.pathOf(uri) ?? uri],
        resultId: `whole ${++this.count}`,
      });
    }
  }

  /** A file that is there and cannot be read is shown with why; one that is gone is forgotten. */
  private unread(uri: string): void {
    const trouble = this.shared.session.troubleAt(uri);
    if (trouble === undefined) return this.drop(uri);
    this.keep(uri, {
      diagnostics: [notRead(trouble, this.shared.language)],
      unread: trouble,
      paths: [this.shared.session.pathOf(uri) ?? uri],
      resultId: `whole ${++this.count}`,
    });
  }

  private keep(uri: string, kept: ReportedFile): void {
    this.unlink(uri);
    this.kept.set(uri, kept);
    for (const path of kept.paths) {
      const set = this.restingOn.get(path) ?? new Set<string>();
      set.add(uri);
      this.restingOn.set(path, set);
    }
    this.show(uri);
  }

  private drop(uri: string): void {
    const had = this.unlink(uri);
    this.kept.delete(uri);
    if (had && !this.shared.client.pullsDiagnostics && !this.shared.session.isOpen(uri))
      this.findings.send(uri, [], null);
  }

  private unlink(uri: string): boolean {
    const kept = this.kept.get(uri);
    for (const path of kept?.paths ?? []) this.restingOn.get(path)?.delete(uri);
    return kept !== undefined;
  }

  /** Pushes what is kept of a file that is not open; open files are shown by themselves. */
  private show(uri: string): void {
    const kept = this.kept.get(uri);
    if (kept && !this.shared.client.pullsDiagnostics && !this.shared.session.isOpen(uri))
      this.findings.send(uri, kept.diagnostics, null);
  }

  /** A file was closed: it is a file of the workspace again. */
  closed(uri: string): void {
    if (this.isChecked) this.changed(uri);
  }

  /** A file changed: what rests on it is judged again when nothing more pressing is to be done. */
  changed(uri: string): void {
    if (!this.isChecked) return;
    const path = this.shared.session.pathOf(uri) ?? uri;
    for (const other of this.restingOn.get(path) ?? []) this.stale.add(other);
    this.stale.add(this.hosts.hostFor(uri).uriOf(path));
    if (!this.isCatchingUp) void this.catchUp();
  }

  private async catchUp(): Promise<void> {
    this.isCatchingUp = true;
    await this.pause();
    while (this.stale.size > 0) {
      const uris = [...this.stale];
      this.stale.clear();
      await this.judgeAll(uris);
    }
    this.isCatchingUp = false;
    this.findings.askToPull();
  }

  /** Settings changed: everything is to be shown anew. */
  async again(): Promise<void> {
    if (this.isChecked) await this.check();
  }

  /**
   * The answer to `workspace/diagnostic`. A client that asks for it asks for the whole; ours says first when that is
   * wanted.
   */
  async pull(
    { previousResultIds }: WorkspaceDiagnosticParams,
    token: CancellationToken,
  ): Promise<WorkspaceDiagnosticReport> {
    if (!this.isChecked && this.shared.client.own.wholeOnRequest) return { items: [] };
    if (!this.isChecked) await this.check(token);
    const previous = new Map(previousResultIds.map(({ uri, value }) => [uri, value]));
    const items: WorkspaceDiagnosticReport['items'] = [];
    for (const [uri, { diagnostics, resultId }] of this.kept) {
      if (this.shared.session.isOpen(uri)) continue;
      items.push(
        previous.get(uri) === resultId
          ? { kind: 'unchanged', uri, version: null, resultId }
          : { kind: 'full', uri, version: null, resultId, items: diagnostics },
      );
    }
    for (const uri of previous.keys())
      if (!this.kept.has(uri) && !this.shared.session.isOpen(uri))
        items.push({ kind: 'full', uri, version: null, items: [] });
    return { items };
  }

  private summary(): WorkspaceChecked {
    const worst: Partial<Record<Grade, number>> = {};
    for (const grade of grades) {
      const count = [...this.kept.values()].filter((kept) => kept.worst === grade).length;
      if (count > 0) worst[grade] = count;
    }
    const unread = [...this.kept].flatMap(([uri, { unread: why }]) => (why === undefined ? [] : [`${uri} ${why}`]));
    return { files: this.kept.size - unread.length, worst, troubles: [...this.troubles, ...unread] };
  }
}
