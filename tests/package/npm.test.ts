// The npm package as someone gets it: packed, installed into an empty folder without a network, and run there.
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, mkdtempSync, readFileSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = join(__dirname, '../..');
/** Command, server and library each bring the whole engine in a bundle of their own. */
const mostBytes = 2_200_000;
const isWindows = process.platform === 'win32';

interface Packed {
  readonly filename: string;
  readonly size: number;
  readonly files: readonly { readonly path: string }[];
}

let folder: string;
let packed: Packed;

/** Runs a program to its end in the folder. */
function run(program: string, words: string[]) {
  const { status, stdout, stderr } = spawnSync(program, words, {
    cwd: folder,
    encoding: 'utf8',
    timeout: 60_000,
    shell: isWindows,
    // Nothing of the npm that may run these tests is to reach the one that they run.
    env: { PATH: process.env.PATH, HOME: folder, npm_config_cache: join(folder, 'cache') },
  });
  return { status, out: stdout, err: stderr };
}

const bin = (name: string): string => join(folder, 'node_modules/.bin', isWindows ? `${name}.cmd` : name);

beforeAll(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'fettle-package-')));
  const pack = run('npm', ['pack', root, '--json', '--ignore-scripts', '--offline']);
  if (pack.status !== 0) throw new Error(pack.err);
  packed = (JSON.parse(pack.out) as Packed[])[0]!;
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
  const install = run('npm', ['install', '--offline', '--no-audit', '--no-fund', `./${packed.filename}`]);
  if (install.status !== 0) throw new Error(install.err);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the npm package', () => {
  it('holds what runs, the schemas that other tools read, its licences and nothing else', () => {
    expect(packed.files.map(({ path }) => path).sort()).toEqual([
      'LICENSE',
      'README.md',
      'THIRD-PARTY-NOTICES.md',
      'dist/api.d.ts',
      'dist/api.js',
      'dist/fettle.bundle.js',
      'dist/fettle.js',
      'dist/german.json',
      'dist/server.js',
      'package.json',
      ...['asbuilt', 'build', 'comparison', 'findings', 'house', 'known', 'part'].map(
        (name) => `schemas/${name}.schema.json`,
      ),
    ]);
  });

  it('is small', () => {
    expect(statSync(join(folder, packed.filename)).size).toBeLessThan(mostBytes);
  });

  it('brings no other package along', () => {
    const lock = JSON.parse(readFileSync(join(folder, 'package-lock.json'), 'utf8')) as { packages: object };
    expect(Object.keys(lock.packages)).toEqual(['', 'node_modules/fettle']);
  });

  it('says its version', () => {
    const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
    expect(run(bin('fettle'), ['--version'])).toEqual({ status: 0, out: `${version}\n`, err: '' });
  });

  it('checks a workspace as the checkout does', () => {
    cpSync(join(root, 'samples'), join(folder, 'samples'), { recursive: true });
    const installed = run(bin('fettle'), ['check', 'samples']);
    expect(installed.status).toBe(1);
    const here = run(process.execPath, [join(root, 'dist/fettle.js'), 'check', 'samples']);
    expect(installed).toEqual(here);
    expect(installed.out).toContain('survey-desk.pcbuild.yaml');
  });

  it('is a library with types, for modules of both kinds: the documented example compiles strictly, and runs', () => {
    const page = readFileSync(join(root, 'server/docs/library.md'), 'utf8');
    const example = /```ts\n([^]*?)```/.exec(page)![1]!;
    writeFileSync(join(folder, 'example.mts'), example);
    const options = [
      '--strict',
      '--noEmit',
      'false',
      '--module',
      'nodenext',
      '--target',
      'es2022',
      '--lib',
      'es2022,dom',
    ];
    const tsc = join(root, 'node_modules/typescript/bin/tsc');
    const compiled = run(process.execPath, [tsc, ...options, '--ignoreConfig', '--types', '', 'example.mts']);
    expect(compiled).toEqual({ status: 0, out: '', err: '' });
    const { status, out, err } = run(process.execPath, ['example.mjs']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('Survey desk: ');
    expect(out).toContain('desk.pcbuild.yaml: new: The cooler stands 168 mm tall');
    const words = 'console.log(Object.keys(require("fettle")).join())';
    expect(run(process.execPath, ['-e', isWindows ? `"${words}"` : words]).out).toBe(
      'compare,judgeBuild,readWorkspace,version\n',
    );
  });

  it('answers an editor over the standard streams', async () => {
    const server = spawn(bin('fettle-language-server'), ['--stdio'], { cwd: folder, shell: isWindows });
    const message = (body: object): void => {
      const text = JSON.stringify({ jsonrpc: '2.0', ...body });
      server.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`);
    };
    let out = '';
    server.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
      if (out.includes('"id":2,')) message({ method: 'exit' });
    });
    message({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } });
    message({ method: 'initialized', params: {} });
    message({ id: 2, method: 'shutdown' });
    const [status] = (await once(server, 'exit')) as [number | null];
    expect(status).toBe(0);
    expect(out).toMatch(/"id":1,"result":\{"capabilities":.*"hoverProvider":/);
    expect(out).toContain('"id":2,"result":null');
  });
});
