// Puts the cursor where someone is to write: between the quotes of a reason that an edit has just put in.
import { Position, Range, Selection, Uri, window } from 'vscode';

/** `uri` and `at` as the server names them; anything else is left alone. */
export async function writeAt(uri: unknown, at: unknown): Promise<void> {
  if (typeof uri !== 'string' || !isPosition(at)) return;
  const editor = await window.showTextDocument(Uri.parse(uri, true), { preserveFocus: false });
  const place = editor.document.validatePosition(new Position(at.line, at.character));
  editor.selection = new Selection(place, place);
  editor.revealRange(new Range(place, place));
}

function isPosition(at: unknown): at is { line: number; character: number } {
  const { line, character } = (at ?? {}) as { line?: unknown; character?: unknown };
  return Number.isInteger(line) && Number.isInteger(character) && Number(line) >= 0 && Number(character) >= 0;
}
