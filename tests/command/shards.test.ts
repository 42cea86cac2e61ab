// A run split into shares and put together again says, byte for byte, what one run says; what is not whole is refused.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import { fettle, fettleAmong, type Ran } from '../support/command';
import { readSamples } from '../support/samples';

const sampleFiles = (): Record<string, string> =>
  Object.fromEntries([...readSamples().docs].map(([name, { text }]) => [name, text]));

const tower = 'parts/boreas/t1.part.yaml';

/** Builds in two workspaces, most with findings that have fixes, with a guide, a record, and what cannot be read. */
function files(): Record<string, string> {
  const all: Record<string, string> = {
    'fettle.yaml': 'checks:\n  parts-not-named: off\nknown: [old.known.yaml]\n',
    'old.known.yaml':
      'format: 1\nfiles:\n  gone.pcbuild.yaml:\n    findings: [{ finding: cooler-too-tall, at: parts.cooler, by: lead, until: 2099-01-01 }]\n',
    'zoo/fettle.yaml': 'parts: [parts, ../outside]\n',
    'zoo/parts/norrvik/b1.part.yaml': 'kind: board\nsocket: P-100\n',
    [tower]: 'kind: cooler\nheight: 158 mm\nheigth: 1 mm\n',
    'parts/boreas/t2.part.yaml': 'kind: cooler\nheight: [158 mm\n',
    'a.md': '# A\n\n```pcbuild\nformat: 1\nbuild: In a guide\nparts:\n  case: { cooler-hight: 1 mm }\n```\n',
    'zoo/y.pcbuild.yaml': 'a: [',
    'z.pcbuild.yaml': '',
  };
  for (let i = 0; i < 50; i++) {
    const cooler =
      i % 5 === 0 ? '{ use: boreas/t2 }' : i % 2 === 0 ? '{ use: boreas/t1 }' : `{ height: ${150 + i} mm }`;
    const slips = i % 7 === 0 ? '' : `cooler-hight: 1 mm, lenght: ${i} mm, `;
    all[`${i % 3 === 0 ? 'zoo/' : ''}b${i}.pcbuild.yaml`] =
      `format: 1\nbuild: Desk ${i}\nparts:\n  cooler: ${cooler}\n  case: { ${slips}cooler-height: 155 mm }\n`;
  }
  return all;
}

const few = (): Record<string, string> =>
  Object.fromEntries(Object.entries(files()).filter(([name]) => !/b\d\d+\./.test(name)));

async function shares(given: Record<string, string>, of: number, words: readonly string[]): Promise<Ran[]> {
  const numbers = Array.from({ length: of }, (_, i) => i + 1);
  return Promise.all(numbers.map((i) => fettle(given, 'check', '--format', 'json', '--shard', `${i}/${of}`, ...words)));
}

const merge = (reports: readonly string[]): Promise<Ran> =>
  fettle(
    Object.fromEntries(reports.map((text, i) => [`s${i}.json`, text])),
    'merge',
    ...reports.map((_, i) => `s${i}.json`),
  );

async function expectWhole(given: Record<string, string>, ofs: readonly number[], ...words: string[]): Promise<Ran> {
  const whole = await fettle(given, 'check', '--format', 'json', ...words);
  for (const of of ofs) {
    const reports = (await shares(given, of, words)).map(({ out }) => out);
    const merged = await merge([...reports].reverse());
    expect(merged.out.split('\n')).toEqual(whole.out.split('\n'));
    expect({ status: merged.status, err: merged.err }).toEqual({ status: whole.status, err: whole.err });
  }
  return whole;
}

describe('shares put together', () => {
  it('are the whole run over the samples', async () => {
    await expectWhole(sampleFiles(), [1, 2, 3, 7]);
  });

  it('are the whole run over many builds', async () => {
    const { out, status } = await expectWhole(files(), [1, 2, 3, 7]);
    expect(status).toBe(2);
    const { leftOut } = JSON.parse(out) as { leftOut: { recordedCleared: number; fixesNotSought: number } };
    expect(leftOut).toMatchObject({ recordedCleared: 1 });
    expect(leftOut.fixesNotSought).toBeGreaterThan(5);
  });

  it('are the whole run, whatever was asked for', async () => {
    await expectWhole(few(), [3], '--all-fixes', '--from', 'harm');
    await expectWhole(few(), [3], '--working', '--accepted', '--alone');
    await expectWhole(few(), [2], tower, 'fettle.yaml');
    await expectWhole(few(), [3], 'b1.pcbuild.yaml', 'b2.pcbuild.yaml', 'b4.pcbuild.yaml', 'zoo/b0.pcbuild.yaml');
    await expectWhole({ 'a.txt': '' }, [2]);
    await expectWhole({ 'a.pcbuild.yaml': 'format: 1\nbuild: A\n' }, [7], '.', 'nowhere');
  });

  it('share the files evenly, each a report of its own by the schema', async () => {
    const valid = new Ajv2020({ strict: true, strictRequired: false }).compile(
      JSON.parse(readFileSync(join(__dirname, '../../schemas/findings.schema.json'), 'utf8')) as object,
    );
    const counts: number[] = [];
    for (const { out } of await shares(files(), 3, [])) {
      const report = JSON.parse(out) as { files: { kind: string }[] };
      expect(valid(report), JSON.stringify(valid.errors)).toBe(true);
      counts.push(report.files.filter(({ kind }) => kind === 'build').length);
    }
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThan(4);
  });
});

