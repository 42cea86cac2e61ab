// Answers the server’s file requests from the editor’s own file system, within the workspace’s folders and
// nowhere else. It finds, lists and hands over bytes; what they mean is the server’s to say.
import { Disposable, FileType, Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ToClient } from '../../server/src/language/requests';

type Method = keyof ToClient;
type Answer<M extends Method> = ToClient[M]['result'];

/** Registers the answers. */
export function answerFiles(client: BaseLanguageClient): Disposable {
  return Disposable.from(
    client.onRequest<Answer<'fettle/findPath'>, void>('fettle/findPath', within<'fettle/findPath'>(findPath)),
    client.onRequest<Answer<'fettle/readFile'>, void>('fettle/readFile', within<'fettle/readFile'>(readFile)),
    client.onRequest<Answer<'fettle/listFolder'>, void>('fettle/listFolder', within<'fettle/listFolder'>(listFolder)),
  );
}

/** Answers for addresses in the workspace only; `bound` is the folder of the workspace that holds one. */
function within<M extends Method>(
  work: (uri: Uri, bound: Uri, params: ToClient[M]['params']) => Promise<Answer<M>>,
): (params: ToClient[M]['params']) => Promise<Answer<M> | null> {
  return async (params) => {
    const uri = Uri.parse(params.uri, true);
    const bound = workspace.getWorkspaceFolder(uri)?.uri;
    return bound ? work(uri, bound, params) : null;
  };
}

async function typeOf(uri: Uri): Promise<FileType | undefined> {
  try {
    return (await workspace.fs.stat(uri)).type;
  } catch {
    return undefined;
  }
}

async function findPath(uri: Uri, bound: Uri): Promise<Answer<'fettle/findPath'>> {
  const type = await typeOf(uri);
  if (type === undefined) return null;
  return { kind: (type & FileType.Directory) !== 0 ? 'folder' : 'file', bound: bound.toString() };
}

/** Whether a link stands between a folder of the workspace and an address below it: where it leads cannot be asked. */
async function isBehindLink(uri: Uri, bound: Uri): Promise<boolean> {
  for (let at = uri; at.path.length > bound.path.length; at = Uri.joinPath(at, '..'))
    if (((await typeOf(at)) ?? 0) & FileType.SymbolicLink) return true;
  return false;
}

async function readFile(
  uri: Uri,
  bound: Uri,
  { mostBytes }: ToClient['fettle/readFile']['params'],
): Promise<Answer<'fettle/readFile'>> {
  const type = await typeOf(uri);
  if (type === undefined) return null;
  if (await isBehindLink(uri, bound)) return { refused: 'link' };
  if (type !== FileType.File) return { refused: 'no-file' };
  const { size } = await workspace.fs.stat(uri);
  return size > mostBytes ? { refused: 'large' } : { base64: base64(await workspace.fs.readFile(uri)) };
}

async function listFolder(uri: Uri, bound: Uri): Promise<Answer<'fettle/listFolder'>> {
  const type = await typeOf(uri);
  if (type === undefined || (type & FileType.Directory) === 0) return null;
  if (await isBehindLink(uri, bound)) return { refused: 'link' };
  return (await workspace.fs.readDirectory(uri)).map(([name, is]) => ({ name, kind: kindOf(is) }));
}

function kindOf(type: FileType): 'file' | 'folder' | 'link' | 'other' {
  if ((type & FileType.SymbolicLink) !== 0) return 'link';
  return type === FileType.File ? 'file' : type === FileType.Directory ? 'folder' : 'other';
}

/** How many bytes become characters at a time: each is an argument of one call. */
const stride = 0x8000;

function base64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += stride) text += String.fromCharCode(...bytes.subarray(at, at + stride));
  return btoa(text);
}
