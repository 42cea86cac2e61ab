// The server as a process: over the standard streams, or over the pipe of the process that forked it.
import {
  IPCMessageReader,
  IPCMessageWriter,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { WholeMessages } from '../host/whole-messages';
import { serve, type Environment } from './serve';

/** How long what was read before the end, an `exit` among it, may take to be carried out. */
const graceMs = 1000;

/** Serves this process’s client; the process ends with it. */
export function serveProcess(environment: Environment): void {
  if (process.argv.includes('--node-ipc')) {
    serve(new IPCMessageReader(process), new IPCMessageWriter(process), environment);
    return;
  }
  const writer = new StreamMessageWriter(new WholeMessages(process.stdout));
  const served = serve(new StreamMessageReader(process.stdin), writer, environment);
  // A client that went without `exit` has left nobody to serve; one that sent it has its turn first.
  process.stdin.on('end', () => setTimeout(() => void served.left().then(() => process.exit(1)), graceMs));
  process.stdout.on('error', () => process.exit(1));
}
