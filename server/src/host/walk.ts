// Finds the files of ours under what someone named, each with the workspace it belongs to.
import { kindOfFile, type DocKind } from '../core/parts/doc';
import { houseName, isTrouble, within, type Host, type Listed } from './host';
import { limits, spelled } from './limits';

/** A file of ours: its root, its name below it, its kind. */
export interface Ours {
  readonly root: string;
  readonly name: string;
  readonly kind: DocKind;
  readonly named: boolean;
}

/** Something that kept a file or folder from being read; `path` as people see it. */
export interface RunTrouble {
  readonly path: string;
  readonly trouble: string;
}

export interface Walked {
  readonly files: readonly Ours[];
  readonly troubles: readonly RunTrouble[];
}

interface Folder {
  readonly root: string;
  readonly folder: string;
  readonly depth: number;
}

/** Folders that are not looked into unless they are named themselves. */
const isPassed = (name: string): boolean => name === 'node_modules' || name.startsWith('.');

/** Walks all named paths; files come in order of their place, each once. A link to a folder is not followed. */
export async function walk(host: Host, paths: readonly string[]): Promise<Walked> {
  const walk = new Walk(host);
  for (const path of paths) await walk.named(path);
  return walk.done();
}

class Walk {
  private readonly files = new Map<string, Ours>();
  private readonly troubles: RunTrouble[] = [];
  private entries = 0;
  private full = false;

  constructor(private readonly host: Host) {}

  async named(path: string): Promise<void> {
    const found = await this.host.find(path);
    if (isTrouble(found)) return void this.troubles.push({ path, ...found });
    if (found.kind === 'folder') return this.folders(found.root, found.name);
    const kind = kindOfFile(found.name);
    if (kind) return this.take(found.root, found.name, kind, true);
    this.troubles.push({
      path,
      trouble: 'is none of the files that are checked: NAME.pcbuild.yaml, MODEL.part.yaml, fettle.yaml.',
    });
  }

  /** Looks through a folder and those in it; one that holds `fettle.yaml` is a root of its own. */
  private async folders(root: string, folder: string): Promise<void> {
    const waiting: Folder[] = [{ root, folder, depth: 0 }];
    for (let next = waiting.pop(); next && !this.full; next = waiting.pop()) {
      const listed = await this.host.list(next.root, next.folder);
      if (isTrouble(listed)) this.tell(next.root, next.folder, listed.trouble);
      else if (!this.count(listed.length)) waiting.push(...this.look(next, listed));
    }
  }

  /** Takes the files of one folder; gives the folders in it that are to be looked through. */
  private look(at: Folder, listed: readonly Listed[]): Folder[] {
    const isRoot = at.depth > 0 && listed.some((entry) => entry.name === houseName && entry.kind === 'file');
    const { root, folder } = isRoot ? { root: this.host.below(at.root, at.folder), folder: '' } : at;
    const depth = at.depth + 1;
    const folders: Folder[] = [];
    for (const entry of listed) {
      const name = within(folder, entry.name);
      if (entry.kind !== 'folder') this.takeIfOurs(root, name);
      else if (isPassed(entry.name)) continue;
      else if (depth <= limits.depth) folders.push({ root, folder: name, depth });
      else this.tell(root, name, `lies more than ${limits.depth} folders deep, so it is not looked into.`);
    }
    return folders;
  }

  /** Links and whatever else bears a name of ours are taken too: reading them says what is wrong with them. */
  private takeIfOurs(root: string, name: string): void {
    const kind = kindOfFile(name);
    if (kind) this.take(root, name, kind, false);
  }

  private tell(root: string, name: string, trouble: string): void {
    this.troubles.push({ path: this.host.shown(root, name), trouble });
  }

  private count(entries: number): boolean {
    this.entries += entries;
    return this.stopAt(this.entries, limits.entries, 'entries of folders');
  }

  private take(root: string, name: string, kind: DocKind, named: boolean): void {
    const key = this.host.shown(root, name);
    if (this.files.has(key) || this.stopAt(this.files.size + 1, limits.files, 'files to check')) return;
    this.files.set(key, { root, name, kind, named });
  }

  private stopAt(value: number, limit: number, what: string): boolean {
    if (value <= limit) return false;
    if (!this.full)
      this.troubles.push({
        path: '',
        trouble: `There are more than ${spelled(limit)} ${what}; the rest is left out. Name fewer folders.`,
      });
    return (this.full = true);
  }

  done(): Walked {
    const files = [...this.files].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, file]) => file);
    return { files, troubles: this.troubles };
  }
}
