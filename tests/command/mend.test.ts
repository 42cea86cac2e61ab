// `fettle check --mend`: what is made unseen, what is left and why, and the diff instead.
import { applyPatch, parsePatch } from 'diff';
import { describe, expect, it } from 'vitest';
import { fettle, fettleGiven } from '../support/command';
import { MemoryHost } from '../support/memory-host';

const desk = 'desk.pcbuild.yaml';
const beside = {
  'fettle.yaml': 'format: 1\n',
  'parts/calder/c7-840.part.yaml': 'kind: processor\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\n',
};
const mended = async (text: string, file = desk): Promise<{ text: string; err: string }> => {
  const { files, err } = await fettle({ ...beside, [file]: text }, 'check', '--mend', file);
  return { text: files.get(file) ?? text, err };
};
const build = (rest: string): string => `format: 1\nbuild: Desk\n${rest}`;

describe('what is made unseen', () => {
  it.each([
    ['a key', 'parts:\n  cooler: { hieght: 158 mm } # as sold\n', 'parts:\n  cooler: { height: 158 mm } # as sold\n'],
    ['a role', 'parts:\n  cpu: { use: calder/c7-840 }\n', 'parts:\n  processor: { use: calder/c7-840 }\n'],
    ['look-alikes', 'parts:\n  cooler: { height: 158 мм }\n', 'parts:\n  cooler: { height: 158 mm }\n'],
    [
      'a comma that is missing',
      'parts:\n  cooler: { height: 158 mm mass: 900 g }\n',
      'parts:\n  cooler: { height: 158 mm, mass: 900 g }\n',
    ],
    [
      'commas between lines',
      'parts:\n  case: {\n    maker: Tarn\n    model: Sluice\n    cooler-height: 158 mm }\n',
      'parts:\n  case: {\n    maker: Tarn,\n    model: Sluice,\n    cooler-height: 158 mm }\n',
    ],
    [
      'brackets and commas of a list',
      'parts:\n  board: { memory: { slots: A1, A2, fill-first: [A1 A2] } }\n',
      'parts:\n  board: { memory: { slots: [A1, A2], fill-first: [A1, A2] } }\n',
    ],
    ['a name by itself', 'parts:\n  case: tarn/mid-3\n', 'parts:\n  case: { use: tarn/mid-3 }\n'],
  ])('%s', async (_, before, after) => {
    expect((await mended(build(before))).text).toBe(build(after));
  });

  it('keeps line ends, comments and what stands beside it', async () => {
    const text = build('parts:   # all of them\n  cooler:   { hieght: 158 mm }\n').replaceAll('\n', '\r\n');
    expect((await mended(text)).text).toBe(text.replace('hieght', 'height'));
  });

  it('leaves a name that would bring something as bad', async () => {
    const { text, err } = await mended(build('parts:\n  case: tarn/mid-4\n'));
    expect(text).toContain('case: tarn/mid-4');
    expect(err).toContain('with it would come a finding as bad');
  });

  it('changes nothing the second time', async () => {
    const once = (await mended(build('parts:\n  cooler: { hieght: 158 mm }\n'))).text;
    expect((await mended(once)).text).toBe(once);
  });
});

describe('what is left', () => {
  it.each([
    ['expect:\n  memory: { capcity: 64 GB }\n', desk, 'it stands in what is promised'],
    [
      'accept:\n  - { finding: cooler-too-tall, becuase: it fits }\n',
      desk,
      'it stands in what was weighed and accepted',
    ],
    ['expect:\n  memory: { capacity: 64 GB bandwidth: 80 GB/s }\n', desk, 'it stands in what is promised'],
    ['steps:\n  - { do: fit the board, caution: { word: CAUTION hazard: Edges. } }\n', desk, 'their writer’s'],
    ['parts:\n  cooler: { height: 158 }\n', desk, 'it would put a guess in the place of what is written'],
    ['parts:\n  fans: [{ use: boreas/f140, cuont: 2 }]\n', desk, 'it would change what is bought, or how many'],
    ['bench: { surface: wod }\n', desk, 'it would put a guess in the place of what is written'],
    ['steps:\n  - { do: fit the board, caution: { word: CAUTION, hazzard: Edges. } }\n', desk, 'their writer’s'],
    ['grades: { price-olld: off }\n', 'fettle.yaml', 'it would change what the house decided'],
    ['margins: { clearence: 2 mm }\n', 'fettle.yaml', 'it would change what the house decided'],
    ['kind: cooler\nheight: 158\n', 'parts/a/b.part.yaml', 'it would put a guess in the place of what is written'],
    ['kind: coller\n', 'parts/a/b.part.yaml', 'it would put a guess in the place of what is written'],
  ])('%j', async (rest, file, why) => {
    const text = file === desk ? build(rest) : file === 'fettle.yaml' ? `format: 1\n${rest}` : rest;
    const { text: after, err } = await mended(text, file);
    expect(after).toBe(text);
    expect(err).toContain(why);
  });

  it('leaves choices of parts to whoever looks', async () => {
    const { text, err } = await mended(
      build(
        'parts:\n  cooler: { height: 168 mm }\n  case: { cooler-height: 160 mm }\nexpect: { memory: { speed: 5 } }\n',
      ),
    );
    expect(text).toContain('168 mm');
    expect(err).not.toContain('wrote');
  });
});

