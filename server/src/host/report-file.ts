// Reports that a run wrote, read again; and the digest by which texts are told apart.
import { createHash } from 'node:crypto';
import { closeSync, constants, fstatSync, openSync, readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { ReadError } from './host';
import { spelled } from './limits';
import { absent, isFolder, notRegular } from './troubles';

/** As long as a text may be, about: what a hundred thousand files with findings come to is less. */
const mostBytes = 400_000_000;

const flags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);

export const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

/** The text of a report that somebody names. */
export function reportText(here: string, path: string): string | ReadError {
  let file: number | undefined;
  try {
    const full = resolve(here, path);
    const named = statSync(full);
    if (named.isDirectory()) return isFolder;
    if (!named.isFile()) return notRegular;
    file = openSync(full, flags);
    const stat = fstatSync(file);
    if (!stat.isFile()) return notRegular;
    if (stat.size > mostBytes)
      return { trouble: `is larger than ${spelled(mostBytes)} bytes, so it is not read; use more shares.` };
    return readFileSync(file, 'utf8');
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    return code === 'ENOENT' || code === 'ENOTDIR' ? absent : { trouble: `cannot be read: ${message}.` };
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
