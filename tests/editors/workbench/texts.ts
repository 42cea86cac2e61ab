// Steps over whole texts: new files, line ends, a comment for other tools, addresses.
import { deepStrictEqual, ok, strictEqual } from 'node:assert';
import * as vscode from 'vscode';
import type { Hands } from './across';
import { coded, until } from './looking';

/** By a name that is given, as somebody types it; never over a file that is there. */
export async function writesNewFiles({ showBuild, fileUri }: Hands): Promise<void> {
  for (const [command, given, path, begins] of [
    ['fettle.newBuild', { name: 'Quay lamp' }, 'Quay-lamp.pcbuild.yaml', 'build: "Quay lamp"'],
    ['fettle.newPart', { kind: 'cooler', name: 'boreas/low-9' }, 'parts/boreas/low-9.part.yaml', 'kind: cooler'],
  ] as const) {
    await showBuild();
    await vscode.commands.executeCommand(command, given);
    const editor = await until(`the editor of ${path}`, () => {
      const { activeTextEditor: at } = vscode.window;
      return at?.document.uri.path.endsWith(path) ? at : undefined;
    });
    ok(editor.document.getText().includes(begins), `${path} says: ${editor.document.getText()}`);
    await editor.document.save();
    const { size } = await vscode.workspace.fs.stat(fileUri(path));
    ok(size > 0, `${path} is empty`);
    await vscode.workspace.fs.delete(fileUri(path));
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  }
}

/** The mistake under a comment for other tools, with another line end: found and mended at the same words. */
export async function readsAnyText({ scenario, fileUri }: Hands, mended: string): Promise<void> {
  const mistaken = mended.replace(scenario.at, scenario.at.replace(scenario.value, scenario.typed));
  const text = `# yaml-language-server: $schema=./build.schema.json\n${mistaken}`.replaceAll('\n', '\r\n');
  const uri = fileUri('crlf.pcbuild.yaml');
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  const { document } = await vscode.window.showTextDocument(uri);
  strictEqual(document.eol, vscode.EndOfLine.CRLF);
  const { range } = await until('the finding', () => coded(uri, scenario.finding)[0]);
  strictEqual(document.lineAt(range.start.line).text.slice(0, 2), '  ', 'the finding lies within the text');
  ok(
    !range.isEmpty && range.isSingleLine && document.validateRange(range).isEqual(range),
    'the range is not in a line',
  );
  deepStrictEqual(coded(uri, 'unknown-key'), []);
  await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  await vscode.workspace.fs.delete(uri);
}

/** Addresses of sources are links; names of parts lead on as definitions do. */
export async function leadsAddressesOn({ scenario, fileUri, showBuild }: Hands): Promise<void> {
  const uri = fileUri('parts/tether/lead.part.yaml');
  const address = 'https://example.org/lead?page=2';
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(`kind: cable\nsource: { title: ${address} }\n`));
  await vscode.window.showTextDocument(uri);
  const linksOf = (of: vscode.Uri): Thenable<vscode.DocumentLink[]> =>
    vscode.commands.executeCommand('vscode.executeLinkProvider', of);
  const [link] = await until('the link', async () => {
    const links = await linksOf(uri);
    return links.length > 0 ? links : undefined;
  });
  strictEqual(link!.target?.toString(true), address);
  await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  await vscode.workspace.fs.delete(uri);
  const { document } = await showBuild();
  const named = (await linksOf(document.uri)).filter(({ target }) => target?.path.endsWith(scenario.part));
  deepStrictEqual(named, [], 'names of parts are underlined');
}
