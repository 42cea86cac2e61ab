// Text from a file, made safe to show inside a one-line message.

// Control characters, line separators, bidirectional controls, invisible characters, lone surrogates.
const unseen = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\p{Co}\u115f\u1160\u3164\uffa0\u034f]/gu;

/** Characters that cannot be seen are written as `\u{…}`; everything else stays. */
export function visible(text: string): string {
  return text.replace(unseen, (character) => `\\u{${character.codePointAt(0)!.toString(16)}}`);
}

/**
 * The text in backticks for a message, as all text of files stands in one: visible, and cut after `longest`
 * characters.
 */
export function quoted(text: string, longest = 60): string {
  const characters = [...text.slice(0, longest * 2 + 2)];
  const cut = characters.length > longest || text.length > longest * 2 + 2;
  const shown = `${visible(characters.slice(0, longest).join(''))}${cut ? '…' : ''}`;
  return shown.includes('`') ? `"${shown}"` : `\`${shown}\``;
}
