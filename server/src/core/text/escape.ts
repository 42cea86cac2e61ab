// Text from a file, made safe to show: the one list of what cannot be seen, for messages, terminal, JSON and Markdown.

/**
 * Characters that cannot be seen, or that change how others are seen: controls, format controls (bidirectional ones
 * among them), line separators, private use, surrogates, noncharacters, the default-ignorable ones (variation
 * selectors, fillers, joiners), and the braille blank, which is no blank to Unicode. Source: Unicode Standard, general
 * categories; `DerivedCoreProperties.txt`, Default_Ignorable_Code_Point.
 */
const unseen =
  /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}\p{Noncharacter_Code_Point}\u2800\ufffc]/gu;

/**
 * What the log of a build service would take for a command to itself: `::error …::` at the start of a line, and as any
 * line may be cut anywhere also `::` within one; `##[error]` and `##word[…]` anywhere. Source: actions/runner,
 * src/Runner.Common/ActionCommand.cs.
 */
const command = /::(?=[a-z])|##(?=[a-z]{0,40}\[)/gi;

/** Most texts by far: told much faster than by the classes above. */
const plain = /^[ -~]*$/;
const mayCommand = /::|##/;

/** Characters that cannot be seen, and the first of what starts a command, are written as `\u{…}`; the rest stays. */
export function visible(text: string): string {
  const inert = mayCommand.test(text)
    ? text.replace(command, ([first]) => (first === ':' ? '\\u{3a}:' : '\\u{23}#'))
    : text;
  return plain.test(inert)
    ? inert
    : inert.replace(unseen, (character) => `\\u{${character.codePointAt(0)!.toString(16)}}`);
}

/**
 * The same inside a text of JSON, where an escape stands for half a pair at most: the value stays as it was. None of
 * our lines of JSON begins with a value, so that `::` starts nothing there.
 */
export function visibleInJson(json: string): string {
  const inert = json.includes('##') ? json.replace(/##(?=[a-z]{0,40}\[)/gi, '\\u0023#') : json;
  if (plain.test(inert)) return inert;
  return inert.replace(unseen, (character) =>
    Array.from(
      { length: character.length },
      (_, unit) => `\\u${character.charCodeAt(unit).toString(16).padStart(4, '0')}`,
    ).join(''),
  );
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
