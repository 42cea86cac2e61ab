// All that completion offers at a place, with parts of the names given.
import type { Candidate } from '../../server/src/core/judge/swaps';
import { Doc } from '../../server/src/core/parts/doc';
import { completion } from '../../server/src/features/completion';
import type { CompletionItem, CompletionOptions } from '../../server/src/features/completion-item';
import { Fits } from '../../server/src/features/fit';
import { english } from '../../server/src/core/words/languages';
import type { Position, View } from '../../server/src/features/shapes';

export const partsNamed = (...names: readonly string[]): readonly Candidate[] =>
  names.map((name) => ({ name, doc: new Doc(`parts/${name}.part.yaml`, 'part', '') }));

export function completions(
  view: View,
  position: Position,
  options: Partial<CompletionOptions> = {},
): CompletionItem[] {
  return completion(view, position, {
    markup: 'markdown',
    language: english(),
    snippets: true,
    parts: () => partsNamed('a/b'),
    fits: new Fits(),
    trials: 400,
    ...options,
  } as CompletionOptions).items;
}
