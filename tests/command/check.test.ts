// `fettle check` over files in memory: what it writes, and how it ends.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';

const desk = `format: 1
build: Survey desk
parts:
  processor: { use: calder/c7, power-limit: 253 W }
  cooler: { use: boreas/tower }
  graphics: { power: { sustained: 320 W } }
  supply: { rating: 550 W }
  case: { use: tarn/mid }
`;
const files = {
  'desk.pcbuild.yaml': desk,
  'parts/calder/c7.part.yaml': 'kind: processor\nsocket: LGA1851\n',
  'parts/boreas/tower.part.yaml': 'kind: cooler\nheight: 158 mm\n',
  'parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\n',
};
const good = { 'good.pcbuild.yaml': 'format: 1\nbuild: Counter\n' };

/** One file’s own part of a report, so that checks still to come do not change what is compared. */
const blockOf = (out: string, id: string): string =>
  out
    .split('\n\n')
    .filter((block) => block.includes(id))
    .join('\n\n');

describe('what a finding looks like', () => {
  it('says grade, place, sentence with both numbers, and the check’s id last', async () => {
    const { out, status } = await fettle(files, 'check');
    expect(out.startsWith('Survey desk\n\n')).toBe(true);
    expect(blockOf(out, 'cooler-too-tall')).toBe(
      [
        '  stop       desk.pcbuild.yaml:5   parts.cooler',
        '             The cooler stands 158 mm tall; the case leaves 155 mm.                  cooler-too-tall',
      ].join('\n'),
    );
    expect(status).toBe(1);
  });

  it('says the hazard, consequence and avoidance with a finding that can hurt', async () => {
    const { out } = await fettle(files, 'check');
    const block = blockOf(out, 'supply-overloaded');
    expect(block).toMatch(/^ {2}harm {7}desk\.pcbuild\.yaml:7 {3}parts\.supply$/m);
    expect(block).toMatch(/^ {13}(DANGER|WARNING|CAUTION|NOTICE) +\S/m);
    expect(block).toMatch(/^ {23}Defer to the handbooks of the supply and of the parts fed\.$/m);
  });

  it('says a caution in full once a file, and at its other findings where it stands', async () => {
    const bench =
      'format: 1\nbuild: Desk\nbench:\n  surface: carpet\n  equalise-by: nothing\nparts:\n  board: { socket: AM5 }\n';
    const { out } = await fettle({ 'a.pcbuild.yaml': bench, 'b.pcbuild.yaml': bench }, 'check');
    expect(out.match(/^ {13}NOTICE {4}People carry charges that they do not feel\.$/gm)).toHaveLength(2);
    expect(out.match(/^ {13}NOTICE {4}The caution under surface-unsuited above holds here too\.$/gm)).toHaveLength(2);
  });

  it('shows figures down to file and line on request', async () => {
    const { out } = await fettle(files, 'check', '--working');
    expect(out).toContain(
      [
        '             height of boreas/tower        158 mm  parts/boreas/tower.part.yaml:2',
        '             room for a cooler in tarn/mid  155 mm  parts/tarn/mid.part.yaml:2',
      ]
        .join('\n')
        .replace('boreas/tower        ', 'boreas/tower         '),
    );
  });

  it('stays within 100 columns', async () => {
    for (const words of [['--working'], ['--from', 'unknown'], ['--from', 'unknown', '--working']]) {
      const { out } = await fettle(files, 'check', ...words);
      for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(100);
    }
  });

  it('counts findings by grade, builds by worst grade and open answers in the last line', async () => {
    const { out } = await fettle({ ...files, ...good }, 'check');
    expect(out.trimEnd().split('\n').at(-1)).toMatch(
      /^Findings: \d+ harm,.* 2 builds: 1 harm, 1 (clear|note|unknown)\. \d+ answers? waits? for facts\.$/,
    );
  });

  it('names what it left out, as text and as JSON', async () => {
    const settings = 'format: 1\ngrades: { cooler-too-tall: off, parts-left-out: shortfall, supply-overloaded: off }\n';
    const all = { ...files, 'fettle.yaml': settings };
    const text = (await fettle(all, 'check', '--from', 'stop')).out.replace(/\s+/g, ' ');
    expect(text).toContain('1 check is switched off by fettle.yaml, with 1 finding: cooler-too-tall.');
    expect(text).toContain('1 check has another grade by fettle.yaml: parts-left-out (shortfall).');
    expect(text).toMatch(/\d+ findings? (is|are) lighter than stop; --from note lists them\./);
    const { leftOut } = JSON.parse((await fettle(all, 'check', '--format', 'json', '--from', 'stop')).out) as {
      leftOut: Record<string, unknown>;
    };
    expect(leftOut).toMatchObject({
      off: ['cooler-too-tall'],
      offFindings: 1,
      regraded: [{ id: 'parts-left-out', grade: 'shortfall' }],
      accepted: 0,
      pastMost: 0,
      notRead: [],
    });
    expect(leftOut.lighter).toBeGreaterThan(0);
  });

  it('has no colour of its own', async () => {
    expect((await fettle(files, 'check', '--working')).out).not.toContain('\x1b');
  });

  it('lists unknown answers by the fact they wait for', async () => {
    const { out } = await fettle(
      {
        'a.pcbuild.yaml': 'format: 1\nbuild: A\nparts:\n  cooler: { mass: 1 kg }\n  case: { cooler-height: 155 mm }\n',
      },
      'check',
      '--from',
      'unknown',
    );
    expect(out).toMatch(/^ {2}unknown {4}a\.pcbuild\.yaml:4 {3}parts\.cooler\.height$/m);
    expect(out).toMatch(/waits? for height of /);
  });

  it('says everything about a part that is not found in one line', async () => {
    const { out } = await fettle(
      { 'a.pcbuild.yaml': 'format: 1\nbuild: A\nparts:\n  cooler: { use: a/b }\n  case: { cooler-height: 155 mm }\n' },
      'check',
      '--from',
      'unknown',
    );
    expect(out.match(/about a\/b/g)).toHaveLength(1);
    expect(out).toMatch(/^ {2}unknown {4}a\.pcbuild\.yaml:4 {3}parts\.cooler\.use$/m);
    expect(out).not.toContain('height of');
  });

  it('only counts them otherwise, and says how to list them', async () => {
    const { out } = await fettle(
      {
        'a.pcbuild.yaml': 'format: 1\nbuild: A\nparts:\n  cooler: { mass: 1 kg }\n  case: { cooler-height: 155 mm }\n',
      },
      'check',
    );
    expect(out).not.toContain('parts.cooler.height');
    expect(out).toContain('--from unknown lists them by fact');
  });

  it('writes out what a terminal would obey or hide', async () => {
    const { out } = await fettle(
      {
        'a.pcbuild.yaml':
          'format: 1\nbuild: "A\u202eB\\e[31m"\nparts:\n  cooler: { "he\u200bight": 3, use: "x/\u202ey" }\n',
      },
      'check',
      '--working',
      '--from',
      'unknown',
    );
    expect(out).toContain('A\\u{202e}B\\u{1b}[31m');
    expect(out).not.toMatch(/[\x00-\x09\x0b-\x1f\x7f-\x9f\u200b\u202e]/);
  });
});

