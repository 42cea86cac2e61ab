// Findings that stood when they were recorded: let stand until a day, by a name, and never harm.
import { describe, expect, it } from 'vitest';
import { fettle, fettleAmong, type Ran } from '../support/command';
import { MemoryHost } from '../support/memory-host';

const desk = (cooler: string, more = ''): string =>
  `format: 1\nbuild: Desk\nparts:\n  cooler: { use: ${cooler} }\n  case: { use: tarn/mid-3 }\n${more}`;

const base: Record<string, string> = {
  'fettle.yaml': 'format: 1\nknown: [old.known.yaml]\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 160 mm\n',
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\n',
  'parts/boreas/tower-168.part.yaml': 'kind: cooler\nheight: 168 mm\n',
  'desk.pcbuild.yaml': desk('boreas/tower-155').replace('Desk', 'New desk'),
  'old.pcbuild.yaml': desk('boreas/tower-168'),
};
const tower = 'parts/boreas/tower-168.part.yaml';
const at = (height: number): string => `kind: cooler\nheight: ${height} mm\n`;
const answering = ['--by', 'station workshop', '--until', '2027-06-30'];

const record = (files: Record<string, string>, ...more: string[]): Promise<Ran> =>
  fettle(files, 'check', '--record-known', 'old.known.yaml', ...more);
/** The files with the record that a run writes. */
async function recorded(files: Record<string, string>, ...more: string[]): Promise<Record<string, string>> {
  const { files: written } = await record(files, ...more);
  return { ...files, 'old.known.yaml': written.get('old.known.yaml')! };
}
async function open(files: Record<string, string> | MemoryHost, ...more: string[]): Promise<string[]> {
  const { out } = await fettle(files, 'check', '--format', 'json', ...more);
  const { files: judged } = JSON.parse(out) as {
    files: { file: string; findings: { id: string; accepted?: unknown }[] }[];
  };
  return judged.flatMap(({ file, findings }) =>
    findings.filter(({ accepted }) => !accepted).map(({ id }) => `${file} ${id}`),
  );
}
const known = await recorded(base, ...answering);

