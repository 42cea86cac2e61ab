// Bytes as text: UTF-8 only, and a clear word where they are something else.
import type { ReadError } from './host';

const strict = new TextDecoder('utf-8', { fatal: true });

/** The text of a file without a byte order mark, which editors take off too; or why it is no text. */
export function decode(bytes: Uint8Array): string | ReadError {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return { trouble: 'is written in UTF-16; save it as UTF-8.' };
  }
  try {
    const text = strict.decode(bytes);
    return text.includes('\0') ? { trouble: 'holds zero bytes, so it is no text.' } : text;
  } catch {
    return { trouble: 'is not text in UTF-8.' };
  }
}
