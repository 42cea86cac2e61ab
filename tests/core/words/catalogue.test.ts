// The German messages: none for what is not said any more, none with other pieces than the English ones.
import { expect, it } from 'vitest';
import german from '../../../server/src/core/words/de.json';
import fields from '../../../server/src/core/words/de-fields.json';
import ofTexts from '../../../server/src/core/words/de-text.json';
import { keyOf } from '../../../server/src/core/words/language';
import { everyFinding } from '../../support/every-finding';
import { allMessages } from '../../support/messages';

const messages = allMessages();
const table: Readonly<Record<string, string>> = { ...german, ...fields, ...ofTexts };
const piecesOf = (words: string): string[] => (words.match(/\{\d+\}/g) ?? []).sort();

/** What has no German words is said in English. This share may only grow. */
const translated = 0.97;

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

it('has German words for most of them', () => {
  const own = messages.filter((one) => Object.hasOwn(table, one));
  expect(own.length / messages.length).toBeGreaterThan(translated);
});

it('has German words for all that says of a harm', () => {
  const harm = everyFinding().filter(({ finding }) => finding.grade === 'harm');
  const bare = harm.map(({ finding: { said } }) => keyOf(said.words)).filter((key) => /\p{L}/u.test(key));
  expect(harm.length).toBeGreaterThan(80);
  expect([...new Set(bare)].filter((key) => !Object.hasOwn(table, key))).toEqual([]);
});
