// Files of one host under the settings and known findings of another: what a change says of them decides nothing while
// it is judged.
import { kindOfFile } from '../core/parts/doc';
import {
  houseName,
  isTrouble,
  nameBelow,
  type Awaitable,
  type FoundPath,
  type Host,
  type Listed,
  type ReadError,
} from './host';

/** Both hosts name roots alike, as a folder and a revision of it do. */
export class SettingsFrom implements Host {
  constructor(
    private readonly files: Host,
    private readonly settings: Host,
  ) {}

  /** A path below the root that the other host’s settings or parts folder make; where they make none, its own. */
  async find(path: string): Promise<FoundPath | ReadError> {
    const found = await this.files.find(path);
    if (isTrouble(found)) return found;
    const full = this.files.pathIn(found.root, found.name);
    const root = await this.rootAbove(found.kind === 'folder' ? full : parentOf(full));
    if (root === undefined || root === full) return root === undefined ? found : { ...found, root, name: '' };
    return { ...found, root, name: nameBelow(root, full)!, isMarked: true };
  }

  /** The root of the nearest folder that the other host has. */
  private async rootAbove(folder: string): Promise<string | undefined> {
    for (let at = folder; ; at = parentOf(at)) {
      const found = await this.settings.find(at);
      if (!isTrouble(found))
        return found.isMarked && nameBelow(found.root, folder) !== undefined ? found.root : undefined;
      if (at === parentOf(at)) return undefined;
    }
  }

  list(root: string, folder: string): Awaitable<readonly Listed[] | ReadError | undefined> {
    return this.files.list(root, folder);
  }

  read(root: string, name: string): Awaitable<string | ReadError | undefined> {
    const isSettings = name === houseName || kindOfFile(name) === 'known';
    return (isSettings ? this.settings : this.files).read(root, name);
  }

  pathIn(root: string, name: string): string {
    return this.files.pathIn(root, name);
  }

  shown(root: string, name: string): string {
    return this.files.shown(root, name);
  }
}

const parentOf = (path: string): string =>
  path.slice(0, Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\'), 0)) || (path.startsWith('/') ? '/' : '');
