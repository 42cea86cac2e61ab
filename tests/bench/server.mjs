// What the measurements over the standard streams share: a workspace of many part files, and a server to speak to.
import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const { createProtocolConnection, StreamMessageReader, StreamMessageWriter } = createRequire(import.meta.url)(
  'vscode-languageserver-protocol/node',
);

export const root = fileURLToPath(new URL('../..', import.meta.url));
export const fettleServer = [join(root, 'dist/server.js'), '--stdio'];

/** The samples, with so many copies of their parts. */
export function manyParts(partFiles) {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'));
  cpSync(join(root, 'samples'), folder, { recursive: true });
  const parts = readdirSync(join(folder, 'parts'), { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.part.yaml'),
  );
  mkdirSync(join(folder, 'parts/store'));
  for (let i = 0; i < partFiles; i++)
    cpSync(join(folder, 'parts', parts[i % parts.length]), join(folder, `parts/store/part-${i}.part.yaml`));
  return folder;
}

/** A server as a process of its own, by its script and arguments; `end` ends it. */
export function startServer(command) {
  const server = spawn(process.execPath, command, { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  const end = () => {
    connection.dispose();
    server.kill();
  };
  return { connection, end };
}

/** Begins to speak of a folder. */
export async function greet(connection, folder, capabilities = {}) {
  const uri = pathToFileURL(folder).href;
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: uri,
    workspaceFolders: [{ uri, name: 'bench' }],
    capabilities,
  });
  await connection.sendNotification('initialized', {});
  return uri;
}