describe('how it ends', () => {
  it.each([
    ['0 with nothing at or above the grade', good, [], 0],
    ['1 with findings', files, [], 1],
    [
      '0 with findings below the grade that was chosen',
      {
        'a.pcbuild.yaml':
          'format: 1\nbuild: A\nparts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm }\n',
      },
      ['--from', 'harm'],
      0,
    ],
    [
      '1 with an unknown answer, where that is chosen',
      {
        'a.pcbuild.yaml': 'format: 1\nbuild: A\nparts:\n  cooler: { mass: 1 kg }\n  case: { cooler-height: 155 mm }\n',
      },
      ['--from', 'unknown'],
      1,
    ],
    ['0 or 1 with an empty build', { 'a.pcbuild.yaml': '' }, [], 0],
    ['2 with a path that is not there', files, ['nowhere'], 2],
    ['2 with a file that is none of ours', { ...files, 'notes.txt': 'x' }, ['notes.txt'], 2],
    ['2 with a folder without builds', { 'notes.txt': 'x' }, [], 2],
    ['2 with a grade that is none', files, ['--from', 'awful'], 2],
    ['2 with a day that is none', files, ['--on', '2026-02-30'], 2],
    ['2 with a format that is none', files, ['--format', 'rtf'], 2],
    ['2 with an option that is none', files, ['--louder'], 2],
    ['0 with help', files, ['--help'], 0],
  ] as const)('%s', async (_, given, words, status) => {
    const ran = await fettle(given as Record<string, string>, 'check', ...words);
    expect(ran.status).toBe(status);
    if (status === 2) expect(ran.err).toMatch(/^(fettle|error): .+\n/);
    if (status === 2) expect(ran.err).not.toMatch(/\n {4}at /);
  });

  it('names what it could not find', async () => {
    expect((await fettle(files, 'check', 'nowhere')).err).toBe('fettle: nowhere: there is no such file or folder.\n');
  });

  it('says what a build is where there is none', async () => {
    expect((await fettle({ 'notes.txt': 'x' }, 'check')).err).toBe(
      'fettle: .: there are no builds here; a build is a file whose name ends in .pcbuild.yaml.\n',
    );
  });

  it('checks what it can beside what it cannot', async () => {
    const { status, out } = await fettle(files, 'check', 'nowhere', 'desk.pcbuild.yaml');
    expect(status).toBe(2);
    expect(out).toContain('cooler-too-tall');
  });

  it('counts an accepted finding as accepted, and shows it on request', async () => {
    const build =
      'format: 1\nbuild: A\nparts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm ' +
      '}\naccept:\n  - { finding: cooler-too-tall, at: parts.cooler, because: The side panel stays off., ' +
      'until: 2027-06-30 }\n';
    const plain = await fettle({ 'a.pcbuild.yaml': build }, 'check');
    expect(plain.status).toBe(0);
    expect(plain.out).not.toContain('cooler-too-tall');
    expect(plain.out).toContain('1 finding is accepted; --accepted shows it.');
    const shown = await fettle({ 'a.pcbuild.yaml': build }, 'check', '--accepted');
    expect(shown.status).toBe(0);
    expect(blockOf(shown.out, 'cooler-too-tall')).toMatch(/^ {2}accepted {1}/);
    expect(shown.out).toContain('The side panel stays off. Until 2027-06-30.');
    expect((await fettle({ 'a.pcbuild.yaml': build }, 'check', '--on', '2027-06-30')).status).toBe(1);
  });

  it('survives every prefix of a build, half-typed as it may be', async () => {
    for (let end = 0; end <= desk.length; end++) {
      const { status, err } = await fettle(
        { ...files, 'desk.pcbuild.yaml': desk.slice(0, end) },
        'check',
        'desk.pcbuild.yaml',
      );
      expect(err).toBe('');
      expect([0, 1]).toContain(status);
    }
  });

  it('survives names that objects have of their own', async () => {
    const { status, err } = await fettle(
      {
        'a.pcbuild.yaml':
          'format: 1\nbuild: A\nparts: { __proto__: { use: constructor/toString }, constructor: {} ' +
          '}\nexpect: { drives: { toString: { read: 1 GB/s } } }\n',
      },
      'check',
      '--working',
    );
    expect(err).toBe('');
    expect(status).toBe(1);
  });

  it('reports a build whose part is nowhere, and goes on', async () => {
    const { status, err } = await fettle(
      { 'a.pcbuild.yaml': 'format: 1\nbuild: A\nparts:\n  case: { use: tarn/none }\n' },
      'check',
    );
    expect(err).toBe('');
    expect([0, 1]).toContain(status);
  });

  it('says that a parts folder does not lie below the workspace', async () => {
    const { status, err } = await fettle({ ...files, 'fettle.yaml': 'parts: [../else, parts]\n' }, 'check');
    expect(status).toBe(2);
    expect(err).toBe(
      'fettle: fettle.yaml: names a parts folder that does not lie below it, "../else"; it is not read.\n',
    );
  });
});

