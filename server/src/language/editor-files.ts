// Files that only the client can reach, asked for by our own requests; every answer’s shape is checked.
import type { Connection } from 'vscode-languageserver/node';
import type { AddressedHost } from '../host/addressed';
import { decode } from '../host/decode';
import { folderOf, houseName, partsName, rootAmong, type FolderMarks, type FoundPath } from '../host/host';
import type { Listed, ReadError } from '../host/host';
import { limits } from '../host/limits';
import { absent, notRegular, throughLink, tooFull, tooLarge } from '../host/troubles';
import type { ToClient } from './requests';
import { isFoundPath, isListedFolder, isReadFile } from './shapes';

const misshapen: ReadError = { trouble: 'cannot be read: the editor’s answer has not the right shape.' };
const refusals = { 'no-file': notRegular, link: throughLink, large: tooLarge } as const;

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

  async find(uri: string): Promise<FoundPath | ReadError> {
    const found = await this.ask('fettle/findPath', { uri });
    if (!isFoundPath(found)) return misshapen;
    if (found === null) return absent;
    const [path, bound] = [canonical(uri), canonical(found.bound)];
    const folders = foldersUpTo(found.kind === 'folder' ? path : folderOf(path), bound);
    const marked = rootAmong(await Promise.all(folders.map((folder) => this.marksOf(folder))));
    const root = marked ?? bound;
    const name = path.slice(root.length).replace(/^\//, '');
    return { kind: found.kind, root, name: decodeURIComponent(name), isMarked: marked !== undefined };
  }

  private async marksOf(folder: string): Promise<FolderMarks> {
    const [hasSettings, hasParts] = await Promise.all([
      this.isThere(this.pathIn(folder, houseName), 'file'),
      this.isThere(this.pathIn(folder, partsName), 'folder'),
    ]);
    return { folder, hasSettings, hasParts };
  }

  private async isThere(uri: string, kind: FoundPath['kind']): Promise<boolean> {
    const found = await this.ask('fettle/findPath', { uri });
    return isFoundPath(found) && found?.kind === kind;
  }

  async list(root: string, folder: string): Promise<readonly Listed[] | ReadError | undefined> {
    const uri = this.pathIn(root, folder);
    const listed = await this.ask('fettle/listFolder', { uri });
    if (!isListedFolder(listed)) return misshapen;
    if (listed === null) return undefined;
    if ('refused' in listed) return refusals[listed.refused];
    return listed.length > limits.folderEntries ? tooFull : [...listed].sort((a, b) => (a.name < b.name ? -1 : 1));
  }

  async read(root: string, name: string): Promise<string | ReadError | undefined> {
    const params = { uri: this.pathIn(root, name), mostBytes: limits.fileBytes };
    const read = await this.ask('fettle/readFile', params);
    if (!isReadFile(read)) return misshapen;
    if (read === null) return undefined;
    if ('refused' in read) return refusals[read.refused];
    const bytes = bytesOf(read.base64);
    return bytes ? decode(bytes) : misshapen;
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
  const parts = /^([a-z][\w+.-]*:(?:\/\/[^/?#]*)?)([^?#]*)([^]*)$/i.exec(uri);
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

/** A folder and those above it, up to a folder that bounds them. */
function foldersUpTo(folder: string, bound: string): readonly string[] {
  const folders = [folder];
  for (let at = folder; at !== bound && at.startsWith(`${bound.replace(/\/$/, '')}/`); ) {
    at = folderOf(at);
    folders.push(at);
  }
  return folders;
}

function bytesOf(base64: string): Uint8Array | undefined {
  try {
    return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
  } catch {
    return undefined;
  }
}
