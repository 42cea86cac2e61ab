// Reports that a run wrote, read again; and the digest by which texts are told apart.
import { createHash } from 'node:crypto';
import type { ReadError } from './host';
import { spelled } from './limits';
import { namedFile } from './named-file';

/** As long as a text may be, about: what a hundred thousand files with findings come to is less. */
const mostBytes = 400_000_000;
const tooLarge: ReadError = {
  trouble: `is larger than ${spelled(mostBytes)} bytes, so it is not read; use more shares.`,
};

/** SHA-256, in hexadecimal. */
export const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

/** The text of a report that somebody names. */
export function reportText(here: string, path: string): string | ReadError {
  const bytes = namedFile(here, path, mostBytes, tooLarge);
  return Buffer.isBuffer(bytes) ? bytes.toString('utf8') : bytes;
}
