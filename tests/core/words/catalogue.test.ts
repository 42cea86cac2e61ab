// The German messages: none for what is not said any more, none with other pieces than the English ones.
import { expect, it } from 'vitest';
import german from '../../../server/src/core/words/de.json';
import { allMessages } from '../../support/messages';

const messages = allMessages();
const table: Readonly<Record<string, string>> = german;
const piecesOf = (words: string): string[] => (words.match(/\{\d+\}/g) ?? []).sort();

/** So many messages have no German words yet: fall-back is English. This number may only become less. */
const untranslated = 363;

it('has German words for nothing but messages', () => {
  const all = new Set(messages);
  expect(Object.keys(table).filter((key) => !all.has(key))).toEqual([]);
});

it('puts the same pieces in', () => {
  expect(Object.entries(table).filter(([key, own]) => `${piecesOf(key)}` !== `${piecesOf(own)}`)).toEqual([]);
});

it('keeps the blanks at both ends, by which fragments are joined', () => {
  const ends = (text: string): string => `${/^\s*/.exec(text)![0]}|${/\s*$/.exec(text)![0]}`;
  expect(Object.entries(table).filter(([key, own]) => ends(key) !== ends(own))).toEqual([]);
});

it('has German words for more and more of them', () => {
  const without = messages.filter((one) => !Object.hasOwn(table, one));
  expect(without.length).toBeLessThanOrEqual(untranslated);
});
