// Which host reads an address: this machine’s files a folder at a time, all else by asking the client.
import type { Connection } from 'vscode-languageserver/node';
import type { AddressedHost } from '../host/addressed';
import { nameBelow, splitPath } from '../host/host';
import { EditorFiles } from './editor-files';

/** Makes the host of this machine’s files for a workspace folder, by its path; undefined where there is none. */
export type MakeHost = ((here: string) => AddressedHost) | undefined;

export class Hosts {
  private folders: readonly string[] = [];
  private made = new Map<string, AddressedHost>();
  private readonly editor: EditorFiles;
  private readonly plain: AddressedHost | undefined;

  constructor(
    connection: Connection,
    private readonly make: MakeHost,
    askEditor: () => boolean,
  ) {
    this.editor = new EditorFiles(connection, askEditor);
    this.plain = make?.('/');
  }

  setFolders(uris: readonly string[]): void {
    this.folders = uris;
    this.made = new Map();
  }

  get folderUris(): readonly string[] {
    return this.folders;
  }

  /** The host for an address; a file of no workspace folder is bounded by its own folder. */
  readonly hostFor = (uri: string): AddressedHost => {
    const path = this.plain?.pathOf(uri);
    if (!this.make || path === undefined) return this.editor;
    const held = this.folders
      .flatMap((folder) => this.plain!.pathOf(folder) ?? [])
      .filter((folder) => nameBelow(folder, path) !== undefined)
      .sort((a, b) => b.length - a.length)[0];
    const here = held ?? splitPath(path)[0];
    let host = this.made.get(here);
    if (!host) this.made.set(here, (host = this.make(here)));
    return host;
  };
}
