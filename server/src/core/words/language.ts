// A language that messages are put into: they are written in English, and looked up by their English words.
import type { Piece, Sentence } from '../figures/sentence';
import { capital, opensWithArticle, unfolded } from '../figures/sentence';
import { PlainTexts } from './plain';

/**
 * The words of a language for English ones, `{0}` and so on standing for what is put in, in any order; undefined where
 * it has none.
 */
export type Catalogue = (english: string) => string | undefined;

/** Literal words and numbers of pieces by turns, as they follow each other in a language. */
type Template = readonly (string | number)[];

/** Handed in with a run, so that one process may speak several. Names, ids, keys and numbers are the same in all. */
export class Language {
  private readonly templates = new Map<string, Template>();
  private readonly own = new WeakMap<readonly string[], Template>();
  private readonly plainTexts: PlainTexts | undefined;
  /** Those of several words, the longest first: what stands around one may not be told through it. */
  private readonly phrases: readonly string[];

  constructor(
    /** As `de`, in the spelling of BCP 47. */
    readonly tag: string,
    private readonly catalogue: Catalogue,
    /** Words for texts that are put together in English before they are told, by the same templates. */
    private readonly plainTable?: Readonly<Record<string, string>>,
    /** Names of files that spell words of ours, and are told as they stand. */
    private readonly names: ReadonlySet<string> = new Set(),
  ) {
    const plain = plainTable;
    const known = (text: string): string | undefined => {
      if (names.has(text)) return text;
      return this.catalogue(text) ?? (plain && Object.hasOwn(plain, text) ? plain[text] : undefined);
    };
    this.phrases = [...names].filter((name) => name.includes(' ')).sort((a, b) => b.length - a.length);
    this.plainTexts = plain && new PlainTexts(plain, known, (text) => this.label(text));
  }

  /** The same language, in which none of these names is taken for a word of ours. */
  keeping(names: Iterable<string>): Language {
    const kept = new Set<string>();
    for (const name of names)
      for (const one of [name, name.charAt(0).toUpperCase() + name.slice(1)])
        if (one !== '' && (this.label(one) !== one || this.plain(one) !== one)) kept.add(one);
    return kept.size === 0 ? this : new Language(this.tag, this.catalogue, this.plainTable, kept);
  }

  /** A sentence, with its figures and facts as the English one shows them. */
  said(sentence: Sentence): string {
    const said = this.part(sentence);
    return opensWithArticle(sentence) ? capital(said) : said;
  }

  /** The same within another sentence. */
  private part({ words, pieces, shown }: Sentence): string {
    let next = 0;
    const told = pieces.map((piece) => {
      const own = typeof piece === 'object' && 'type' in piece && piece.type === 'figure' ? shown[next]! : '';
      next += figuresIn(piece);
      return this.piece(piece, own);
    });
    return this.filled(words, told);
  }

  /** Words of a message that are said as they stand. */
  word(english: string): string {
    return this.catalogue(english) ?? english;
  }

  /** A text that was put together in English: the title of a fix, the label of a figure, a line of the sheet. */
  plain(english: string): string {
    if (this.names.has(english)) return english;
    return this.around(english, (text) => this.catalogue(text) ?? this.plainTexts?.said(text) ?? text);
  }

  /** Words around texts and counts, which are put in as they are. */
  words(words: TemplateStringsArray, ...pieces: readonly (string | number)[]): string {
    return this.filled(
      words,
      pieces.map((piece) => String(piece)),
    );
  }

  /** The same around pieces that are more than text, such as links: each where the language has it. */
  pieces<P>(words: TemplateStringsArray, ...pieces: readonly P[]): (string | P)[] {
    const told: (string | P)[] = [];
    for (const part of this.templateOf(words))
      if (typeof part === 'string') told.push(part);
      else if (part in pieces) told.push(pieces[part] as P);
    return told;
  }

  /** `a, b and c`. */
  listed(items: readonly string[]): string {
    return items.length > 1 ? this.words`${items.slice(0, -1).join(', ')} and ${items.at(-1)!}` : items.join('');
  }

  /** A text that is put in: words that are known, or labels such as `height of cooler` made of them; names stay. */
  label(english: string): string {
    return this.names.has(english) ? english : this.around(english, (text) => this.labelled(text));
  }

