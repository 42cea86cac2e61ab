// A part file or settings named alone: the builds of the workspace that use them are checked with them.
import { describe, expect, it } from 'vitest';
import { MemoryHost } from '../support/memory-host';
import { fettle } from '../support/command';

const build = (cooler: string, more = ''): string =>
  `format: 1\nbuild: Bench\nparts:\n  cooler: { use: ${cooler} }\n  case: { use: tarn/mid-3 }\n${more}`;

const files: Record<string, string> = {
  'fettle.yaml': 'format: 1\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 150 mm\n',
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\n',
  'parts/boreas/low-48.part.yaml': 'kind: cooler\nheight: 48 mm\n',
  'tall.pcbuild.yaml': build('boreas/tower-155'),
  'benches/low.pcbuild.yaml': build('boreas/low-48'),
  'escaped.pcbuild.yaml': build('"boreas\\u002ftower-155"'),
  'other/fettle.yaml': 'format: 1\n',
  'other/tall.pcbuild.yaml': build('boreas/tower-155'),
};

const checked = async (...words: string[]): Promise<{ files: string[]; status: number }> => {
  const { out, status } = await fettle(files, 'check', '--format', 'json', ...words);
  return { files: (JSON.parse(out) as { files: { file: string }[] }).files.map(({ file }) => file), status };
};

const tower = 'parts/boreas/tower-155.part.yaml';

describe('a part file named alone', () => {
  it('is checked with the builds of its workspace that use it', async () => {
    expect(await checked(tower)).toEqual({ files: ['escaped.pcbuild.yaml', tower, 'tall.pcbuild.yaml'], status: 1 });
    const { out } = await fettle(files, 'check', tower);
    expect(out).toContain('cooler-too-tall');
    expect(out).toContain('2 files go with what was named, and are checked with it; --alone leaves them out.');
    expect((await fettle(files, 'check', '.')).out).not.toContain('what was named');
  });

  it('is checked without them on request', async () => {
    expect(await checked('--alone', tower)).toEqual({ files: [tower], status: 0 });
  });

  it('without users is checked by itself', async () => {
    const more = { ...files, 'parts/boreas/spare.part.yaml': 'kind: cooler\nheight: 60 mm\n' };
    const { out, status } = await fettle(more, 'check', '--format', 'json', 'parts/boreas/spare.part.yaml');
    expect([(JSON.parse(out) as { files: unknown[] }).files.length, status]).toEqual([1, 0]);
  });

  it('that cannot be read fails the run, and so does a build that cannot', async () => {
    const denied = { trouble: 'may not be read: the system denies it.' };
    const host = (name: string): MemoryHost => new MemoryHost([...Object.entries(files), [name, denied]]);
    for (const name of [tower, 'benches/low.pcbuild.yaml']) {
      const { status, err } = await fettle(host(name), 'check', tower);
      expect([status, err]).toEqual([2, `fettle: ${name}: may not be read: the system denies it.\n`]);
    }
  });
});

it('settings named alone are checked with the builds under them', async () => {
  expect((await checked('fettle.yaml')).files).toEqual([
    'benches/low.pcbuild.yaml',
    'escaped.pcbuild.yaml',
    'fettle.yaml',
    'tall.pcbuild.yaml',
  ]);
  expect((await checked('--alone', 'fettle.yaml')).files).toEqual(['fettle.yaml']);
});

it('a build named alone is checked without the files it is made of on request', async () => {
  expect((await checked('--alone', 'tall.pcbuild.yaml')).files).toEqual(['tall.pcbuild.yaml']);
  expect((await checked('tall.pcbuild.yaml')).files).toHaveLength(4);
});

describe('a build named alone', () => {
  const guide = (build: string): string =>
    `---\nbuild: ${build}\n---\nIt has <!-- fettle: memory.capacity -->1 GB<!-- /fettle -->.\n`;
  const plain = 'format: 1\nbuild: Bench\nparts:\n  memory: [{ capacity: 8 GB }]\n';
  const guides: Record<string, string> = {
    'fettle.yaml': 'format: 1\n',
    'memory.pcbuild.yaml': plain,
    'guides/memory.md': guide('../memory.pcbuild.yaml'),
    'guides/other.md': guide('../other.pcbuild.yaml'),
    'notes.md': 'memory.pcbuild.yaml is the first one.\n',
    'other/fettle.yaml': 'format: 1\n',
    'other/memory.md': guide('memory.pcbuild.yaml'),
  };
  const named = async (of: Record<string, string>, ...words: string[]): Promise<string[]> =>
    (JSON.parse((await fettle(of, 'check', '--format', 'json', ...words)).out) as { files: { file: string }[] }).files
      .map(({ file }) => file)
      .filter((file) => !file.endsWith('fettle.yaml'));

  it('is checked with the guides of its workspace that name it', async () => {
    expect(await named(guides, 'memory.pcbuild.yaml')).toEqual(['guides/memory.md', 'memory.pcbuild.yaml']);
    expect((await fettle(guides, 'check', 'memory.pcbuild.yaml')).out).toContain('guide-value-stale');
    expect(await named(guides, '--alone', 'memory.pcbuild.yaml')).toEqual(['memory.pcbuild.yaml']);
  });

  it('outside of a workspace is checked with those beside it', async () => {
    const loose = {
      'a/memory.pcbuild.yaml': plain,
      'a/memory.md': guide('memory.pcbuild.yaml'),
      'a/b/m.md': guide('../memory.pcbuild.yaml'),
    };
    expect(await named(loose, 'a/memory.pcbuild.yaml')).toEqual(['a/memory.md', 'a/memory.pcbuild.yaml']);
  });
});

it('a guide named alone is checked with its build, and one whose build is not there by itself', async () => {
  const guided = {
    ...files,
    'guide.md': '---\nbuild: tall.pcbuild.yaml\n---\nText.\n',
    'lost.md': '---\nbuild: x.pcbuild.yaml\n---\n',
  };
  const named = async (...words: string[]): Promise<unknown> => {
    const { out, status } = await fettle(guided, 'check', '--format', 'json', ...words);
    return [(JSON.parse(out) as { files: { file: string }[] }).files.map(({ file }) => file), status];
  };
  expect(await named('guide.md')).toEqual([['guide.md', 'tall.pcbuild.yaml'], 1]);
  expect(await named('--alone', 'guide.md')).toEqual([['guide.md'], 0]);
  expect(((await named('lost.md')) as [string[]])[0]).toEqual(['lost.md']);
});
