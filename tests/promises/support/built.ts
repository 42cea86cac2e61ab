// The built command and server as processes, watched from inside: by a script that is loaded before them.
import { spawn, spawnSync, type ChildProcessWithoutNullStreams } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type ProtocolConnection,
} from 'vscode-languageserver-protocol/node';
import { bundle } from '../../support/bundle';

const root = join(__dirname, '../../..');
const dist = join(root, 'dist');

export interface Built {
  readonly command: string;
  readonly server: string;
  readonly folder: string;
  readonly remove: () => void;
}

/** What is shipped, where it is newer than its sources; otherwise the same entries bundled aside. */
export function built(): Built {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-built-'));
  const remove = (): void => rmSync(folder, { recursive: true, force: true });
  if (isFresh()) return { command: join(dist, 'fettle.js'), server: join(dist, 'server.js'), folder, remove };
  const aside = (name: string): string => {
    const outfile = join(folder, `${name}.js`);
    bundle(name, outfile);
    return outfile;
  };
  return { command: aside('fettle'), server: aside('server'), folder, remove };
}

function isFresh(): boolean {
  const made = statSync(join(dist, '.built'), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  const sources = join(root, 'server/src');
  return readdirSync(sources, { recursive: true, encoding: 'utf8' }).every(
    (name) => (statSync(join(sources, name), { throwIfNoEntry: false })?.mtimeMs ?? 0) <= made,
  );
}

/** What a watched process tells at its end. */
export interface Told {
  readonly cpuMs: number;
  readonly peakMb: number;
  readonly calls: readonly string[];
  readonly opened: readonly string[];
}

export interface Ran extends Partial<Told> {
  readonly status: number | null;
  readonly signal: string | null;
  readonly out: string;
  readonly err: string;
  readonly ms: number;
}

const watcher = join(__dirname, 'watcher.cjs');

/** Memory in MB that a process may take before the engine gives up; below the gigabyte that is promised. */
const heapMb = 900;

function environment(report: string, more: Readonly<Record<string, string>>): NodeJS.ProcessEnv {
  return { PATH: process.env.PATH, FETTLE_TOLD: report, ...more };
}

const wordsFor = (script: string): string[] => ['--require', watcher, `--max-old-space-size=${heapMb}`, script];

export function runCommand(
  { command, folder }: Built,
  cwd: string,
  words: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Ran {
  const report = join(folder, `told-${Math.random().toString(36).slice(2)}.json`);
  const begun = performance.now();
  const ran = spawnSync(process.execPath, [...wordsFor(command), ...words], {
    cwd,
    encoding: 'utf8',
    timeout: 50_000,
    maxBuffer: 1e9,
    env: environment(report, env),
  });
  return {
    status: ran.status,
    signal: ran.signal,
    out: ran.stdout,
    err: ran.stderr,
    ms: performance.now() - begun,
    ...toldIn(report),
  };
}

export function toldIn(report: string): Partial<Told> {
  try {
    return JSON.parse(readFileSync(report, 'utf8')) as Told;
  } catch {
    return {};
  }
}

export class ServerProcess {
  readonly process: ChildProcessWithoutNullStreams;
  readonly connection: ProtocolConnection;
  readonly published = new Map<string, readonly { code?: string | number; message: string; range: unknown }[]>();
  readonly report: string;
  err = '';
  ended: number | null | undefined;

  constructor({ server, folder }: Built, cwd: string) {
    this.report = join(folder, `told-${Math.random().toString(36).slice(2)}.json`);
    this.process = spawn(process.execPath, [...wordsFor(server), '--stdio'], {
      cwd,
      env: environment(this.report, {}),
    });
    this.process.stderr.on('data', (text: Buffer) => (this.err += text.toString()));
    this.process.on('exit', (status) => (this.ended = status));
    this.connection = createProtocolConnection(
      new StreamMessageReader(this.process.stdout),
      new StreamMessageWriter(this.process.stdin),
    );
    this.connection.onNotification(
      'textDocument/publishDiagnostics',
      ({ uri, diagnostics }: { uri: string; diagnostics: [] }) => void this.published.set(uri, diagnostics),
    );
    this.connection.onError(() => undefined);
    this.connection.listen();
  }

  async start(folderUri: string): Promise<void> {
    await this.connection.sendRequest('initialize', {
      processId: null,
      rootUri: null,
      workspaceFolders: [{ uri: folderUri, name: 'ws' }],
      capabilities: {
        textDocument: { codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } } },
      },
    });
    await this.connection.sendNotification('initialized', {});
  }

  /** Ends the process in order; what it tells is there afterwards. */
  async stop(): Promise<Partial<Told> & { status: number | null }> {
    const gone = new Promise<number | null>((resolve) =>
      this.ended !== undefined ? resolve(this.ended) : this.process.once('exit', resolve),
    );
    if (this.ended === undefined) {
      await this.connection.sendRequest('shutdown').catch(() => undefined);
      await this.connection.sendNotification('exit').catch(() => undefined);
    }
    const status = await gone;
    this.connection.dispose();
    return { status, ...toldIn(this.report) };
  }

  kill(): void {
    if (this.ended === undefined) this.process.kill('SIGKILL');
  }
}

/** A text in a file of its own folder. */
export function write(path: string, text: string | Uint8Array): string {
  writeFileSync(path, text);
  return path;
}
