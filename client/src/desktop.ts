// Entry on the desktop and on a remote machine: the server is a process of its own.
import type { ExtensionContext } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { start } from './start';
import { offerTask } from './task';

export function activate(context: ExtensionContext): void {
  const module = context.asAbsolutePath('dist/server.js');
  context.subscriptions.push(offerTask());
  // Threads that share one pool of memory: under Linux each would keep some of its own, 16 MB in all, for nothing.
  const options = { env: { MALLOC_ARENA_MAX: '1' } };
  const run = { module, transport: TransportKind.stdio, options };
  start(context, (how) => new LanguageClient('fettle', 'Fettle', { run, debug: run }, how));
}
