// Work that asks for the parts of a workspace: what it asks for is read, and it is run again.
import type { CancellationToken } from 'vscode-languageserver/node';
import type { Candidate } from '../core/judge/swaps';
import type { Kind } from '../core/parts/kinds';
import type { PartIndex } from '../session/part-index';
import type { AnalyzedFile } from '../session/session';
import type { Shared } from './findings';
import { cancelled, overtaken } from './guard';

/**
 * Runs work that may ask for the parts of a kind: what it asks for is read, and it is run again. With `skip`, it is
 * run once without any. Throws when the text has changed meanwhile: the answer would be for another text.
 */
export async function withParts<T>(
  shared: Shared,
  shelf: PartIndex,
  judged: AnalyzedFile,
  token: CancellationToken,
  skip: boolean,
  work: (candidates: (kind: Kind) => readonly Candidate[]) => T | Promise<T>,
): Promise<T> {
  const held = new Map<Kind, readonly Candidate[]>();
  for (;;) {
    const asked = new Set<Kind>();
    const result = await work((kind) => {
      if (!held.has(kind)) asked.add(kind);
      return held.get(kind) ?? [];
    });
    if (skip || asked.size === 0) return result;
    for (const kind of asked) held.set(kind, await shelf.ofKind(judged, kind, () => token.isCancellationRequested));
    stillWanted(shared, judged, token);
  }
}

/** Throws where an answer would come to nothing: the request was cancelled, or the text is another one by now. */
export function stillWanted({ session }: Shared, judged: AnalyzedFile, token: CancellationToken): void {
  if (token.isCancellationRequested) throw cancelled();
  if (!session.holds(judged)) throw overtaken();
}
