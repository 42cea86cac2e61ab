// Places in a text after it was changed elsewhere.
import type { Position, Range } from './lines';

/** A range replaced by a text; without a range, the whole text. */
export interface Change {
  readonly range?: Range;
  readonly text: string;
}

/** Where a place is to be found after a change. One inside what was replaced is where the new text ends. */
export function shifted(position: Position, change: Change): Position {
  const { range } = change;
  if (!range || isBefore(position, range.start) || isSame(position, range.start)) return position;
  const end = endOf(change);
  if (isBefore(position, range.end)) return end;
  const line = position.line + end.line - range.end.line;
  return position.line > range.end.line
    ? { line, character: position.character }
    : { line, character: position.character + end.character - range.end.character };
}

export const shiftedRange = ({ start, end }: Range, change: Change): Range => ({
  start: shifted(start, change),
  end: shifted(end, change),
});

/** Where the new text of a change ends. */
export function endOf({ range, text }: Change): Position {
  const start = range?.start ?? { line: 0, character: 0 };
  const lines = text.split(/\r\n|\r|\n/);
  const last = lines.at(-1)!.length;
  return lines.length === 1
    ? { line: start.line, character: start.character + last }
    : { line: start.line + lines.length - 1, character: last };
}

/** Whether two ranges have a place in common, be it an end of both. */
export const meet = (a: Range, b: Range): boolean => !isBefore(a.end, b.start) && !isBefore(b.end, a.start);

const isBefore = (a: Position, b: Position): boolean =>
  a.line < b.line || (a.line === b.line && a.character < b.character);

const isSame = (a: Position, b: Position): boolean => a.line === b.line && a.character === b.character;

/** The change that leads from one text to another, between what both begin and end with. */
export function changeBetween(before: string, after: string, rangeOf: (start: number, end: number) => Range): Change {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && before[start] === after[start]) start++;
  let tail = 0;
  while (tail < most - start && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
  return { range: rangeOf(start, before.length - tail), text: after.slice(start, after.length - tail) };
}
