// `fettle explain`, `fettle missing` and `fettle swap`: what they say, and how they end.
import { describe, expect, it } from 'vitest';
import { checks } from '../../server/src/core/checks/all';
import { grades, type Grade } from '../../server/src/core/manifest/house-file';
import { fettle } from '../support/command';

const files = {
  'fettle.yaml': 'format: 1\n',
  'desk.pcbuild.yaml':
    'format: 1\nbuild: Survey desk\nparts:\n  processor: { use: calder/c7 }\n  cooler: { use: ' +
    'boreas/tower, header: CPU_FAN }\n  case: { use: tarn/mid }\n  fans:\n    - { use: boreas/f140 }\n    ' +
    '- { use: boreas/f140, name: rear }\n',
  'parts/calder/c7.part.yaml': 'kind: processor\nsocket: LGA1851\npower: { sustained: 125 W }\n',
  'parts/boreas/tower.part.yaml': 'kind: cooler\nheight: 158 mm\nprice: 60 EUR\ndraw: { peak: 4 W }\n',
  'parts/boreas/low.part.yaml': 'kind: cooler\nheight: 120 mm\nprice: 45.50 EUR\ndraw: { peak: 3 W }\n',
  'parts/boreas/high.part.yaml': 'kind: cooler\nheight: 170 mm\n',
  'parts/boreas/open.part.yaml': 'kind: cooler\n',
  'parts/boreas/f140.part.yaml': 'kind: fan\n',
  'parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\n',
};

describe('the command', () => {
  it('says its version', async () => {
    expect(await fettle({}, '--version')).toMatchObject({ status: 0, out: '1.2.3\n', err: '' });
  });
});

describe('explain', () => {
  it('explains every check within 100 columns, with its example as it is marked', async () => {
    for (const check of checks) {
      const { status, out } = await fettle({}, 'explain', check.id);
      expect(status).toBe(0);
      expect(out.startsWith(`${check.id}\n`)).toBe(true);
      for (const text of [check.what, check.why, check.source])
        expect(out.replace(/\s+/g, ' ')).toContain(text.replace(/\s+/g, ' '));
      for (const line of out.split('\n').filter((one) => !one.startsWith('    ')))
        expect(line.length, line).toBeLessThanOrEqual(100);
      for (const line of check.examples[0].faulty.trim().split('\n')) expect(out).toContain(line.trimEnd());
      if (check.unread || !['guide', 'known'].includes(check.on))
        expect(out.replace(/\s+/g, ' ')).toContain(
          check.unread ? 'no setting, option or acceptance' : `- finding: ${check.id}`,
        );
    }
  });

  it('gives the caution and asks for a name where work can hurt', async () => {
    const { out } = await fettle({}, 'explain', 'supply-overloaded');
    expect(out).toMatch(/^ {2}(DANGER|WARNING|CAUTION) /m);
    expect(out).toContain('by: who answers for it');
  });

  it('says how a whole house takes it more lightly, but never a harm', async () => {
    expect((await fettle({}, 'explain', 'cooler-too-tall')).out).toContain('\n    grades: { cooler-too-tall: note }\n');
    expect((await fettle({}, 'explain', 'loose-margin')).out).toContain('\n    grades: { loose-margin: off }\n');
    expect((await fettle({}, 'explain', 'supply-overloaded')).out).not.toContain('grades:');
  });

  it.each([
    ['cooler-to-tall', 'cooler-too-tall'],
    ['tall cooler', 'cooler-too-tall'],
    ['Socket Differs', 'socket-differs'],
  ])('names what is near %s', async (word, near) => {
    const { status, out, err } = await fettle({}, 'explain', word);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(new RegExp(`^fettle: there is no check \`${word}\`; near it: .*\\b${near}\\b.*\\.\\n$`));
  });

  it('says where to look when nothing is near', async () => {
    expect((await fettle({}, 'explain', 'zzzz')).err).toBe(
      'fettle: there is no check `zzzz`; `fettle explain` lists all of them.\n',
    );
  });

  it('lists every check once without a name', async () => {
    const { status, out } = await fettle({}, 'explain');
    expect(status).toBe(0);
    for (const { id } of checks)
      expect(
        out.match(new RegExp(`^  ${id.replaceAll('.', '\\.')} +(harm|stop|shortfall|note|unknown) +\\S`, 'gm')),
        id,
      ).toHaveLength(1);
  });
});

