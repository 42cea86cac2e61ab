// The server as a process: over the standard streams, or over the pipe of the process that forked it.
import {
  IPCMessageReader,
  IPCMessageWriter,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { serve, type Environment } from './serve';

/** Serves this process’s client; the process ends with it. */
export function serveProcess(environment: Environment): void {
  if (process.argv.includes('--node-ipc')) {
    serve(new IPCMessageReader(process), new IPCMessageWriter(process), environment);
    return;
  }
  serve(new StreamMessageReader(process.stdin), new StreamMessageWriter(process.stdout), environment);
  // A client that went without `exit` has left nobody to serve.
  process.stdin.on('end', () => process.exit(1));
  process.stdout.on('error', () => process.exit(1));
}
