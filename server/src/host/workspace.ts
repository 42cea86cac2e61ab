// One workspace as it is read: its house settings, its part files by look-up, its builds.
import { Build } from '../core/build/build';
import { WorkspaceConfig } from '../core/build/workspace-config';
import { judgeBuild } from '../core/judge/judge';
import type { Judgement } from '../core/judge/finding';
import { Doc, type DocKind } from '../core/parts/doc';
import { houseName, isTrouble, staysBelow, type Host } from './host';
import type { RunTrouble } from './walk';

/** Texts of parts held at once, in UTF-16 units; what is read from a text takes some forty times as much. */
const heldText = 1_000_000;

export interface JudgedBuild {
  readonly build: Build;
  readonly judgement: Judgement;
}

export class Workspace {
  private readonly parts = new Map<string, Doc | undefined>();
  private readonly used = new Set<string>();
  private held = 0;
  /** Called with each part when it is first read: whoever wants it judged by itself need not read it again. */
  onPart: (doc: Doc) => void = () => undefined;
  private readonly told = new Set<string>();
  readonly troubles: RunTrouble[] = [];

  private constructor(
    readonly host: Host,
    readonly root: string,
    readonly house: WorkspaceConfig,
    readonly folders: readonly string[],
    readonly today: string,
  ) {}

  /** Opens a workspace; a parts folder that would lie outside it is left out and reported. */
  static async open(host: Host, root: string, today: string): Promise<Workspace> {
    const text = await host.read(root, houseName);
    const house = new WorkspaceConfig(typeof text === 'string' ? new Doc(houseName, 'house', text) : undefined);
    const workspace = new Workspace(host, root, house, house.folders.filter(staysBelow), today);
    if (isTrouble(text)) workspace.tell(houseName, text.trouble);
    for (const folder of house.folders) {
      if (!staysBelow(folder))
        workspace.tell(
          houseName,
          `names a parts folder that does not lie below it, ${JSON.stringify(folder)}; it is not read.`,
        );
    }
    return workspace;
  }

  private tell(name: string, trouble: string): void {
    const path = this.host.shown(this.root, name);
    if (this.told.has(path + trouble)) return;
    this.told.add(path + trouble);
    this.troubles.push({ path, trouble });
  }

  /** A file of the workspace, read afresh; undefined when it cannot be, which is then among the troubles. */
  async doc(name: string, kind: DocKind): Promise<Doc | undefined> {
    const text = await this.host.read(this.root, name);
    if (typeof text === 'string') return new Doc(name, kind, text);
    this.tell(name, text?.trouble ?? 'there is no such file.');
    return undefined;
  }

  /** Reads a build with its parts and judges it. Parts are looked up by name until no more is asked for. */
  async judge(doc: Doc): Promise<JudgedBuild> {
    for (const asked = new Set<string>(); ; asked.clear()) {
      const find = (name: string): Doc | undefined => {
        if (!this.parts.has(name)) asked.add(name);
        else this.used.add(name);
        return this.parts.get(name);
      };
      const build = new Build(doc, find, this.house, this.today);
      const judgement = asked.size === 0 ? judgeBuild(build) : undefined;
      if (judgement && asked.size === 0) return { build, judgement };
      for (const name of asked) await this.load(name);
    }
  }

  /** A part by name, from the first of the parts folders that has it. */
  async part(name: string): Promise<Doc | undefined> {
    if (!this.parts.has(name)) await this.load(name);
    return this.parts.get(name);
  }

  private async load(name: string): Promise<void> {
    const doc = staysBelow(name) ? await this.look(name) : undefined;
    this.parts.set(name, doc);
    this.held += doc?.text.length ?? 0;
    if (doc) this.onPart(doc);
  }

  private async look(name: string): Promise<Doc | undefined> {
    for (const folder of this.folders) {
      const path = `${folder}/${name}.part.yaml`;
      const text = await this.host.read(this.root, path);
      if (typeof text === 'string') return new Doc(path, 'part', text);
      if (text) this.tell(path, text.trouble);
    }
    return undefined;
  }

  /** Forgets the parts that were used longest ago once many are held; to be called between two builds. */
  evict(): void {
    for (const name of this.used) {
      const doc = this.parts.get(name);
      this.parts.delete(name);
      this.parts.set(name, doc);
    }
    this.used.clear();
    for (const [name, doc] of this.parts) {
      if (this.held <= heldText) return;
      this.parts.delete(name);
      this.held -= doc?.text.length ?? 0;
    }
  }
}
