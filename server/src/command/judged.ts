// Goes through files and judges them one after the other, so that no more than one build is held at a time.
import { judgeFile } from '../core/judge/judge';
import { Doc } from '../core/parts/doc';
import type { Host } from '../host/host';
import type { Ours, RunTrouble } from '../host/walk';
import { Workspace } from '../host/workspace';
import type { Section } from '../report/section';

/** A section with the root its file lies under, since paths are shown from elsewhere. */
export interface CheckRun {
  readonly section: Section;
  readonly root: string;
}

export class Judging {
  private readonly workspaces = new Map<string, Workspace>();
  private readonly seen: Set<string>;
  private readonly own: RunTrouble[] = [];
  /** Parts that are listed and were judged when a build first read them; their turn comes later. */
  private readonly early = new Map<string, Section>();
  /** Part files whose turn has not come and that no build has read yet. */
  private readonly unread: Set<string>;

  constructor(
    private readonly host: Host,
    private readonly files: readonly Ours[],
    private readonly today: string,
  ) {
    this.seen = new Set(files.map((file) => host.shown(file.root, file.name)));
    this.unread = new Set(files.filter((file) => file.kind === 'part').map((file) => host.shown(file.root, file.name)));
  }

  /** What kept files from being read and checks from being run, so far. */
  get troubles(): readonly RunTrouble[] {
    return [...[...this.workspaces.values()].flatMap((workspace) => workspace.troubles), ...this.own];
  }

  async *sections(): AsyncGenerator<CheckRun> {
    for (const file of this.files) {
      try {
        yield* this.sectionsOf(file);
      } catch (error) {
        this.failed(this.host.shown(file.root, file.name), error);
      }
    }
  }

  /** What `print` makes of a section; undefined, and one line among the troubles, where it throws. */
  guarded<T>({ section, root }: CheckRun, print: (section: Section) => T): T | undefined {
    try {
      return print(section);
    } catch (error) {
      this.failed(this.host.shown(root, section.doc.name), error);
      return undefined;
    }
  }

  private async *sectionsOf(file: Ours): AsyncGenerator<CheckRun> {
    const workspace = await this.workspace(file.root);
    const path = this.host.shown(file.root, file.name);
    const before = this.early.get(path);
    this.early.delete(path);
    if (before) yield this.noted(before, workspace);
    if (before || (file.kind === 'part' && !this.unread.delete(path))) return;
    const doc = await workspace.doc(file.name, file.kind);
    if (!doc) return;
    if (doc.kind === 'build') yield* this.build(workspace, doc, file.named);
    else yield this.noted({ doc, judgement: judgeFile(doc) }, workspace);
    workspace.evict();
  }

  /** One file’s fault is one line of the report: it takes nothing of the other files with it. */
  private failed(path: string, error: unknown): void {
    this.own.push({
      path,
      trouble: `its report failed by a fault of Fettle’s own: ${error instanceof Error ? error.message : String(error)}`,
    });
  }

  async workspace(root: string): Promise<Workspace> {
    let workspace = this.workspaces.get(root);
    if (!workspace) {
      this.workspaces.set(root, (workspace = await Workspace.open(this.host, root, this.today)));
      workspace.onPart = (doc) => this.judgeEarly(root, doc);
    }
    return workspace;
  }

  /** A part with nothing to find is kept as its text alone. */
  private judgeEarly(root: string, doc: Doc): void {
    const path = this.host.shown(root, doc.name);
    if (!this.unread.delete(path)) return;
    const judgement = judgeFile(doc);
    const kept = judgement.findings.length === 0 ? new Doc(doc.name, doc.kind, doc.text) : doc;
    this.early.set(path, { doc: kept, judgement: { ...judgement, answers: [] } });
  }

  /**
   * A build that was named by itself brings the files it is made of: a slip in them is a slip of the build. Any other
   * brings those of them that could not be read.
   */
  private async *build(workspace: Workspace, doc: Doc, named: boolean): AsyncGenerator<CheckRun> {
    const { build, judgement } = await workspace.judge(doc);
    const title = build.file.build.value;
    yield this.noted({ doc, judgement, ...(title ? { title } : {}) }, workspace);
    const used = await Promise.all([...build.dependsOn].sort().map((name) => workspace.part(name)));
    for (const other of [workspace.house.doc, ...used]) {
      const key = other && this.host.shown(workspace.root, other.name);
      if (!other || this.seen.has(key!)) continue;
      this.seen.add(key!);
      const judgement = judgeFile(other);
      if (named || judgement.findings.some(({ check }) => check.unread))
        yield this.noted({ doc: other, judgement }, workspace);
    }
  }

  private noted(section: Section, { root }: Workspace): CheckRun {
    for (const { id, error } of section.judgement.failed) {
      this.own.push({
        path: this.host.shown(root, section.doc.name),
        trouble: `the check ${id} failed by a fault of its own: ${error}`,
      });
    }
    return { section, root };
  }
}
