// The command as a process: bundled as it is shipped, run over real files, judged by its exit status and what it
// leaves behind.
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundle } from '../support/bundle';

let top: string;
let command: string;

beforeAll(() => {
  top = mkdtempSync(join(tmpdir(), 'fettle-process-'));
  command = join(top, 'fettle.js');
  bundle('fettle', command);
  writeFileSync(
    join(top, 'tall.pcbuild.yaml'),
    'format: 1\nbuild: A\nparts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm }\n',
  );
  writeFileSync(join(top, 'plain.pcbuild.yaml'), 'format: 1\nbuild: B\n');
  writeFileSync(join(top, 'nested.pcbuild.yaml'), '['.repeat(100_000));
});
afterAll(() => rmSync(top, { recursive: true, force: true }));

function run(words: string[], env: Record<string, string> = {}) {
  const { status, signal, stdout, stderr } = spawnSync(process.execPath, [command, ...words], {
    cwd: top,
    encoding: 'utf8',
    timeout: 30_000,
    env: { PATH: process.env.PATH, ...env },
  });
  return { status, signal, out: stdout, err: stderr };
}

describe('the process', () => {
  it.each([
    [['check', 'plain.pcbuild.yaml'], 0],
    [['check', 'tall.pcbuild.yaml'], 1],
    [['check', 'nowhere'], 2],
    [['check', 'nested.pcbuild.yaml'], 1],
    [['explain', 'nothing'], 2],
    [['--help'], 0],
  ] as const)('ends %j with %i, by no signal and without a stack trace', (words, status) => {
    const ran = run([...words]);
    expect({ status: ran.status, signal: ran.signal }).toEqual({ status, signal: null });
    expect(ran.err).not.toMatch(/\n\s+at /);
  });

  it('gives the same whatever the locale, the time zone and the width of the terminal', () => {
    const plain = run(['check', 'tall.pcbuild.yaml', '--working']);
    expect(
      run(['check', 'tall.pcbuild.yaml', '--working'], {
        LC_ALL: 'tr_TR.UTF-8',
        TZ: 'Pacific/Kiritimati',
        COLUMNS: '40',
      }),
    ).toEqual(plain);
  });

  it('colours on request only, and never against NO_COLOR', () => {
    expect(run(['check']).out).not.toContain('\x1b');
    expect(run(['check'], { FORCE_COLOR: '1' }).out).toContain('\x1b[');
    expect(run(['check'], { FORCE_COLOR: '1', NO_COLOR: '1' }).out).not.toContain('\x1b');
  });

  it('writes a file whole and nothing beside it', () => {
    const before = readdirSync(top);
    const ran = run(['check', 'tall.pcbuild.yaml', '--format', 'json', '--output', 'out.json'], { FORCE_COLOR: '1' });
    expect([ran.status, ran.out]).toEqual([1, '']);
    expect((JSON.parse(readFileSync(join(top, 'out.json'), 'utf8')) as { version: number }).version).toBe(1);
    expect(readdirSync(top).sort()).toEqual([...before, 'out.json'].sort());
    expect(run(['check', '--output', 'none/out.json']).status).toBe(2);
  });

  it.skipIf(process.platform === 'win32')('ends quietly when its reader closes early', () => {
    const { status, stderr } = spawnSync('sh', ['-c', `"${process.execPath}" "${command}" explain | head -n 1`], {
      cwd: top,
      encoding: 'utf8',
      timeout: 30_000,
    });
    expect([status, stderr]).toEqual([0, '']);
  });
});

describe('a run that lasts', () => {
  it.skipIf(process.platform === 'win32')(
    'watches until it is interrupted, and ends with the status of the files as they stand then',
    async () => {
      const folder = mkdtempSync(join(top, 'watched-'));
      const file = join(folder, 'desk.pcbuild.yaml');
      const desk = (height: number): string =>
        `format: 1\nbuild: A\nparts:\n  cooler: { height: ${height} mm }\n  case: { cooler-height: 155 mm }\n`;
      writeFileSync(file, desk(150));
      const watching = spawn(process.execPath, [command, 'check', '--watch'], { cwd: folder });
      let [out, err] = ['', ''];
      watching.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
      watching.stdout.setEncoding('utf8').on('data', (text: string) => {
        const before = out;
        out += text;
        if (!before.includes('1 build:') && out.includes('1 build:')) writeFileSync(file, desk(158));
        if (out.lastIndexOf('1 build:') > out.indexOf('cooler-too-tall') && out.includes('cooler-too-tall'))
          watching.kill('SIGINT');
      });
      const [status, signal] = (await once(watching, 'exit')) as [number | null, string | null];
      expect({ status, signal, err }).toEqual({ status: 1, signal: null, err: '' });
      expect(out).toContain('changed: desk.pcbuild.yaml\n');
    },
  );

  it('reads standard input to its end', () => {
    const { status, stdout } = spawnSync(process.execPath, [command, 'check', '--stdin', '--as', 'new.pcbuild.yaml'], {
      cwd: top,
      encoding: 'utf8',
      input: 'format: 1\nbuild: N\nparts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm }\n',
    });
    expect(status).toBe(1);
    expect(stdout).toContain('new.pcbuild.yaml:4');
  });
});
