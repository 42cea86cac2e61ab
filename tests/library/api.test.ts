// The library face: the same judgement as the command’s, as plain data, from a folder, a revision or texts.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as api from '../../server/src/api';
import type { Files } from '../../server/src/library/face';
import { today } from '../support/bench';
import { fettle } from '../support/command';

const samples = join(__dirname, '../../samples');
const texts = Object.fromEntries(
  readdirSync(samples, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.yaml'))
    .map((path) => [path, readFileSync(join(samples, path), 'utf8')]),
);
const on = today;

interface Checked {
  readonly files: readonly { readonly file: string; readonly findings: readonly object[] }[];
}

const desk = (cooler: string): Files => ({
  'fettle.yaml': 'format: 1\n',
  'desk.pcbuild.yaml': `format: 1\nbuild: Desk\nparts:\n  cooler: ${cooler}\n  case: { cooler-height: 160 mm }\n`,
});

describe('judging', () => {
  it('says of a folder what it says of its texts', async () => {
    const folder = await api.readWorkspace(samples);
    const memory = await api.readWorkspace(texts);
    expect(memory.builds).toEqual(folder.builds);
    expect(memory.parts).toEqual(folder.parts);
    const how = { on, fixes: 'none' } as const;
    const judged = await api.judgeBuild(folder, 'survey-desk.pcbuild.yaml', how);
    expect(await api.judgeBuild(memory, 'survey-desk.pcbuild.yaml', how)).toEqual(judged);
    expect(judged.findings.length).toBeGreaterThan(0);
  });

  it('says what the command says', async () => {
    const file = 'desk.pcbuild.yaml';
    const files = desk('{ hieght: 158 mm, height: 168 mm }') as Record<string, string>;
    const words = ['check', file, '--format', 'json', '--from', 'unknown', '--working', '--on', on];
    const checked = JSON.parse((await fettle(files, ...words)).out) as Checked;
    const own = checked.files.find((one) => one.file === file)!;
    expect(await api.judgeBuild(await api.readWorkspace(files), file, { on })).toMatchObject(own);
    expect(own.findings.length).toBeGreaterThan(0);
  });

  it('gives plain data, which JSON carries whole', async () => {
    const workspace = await api.readWorkspace(texts);
    for (const file of workspace.builds.slice(0, 2)) {
      const judged = await api.judgeBuild(workspace, file, { on, fixes: 'none' });
      expect(JSON.parse(JSON.stringify(judged))).toEqual(judged);
      for (const { id } of judged.findings) expect(judged.explained[id]?.what).toBeTypeOf('string');
    }
    expect(Object.keys(workspace)).toEqual(['builds', 'parts', 'notRead']);
  });

  it('gives working and proven fixes, unless they are not asked for', async () => {
    const workspace = await api.readWorkspace(desk('{ hieght: 158 mm }'));
    const judged = await api.judgeBuild(workspace, 'desk.pcbuild.yaml', { on });
    expect(judged.findings.find(({ id }) => id === 'unknown-key')?.fixes[0]).toMatchObject({
      file: 'desk.pcbuild.yaml',
      edits: [{ text: 'height' }],
      givesWay: false,
    });
    const plain = await api.judgeBuild(workspace, 'desk.pcbuild.yaml', { on, fixes: 'none', working: false });
    expect(plain.findings.flatMap(({ fixes, working = [] }) => [...fixes, ...working])).toEqual([]);
    const german = await api.judgeBuild(await api.readWorkspace(desk('{ height: 168 mm }')), 'desk.pcbuild.yaml', {
      on,
      language: 'de',
    });
    expect(german.findings.find(({ id }) => id === 'cooler-too-tall')?.message).toMatch(/Kühler/);
  });

  it('never takes what was not read for proven', async () => {
    const lost = await api.readWorkspace({ ...desk('{ use: a/b }'), 'parts/a/b.part.yaml': 'x'.repeat(2_000_001) });
    const { notRead } = await api.judgeBuild(lost, 'desk.pcbuild.yaml', { on });
    expect(notRead).toEqual([{ path: 'parts/a/b.part.yaml', trouble: expect.stringContaining('larger') as string }]);
  });
});

describe('comparing', () => {
  it('says what a change brings', async () => {
    const [before, after] = [
      await api.readWorkspace(desk('{ height: 155 mm }')),
      await api.readWorkspace(desk('{ height: 168 mm }')),
    ];
    const comparison = await api.compare(before, after, { on });
    const brought = comparison.files.flatMap(({ findings }) => findings.filter(({ kind }) => kind === 'new'));
    expect(brought.map(({ after: now }) => now?.id)).toContain('cooler-too-tall');
    expect(JSON.parse(JSON.stringify(comparison))).toEqual(comparison);
    expect((await api.compare(before, before, { on })).files).toEqual([]);
  });
});

describe('what a program gets wrong', () => {
  it('is an error that says what', async () => {
    const workspace = await api.readWorkspace(desk('{}'));
    await expect(api.readWorkspace(join(samples, 'nowhere'))).rejects.toThrow('there is no such file or folder');
    await expect(api.readWorkspace(join(samples, 'fettle.yaml'))).rejects.toThrow(/folder/);
    await expect(api.readWorkspace(samples, { revision: '--help' })).rejects.toThrow('--help');
    await expect(api.readWorkspace({}, { revision: 'main' })).rejects.toThrow('no revisions');
    await expect(api.readWorkspace({ '../a.pcbuild.yaml': '' })).rejects.toThrow('expected a path below');
    await expect(api.judgeBuild(workspace, 'other.pcbuild.yaml')).rejects.toThrow('no such build');
    await expect(api.judgeBuild(workspace, 'fettle.yaml')).rejects.toThrow('no such build');
    await expect(api.judgeBuild(workspace, 'desk.pcbuild.yaml', { on: '2026-02-30' })).rejects.toThrow('as 2027-06-30');
    const none = { builds: [], parts: [], notRead: [] };
    await expect(api.compare(none, workspace)).rejects.toThrow('as readWorkspace gives it');
  });
});

it('has types that name no file of their own', () => {
  for (const path of ['report/plain.ts', 'library/face.ts']) {
    const text = readFileSync(join(__dirname, '../../server/src', path), 'utf8');
    const from = [...text.matchAll(/\bfrom '([^']+)'|\bimport\(/g)].map(([, name]) => name);
    expect(from.every((name) => name === '../report/plain')).toBe(true);
  }
});
