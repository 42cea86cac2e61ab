// The tree of one commit as git lists it: which files and folders there are, and where links among them lead.
import {
  folderOf,
  rootAmong,
  within,
  houseName,
  partsName,
  type FolderMarks,
  type Listed,
  type ReadError,
} from './host';
import { limits, spelled } from './limits';

export interface TreeEntry {
  readonly path: string;
  readonly id: string;
  readonly size: number;
  readonly kind: 'file' | 'link' | 'other';
  /** Its place in the listing. */
  readonly index: number;
}

/** So many links are followed from one name. */
const mostLinks = 16;

const tooMany: ReadError = {
  trouble: `is not read: it holds more than ${spelled(limits.entries)} files.`,
};
const unclear: ReadError = { trouble: 'is not read: git’s list of its files cannot be understood.' };

export class GitTree {
  private readonly all: TreeEntry[] = [];
  private readonly byPath = new Map<string, TreeEntry>();
  private readonly folders = new Map<string, Map<string, Listed['kind']>>([['', new Map()]]);

  /** `targetOf`: the text of a link. */
  private constructor(private readonly targetOf: (entry: TreeEntry) => string | undefined) {}

  /** Reads what `ls-tree -r -z -l` wrote: `MODE TYPE ID SIZE`, a tab, the name, a zero byte. */
  static read(listing: Buffer, targetOf: (entry: TreeEntry) => string | undefined): GitTree | ReadError {
    const tree = new GitTree(targetOf);
    for (let at = 0; at < listing.length; ) {
      const end = listing.indexOf(0, at);
      const row = /^(\d{6}) (\w+) ([0-9a-f]+) +(\d+|-)\t([^]*)$/.exec(listing.toString('utf8', at, end));
      if (end < 0 || !row) return unclear;
      if (tree.all.length >= limits.entries) return tooMany;
      const [, mode, type, id, size, path] = row;
      tree.take({ path: path!, id: id!, size: Number(size) || 0, kind: kindOf(mode!, type!), index: tree.all.length });
      at = end + 1;
    }
    return tree;
  }

  private take(entry: TreeEntry): void {
    this.all.push(entry);
    this.byPath.set(entry.path, entry);
    let kind: Listed['kind'] = entry.kind;
    for (let path = entry.path; path !== ''; path = folderOf(path), kind = 'folder') {
      const folder = folderOf(path);
      const siblings = this.folders.get(folder);
      const name = path.slice(folder === '' ? 0 : folder.length + 1);
      if (siblings?.has(name)) return;
      if (siblings) siblings.set(name, kind);
      else this.folders.set(folder, new Map([[name, kind]]));
    }
  }

  entry(path: string): TreeEntry | undefined {
    return this.byPath.get(path);
  }

  /** What a folder holds, in code unit order; undefined where there is none. */
  folder(path: string): readonly { readonly name: string; readonly kind: Listed['kind'] }[] | undefined {
    const held = this.folders.get(path);
    return held && [...held].map(([name, kind]) => ({ name, kind })).sort((a, b) => (a.name < b.name ? -1 : 1));
  }

  /** The entries behind one, in the order of the listing. */
  *after({ index }: TreeEntry): Generator<TreeEntry> {
    for (let i = index + 1; i < this.all.length; i++) yield this.all[i]!;
  }

  /**
   * What a path leads to once links are followed: the path of a file, folder or submodule. `outside` where a link leads
   * out of the repository or in a circle; undefined where there is nothing.
   */
  real(path: string): string | undefined {
    let left = path.split('/').filter((step) => step !== '');
    let at = '';
    for (let links = 0; left.length > 0; ) {
      const [step, ...rest] = left as [string, ...string[]];
      left = rest;
      if (step === '..') {
        if (at === '') return outside;
        at = folderOf(at);
        continue;
      }
      if (step === '.') continue;
      const next = within(at, step);
      const entry = this.byPath.get(next);
      if (entry?.kind === 'link') {
        const target = links++ < mostLinks ? this.targetOf(entry) : undefined;
        if (target === undefined || target.startsWith('/') || target.includes('\\')) return outside;
        left = [...target.split('/').filter((one) => one !== ''), ...left];
      } else if (entry ? left.length > 0 : !this.folders.has(next)) return undefined;
      else at = next;
    }
    return at;
  }

  /** The root that a folder lies under: the nearest above it with settings, else with a parts folder. */
  rootOf(folder: string): string | undefined {
    return rootAmong(this.marksAbove(folder));
  }

  private *marksAbove(folder: string): Generator<FolderMarks> {
    for (let at = folder; ; at = folderOf(at)) {
      const house = this.real(within(at, houseName));
      const parts = this.real(within(at, partsName));
      yield {
        folder: at,
        hasSettings: house !== undefined && this.byPath.get(house)?.kind === 'file',
        hasParts: parts !== undefined && parts !== outside && this.folders.has(parts),
      };
      if (at === '') return;
    }
  }
}

/** Stands for whatever lies out of the repository; no path of git’s holds a zero byte. */
export const outside = '\0outside';

function kindOf(mode: string, type: string): TreeEntry['kind'] {
  if (type !== 'blob') return 'other';
  return mode === '120000' ? 'link' : mode.startsWith('100') ? 'file' : 'other';
}
