// What a change does to the builds: between revisions, a revision and the files here, two folders.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import type { Comparison, FileComparison } from '../../server/src/review/comparison';
import { MemoryHost } from '../support/memory-host';
import { fettle, fettleAmong } from '../support/command';

const desk = (cooler: string, more = ''): string =>
  `format: 1\nbuild: Desk\nparts:\n  cooler: { use: ${cooler} }\n  case: { use: tarn/mid-3 }\n${more}`;

const base: Record<string, string> = {
  'fettle.yaml': 'format: 1\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 160 mm\n',
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\nprice: 48.00 EUR\n',
  'parts/boreas/low-48.part.yaml': 'kind: cooler\nheight: 48 mm\nprice: 31.00 EUR\n',
  'desk.pcbuild.yaml': desk('boreas/tower-155'),
  'benches/low.pcbuild.yaml': desk('boreas/low-48').replace('Desk', 'Low'),
};
const tower = 'parts/boreas/tower-155.part.yaml';
const taller: Record<string, string> = { ...base, [tower]: base[tower]!.replace('155 mm', '172 mm') };

const schema = readFileSync(join(__dirname, '../../schemas/comparison.schema.json'), 'utf8');
const valid = new Ajv2020({ strict: true, strictRequired: false }).compile(JSON.parse(schema) as object);

/** Held to the published schema each time. */
const compared = async (
  before: Record<string, string>,
  after: Record<string, string>,
  ...words: string[]
): Promise<{ comparison: Comparison; status: number; err: string }> => {
  const { out, status, err } = await fettleAmong(
    { main: before },
    after,
    'compare',
    'main',
    '--format',
    'json',
    ...words,
  );
  const comparison = JSON.parse(out) as Comparison;
  expect(valid(comparison), JSON.stringify(valid.errors)).toBe(true);
  return { comparison, status, err };
};
const fileIn = ({ files }: Comparison, name: string): FileComparison => files.find(({ file }) => file === name)!;
const told = ({ files }: Comparison): string[] =>
  files.flatMap(({ file, findings }) =>
    findings
      .filter(({ kind, before, after }) => kind !== 'unchanged' && (after ?? before)!.grade !== 'unknown')
      .map(({ kind, before, after }) => `${file} ${kind} ${(after ?? before)!.id}`),
  );

describe('a part file', () => {
  it('shows every build that its change breaks, with what moved and the changed line', async () => {
    const { comparison, status } = await compared(base, taller);
    expect([told(comparison), status]).toEqual([['desk.pcbuild.yaml new cooler-too-tall'], 1]);
    const file = fileIn(comparison, 'desk.pcbuild.yaml');
    expect([file.state, file.because, file.worstAfter]).toEqual(['touched', [tower], 'stop']);
    expect(file.moved).toEqual([
      {
        what: 'room left, cooler height of boreas/tower-155',
        before: '5 mm',
        after: '−12 mm',
        difference: '−17 mm',
        isBetter: false,
        why: [
          {
            what: 'height',
            before: { file: tower, line: 2, text: '155 mm' },
            after: { file: tower, line: 2, text: '172 mm' },
          },
        ],
      },
    ]);
    expect(comparison.covers).toMatchObject({ builds: 2, touched: 1 });
  });

  it('shows what its change heals, and ends green', async () => {
    const { comparison, status } = await compared(taller, base);
    expect([told(comparison), status]).toEqual([['desk.pcbuild.yaml cleared cooler-too-tall'], 0]);
  });

  it('that makes a finding worse says by how much', async () => {
    const tallest = { ...base, [tower]: base[tower]!.replace('155 mm', '190 mm') };
    const { comparison, status } = await compared(taller, tallest);
    const [change] = fileIn(comparison, 'desk.pcbuild.yaml').findings;
    expect([change!.kind, change!.before!.excess, change!.after!.excess, status]).toEqual([
      'worse',
      '12 mm',
      '30 mm',
      1,
    ]);
  });
});

