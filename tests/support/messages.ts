// The list of all messages in English, as they are looked up in other languages: read from the sources, and from the
// tables of words that are shown as they stand.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { areas } from '../../server/src/core/checks/check';
import { checks } from '../../server/src/core/checks/all';
import { cautionWords, meaningOf, unreadWords } from '../../server/src/core/checks/page';
import { partsMeaning } from '../../server/src/core/build/field-at';
import { figureNames } from '../../server/src/core/guide/names';
import { asBuiltFile } from '../../server/src/core/manifest/as-built';
import { buildFile } from '../../server/src/core/manifest/build-file';
import { houseFile } from '../../server/src/core/manifest/house-file';
import { knownFile } from '../../server/src/core/manifest/known-file';
import { roles } from '../../server/src/core/manifest/places';
import type { Field, Table } from '../../server/src/core/parts/field';
import { kinds } from '../../server/src/core/parts/kinds';
import { dimensions } from '../../server/src/core/quantity';
import { CAUTIONS } from '../../server/src/core/trade/cautions';
import { STEP_KINDS } from '../../server/src/core/trade/steps';
import ofTexts from '../../server/src/core/words/de-text.json';
import { keyOf } from '../../server/src/core/words/language';

const source = join(__dirname, '../../server/src');

/** Every message, in the order of its letters. */
export function allMessages(): string[] {
  const all = new Set([
    ...wordsOfTables(),
    'day',
    'days',
    'at least {0}',
    'at most {0}',
    '{0} to {1}',
    'not stated',
    'not known',
  ]);
  for (const path of readdirSync(source, { recursive: true, encoding: 'utf8' }))
    if (path.endsWith('.ts'))
      for (const one of messagesIn(path, readFileSync(join(source, path), 'utf8'))) all.add(one);
  return [...all].filter(saysSomething).sort();
}

const saysSomething = (message: string): boolean => /\p{L}/u.test(message.replace(/\{\d+\}/g, ''));

function* wordsOfTables(): Iterable<string> {
  yield* Object.values(meaningOf);
  yield* Object.values(areas);
  yield* STEP_KINDS;
  yield unreadWords;
  yield partsMeaning;
  // What is wrong with a text is said in texts, not templates: tests/core/words/text.test.ts finds these.
  yield* Object.keys(ofTexts);
  for (const { what, why, limits = [], remarks = [], examples } of checks)
    yield* [what, why, ...limits, ...remarks, ...examples.flatMap(({ instead = [] }) => instead)];
  for (const { what } of figureNames) yield what;
  for (const { what } of Object.values(dimensions)) yield what;
  for (const { what } of Object.values(roles)) yield what;
  const roleTables = Object.values(roles).map(({ fields }) => fields);
  for (const table of [...Object.values(kinds), ...roleTables, buildFile, houseFile, asBuiltFile, knownFile])
    yield* wordsOfTable(table);
  for (const id of Object.keys(CAUTIONS)) {
    const words = cautionWords(id);
    if (words) yield* [words.word, ...words.sentences];
  }
}

function* wordsOfTable(table: Table): Iterable<string> {
  for (const field of Object.values(table)) yield* wordsOfField(field as Field);
}

/** What a field is said to be, where it is printed, and how its value is written. */
function* wordsOfField(field: Field): Iterable<string> {
  yield field.what;
  if (field.printed) yield field.printed;
  if (field.type === 'form') yield field.form;
  if (field.type === 'choice' && field.own) yield field.own;
  if (field.type === 'group') yield* wordsOfTable(field.fields);
  if (field.type === 'list' || field.type === 'named') yield* wordsOfField(field.of as Field);
}

/**
 * Templates behind `sentence`, `.words`, `.pieces` and `refusal`, the texts put into them, and what `.word`, `many`
 * and `some` are given.
 */
function messagesIn(path: string, text: string): string[] {
  const found: string[] = [];
  for (const { index, 0: tag } of text.matchAll(/(?:\bsentence|\.words)`/g))
    found.push(...new Scan(text, index + tag.length).message());
  for (const { index, 0: tag } of text.matchAll(/(?:\.pieces|\brefusal)`/g))
    found.push(new Scan(text, index + tag.length).message()[0]!);
  for (const { index, 0: call, 1: name } of text.matchAll(/(?<![.\w])(many|some)\(|\.(word)\(/g)) {
    const own = new Scan(text, index + call.length).literals(')');
    found.push(...own, ...(name === 'many' && own.length === 1 ? [`${own[0]!}s`] : []));
  }
  for (const { 1: own } of text.matchAll(/\b(?:done|rather|perhaps|because): '([^'\n]+)'/g)) found.push(own!);
  if (/^core.checks./.test(path))
    for (const { 1: own } of text.matchAll(/(?:\? | : |return )'([^'\n]* [^'\n]*)'/g)) found.push(own!);
  return found;
}

/** Reads a template or an expression of a source from a place on. */
class Scan {
  constructor(
    private readonly text: string,
    private at: number,
  ) {}

  /** A template up to its closing quote, and the words inside what is put into it. */
  message(): string[] {
    const words: string[] = [];
    const inner: string[] = [];
    let own = '';
    for (; this.text[this.at] !== '`'; )
      if (this.text.startsWith('${', this.at)) {
        words.push(own);
        own = '';
        this.at += 2;
        inner.push(...this.literals('}'));
      } else own += this.character();
    this.at++;
    return [keyOf([...words, own]), ...inner];
  }

  /** The texts of an expression up to the bracket that closes it, without what is compared with or used as a key. */
  literals(close: string): string[] {
    const found: string[] = [];
    for (let depth = 0; depth > 0 || this.text[this.at] !== close; ) {
      const sign = this.text[this.at];
      if (sign === undefined) return found;
      const before = this.text.slice(0, this.at).trimEnd();
      if (sign === "'") {
        const own = this.quoted();
        const after = this.text.slice(this.at).trimStart();
        if (!/(?:[=!]==|\[|\bin|case)$/.test(before) && !/^(?:[=!]==|in\b)/.test(after)) found.push(own);
      } else if (sign === '`') {
        this.at++;
        const own = this.message();
        found.push(...(/(?:sentence|\.words|\.pieces)$/.test(before) ? [] : own.slice(0, 1)), ...own.slice(1));
      } else {
        depth += '([{'.includes(sign) ? 1 : ')]}'.includes(sign) ? -1 : 0;
        this.at++;
      }
    }
    this.at++;
    return found;
  }

  private quoted(): string {
    let own = '';
    for (this.at++; this.text[this.at] !== "'"; ) own += this.character();
    this.at++;
    return own;
  }

  private character(): string {
    const [own] = /^(?:\\u\{[0-9a-f]+\}|\\u[0-9a-f]{4}|\\[^]|[^])/i.exec(this.text.slice(this.at, this.at + 12))!;
    this.at += own.length;
    return own.startsWith('\\') ? (JSON.parse(`"${own.replace(/^\\(['`$])/, '$1')}"`) as string) : own;
  }
}
