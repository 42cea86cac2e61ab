// Names that stay below a root, and both hosts giving the same answers.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, posix, win32 } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nameBelow, pathFrom, splitPath, staysBelow, type Host } from '../../server/src/host/host';
import { MemoryHost } from '../support/memory-host';
import { NodeHost } from '../../server/src/host/node';
import { walk } from '../../server/src/session/walk';

const files: Record<string, string> = {
  'a.pcbuild.yaml': 'build: A\n',
  'notes.md': '',
  'parts/x/y.part.yaml': 'kind: case\n',
  '.git/b.pcbuild.yaml': '',
  'one/fettle.yaml': '',
  'one/b.pcbuild.yaml': '',
  'one/deep/c.pcbuild.yaml': '',
  'node_modules/z/d.pcbuild.yaml': '',
};

describe('staysBelow', () => {
  it.each(['norrvik/b7-forge', 'parts', 'a b/c', 'constructor', '__proto__/x'])('takes %s', (name) =>
    expect(staysBelow(name)).toBe(true),
  );
  it.each(['', '/', '/etc', 'a//b', 'a/', '..', '../a', 'a/../b', './a', '.a', 'a/.b', 'a\\b', 'c:a', 'a\0b', 'a\nb'])(
    'refuses %j',
    (name) => expect(staysBelow(name)).toBe(false),
  );

  it('never lets a path leave its root', () => {
    const step = fc.oneof(fc.constantFrom('..', '.', '', 'a', '.a', '...', '..a'), fc.string());
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 5 }), (steps) => {
        const name = steps.join('/');
        if (staysBelow(name)) expect(join('/root', name).startsWith('/root/')).toBe(true);
      }),
    );
  });
});

describe('paths', () => {
  const steps = fc.array(fc.constantFrom('a', 'b', 'c.yaml'), { minLength: 1, maxLength: 4 });

  it('are seen from a folder as Node sees them', () =>
    fc.assert(
      fc.property(fc.array(fc.constantFrom('a', 'b'), { maxLength: 3 }), steps, (folder, file) => {
        fc.pre(!folder.join('/').startsWith(file.join('/')));
        const seen = posix.relative(`/${folder.join('/')}`, `/${file.join('/')}`);
        expect(pathFrom(folder.join('/'), file.join('/'))).toBe(seen);
      }),
    ));

  it.each([
    ['/a/b', '/a/b/c', 'c'],
    ['/a/b/', '/a/b/c/d', 'c/d'],
    ['/', '/a', 'a'],
    ['', 'a/b', 'a/b'],
    ['C:\\a', 'C:\\a\\b\\c', 'b/c'],
    ['/a', '/a', ''],
    ['/a', '/ab', undefined],
    ['/a/b', '/a', undefined],
  ])('below %j, %j is %j', (folder, path, name) => expect(nameBelow(folder, path)).toBe(name));

  it.each(['/a', '/a/b', 'a', 'a/b', '../a', './a'])('%s is split as Node splits it', (path) =>
    expect(splitPath(path)).toEqual([posix.dirname(path), posix.basename(path)]),
  );
  it.each(['C:\\a\\b', 'a\\b'])('%s is split as Node splits it under Windows', (path) =>
    expect(splitPath(path)).toEqual([win32.dirname(path), win32.basename(path)]),
  );
});

describe('hosts', () => {
  let top: string;
  beforeAll(() => {
    top = mkdtempSync(join(tmpdir(), 'fettle-hosts-'));
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(top, name)), { recursive: true });
      writeFileSync(join(top, name), text);
    }
  });
  afterAll(() => rmSync(top, { recursive: true, force: true }));

  const both = (): [Host, Host] => [new NodeHost(top), new MemoryHost(Object.entries(files))];

  it.each(['.', 'one', 'one/deep', 'a.pcbuild.yaml', 'one/deep/c.pcbuild.yaml', 'nowhere', 'notes.md'])(
    'find and walk %s alike',
    async (path) => {
      const [real, memory] = await Promise.all(
        both().map(async (host) => {
          const { files: found, troubles } = await walk(host, [path]);
          return {
            found: found.map(({ root, name, kind, named }) => ({ at: host.shown(root, name), name, kind, named })),
            troubles,
          };
        }),
      );
      expect(real).toEqual(memory);
    },
  );

  it('make a folder with house settings a root of its own', async () => {
    const [, memory] = both();
    const { files: found } = await walk(memory, ['.']);
    expect(found.map(({ root, name }) => `${root}|${name}`)).toEqual([
      '|a.pcbuild.yaml',
      '|notes.md',
      'one|b.pcbuild.yaml',
      'one|deep/c.pcbuild.yaml',
      'one|fettle.yaml',
      '|parts/x/y.part.yaml',
    ]);
  });

  it('read alike, and say undefined for what is not there', async () => {
    for (const host of both()) {
      const found = await host.find('.');
      const root = 'root' in found ? found.root : '';
      expect(await host.read(root, 'a.pcbuild.yaml')).toBe('build: A\n');
      expect(await host.read(root, 'none/b.part.yaml')).toBeUndefined();
      expect(await host.read(root, 'a.pcbuild.yaml/b')).toBeUndefined();
    }
  });
});
