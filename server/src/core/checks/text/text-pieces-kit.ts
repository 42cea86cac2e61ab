// Sentences on a file's text by itself come as text: what stands in them in quotes, and what kind of thing they name,
// are pieces, around which other languages have their own words.
import type { Sentence } from '../../figures/sentence';

/** Words in quotes, several of them as one list; a text that has such a quote in it stands in others. */
const QUOTED = /(`[^`]*`(?:(?:, | or |, or | and )`[^`]*`)*|"[^"`]*`[^"]*")/;

/** What names a kind of thing, or a number, stands between these. */
const FRAMES: readonly (readonly [string, string])[] = [
  [' in which ', ' is read'],
  [' is not how ', ' is written'],
  [' is not ', ' that is known here'],
  [' is not ', '; write a number and its unit'],
  [' is not ', '; write year'],
  [' is not a whole number of ', ' or more'],
  [' is not the ', ', such as '],
  [' is not a', ', such as '],
  [' is a', '; expected '],
  ['; expected ', ', in '],
  [' can stand here, ', ' to '],
  [' to ', '.'],
  ['larger than ', ' bytes'],
  ['holds more than ', ' words'],
  ['used more than ', ' times'],
  ['repeat more than ', ' values'],
  [' values or ', ' levels'],
  ['There are ', ' more places'],
  [' (U+', ') '],
  ['More than ', ' entries'],
  ['more than ', ' deep'],
  ['the kinds are ', '.'],
  [' and one of ', '.'],
];

/** The same sentence in pieces. */
export function inPieces(text: string): Sentence {
  const parts = text.split(QUOTED).flatMap((part, i) => (i % 2 === 0 ? framed(part) : [part]));
  const words = parts.filter((_, i) => i % 2 === 0);
  const pieces = parts.filter((_, i) => i % 2 === 1);
  return { text, figures: [], facts: [], shown: [], words, pieces };
}

/** Words and pieces by turns; the article goes with what it stands before. */
function framed(words: string): readonly string[] {
  for (const [before, after] of FRAMES) {
    const at = words.indexOf(before);
    const from = at + before.length - (before.endsWith(' a') ? 1 : before.endsWith(' the ') ? 4 : 0);
    // A full stop ends the sentence; another is a decimal one.
    const to = at < 0 ? -1 : after === '.' ? words.lastIndexOf(after) : words.indexOf(after, from + 1);
    if (to <= from || (before === ' to ' && !(at === 0 && /^ to -?\d/.test(words)))) continue;
    return [...framed(words.slice(0, from)), words.slice(from, to), ...framed(words.slice(to))];
  }
  return [words];
}
