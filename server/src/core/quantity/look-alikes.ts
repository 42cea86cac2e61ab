// Puts the usual characters in place of those that only look like them, and remembers where each stood.

export interface LookAlike {
  /** Where it stands in the text as written. */
  readonly start: number;
  readonly end: number;
  readonly written: string;
  /** What was put in its place; empty for a character that cannot be seen. */
  readonly meant: string;
}

export interface Tidied {
  readonly text: string;
  /** For each offset in `text`, its end included, the offset in the text as written. */
  readonly origin: readonly number[];
  readonly alikes: readonly LookAlike[];
}

function pairs(written: string, meant: string): [string, string][] {
  return Array.from(written, (character, index): [string, string] => [character, meant[index] ?? '']);
}

/** Second encodings of one character: Unicode holds each pair to be the same sign, so nothing is said about them. */
const same = new Map(pairs('\u03BC\u2126\u212A\u22C5', '\u00B5\u03A9K\u00B7'));

const alike = new Map([
  ...pairs('АВЕЅІЈКМНОРСТХЅԜ', 'ABESIJKMHOPCTXSW'),
  ...pairs('аеосрхкмѕіјһԝ', 'aeocpxkmsijhw'), // Cyrillic
  ...pairs('ΑΒΕΖΗΙΚΜΝΟΡΤΧο', 'ABEZHIKMNOPTXo'), // Greek
  ...pairs('\u00BA\u02DA\u1D52\u2218', '°°°°'),
  ...pairs('\u2010\u2011\u2012\u2212\u2014', '----–'),
  ...pairs('\u2044\u2215', '//'),
  ...pairs('\u2219\u2022', '··'),
  ...pairs('\u201C\u201D', '""'),
]);

const invisible = /\p{Cf}/u;
/** Full-width forms, squared units, letter-like signs, mathematical letters, spaces of other kinds. */
const compatible = /[\uFF00-\uFFEF\u3380-\u33FF\u2100-\u214F\u{1D400}-\u{1D7FF}]|(?! )\p{Zs}/u;

/** What a character is read as, or itself. */
function meaning(character: string): string {
  const known = same.get(character) ?? alike.get(character);
  if (known !== undefined) return known;
  if (invisible.test(character)) return '';
  return compatible.test(character) ? character.normalize('NFKC') : character;
}

/** Replaces look-alikes; the pairs that Unicode holds to be one sign are replaced without mention. */
export function tidy(written: string): Tidied {
  let text = '';
  const origin: number[] = [];
  const alikes: LookAlike[] = [];
  let start = 0;
  for (const character of written) {
    const end = start + character.length;
    const leadingDash = character === '–' && text.trim() === '' && /\d/.test(written.charAt(end));
    const meant = leadingDash ? '-' : meaning(character);
    for (let index = 0; index < meant.length; index++) origin.push(start);
    if (meant !== character && !same.has(character)) alikes.push({ start, end, written: character, meant });
    text += meant;
    start = end;
  }
  origin.push(start);
  return { text, origin, alikes };
}

/** Letters written for digits in a word that stands where a number does: `1O` for 10, `l58` for 158. */
const lettersForDigits = /(?<!\S)[+-]?(?=[\dOoIl.]*\d)(?=[\d.]*[OoIl])[\dOoIl]+(?:\.[\dOoIl]+)?(?=\s|$)/g;

/** Puts digits in place of letters, as far as the text could then be a number; undefined where there are none. */
export function withDigits({ text, origin, alikes }: Tidied): Tidied | undefined {
  const added: LookAlike[] = [];
  const mended = text.replace(lettersForDigits, (word: string, at: number) =>
    word.replace(/[OoIl]/g, (letter, index: number) => {
      const meant = letter === 'O' || letter === 'o' ? '0' : '1';
      added.push({ start: origin[at + index] ?? 0, end: origin[at + index + 1] ?? 0, written: letter, meant });
      return meant;
    }),
  );
  return added.length === 0 ? undefined : { text: mended, origin, alikes: [...alikes, ...added] };
}
