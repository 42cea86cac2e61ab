// Entry of the language server: speaks over the standard streams, or over the pipe of the process that forked it.
import { IPCMessageReader, IPCMessageWriter, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node';
import { version } from '../../package.json';
import { NodeAddresses } from './host/node-addresses';
import { serve } from './language/serve';

// A fault in a step nobody waits for is told, and the server serves on.
const tell = (error: unknown): void => void process.stderr.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
process.on('uncaughtException', tell);
process.on('unhandledRejection', tell);

const environment = { makeHost: (here: string) => new NodeAddresses(here), version, today: () => new Date().toISOString().slice(0, 10) };

if (process.argv.includes('--node-ipc')) {
  serve(new IPCMessageReader(process), new IPCMessageWriter(process), environment);
} else {
  serve(new StreamMessageReader(process.stdin), new StreamMessageWriter(process.stdout), environment);
  // A client that went without `exit` has left nobody to serve.
  process.stdin.on('end', () => process.exit(1));
  process.stdout.on('error', () => process.exit(1));
}
