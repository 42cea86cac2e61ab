// Entry on the desktop and on a remote machine: the server is a process of its own.
import type { ExtensionContext } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { start } from './start';
import { offerTask } from './task';

export async function activate(context: ExtensionContext): Promise<void> {
  const module = context.asAbsolutePath('dist/server.js');
  context.subscriptions.push(offerTask());
  const run = { module, transport: TransportKind.stdio };
  await start(context, (options) => new LanguageClient('fettle', 'Fettle', { run, debug: run }, options));
}