describe('refused is', () => {
  const refused = async (reports: readonly string[], why: RegExp): Promise<void> => {
    const { status, out, err } = await merge(reports);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toMatch(why);
  };
  const reports = async (given = few(), of = 3, ...words: string[]): Promise<string[]> =>
    (await shares(given, of, words)).map(({ out }) => out);

  it('a share that is missing or there twice', async () => {
    const [one, two, three] = (await reports()) as [string, string, string];
    await refused([one, three], /share 2 of 3 is missing/);
    await refused([three], /shares 1, 2 of 3 are missing/);
    await refused([one, two, three, two], /s3\.json: is share 2 of 3, and so is s1\.json/);
  });

  it('a share of another run', async () => {
    const [one] = (await reports()) as [string];
    const other = async (why: RegExp, given = few(), of = 3, ...words: string[]): Promise<void> =>
      refused([one, ...(await reports(given, of, ...words)).slice(1)], why);
    await other(/s1\.json: is of another day than s0\.json/, few(), 3, '--on', '2031-01-01');
    await other(/another options/, few(), 3, '--working');
    await other(/another number of shares/, few(), 4);
    await other(/another paths/, few(), 3, 'zoo');
    await other(/another state of the files/, { ...few(), [tower]: 'kind: cooler\n' });
    await refused(
      [one.replaceAll('"1.2.3"', '"1.2.4"')],
      /written by version 1\.2\.4 of Fettle; this is version 1\.2\.3/,
    );
  });

  it('a share that read another part beside the named paths', async () => {
    const named = ['b1.pcbuild.yaml', 'b2.pcbuild.yaml', 'b4.pcbuild.yaml', '--alone'];
    const [one] = (await reports(few(), 2, ...named)) as [string];
    const [, two] = (await reports({ ...few(), [tower]: 'kind: cooler\n' }, 2, ...named)) as [string, string];
    const { out } = await merge([one, (await reports(few(), 2, ...named))[1]!]);
    expect(out).not.toBe('');
    await refused([one, two], /s1\.json: read another text of parts\/boreas\/t1\.part\.yaml than s0\.json/);
  });

  it('what is damaged, or no report of a share', async () => {
    const [one, two, three] = (await reports()) as [string, string, string];
    await refused([one, two.slice(0, -20), three], /s1\.json: is damaged/);
    await refused([one, two.replace('"grade":"stop"', '"grade":"note"'), three], /s1\.json: is damaged/);
    for (const text of [
      '{}',
      'null',
      '[]',
      '{"shard":{"run":1}}',
      (await fettle(few(), 'check', '--format', 'json')).out,
    ])
      await refused([text], /s0\.json: is no report of a share/);
    const deep = `{"shard":{"run":{"version":"1.2.3"}},"a":${'['.repeat(200_000)}${']'.repeat(200_000)}}`;
    await refused([deep], /s0\.json: is damaged/);
    expect((await fettle({}, 'merge', 'none.json')).err).toMatch(/none\.json: there is no such file/);
  });

  it.each([
    [['--shard', '0/3'], /Expected a share/],
    [['--shard', '4/3'], /Expected a share/],
    [['--shard', '1/3'], /add --format json/],
    [['--shard', '1/3', '--format', 'json', '--mend'], /judges a share of a whole run/],
  ] as const)('%j', async (words, why) => {
    const { status, err } = await fettle(few(), 'check', ...words);
    expect(status).toBe(2);
    expect(err).toMatch(why);
  });
});

it('judges by the settings of a revision, too', async () => {
  const words = ['--settings-from', 'base'];
  const among = (...more: string[]): Promise<Ran> =>
    fettleAmong({ base: few() }, { ...few(), 'fettle.yaml': 'grades: { cooler-too-tall: off }\nnone: 1\n' }, ...more);
  const whole = await among('check', '--format', 'json', ...words);
  const reports = await Promise.all(
    [1, 2].map((i) => among('check', '--format', 'json', '--shard', `${i}/2`, ...words)),
  );
  expect(await merge(reports.map(({ out }) => out))).toMatchObject({ out: whole.out, status: whole.status });
  expect(whole.out).toContain('cooler-too-tall');
});
