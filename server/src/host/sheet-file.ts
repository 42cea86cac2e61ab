// Data sheets that somebody names on the command line: one regular file each, in whatever letters it was saved.
import { closeSync, constants, fstatSync, openSync, readSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { ReadError } from './host';
import { limits } from './limits';
import { absent, isFolder, notRegular, tooLarge } from './troubles';

const flags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);

/** The first bytes of a display’s data block. Source: VESA E-EDID Standard, release A2. */
const BLOCK_HEAD = Buffer.from([0, 255, 255, 255, 255, 255, 255, 0]);

/**
 * The text of a file: UTF-8, UTF-16 with its mark, else the letters of Western Windows, which old pages and tables are
 * saved in. A display’s data block comes as hexadecimal digits.
 */
export function sheetText(here: string, path: string): string | ReadError {
  try {
    const bytes = bytesOf(resolve(here, path));
    return bytes instanceof Uint8Array ? textOf(bytes) : bytes;
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    return code === 'ENOENT' || code === 'ENOTDIR' ? absent : { trouble: `cannot be read: ${message}.` };
  }
}

function bytesOf(path: string): Uint8Array | ReadError {
  const named = statSync(path);
  if (named.isDirectory()) return isFolder;
  if (!named.isFile()) return notRegular;
  const file = openSync(path, flags);
  try {
    const stat = fstatSync(file);
    if (!stat.isFile()) return notRegular;
    if (stat.size > limits.fileBytes) return tooLarge;
    const bytes = Buffer.alloc(stat.size);
    let held = 0;
    for (let got = -1; got !== 0 && held < bytes.length; held += got)
      got = readSync(file, bytes, held, bytes.length - held, null);
    return bytes.subarray(0, held);
  } finally {
    closeSync(file);
  }
}

function textOf(bytes: Uint8Array): string | ReadError {
  if (BLOCK_HEAD.equals(bytes.subarray(0, BLOCK_HEAD.length))) return Buffer.from(bytes).toString('hex');
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  if (bytes.includes(0) || (bytes[0] === 0x25 && bytes[1] === 0x50 && bytes[2] === 0x44 && bytes[3] === 0x46))
    return { trouble: 'is no text; of a PDF, copy its text, or save it as text.' };
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
