// Puts another text in the place of a file’s: whole or not at all, and only while the file still says what was read.
import { closeSync, constants, fstatSync, lstatSync, openSync, readFileSync, realpathSync } from 'node:fs';
import { dirname } from 'node:path';
import { decode } from './decode';
import type { ReadError } from './host';
import { isBelow } from './node-folder';
import { fileSink } from './output';
import { absent, leadsOut, notRegular } from './troubles';

const changed: ReadError = { trouble: 'has changed since it was read; nothing was written.' };
const link: ReadError = { trouble: 'is a link, which is not written through; mend what it leads to.' };

const byteOrderMark = Buffer.from([0xef, 0xbb, 0xbf]);

/**
 * Replaces the text of a file below a root; its permissions and its byte order mark stay.
 * @returns why it was not written, if it was not; then it stands as it was.
 */
export function rewriteFile(root: string, path: string, before: string, after: string): ReadError | undefined {
  try {
    if (!isBelow(realpathSync.native(dirname(path)), realpathSync.native(root))) return leadsOut;
    const bytes = bytesOf(path);
    if (!Buffer.isBuffer(bytes)) return bytes;
    if (decode(bytes) !== before) return changed;
    const sink = fileSink(dirname(path), path);
    try {
      if (bytes.subarray(0, 3).equals(byteOrderMark)) sink.write('\uFEFF');
      sink.write(after);
      // Once more, after the time that writing took.
      const now = bytesOf(path);
      if (!Buffer.isBuffer(now) || !now.equals(bytes)) return changed;
      sink.done();
      return undefined;
    } finally {
      sink.drop();
    }
  } catch (error) {
    return { trouble: `cannot be written: ${error instanceof Error ? error.message : String(error)}.` };
  }
}

/** What a regular file holds; a link is not followed. */
function bytesOf(path: string): Buffer | ReadError {
  const stat = lstatSync(path, { throwIfNoEntry: false });
  if (!stat) return absent;
  if (stat.isSymbolicLink()) return link;
  if (!stat.isFile()) return notRegular;
  const file = openSync(path, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0));
  try {
    return fstatSync(file).isFile() ? readFileSync(file) : notRegular;
  } finally {
    closeSync(file);
  }
}
