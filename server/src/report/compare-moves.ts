// What moved between two sides, as text: figures with the lines behind them, records of a machine, facts and steps.
import type { Language } from '../core/words/language';
import type { ChangedFact, FileComparison, Movement, RecordChange } from '../review/comparison';
import type { CompareLook } from './compare-text';
import { block, columns, padded, safe } from './layout';

/** Words of a kind stand in a column, with two blanks behind the longest. */
const leastKind = 11;
export const wide = (words: readonly string[]): number =>
  Math.max(leastKind, ...words.map((word) => columns(word) + 2));

export function movedText(moved: readonly Movement[], { working, language }: CompareLook): string[] {
  if (moved.length === 0) return [];
  const told = moved.map((one) => ({ ...one, what: language.plain(one.what) }));
  const width = Math.min(44, Math.max(...told.map(({ what }) => columns(what))));
  return told.flatMap((one) => {
    const by = judgedWords(one, language);
    const value = one.cancels
      ? cancelledWords(one, language)
      : `${amount(one.before, language)} → ${amount(one.after, language)}${by === '' ? '' : `   (${by})`}`;
    return [
      ...block(value, 4 + width, `  ${safe(padded(one.what, width))}`),
      ...(working ? one.why.flatMap((fact) => block(factWords(fact, language), 8, '      ·')) : []),
    ];
  });
}

/** A figure of one side; a side without it has none. */
export const amount = (value: string | undefined, language: Language): string =>
  value === undefined ? language.word('none') : language.label(value);

export const cancelledWords = ({ after }: Movement, language: Language): string =>
  language.words`${amount(after, language)}, as before: what changed cancels out`;

/** `+12 W, worse`; empty where neither is known. */
export function judgedWords(
  { difference, isBetter }: Pick<Movement, 'difference' | 'isBetter'>,
  language: Language,
): string {
  const judged = isBetter === undefined ? '' : isBetter ? language.word('better') : language.word('worse');
  return [difference ?? '', judged].filter(Boolean).join(', ');
}

export function factWords({ what, before, after }: ChangedFact, language: Language): string {
  const at = (side: ChangedFact['before'], none: string): string =>
    side ? `${side.text} (${side.file}:${side.line})` : none;
  return `${what}: ${at(before, language.word('not stated'))} → ${at(after, language.word('not stated any more'))}`;
}

/** As text and comment call them. */
export function recordWord(kind: RecordChange['kind'], language: Language): string {
  switch (kind) {
    case 'added':
      return language.word('new');
    case 'removed':
      return language.word('gone');
    case 'moved':
      return language.word('moved');
    case 'swapped':
      return language.word('swapped');
    case 'changed':
      return language.word('changed');
    case 'shown':
      return language.word('shown now');
    case 'not-shown':
      return language.word('not shown');
  }
}

/** `drive scratch, hours: 9829 h → 10211 h (+382 h)`. */
export function recordSentence(change: RecordChange, language: Language): string {
  const { kind, fact, before, after } = change;
  const thing = language.plain(change.thing);
  const what = fact === undefined || kind === 'moved' ? thing : `${thing}, ${fact}`;
  const by = judgedWords(change, language);
  if (!before || !after) return `${what}: ${(after ?? before)?.text ?? ''}`;
  return `${what}: ${before.text} → ${after.text}${by ? ` (${by})` : ''}`;
}

/** `machine read 2026-11-25 → 2026-12-30`. */
export function recordLead({ record }: FileComparison, language: Language): string {
  const [before, after] = [record?.takenBefore, record?.takenAfter].map(
    (day) => day ?? language.word('on no stated day'),
  );
  return language.words`machine read ${before!} → ${after!}`;
}

export function recordText(file: FileComparison, language: Language): string[] {
  const changes = file.record?.changes ?? [];
  if (changes.length === 0) return [];
  const width = wide(changes.map(({ kind }) => recordWord(kind, language)));
  return [
    ...block(recordLead(file, language), 2),
    ...changes.flatMap((one) =>
      block(recordSentence(one, language), 2 + width, `  ${padded(recordWord(one.kind, language), width)}`),
    ),
  ];
}

/** So many of a list are named; the rest are counted. */
const mostListed = 5;

export function listsText({ newlyUnknown, newlyKnown, steps }: FileComparison, language: Language): string[] {
  const list = (lead: string, of: readonly string[]): string[] => {
    const more = of.length > mostListed ? [language.words`and ${of.length - mostListed} more`] : [];
    const told = of.slice(0, mostListed).map((one) => language.plain(one));
    return of.length > 0 ? block(`${lead}: ${[...told, ...more].join('; ')}`, 4, '') : [];
  };
  const stepsOf = (kind: string): string[] => steps.filter((one) => one.kind === kind).map(({ step }) => step);
  return [
    ...list(language.word('not known any more'), newlyUnknown),
    ...list(language.word('known now'), newlyKnown),
    ...list(language.word('steps added'), stepsOf('added')),
    ...list(language.word('steps no longer needed'), stepsOf('removed')),
    ...list(language.word('steps moved'), stepsOf('moved')),
  ].map((line) => line.replace(/^ {4}/, '  '));
}
