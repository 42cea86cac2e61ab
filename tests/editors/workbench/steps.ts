// Runs inside the extension host: the installed extension seen through the editor's own interface.
import { deepStrictEqual, ok, strictEqual } from 'node:assert';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as vscode from 'vscode';
import { followsMoves, leadsToUsers, renames, showsNumbers, type Hands } from './across';
import { startsForGuides } from './guides';
import type { HostResults, Job } from './host';
import { codeOf, coded, until, WAIT_LIMIT_MS } from './looking';
import { serverProcesses } from './processes';
import { heldAgainstRecord } from './record';
import { readsPastedSheet, writesPartFromSheet } from './sheet';
import { leadsAddressesOn, readsAnyText, writesNewFiles } from './texts';
import { typesBuild } from './typing';

const job = JSON.parse(readFileSync(join(__dirname, 'job.json'), 'utf8')) as Job;
const { scenario } = job;

const hands: Hands = {
  scenario,
  fileUri: (path) => fileUri(path),
  showBuild: () => showBuild(),
  isSameHost: job.mode.host === 'process',
};

type Measured = Record<string, number> | void;

const steps: Record<string, () => Promise<Measured>> = {
  'starts with a build and knows its kinds of file': startsWithBuild,
  'says nothing of the mistake before it is made': saysNothing,
  'offers what may stand at a place': offersWhatMayStand,
  'mends on request all that has one reading': mendsAll,
  'puts the key of a missing fact into the part’s own file': fillsIn,
  'renames a name and a part file with every use': () => renames(hands),
  'follows a part file that is moved': () => followsMoves(hands),
  'shows numbers behind values and above files': () => showsNumbers(hands),
  'leads from a part to the builds that use it': () => leadsToUsers(hands),
  'writes new builds and part files where they belong': () => writesNewFiles(hands),
  'reads a pasted data sheet, and shows what the build makes of it': () => readsPastedSheet(hands),
  'writes a part file from a data sheet': () => writesPartFromSheet(hands),
  'shows what a finished machine said at the lines of its build': () => heldAgainstRecord(hands),
  'takes CRLF and a comment for other tools as any other text': () => readsAnyText(hands, job.mended),
  'leads addresses on, and underlines no name of a part': () => leadsAddressesOn(hands),
  'is calm while a build is typed key by key': () => typesBuild(job.typed),
  'finds the mistake as it is typed': findsMistake,
  'explains the key on hover': explainsOnHover,
  'mends it with one quick fix, undone in one step': mendsIt,
  'registers its commands': registersCommands,
  'explains a check on a page of its own': explainsCheck,
  'shows the whole working of a finding': showsWorking,
  'checks files on request that nobody has open': checksWorkspace,
  'finds the mistake again after a restart': findsAfterRestart,
  'starts its server for Markdown that is tied to a build, and for no other': () => startsForGuides(hands),
};

async function startsWithBuild(): Promise<void> {
  strictEqual(vscode.workspace.isTrusted, job.mode.trusted, 'trust of the workspace');
  const editor = await showBuild();
  strictEqual(editor.document.languageId, 'fettle-build');
  strictEqual((await vscode.workspace.openTextDocument(fileUri(scenario.part))).languageId, 'fettle-part');
  strictEqual((await vscode.workspace.openTextDocument(fileUri(scenario.settings))).languageId, 'fettle-settings');
  await starts();
}

/** These steps run in the server's process, which shows an extension only when it runs there too. */
async function starts(): Promise<void> {
  const extension = vscode.extensions.getExtension('fettle.fettle');
  if (job.mode.host === 'worker') {
    strictEqual(extension, undefined, 'the extension runs in the process, not in the worker');
    await until('the commands are there', async () =>
      (await vscode.commands.getCommands(true)).includes(scenario.commands[0]!),
    );
    return;
  }
  ok(extension, 'the extension fettle.fettle is not there');
  await until('the extension is active', () => extension.isActive);
}

async function saysNothing(): Promise<void> {
  const { document } = await showBuild();
  strictEqual(lineOfScenario(document).text, scenario.at);
  await vscode.commands.executeCommand('vscode.executeHoverProvider', document.uri, keyPosition(document)); // the server has answered
  deepStrictEqual(
    findings(document).map((finding) => finding.message),
    [],
  );
}

