// A file system in memory, for tests and for hosts that have read everything already.
import { houseName, within, type FileRef, type Host, type Listed, type ReadError } from './host';
import { limits, spelled } from './limits';

export class MemoryHost implements Host {
  private readonly files: ReadonlyMap<string, string | ReadError>;

  /** Files by their path with `/`; a value may be why a file cannot be read. */
  constructor(files: Iterable<readonly [string, string | ReadError]>) {
    this.files = new Map(files);
  }

  find(path: string): FileRef | ReadError {
    const full = path
      .split('/')
      .filter((step) => step !== '' && step !== '.')
      .join('/');
    const isFile = this.files.has(full);
    if (!isFile && !this.isFolder(full)) return { trouble: 'there is no such file or folder.' };
    const folder = isFile ? parentOf(full) : full;
    const root = this.rootAbove(folder) ?? (isFile ? '' : full);
    return { kind: isFile ? 'file' : 'folder', root, name: root === '' ? full : full.slice(root.length + 1) };
  }

  list(root: string, folder: string): readonly Listed[] | ReadError {
    const path = folder === '' ? root : within(root, folder);
    if (!this.isFolder(path)) return { trouble: 'there is no such file or folder.' };
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
    const file = this.files.get(within(root, name));
    if (typeof file === 'string' && file.length > limits.fileBytes)
      return { trouble: `is larger than ${spelled(limits.fileBytes)} bytes, so it is not read; split it.` };
    return file;
  }

  below(root: string, folder: string): string {
    return folder === '' ? root : within(root, folder);
  }

  shown(root: string, name: string): string {
    return (name === '' ? root : within(root, name)) || '.';
  }

  private isFolder(path: string): boolean {
    if (path === '') return true;
    for (const name of this.files.keys()) if (name.startsWith(`${path}/`)) return true;
    return false;
  }

  private rootAbove(folder: string): string | undefined {
    for (let at = folder; ; at = parentOf(at)) {
      if (this.files.has(within(at, houseName))) return at;
      if (at === '') return undefined;
    }
  }
}

const parentOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf('/')));