describe('what is checked', () => {
  it('brings the files that a named build is made of', async () => {
    const slip = { ...files, 'parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\nwidht: 200 mm\n' };
    expect((await fettle(slip, 'check', 'desk.pcbuild.yaml')).out).toContain('parts/tarn/mid.part.yaml:3   widht');
  });

  it('takes the nearest folder with a fettle.yaml for the root, wherever it is called from', async () => {
    const nested = Object.fromEntries(
      Object.entries({ ...files, 'fettle.yaml': 'format: 1\n' }).map(([name, text]) => [`benches/one/${name}`, text]),
    );
    const from = async (path: string): Promise<string> => (await fettle(nested, 'check', path)).out;
    expect(await from('.')).toContain('cooler-too-tall');
    expect(await from('benches/one')).toBe(await from('.'));
    expect(await from('benches/one/desk.pcbuild.yaml')).toContain('cooler-too-tall');
  });

  it('passes hidden folders and node_modules by', async () => {
    const { status } = await fettle(
      { '.git/a.pcbuild.yaml': 'x: [', 'node_modules/b/b.pcbuild.yaml': 'x: [', ...good },
      'check',
    );
    expect(status).toBe(0);
  });

  it('does not depend on the order of files', async () => {
    const turned = Object.fromEntries(Object.entries({ ...files, ...good }).reverse());
    expect((await fettle(turned, 'check')).out).toBe((await fettle({ ...files, ...good }, 'check')).out);
    expect((await fettle(files, 'check', 'parts', 'desk.pcbuild.yaml')).out).toBe(
      (await fettle(files, 'check', 'desk.pcbuild.yaml', 'parts', 'parts')).out,
    );
  });

  it('gives the same findings for CRLF as for LF', async () => {
    const crlf = Object.fromEntries(Object.entries(files).map(([name, text]) => [name, text.replaceAll('\n', '\r\n')]));
    for (const words of [['--working'], ['--from', 'unknown']]) {
      expect((await fettle(crlf, 'check', ...words)).out).toBe((await fettle(files, 'check', ...words)).out);
    }
  });
});