describe('--record-known', () => {
  it('writes down what stands, one fact a line, by whom and until when', async () => {
    const { status, err } = await record(base, ...answering);
    expect([status, err]).toEqual([0, 'fettle: old.known.yaml: 3 findings taken in, 0 kept, 0 dropped.\n']);
    expect(known['old.known.yaml']).toContain(`      - finding: cooler-too-tall
        at: parts.cooler
        grade: stop
        past: 8 mm
        says: The cooler stands 168 mm tall; the case leaves 160 mm.
        by: station workshop
        since: 2026-11-25
        until: 2027-06-30
        mark: 55454fc54e1f7d21
`);
  });

  it('lets that stand, and says how much', async () => {
    const { status, out } = await fettle(known, 'check');
    expect(status).toBe(0);
    expect(out).toContain('3 findings are known and let stand; --accepted shows them.\nNo findings.');
    expect((await fettle(base, 'check')).status).toBe(2);
    expect((await fettle({ ...known, 'old.known.yaml': 'files: {}\n' }, 'check')).status).toBe(1);
    expect((await fettle(known, 'check', '--accepted')).out.replaceAll(/\s+/g, ' ')).toContain(
      'A stop finding, known up to 8 mm. It stood when findings were recorded on 2026-11-25, in old.known.yaml. By ' +
        'station',
    );
  });

  it('counts what got worse, with what it was known at', async () => {
    expect(await open({ ...known, [tower]: at(169) })).toEqual(['old.pcbuild.yaml cooler-too-tall']);
    expect(await open({ ...known, [tower]: at(166) })).toEqual([]);
    const { out, status } = await fettle({ ...known, [tower]: at(169) }, 'check');
    expect(out).toContain('It is known at 8 mm past its limit, and is worse now; it counts.');
    expect(status).toBe(1);
    expect(await open({ ...known, 'fettle.yaml': `${base['fettle.yaml']}grades: { parts-left-out: stop }\n` })).toEqual(
      ['desk.pcbuild.yaml parts-left-out', 'old.pcbuild.yaml parts-left-out'],
    );
  });

  it('shrinks by itself: drops what is cleared, and lets a better one get no worse again', async () => {
    const better = await recorded({ ...known, [tower]: at(162) });
    expect(better['old.known.yaml']).toContain('past: 2 mm');
    expect(await open({ ...better, [tower]: at(168) })).toEqual(['old.pcbuild.yaml cooler-too-tall']);
    const cleared = { ...known, [tower]: at(158) };
    expect((await fettle(cleared, 'check')).out).toContain(
      '1 known finding is found no more; recording anew drops it.',
    );
    expect((await record(cleared)).err).toBe('fettle: old.known.yaml: 0 findings taken in, 2 kept, 1 dropped.\n');
    const without = Object.fromEntries(Object.entries(known).filter(([name]) => name !== 'old.pcbuild.yaml'));
    expect((await recorded(without))['old.known.yaml']).not.toContain('old.pcbuild.yaml');
    expect((await fettle(without, 'check')).out).toContain('2 known findings are found no more');
  });

  it('takes nothing new in without a name and a day, and keeps both for what it took in before', async () => {
    const more = { ...known, 'new.pcbuild.yaml': desk('boreas/tower-168') };
    const shrunk = await record(more);
    expect(shrunk.files.get('old.known.yaml')).toBe(known['old.known.yaml']);
    expect([shrunk.status, shrunk.err]).toEqual([
      1,
      'fettle: old.known.yaml: 0 findings taken in, 3 kept, 0 dropped.\nfettle: 2 findings stay open: not recorded.\n',
    ]);
    const text = (await recorded(more, '--by', 'bench two', '--until', '2027-01-31'))['old.known.yaml']!;
    expect(text.match(/by: station workshop/g)).toHaveLength(3);
    expect(text.match(/by: bench two\n {8}since: 2026-11-25\n {8}until: 2027-01-31/g)).toHaveLength(2);
    expect((await recorded({ ...more, 'old.known.yaml': text }, '--on', '2026-12-24'))['old.known.yaml']).toBe(text);
  });

  it('counts again from the day on, and says so', async () => {
    expect((await fettle(known, 'check', '--on', '2027-06-29')).status).toBe(0);
    const { out, status } = await fettle(known, 'check', '--on', '2027-06-30');
    expect(out).toContain('It was known and let stand until 2027-06-30, by station workshop: that day has come.');
    expect(out.replaceAll(/\s+/g, ' ')).toContain('was let stand until 2027-06-30; it counts again. known-out-of-date');
    expect(status).toBe(1);
  });

  it('follows a build that is moved, and one whose parts are renamed or laid out otherwise', async () => {
    const { 'old.pcbuild.yaml': text = '', ...rest } = known;
    expect(await open({ ...rest, 'benches/old.pcbuild.yaml': text })).toEqual([]);
    expect(await open({ ...rest, 'benches/first.pcbuild.yaml': text })).toEqual([]);
    const copied = { ...known, 'copy.pcbuild.yaml': text };
    expect(await open(copied)).toHaveLength(2);
    const named = text.replace('{ use: boreas/tower-168 }', '\n    use: boreas/tower-170');
    expect(await open({ ...rest, 'parts/boreas/tower-170.part.yaml': at(168), 'old.pcbuild.yaml': named })).toEqual([]);
    const crlf = Object.fromEntries(Object.entries(known).map(([name, one]) => [name, one.replaceAll('\n', '\r\n')]));
    expect(await open(crlf)).toEqual([]);
  });

  it.each([
    [['--by', 'workshop'], '--by goes with --until DAY: nothing is let stand for ever.'],
    [['--until', '2027-06-30'], '--until goes with --by WHO: nothing is let stand without a name.'],
    [[...answering.slice(0, 3), '2026-11-25'], '--until 2026-11-25: that day has come; name a later one.'],
    [[...answering, '--only-new', 'main'], '--record-known records all that stands here: leave the other option out.'],
    [[], 'old.known.yaml: nothing is recorded yet; say by --by WHO and --until DAY who lets it stand until when.'],
  ])('is refused with %s', async (words, said) => {
    const { err, status, files } = await record(base, ...words);
    expect([status, files.size]).toEqual([2, 0]);
    expect(err).toContain(`fettle: ${said}`);
  });

  it('is refused into a file of another name, one outside, and over one that cannot be read whole', async () => {
    for (const name of ['old.yaml', '../old.known.yaml', '.git/old.known.yaml'])
      expect((await fettle(base, 'check', '--record-known', name, ...answering)).status).toBe(2);
    const broken = { ...known, 'old.known.yaml': `<<<<<<< ours\n${known['old.known.yaml']}` };
    const { err, files } = await record(broken, ...answering);
    expect([files.size, err]).toEqual([
      0,
      'fettle: old.known.yaml: cannot be read whole, so recording would lose what it says; mend it first.\n',
    ]);
  });

  it('records nothing where something was not read', async () => {
    const denied = { trouble: 'may not be read.' };
    const host = new MemoryHost([...Object.entries(known), ['old.pcbuild.yaml', denied]]);
    const { files, status } = await fettle(host, 'check', '--record-known', 'old.known.yaml', ...answering);
    expect([files.size, status]).toEqual([0, 2]);
  });

  it('says what settings lack for the record to count', async () => {
    const { err } = await record({ ...base, 'fettle.yaml': 'format: 1\n' }, ...answering);
    expect(err).toContain('so that it counts, fettle.yaml is to say: known: [old.known.yaml]');
  });
});

