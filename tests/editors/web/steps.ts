// Runs inside the browser's extension host: the extension's entry for browsers, on a folder that lies on no disk.
import * as vscode from 'vscode';
import type { Scenario } from '../support/scenario';
import { coded, until } from '../workbench/looking';

declare const __SCENARIO__: Scenario;
declare const __REPORT__: string;
declare function fetch(address: string, how: object): Promise<unknown>;

const STEP_LIMIT_MS = 10_000;
const scenario = __SCENARIO__;
const build = vscode.Uri.parse(`bench:/ws/${scenario.build}`);
const other = vscode.Uri.parse('bench:/ws/notes.md');
const QUIET_MS = 700;

/** How many workers the extensions of this window have started: the server is one. */
let workers = 0;
const scope = globalThis as unknown as { Worker: new (...given: never[]) => object };
scope.Worker = class extends scope.Worker {
  constructor(...given: never[]) {
    super(...given);
    workers++;
  }
};

function ok(holds: unknown, what: string): void {
  if (!holds) throw new Error(what);
}

const steps: Record<string, () => Promise<void>> = {
  'runs in the browser’s own host, and nowhere else': async () => {
    ok(vscode.env.uiKind === vscode.UIKind.Web && vscode.env.remoteName === undefined, 'there is a remote machine');
    const extension = await until('the extension', () => vscode.extensions.getExtension('fettle.fettle'));
    // Told by the editor, which wakes the extension for any Markdown.
    await vscode.workspace.fs.writeFile(other, new TextEncoder().encode('# Notes\n\nSee desk.pcbuild.yaml.\n'));
    await vscode.window.showTextDocument(other);
    await until('the extension is active', () => extension.isActive);
  },
  'starts its server for a command, not for Markdown that is tied to no build': async () => {
    await new Promise((resolve) => setTimeout(resolve, QUIET_MS));
    ok(workers === 0, 'a server runs for nothing');
    await vscode.commands.executeCommand('fettle.restart');
    ok(workers === 1, `${workers} servers run`);
  },
  'checks a guide': async () => {
    const guide = vscode.Uri.parse('bench:/ws/tide-logger.md');
    const editor = await vscode.window.showTextDocument(guide);
    ok(
      await editor.edit((edit) =>
        edit.insert(new vscode.Position(5, 0), '<!-- fettle: power.wal -->1 W<!-- /fettle -->\n'),
      ),
      'the edit was refused',
    );
    await until('the finding in the guide', () => vscode.languages.getDiagnostics(guide).length > 0);
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  },
  'finds the mistake, with the facts of part files that lie on no disk': async () => {
    const { document } = await vscode.window.showTextDocument(build);
    const at = document.getText().indexOf(scenario.at) + scenario.at.indexOf(scenario.value);
    const range = new vscode.Range(document.positionAt(at), document.positionAt(at + scenario.value.length));
    const editor = await vscode.window.showTextDocument(document);
    ok(coded(build, scenario.finding).length === 0, 'the finding is there before the mistake');
    ok(await editor.edit((edit) => edit.replace(range, scenario.typed)), 'the edit was refused');
    await until(`the finding ${scenario.finding}`, () => coded(build, scenario.finding).length > 0);
    ok(coded(build, 'part-not-found').length === 0, 'a part was not found');
  },
  'explains the key on hover': async () => {
    const document = await vscode.workspace.openTextDocument(build);
    const before = scenario.at.slice(0, scenario.at.indexOf(scenario.value));
    const position = document.positionAt(document.getText().indexOf(before) + before.indexOf(scenario.key) + 1);
    await until('the hover says what it has to', async () => {
      const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
        'vscode.executeHoverProvider',
        build,
        position,
      );
      const said = hovers.flatMap(({ contents }) => contents.map((one) => (one as vscode.MarkdownString).value));
      return scenario.hoverSays.every((text) => said.join('\n').includes(text));
    });
  },
  'leads from the finding’s name to the page on its check, in the editor': async () => {
    const { target } = coded(build, scenario.finding)[0]!.code as { target?: vscode.Uri };
    if (target?.scheme !== 'fettle-check') throw new Error(`the name leads to ${target?.toString() ?? 'nothing'}`);
    // It opens as a preview, which the workbench under test brings no browser part of: only its tab comes.
    void vscode.commands.executeCommand('vscode.open', target);
    const tabs = (): vscode.Tab[] => vscode.window.tabGroups.all.flatMap((group) => group.tabs);
    await until('a tab of the page', () =>
      tabs().find(({ input }) => (input as { uri?: vscode.Uri } | undefined)?.uri?.toString() === target.toString()),
    );
    await vscode.commands.executeCommand('vscode.openWith', target, 'default');
    const page = await until('the page is shown', () =>
      vscode.window.visibleTextEditors.find(({ document }) => document.uri.toString() === target.toString()),
    );
    for (const text of scenario.pageSays)
      ok(page.document.getText().includes(text), `"${text}" is not on the page: ${page.document.getText()}`);
  },
};

/** Called by the extension host; what came of the steps goes to whoever waits for it. */
export async function run(): Promise<void> {
  const results: Record<string, string> = {};
  for (const [name, step] of Object.entries(steps))
    try {
      const late = new Promise<never>((_, reject) =>
        setTimeout(() => reject(new Error(`passed ${STEP_LIMIT_MS} ms`)), STEP_LIMIT_MS),
      );
      await Promise.race([step(), late]);
      results[name] = '';
    } catch (error) {
      results[name] = (error as Error).stack ?? String(error);
    }
  await fetch(__REPORT__, { method: 'POST', mode: 'no-cors', body: JSON.stringify(results) });
}
