// The server in a worker: over the messages of the page that started it.
import { BrowserMessageReader, BrowserMessageWriter } from 'vscode-languageserver/browser';
import { serve, type Environment } from './serve';

type Port = ConstructorParameters<typeof BrowserMessageReader>[0];

/** Serves the page that started this worker. */
export function serveWorker(environment: Environment): void {
  const port = globalThis as unknown as Port;
  serve(new BrowserMessageReader(port), new BrowserMessageWriter(port), environment);
}
