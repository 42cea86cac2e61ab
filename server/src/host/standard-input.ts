// Standard input as the text of a file: within the limit of one, and UTF-8 only.
import { decode } from './decode';
import type { ReadError } from './host';
import { limits } from './limits';
import { tooLarge } from './troubles';

/** Reads a stream to its end; past the limit it is given up. */
export async function readInput(stream: AsyncIterable<Uint8Array | string>): Promise<string | ReadError> {
  const chunks: Buffer[] = [];
  let held = 0;
  try {
    for await (const chunk of stream) {
      const bytes = Buffer.from(chunk);
      held += bytes.length;
      if (held > limits.fileBytes) return tooLarge;
      chunks.push(bytes);
    }
  } catch (error) {
    return { trouble: `cannot be read: ${error instanceof Error ? error.message : String(error)}.` };
  }
  return decode(Buffer.concat(chunks));
}