describe('changes that cancel out', () => {
  it('are shown all the same', async () => {
    const after = {
      ...base,
      'desk.pcbuild.yaml': desk('boreas/low-48'),
      [tower]: base[tower]!.replace('48.00', '31.00'),
    };
    const { comparison } = await compared({ ...base, 'desk.pcbuild.yaml': desk('boreas/tower-155') }, after);
    expect(
      fileIn(comparison, 'desk.pcbuild.yaml').moved.map(({ what, before, after: now }) => [what, before, now]),
    ).toContainEqual(['price', expect.stringContaining('48'), expect.stringContaining('31')]);
  });
});

describe('a change of layout, order, names of files or line ends', () => {
  const cases: Record<string, Record<string, string>> = {
    'other order': {
      ...base,
      'desk.pcbuild.yaml':
        'build: Desk\nformat: 1\nparts:\n  case: { use: tarn/mid-3 }\n  cooler: { use: boreas/tower-155 }\n',
    },
    'other layout': {
      ...base,
      'desk.pcbuild.yaml': desk('boreas/tower-155').replace('{ use: tarn/mid-3 }', '\n    use: tarn/mid-3'),
    },
    CRLF: Object.fromEntries(Object.entries(base).map(([name, text]) => [name, text.replaceAll('\n', '\r\n')])),
    comments: { ...base, 'desk.pcbuild.yaml': `# Moved down.\n\n${desk('boreas/tower-155')}` },
  };
  it.each(Object.entries(cases))('compares as empty: %s', async (_, after) => {
    const { out, status } = await fettleAmong({ main: base }, after, 'compare', 'main');
    expect([out.split('\n')[0], status]).toEqual([
      'main (0123456789) → working tree: no finding and no figure changes.',
      0,
    ]);
  });

  it('follows a build that was moved', async () => {
    const { 'desk.pcbuild.yaml': text = '', ...rest } = taller;
    const { comparison, status } = await compared(taller, { ...rest, 'benches/desk.pcbuild.yaml': text });
    const file = fileIn(comparison, 'benches/desk.pcbuild.yaml');
    expect([file.state, file.movedFrom, told(comparison), status]).toEqual(['moved', 'desk.pcbuild.yaml', [], 0]);
  });
});

describe('sides', () => {
  it('are two revisions, or two folders', async () => {
    const revisions = await fettleAmong({ a: base, b: taller }, {}, 'compare', 'a', 'b');
    expect([revisions.out.split('\n')[0], revisions.status]).toEqual([
      'a (0123456789) → b (0123456789): 1 stop new.',
      1,
    ]);
    const folders = Object.fromEntries(
      [['old', base] as const, ['new', taller] as const].flatMap(([folder, files]) =>
        Object.entries(files).map(([name, text]) => [`${folder}/${name}`, text]),
      ),
    );
    const { out, status } = await fettle(folders, 'compare', 'old', 'new');
    expect([out.split('\n')[0], status]).toEqual(['old → new: 1 stop new.', 1]);
  });

  it('that are not there end the run in one line', async () => {
    const { err, status } = await fettle(base, 'compare', 'nowhere');
    expect([err, status]).toEqual(['fettle: nowhere: names no commit of this repository.\n', 2]);
  });

  it('are narrowed to a folder, with what stands beside it', async () => {
    const low = { ...taller, 'parts/boreas/low-48.part.yaml': 'kind: cooler\nheight: 200 mm\n' };
    const { comparison } = await compared(base, low, '--in', 'benches');
    expect(told(comparison)).toEqual(['low.pcbuild.yaml new cooler-too-tall']);
    expect(comparison.covers.builds).toBe(1);
  });
});

