// Steps over several files, and over numbers: names renamed with every use, hints, lenses, call-outs.
import { deepStrictEqual, ok, strictEqual } from 'node:assert';
import * as vscode from 'vscode';
import type { Scenario } from '../support/scenario';
import { until } from './looking';

/** What the steps need of the others. */
export interface Hands {
  readonly scenario: Scenario;
  readonly fileUri: (path: string) => vscode.Uri;
  readonly showBuild: () => Promise<vscode.TextEditor>;
  /** Whether the steps run where the extension does. */
  readonly isSameHost: boolean;
}

const placeOf = (document: vscode.TextDocument, text: string): vscode.Position =>
  document.positionAt(document.getText().indexOf(text) + 1);

/** A name of the build, there and back by one undo; then a part file with its use, there and back by its name. */
export async function renames({ scenario, fileUri, showBuild }: Hands): Promise<void> {
  const { document } = await showBuild();
  const before = document.getText();
  const { name, to } = scenario.rename;
  await applyRename(document, placeOf(document, name), to);
  strictEqual(document.getText(), before.replaceAll(name, to), 'the renamed text');
  await vscode.commands.executeCommand('undo');
  strictEqual(document.getText(), before, 'one undo does not take the name back');

  const part = scenario.part.replace(/^parts\/|\.part\.yaml$/g, '');
  await applyRename(document, placeOf(document, part), 'norrvik/moved');
  ok(document.getText().includes('use: norrvik/moved'), `the use is not renamed: ${document.getText()}`);
  await vscode.workspace.fs.stat(fileUri('parts/norrvik/moved.part.yaml'));
  await applyRename(document, placeOf(document, 'norrvik/moved'), part);
  await vscode.workspace.fs.stat(fileUri(scenario.part));
  strictEqual(document.getText(), before, 'the text once the part has its name again');
}

async function applyRename(document: vscode.TextDocument, at: vscode.Position, to: string): Promise<void> {
  const edit = await vscode.commands.executeCommand<vscode.WorkspaceEdit>(
    'vscode.executeDocumentRenameProvider',
    document.uri,
    at,
    to,
  );
  ok(await vscode.workspace.applyEdit(edit), `the rename to ${to} was refused`);
}

/** A part file that the editor moves takes its use along. */
export async function followsMoves({ scenario, fileUri, showBuild }: Hands): Promise<void> {
  const { document } = await showBuild();
  const before = document.getText();
  const move = async (from: string, to: string): Promise<void> => {
    const edit = new vscode.WorkspaceEdit();
    edit.renameFile(fileUri(from), fileUri(to));
    ok(await vscode.workspace.applyEdit(edit), 'the move was refused');
  };
  await move(scenario.part, 'parts/norrvik/elsewhere.part.yaml');
  await until('the use follows', () => document.getText().includes('use: norrvik/elsewhere'));
  await move('parts/norrvik/elsewhere.part.yaml', scenario.part);
  await until('the use follows back', () => document.getText() === before);
}

export async function showsNumbers({ scenario, fileUri, showBuild, isSameHost }: Hands): Promise<void> {
  const { document } = await showBuild();
  const whole = new vscode.Range(0, 0, document.lineCount, 0);
  const hints = await vscode.commands.executeCommand<vscode.InlayHint[]>(
    'vscode.executeInlayHintProvider',
    document.uri,
    whole,
  );
  deepStrictEqual(
    hints.map(({ label }) => (typeof label === 'string' ? label : label.map(({ value }) => value).join(''))),
    [scenario.hint],
  );
  const above = (uri: vscode.Uri): Promise<string> =>
    until(`a lens above ${uri.path}`, async () => {
      const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>('vscode.executeCodeLensProvider', uri, 5);
      return lenses[0]?.command?.title;
    });
  ok(/worst|nothing/.test(await above(document.uri)), 'the lens above the build');
  // A command with arguments, made in one extension host, cannot be read in another.
  if (isSameHost) strictEqual(await above(fileUri(scenario.part)), 'used by 1 build');
}

/** From the part file to the build that uses it, and to the guide whose fenced build does. */
export async function leadsToUsers({ scenario, fileUri, showBuild }: Hands): Promise<void> {
  const { document } = await showBuild();
  const part = await vscode.workspace.openTextDocument(fileUri(scenario.part));
  const [item] = await vscode.commands.executeCommand<vscode.CallHierarchyItem[]>(
    'vscode.prepareCallHierarchy',
    part.uri,
    new vscode.Position(0, 0),
  );
  const calls = await vscode.commands.executeCommand<vscode.CallHierarchyIncomingCall[]>(
    'vscode.provideIncomingCalls',
    item,
  );
  deepStrictEqual(calls.map(({ from }) => from.uri.toString()).sort(), [
    fileUri('tide-logger.md').toString(),
    document.uri.toString(),
  ]);
}
