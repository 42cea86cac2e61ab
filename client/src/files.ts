// Answers the server’s file requests from the editor’s own file system, within the workspace’s folders and nowhere
// else.
import { Disposable, FileType, Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ToClient } from '../../server/src/language/requests';

const mostBytes = 2_000_000;
const house = 'fettle.yaml';
const utf8 = new TextDecoder('utf-8', { fatal: true });

/** Registers the answers. */
export function answerFiles(client: BaseLanguageClient): Disposable {
  return Disposable.from(
    client.onRequest('fettle/findPath', within<'fettle/findPath'>(findPath)),
    client.onRequest<ToClient['fettle/readFile']['result'], void>(
      'fettle/readFile',
      within<'fettle/readFile'>(readFile),
    ),
    client.onRequest('fettle/listFolder', within<'fettle/listFolder'>(listFolder)),
  );
}

type Method = keyof ToClient;

/** Answers for addresses in the workspace only. */
function within<M extends Method>(
  work: (uri: Uri) => Promise<ToClient[M]['result']>,
): (params: ToClient[M]['params']) => Promise<ToClient[M]['result'] | null> {
  return async (params) => {
    const uri = Uri.parse(params.uri, true);
    return workspace.getWorkspaceFolder(uri) ? work(uri) : null;
  };
}

async function typeOf(uri: Uri): Promise<FileType | undefined> {
  try {
    return (await workspace.fs.stat(uri)).type;
  } catch {
    return undefined;
  }
}

/** A path’s kind and root: the nearest folder above that holds house settings, else the workspace folder. */
async function findPath(uri: Uri): Promise<ToClient['fettle/findPath']['result']> {
  const type = await typeOf(uri);
  const bound = workspace.getWorkspaceFolder(uri)?.uri;
  if (type === undefined || !bound) return null;
  const isFolder = (type & FileType.Directory) !== 0;
  let root = isFolder ? uri : Uri.joinPath(uri, '..');
  while (root.path !== bound.path && (await typeOf(Uri.joinPath(root, house))) === undefined)
    root = Uri.joinPath(root, '..');
  return {
    kind: isFolder ? 'folder' : 'file',
    root: root.toString(),
    name: uri.path.slice(root.path.length).replace(/^\//, ''),
  };
}

async function readFile(uri: Uri): Promise<ToClient['fettle/readFile']['result']> {
  const type = await typeOf(uri);
  if (type === undefined) return null;
  if (type !== FileType.File) return { trouble: 'is no regular file, so it is not opened.' };
  const { size } = await workspace.fs.stat(uri);
  if (size > mostBytes) return { trouble: `is larger than ${mostBytes} bytes, so it is not read; split it.` };
  try {
    return { text: utf8.decode(await workspace.fs.readFile(uri)) };
  } catch {
    return { trouble: 'is not text in UTF-8.' };
  }
}

async function listFolder(uri: Uri): Promise<ToClient['fettle/listFolder']['result']> {
  if ((await typeOf(uri)) !== FileType.Directory) return null;
  const entries = await workspace.fs.readDirectory(uri);
  return entries.map(([name, type]) => ({ name, kind: kindOf(type) })).sort((a, b) => (a.name < b.name ? -1 : 1));
}

function kindOf(type: FileType): 'file' | 'folder' | 'link' | 'other' {
  if ((type & FileType.SymbolicLink) !== 0) return 'link';
  return type === FileType.File ? 'file' : type === FileType.Directory ? 'folder' : 'other';
}
