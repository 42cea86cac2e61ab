// The file system in memory, for tests: its files can be written, too.
import { MemoryHost as Memory } from '../../server/src/host/memory';

export class MemoryHost extends Memory {
  write(path: string, text: string): void {
    this.files.set(path, text);
  }

  remove(path: string): void {
    this.files.delete(path);
  }
}
