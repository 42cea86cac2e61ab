// One list of parts: what is listed is what is looked up, for completion, fixes and swaps, on every host.
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isPartName, partNameAt, partPath } from '../../server/src/core/parts/part-name';
import { staysBelow, type Host } from '../../server/src/host/host';
import { MemoryHost } from '../support/memory-host';
import { NodeHost } from '../../server/src/host/node';
import { Loader } from '../../server/src/session/loader';
import { PartIndex } from '../../server/src/session/part-index';
import type { RunTrouble } from '../../server/src/session/run-trouble';
import { fileRef } from '../../server/src/session/texts';
import { TestClient } from '../support/client';
import { today } from '../support/bench';
import { fettle } from '../support/command';

const cooler = 'kind: cooler\nheight: 155 mm\n';
const build = (use: string): string => `format: 1\nbuild: A\nparts:\n  cooler: { use: ${JSON.stringify(use)} }\n`;

async function listed(host: Host, root: string): Promise<{ names: string[]; told: RunTrouble[] }> {
  const loader = new Loader(() => today);
  const loaded = (await loader.load(fileRef(host, root, 'a.pcbuild.yaml')))!;
  const told: RunTrouble[] = [];
  const index = new PartIndex(loader.texts, { tell: (trouble) => void told.push(trouble) });
  return { names: (await index.ofKind(loaded, 'cooler')).map(({ name }) => name), told };
}

describe('names of parts', () => {
  it.each(['low', '', '.hidden/x', 'boreas/.x', 'boreas//x', 'boreas/a b', '../x/y', 'a\\b/c', 'c:/x', 'boreas/'])(
    'none is %j',
    (name) => expect([isPartName(name), partPath('parts', name)]).toEqual([false, undefined]),
  );

  it('lead to a path below the folder, and back', () => {
    const step = fc.oneof(fc.constantFrom('..', '.', '', 'a', '.a', 'x y', 'boreas'), fc.string());
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 4 }), (steps) => {
        const name = steps.join('/');
        const path = partPath('parts', name);
        expect(path !== undefined).toBe(isPartName(name));
        if (path === undefined) return;
        expect(staysBelow(path)).toBe(true);
        expect(partNameAt('parts', path)).toBe(name);
      }),
    );
  });
});

describe('every part that is listed is found by its name, and only such', () => {
  const files: Record<string, string> = {
    'fettle.yaml': 'format: 1\nparts: [parts, shelf]\n',
    'a.pcbuild.yaml': build('boreas/low-48'),
    'parts/low.part.yaml': cooler,
    'parts/boreas/low-48.part.yaml': cooler,
    'parts/boreas/a b.part.yaml': cooler,
    'parts/.hidden/x.part.yaml': cooler,
    'parts/boreas/.x.part.yaml': cooler,
    'parts/with blank/x.part.yaml': cooler,
    'parts/node_modules/x.part.yaml': cooler,
    'parts/constructor/__proto__.part.yaml': cooler,
    'shelf/boreas/low-48.part.yaml': cooler,
    'shelf/holm/deep/er/t.part.yaml': cooler,
  };
  const names = ['boreas/low-48', 'constructor/__proto__', 'holm/deep/er/t', 'node_modules/x'];

  it('in the list itself', async () => {
    expect((await listed(new MemoryHost(Object.entries(files)), '')).names).toEqual(names);
    for (const name of names)
      expect((await fettle({ ...files, 'a.pcbuild.yaml': build(name) }, 'check')).out).not.toContain('part-not-found');
    for (const name of ['low', 'boreas/a b', '.hidden/x', 'boreas/.x', 'with blank/x'])
      expect((await fettle({ ...files, 'a.pcbuild.yaml': build(name) }, 'check')).out).toContain('wrong-kind-of-value');
  });

  it('in what completion offers', async () => {
    const client = new TestClient(
      Object.fromEntries(Object.entries(files).map(([name, text]) => [`ws/${name}`, text])),
    );
    await client.start();
    await client.open('a.pcbuild.yaml');
    const { uri } = { uri: client.uri('a.pcbuild.yaml') };
    const position = client.at('a.pcbuild.yaml', 'boreas/low-48', 1);
    const offered: { items: { label: string }[] } = await client.connection.sendRequest('textDocument/completion', {
      textDocument: { uri },
      position,
    });
    expect(offered.items.map(({ label }) => label).sort()).toEqual(names);
    client.dispose();
  });

  it('in what is swapped in', async () => {
    const { out } = await fettle(files, 'swap', 'a.pcbuild.yaml', 'cooler', '--format', 'json');
    const { parts } = JSON.parse(out) as { parts: { name: string }[] };
    expect(parts.map(({ name }) => name).sort()).toEqual(names.slice(1));
  });
});

describe.skipIf(process.platform === 'win32')('links in parts folders', () => {
  let top: string;
  beforeEach(() => void (top = mkdtempSync(join(tmpdir(), 'fettle-parts-'))));
  afterEach(() => rmSync(top, { recursive: true, force: true }));
  const write = (name: string, text: string): void => {
    mkdirSync(dirname(join(top, name)), { recursive: true });
    writeFileSync(join(top, name), text);
  };

  it('are followed while they stay in the workspace, each folder once', async () => {
    write('ws/a.pcbuild.yaml', build('boreas/x'));
    write('ws/shelf/x.part.yaml', cooler);
    write('ws/parts/holm/y.part.yaml', cooler);
    write('secret/z.part.yaml', cooler);
    symlinkSync('../shelf', join(top, 'ws/parts/boreas'));
    symlinkSync('y.part.yaml', join(top, 'ws/parts/holm/also.part.yaml'));
    symlinkSync('..', join(top, 'ws/parts/holm/round'));
    symlinkSync(join(top, 'secret'), join(top, 'ws/parts/away'));
    symlinkSync(join(top, 'secret/z.part.yaml'), join(top, 'ws/parts/holm/z.part.yaml'));
    const host = new NodeHost(join(top, 'ws'));
    expect(await listed(host, join(top, 'ws'))).toEqual({ names: ['boreas/x', 'holm/also', 'holm/y'], told: [] });
    expect((await fettle(host, 'check', 'a.pcbuild.yaml')).out).not.toContain('part-not-found');
  });
});