describe('settings that a change brings', () => {
  const after = { ...taller, 'fettle.yaml': 'format: 1\ngrades: { cooler-too-tall: off }\n' };

  it('are told where they silence what stood before', async () => {
    const { out } = await fettleAmong({ main: taller }, after, 'compare', 'main');
    expect(out).toContain('1 stop silenced');
    expect(out).not.toContain('cleared');
  });

  it('decide nothing where those before the change are to', async () => {
    expect((await compared(base, after)).status).toBe(0);
    const { comparison, status } = await compared(base, after, '--settings-from', 'main');
    expect([told(comparison), status]).toEqual([['desk.pcbuild.yaml new cooler-too-tall'], 1]);
  });
});

describe('what was not read', () => {
  const denied = { trouble: 'may not be read: the system denies it.' };
  const host = (files: Record<string, string>): MemoryHost =>
    new MemoryHost([...Object.entries(files), ['desk.pcbuild.yaml', denied]]);

  it('after the change ends the run with status 2', async () => {
    const { err, status, out } = await fettleAmong({ main: base }, host(base), 'compare', 'main');
    expect([err, status]).toEqual([
      'fettle: working tree: desk.pcbuild.yaml: may not be read: the system denies it.\n',
      2,
    ]);
    expect(out).toContain('could not be read');
  });

  it('before it makes everything new', async () => {
    const { status, out } = await fettleAmong({ main: host(base) }, taller, 'compare', 'main');
    expect(out).toContain('1 stop, 1 note new');
    expect(status).toBe(1);
  });
});

it('says in text what moved, and with --working why', async () => {
  const { out } = await fettleAmong({ main: base }, taller, 'compare', 'main', '--working');
  expect(out).toBe(`main (0123456789) → working tree: 1 stop new.

Desk (desk.pcbuild.yaml)
  through parts/boreas/tower-155.part.yaml
  new        stop       desk.pcbuild.yaml:4   parts.cooler
                        The cooler stands 172 mm tall; the case leaves 160 mm.       cooler-too-tall
  room left, cooler height of boreas/tower-155  5 mm → −12 mm   (−17 mm, worse)
      · height: 155 mm (parts/boreas/tower-155.part.yaml:2) → 172 mm
        (parts/boreas/tower-155.part.yaml:2)

2 builds, 1 touched. 3 findings unchanged in what changed; 6 facts asked for there.
`);
});

describe('guides', () => {
  const fenced = (name: string, cooler: string): string =>
    `\n\`\`\`pcbuild\n${desk(cooler).replace('Desk', name)}\`\`\`\n`;
  const guided: Record<string, string> = {
    ...base,
    'README.md': 'First words.\n',
    'guide.md': `# Two desks\n${fenced('One', 'boreas/tower-155')}${fenced('Two', 'boreas/low-48')}`,
  };
  const guide = (text: string): Record<string, string> => ({ ...guided, 'guide.md': text });

  it('are compared block by block, with what their builds use', async () => {
    const { comparison, status } = await compared(guided, { ...guided, [tower]: taller[tower]! });
    expect([told(comparison), status]).toEqual([
      ['desk.pcbuild.yaml new cooler-too-tall', 'guide.md new cooler-too-tall'],
      1,
    ]);
    expect(comparison.files.find(({ file }) => file === 'guide.md')).toMatchObject({ title: 'One', state: 'touched' });
  });

  it('keep their blocks apart by what the builds are called, wherever they stand', async () => {
    const before = guide(`${fenced('One', 'boreas/low-48')}${fenced('Two', 'boreas/tower-155')}`);
    const put = { ...before, 'guide.md': `${fenced('New', 'boreas/low-48')}${before['guide.md']!}` };
    const worse = { [tower]: taller[tower]! };
    const { comparison } = await compared({ ...before, ...worse }, { ...put, ...worse });
    expect(told(comparison)).toEqual(['guide.md new parts-left-out']);
    const words = ['check', '--only-new', 'main', '--format', 'json'];
    const { out } = await fettleAmong({ main: { ...before, ...worse } }, { ...put, ...worse }, ...words);
    const { files } = JSON.parse(out) as { files: { findings: { id: string }[] }[] };
    expect(files.flatMap(({ findings }) => findings.map(({ id }) => id))).toEqual(['parts-left-out']);
  });

  it('that nothing ties to a build change nothing', async () => {
    const { comparison, status, err } = await compared(guided, { ...guided, 'README.md': 'Other words.\n' });
    expect([comparison.troubles, told(comparison), status, err]).toEqual([[], [], 0, '']);
  });
});

