// What a change brings, of all that a check finds; and a change that is judged by the settings before it.
import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../server/src/review/comparison';
import { fettleAmong } from '../support/command';
import { MemoryHost } from '../support/memory-host';

const desk = (cooler: string): string =>
  `format: 1\nbuild: Desk\nparts:\n  cooler: { use: ${cooler} }\n  case: { use: tarn/mid-3 }\n`;

const base: Record<string, string> = {
  'fettle.yaml': 'format: 1\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 160 mm\n',
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\n',
  'parts/boreas/tower-168.part.yaml': 'kind: cooler\nheight: 168 mm\n',
  'desk.pcbuild.yaml': desk('boreas/tower-155'),
  'old.pcbuild.yaml': desk('boreas/tower-168'),
};
const tower = 'parts/boreas/tower-155.part.yaml';
const taller = { ...base, [tower]: 'kind: cooler\nheight: 172 mm\n' };

interface Checked {
  readonly files: readonly {
    readonly file: string;
    readonly findings: readonly { readonly id: string; readonly path: string }[];
  }[];
}
const found = ({ files }: Checked): string[] =>
  files.flatMap(({ file, findings }) => findings.map(({ id, path }) => `${file} ${id} ${path}`)).sort();
const checked = async (
  before: Record<string, string>,
  after: Record<string, string> | MemoryHost,
  ...words: string[]
): Promise<{ found: string[]; status: number; err: string }> => {
  const { out, status, err } = await fettleAmong({ main: before }, after, 'check', '--format', 'json', ...words);
  return { found: found(JSON.parse(out) as Checked), status, err };
};
const brought = async (before: Record<string, string>, after: Record<string, string>): Promise<string[]> => {
  const { out } = await fettleAmong({ main: before }, after, 'compare', 'main', '--format', 'json');
  const { files } = JSON.parse(out) as Comparison;
  return files
    .flatMap(({ file, findings }) =>
      findings.flatMap(({ kind, after: now }) =>
        kind === 'new' || kind === 'worse' ? [`${file} ${now!.id} ${now!.subject}`] : [],
      ),
    )
    .sort();
};

describe('--only-new', () => {
  const all = ['--only-new', 'main', '--from', 'unknown', '--accepted'];
  const changes: Record<string, Record<string, string>> = {
    'a part corrected': taller,
    nothing: base,
    'a worse finding': { ...base, 'parts/boreas/tower-168.part.yaml': 'kind: cooler\nheight: 190 mm\n' },
    'a better finding': { ...base, 'parts/boreas/tower-168.part.yaml': 'kind: cooler\nheight: 162 mm\n' },
    'a build added': { ...base, 'new.pcbuild.yaml': desk('boreas/tower-168').replace('Desk', 'New') },
    'a build moved': Object.fromEntries(
      Object.entries(base).map(([name, text]) => [
        name === 'old.pcbuild.yaml' ? 'benches/old.pcbuild.yaml' : name,
        text,
      ]),
    ),
    'a part file taken away': Object.fromEntries(Object.entries(base).filter(([name]) => name !== tower)),
    'a slip in settings': { ...base, 'fettle.yaml': 'format: 1\nmargin: 3\n' },
  };

  it.each(Object.entries(changes))('lists what the comparison calls new or worse: %s', async (_, after) => {
    const own = (await checked(base, after, ...all)).found;
    expect(own).toEqual(await brought(base, after));
  });

  it('ends green where what is found stood before, and red where it got worse', async () => {
    expect((await checked(base, base, '--only-new', 'main')).status).toBe(0);
    expect((await checked(base, base)).status).toBe(1);
    expect(await checked(base, changes['a worse finding']!, '--only-new', 'main')).toMatchObject({
      found: ['old.pcbuild.yaml cooler-too-tall parts.cooler'],
      status: 1,
    });
    expect((await checked(base, changes['a build moved']!, '--only-new', 'main')).status).toBe(0);
  });

  it('says how much stood before', async () => {
    const { out } = await fettleAmong({ main: base }, base, 'check', '--only-new', 'main');
    expect(out).toMatch(/\d+ findings stood before and are not listed\./);
  });

  it('never passes over what was not read', async () => {
    const broken = { ...base, 'desk.pcbuild.yaml': '[[[[{' };
    expect((await checked(broken, broken, '--only-new', 'main')).status).toBe(1);
    const denied = new MemoryHost([...Object.entries(base), ['desk.pcbuild.yaml', { trouble: 'may not be read.' }]]);
    expect((await checked(base, denied, '--only-new', 'main')).status).toBe(2);
  });

  it('ends in one line where there is no such revision', async () => {
    const { err, status } = await fettleAmong({}, base, 'check', '--only-new', 'nowhere');
    expect([err, status]).toEqual(['fettle: nowhere: names no commit of this repository.\n', 2]);
  });
});

describe('--settings-from', () => {
  const off = 'format: 1\ngrades: { cooler-too-tall: off }\n';

  it('lets a change switch nothing off', async () => {
    const after = { ...taller, 'fettle.yaml': off };
    expect((await checked(base, after)).found).not.toContain('desk.pcbuild.yaml cooler-too-tall parts.cooler');
    const kept = await checked(base, after, '--settings-from', 'main');
    expect(kept.found).toContain('desk.pcbuild.yaml cooler-too-tall parts.cooler');
    expect(kept.status).toBe(1);
  });

  it('holds against settings put nearer to a build', async () => {
    const inner = { ...base, 'benches/desk.pcbuild.yaml': desk('boreas/tower-168') };
    const after = { ...inner, 'benches/fettle.yaml': `${off}parts: [../parts]\n` };
    const kept = await checked(inner, after, '--settings-from', 'main');
    expect(kept.found).toContain('benches/desk.pcbuild.yaml cooler-too-tall parts.cooler');
  });

  it('lets what was switched off before stay off', async () => {
    const before = { ...base, 'fettle.yaml': off };
    const kept = await checked(before, taller, '--settings-from', 'main');
    expect(kept.found).not.toContain('desk.pcbuild.yaml cooler-too-tall parts.cooler');
  });

  it('checks the settings themselves as they lie here', async () => {
    const after = { ...base, 'fettle.yaml': 'format: 1\nmargin: 3\n' };
    expect((await checked(base, after, '--settings-from', 'main')).found.join()).toContain('fettle.yaml ');
  });
});
