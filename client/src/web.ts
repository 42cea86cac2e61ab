// Entry in a browser: the server is a worker, and reads files through the editor.
import { env, Uri, workspace, type ExtensionContext } from 'vscode';
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type MessageTransports,
} from 'vscode-languageclient/browser';
import { start } from './start';

// The compiler is told of no page; what a worker is, the client library knows.
type Running = ConstructorParameters<typeof BrowserMessageReader>[0] & { terminate(): void };
declare const Worker: new (address: string) => Running;
declare const Blob: new (parts: readonly (Uint8Array | string)[], kind: { type: string }) => object;
declare const URL: { createObjectURL(blob: object): string };

export function activate(context: ExtensionContext): void {
  let address: Promise<string> | undefined;
  let running: Running | undefined;
  // A worker serves one life of the client; a restart begins another.
  const launch = async (): Promise<MessageTransports> => {
    running?.terminate();
    running = new Worker(await (address ??= addressOf(Uri.joinPath(context.extensionUri, 'dist'))));
    return { reader: new BrowserMessageReader(running), writer: new BrowserMessageWriter(running) };
  };
  context.subscriptions.push({ dispose: () => running?.terminate() });
  start(context, (options) => new LanguageClient('fettle', 'Fettle', launch, options));
}

/** The extension may lie where a page cannot load a script from, so the editor reads it, and German words for it. */
async function addressOf(folder: Uri): Promise<string> {
  const read = (name: string): Thenable<Uint8Array> => workspace.fs.readFile(Uri.joinPath(folder, name));
  const code = await read('server.worker.js');
  const words = env.language.startsWith('de') ? ['\nglobalThis.germanWords = ', await read('german.json'), ';\n'] : [];
  return URL.createObjectURL(new Blob([code, ...words], { type: 'text/javascript' }));
}
