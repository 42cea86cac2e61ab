// The step over a finished machine’s record: what it says is found in its build, and it is a file like any other.
import { deepStrictEqual, ok, strictEqual } from 'node:assert';
import * as vscode from 'vscode';
import type { Hands } from './across';
import { coded, until } from './looking';

const SAID = `format: 1
build: tide-logger.pcbuild.yaml
from: [lsblk, lspci, smartctl]
drives:
  - { name: scratch, bus: NVMe, link: PCIe 4 x1, able: PCIe 4 x4, hours: 4310 h, healht: passed }
`;

/** Comes, leads both ways, and goes with what the record says. */
export async function heldAgainstRecord({ scenario, fileUri, showBuild }: Hands): Promise<void> {
  const uri = fileUri(scenario.build.replace('.pcbuild.', '.asbuilt.'));
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(SAID));
  const { document } = await showBuild();
  const [slow] = await until('the slow link', () => found(coded(document.uri, 'built-link-slower')));
  const [used] = await until('the used drive', () => found(coded(document.uri, 'built-drive-used')));
  const line = document.getText().split('\n').indexOf(scenario.rename.line);
  for (const one of [slow!, used!]) {
    strictEqual(one.range.start.line, line, `the line of ${one.message}`);
    const [led] = (one.relatedInformation ?? []).filter(({ location }) => location.uri.path === uri.path);
    strictEqual(led?.location.range.start.line, 4, `${one.message} leads to its line of the record`);
  }
  // Beside the build: an editor asks anew for what is seen.
  const editor = await vscode.window.showTextDocument(uri, { viewColumn: vscode.ViewColumn.Beside });
  const record = editor.document;
  await until('the slip in the record', () => found(coded(uri, 'unknown-key')));
  const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
    'vscode.executeHoverProvider',
    uri,
    record.positionAt(SAID.indexOf('hours') + 1),
  );
  const text = hovers
    .flatMap(({ contents }) => contents)
    .map((one) => (typeof one === 'string' ? one : one.value))
    .join('\n');
  ok(text.includes('How long it has run'), `the hover in the record says: ${text || 'nothing'}`);
  const led = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>(
    'vscode.executeDefinitionProvider',
    uri,
    record.positionAt(SAID.indexOf('tide-logger') + 1),
  );
  deepStrictEqual(
    led.map((one) => ('uri' in one ? one.uri : one.targetUri).path),
    [document.uri.path],
    'the record leads to its build',
  );
  const whole = record.validateRange(new vscode.Range(0, 0, record.lineCount, 0));
  ok(await editor.edit((edit) => edit.replace(whole, 'format: 1\n')), 'the edit was refused');
  const isFound = (id: string): boolean => coded(document.uri, id).length > 0;
  await until('the findings go', () => !isFound('built-link-slower') && !isFound('built-drive-used'));
  await record.save();
  await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
  await vscode.workspace.fs.delete(uri);
}

const found = <T>(all: readonly T[]): readonly T[] | undefined => (all.length > 0 ? all : undefined);
