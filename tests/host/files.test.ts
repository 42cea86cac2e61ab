// The command over real files: links, pipes, devices, bytes that are no text, folders full of other things.
import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { NodeHost } from '../../server/src/host/node';
import { fileSink } from '../../server/src/host/output';
import { fettle, type Ran } from '../support/command';
import { busyFactor, cpuMsOf } from '../support/cpu';

const posix = process.platform !== 'win32';
const isRoot = process.getuid?.() === 0;
let top: string;
let here: string;

beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'fettle-files-'));
  here = join(top, 'workspace');
  mkdirSync(here);
});
afterEach(() => rmSync(top, { recursive: true, force: true }));

function write(name: string, text: string | Uint8Array): string {
  const path = join(here, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  return path;
}

const check = (...words: string[]): Promise<Ran> => fettle(new NodeHost(here), 'check', ...words);

const tall = 'format: 1\nbuild: A\nparts:\n  cooler: { use: boreas/tower }\n  case: { cooler-height: 155 mm }\n';
const tower = 'kind: cooler\nheight: 158 mm\n';

describe('reading', () => {
  it('finds parts by their path alone and gives paths from the current folder', async () => {
    write('fettle.yaml', 'format: 1\n');
    write('benches/desk.pcbuild.yaml', tall);
    write('parts/boreas/tower.part.yaml', tower);
    const { out, status } = await check();
    expect(status).toBe(1);
    expect(out).toContain('benches/desk.pcbuild.yaml:4   parts.cooler');
    expect((await fettle(new NodeHost(join(here, 'benches')), 'check')).out).toContain(
      '  desk.pcbuild.yaml:4   parts.cooler',
    );
    expect((await fettle(new NodeHost(top), 'check', 'workspace')).out).toContain(
      'workspace/benches/desk.pcbuild.yaml:4',
    );
  });

  it('gives the same findings with a byte order mark, and at the same places', async () => {
    write('parts/boreas/tower.part.yaml', tower);
    write('a.pcbuild.yaml', tall);
    const plain = await check();
    write('a.pcbuild.yaml', `\ufeff${tall}`);
    expect(await check()).toEqual(plain);
  });

  it.each([
    ['zero bytes', Buffer.from('build: \0\n'), 'holds zero bytes, so it is no text.'],
    ['Latin-1', Buffer.from([0x62, 0x3a, 0x20, 0xb5]), 'is not text in UTF-8.'],
    ['UTF-16', Buffer.from('\ufeffbuild: A\n', 'utf16le'), 'is written in UTF-16; save it as UTF-8.'],
    [
      'a file past the limit',
      Buffer.alloc(2_000_001, 0x20),
      'is larger than 2 000 000 bytes, so it is not read; split it.',
    ],
  ])('refuses %s in plain words', async (_, bytes, why) => {
    write('a.pcbuild.yaml', bytes);
    const { status, err } = await check();
    expect([status, err]).toEqual([2, `fettle: a.pcbuild.yaml: ${why}\n`]);
  });

  it('ends within two seconds on 10,000 files that are none of ours, and says so', async () => {
    for (let i = 0; i < 10_000; i++) writeFileSync(join(here, `photo-${i}.jpg`), '');
    let ran: Ran | undefined;
    expect(await cpuMsOf(async () => (ran = await check()))).toBeLessThan(2_000 * busyFactor);
    expect([ran?.status, ran?.err]).toEqual([
      2,
      'fettle: .: there are no builds here; a build is a file whose name ends in .pcbuild.yaml.\n',
    ]);
  });

  it('stops at folders that lie too deep, and says so', async () => {
    write(`${'d/'.repeat(70)}a.pcbuild.yaml`, tall);
    const { status, err } = await check();
    expect(status).toBe(2);
    expect(err).toMatch(/^fettle: (d\/)+d: lies more than 64 folders deep, so it is not looked into\.\n$/);
  });
});

describe('the root of a file', () => {
  const strict = 'format: 1\nmargins: { clearance: 10 mm }\n';

  it('is looked for no higher than the repository’s own root', async () => {
    writeFileSync(join(top, 'fettle.yaml'), strict);
    mkdirSync(join(top, 'parts/boreas'), { recursive: true });
    writeFileSync(join(top, 'parts/boreas/tower.part.yaml'), tower);
    write('a.pcbuild.yaml', tall);
    expect((await check('a.pcbuild.yaml')).out).toContain('158 mm');
    mkdirSync(join(here, '.git'));
    const { out } = await check('a.pcbuild.yaml');
    expect(out).not.toContain('158 mm');
    expect(out).toContain('part-not-found');
  });

  it.skipIf(!isRoot)('is no folder of someone else, nor one where everyone may put files', async () => {
    writeFileSync(join(top, 'fettle.yaml'), 'format: 1\nparts: [shelf]\n');
    write('a.pcbuild.yaml', tall);
    const rootOf = (): unknown => new NodeHost(here).find('a.pcbuild.yaml');
    expect(rootOf()).toMatchObject({ root: top });
    chownSync(top, 12345, 12345);
    expect(rootOf()).toMatchObject({ root: here });
    chownSync(top, 0, 0);
    chmodSync(top, 0o1777);
    expect(rootOf()).toMatchObject({ root: here });
  });

  it('is the folder that holds its parts folder, whether it is opened alone or from above', async () => {
    write('bench/a.pcbuild.yaml', tall);
    write('bench/deep/b.pcbuild.yaml', tall);
    write('bench/parts/boreas/tower.part.yaml', tower);
    const bare = ({ out, status }: Ran): unknown => [out.replaceAll('bench/', ''), status];
    const alone = await fettle(new NodeHost(join(here, 'bench')), 'check');
    expect(alone.out).toContain('158 mm');
    expect(bare(await check())).toEqual(bare(alone));
    expect(bare(await check('bench'))).toEqual(bare(alone));
    const deep = await fettle(new NodeHost(join(here, 'bench/deep')), 'check', 'b.pcbuild.yaml');
    expect(deep.out).toContain('158 mm');
  });
});

it('a very long path is cut in what is said of it', async () => {
  const { err, status } = await check(`${'d/'.repeat(5_000)}a.pcbuild.yaml`);
  expect([status, err.length < 400]).toEqual([2, true]);
  expect(err).toMatch(/^fettle: (d\/)+ … [d/]+a\.pcbuild\.yaml \(10014 characters\): .*\n$/);
  const other = await fettle(new NodeHost(here), 'missing', `${'d'.repeat(5_000)}.pcbuild.yaml`);
  expect([other.status, other.err.length < 400]).toEqual([2, true]);
});

describe.skipIf(!posix)('what leads elsewhere', () => {
  beforeEach(() => {
    mkdirSync(join(top, 'secret/boreas'), { recursive: true });
    writeFileSync(join(top, 'secret/boreas/tower.part.yaml'), tower);
    writeFileSync(join(top, 'secret/b.pcbuild.yaml'), tall);
  });

  it('reads no build through a link out of the workspace', async () => {
    symlinkSync(join(top, 'secret/b.pcbuild.yaml'), join(here, 'b.pcbuild.yaml'));
    const { status, out, err } = await check();
    expect([status, out, err]).toEqual([
      2,
      '',
      'fettle: b.pcbuild.yaml: leads out of the workspace, so it is not read.\n',
    ]);
  });

  it('reads no part through a linked folder or file, and no house settings', async () => {
    write('a.pcbuild.yaml', tall);
    symlinkSync(join(top, 'secret'), join(here, 'parts'));
    const folder = await check();
    expect(folder.err).toBe('fettle: parts/boreas/tower.part.yaml: leads out of the workspace, so it is not read.\n');
    expect(folder.out).not.toContain('158 mm');
    rmSync(join(here, 'parts'));
    mkdirSync(join(here, 'parts/boreas'), { recursive: true });
    symlinkSync(join(top, 'secret/boreas/tower.part.yaml'), join(here, 'parts/boreas/tower.part.yaml'));
    expect((await check('a.pcbuild.yaml')).out).not.toContain('158 mm');
    writeFileSync(join(top, 'secret/fettle.yaml'), 'parts: [elsewhere]\n');
    symlinkSync(join(top, 'secret/fettle.yaml'), join(here, 'fettle.yaml'));
    expect((await check('a.pcbuild.yaml')).err).toContain(
      'fettle: fettle.yaml: leads out of the workspace, so it is not read.\n',
    );
  });

  it('lists no folder through a link out of the workspace', async () => {
    write('fettle.yaml', 'format: 1\n');
    write('a.pcbuild.yaml', tall);
    symlinkSync('/', join(here, 'parts'));
    const host = new NodeHost(here);
    expect(host.list(here, 'parts')).toEqual({ trouble: 'leads out of the workspace, so it is not read.' });
    expect(host.list(here, 'parts/etc')).toEqual({ trouble: 'leads out of the workspace, so it is not read.' });
    const { err, status } = await fettle(host, 'swap', 'a.pcbuild.yaml', 'cooler');
    expect(status).toBe(2);
    expect(err).toContain('fettle: parts: leads out of the workspace, so it is not read.\n');
  });

  it('follows a link that stays inside', async () => {
    write('a.pcbuild.yaml', tall);
    write('shelf/boreas/tower.part.yaml', tower);
    symlinkSync('shelf', join(here, 'parts'));
    expect((await check('a.pcbuild.yaml')).out).toContain('158 mm');
  });

  it.each(['../secret/boreas/tower', '/etc/x', 'boreas/../../secret/boreas/tower', '.hidden/x', 'a\\b/c', 'c:/x'])(
    'looks up no part named %s',
    async (name) => {
      const asked: string[] = [];
      const host = new NodeHost(here);
      const read = host.read.bind(host);
      host.read = (root, path) => {
        asked.push(path);
        return read(root, path);
      };
      write('a.pcbuild.yaml', `format: 1\nbuild: A\nparts:\n  cooler: { use: "${name.replaceAll('\\', '\\\\')}" }\n`);
      const { status } = await fettle(host, 'check', 'a.pcbuild.yaml');
      expect([0, 1]).toContain(status);
      // The name that such a path may mean is looked up for a fix, as any part below the parts folder.
      const own = ['a.pcbuild.yaml', 'a.asbuilt.yaml', 'fettle.yaml'];
      const others = asked.filter((path) => !own.includes(path));
      for (const path of others) expect(path).toMatch(/^parts\/(?:[a-z]+\/)+[a-z]+\.part\.yaml$/);
      expect(others.some((path) => /\.\.|\\|:|^\//.test(path))).toBe(false);
    },
  );

  it('opens no pipe and no device', async () => {
    execFileSync('mkfifo', [join(here, 'a.pcbuild.yaml')]);
    const piped = await check();
    expect([piped.status, piped.err]).toEqual([
      2,
      'fettle: a.pcbuild.yaml: is no regular file, so it is not opened.\n',
    ]);
    const named = await check('a.pcbuild.yaml');
    expect([named.status, named.err]).toEqual([
      2,
      'fettle: a.pcbuild.yaml: is no regular file, so it is not opened.\n',
    ]);
    symlinkSync('/dev/zero', join(here, 'b.pcbuild.yaml'));
    expect((await check('b.pcbuild.yaml')).status).toBe(2);
  });

  it('ends on links that lead in circles', async () => {
    symlinkSync('b.pcbuild.yaml', join(here, 'a.pcbuild.yaml'));
    symlinkSync('a.pcbuild.yaml', join(here, 'b.pcbuild.yaml'));
    symlinkSync('.', join(here, 'round'));
    const { status, err } = await check();
    expect(status).toBe(2);
    expect(err).toContain('fettle: a.pcbuild.yaml: is a link that leads back to itself.\n');
  });

  it.skipIf(isRoot)('says that a folder or file may not be read', async () => {
    chmodSync(write('a.pcbuild.yaml', tall), 0);
    expect((await check()).err).toContain('fettle: a.pcbuild.yaml: may not be read: the system denies it.\n');
  });
});

describe('writing', () => {
  it('replaces a file whole, keeps its permissions and leaves nothing beside it', () => {
    const path = write('out.txt', 'before');
    chmodSync(path, 0o640);
    const sink = fileSink(here, 'out.txt');
    sink.write('after, ');
    sink.write('and more');
    expect(readFileSync(path, 'utf8')).toBe('before');
    sink.done();
    sink.drop();
    expect(readFileSync(path, 'utf8')).toBe('after, and more');
    if (posix) expect(statSync(path).mode & 0o777).toBe(0o640);
    expect(readdirSync(here)).toEqual(['out.txt']);
  });

  it('leaves what stood there when it is dropped', () => {
    const path = write('out.txt', 'before');
    const sink = fileSink(here, 'out.txt');
    sink.write('half');
    sink.drop();
    expect(readFileSync(path, 'utf8')).toBe('before');
    expect(readdirSync(here)).toEqual(['out.txt']);
  });

  it('clears away what a killed run left, and nothing that is written by another or by someone else', () => {
    const dead = spawnSync(process.execPath, ['-e', '']).pid;
    const running = process.ppid;
    const ours = [`.out.txt.${dead}.part`, `.out.txt.${process.pid}.part`];
    const others = [`.out.txt.${running}.part`, '.out.txt.notes.part', `.other.txt.${dead}.part`, 'out.txt.1.part'];
    for (const name of [...ours, ...others]) write(name, 'half');
    const sink = fileSink(here, 'out.txt');
    sink.write('whole');
    sink.done();
    expect(readdirSync(here).sort()).toEqual([...others, 'out.txt'].sort());
  });

  it('writes through no folder and into no device', () => {
    expect(() => fileSink(here, '.')).toThrow('it is no regular file');
    expect(() => fileSink(here, 'none/out.txt')).toThrow();
    expect(existsSync(join(here, 'none'))).toBe(false);
  });
});
