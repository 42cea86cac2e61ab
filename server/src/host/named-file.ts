// A regular file that somebody names, wherever it lies: its bytes, as far as a limit.
import { closeSync, constants, fstatSync, openSync, readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { ReadError } from './host';
import { absent, isFolder, notRegular } from './troubles';

const flags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);

/** @param tooLarge what is said of a file with more than `most` bytes. */
export function namedFile(here: string, path: string, most: number, tooLarge: ReadError): Buffer | ReadError {
  let file: number | undefined;
  try {
    const full = resolve(here, path);
    // Opening a pipe or a device can already do something.
    const named = statSync(full);
    if (named.isDirectory()) return isFolder;
    if (!named.isFile()) return notRegular;
    file = openSync(full, flags);
    const stat = fstatSync(file);
    if (!stat.isFile()) return notRegular;
    return stat.size > most ? tooLarge : readFileSync(file);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    return code === 'ENOENT' || code === 'ENOTDIR' ? absent : { trouble: `cannot be read: ${message}.` };
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
