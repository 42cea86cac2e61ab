// A field's words: the canonical ones, every common spelling of each, and spellings that leave open which is meant.

export interface Vocabulary<C extends string = string> {
  /** What one of its words names, with its article: `a power connector`. */
  readonly what: string;
  readonly words: readonly C[];
  /** Spellings beside the canonical word, as people write them. */
  readonly spellings: Readonly<Record<C, readonly string[]>>;
  /** Every spelling in plain letters, with the words that it may mean: more than one where it leaves that open. */
  readonly plain: ReadonlyMap<string, readonly C[]>;
  /** Set where the spellings are words of every day, which are read and need no telling. */
  readonly everyday?: true;
}

/**
 * A text in plain letters: no case, blanks, hyphens, quotation marks, brackets or trade marks, `x` for `×`, a word for
 * the sign of a negative number. Linear in its length.
 */
export function plainLetters(text: string): string {
  return text
    .replace(/[®™©]/g, '')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/×/g, 'x')
    .replace(/^[-−–]\s?(?=\d)/, 'minus')
    .replace(/[\s\-_‐‑–—()[\]"'“”’]/g, '');
}

/**
 * Makes a vocabulary of canonical words with their spellings. `open` holds spellings that fit several words; they are
 * asked about, never guessed.
 */
export function vocabulary<C extends string>(
  what: string,
  spellings: Readonly<Record<C, readonly string[]>>,
  open: Readonly<Record<string, readonly NoInfer<C>[]>> = {},
): Vocabulary<C> {
  const words = Object.keys(spellings) as C[];
  let plain: ReadonlyMap<string, readonly C[]> | undefined;
  return {
    what,
    words,
    spellings,
    // Made when it is first asked for: all of them together are a tenth of a cold start.
    get plain() {
      plain ??= new Map([
        ...words.flatMap((word) => [word, ...spellings[word]].map((one) => [plainLetters(one), [word]] as const)),
        ...Object.entries(open).map(([one, meant]) => [plainLetters(one), meant] as const),
      ]);
      return plain;
    },
  };
}

/** A vocabulary whose spellings are words of every day. */
export const everydayWords = <C extends string>(
  what: string,
  spellings: Readonly<Record<C, readonly string[]>>,
): Vocabulary<C> => Object.assign(vocabulary(what, spellings), { everyday: true as const });

/** What a text may mean: one word, several where the spelling leaves it open, none where it is not understood. */
export function meanings<C extends string>(of: Vocabulary<C>, text: string): readonly C[] {
  if ((of.words as readonly string[]).includes(text)) return [text as C];
  return of.plain.get(plainLetters(text)) ?? saidTwice(of, text);
}

/** `Aluminium (Al)`: a word, and the same once more in brackets. */
function saidTwice<C extends string>(of: Vocabulary<C>, text: string): readonly C[] {
  const opened = text.endsWith(')') ? text.indexOf('(') : -1;
  if (opened < 1) return [];
  const [first, again] = [text.slice(0, opened), text.slice(opened)].map((one) => of.plain.get(plainLetters(one)));
  return first?.length === 1 && again?.length === 1 && first[0] === again[0] ? first : [];
}

/** The one word that a text means; undefined where it means none or leaves open which. */
export function wordOf<C extends string>(of: Vocabulary<C>, text: string): C | undefined {
  const meant = meanings(of, text);
  return meant.length === 1 ? meant[0] : undefined;
}

/** Some of a word’s other spellings that are worth telling, unlike it and unlike each other: those listed first. */
export function usualSpellings(of: Vocabulary, word: string, most: number): string[] {
  if (of.everyday) return [];
  const seen = new Set([plainLetters(word)]);
  const found: string[] = [];
  for (const one of of.spellings[word] ?? []) {
    if (found.length === most) break;
    if (seen.size === seen.add(plainLetters(one)).size) continue;
    found.push(one.trim());
  }
  return found;
}

/** Every pair of a word before and a word after, and the other way about: `PCIe 8-pin`, `8-pin PCIe`. */
export const eitherWay = (ones: readonly string[], others: readonly string[]): string[] =>
  ones.flatMap((one) => others.flatMap((other) => [`${one} ${other}`, `${other} ${one}`]));