  /** Tells a text with names of several words put aside, so that nothing splits or takes them for words. */
  private around(text: string, tell: (text: string) => string): string {
    const held = this.phrases.filter((name) => text.includes(name));
    if (held.length === 0) return tell(text);
    let apart = text;
    held.forEach((name, i) => {
      apart = apart.replaceAll(name, String.fromCodePoint(firstHeld + i));
    });
    let told = tell(apart);
    held.forEach((name, i) => {
      told = told.replaceAll(String.fromCodePoint(firstHeld + i), () => name);
    });
    return told;
  }

  private labelled(english: string): string {
    const known = this.catalogue(english) ?? this.plainTexts?.exact(english) ?? this.plainTexts?.template(english);
    if (known !== undefined) return known;
    for (const [joint, joined] of Object.entries(joints)) {
      const at = english.indexOf(joint);
      if (at < 1) continue;
      const [head, rest] = [english.slice(0, at), english.slice(at + joint.length)];
      const isHead =
        loose.has(joint) || isOurs(head) || (this.catalogue(head) ?? this.plainTexts?.exact(head)) !== undefined;
      if (isHead) return joined(this, this.label(head), this.label(rest));
    }
    return this.plainTexts && figureAlone.test(english) ? this.figure(english) : english;
  }

  private piece(piece: Piece, shown: string): string {
    if (typeof piece === 'string') return this.label(piece);
    if (!('type' in piece)) return this.part(piece);
    if (piece.type === 'fact') return piece.text === '' ? this.word('not stated') : piece.text;
    return this.figure(shown);
  }

  /** A figure’s own words: nothing but these ever stands around its numbers and units. */
  private figure(shown: string): string {
    if (shown.startsWith('at least ')) return this.words`at least ${shown.slice('at least '.length)}`;
    if (shown.startsWith('at most ')) return this.words`at most ${shown.slice('at most '.length)}`;
    const at = shown.indexOf(' to ');
    if (at < 0) return this.word(shown).replace(/ (days?|years?)$/, (_, unit: string) => ` ${this.word(unit)}`);
    return this.words`${shown.slice(0, at)} to ${shown.slice(at + ' to '.length)}`;
  }

  private filled(words: readonly string[], pieces: readonly string[]): string {
    let text = '';
    for (const part of this.templateOf(words)) text += typeof part === 'string' ? part : (pieces[part] ?? '');
    return text;
  }

  /** A template in the source is one object for good: it is looked up once. */
  private templateOf(words: readonly string[]): Template {
    const known = this.own.get(words);
    if (known) return known;
    const template = this.template(keyOf(words));
    this.own.set(words, template);
    return template;
  }

  private template(key: string): Template {
    const known = this.templates.get(key);
    if (known) return known;
    const parts = this.word(key)
      .split(/\{(\d+)\}/)
      .map((part, i) => (i % 2 === 0 ? part : Number(part)));
    this.templates.set(key, parts);
    return parts;
  }
}

/** From here on code points of Unicode’s private plane 15 stand for names; no keyboard writes them. */
const firstHeld = 0xf0000;

/** What stands between the words of a label, the loosest first. */
const joints: Readonly<Record<string, (language: Language, head: string, rest: string) => string>> = {
  ', ': (_, head, rest) => `${head}, ${rest}`,
  ' or ': (language, head, rest) => language.words`${head} or ${rest}`,
  ' and ': (language, head, rest) => language.words`${head} and ${rest}`,
  ' of ': (language, head, rest) => language.words`${head} of ${rest}`,
  ' on ': (language, head, rest) => language.words`${head} on ${rest}`,
  ' in ': (language, head, rest) => language.words`${head} in ${rest}`,
  ' at ': (language, head, rest) => language.words`${head} at ${rest}`,
};

/** An amount, a key, or what is printed on a board or a connector: what stands before `of` though it is no word. */
const isOurs = (head: string): boolean => /^(?:at (?:least|most) )?\d[\d.]*(?: |$)|^\S+(?: \d+-pin)?$/.test(head);

/** A figure as it is shown, and nothing beside it. */
const figureAlone = /^(?:at least |at most )?-?\d[\d.]*(?: to -?\d[\d.]*)?(?: \S+)?$/;

/** What joins any two words; the others stand behind a head that is known. */
const loose: ReadonlySet<string> = new Set([', ', ' or ', ' and ']);

/** What a message is looked up by: its words, with `{0}` and so on where something is put in. */
export const keyOf = (words: readonly string[]): string =>
  words.reduce((key, own, i) => `${key}${i === 0 ? '' : `{${i - 1}}`}${unfolded(own)}`, '');

function figuresIn(piece: Piece): number {
  if (typeof piece === 'string') return 0;
  if (!('type' in piece)) return piece.shown.length;
  return piece.type === 'figure' ? 1 : 0;
}
