// `fettle sheet`: where it writes, in which form, and how it ends.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';

const files = {
  'desk.pcbuild.yaml':
    'format: 1\nbuild: Survey desk\nparts:\n  board: { use: norrvik/b7 }\n  cooler: { use: boreas/tower }\n' +
    '  case: { use: tarn/mid }\n',
  'parts/norrvik/b7.part.yaml': 'kind: board\nmaker: Norrvik\nmodel: B7\n',
  'parts/boreas/tower.part.yaml': 'kind: cooler\nheight: 170 mm\n',
  'parts/boreas/low.part.yaml': 'kind: cooler\nheight: 120 mm\n',
  'parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\n',
  'fettle.yaml': 'format: 1\n',
};

describe('fettle sheet', () => {
  it('writes one page of HTML for A4, with the day and what mends a finding', async () => {
    const { status, out, err } = await fettle(files, 'sheet', 'desk.pcbuild.yaml', '--on', '2026-12-24');
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out.startsWith('<!DOCTYPE html>')).toBe(true);
    expect(out).toContain('size: A4');
    expect(out).toContain('As of 2026-12-24.');
    expect(out).toContain('<li>Use boreas/low as cooler</li>');
  });

  it('writes for Letter, and as Markdown', async () => {
    expect((await fettle(files, 'sheet', 'desk.pcbuild.yaml', '--paper', 'letter')).out).toContain('size: letter');
    const { out } = await fettle(files, 'sheet', 'desk.pcbuild.yaml', '--markdown');
    expect(out.startsWith('# Survey desk\n\nBench sheet\n')).toBe(true);
  });

  it('writes into a file, and then nothing to standard output', async () => {
    const { out, files: written } = await fettle(files, 'sheet', 'desk.pcbuild.yaml', '--to', 'desk.html');
    expect(out).toBe('');
    expect([...written.keys()]).toEqual(['desk.html']);
    expect(written.get('desk.html')).toContain('</html>');
  });

  it('is the same twice', async () => {
    const [first, second] = [
      await fettle(files, 'sheet', 'desk.pcbuild.yaml'),
      await fettle(files, 'sheet', 'desk.pcbuild.yaml'),
    ];
    expect(first.out).toBe(second.out);
  });

  it('refuses what is no build, and a paper that there is none of', async () => {
    expect(await fettle(files, 'sheet', 'fettle.yaml')).toMatchObject({ status: 2, out: '' });
    const { status, err } = await fettle(files, 'sheet', 'desk.pcbuild.yaml', '--paper', 'a5');
    expect(status).toBe(2);
    expect(err).toContain('a4, letter');
  });

  it('prints what it can of a text that cannot be read whole, and says so', async () => {
    const broken = { ...files, 'desk.pcbuild.yaml': `${files['desk.pcbuild.yaml']}place: { ambient: [31 °C\n` };
    const { status, out, err } = await fettle(broken, 'sheet', 'desk.pcbuild.yaml');
    expect(status).toBe(2);
    expect(out).toContain('</html>');
    expect(err).toContain('not everything was read');
  });

  it('stands in the help', async () => {
    expect((await fettle({}, '--help')).out).toContain('print the bench sheet of a build');
  });
});