describe('as JSON', () => {
  const schema = JSON.parse(readFileSync(join(__dirname, '../../schemas/findings.schema.json'), 'utf8')) as object;
  const valid = new Ajv2020({ strict: true, strictRequired: false }).compile(schema);
  const json = async (given: Record<string, string>, ...words: string[]) => {
    const { out } = await fettle(given, 'check', '--format', 'json', ...words);
    const value = JSON.parse(out) as {
      files: { findings: { id: string; range: unknown; working?: unknown; accepted?: unknown; message: string }[] }[];
      troubles: unknown[];
      counts: { accepted: number };
    };
    expect(valid(value), JSON.stringify(valid.errors)).toBe(true);
    return value;
  };

  it('keeps to its schema, with and without working, with troubles and without', async () => {
    await json(files);
    await json(files, '--working', '--from', 'unknown');
    await json(good);
    await json({ 'a.txt': '' });
    expect((await json(files, 'nowhere')).troubles).toEqual([
      { path: 'nowhere', trouble: 'there is no such file or folder.' },
    ]);
  });

  it('gives ranges from zero, in UTF-16 units', async () => {
    const value = await json({
      'a.pcbuild.yaml': 'format: 1\nbuild: A\nparts:\n  case: { model: "🌊", heigt: 3 mm }\n',
    });
    const finding = value.files[0]!.findings.find((one) => one.id === 'unknown-key')!;
    expect(finding.range).toEqual({ start: { line: 3, character: 23 }, end: { line: 3, character: 28 } });
  });

  it('holds accepted findings with their reason', async () => {
    const value = await json({
      'a.pcbuild.yaml':
        'format: 1\nbuild: A\nparts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm ' +
        '}\naccept:\n  - { finding: cooler-too-tall, because: The side panel stays off. }\n',
    });
    expect(value.files[0]!.findings.find((one) => one.id === 'cooler-too-tall')!.accepted).toEqual({
      because: 'The side panel stays off.',
    });
    expect(value.counts.accepted).toBe(1);
  });

  it('escapes what a terminal would obey or hide, and loses nothing', async () => {
    const { out } = await fettle(
      { 'a.pcbuild.yaml': 'format: 1\nbuild: "A\u202e\u0007B"\n' },
      'check',
      '--format',
      'json',
    );
    expect(out).not.toMatch(/[\x00-\x09\x0b-\x1f\u202e]/);
    expect((JSON.parse(out) as { files: { name: string }[] }).files[0]!.name).toBe('A\u202e\u0007B');
  });

  it('goes into a file whole, and into nothing else', async () => {
    const { out, files: written } = await fettle(files, 'check', '--format', 'json', '--output', 'out.json');
    expect(out).toBe('');
    expect(valid(JSON.parse(written.get('out.json')!))).toBe(true);
  });
});
