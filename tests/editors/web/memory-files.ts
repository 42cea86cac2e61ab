// Runs inside the browser's extension host: a file system in memory, which is all that the window's folder lies in.
import * as vscode from 'vscode';

declare const __FILES__: Readonly<Record<string, string>>;

const changes = new vscode.EventEmitter<vscode.FileChangeEvent[]>();
const files = new Map<string, Uint8Array<ArrayBuffer>>(
  Object.entries(__FILES__).map(([path, text]) => [path, Uint8Array.from(new TextEncoder().encode(text))]),
);
const below = (folder: string): string => (folder.endsWith('/') ? folder : `${folder}/`);
const isFolder = (path: string): boolean => [...files.keys()].some((name) => name.startsWith(below(path)));
const gone = (uri: vscode.Uri): Error => vscode.FileSystemError.FileNotFound(uri);

const provider: vscode.FileSystemProvider = {
  onDidChangeFile: changes.event,
  watch: () => new vscode.Disposable(() => undefined),
  stat(uri) {
    const size = files.get(uri.path)?.length;
    if (size === undefined && !isFolder(uri.path)) throw gone(uri);
    const type = size === undefined ? vscode.FileType.Directory : vscode.FileType.File;
    return { type, ctime: 0, mtime: 0, size: size ?? 0 };
  },
  readDirectory(uri) {
    if (!isFolder(uri.path)) throw gone(uri);
    const inside = [...files.keys()].filter((name) => name.startsWith(below(uri.path)));
    const rest = inside.map((name) => name.slice(below(uri.path).length));
    const kinds = rest.map((name): [string, vscode.FileType] => [
      name.split('/')[0]!,
      name.includes('/') ? vscode.FileType.Directory : vscode.FileType.File,
    ]);
    return [...new Map(kinds)];
  },
  readFile(uri) {
    const content = files.get(uri.path);
    if (!content) throw gone(uri);
    return content;
  },
  writeFile(uri, content) {
    files.set(uri.path, Uint8Array.from(content));
    changes.fire([{ type: vscode.FileChangeType.Changed, uri }]);
  },
  createDirectory: () => undefined,
  delete: (uri) => void files.delete(uri.path),
  rename(from, to) {
    const content = files.get(from.path);
    if (!content) throw gone(from);
    files.set(to.path, content);
    files.delete(from.path);
  },
};

export function activate(context: vscode.ExtensionContext): void {
  context.subscriptions.push(vscode.workspace.registerFileSystemProvider('bench', provider));
}