describe('missing', () => {
  const waiting = { ...files, 'parts/tarn/mid.part.yaml': 'kind: case\n' };

  it('lists each fact once, where it belongs, with an example and the checks it decides', async () => {
    const { status, out } = await fettle(waiting, 'missing', 'desk.pcbuild.yaml');
    expect(status).toBe(1);
    expect(out).toMatch(/^Survey desk: \d+ facts are missing\. Look up first: \S.*\.$/m);
    expect(out).toMatch(
      /^ {2}\d+\. +parts\/tarn\/mid\.part\.yaml:1 {3}cooler-height\n {6}Not stated: room for a cooler in tarn\/mid\.\n {6}\S.* Written as `\d+ mm`\./m,
    );
    expect(out.match(/ cooler-height$/gm)).toHaveLength(1);
    expect(out).toMatch(/Could bring a stop\.\n +Decides \d+ checks?: .*cooler-too-tall \(turns at \d+ mm\)/);
  });

  it('puts the fact that decides most of the heaviest first', async () => {
    const { out } = await fettle(waiting, 'missing', 'desk.pcbuild.yaml', '--format', 'json');
    const { missing } = JSON.parse(out) as {
      missing: { atWorst: Grade; decides: unknown[]; file: string; path: string; example: string }[];
    };
    const ranks = missing.map((one) => grades.indexOf(one.atWorst) * 1000 - one.decides.length);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(new Set(missing.map((one) => one.atWorst)).size).toBeGreaterThan(1);
    expect(missing).toContainEqual(
      expect.objectContaining({
        file: 'parts/tarn/mid.part.yaml',
        path: 'cooler-height',
        example: expect.stringMatching(/ mm$/) as string,
      }),
    );
  });

  it('ends with 0 where nothing is missing', async () => {
    const { status, out } = await fettle({ 'a.pcbuild.yaml': 'format: 1\nbuild: A\n' }, 'missing', 'a.pcbuild.yaml');
    expect([status, out]).toEqual([0, 'A: every fact that a check asks for is stated.\n']);
  });

  it.each([
    ['nowhere.pcbuild.yaml', 'there is no such file or folder.'],
    ['parts', 'is no build; a build is a file whose name ends in .pcbuild.yaml.'],
    ['fettle.yaml', 'is no build; a build is a file whose name ends in .pcbuild.yaml.'],
  ])('ends with 2 for %s', async (path, why) => {
    const { status, err } = await fettle(files, 'missing', path);
    expect([status, err]).toEqual([2, `fettle: ${path}: ${why}\n`]);
  });
});

describe('swap', () => {
  it('ranks the other parts of the kind by what the whole build would be', async () => {
    const { status, out } = await fettle(files, 'swap', 'desk.pcbuild.yaml', 'cooler');
    expect(status).toBe(0);
    expect(out.split('\n')[0]).toBe(
      'Survey desk, parts.cooler: now boreas/tower. 3 other parts of this kind, best first.',
    );
    expect(out.match(/boreas\/(low|open|high)/g)).toEqual(['boreas/low', 'boreas/open', 'boreas/high']);
    expect(out).toMatch(/^ {2}boreas\/low +.*1 stop.* −14\.5 EUR +−1 W$/m);
  });

  it('leaves price and draw empty where they are not known', async () => {
    expect((await fettle(files, 'swap', 'desk.pcbuild.yaml', 'cooler')).out).not.toMatch(/boreas\/high.*(EUR|W)$/m);
  });

  it('gives the same as JSON, with the findings themselves', async () => {
    const { out } = await fettle(files, 'swap', 'desk.pcbuild.yaml', 'parts.cooler', '--format', 'json', '--most', '1');
    const value = JSON.parse(out) as {
      others: number;
      parts: { name: string; clears: { id: string }[]; price: object; drawW: number }[];
    };
    expect(value.others).toBe(3);
    expect(value.parts).toHaveLength(1);
    expect(value.parts[0]).toMatchObject({ name: 'boreas/low', price: { value: -14.5, currency: 'EUR' }, drawW: -1 });
    expect(value.parts[0]!.clears.map((finding) => finding.id)).toContain('cooler-too-tall');
  });

  it('says which places there are', async () => {
    expect((await fettle(files, 'swap', 'desk.pcbuild.yaml', 'supply')).err).toBe(
      'fettle: the build has no place supply; it has processor, cooler, case, fans[0], fans.rear.\n',
    );
    expect((await fettle(files, 'swap', 'desk.pcbuild.yaml', 'fans')).err).toBe(
      'fettle: the build has 2 places fans; it has fans[0], fans.rear.\n',
    );
  });

  it('says when there is nothing to choose from', async () => {
    const { status, out } = await fettle(files, 'swap', 'desk.pcbuild.yaml', 'fans.rear');
    expect([status, out]).toEqual([
      0,
      'Survey desk, parts.fans.rear: now boreas/f140. No other part of this kind stands in the parts\nfolders.\n',
    ]);
  });
});

describe('the command itself', () => {
  it('ends with 2 and the nearest sub-command for one that is none', async () => {
    const { status, err } = await fettle({}, 'chekc');
    expect(status).toBe(2);
    expect(err).toContain('check');
  });

  it('shows its sub-commands without words, as a misuse', async () => {
    const { status, err } = await fettle({});
    expect(status).toBe(2);
    for (const name of ['check', 'explain', 'missing', 'swap']) expect(err).toMatch(new RegExp(`^  ${name}\\b`, 'm'));
  });
});
