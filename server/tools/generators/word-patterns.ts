// The spellings of a choice as one pattern: a tree of their letters, with anything between that is neither letter nor
// figure, since that is how they are read.
import { plainLetters, type Vocabulary } from '../../src/core/trade/vocabulary';

interface Branch {
  ends: boolean;
  readonly next: Map<string, Branch>;
}

const between = '[\\W_]*';
const eitherCase = (letter: string): string =>
  letter === 'x' ? '[xX×]' : /[a-z]/.test(letter) ? `[${letter}${letter.toUpperCase()}]` : letter;

function grow(root: Branch, letters: string): void {
  let at = root;
  for (const letter of letters) {
    const next = at.next.get(letter) ?? { ends: false, next: new Map() };
    at.next.set(letter, next);
    at = next;
  }
  at.ends = true;
}

function written({ ends, next }: Branch): string {
  if (next.size === 0) return '';
  const all = [...next].map(([letter, branch]) => {
    const rest = written(branch);
    return eitherCase(letter) + (rest === '' ? '' : between + rest);
  });
  const one = all.length === 1 && !ends ? all[0]! : `(?:${all.join('|')})`;
  return ends ? `${one}?` : one;
}

/** A pattern that takes every spelling of the choices that the reader takes, and little else. */
export function wordPattern(choices: readonly string[], spellings?: Vocabulary): string {
  const root: Branch = { ends: false, next: new Map() };
  const read = spellings ? [...spellings.plain].flatMap(([plain, meant]) => (meant.length === 1 ? [plain] : [])) : [];
  for (const one of [...choices.map(plainLetters), ...read]) {
    const letters = one.replace(/[^a-z0-9]/g, '');
    if (letters !== '') grow(root, letters);
  }
  // The same word once more in brackets is read, too; which word stands there is left to the reader.
  const again = spellings ? `(?:\\([a-zA-Z ]{1,24}\\))?` : '';
  return `^${between}${written(root)}${between}${again}$`;
}
