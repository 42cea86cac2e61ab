// Bytes as text: UTF-8, and UTF-16 where that is asked for; a clear word where they are something else.
import type { Encodings, ReadError } from './host';

const strict = new TextDecoder('utf-8', { fatal: true });

/** The text of a file without a byte order mark, which editors take off too; or why it is no text. */
export function decode(bytes: Uint8Array, encodings: Encodings = 'UTF-8'): string | ReadError {
  const wide = wideOf(bytes);
  if (wide) {
    if (encodings === 'any') return new TextDecoder(wide).decode(bytes);
    return { trouble: 'is written in UTF-16; save it as UTF-8.' };
  }
  try {
    const text = strict.decode(bytes);
    return text.includes('\0') ? { trouble: 'holds zero bytes, so it is no text.' } : text;
  } catch {
    return { trouble: 'is not text in UTF-8.' };
  }
}

/** The form of UTF-16 that a byte order mark tells. Source: The Unicode Standard, 23.8. */
export function wideOf(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : undefined;
}
