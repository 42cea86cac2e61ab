// Tells the server where the cursor goes: what was being written is shown once it is left.
import { Disposable, window, type TextEditor } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { CursorWent } from '../../server/src/language/requests';
import { guideLanguage, languageIds } from './languages';

/** Every change of line in files of ours, and every change to another editor. */
export function tellOfCursor(client: BaseLanguageClient): Disposable {
  let last: CursorWent | undefined;
  const tell = (editor: TextEditor | undefined): void => {
    const isOurs = editor !== undefined && [guideLanguage, ...languageIds].includes(editor.document.languageId);
    const now = isOurs ? wentTo(editor) : last && { uri: last.uri, position: null };
    if (!now || (last && isSame(now, last)) || !client.isRunning()) return;
    last = now;
    void client.sendNotification('fettle/cursor', now);
  };
  return Disposable.from(
    window.onDidChangeTextEditorSelection(({ textEditor }) => {
      if (textEditor === window.activeTextEditor) tell(textEditor);
    }),
    window.onDidChangeActiveTextEditor(tell),
  );
}

function wentTo({ document, selection }: TextEditor): CursorWent {
  const { line, character } = selection.active;
  return { uri: document.uri.toString(), position: { line, character } };
}

/** Within a line nothing is left. */
const isSame = (a: CursorWent, b: CursorWent): boolean => a.uri === b.uri && a.position?.line === b.position?.line;
