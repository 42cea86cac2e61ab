// `fettle new`: what it writes checks without a finding; it writes over nothing, and leaves nothing half done.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { judgeFile } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import { kindNames } from '../../server/src/core/parts/kinds';
import { english } from '../../server/src/core/words/languages';
import { newPart } from '../../server/src/features/first-part';
import { createFiles } from '../../server/src/host/create';
import { fettle } from '../support/command';

describe('a first build', () => {
  it('stands beside settings and a parts folder, and checks without a finding above note', async () => {
    const { status, out, files } = await fettle({}, 'new', 'Tide desk');
    expect([...files.keys()]).toEqual(['Tide-desk.pcbuild.yaml', 'fettle.yaml', 'parts/example/tower.part.yaml']);
    expect(out).toContain('fettle check Tide-desk.pcbuild.yaml');
    expect(status).toBe(0);
    const judged = await fettle(Object.fromEntries(files), 'check');
    expect(judged.status).toBe(0);
    expect(judged.out).toMatch(/^(Findings: \d+ note|No findings)\. 1 build: 1 \w+\./m);
    expect((await fettle(Object.fromEntries(files), 'missing', 'Tide-desk.pcbuild.yaml')).status).toBe(1);
  });

  it('in a workspace stands alone', async () => {
    const workspace = { 'fettle.yaml': 'format: 1\n' };
    const { files } = await fettle(workspace, 'new', 'desk.pcbuild.yaml');
    expect([...files.keys()]).toEqual(['desk.pcbuild.yaml']);
    expect((await fettle({ ...workspace, ...Object.fromEntries(files) }, 'check')).status).toBe(0);
  });

  it.each(['true', '12', 'É 3'])('may be called %s', async (name) => {
    const { files } = await fettle({}, 'new', name);
    expect((await fettle(Object.fromEntries(files), 'check')).status).toBe(0);
  });

  it('is not written over another', async () => {
    const { status, err, files } = await fettle({ 'desk.pcbuild.yaml': 'format: 1\n' }, 'new', 'desk');
    expect(err).toMatch(/^fettle: desk\.pcbuild\.yaml: it stands there already/);
    expect(files.size).toBe(0);
    expect(status).toBe(2);
  });

  it.each(['../desk', 'a/b', '.desk', 'a\nb', ''])('is not called %j', async (name) => {
    const { status, files } = await fettle({}, 'new', name);
    expect(status).toBe(2);
    expect(files.size).toBe(0);
  });
});

describe('a part file', () => {
  const workspace = { 'fettle.yaml': 'format: 1\nparts: [shelf]\n' };

  it.each(kindNames)('of kind %s names facts to look up, states none, and is clean', async (kind) => {
    const { status, files, out } = await fettle(workspace, 'new', '--part', kind, 'holm/one');
    expect(status).toBe(0);
    expect([...files.keys()]).toEqual(['shelf/holm/one.part.yaml']);
    expect(out).toContain('use: holm/one');
    const text = files.get('shelf/holm/one.part.yaml')!;
    expect(
      text.split('\n').every((line) => line.length <= 120 && /^(#.*|kind: \w+|[\w -]+: *(#.*)?|)$/.test(line)),
    ).toBe(true);
    const judged = judgeFile(new Doc('shelf/holm/one.part.yaml', 'part', text));
    expect(judged.findings.filter(({ grade }) => grade !== 'unknown')).toEqual([]);
    expect(text.slice(0, newPart(kind, english()).at)).toMatch(/\nmaker: $/);
  });

  it.each([
    ['bord', 'holm/one'],
    ['board', 'one'],
    ['board', '../one/two'],
    ['board', 'a b/c'],
  ])('of kind %s is not called %s', async (kind, name) => {
    const { status, err, files } = await fettle(workspace, 'new', '--part', kind, name);
    expect(status).toBe(2);
    expect(err).toMatch(/maker\/model|the kinds are board/);
    expect(files.size).toBe(0);
  });

  it('is not written over another', async () => {
    const held = { ...workspace, 'shelf/holm/one.part.yaml': 'kind: fan\n' };
    const { status, files } = await fettle(held, 'new', '--part', 'fan', 'holm/one');
    expect(status).toBe(2);
    expect(files.size).toBe(0);
  });
});

describe('new files on this machine', () => {
  let here: string;
  beforeEach(() => void (here = mkdtempSync(join(tmpdir(), 'new-'))));
  afterEach(() => rmSync(here, { recursive: true }));

  it('come with their folders', () => {
    createFiles(
      here,
      new Map([
        ['a.txt', 'A'],
        ['b/c/d.txt', 'D'],
      ]),
    );
    expect(readFileSync(join(here, 'a.txt'), 'utf8')).toBe('A');
    expect(readFileSync(join(here, 'b/c/d.txt'), 'utf8')).toBe('D');
    expect(readdirSync(here).sort()).toEqual(['a.txt', 'b']);
  });

  it('come all or none, and over nothing', () => {
    writeFileSync(join(here, 'z.txt'), 'before');
    expect(() =>
      createFiles(
        here,
        new Map([
          ['a.txt', 'A'],
          ['b/c/d.txt', 'D'],
          ['z.txt', 'Z'],
        ]),
      ),
    ).toThrow(/EEXIST/);
    expect(readFileSync(join(here, 'z.txt'), 'utf8')).toBe('before');
    expect(existsSync(join(here, 'b'))).toBe(false);
    expect(readdirSync(here)).toEqual(['z.txt']);
  });
});
