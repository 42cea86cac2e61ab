// Output files: written beside their place, brought to the disk, then renamed; whole or not at all.
import { closeSync, fsyncSync, openSync, readdirSync, renameSync, rmSync, statSync, writeSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';

/** Takes text piece by piece; it counts only once `done`. */
export interface Sink {
  write(text: string): void;
  done(): void;
  /** Leaves no trace; harmless after `done`. */
  drop(): void;
}

/**
 * Opens an output file. A file that stands there already is replaced as a whole, with its permissions kept.
 * @throws Error of the system when the folder cannot be written.
 */
export function fileSink(here: string, path: string): Sink {
  const full = resolve(here, path);
  const before = statSync(full, { throwIfNoEntry: false });
  if (before && !before.isFile()) throw new Error('it is no regular file');
  const temporary = join(dirname(full), temporaryName(full, process.pid));
  clearLeftOver(full);
  let file: number | undefined = openSync(temporary, 'wx', before ? before.mode & 0o777 : 0o666);
  const close = (): void => {
    if (file !== undefined) closeSync(file);
    file = undefined;
  };
  let left = true;
  return {
    write: (text) => writeAll(file!, Buffer.from(text)),
    done() {
      fsyncSync(file!);
      close();
      renameSync(temporary, full);
      left = false;
      syncFolder(dirname(full));
    },
    drop() {
      close();
      if (left) rmSync(temporary, { force: true });
      left = false;
    },
  };
}

const temporaryName = (full: string, process: number): string => `.${basename(full)}.${process}.part`;

/** Removes what runs that were killed while they wrote the same file have left beside it. */
function clearLeftOver(full: string): void {
  const folder = dirname(full);
  for (const name of readdirSync(folder)) {
    const writer = /\.(\d{1,10})\.part$/.exec(name)?.[1];
    if (writer === undefined || name !== temporaryName(full, Number(writer)) || isRunning(Number(writer))) continue;
    rmSync(join(folder, name), { force: true });
  }
}

/** Whether another process bears a number; what bears our own was left by one that had it before. */
function isRunning(id: number): boolean {
  if (id === process.pid) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

function writeAll(file: number, bytes: Buffer): void {
  for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
}

/** The name itself reaches the disk with the folder; systems that cannot do this do without. */
function syncFolder(folder: string): void {
  let file: number | undefined;
  try {
    file = openSync(folder, 'r');
    fsyncSync(file);
  } catch {
    // Windows opens no folders; the rename is whole all the same.
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
