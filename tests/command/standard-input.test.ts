// A text on standard input, judged as if it stood in the workspace; `--quiet`; and names that look like options.
import { describe, expect, it } from 'vitest';
import { readInput } from '../../server/src/host/standard-input';
import { limits } from '../../server/src/host/limits';
import { fettle, fettleGiven } from '../support/command';

const desk = (cooler: string): string =>
  `format: 1\nbuild: Desk\nparts:\n  cooler: ${cooler}\n  case: { cooler-height: 160 mm }\n`;
const tower = 'parts/boreas/tower.part.yaml';
const files = {
  'fettle.yaml': 'format: 1\n',
  [tower]: 'kind: cooler\nheight: 155 mm\n',
  'desk.pcbuild.yaml': desk('{ use: boreas/tower }'),
};
const given = (text: string, ...words: string[]) => fettleGiven(text, files, 'check', '--stdin', '--as', ...words);

describe('--stdin', () => {
  it('says of a text what is said of it on disk', async () => {
    const text = desk('{ use: boreas/tower, height: 172 mm }');
    const there = await fettle({ ...files, 'desk.pcbuild.yaml': text }, 'check', 'desk.pcbuild.yaml');
    expect(await given(text, 'desk.pcbuild.yaml')).toEqual(there);
    expect(there.out).toContain('cooler-too-tall');
  });

  it('takes a file that is not there yet, in its workspace', async () => {
    const { out, status } = await given(desk('{ use: boreas/tower, height: 172 mm }'), 'benches/new.pcbuild.yaml');
    expect({ out, status }).toMatchObject({ status: 2 });
    const beside = await given(desk('{ use: boreas/tower }'), 'new.pcbuild.yaml');
    expect(beside).toMatchObject({ status: 0 });
    expect(beside.out).not.toContain('part-not-found');
  });

  it('judges the builds that use a part which is given', async () => {
    const { out, status } = await given('kind: cooler\nheight: 172 mm\n', tower);
    expect(out).toContain('desk.pcbuild.yaml:4');
    expect(out).toContain('cooler-too-tall');
    expect(status).toBe(1);
  });

  it('takes a part file that a build names and that stands nowhere yet', async () => {
    const lacking = { ...files, 'desk.pcbuild.yaml': desk('{ use: boreas/low }') };
    const words = ['check', '--stdin', '--as', 'parts/boreas/low.part.yaml'] as const;
    const { out } = await fettleGiven('kind: cooler\nheight: 172 mm\n', lacking, ...words);
    expect(out).toContain('cooler-too-tall');
    expect(out).not.toContain('part-not-found');
  });

  it('refuses what does not go together, in one line', async () => {
    for (const words of [
      ['--stdin'],
      ['--as', 'desk.pcbuild.yaml'],
      ['--stdin', '--as', 'desk.pcbuild.yaml', 'other.pcbuild.yaml'],
      ['--stdin', '--as', 'desk.pcbuild.yaml', '--mend'],
      ['--stdin', '--as', 'parts'],
      ['--stdin', '--as', 'notes.txt'],
      ['--show'],
    ]) {
      const { status, out, err } = await fettle(files, 'check', ...words);
      expect({ words, status, lines: err.trimEnd().split('\n').length }).toEqual({ words, status: 2, lines: 1 });
      expect(out).not.toContain('harm');
    }
  });

  it('reads up to the limit of a file, and UTF-8 only', async () => {
    const some = async function* (...chunks: Uint8Array[]) {
      yield* chunks;
    };
    expect(await readInput(some(Buffer.from('a\u00e9').subarray(0, 2), Buffer.from('\u00e9').subarray(1)))).toBe('aé');
    expect(await readInput(some(Buffer.from([0xff, 0x41])))).toEqual({ trouble: 'is not text in UTF-8.' });
    const long = await readInput(some(Buffer.alloc(limits.fileBytes, 'a'), Buffer.from('a')));
    expect(long).toEqual({ trouble: expect.stringContaining('is larger than') as string });
  });
});

describe('--quiet', () => {
  it('writes nothing where nothing ends the run with 1, and only that where something does', async () => {
    expect(await fettle(files, 'check', '--quiet')).toMatchObject({ status: 0, out: '', err: '' });
    const tall = { ...files, [tower]: 'kind: cooler\nheight: 172 mm\n' };
    const { out, status } = await fettle(tall, 'check', '--quiet');
    expect(status).toBe(1);
    expect(out).toContain('cooler-too-tall');
    expect(out).not.toMatch(/Findings:|note /);
  });
});

it('takes a path that begins with a dash behind --', async () => {
  const odd = { '-desk.pcbuild.yaml': desk('{ height: 150 mm }') };
  expect((await fettle(odd, 'check', '--', '-desk.pcbuild.yaml')).status).toBe(0);
  expect((await fettle(odd, 'check', '-desk.pcbuild.yaml')).status).toBe(2);
});
