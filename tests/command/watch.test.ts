// `fettle check --watch`: only what a change touches is judged again, and the end says how everything stands.
import { mkdtempSync, rmSync, unlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { openWatcher } from '../../server/src/host/watcher';
import { fettle, fettleWatching } from '../support/command';
import { MemoryHost } from '../support/memory-host';

const build = (name: string, cooler: string): string =>
  `format: 1\nbuild: ${name}\nparts:\n  cooler: ${cooler}\n  case: { cooler-height: 160 mm }\n`;
const tower = 'parts/boreas/tower.part.yaml';
const files = {
  'fettle.yaml': 'format: 1\n',
  [tower]: 'kind: cooler\nheight: 155 mm\n',
  'desk.pcbuild.yaml': build('Desk', '{ use: boreas/tower }'),
  'other.pcbuild.yaml': build('Other', '{ height: 150 mm }'),
};
const fresh = (): MemoryHost => new MemoryHost(Object.entries(files));

/** What each round wrote, the first without its heading. */
const rounds = (out: string): string[] => out.split(/^changed: /m);

describe('--watch', () => {
  it('begins as a plain check, and ends with the status of the files as they stand then', async () => {
    const host = fresh();
    const plain = await fettle(files, 'check');
    expect(await fettleWatching(host, [], 'check', '--watch')).toMatchObject({ status: 0 });
    const tall = await fettleWatching(
      host,
      [() => host.write(tower, 'kind: cooler\nheight: 172 mm\n')],
      'check',
      '--watch',
    );
    expect(tall.status).toBe(1);
    expect(rounds(tall.out)[0]!.split('\n').at(-2)).toBe(plain.out.split('\n').at(-2));
    const mended = await fettleWatching(host, [() => host.write(tower, files[tower]!)], 'check', '--watch');
    expect(mended.status).toBe(0);
  });

  it('judges again what changed and what rests on it, and nothing else', async () => {
    const host = fresh();
    const steps = [
      () => host.write(tower, 'kind: cooler\nheight: 172 mm\n'),
      () => host.write('other.pcbuild.yaml', build('Other', '{ height: 151 mm }')),
    ];
    const [, second, third] = rounds((await fettleWatching(host, steps, 'check', '--watch')).out);
    expect(second).toContain('cooler-too-tall');
    expect(second).not.toMatch(/^other/m);
    expect(third).toMatch(/^other\.pcbuild\.yaml/);
    expect(third).not.toContain('cooler-too-tall');
    // The last line is of all files.
    expect(third).toMatch(/2 builds: 1 stop, 1 /);
  });

  it('says the same at the end as a check that begins there, through removed and half-written files', async () => {
    const changes: [string, string | undefined][] = [
      [tower, undefined],
      ['desk.pcbuild.yaml', 'format: 1\nbuild: Desk\nparts: {'],
      ['new.pcbuild.yaml', build('New', '{ use: boreas/tower }')],
      [tower, 'kind: cooler\nheight: 172 mm\n'],
      ['desk.pcbuild.yaml', files['desk.pcbuild.yaml']],
      ['other.pcbuild.yaml', undefined],
      ['fettle.yaml', 'format: 1\nmargins: { clearance: 5 mm }\n'],
      ['new.pcbuild.yaml', ''],
    ];
    const make = (host: MemoryHost, [path, text]: (typeof changes)[number]): string[] =>
      text === undefined ? host.remove(path) : host.write(path, text);
    for (let count = 1; count <= changes.length; count++) {
      const [now, there] = [fresh(), fresh()];
      for (const change of changes.slice(0, count)) make(now, change);
      const steps = changes.slice(0, count).map((change) => () => make(there, change));
      const watched = await fettleWatching(there, steps, 'check', '--watch', '.');
      const plain = await fettle(now, 'check', '.');
      const closing = (out: string): string => out.slice(Math.max(0, out.lastIndexOf('Findings:')));
      expect({ count, status: watched.status }).toEqual({ count, status: plain.status });
      expect(closing(watched.out).split('\n').at(-2), `${count}`).toBe(closing(plain.out).split('\n').at(-2));
    }
  });

  it('watches the files that a named build rests on', async () => {
    const { added } = await fettleWatching(fresh(), [], 'check', '--watch', 'desk.pcbuild.yaml');
    expect(added).toEqual(expect.arrayContaining([tower, 'fettle.yaml']));
  });

  it('goes with no option that writes elsewhere', async () => {
    for (const more of [['--format', 'json'], ['--output', 'a'], ['--mend'], ['--stdin', '--as', 'a.pcbuild.yaml']])
      expect(await fettle(files, 'check', '--watch', ...more)).toMatchObject({ status: 2, out: '' });
  });
});

describe('watching this machine', () => {
  const top = mkdtempSync(join(tmpdir(), 'fettle-watch-'));
  afterAll(() => rmSync(top, { recursive: true, force: true }));

  it('tells of our files alone, those that come, change and go, and ends when asked', async () => {
    writeFileSync(join(top, 'a.pcbuild.yaml'), 'format: 1\n');
    const watcher = await openWatcher(top, ['.']);
    const seen = new Set<string>();
    writeFileSync(join(top, 'notes.txt'), 'x');
    writeFileSync(join(top, 'a.pcbuild.yaml'), 'format: 1\nbuild: A\n');
    writeFileSync(join(top, 'b.pcbuild.yaml'), 'format: 1\n');
    while (seen.size < 2) for (const path of (await watcher.next())!) seen.add(path);
    expect([...seen].sort()).toEqual([join(top, 'a.pcbuild.yaml'), join(top, 'b.pcbuild.yaml')]);
    unlinkSync(join(top, 'b.pcbuild.yaml'));
    expect(await watcher.next()).toEqual([join(top, 'b.pcbuild.yaml')]);
    process.emit('SIGINT');
    expect(await watcher.next()).toBeUndefined();
    await watcher.close();
  });
});
