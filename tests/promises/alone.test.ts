// Nothing leaves the machine, nothing else is started, and nothing outside the workspace is read: the built command and
// server with every way out nailed up, over a workspace full of ways out (promises P9, P10, P11, P20).
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { built, runCommand, ServerProcess, write, type Built } from './support/built';

const posix = process.platform !== 'win32';
const samples = join(__dirname, '../../samples');
let program: Built;
let top: string;
let workspace: string;

function file(name: string, text: string): string {
  const path = join(workspace, name);
  mkdirSync(dirname(path), { recursive: true });
  return write(path, text);
}

/** Ways in which a build may ask for a part; the seventh is honest. */
const usesOf = (folder: string): string[] => [
  'boreas/secret',
  '../outside/boreas/secret',
  join(folder, 'outside/boreas/secret'),
  'boreas/../../../outside/boreas/secret',
  'boreas/one',
  'boreas/pipe',
  'boreas/real',
  'file:///etc/passwd',
  'boreas/zero',
  'boreas/folder',
];

const deskWith = (use: string): string =>
  `format: 1\nbuild: Desk\nparts:\n  cooler: { use: ${JSON.stringify(use)} }\n  case: { cooler-height: 150 mm }\n`;

const secret = 'kind: cooler\nheight: 777 mm\n';

beforeAll(() => {
  program = built();
  top = realpathSync(mkdtempSync(join(tmpdir(), 'fettle-alone-')));
  workspace = join(top, 'workspace');
  mkdirSync(join(top, 'outside/boreas'), { recursive: true });
  write(join(top, 'outside/boreas/secret.part.yaml'), secret);
  write(join(top, 'outside/away.pcbuild.yaml'), 'format: 1\nbuild: Away\n');
  mkdirSync(workspace);
  file(
    'fettle.yaml',
    `parts: [parts, ../outside, ${join(top, 'outside')}, linked, "..", ".", "", ~, parts/../../outside, .hidden]\n`,
  );
  file('.hidden/boreas/secret.part.yaml', secret);
  file('parts/boreas/real.part.yaml', 'kind: cooler\nheight: 158 mm\n');
  usesOf(top).forEach((use, i) => file(`desk-${i}.pcbuild.yaml`, deskWith(use)));
  mkdirSync(join(workspace, 'parts/boreas/folder.part.yaml'));
  if (!posix) return;
  symlinkSync(join(top, 'outside'), join(workspace, 'linked'));
  symlinkSync(join(top, 'outside/boreas/secret.part.yaml'), join(workspace, 'parts/boreas/one.part.yaml'));
  symlinkSync(join(top, 'outside/away.pcbuild.yaml'), join(workspace, 'away.pcbuild.yaml'));
  symlinkSync('/dev/zero', join(workspace, 'parts/boreas/zero.part.yaml'));
  execFileSync('mkfifo', [join(workspace, 'parts/boreas/pipe.part.yaml')]);
});
afterAll(() => {
  rmSync(top, { recursive: true, force: true });
  program.remove();
});

/** Opened files that lie neither in the workspace nor among the program's own. */
function strays(opened: readonly string[] = []): string[] {
  const own = [workspace, samples, program.folder, dirname(program.command), join(__dirname, 'support')];
  return opened.filter(
    (path) => !own.some((folder) => path === folder || path.startsWith(`${folder}/`)) && path.startsWith('/'),
  );
}