/** Names of parts come from the parts folder: the first answer may be given before that is read. */
async function offersWhatMayStand(): Promise<void> {
  const { document } = await showBuild();
  for (const { line, at, labels } of scenario.offers) {
    const position = new vscode.Position(lineNumber(document, line), line.indexOf(at));
    await until(`${labels.join(', ')} at "${line}"`, async () => {
      const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
        'vscode.executeCompletionItemProvider',
        document.uri,
        position,
      );
      const offered = items.map(({ label }) => (typeof label === 'string' ? label : label.label));
      return labels.every((label) => offered.includes(label));
    });
  }
}

async function mendsAll(): Promise<void> {
  const editor = await showBuild();
  const { document } = editor;
  const { line, becomes, finding } = scenario.slip;
  const good = document.getText();
  const spoilt = document.lineAt(lineNumber(document, line)).range;
  ok(await editor.edit((edit) => edit.replace(spoilt, becomes)), 'the edit was refused');
  await until('the slip is found', () => coded(document.uri, finding).length > 0);
  await vscode.commands.executeCommand('editor.action.fixAll');
  await until('the slip is mended', () => coded(document.uri, finding).length === 0);
  strictEqual(document.getText(), good, 'the mended text');
}

async function fillsIn(): Promise<void> {
  const { document } = await showBuild();
  const { line, at, title, puts } = scenario.filledIn;
  const position = new vscode.Position(lineNumber(document, line), line.indexOf(at) + 1);
  const action = await until(`the action ${title}`, async () => {
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      document.uri,
      new vscode.Range(position, position),
      vscode.CodeActionKind.QuickFix.value,
      50,
    );
    return actions.find((one) => one.title === title);
  });
  const part = await vscode.workspace.openTextDocument(fileUri(scenario.part));
  const before = part.getText();
  ok(action.edit && (await vscode.workspace.applyEdit(action.edit)), 'the edit was refused');
  ok(!before.includes(puts) && part.getText().includes(puts), `"${puts}" is not in the part file: ${part.getText()}`);
  await vscode.window.showTextDocument(part);
  await vscode.commands.executeCommand('undo');
  strictEqual(part.getText(), before, 'one undo does not take the key out again');
}

async function findsMistake(): Promise<Measured> {
  const editor = await showBuild();
  const start = valuePosition(editor.document);
  editor.selection = new vscode.Selection(start, start.translate(0, scenario.value.length));
  const all = [...scenario.typed];
  for (const text of all.slice(0, -1)) await vscode.commands.executeCommand('type', { text });
  const begun = performance.now();
  await vscode.commands.executeCommand('type', { text: all.at(-1) });
  await findingComes(editor.document);
  const keystrokeToFindingMs = Math.round(performance.now() - begun);
  const finding = findings(editor.document)[0]!;
  strictEqual(finding.source, 'fettle · shortfall');
  ok(editor.document.validateRange(finding.range).isEqual(finding.range), 'the range lies outside the document');
  ok(!finding.range.isEmpty, 'the range is empty');
  return { keystrokeToFindingMs };
}

async function explainsOnHover(): Promise<Measured> {
  const { document } = await showBuild();
  await findingComes(document);
  const begun = performance.now();
  const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
    'vscode.executeHoverProvider',
    document.uri,
    keyPosition(document),
  );
  const hoverMs = Math.round(performance.now() - begun);
  const text = hovers
    .flatMap((hover) => hover.contents)
    .map((content) => (typeof content === 'string' ? content : content.value))
    .join('\n');
  for (const expected of scenario.hoverSays)
    ok(text.includes(expected), `"${expected}" is not in the hover: ${text || 'nothing'}`);
  for (const content of hovers.flatMap((hover) => hover.contents)) {
    if (content instanceof vscode.MarkdownString)
      ok(!content.isTrusted && !content.supportHtml, 'the hover is trusted or holds HTML');
  }
  return { hoverMs };
}

