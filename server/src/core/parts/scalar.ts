// One scalar text held against its field: the value, or what is wrong with it and what to write instead.
import { inUnit, plainNumber, readQuantity, type Quantity } from '../quantity';
import { isDay, nearest, quoted } from '../text';
import { meanings, plainLetters, wordOf, type Vocabulary } from '../trade/vocabulary';
import type { ScalarNode } from '../yaml';
import { readingsOf, readSheetQuantity } from './sheet-quantity';
import type { Doc } from './doc';
import type { ChoiceField, CountField, FormField, QuantityField, ScalarField, TextField } from './field';

export type ScalarProblemCode =
  | 'unit-missing'
  | 'unit-of-other-dimension'
  | 'unit-look-alike'
  | 'unit-unknown'
  | 'number-odd'
  | 'range-reversed'
  | 'number-out-of-range'
  | 'wrong-kind-of-value'
  | 'choice-unknown'
  | 'choice-open'
  | 'own-words';

/** What is wrong with a text, in a sentence; `start` and `end` are offsets within the text. */
export interface ScalarProblem {
  readonly code: ScalarProblemCode;
  readonly message: string;
  readonly start: number;
  readonly end: number;
  /** Whole texts to write instead, best first; empty where more than one reading is possible. */
  readonly instead: readonly string[];
}

export interface ScalarRead {
  readonly value?: unknown;
  readonly slip?: ScalarProblem;
}

/** Longer texts are seldom written twice. */
const longestKept = 40;
/** Past so many texts of a field, what is kept of it is forgotten. */
const mostKept = 1_000;

/** Reads a scalar of a document as the field says, once for all who ask, in this document and those it shares with. */
export function readNode({ scalars }: Doc, field: ScalarField, { text }: ScalarNode): ScalarRead {
  if (text.length > longestKept) return readScalar(field, text);
  let kept = scalars.get(field) as Map<string, ScalarRead> | undefined;
  if (!kept) scalars.set(field, (kept = new Map<string, ScalarRead>()));
  const known = kept.get(text);
  if (known) return known;
  if (kept.size >= mostKept) kept.clear();
  // A copy: a piece of a text would keep the whole text in memory.
  const copy = [...text].join('');
  const read = readScalar(field, copy);
  kept.set(copy, read);
  return read;
}

/** Reads `text` as the field says. Never throws; a value beside a slip is certain in spite of it. */
export function readScalar(field: ScalarField, text: string): ScalarRead {
  const read = readPlain(field, text);
  if (!field.sheet || (!read.slip && field.type !== 'text')) return read;
  const plain = field.sheet(text);
  const again = plain === undefined ? undefined : readPlain(field, plain);
  if (!again || again.slip) return read;
  return field.type === 'quantity' ? { value: { ...(again.value as Quantity), text } } : again;
}

function readPlain(field: ScalarField, text: string): ScalarRead {
  switch (field.type) {
    case 'quantity':
      return readAsQuantity(field, text);
    case 'count':
      return readCount(field, text);
    case 'flag':
      return readFlag(text);
    case 'choice':
      return readChoice(field, text);
    case 'form':
      return readForm(field, text);
    case 'date':
      return readDate(text);
    case 'text':
    case 'version':
      if (text === '') return wrong(text, 'Nothing is written here; write a value or take the key out.');
      return field.type === 'text' && field.spellings ? readWord(field, field.spellings, text) : { value: text };
  }
}

function wrong(text: string, message: string, instead: readonly string[] = []): ScalarRead {
  return { slip: { code: 'wrong-kind-of-value', message, start: 0, end: text.length, instead } };
}

