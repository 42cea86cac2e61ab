// New builds and part files: asks what they are called, writes what the server gives, never over a file, and puts the
// cursor where there is something to fill in.
import {
  commands,
  l10n,
  Position,
  Selection,
  Uri,
  window,
  workspace,
  WorkspaceEdit,
  type Disposable,
  type WorkspaceFolder,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ToServer } from '../../server/src/language/requests';
import { reported } from './reported';

type Answer = ToServer['fettle/new']['result'];

/** What a caller may give instead of being asked. */
interface Given {
  readonly kind?: unknown;
  readonly name?: unknown;
}

export const offerNewFiles = (client: BaseLanguageClient): Disposable[] => [
  commands.registerCommand('fettle.newBuild', (given?: Given) => reported(() => newBuild(client, given))),
  commands.registerCommand('fettle.newPart', (given?: Given) => reported(() => newPart(client, given))),
];

async function newBuild(client: BaseLanguageClient, given: Given = {}): Promise<void> {
  const near = await nearFor('pcbuild');
  if (!near) return;
  const name =
    textOf(given.name) ??
    (await window.showInputBox({
      title: l10n.t('New build'),
      prompt: l10n.t('What is the build called?'),
      placeHolder: l10n.t('Survey desk'),
    }));
  if (name !== undefined) await write(client, near, 'build', name.trim());
}

async function newPart(client: BaseLanguageClient, given: Given = {}): Promise<void> {
  const near = await nearFor('part');
  if (!near) return;
  const kinds = await client.sendRequest<ToServer['fettle/kinds']['result']>('fettle/kinds');
  const kind =
    textOf(given.kind) ?? (await window.showQuickPick([...kinds], { title: l10n.t('New part: of which kind?') }));
  if (kind === undefined) return;
  const prompt = l10n.t(
    'Maker and model, as builds are to name it: small letters, figures and hyphens, with / between.',
  );
  const name =
    textOf(given.name) ??
    (await window.showInputBox({ title: l10n.t('New part: {0}', kind), prompt, placeHolder: l10n.t('maker/model') }));
  if (name !== undefined) await write(client, near, kind, name.trim());
}

/** What a caller gave, where it is a text. */
export const textOf = (given: unknown): string | undefined => (typeof given === 'string' ? given : undefined);

/** Beside the open build, or in the folder of the open file; else in a folder of the workspace that is asked for. */
export async function nearFor(what: 'pcbuild' | 'part'): Promise<Uri | undefined> {
  const uri = window.activeTextEditor?.document.uri;
  const folder = uri && workspace.getWorkspaceFolder(uri);
  if (folder) return what === 'part' || uri.path.endsWith('.pcbuild.yaml') ? uri : folder.uri;
  const folders: readonly WorkspaceFolder[] = workspace.workspaceFolders ?? [];
  if (folders.length === 0) {
    const open = l10n.t('Open a Folder…');
    const none = l10n.t('Builds and parts lie in a folder; none is open.');
    const chosen = await window.showInformationMessage(none, open);
    if (chosen === open) await commands.executeCommand('vscode.openFolder');
    return undefined;
  }
  return folders.length === 1 ? folders[0]!.uri : (await window.showWorkspaceFolderPick())?.uri;
}

async function write(client: BaseLanguageClient, near: Uri, what: string, name: string): Promise<void> {
  const params = { near: client.code2ProtocolConverter.asUri(near), what, name };
  const answer = await client.sendRequest<Answer>('fettle/new', params);
  if ('problem' in answer) throw new Error(answer.problem);
  const files = answer.files.map(({ uri, text }) => ({ uri: Uri.parse(uri, true), text }));
  const [first] = files;
  if (!first) return;
  if (await isThere(first.uri)) {
    await window.showTextDocument(first.uri);
    throw new Error(alreadyThere(first.uri));
  }
  const edit = new WorkspaceEdit();
  for (const { uri, text } of files)
    edit.createFile(uri, {
      overwrite: false,
      ignoreIfExists: uri !== first.uri,
      contents: new TextEncoder().encode(text),
    });
  if (!(await workspace.applyEdit(edit))) throw new Error(notWritten(first.uri));
  const editor = await window.showTextDocument(first.uri);
  const at = new Position(answer.at.line, answer.at.character);
  editor.selection = new Selection(at, at);
}

export const alreadyThere = (uri: Uri): string =>
  l10n.t('{0} stands there already; nothing was written over it.', workspace.asRelativePath(uri));

export const notWritten = (uri: Uri): string => l10n.t('{0} could not be written.', workspace.asRelativePath(uri));

export async function isThere(uri: Uri): Promise<boolean> {
  try {
    await workspace.fs.stat(uri);
    return true;
  } catch {
    return false;
  }
}