describe('writing', () => {
  const files = { 'fettle.yaml': 'format: 1\n', [desk]: build('parts:\n  cooler: { hieght: 158 mm }\n') };

  it('judges what stands there afterwards', async () => {
    const { status, out, err } = await fettle(files, 'check', '--mend', desk);
    expect(out).not.toContain('unknown-key');
    expect(err).toContain('fettle: desk.pcbuild.yaml: 1 place to mend: unknown-key.\n');
    expect(err).toContain('fettle: wrote 1 file.\n');
    expect(status).toBe(0);
  });

  it('mends part files before the builds that they are judged with, and only what was named', async () => {
    const cooler = 'parts/boreas/tower.part.yaml';
    const all = {
      ...files,
      [cooler]: 'kind: cooler\nhieght: 158 mm\n',
      [desk]: build('parts:\n  cooler: { use: boreas/tower }\n'),
    };
    expect([...(await fettle(all, 'check', '--mend', desk)).files.keys()]).toEqual([]);
    expect([...(await fettle(all, 'check', '--mend', '.')).files]).toEqual([
      [cooler, 'kind: cooler\nheight: 158 mm\n'],
    ]);
  });

  it('judges a named part as it is mended', async () => {
    const cooler = 'parts/boreas/tower.part.yaml';
    const all = { 'fettle.yaml': 'format: 1\n', [cooler]: 'kind: cooler\nhieght: 158 mm\n' };
    const { out, status, files: written } = await fettle(all, 'check', '--mend', cooler);
    expect(written.get(cooler)).toBe('kind: cooler\nheight: 158 mm\n');
    expect(out).not.toContain('unknown-key');
    expect(status).toBe(0);
  });

  it('refuses a file that changed meanwhile', async () => {
    const host = new MemoryHost(Object.entries(files));
    const read = host.read.bind(host);
    let reads = 0;
    host.read = (root, name) => {
      const text = read(root, name);
      return name === desk && ++reads > 1 ? `${String(text)}# more\n` : text;
    };
    const { status, err, files: written } = await fettle(host, 'check', '--mend', desk);
    expect({ status, written: written.size }).toEqual({ status: 2, written: 0 });
    expect(err).toContain('desk.pcbuild.yaml: has changed since it was read; nothing was written.');
  });
});

describe('--show', () => {
  const text = build('parts:\n  cooler: { hieght: 158 mm }\n  case: { cooler-height: 160 mm }\n');
  const files = { 'fettle.yaml': 'format: 1\n', [desk]: text, 'other.pcbuild.yaml': build('') };

  it('writes a diff that leads to the text that --mend writes, and changes nothing', async () => {
    const shown = await fettle(files, 'check', '--mend', '--show', '.');
    expect(shown.files.size).toBe(0);
    expect(shown.out).toMatch(/^--- a\/desk\.pcbuild\.yaml\n\+\+\+ b\/desk\.pcbuild\.yaml\n@@ /);
    const [patch, ...others] = parsePatch(shown.out);
    expect(others).toEqual([]);
    const after = (await fettle(files, 'check', '--mend', '.')).files.get(desk);
    expect(applyPatch(text, patch!)).toBe(after);
    expect(shown.status).toBe(1);
  });

  it('ends with 0 where nothing is to be mended, and never on what was not read', async () => {
    expect(await fettle({ [desk]: build('') }, 'check', '--mend', '--show', '.')).toMatchObject({ status: 0, out: '' });
    expect((await fettle({ [desk]: 'parts: [' }, 'check', '--mend', '--show', '.')).status).toBe(1);
  });

  it('shows a text from standard input', async () => {
    const { out, status } = await fettleGiven(text, files, 'check', '--mend', '--show', '--stdin', '--as', desk);
    expect(out).toContain('+  cooler: { height: 158 mm }');
    expect(status).toBe(1);
  });

  it('writes out what cannot be seen, and says that it does not apply', async () => {
    const odd = { [desk]: build('parts:\n  cooler: { hieght: 158 mm } # a\u202eb\n') };
    const { out, err } = await fettle(odd, 'check', '--mend', '--show', '.');
    expect(out).toContain('a\\u{202e}b');
    expect(err).toContain('does not apply');
  });
});
