// A step in a folder that holds Markdown and nothing else of ours.
import { deepStrictEqual, ok } from 'node:assert';
import * as vscode from 'vscode';
import type { Hands } from './across';
import { coded, until } from './looking';
import { serverProcesses } from './processes';

/** Of no build, though it speaks of one; then with a block of its own. */
const other = '# Notes\n\nSee desk.pcbuild.yaml.\n';
const fenced = '\n```pcbuild\nformat: 1\nbuild: Desk\nparts:\n  colour: sand\n```\n';
const QUIET_MS = 700;

/** Any Markdown wakes the extension, and only what ties one to a build its server, as soon as it is written. */
export async function startsForGuides({ fileUri }: Hands): Promise<void> {
  const uri = fileUri('notes.md');
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(other));
  const editor = await vscode.window.showTextDocument(uri);
  const extension = await until('the extension', () => vscode.extensions.getExtension('fettle.fettle'));
  await until('the extension is active', () => extension.isActive);
  await new Promise((resolve) => setTimeout(resolve, QUIET_MS));
  deepStrictEqual(serverProcesses(), [], 'a server runs for nothing');
  const end = editor.document.lineAt(editor.document.lineCount - 1).range.end;
  ok(await editor.edit((edit) => edit.insert(end, fenced)), 'the edit was refused');
  const finding = await until('the finding in the block', () => coded(uri, 'unknown-key')[0]);
  deepStrictEqual(finding.range.start, editor.document.positionAt((other + fenced).indexOf('colour')));
}
