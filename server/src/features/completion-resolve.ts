// What is said of a part once it is looked at in a list: what it is, and what the build would be with it.
import type { Build } from '../core/build/build';
import { trySwaps } from '../core/judge/swaps';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import type { PartData } from './completion-item';
import { partBlocks } from './part-words';
import { item, markup, paragraph, strong, type Block } from './prose';
import type { MarkupContent, View } from './shapes';

const mostTold = 5;

/** Undefined where the build has no such place any more, or the folder no such part. */
export function describePart(
  view: View & { readonly build: Build },
  { path, part }: PartData,
  kind: MarkupContent['kind'],
  language: Language = english(),
): MarkupContent | undefined {
  const { build, judgement } = view;
  const placed = build.all().find((one) => one.path === path);
  const doc = build.find(part);
  if (!placed || !doc) return undefined;
  const { brings, clears } = [...trySwaps(build, judgement, placed, [{ name: part, doc }])][0]!;
  const there = build.withPart(placed, part).inPlaceOf(placed)!;
  const open = brings.filter(({ grade }) => grade === 'unknown').length;
  const told = brings.filter(({ grade }) => grade !== 'unknown');
  const cleared = clears.filter(({ grade }) => grade !== 'unknown').length;
  return markup(
    [
      ...listed(
        language,
        told.map(({ grade, said }) => item(0, strong(grade), ` ${language.said(said)}`)),
      ),
      ...(cleared > 0 ? [paragraph(clearing(cleared, language))] : []),
      ...(open > 0 ? [paragraph(waiting(open, language))] : []),
      ...partBlocks(there, language),
    ],
    kind,
  );
}

function listed(language: Language, items: readonly Block[]): Block[] {
  if (items.length === 0) return [];
  const more = items.length - mostTold;
  return [
    paragraph(language.word('It would bring:')),
    ...items.slice(0, mostTold),
    ...(more > 0 ? [item(0, language.words`… and ${more} more.`)] : []),
  ];
}

const clearing = (count: number, language: Language): string =>
  count === 1
    ? language.word('It would clear 1 finding of this build.')
    : language.words`It would clear ${count} findings of this build.`;

const waiting = (count: number, language: Language): string =>
  count === 1
    ? language.word('1 question would wait for facts that its file does not state.')
    : language.words`${count} questions would wait for facts that its file does not state.`;
