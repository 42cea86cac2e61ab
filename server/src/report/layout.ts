// Laying text out in a column of a terminal: widths, wrapping, and input made safe to show.
import { visible } from '../core/text';

export const pageWidth = 100;

// Two columns wide in a terminal; combining marks take none. Unicode Standard Annex #11, in its main ranges.
const wideScript = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u;
const wideMark = /[\u3000-\u303f\uff01-\uff60\uffe0-\uffe6\p{Emoji_Presentation}]/u;
const none = /\p{M}/u;
const plain = /^[\x20-\x7e]*$/;

/** How many columns a text takes. */
export function columns(text: string): number {
  if (text.length === 0 || plain.test(text)) return text.length;
  let sum = 0;
  for (const character of text)
    sum +=
      character < '\u0300'
        ? 1
        : none.test(character)
          ? 0
          : wideScript.test(character) || wideMark.test(character)
            ? 2
            : 1;
  return sum;
}

export function padded(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - columns(text)));
}

/** Input on one line: whatever cannot be seen is written out, line ends and tabs too. */
export const safe = (text: string): string => visible(text);

/**
 * Lines of at most `width` columns; a word longer than that is cut, a path between its steps, as nothing may be lost.
 */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  let taken = 0;
  for (const word of safe(text).split(' ')) {
    const long = columns(word);
    for (const piece of long <= width ? [word] : pieces(word, width)) {
      const own = long <= width ? long : columns(piece);
      if (line === '') [line, taken] = [piece, own];
      else if (taken + 1 + own <= width) [line, taken] = [`${line} ${piece}`, taken + 1 + own];
      else {
        lines.push(line);
        [line, taken] = [piece, own];
      }
    }
  }
  return [...lines, line];
}

/** A word that is too long for a line, in pieces that are not. */
function pieces(word: string, width: number): string[] {
  const parts: string[] = [];
  let part = '';
  for (const character of word) {
    if (columns(part + character) > width) {
      const whole = part.lastIndexOf('/') + 1 || part.length;
      parts.push(part.slice(0, whole));
      part = part.slice(whole);
    }
    part += character;
  }
  return [...parts, part];
}

/** Text in a column that starts at `least`, or behind `first` where that is longer; it begins the first line. */
export function block(text: string, least: number, first = '', width = pageWidth): string[] {
  const from = Math.max(least, first === '' ? 0 : columns(first.trimEnd()) + 1);
  return wrapped(text, width - from).map((line, i) => (padded(i === 0 ? first : '', from) + line).trimEnd());
}

/** A word at the right edge: on the last line where it fits, else on a line of its own. */
export function withRight(lines: readonly string[], right: string, width = pageWidth): string[] {
  const last = lines[lines.length - 1] ?? '';
  const gap = width - columns(last) - columns(right);
  if (gap >= 3) return [...lines.slice(0, -1), last + ' '.repeat(gap) + right];
  return [...lines, ' '.repeat(Math.max(0, width - columns(right))) + right];
}

export const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
