// Files that only the client can reach, asked for by our own requests; every answer’s shape is checked.
import type { Connection } from 'vscode-languageserver/node';
import type { AddressedHost } from '../host/addressed';
import type { FileRef, Listed, ReadError } from '../host/host';
import type { ToClient } from './requests';
import { isFoundPath, isListedFolder, isReadFile } from './shapes';

const absent: ReadError = { trouble: 'there is no such file or folder.' };
const misshapen: ReadError = { trouble: 'cannot be read: the editor’s answer has not the right shape.' };

/** Paths and roots are addresses; names below a root are encoded into them. */
export class EditorFiles implements AddressedHost {
  constructor(
    private readonly connection: Connection,
    private readonly isOffered: () => boolean,
  ) {}

  pathOf(uri: string): string {
    return canonical(uri);
  }

  uriOf(path: string): string {
    return path;
  }

  pathIn(root: string, name: string): string {
    return name === '' ? root : `${root.replace(/\/$/, '')}/${name.split('/').map(encodeURIComponent).join('/')}`;
  }

  async find(uri: string): Promise<FileRef | ReadError> {
    const found = await this.ask('fettle/findPath', { uri });
    if (!isFoundPath(found)) return misshapen;
    return found === null ? absent : { ...found, root: canonical(found.root) };
  }

  async list(root: string, folder: string): Promise<readonly Listed[] | ReadError> {
    const listed = await this.ask('fettle/listFolder', { uri: this.pathIn(root, folder) });
    return isListedFolder(listed) ? (listed ?? absent) : misshapen;
  }

  async read(root: string, name: string): Promise<string | ReadError | undefined> {
    const read = await this.ask('fettle/readFile', { uri: this.pathIn(root, name) });
    if (!isReadFile(read)) return misshapen;
    return read === null ? undefined : 'text' in read ? read.text : read;
  }

  below(root: string, folder: string): string {
    return this.pathIn(root, folder);
  }

  shown(root: string, name: string): string {
    return this.pathIn(root, name);
  }

  private async ask<M extends keyof ToClient>(method: M, params: ToClient[M]['params']): Promise<unknown> {
    return this.isOffered() ? this.connection.sendRequest(method, params) : null;
  }
}

/** Clients encode addresses in their own ways; here one file has one. */
function canonical(uri: string): string {
  const parts = /^([a-z][\w+.-]*:(?:\/\/[^/?#]*)?)([^?#]*)(.*)$/i.exec(uri);
  if (!parts) return uri;
  const [, head = '', path = '', tail = ''] = parts;
  try {
    return (
      head +
      path
        .split('/')
        .map((step) => encodeURIComponent(decodeURIComponent(step)))
        .join('/') +
      tail
    );
  } catch {
    return uri;
  }
}