function readAsQuantity(field: QuantityField, text: string): ScalarRead {
  if (text === '') return wrong(text, `Nothing is written here; write a value such as ${quoted(field.example)}.`);
  const readings = readingsOf(field, text);
  if (readings?.length === 1) return { value: roomOf(field, readings[0]!.quantity) };
  if (readings && readings.length > 1) return { slip: twoReadings(text, readings) };
  const sheet = readSheetQuantity(field, text);
  if (sheet && !outside(field, sheet)) return { value: roomOf(field, sheet) };
  const read = readQuantity(text, field.dimension, { usual: field.unit });
  if (read.quantity && outside(field, read.quantity)) return { slip: outOfRange(field, text) };
  if (!read.problem) return { value: read.quantity && roomOf(field, read.quantity) };
  const { code, message, start, end, suggestions } = read.problem;
  const slip: ScalarProblem = {
    code: code === 'not-a-number' ? 'wrong-kind-of-value' : code,
    message,
    start,
    end,
    instead: suggestions,
  };
  return { value: read.quantity, slip };
}

/** “Up to 160 mm” on a room is the room itself: what is as large as that still goes in. */
const roomOf = (field: QuantityField, quantity: Quantity): Quantity =>
  field.room && quantity.lo === -Infinity ? { ...quantity, lo: quantity.hi } : quantity;

function twoReadings(text: string, readings: readonly { readonly text: string }[]): ScalarProblem {
  const instead = readings.map((one) => one.text);
  const message =
    `The mark in ${quoted(text)} may part thousands or decimals; write ` +
    `${instead.map((one) => quoted(one)).join(' or ')}.`;
  return { code: 'number-odd', message, start: 0, end: text.length, instead };
}

/** Whether an end that is written lies outside; an open end says nothing. */
function outside({ range: [least, most] }: QuantityField, { lo, hi }: Quantity): boolean {
  const below = (value: number): boolean => Number.isFinite(value) && value < least;
  const above = (value: number): boolean => Number.isFinite(value) && value > most;
  return below(lo) || below(hi) || above(hi) || above(lo);
}

function outOfRange({ range, unit }: QuantityField, text: string): ScalarProblem {
  const [least, most] = range.map((end) => `${plainNumber(Number(inUnit(end, unit).toPrecision(4)))} ${unit}`);
  const message = `${quoted(text)} is outside what can stand here, ${least} to ${most}.`;
  return { code: 'number-out-of-range', message, start: 0, end: text.length, instead: [] };
}

function readCount(field: CountField, text: string): ScalarRead {
  const value = /^\d{1,9}$/.test(text) ? Number(text) : -1;
  if (value >= field.least && value <= field.most) return { value };
  if (value > field.most) return { slip: tooMany(field, text) };
  return wrong(text, `${quoted(text)} is not a whole number of ${field.least} or more.`);
}

function tooMany(field: CountField, text: string): ScalarProblem {
  const message = `${quoted(text)} is outside what can stand here, ${field.least} to ${field.most}.`;
  return { code: 'number-out-of-range', message, start: 0, end: text.length, instead: [] };
}

/** What sheets print for yes and no; YAML 1.1 read some of them as flags, so that none is taken silently. */
const YES = new Set([
  'yes',
  'on',
  'true',
  'y',
  'ja',
  'sim',
  'sí',
  'si',
  'oui',
  'ya',
  '✓',
  '✔',
  'supported',
  'included',
]);
const NO = new Set([
  'no',
  'off',
  'false',
  'n',
  'nein',
  'não',
  'nao',
  'non',
  '✗',
  '✘',
  'none',
  'not supported',
  'without',
]);

function readFlag(text: string): ScalarRead {
  if (text === 'true' || text === 'false') return { value: text === 'true' };
  const lower = text.toLowerCase();
  const meant = YES.has(lower) ? ['true'] : NO.has(lower) ? ['false'] : [];
  return wrong(text, `${quoted(text)} stands where ${quoted('true')} or ${quoted('false')} is meant.`, meant);
}

/** A message lists no more choices than this. */
const longestListed = 16;

