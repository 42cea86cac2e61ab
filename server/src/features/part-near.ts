// Where the name of a part would be asked for next, by where the cursor is.
import type { Position, View } from './shapes';

/** The end of the name of the part among whose lines a place is; undefined where no part is named there. */
export function partNear({ doc, build }: View, position: Position): Position | undefined {
  const offset = doc.lines.offsetAt(position);
  const lineEnd = doc.lines.offsetAt({ line: position.line + 1, character: 0 });
  const placed = build?.all().find(({ span, map }) => span.start < lineEnd && offset <= (map?.span.end ?? span.end));
  const value = placed?.map?.get('use')?.value;
  if (!value) return undefined;
  const end = doc.lines.positionAt(value.span.end);
  // Where nothing is named yet, it would be typed where the cursor is.
  const isHere =
    value.span.start === value.span.end && end.line === position.line && end.character < position.character;
  return isHere ? position : end;
}
