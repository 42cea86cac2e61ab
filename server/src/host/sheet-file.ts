// Data sheets that somebody names on the command line: one regular file each, in whatever letters it was saved.
import { decode, wideOf } from './decode';
import { isTrouble, type ReadError } from './host';
import { limits } from './limits';
import { namedFile } from './named-file';
import { tooLarge } from './troubles';

/** The first bytes of a display’s data block. Source: VESA E-EDID Standard, release A2. */
const BLOCK_HEAD = Buffer.from([0, 255, 255, 255, 255, 255, 255, 0]);
/** Source: ISO 32000-1, 7.5.2. */
const PDF_HEAD = Buffer.from('%PDF', 'latin1');

/**
 * The text of a file: UTF-8, UTF-16 with its mark, else the letters of Western Windows, which old pages and tables are
 * saved in. A display’s data block comes as hexadecimal digits.
 */
export function sheetText(here: string, path: string): string | ReadError {
  const bytes = namedFile(here, path, limits.fileBytes, tooLarge);
  return Buffer.isBuffer(bytes) ? textOf(bytes) : bytes;
}

/** What Windows-1252 has from 0x80 to 0x9f. Source: WHATWG Encoding Standard, index windows-1252. */
const WINDOWS = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
/** Some releases of Node leave the controls of Latin-1 in their places. */
const ofWindows = (text: string): string =>
  text.replace(/[\u0080-\u009f]/g, (one) => WINDOWS.charAt(one.charCodeAt(0) - 0x80));

function textOf(bytes: Buffer): string | ReadError {
  if (startsWith(bytes, BLOCK_HEAD)) return bytes.toString('hex');
  if (startsWith(bytes, PDF_HEAD) || (bytes.includes(0) && !wideOf(bytes)))
    return { trouble: 'is no text; of a PDF, copy its text, or save it as text.' };
  const text = decode(bytes, 'any');
  return isTrouble(text) ? ofWindows(new TextDecoder('windows-1252').decode(bytes)) : text;
}

const startsWith = (bytes: Buffer, head: Buffer): boolean => bytes.subarray(0, head.length).equals(head);