async function mendsIt(): Promise<void> {
  const editor = await showBuild();
  const { document } = editor;
  await findingComes(document);
  const broken = document.getText();
  const fix = await until('a quick fix is offered', () => quickFix(document));
  ok(fix.title.length > 0, 'the quick fix has no title');
  if (fix.edit) ok(await vscode.workspace.applyEdit(fix.edit), 'the edit was refused');
  if (fix.command) await vscode.commands.executeCommand(fix.command.command, ...(fix.command.arguments ?? []));
  await until('the finding goes', () => findings(document).length === 0);
  strictEqual(document.getText(), job.mended, 'the mended text');
  await vscode.commands.executeCommand('undo');
  strictEqual(document.getText(), broken, 'one undo does not take the fix back');
  await findingComes(document);
}

async function registersCommands(): Promise<void> {
  const known = await vscode.commands.getCommands(true);
  deepStrictEqual(
    scenario.commands.filter((command) => !known.includes(command)),
    [],
    'commands not registered',
  );
}

/** By its name, and without one by the finding at the cursor. */
async function explainsCheck(): Promise<void> {
  const editor = await showBuild();
  await findingComes(editor.document);
  const page = vscode.Uri.from({ scheme: 'fettle-check', path: `/${scenario.finding}.md` });
  const text = (await vscode.workspace.openTextDocument(page)).getText();
  for (const expected of scenario.pageSays) ok(text.includes(expected), `"${expected}" is not on the page: ${text}`);
  const [found] = findings(editor.document);
  // Another extension host is told of the name without its link, which `tests/editors/web` sees from within.
  const { target } = found!.code as { target?: vscode.Uri };
  if (job.mode.host === 'process') strictEqual(target?.toString(), page.toString(), 'the name leads to the page');
  const { start } = found!.range;
  editor.selection = new vscode.Selection(start, start);
  for (const named of [[scenario.finding], []]) {
    await vscode.commands.executeCommand('fettle.explain', ...named);
    const tab = await until('the page is shown', previewTab);
    await vscode.window.tabGroups.close(tab);
    await showBuild();
  }
}

/** Of the finding at the cursor, on a page of its own. */
async function showsWorking(): Promise<void> {
  const editor = await showBuild();
  await findingComes(editor.document);
  const { start } = findings(editor.document)[0]!.range;
  editor.selection = new vscode.Selection(start, start);
  await vscode.commands.executeCommand('fettle.showWorking');
  const tab = await until('the working is shown', previewTab);
  await vscode.window.tabGroups.close(tab);
  await showBuild();
}

function previewTab(): vscode.Tab | undefined {
  const tabs = vscode.window.tabGroups.all.flatMap((group) => group.tabs);
  return tabs.find(({ input, label }) => input instanceof vscode.TabInputWebview && label.includes(scenario.finding));
}

async function checksWorkspace(): Promise<void> {
  const closed = fileUri('closed.pcbuild.yaml');
  await vscode.workspace.fs.writeFile(
    closed,
    new TextEncoder().encode(job.mended.replace(scenario.at, scenario.at.replace(scenario.value, scenario.typed))),
  );
  deepStrictEqual(coded(closed, scenario.finding), [], 'a file that nobody has open is silent until it is asked for');
  await vscode.commands.executeCommand('fettle.checkWorkspace');
  await until('the finding of the closed file', () => coded(closed, scenario.finding).length > 0);
  ok(
    vscode.workspace.textDocuments.every(({ uri }) => uri.toString() !== closed.toString()),
    'the file was opened for it',
  );
  await vscode.workspace.fs.delete(closed);
  await until('the finding goes with its file', () => coded(closed, scenario.finding).length === 0);
}

/** Findings on show may be the old server's: what counts is that they follow the text again. */
async function findsAfterRestart(): Promise<Measured> {
  const editor = await showBuild();
  await findingComes(editor.document);
  const before = serverProcesses();
  const begun = performance.now();
  await vscode.commands.executeCommand('fettle.restart');
  await replaceValue(editor, scenario.typed, scenario.value);
  await until('the finding goes', () => findings(editor.document).length === 0);
  await replaceValue(editor, scenario.value, scenario.typed);
  await findingComes(editor.document);
  const restartToFindingMs = Math.round(performance.now() - begun);
  if (job.mode.host === 'process') {
    strictEqual(before.length, 1, 'server processes before');
    await until('the old server is gone and a new one is there', () => {
      const now = serverProcesses();
      return now.length === 1 && now[0] !== before[0];
    });
  }
  return { restartToFindingMs };
}

