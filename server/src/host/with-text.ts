// A host with one file’s text laid over it: what is judged as if it stood there, and stands nowhere yet.
import {
  houseName,
  isTrouble,
  lastStep,
  splitPath,
  within,
  type Awaitable,
  type FoundPath,
  type Host,
  type Listed,
  type ReadError,
} from './host';
import { isFolder } from './troubles';

export class WithText implements Host {
  /** The file as the host below would find it. */
  private readonly path: string;

  private constructor(
    private readonly files: Host,
    private readonly asked: string,
    private readonly file: FoundPath,
    private readonly text: string,
  ) {
    this.path = files.pathIn(file.root, file.name);
  }

  /** Lays a text over a path that someone named; its folder must be there, the file need not. */
  static async over(files: Host, path: string, text: string): Promise<WithText | ReadError> {
    const found = await files.find(path);
    if (!isTrouble(found)) return found.kind === 'folder' ? isFolder : new WithText(files, path, found, text);
    const [folder, name] = splitPath(path);
    const parent = await files.find(folder);
    if (isTrouble(parent) || parent.kind !== 'folder' || name === '' || name === '.' || name === '..')
      return { trouble: 'lies in no folder that is there.' };
    return new WithText(files, path, foundIn(files, parent, name), text);
  }

  find(path: string): Awaitable<FoundPath | ReadError> {
    return path === this.asked || path === this.path ? this.file : this.files.find(path);
  }

  async list(root: string, folder: string): Promise<readonly Listed[] | ReadError | undefined> {
    const listed = await this.files.list(root, folder);
    if (listed === undefined || isTrouble(listed)) return listed;
    const name = lastStep(this.file.name);
    if (this.files.pathIn(root, within(folder, name)) !== this.path) return listed;
    if (listed.some((entry) => entry.name === name)) return listed;
    return [...listed, { name, kind: 'file' as const }].sort((a, b) => (a.name < b.name ? -1 : 1));
  }

  read(root: string, name: string): Awaitable<string | ReadError | undefined> {
    return this.files.pathIn(root, name) === this.path ? this.text : this.files.read(root, name);
  }

  pathIn(root: string, name: string): string {
    return this.files.pathIn(root, name);
  }

  shown(root: string, name: string): string {
    return this.files.shown(root, name);
  }
}

/** A new file in a folder; settings make that folder a root. */
function foundIn(files: Host, { root, name: folder, isMarked }: FoundPath, name: string): FoundPath {
  if (name === houseName) return { kind: 'file', root: files.pathIn(root, folder), name, isMarked: true };
  return { kind: 'file', root, name: within(folder, name), isMarked };
}