function readWord({ closed = false }: TextField, of: Vocabulary, text: string): ScalarRead {
  const slip = nameSlip(of, text);
  if (!slip) return { value: wordOf(of, text) };
  return meanings(of, text).length > 1 || closed ? { slip } : { value: text };
}

/**
 * What is wrong with a word of a vocabulary: it leaves open which is meant, or means none; undefined where it is one.
 */
export function nameSlip(of: Vocabulary, text: string): ScalarProblem | undefined {
  const meant = meanings(of, text);
  if (meant.length === 1) return undefined;
  const near = meant.length > 1 ? undefined : nearestWord(of, text);
  const message =
    meant.length > 1
      ? `${quoted(text)} may mean ${meant.map((word) => quoted(word)).join(' or ')}; write the one that is meant.`
      : `${quoted(text)} is not ${of.what} that is known ` +
        `here${near === undefined ? '' : `; ${quoted(near)} is the nearest`}.`;
  const instead = near === undefined ? meant : [near];
  const code = meant.length > 1 ? 'choice-open' : 'choice-unknown';
  return { code, message, start: 0, end: text.length, instead };
}

/** The word that a text is plausibly a slip of, by any of its spellings. */
function nearestWord(of: Vocabulary, text: string): string | undefined {
  const near = nearest(plainLetters(text), of.plain.keys());
  const meant = near === undefined ? [] : of.plain.get(near)!;
  return meant.length === 1 ? meant[0] : undefined;
}

function readChoice(field: ChoiceField, text: string): ScalarRead {
  if (field.choices.includes(text)) return { value: text };
  const word = field.spellings && wordOf(field.spellings, text);
  if (word !== undefined) return { value: word };
  if (field.spellings && meanings(field.spellings, text).length > 1) return { slip: nameSlip(field.spellings, text)! };
  const letters = plainLetters(text);
  const spelled = field.choices.filter((choice) => plainLetters(choice) === letters);
  if (spelled.length === 1) return { value: spelled[0] };
  const near = nearest(text, field.choices) ?? (field.spellings && nearestWord(field.spellings, text));
  if (field.own !== undefined && /\p{L}/u.test(text)) return ownWords(field.own, text, near);
  const message =
    field.choices.length > longestListed
      ? `${quoted(text)} is none of the words that may stand ` +
        `here${near === undefined ? '' : `; ${quoted(near)} is the nearest`}.`
      : `${quoted(text)} is not one of ${field.choices.map((choice) => quoted(choice)).join(', ')}.`;
  return {
    slip: { code: 'choice-unknown', message, start: 0, end: text.length, instead: near === undefined ? [] : [near] },
  };
}

/** Words that a writer may choose are no fault; that nobody reads them is said. */
function ownWords(what: string, text: string, near: string | undefined): ScalarRead {
  const message =
    near === undefined
      ? `${quoted(text)} is ${what} of your own: where it belongs is not judged.`
      : `${quoted(text)} is read as ${what} of your own; if ${quoted(near)} is meant, write that.`;
  return {
    slip: { code: 'own-words', message, start: 0, end: text.length, instead: near === undefined ? [] : [near] },
  };
}

function readForm(field: FormField, text: string): ScalarRead {
  const value = field.parse(text);
  if (value !== undefined) return { value };
  const meant = field.meant?.(text) ?? [];
  const near = nearest(text, field.usual ?? []);
  const open = meant.length > 1 ? ` ${quoted(text)} may mean ${meant.map((one) => quoted(one)).join(' or ')}.` : '';
  return wrong(
    text,
    open.trim() || `${quoted(text)} is not ${field.form}, such as ${quoted(field.example)}.`,
    meant.length > 0 || near === undefined ? meant : [near],
  );
}

function readDate(text: string): ScalarRead {
  if (isDay(text)) return { value: text };
  return wrong(text, `${quoted(text)} is not a date; write year, month and day, such as ${quoted('2026-10-03')}.`);
}
