// A build typed key by key into a file that is not saved yet: calm on the way, and in the end what an opened file says.
import { deepStrictEqual, ok, strictEqual } from 'node:assert';
import * as vscode from 'vscode';
import { codeOf, until } from './looking';

const keyMs = 110;
/** Enter brings the indentation along, so none is typed. */
const lines = ['format: 1', 'build: Typed', 'place:', 'ambient: 24 °C', 'flor: vinyl'];
const typed = 'format: 1\nbuild: Typed\nplace:\n  ambient: 24 °C\n  flor: vinyl';

const codesOf = ({ uri }: vscode.TextDocument): string[] =>
  vscode.languages.getDiagnostics(uri).map((one) => `${String(codeOf(one))} ${one.range.start.line}`);

/** The last line has a misspelled key: nothing is said of it while it is typed. */
export async function typesBuild(): Promise<Record<string, number>> {
  // A busy machine may pause where no typist does.
  const settings = vscode.workspace.getConfiguration('fettle');
  await settings.update('pause', 30_000, vscode.ConfigurationTarget.Global);
  try {
    return await typesCalmly();
  } finally {
    await settings.update('pause', undefined, vscode.ConfigurationTarget.Global);
  }
}

async function typesCalmly(): Promise<Record<string, number>> {
  const document = await vscode.workspace.openTextDocument({ language: 'fettle-build', content: '' });
  const editor = await vscode.window.showTextDocument(document);
  const keys = [...lines.join('\n')];
  for (const text of keys) {
    await vscode.commands.executeCommand('type', { text });
    await new Promise((resolve) => setTimeout(resolve, keyMs));
    const { line } = editor.selection.active;
    const shown = vscode.languages
      .getDiagnostics(document.uri)
      .filter(({ severity, range }) => severity === vscode.DiagnosticSeverity.Error && range.end.line >= line);
    deepStrictEqual(
      shown.map(({ message }) => message),
      [],
      `after ${JSON.stringify(document.getText())}`,
    );
  }
  strictEqual(document.getText(), typed, 'the text, indented by Enter');
  editor.selection = new vscode.Selection(0, 0, 0, 0);
  await until('the misspelled key is shown once the cursor has left it', () =>
    codesOf(document).includes('unknown-key 4'),
  );
  const opened = await vscode.workspace.openTextDocument({ language: 'fettle-build', content: typed });
  await vscode.window.showTextDocument(opened);
  await until('the same is said of the text opened', () => codesOf(opened).join() === codesOf(document).join());
  ok(codesOf(document).length > 0);
  return { keysTyped: keys.length };
}