describe('the command', () => {
  it('checks the samples with no network and no other program', () => {
    const ran = runCommand(program, dirname(samples), ['check', 'samples', '--working', '--from', 'unknown']);
    expect([ran.status, ran.err]).toEqual([1, '']);
    expect(ran.out).toContain('Survey desk');
    expect(ran.calls).toEqual([]);
  });

  it.each([
    ['explain', 'cooler-too-tall'],
    ['missing', 'samples/survey-desk.pcbuild.yaml'],
    ['swap', 'samples/survey-desk.pcbuild.yaml', 'cooler'],
    ['--help'],
  ])('runs %s %s %s the same way', (...words) => {
    const ran = runCommand(program, dirname(samples), words);
    expect([ran.status === 0 || ran.status === 1, ran.err, ran.calls]).toEqual([true, '', []]);
  });

  it('reads nothing outside the workspace, whatever cables there, and waits for no pipe', () => {
    const ran = runCommand(program, workspace, ['check', '--working', '--from', 'unknown']);
    expect(ran.status).toBe(2);
    expect(ran.signal).toBeNull();
    expect(ran.out + ran.err).not.toContain('777 mm');
    expect(ran.out).not.toContain('Away');
    expect(ran.out).toContain('158 mm');
    expect(strays(ran.opened)).toEqual([]);
    expect(ran.opened?.filter((path) => /zero|secret|away|pipe/.test(path))).toEqual([]);
    expect(ran.calls).toEqual([]);
    for (const folder of ['../outside', '..', join(top, 'outside'), 'parts/../../outside', '.hidden'])
      expect(ran.err).toContain(`does not lie below it, ${JSON.stringify(folder)}`);
  });

  it('takes no candidates for a swap from outside', () => {
    const ran = runCommand(program, workspace, ['swap', 'desk-6.pcbuild.yaml', 'cooler', '--format', 'json']);
    expect(ran.out + ran.err).not.toContain('777');
    expect(ran.out).not.toContain('"boreas/secret"');
    expect(strays(ran.opened)).toEqual([]);
  });

  it('a build named by itself lends no settings to what lies above it', () => {
    const inner = join(workspace, 'inner');
    mkdirSync(inner);
    file('inner/fettle.yaml', 'parts: [../parts, shelf]\n');
    file(
      'inner/a.pcbuild.yaml',
      'format: 1\nbuild: Inner\nparts: { cooler: { use: boreas/real }, case: { cooler-height: 150 mm } }\n',
    );
    const ran = runCommand(program, workspace, ['check', 'inner/a.pcbuild.yaml', '--working', '--from', 'unknown']);
    expect(ran.out).not.toContain('158 mm');
    rmSync(inner, { recursive: true });
  });
});

describe('the server', () => {
  it('serves with no network and no other program, and reads nothing outside the workspace', async () => {
    const server = new ServerProcess(program, workspace);
    try {
      await server.start(pathToFileURL(workspace).href);
      const answers = [];
      for (const [i, use] of usesOf(top).entries()) {
        const textDocument = { uri: pathToFileURL(join(workspace, `desk-${i}.pcbuild.yaml`)).href };
        const text = deskWith(use);
        await server.connection.sendNotification('textDocument/didOpen', {
          textDocument: { ...textDocument, languageId: 'fettle-build', version: 1, text },
        });
        const position = { line: 3, character: 22 };
        for (const method of ['textDocument/hover', 'textDocument/definition', 'textDocument/completion'])
          answers.push(await server.connection.sendRequest(method, { textDocument, position }));
        answers.push(
          await server.connection.sendRequest('textDocument/codeAction', {
            textDocument,
            range: { start: position, end: position },
            context: { diagnostics: [] },
          }),
        );
      }
      answers.push(
        await server.connection.sendRequest('workspace/executeCommand', { command: 'fettle.checkWorkspace' }),
      );
      answers.push(await server.connection.sendRequest('fettle/explain', { check: 'cooler-too-tall' }));
      const said = JSON.stringify([answers, ...server.published.values()]);
      expect(said).toContain('158 mm');
      expect(said).not.toContain('777 mm');
      expect(said).not.toContain('Away');
      const told = await server.stop();
      expect(told.status).toBe(0);
      expect(told.calls).toEqual([]);
      expect(strays(told.opened)).toEqual([]);
      expect(told.opened?.filter((path) => /zero|secret|away\.|pipe/.test(path))).toEqual([]);
      expect(server.err).toBe('');
    } finally {
      server.kill();
    }
  });

  it('is really watched: the watcher sees what a program does', () => {
    const script = write(
      join(program.folder, 'guilty.cjs'),
      "require('node:fs').readFileSync('/etc/hostname'); try { require('node:net').connect(9); } catch {} " +
        "try { require('node:child_process').execSync('true'); } catch {}",
    );
    const ran = runCommand({ ...program, command: script }, workspace, []);
    expect(ran.calls).toEqual(['net.connect', 'child_process.execSync']);
    expect(new Set(strays(ran.opened))).toEqual(new Set(['/etc/hostname']));
  });
});

describe.skipIf(!posix)('a workspace that lies behind a link', () => {
  it('is judged by where it really lies', () => {
    const other = join(top, 'other');
    cpSync(samples, join(top, 'really'), { recursive: true });
    symlinkSync(join(top, 'really'), other);
    const plain = runCommand(program, join(top, 'really'), ['check']);
    const linked = runCommand(program, other, ['check']);
    expect([linked.status, linked.out, linked.err]).toEqual([plain.status, plain.out, plain.err]);
  });
});
