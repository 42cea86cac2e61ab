// The file system in memory, for tests: its files can be written, too.
import { MemoryHost as Memory } from '../../server/src/host/memory';

export class MemoryHost extends Memory {
  /** Gives the path back, as what changed. */
  write(path: string, text: string): string[] {
    this.files.set(path, text);
    return [path];
  }

  /** All files, by path. */
  all(): ReadonlyMap<string, string> {
    return this.files as ReadonlyMap<string, string>;
  }

  remove(path: string): string[] {
    this.files.delete(path);
    return [path];
  }
}
