// The file system in memory, for tests: its files can be written, too.
import { MemoryHost as Memory } from '../../server/src/host/memory';

export class MemoryHost extends Memory {
  /** Gives the path back, as what changed. */
  write(path: string, text: string): string[] {
    this.files.set(path, text);
    return [path];
  }

  remove(path: string): string[] {
    this.files.delete(path);
    return [path];
  }
}
