// Two columns from the first key on: an editor that was open before this extension may have kept its own indentation.
import { window, workspace, type TextEditor } from 'vscode';
import { languageIds } from './languages';

/** Gives the editors at hand the indentation that the settings wish for our languages. */
export function indentAsSet(): void {
  for (const editor of window.visibleTextEditors) if (languageIds.includes(editor.document.languageId)) indent(editor);
}

function indent(editor: TextEditor): void {
  const settings = workspace.getConfiguration('editor', editor.document);
  // Where indentation is to follow the text, the editor has seen to it.
  if (settings.get<boolean>('detectIndentation') !== false) return;
  const tabSize = settings.get<number>('tabSize');
  const insertSpaces = settings.get<boolean>('insertSpaces');
  editor.options = {
    ...(tabSize === undefined ? {} : { tabSize }),
    ...(insertSpaces === undefined ? {} : { insertSpaces }),
  };
}
