// Memory of the built server after thousands of edits of one build: alternating keystrokes in many places, with hovers
// and completions between them. Run: npm run build && node tests/bench/memory.mjs [edits]. Prints MB as it grows.
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawn } from 'node:child_process';
import { fileURLToPath, pathToFileURL } from 'node:url';

const require = createRequire(import.meta.url);
const {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} = require('vscode-languageserver-protocol/node');

const root = fileURLToPath(new URL('../..', import.meta.url));
const edits = Number(process.argv[2] ?? 10_000);
const mostMb = 120;

function memoryOf(pid) {
  const found = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
  return Number(found[1]) / 1024;
}

const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'));
cpSync(join(root, 'samples'), folder, { recursive: true });
const file = join(folder, 'survey-desk.pcbuild.yaml');
const uri = pathToFileURL(file).href;
const text = readFileSync(file, 'utf8');
const server = spawn(process.execPath, [join(root, 'dist/server.js'), '--stdio'], {
  stdio: ['pipe', 'pipe', 'inherit'],
  // As the extension starts it.
  env: { ...process.env, MALLOC_ARENA_MAX: '1' },
});
const connection = createProtocolConnection(
  new StreamMessageReader(server.stdout),
  new StreamMessageWriter(server.stdin),
);
connection.listen();
const address = pathToFileURL(folder).href;
await connection.sendRequest('initialize', {
  processId: process.pid,
  rootUri: address,
  workspaceFolders: [{ uri: address, name: 'bench' }],
  capabilities: {},
});
await connection.sendNotification('initialized', {});
await connection.sendNotification('textDocument/didOpen', {
  textDocument: { uri, languageId: 'fettle-build', version: 1, text },
});

// Each place with a figure is given another, and then its own again.
const places = [...text.matchAll(/(?<=: )\d+(?= (?:°C|m|V|W|GB|mm|TB)\b)/g)].map(({ index, 0: was }) => ({
  index,
  was,
}));
const positionAt = (offset) => {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1).length };
};
let version = 1;
let most = 0;
for (let edit = 0; edit < edits; edit++) {
  const { index, was } = places[(edit >> 1) % places.length];
  const [start, end] = [positionAt(index), positionAt(index + was.length)];
  const by =
    edit % 2 === 0 ? String(Math.max(1, (Number(was) + 1 + edit) % 10 ** was.length)).padStart(was.length, '1') : was;
  await connection.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: ++version },
    contentChanges: [{ range: { start, end }, text: by }],
  });
  const textDocument = { uri };
  if (edit % 10 === 0) await connection.sendRequest('textDocument/hover', { textDocument, position: start });
  if (edit % 50 === 0) await connection.sendRequest('textDocument/completion', { textDocument, position: start });
  if (edit % Math.min(1000, edits) === Math.min(1000, edits) - 1) {
    await connection.sendRequest('textDocument/documentSymbol', { textDocument });
    const mb = memoryOf(server.pid);
    most = Math.max(most, mb);
    process.stderr.write(`${edit + 1} edits: ${mb.toFixed(0)} MB\n`);
  }
}
await connection.sendRequest('shutdown');
await connection.sendNotification('exit');
rmSync(folder, { recursive: true });
console.log(`server after ${edits} edits: ${most.toFixed(0)} MB, to reach ${mostMb}`);
process.exitCode = most <= mostMb ? 0 : 1;