describe('never hides', () => {
  const overloaded = {
    ...base,
    'hot.pcbuild.yaml':
      'format: 1\nbuild: Hot\nparts:\n  processor: { power: { sustained: 253 W } }\n' +
      '  graphics: { power: { sustained: 320 W } }\n' +
      '  supply: { rating: 550 W, rails: { +12V: { voltage: 12 V, current: 50 A } } }\n',
  };

  it('harm, whoever writes it down', async () => {
    const found = await open(overloaded);
    expect(found).toContain('hot.pcbuild.yaml supply-overloaded');
    const run = await record(overloaded, ...answering);
    expect([run.status, run.err]).toEqual([1, expect.stringMatching(/1 finding of harm: never recorded/)]);
    const text = run.files.get('old.known.yaml')!;
    const forged = `${text}  hot.pcbuild.yaml:\n    findings:\n      - { finding: supply-overloaded, at: parts.supply, grade: harm, by: x, until: 2099-01-01 }\n`;
    for (const one of [forged, forged.replace('grade: harm', 'grade: stop')]) {
      const files = { ...overloaded, 'old.known.yaml': one.replace(/ {2}hot.pcbuild.yaml:[^]*?(?= {2}hot)/, '') };
      expect(await open(files)).toContain('hot.pcbuild.yaml supply-overloaded');
      expect((await fettle(files, 'check')).status).toBe(1);
    }
  });

  it('what was not read, nor anything by a record that is not whole, not there or no such file', async () => {
    const broken = { ...base, 'old.pcbuild.yaml': '[[[[{' };
    const after = await recorded(broken, ...answering);
    expect(after['old.known.yaml']).not.toContain('yaml-syntax');
    expect((await fettle(after, 'check')).status).toBe(1);
    for (const text of [`<<<<<<< ours\n${known['old.known.yaml']}`, `${known['old.known.yaml']}files: {}\n`, '[[[{'])
      expect(await open({ ...known, 'old.known.yaml': text })).toContain('old.pcbuild.yaml cooler-too-tall');
    for (const name of ['gone.known.yaml', '../old.known.yaml', 'old.pcbuild.yaml']) {
      const { err, status } = await fettle({ ...known, 'fettle.yaml': `format: 1\nknown: [${name}]\n` }, 'check');
      expect([status, err]).toEqual([2, expect.stringContaining(`fettle: fettle.yaml: names `)]);
    }
  });
});

describe('with the settings of a revision', () => {
  it('the records of that revision count, and what a change writes into them does not', async () => {
    const before = { ...known, [tower]: at(158), 'old.known.yaml': '{}\n' };
    const words = ['check', '--settings-from', 'main', '--format', 'json'];
    const own = await fettleAmong({ main: before }, known, ...words);
    expect(own.status).toBe(1);
    expect((await fettleAmong({ main: known }, { ...known, 'old.known.yaml': '{}\n' }, ...words)).status).toBe(0);
  });

  it('a change of records alone shows in a comparison', async () => {
    const { out } = await fettleAmong({ main: { ...known, 'old.known.yaml': '{}\n' } }, known, 'compare', 'main');
    expect(out).toContain('1 stop, 2 note accepted.');
    const back = await fettleAmong({ main: known }, { ...known, 'old.known.yaml': '{}\n' }, 'compare', 'main');
    expect([back.status, back.out.split('\n')[0]]).toEqual([1, expect.stringContaining('1 stop, 2 note worse.')]);
  });
});

it('a record named alone brings the files it speaks of', async () => {
  const { out } = await fettle(known, 'check', '--format', 'json', 'old.known.yaml');
  const { files } = JSON.parse(out) as { files: { file: string }[] };
  expect(files.map(({ file }) => file)).toEqual(['desk.pcbuild.yaml', 'old.known.yaml', 'old.pcbuild.yaml']);
});
