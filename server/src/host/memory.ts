// A file system in memory: the same answers as this machine’s, without a disk.
import {
  folderOf,
  houseName,
  partsName,
  rootAmong,
  within,
  type FolderMarks,
  type FoundPath,
  type Host,
  type Listed,
  type ReadError,
} from './host';
import { limits } from './limits';
import { absent, tooLarge } from './troubles';

export class MemoryHost implements Host {
  protected readonly files: Map<string, string | ReadError>;
  private readonly folders = new Set(['']);

  /** Files by their path with `/`; a value may be why a file cannot be read. */
  constructor(files: Iterable<readonly [string, string | ReadError]>) {
    this.files = new Map(files);
    for (const name of this.files.keys())
      for (let at = folderOf(name); !this.folders.has(at); at = folderOf(at)) this.folders.add(at);
  }

  find(path: string): FoundPath | ReadError {
    const full = path
      .split('/')
      .filter((step) => step !== '' && step !== '.')
      .join('/');
    const isFile = this.files.has(full);
    if (!isFile && !this.folders.has(full)) return absent;
    const marked = rootAmong(this.marksAbove(isFile ? folderOf(full) : full));
    const root = marked ?? (isFile ? '' : full);
    const name = root === '' ? full : full.slice(root.length + 1);
    return { kind: isFile ? 'file' : 'folder', root, name, isMarked: marked !== undefined };
  }

  list(root: string, folder: string): readonly Listed[] | ReadError | undefined {
    const path = this.pathIn(root, folder);
    if (!this.folders.has(path)) return undefined;
    const start = path === '' ? 0 : path.length + 1;
    const entries = new Map<string, Listed>();
    for (const name of this.files.keys()) {
      if (start > 0 && !name.startsWith(`${path}/`)) continue;
      const [step = '', ...rest] = name.slice(start).split('/');
      entries.set(step, { name: step, kind: rest.length > 0 ? 'folder' : 'file' });
    }
    return [...entries.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
  }

  read(root: string, name: string): string | ReadError | undefined {
    const file = this.files.get(this.pathIn(root, name));
    return typeof file === 'string' && file.length > limits.fileBytes ? tooLarge : file;
  }

  pathIn(root: string, name: string): string {
    return root === '' || name === '' ? root + name : within(root, name);
  }

  shown(root: string, name: string): string {
    return this.pathIn(root, name) || '.';
  }

  private *marksAbove(folder: string): Generator<FolderMarks> {
    for (let at = folder; ; at = folderOf(at)) {
      const hasSettings = this.files.has(this.pathIn(at, houseName));
      yield { folder: at, hasSettings, hasParts: this.folders.has(this.pathIn(at, partsName)) };
      if (at === '') return;
    }
  }
}
