// Judgements kept in a folder never change what a run says: whatever changed, whatever lies in the folder.
import { mkdirSync, mkdtempSync, readdirSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { isTrouble } from '../../server/src/host/host';
import { openStore } from '../../server/src/host/store';
import { Stretches } from '../../server/src/command/stretch';
import { fettle, type Ran } from '../support/command';
import { MemoryHost } from '../support/memory-host';

const tower = 'parts/boreas/t1.part.yaml';
const isKept = (name: string): boolean => name.startsWith('kept/');

function files(): Record<string, string> {
  const all: Record<string, string> = {
    'fettle.yaml': 'format: 1\nknown: [old.known.yaml]\n',
    'old.known.yaml':
      'format: 1\nfiles:\n  gone.pcbuild.yaml:\n    findings: [{ finding: cooler-too-tall, at: parts.cooler, by: lead, until: 2099-01-01 }]\n',
    [tower]: 'kind: cooler\nheight: 158 mm\nheigth: 1 mm\n',
    'parts/boreas/t3.part.yaml': 'kind: cooler\nheight: 150 mm\n',
    'a.md': '# A\n\n```pcbuild\nformat: 1\nbuild: In a guide\nparts:\n  case: { cooler-hight: 1 mm }\n```\n',
    'y.pcbuild.yaml': 'a: [',
  };
  for (let i = 0; i < 16; i++) {
    const cooler = i % 2 === 0 ? '{ use: boreas/t1 }' : `{ height: ${150 + i} mm }`;
    const slips = i % 3 === 0 ? '' : `cooler-hight: 1 mm, lenght: ${i} mm, `;
    all[`b${i}.pcbuild.yaml`] =
      `format: 1\nbuild: Desk ${i}\nparts:\n  cooler: ${cooler}\n  case: { ${slips}cooler-height: 155 mm }\n`;
  }
  return all;
}

/** A host whose files with what is kept stand beside each other. */
class Kept {
  readonly host = new MemoryHost(Object.entries(files()));

  /** Runs with what was kept, holds it against a run without, and says which files were judged. */
  async run(...words: string[]): Promise<string[]> {
    const judged = vi.spyOn(Stretches.prototype, 'piece');
    // A new one, which knows folders that came since.
    const host = new MemoryHost(this.host.all());
    const kept = await fettle(host, 'check', ...words, '--cache', 'kept');
    for (const [name, text] of host.all()) if (isKept(name)) this.host.write(name, text);
    const names = judged.mock.calls.map(([{ section }]) => section.doc.name);
    judged.mockRestore();
    expect(kept).toEqual(await this.without(words));
    return names;
  }

  private without(words: readonly string[]): Promise<Ran> {
    const plain = [...this.host.all()].filter(([name]) => !isKept(name));
    return fettle(new MemoryHost(plain), 'check', ...words);
  }

  packs(): string[] {
    return [...this.host.all().keys()].filter(isKept);
  }
}

describe('with what was kept, a run says what it says without', () => {
  it.each([['text'], ['json']] as const)('and judges little of what did not change, as %s', async (format) => {
    const kept = new Kept();
    const words = ['--format', format, '--from', 'unknown'];
    const all = await kept.run(...words);
    expect(all).toHaveLength(23);
    // A guide whose fixes were looked for, and a record of known findings.
    expect(await kept.run(...words)).toEqual(['a.md', 'a.md', 'old.known.yaml']);
  });

  it('whatever changes', async () => {
    const kept = new Kept();
    const { host } = kept;
    await kept.run();
    const steps: (() => unknown)[] = [
      () => host.write(tower, 'kind: cooler\nheight: 140 mm\n'),
      () => host.write('parts/boreas/t2.part.yaml', 'kind: cooler\nheight: 90 mm\n'),
      () => host.write('b7.pcbuild.yaml', 'format: 1\nbuild: B\nparts:\n  cooler: { use: boreas/t2 }\n'),
      () => host.write('b8.asbuilt.yaml', 'format: 1\nmachine: { board: { maker: Norrvik } }\n'),
      () => host.remove('parts/boreas/t2.part.yaml'),
      () => host.remove('b3.pcbuild.yaml'),
      () => host.write('zoo/fettle.yaml', files()['fettle.yaml']!),
      () => host.write('zoo/b1.pcbuild.yaml', files()['b1.pcbuild.yaml']!),
      // Now it lies below the root of the rest, where a file like it once stood as it did.
      () => [host.remove('zoo/fettle.yaml'), host.write('zoo/b1.pcbuild.yaml', 'format: 1\nbuild: Another\n')],
      () => host.write('fettle.yaml', 'format: 1\ngrades: { cooler-too-tall: note }\n'),
    ];
    for (const step of steps) {
      step();
      await kept.run();
    }
  });

  it('judges again what rests on a changed part alone, and what such a part may be tried in', async () => {
    const kept = new Kept();
    await kept.run('--from', 'harm');
    const none = await kept.run('--from', 'harm');
    kept.host.write(tower, 'kind: cooler\nheight: 158 mm\nheigth: 2 mm\n');
    const some = await kept.run('--from', 'harm');
    const users = Array.from({ length: 8 }, (_, i) => `b${2 * i}.pcbuild.yaml`);
    expect(new Set(some.filter((name) => !none.includes(name)))).toEqual(new Set([...users, tower, 'y.pcbuild.yaml']));
  });

  it('whatever is asked for', async () => {
    const kept = new Kept();
    for (const words of [
      [],
      ['--working'],
      ['--all-fixes'],
      ['--on', '2099-06-01'],
      ['--alone', 'b1.pcbuild.yaml'],
      ['b1.pcbuild.yaml', 'b2.pcbuild.yaml'],
      ['--language', 'de'],
      ['parts'],
      [],
    ])
      await kept.run(...words);
  });

  it('whatever lies in the folder', async () => {
    const kept = new Kept();
    await kept.run();
    const few = await kept.run();
    expect(few.length).toBeLessThan(6);
    const packs = new Map(kept.packs().map((name) => [name, kept.host.all().get(name)!]));
    const harms: ((text: string) => string)[] = [
      () => '',
      () => 'kind: cooler\n',
      (text) => text.slice(0, -100),
      (text) => text.replaceAll('shortfall', 'note'),
      (text) => text.split('\n').reverse().join('\n'),
    ];
    for (const harm of harms) {
      for (const [name, text] of packs) kept.host.write(name, harm(text));
      await kept.run();
      expect(await kept.run()).toHaveLength(few.length);
    }
  });
});

describe('the folder', () => {
  const top = realpathSync(mkdtempSync(join(tmpdir(), 'fettle-kept-')));
  afterAll(() => rmSync(top, { recursive: true, force: true }));

  it('is made where it is not there, and written whole', () => {
    const store = openStore(top, 'a/kept');
    if (isTrouble(store)) throw new Error(store.trouble);
    store.write('x.judged', 'one');
    store.write('x.judged', 'two');
    expect([store.read('x.judged'), store.read('y.judged')]).toEqual(['two', undefined]);
    expect(readdirSync(join(top, 'a/kept'))).toEqual(['x.judged']);
    symlinkSync(join(top, 'a/kept/x.judged'), join(top, 'a/kept/z.judged'));
    expect(store.read('z.judged')).toBe(undefined);
  });

  it('lies in no workspace or repository, whatever leads there', () => {
    mkdirSync(join(top, 'shop'));
    writeFileSync(join(top, 'shop/fettle.yaml'), '');
    symlinkSync(join(top, 'shop'), join(top, 'way'));
    for (const folder of ['shop', 'shop/new/kept', 'way/kept'])
      expect(openStore(top, folder)).toEqual({ trouble: expect.stringContaining('lies in a repository or workspace') });
    writeFileSync(join(top, 'file'), '');
    expect(openStore(top, 'file')).toEqual({ trouble: expect.stringContaining('cannot be used') });
  });

  it.each([['--shard', '1/2', '--format', 'json'], ['--format', 'sarif'], ['--mend'], ['--workers', '2']])(
    'is not used with %s',
    async (...words) => {
      const { status, err } = await fettle(files(), 'check', '--cache', 'kept', ...words);
      expect({ status, err }).toEqual({ status: 2, err: expect.stringContaining('--cache keeps') });
    },
  );
});
