// Steps with a data sheet: pasted into a part file and read there, and made a part file by the command.
import { deepStrictEqual, ok, strictEqual } from 'node:assert';
import * as vscode from 'vscode';
import type { Hands } from './across';
import { codeOf, coded, until } from './looking';

const sheet = [
  'Height\t162 mm',
  'Sockets\tAM5, LGA1851',
  'Max. TDP\t220 W',
  'Fan speed\t500 - 1,800 RPM',
  'Warranty\t6 years',
  '',
].join('\n');
const begun = 'kind: cooler\nmaker: Boreas\nmodel: Tower 162\n';
const build =
  'format: 1\nbuild: Gauge box\nparts:\n' + '  cooler: { use: boreas/tower-162 }\n  case: { cooler-height: 155 mm }\n';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** From the paste to the finding of the build that uses the part: one finding, one fix, saved. */
export async function readsPastedSheet({ fileUri }: Hands): Promise<void> {
  const [part, user] = [fileUri('parts/boreas/tower-162.part.yaml'), fileUri('gauge-box.pcbuild.yaml')];
  await vscode.workspace.fs.writeFile(part, bytes(begun));
  await vscode.workspace.fs.writeFile(user, bytes(build));
  try {
    await vscode.window.showTextDocument(user);
    const editor = await vscode.window.showTextDocument(part, { viewColumn: vscode.ViewColumn.Beside });
    const { document } = editor;
    const end = document.lineAt(document.lineCount - 1).range.end;
    editor.selection = new vscode.Selection(end, end);
    await vscode.commands.executeCommand('paste', { text: sheet });
    strictEqual(document.getText(), begun + sheet, 'the pasted text');
    await until('the finding of the pasted lines', () => coded(part, 'sheet-lines-not-facts')[0]);
    deepStrictEqual(vscode.languages.getDiagnostics(part).map(codeOf), ['sheet-lines-not-facts']);
    deepStrictEqual(coded(user, 'cooler-too-tall'), [], 'the build knows no height yet');
    await reads(document);
    await document.save();
    const found = await until('the finding of the build', () => coded(user, 'cooler-too-tall')[0]);
    ok(found.message.includes('162 mm') && found.message.includes('155 mm'), found.message);
    strictEqual(found.range.start.line, build.split('\n').indexOf('  cooler: { use: boreas/tower-162 }'));
    await until('the finding of the lines goes', () => coded(part, 'sheet-lines-not-facts').length === 0);
    const saved = new TextDecoder().decode(await vscode.workspace.fs.readFile(part));
    ok(saved.startsWith(begun) && /^height: 162 mm +# .*Height/m.test(saved), `saved: ${saved}`);
  } finally {
    await closeAll();
    await vscode.workspace.fs.delete(user);
    await vscode.workspace.fs.delete(part);
  }
}

async function reads(document: vscode.TextDocument): Promise<void> {
  const [{ range }] = coded(document.uri, 'sheet-lines-not-facts') as [vscode.Diagnostic];
  const fix = await until('the fix of the pasted lines', async () => {
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      document.uri,
      range,
      vscode.CodeActionKind.QuickFix.value,
      20,
    );
    return actions.find(({ title }) => title === 'Read these lines as facts');
  });
  ok(fix.edit && (await vscode.workspace.applyEdit(fix.edit)), 'the edit was refused');
}

/** The sheet and what was read of it stand beside each other; the part file lies under its name. */
export async function writesPartFromSheet({ fileUri, showBuild }: Hands): Promise<void> {
  const part = fileUri('parts/boreas/tower-99.part.yaml');
  await showBuild();
  await vscode.commands.executeCommand('fettle.newPartFromSheet', {
    text: sheet,
    kind: 'cooler',
    name: 'boreas/tower-99',
  });
  try {
    const { document } = await until('the editor of the part file', () => {
      const { activeTextEditor: at } = vscode.window;
      return at?.document.uri.toString() === part.toString() ? at : undefined;
    });
    ok(/^kind: cooler$[^]*^height: 162 mm +# line 1: Height/m.test(document.getText()), document.getText());
    const shown = vscode.window.visibleTextEditors.map((editor) => editor.document.getText());
    ok(shown.includes(sheet), 'the sheet is shown beside it');
  } finally {
    await closeAll();
    await vscode.workspace.fs.delete(part);
  }
}

/** Without being asked about texts that were never saved. */
async function closeAll(): Promise<void> {
  for (let left = 12; left > 0 && vscode.window.activeTextEditor; left--)
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
}
