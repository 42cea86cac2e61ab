// `fettle draft part`: what it writes checks clean; over nothing; asked where the sheet is not plain; with no word lost.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';
import { asHex, makeEdid, serialNumber, timing } from '../support/edid';

const house = { 'fettle.yaml': 'format: 1\n' };
const sheet = `Orrery G40 graphics card
Brand\tOrrery
Model\tG40
Interface\tPCIe 4.0 x16
Length\t242 mm
Height\tapprox. 121 mm
TGP\t160 W
Power connectors\t1 x 8-pin
Colour\tblack
`;
const path = 'parts/orrery/g40.part.yaml';

describe('a part file drafted from a sheet', () => {
  it('lies where maker and model say, holds each fact with its words and line, and checks clean', async () => {
    const { status, out, files } = await fettle({ ...house, 'g40.txt': sheet }, 'draft', 'part', 'g40.txt');
    expect(status).toBe(0);
    expect([...files.keys()]).toEqual([path]);
    const text = files.get(path)!;
    expect(text).toContain('kind: graphics\nmaker: Orrery');
    expect(text).toMatch(/^length: 242 mm +# line 5: Length: 242 mm$/m);
    expect(text).toMatch(/^ {2}PCIe 8-pin: 1 +# line 8: Power connectors: 1 x 8-pin$/m);
    expect(text).toContain('source:\n  title: Orrery G40 graphics card\n  read: 2026-11-25\n');
    expect(text).not.toMatch(/^height:/m);
    expect(out).toBe(
      `${path}: 6 facts.\n3 lines were not read; --all lists them.\nNext: hold it against the sheet, then fettle check ${path}\n`,
    );
    const judged = await fettle({ ...house, ...Object.fromEntries(files) }, 'check');
    expect(judged.out).toContain('No findings');
  });

  it('says where it gave numbers to what the sheet counts and does not name', async () => {
    const board = (headers: string): string =>
      `Socket: AM5\nMemory: 4 x DIMM, DDR5\nInternal connectors:\n${headers}\n`;
    for (const [headers, isSaid] of [
      ['3 x system fan headers (4-pin)', true],
      ['1 x fan header (SYS_FAN_1)', false],
    ] as const) {
      const words = ['draft', 'part', 'b.txt', '--kind', 'board', '--as', 'holm/b'];
      const { files } = await fettle({ ...house, 'b.txt': board(headers) }, ...words);
      const text = files.get('parts/holm/b.part.yaml')!;
      expect(text).toMatch(/SYS_FAN_1/);
      expect(text.includes('are numbered here')).toBe(isSaid);
    }
  });

  it('is not written of a kind that the sheet plainly does not speak of', async () => {
    const { status, err, files } = await fettle(
      { ...house, 'g.txt': sheet },
      'draft',
      'part',
      'g.txt',
      '--kind',
      'paste',
    );
    expect(status).toBe(2);
    expect(err).toBe('fettle: g.txt: it speaks of a graphics, not of a paste.\n');
    expect(files.size).toBe(0);
  });

  it('lists what was not read when asked', async () => {
    const { out } = await fettle({ ...house, 'g40.txt': sheet }, 'draft', 'part', 'g40.txt', '--all');
    expect(out).toContain('line 9: Colour: black');
  });

  it('is not written over one that stands; --add puts in what that lacks, and nothing else', async () => {
    const own = 'kind: graphics\nmaker: Orrery\nmodel: G40\nlength: 240 mm # measured\npower: { sustained: 150 W }\n';
    const workspace = { ...house, 'g40.txt': sheet, [path]: own };
    const refused = await fettle(workspace, 'draft', 'part', 'g40.txt');
    expect([refused.status, refused.files.size]).toEqual([2, 0]);
    expect(refused.err).toMatch(/it stands there already; --add/);
    const added = await fettle(workspace, 'draft', 'part', 'g40.txt', '--add');
    const text = added.files.get(path)!;
    expect(text.startsWith(own)).toBe(true);
    expect(
      text
        .slice(own.length)
        .split('\n')
        .map((line) => line.split('  ')[0]),
    ).toEqual(['link: PCIe 4 x16', 'connectors:', '', '']);
    const again = await fettle({ ...workspace, [path]: text }, 'draft', 'part', 'g40.txt', '--add');
    expect([again.status, again.files.size]).toEqual([0, 0]);
  });

  it('goes by the kind that the part file says, however it is written', async () => {
    const adding = (own: string) =>
      fettle(
        { ...house, 'parts/lumen/x.part.yaml': own, 'x.txt': 'Interface: SATA III\n' },
        ...['draft', 'part', 'x.txt', '--add', '--as', 'lumen/x', '--kind', 'drive'],
      );
    expect((await adding('"kind": \'drive\'\nmaker: Lumen\n')).files.size).toBe(1);
    const other = await adding('kind: "case"\nmaker: Lumen\n');
    expect([other.status, other.files.size]).toEqual([2, 0]);
    expect(other.err).toMatch(/it holds a case, and the sheet speaks of a drive/);
  });

  it('is put into groups that stand', async () => {
    const own = 'kind: drive\r\nmaker: Lumen\r\nmodel: X\r\ndraw:\r\n  peak: 9 W\r\ncapacity: 1 TB\r\n';
    const more = 'Average power consumption: 4 W\nInterface: SATA III\n';
    const files = { ...house, 'parts/lumen/x.part.yaml': own, 'x.txt': more };
    const { files: written } = await fettle(
      files,
      'draft',
      'part',
      'x.txt',
      '--add',
      '--as',
      'lumen/x',
      '--kind',
      'drive',
    );
    const text = written.get('parts/lumen/x.part.yaml')!;
    expect(text).toContain('  peak: 9 W\r\n  typical: 4 W  # line 1: Average power consumption: 4 W\r\ncapacity');
    expect(text).toMatch(/bus: SATA {2,}# line 2: Interface: SATA III\r\n/);
    expect(text.replaceAll('\r\n', '')).not.toContain('\n');
  });

  it('asks which of several variants is meant, and for a name or a kind that is not plain', async () => {
    const table = 'Lumen Flat SSD\nCapacity\t500 GB\t1 TB\nRead speed\t540 MB/s\t560 MB/s\n';
    const files = { ...house, 'a.txt': table, 'b.txt': 'Weight: 3 kg\n' };
    const variants = await fettle(files, 'draft', 'part', 'a.txt', '--as', 'lumen/flat');
    expect([variants.status, variants.files.size]).toEqual([2, 0]);
    expect(variants.err).toContain('500 GB, 1 TB; name one with --variant');
    const wrong = await fettle(files, 'draft', 'part', 'a.txt', '--as', 'lumen/flat', '--variant', '4 TB');
    expect(wrong.err).toContain('there is no variant 4 TB');
    const chosen = await fettle(files, 'draft', 'part', 'a.txt', '--as', 'lumen/flat', '--variant', '1 TB');
    expect(chosen.files.get('parts/lumen/flat.part.yaml')).toMatch(/^read: 560 MB\/s/m);
    expect((await fettle(files, 'draft', 'part', 'a.txt', '--variant', '1 TB')).err).toContain('--as maker/model');
    expect((await fettle(files, 'draft', 'part', 'b.txt')).err).toContain('say it with --kind');
    expect((await fettle(files, 'draft', 'part', 'c.txt')).err).toContain('c.txt: there is no such file');
  });

  it('is of no other part, where a table of several breaks off before the one that is asked for', async () => {
    const table = 'Model,Capacity,Form factor,Interface\nLK-0500,500 GB,M.2 2280,PCIe 4.0 x4\n';
    const words = ['draft', 'part', 't.csv', '--as', 'lumen/lk', '--kind', 'drive'];
    const none = await fettle({ ...house, 't.csv': table }, ...words, '--variant', 'LK-1000');
    expect([none.status, none.files.size]).toEqual([2, 0]);
    expect(none.err).toContain('there is no variant LK-1000; the sheet has LK-0500;');
    for (const variant of [[], ['--variant', 'LK-0500'], ['--variant', '1']]) {
      const { files } = await fettle({ ...house, 't.csv': table }, ...words, ...variant);
      expect(files.get('parts/lumen/lk.part.yaml')).toMatch(/^capacity: 500 GB/m);
    }
  });

  it('takes no width of a link from a figure with a fraction', async () => {
    const slot = async (width: string): Promise<string> => {
      const sheet = `Model: B7\nSocket: AM5\nPCIEX16_1: PCIe 5.0 ${width} slot\nChipset link: PCIe 4.0 x4\n`;
      const words = ['draft', 'part', 'b.txt', '--as', 'norrvik/b7', '--kind', 'board'];
      const { files } = await fettle({ ...house, 'b.txt': sheet }, ...words);
      return files.get('parts/norrvik/b7.part.yaml')!;
    };
    expect(await slot('x16')).toMatch(/^ +length: x16/m);
    expect(await slot('x16.3')).not.toMatch(/^ *(?:length|lanes|PCIEX16_1):/m);
  });

  it('comes from a display’s own data, and from several sheets of one part', async () => {
    const edid = makeEdid({
      maker: 'PHR',
      name: 'P24',
      input: 2,
      timings: [timing(1920, 1080, 59.95)],
      codes: [16],
      hdmi: { clock5Mhz: 68 },
    });
    const files = { ...house, 'p24.hex': asHex(edid), 'p24.txt': 'Model: P24\nPower consumption (typ): 18 W\n' };
    const { files: written, status } = await fettle(
      files,
      'draft',
      'part',
      'p24.hex',
      'p24.txt',
      '--as',
      'pharos/p24',
      '--kind',
      'display',
    );
    expect(status).toBe(0);
    const text = written.get('parts/pharos/p24.part.yaml')!;
    expect(text).toMatch(/^modes: \[1920x1080 @ 60 Hz\] +# p24\.hex: 1920x1080 at 59\.95 Hz, byte 54$/m);
    expect(text).toMatch(/typical: 18 W +# p24\.txt, line 2:/);
    expect(text).not.toContain(serialNumber.slice(0, 6));
  });

  it('tells lines that disagree, and doubt, as comments that hold no sign nobody sees', async () => {
    const text =
      'Brand: Boreas\nModel: F9\u202e\u001b[31m\nSpeed: 2200 RPM\nMax speed: 2500 RPM\nLength: 1\nCurrent: 0.2 A (peak)\nConnector: 4-pin\nSize: 92 mm\n';
    const { files, out } = await fettle(
      { ...house, 'f.txt': text },
      'draft',
      'part',
      'f.txt',
      '--kind',
      'fan',
      '--as',
      'boreas/f9',
    );
    const part = files.get('parts/boreas/f9.part.yaml')!;
    expect(part).toContain('# speed: the lines disagree: 2200 rpm (line 3: Speed: 2200 RPM); 2500 rpm (line 4:');
    expect(part).toContain('# perhaps: current: 0.2 A  (line 6: Current: 0.2 A (peak))');
    expect(part).not.toMatch(/^speed:/m);
    expect(part + out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  });
});
