// The walkthrough's first steps: takes a copy of the samples to a folder, and notices what completes a step. A copy,
// because a step mends what is wrong in them, and what an extension brings along is nobody's to change.
import {
  commands,
  DiagnosticSeverity,
  FileType,
  l10n,
  languages,
  Uri,
  window,
  workspace,
  type Disposable,
  type ExtensionContext,
} from 'vscode';
import { languageIds } from './languages';
import { reported } from './reported';
import { gradeOf } from './views/status';

/** The build with which a newcomer begins: it has a finding of each grade, and fixes. */
const firstBuild = 'survey-desk.pcbuild.yaml';

export function offerFirstSteps({ extensionUri }: Pick<ExtensionContext, 'extensionUri'>): Disposable[] {
  const samples = Uri.joinPath(extensionUri, 'samples');
  const worst = new Map<string, number>();
  return [
    commands.registerCommand('fettle.copySamples', (into?: unknown) =>
      reported(() => copySamples(samples, into instanceof Uri ? into : undefined)),
    ),
    languages.onDidChangeDiagnostics(({ uris }) => notice(uris, worst)),
  ];
}

async function copySamples(samples: Uri, given: Uri | undefined): Promise<void> {
  const above = given ?? (await chosenFolder());
  if (!above) return;
  const folder = await freeName(above, 'fettle-samples');
  await copyBelow(samples, folder);
  await window.showTextDocument(Uri.joinPath(folder, firstBuild));
  await commands.executeCommand('setContext', 'fettle.samplesCopied', true);
  // Where files live elsewhere than on this machine, only a folder that is open can be read.
  if (given || workspace.getWorkspaceFolder(folder)) return;
  const open = l10n.t('Open the Folder');
  const said = await window.showInformationMessage(l10n.t('The samples are in {0}.', folder.fsPath), open);
  if (said === open) await commands.executeCommand('vscode.openFolder', folder);
}

async function chosenFolder(): Promise<Uri | undefined> {
  const chosen = await window.showOpenDialog({
    canSelectFolders: true,
    canSelectFiles: false,
    title: l10n.t('Where shall the samples go?'),
    openLabel: l10n.t('Copy the Samples Here'),
  });
  return chosen?.[0];
}

/** A name that nothing has yet: nothing is ever written over. */
async function freeName(above: Uri, name: string): Promise<Uri> {
  const taken = new Set((await workspace.fs.readDirectory(above)).map(([entry]) => entry));
  for (let n = 1; ; n++) {
    const tried = n === 1 ? name : `${name}-${n}`;
    if (!taken.has(tried)) return Uri.joinPath(above, tried);
  }
}

/** File by file, since the two may lie in different file systems. */
async function copyBelow(from: Uri, to: Uri): Promise<void> {
  await workspace.fs.createDirectory(to);
  for (const [name, type] of await workspace.fs.readDirectory(from)) {
    const [source, target] = [Uri.joinPath(from, name), Uri.joinPath(to, name)];
    if (type === FileType.Directory) await copyBelow(source, target);
    else await workspace.fs.writeFile(target, await workspace.fs.readFile(source));
  }
}

/** A build that shows errors completes the second step; one that shows fewer than before, the third. */
function notice(uris: readonly Uri[], worst: Map<string, number>): void {
  for (const uri of uris) {
    const isOpen = workspace.textDocuments.some(
      (one) => one.uri.toString() === uri.toString() && languageIds.includes(one.languageId),
    );
    if (!isOpen) {
      worst.delete(uri.toString());
      continue;
    }
    const count = languages
      .getDiagnostics(uri)
      .filter(({ source, severity }) => severity === DiagnosticSeverity.Error && gradeOf(source) !== undefined).length;
    const before = worst.get(uri.toString()) ?? 0;
    worst.set(uri.toString(), count);
    if (count > 0) void commands.executeCommand('setContext', 'fettle.findingShown', true);
    if (count < before) void commands.executeCommand('setContext', 'fettle.findingMended', true);
  }
}
