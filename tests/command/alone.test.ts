// A fault in one file’s report: one line of its own, and everything about the other files all the same.
import { describe, expect, it, vi } from 'vitest';
import { fettle } from '../support/command';
import type * as section from '../../server/src/report/section';

vi.mock('../../server/src/report/section', async (load) => {
  const real = await load<typeof section>();
  return {
    ...real,
    listed: (one: section.Section, look: section.FormatOptions) => {
      if (one.title === 'Faulty') throw new TypeError('Cannot read this');
      return real.listed(one, look);
    },
  };
});

const tall = (name: string): string =>
  `format: 1\nbuild: ${name}\nparts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm }\n`;
const files = {
  'a.pcbuild.yaml': tall('First'),
  'b.pcbuild.yaml': tall('Faulty'),
  'c.pcbuild.yaml': tall('Last'),
};

describe('a file whose report throws', () => {
  it('gets one line, and the others are reported', async () => {
    const { out, err, status } = await fettle(files, 'check');
    expect(err).toBe('fettle: b.pcbuild.yaml: its report failed by a fault of Fettle’s own: Cannot read this\n');
    expect(out).toMatch(/^First$[^]*cooler-too-tall[^]*^Last$[^]*cooler-too-tall/m);
    expect(out).toMatch(/ 3 builds: /m);
    expect(status).toBe(2);
  });

  it('leaves JSON whole, with one trouble', async () => {
    const { out, status } = await fettle(files, 'check', '--format', 'json');
    const report = JSON.parse(out) as { files: { file: string }[]; troubles: { path: string }[] };
    expect(report.files.map(({ file }) => file)).toEqual(['a.pcbuild.yaml', 'c.pcbuild.yaml']);
    expect(report.troubles.map(({ path }) => path)).toEqual(['b.pcbuild.yaml']);
    expect(status).toBe(2);
  });
});

describe('a header that the board does not have', () => {
  const fan = {
    'a.pcbuild.yaml':
      'format: 1\nbuild: A\nparts:\n  board: { headers: { CPU_FAN: { kind: fan, current: 1 A } } }\n' +
      '  fans:\n    - { header: CPU_FAM, size: 120 mm }\n',
    'b.pcbuild.yaml': tall('B'),
  };

  it.each(['text', 'json'])('has its working shown as %s', async (format) => {
    const { out, err, status } = await fettle(fan, 'check', '--working', '--from', 'unknown', '--format', format);
    expect(err).toBe('');
    expect(status).toBe(1);
    expect(out).toContain('header CPU_FAM of');
    expect(out).toContain('cooler-too-tall');
  });
});