describe('the record of a finished machine', () => {
  const record = (slot: string, hours: number, day: string): string =>
    `format: 1\nbuild: desk.pcbuild.yaml\ntaken: ${day}\nfrom: [dmidecode 3.5, smartctl 7.4]\n` +
    `memory:\n  - { slot: ${slot}, reports: D5-32, capacity: 32 GiB, key: 11aa11 }\n` +
    `drives:\n  - { reports: RAPID-2T, capacity: 2 TB, hours: ${hours} h, key: 33cc33 }\n`;
  const before = { ...base, 'desk.asbuilt.yaml': record('A1', 120, '2026-11-25') };
  const after = { ...base, 'desk.asbuilt.yaml': record('A2', 502, '2027-03-01') };

  it('says fact by fact what changed, each with its line on both sides', async () => {
    const { comparison, status } = await compared(before, after);
    const { record: told, kind } = fileIn(comparison, 'desk.asbuilt.yaml');
    expect([kind, status]).toEqual(['asbuilt', 0]);
    expect(told).toEqual({
      takenBefore: '2026-11-25',
      takenAfter: '2027-03-01',
      changes: [
        {
          kind: 'moved',
          thing: 'memory D5-32 in A2',
          fact: 'slot',
          before: { file: 'desk.asbuilt.yaml', line: 6, text: 'A1' },
          after: { file: 'desk.asbuilt.yaml', line: 6, text: 'A2' },
        },
        {
          kind: 'changed',
          thing: 'drive RAPID-2T',
          fact: 'hours',
          before: { file: 'desk.asbuilt.yaml', line: 8, text: '120 h' },
          after: { file: 'desk.asbuilt.yaml', line: 8, text: '502 h' },
          difference: '+382 h',
        },
      ],
    });
  });

  it('is told on a terminal and in a comment, with the days of reading', async () => {
    const text = await fettleAmong({ main: before }, after, 'compare', 'main');
    expect(text.out).toContain(
      'desk.asbuilt.yaml\n  machine read 2026-11-25 → 2027-03-01\n' +
        '  moved      memory D5-32 in A2: A1 → A2\n' +
        '  changed    drive RAPID-2T, hours: 120 h → 502 h (+382 h)\n',
    );
    expect(text.out).toContain('no finding comes or goes, records of machines change.');
    const comment = await fettleAmong({ main: before }, after, 'compare', 'main', '--format', 'comment');
    expect(comment.out).toMatch(/\*\*changed\*\* drive RAPID-2T, hours: 120 h → 502 h/);
  });

  it('can be held against another by their files alone', async () => {
    const files = { 'old.asbuilt.yaml': record('A1', 120, '2026-11-25'), 'new.asbuilt.yaml': record('A2', 502, '') };
    const { out, status } = await fettle(files, 'compare', 'old.asbuilt.yaml', 'new.asbuilt.yaml', '--format', 'json');
    const comparison = JSON.parse(out) as Comparison;
    expect(valid(comparison), JSON.stringify(valid.errors)).toBe(true);
    expect(comparison.files.map(({ state, record: told }) => [state, told!.changes.length])).toEqual([['changed', 2]]);
    expect(status).toBe(0);
    const none = await fettle(files, 'compare', 'old.asbuilt.yaml', 'gone.asbuilt.yaml');
    expect([none.status, none.err]).toEqual([2, expect.stringContaining('gone.asbuilt.yaml')]);
  });
});