async function replaceValue(editor: vscode.TextEditor, from: string, to: string): Promise<void> {
  const start = valuePosition(editor.document);
  ok(
    await editor.edit((edit) => edit.replace(new vscode.Range(start, start.translate(0, from.length)), to)),
    'the edit was refused',
  );
}

function fileUri(path: string): vscode.Uri {
  return vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, path);
}

async function showBuild(): Promise<vscode.TextEditor> {
  return vscode.window.showTextDocument(await vscode.workspace.openTextDocument(fileUri(scenario.build)));
}

function lineOfScenario(document: vscode.TextDocument): vscode.TextLine {
  const before = scenario.at.slice(0, scenario.at.indexOf(scenario.value));
  const lines = Array.from({ length: document.lineCount }, (_, line) => document.lineAt(line));
  const line = lines.find(({ text }) => text === scenario.at || text === before + scenario.typed);
  ok(line, `no line "${scenario.at}" in ${scenario.build}`);
  return line;
}

function lineNumber(document: vscode.TextDocument, text: string): number {
  const number = document.getText().split(/\r?\n/).indexOf(text);
  ok(number >= 0, `no line "${text}" in ${scenario.build}`);
  return number;
}

function keyPosition(document: vscode.TextDocument): vscode.Position {
  return new vscode.Position(lineOfScenario(document).lineNumber, scenario.at.indexOf(scenario.key) + 1);
}

function valuePosition(document: vscode.TextDocument): vscode.Position {
  return new vscode.Position(lineOfScenario(document).lineNumber, scenario.at.indexOf(scenario.value));
}

const findings = ({ uri }: vscode.TextDocument): vscode.Diagnostic[] => coded(uri, scenario.finding);

/** Waits on the editor's own event, so that the time measured is not that of a poll. */
async function findingComes(document: vscode.TextDocument): Promise<void> {
  if (findings(document).length > 0) return;
  await new Promise<void>((resolve, reject) => {
    const shown = () =>
      JSON.stringify(
        vscode.languages.getDiagnostics(document.uri).map((finding) => [codeOf(finding), finding.message]),
      );
    const limit = setTimeout(
      () => reject(new Error(`no finding ${scenario.finding}; there are: ${shown()}`)),
      WAIT_LIMIT_MS,
    );
    const watch = vscode.languages.onDidChangeDiagnostics(() => {
      if (findings(document).length === 0) return;
      clearTimeout(limit);
      watch.dispose();
      resolve();
    });
  });
}

/**
 * The preferred fix at the finding, else the first. The editor's interface does not say whose finding an action
 * mends.
 */
async function quickFix(document: vscode.TextDocument): Promise<vscode.CodeAction | undefined> {
  const finding = findings(document)[0];
  if (!finding) return undefined;
  const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
    'vscode.executeCodeActionProvider',
    document.uri,
    finding.range,
    vscode.CodeActionKind.QuickFix.value,
    20,
  );
  return actions.find(({ isPreferred }) => isPreferred) ?? actions[0];
}

async function runStep(name: string): Promise<HostResults[string]> {
  const begun = performance.now();
  const took = () => Math.round(performance.now() - begun);
  try {
    const step = steps[name];
    ok(step, `no step of this name: ${name}`);
    const late = new Promise<never>((_, reject) =>
      setTimeout(() => reject(new Error(`passed ${job.stepLimitMs} ms`)), job.stepLimitMs),
    );
    const measured = await Promise.race([step(), late]);
    return { tookMs: took(), ...(measured ? { measured } : {}) };
  } catch (error) {
    return { tookMs: took(), error: (error as Error).stack ?? String(error) };
  }
}

/** Called by the extension host. Results go into a file: what is wrong with one step must not hide the others. */
export async function run(): Promise<void> {
  const results: HostResults = {};
  for (const name of job.steps) results[name] = await runStep(name);
  writeFileSync(join(__dirname, 'results.json'), JSON.stringify(results));
}
