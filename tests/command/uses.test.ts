// Where a part, a place or a firmware version is used, and what comes of it if the part file said otherwise.
import { describe, expect, it } from 'vitest';
import { fettle, type Ran } from '../support/command';
import { MemoryHost } from '../support/memory-host';

const board = 'parts/norrvik/i5-skiff.part.yaml';
const tower = 'parts/boreas/tower-155.part.yaml';
const files: Record<string, string> = {
  'fettle.yaml': 'format: 1\n',
  [board]:
    'kind: board\nfirmware: { versions: ["1.00", "1.04"] }\nslots:\n' +
    '  M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4], from: processor, takes-from: [] }\n',
  [tower]: 'kind: cooler\nheight: 155 mm # with fan\nprice: 48 EUR\n',
  'parts/boreas/low-48.part.yaml': 'kind: cooler\nheight: 48 mm\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 160 mm\n',
  'parts/tarn/low-1.part.yaml': 'kind: case\ncooler-height: 150 mm\n',
  'desk.pcbuild.yaml':
    'format: 1\nbuild: Desk\nparts:\n  board: { use: norrvik/i5-skiff, firmware: "1.00" }\n' +
    '  cooler: { use: boreas/tower-155 }\n  case: { use: tarn/mid-3 }\n  drives:\n    - { name: scratch, bus: NVMe, slot: M2_1 }\n' +
    'bench:\n  firmware-update: { to: "1.04" }\n',
  'benches/low.pcbuild.yaml':
    'format: 1\nbuild: Low\nparts:\n  cooler: { use: boreas/tower-155 }\n  case: { use: tarn/low-1 }\n',
  'other.pcbuild.yaml': 'format: 1\nbuild: Other\nparts:\n  cooler: { use: boreas/low-48 }\n',
  'guide.md': 'Text.\n\n```pcbuild\nbuild: Fenced\nparts:\n  cooler: { use: boreas/tower-155 }\n```\n',
};
const uses = (...words: string[]): Promise<Ran> => fettle(files, 'uses', ...words);

describe('uses', () => {
  it('lists the builds that use a part, by its name or its file, those in guides too', async () => {
    const { out, status } = await uses('boreas/tower-155');
    expect([out, status]).toEqual([
      `boreas/tower-155: used by 3 of 4 builds.

  Low     benches/low.pcbuild.yaml:4  parts.cooler  boreas/tower-155
  Desk    desk.pcbuild.yaml:5         parts.cooler  boreas/tower-155
  Fenced  guide.md:6                  parts.cooler  boreas/tower-155
`,
      0,
    ]);
    expect((await uses(tower)).out).toContain('used by 3 of 4 builds');
    expect((await uses('boreas/tower-155', 'benches')).out).toContain('used by 1 of 1 build.');
  });

  it('lists what stands in a slot, and what runs a firmware or is brought to it', async () => {
    const rows = async (...words: string[]): Promise<string[]> =>
      (
        JSON.parse((await uses(...words, '--format', 'json')).out) as { uses: { file: string; subject: string }[] }
      ).uses.map(({ file, subject }) => `${file} ${subject}`);
    expect(await rows('M2_1')).toEqual(['desk.pcbuild.yaml parts.drives.scratch']);
    expect(await rows('1.04')).toEqual(['desk.pcbuild.yaml parts.board']);
    expect(await rows('norrvik/i5-skiff', '--firmware', '1.00')).toEqual(['desk.pcbuild.yaml parts.board']);
    expect(await rows('norrvik/i5-skiff', '--firmware', '2.00')).toEqual([]);
    expect(await rows('M2_9')).toEqual([]);
  });

  it('lists what any key puts into a place: a pump, lights, memory, a fan, a display', async () => {
    const loop =
      'format: 1\nbuild: Loop\nparts:\n  cooler: { mount: top, header: CPU_FAN, pump-header: PUMP, light-header: RGB_1 }\n' +
      '  memory: [{ name: pair, slots: [A2, B2] }]\n  fans: [{ name: rear, mount: back, header: SYS_1 }]\n' +
      '  displays: [{ name: left, port: DP_1 }]\n';
    const found = async (word: string): Promise<string> =>
      (await fettle({ 'loop.pcbuild.yaml': loop }, 'uses', word, '--format', 'json')).out;
    for (const [word, subject] of [
      ['top', 'cooler'],
      ['PUMP', 'cooler'],
      ['RGB_1', 'cooler'],
      ['B2', 'memory.pair'],
      ['back', 'fans.rear'],
      ['DP_1', 'displays.left'],
    ] as const)
      expect(await found(word), word).toContain(`"subject":"parts.${subject}"`);
  });

  it('never ends green over a name that nothing bears, or a file that was not read', async () => {
    const { err, status } = await uses('boreas/tower-15');
    expect([status, err]).toEqual([
      2,
      'fettle: boreas/tower-15: there is no part file of that name under ., and no build names it.\n',
    ]);
    const denied = new MemoryHost([...Object.entries(files), ['other.pcbuild.yaml', { trouble: 'may not be read.' }]]);
    expect((await fettle(denied, 'uses', 'boreas/tower-155')).status).toBe(2);
  });
});

describe('--if', () => {
  it('says which builds break, which heal, and what moves', async () => {
    const higher = await uses('boreas/tower-155', '--if', 'height: 165 mm', '--if', 'price: 52 EUR');
    expect(higher.out.split('\n')[0]).toBe(
      'as it stands → with height: 165 mm, price: 52 EUR: 1 stop new; 1 stop worse.',
    );
    expect(higher.out).toContain('through parts/boreas/tower-155.part.yaml');
    expect(higher.out).toMatch(/price +48 EUR → 52 EUR/);
    expect(higher.out).toContain('4 builds, 3 touched.');
    expect(higher.status).toBe(1);
    const lower = await uses('boreas/tower-155', '--if', 'height: 149 mm');
    expect([lower.out.split('\n')[0], lower.status]).toEqual([
      'as it stands → with height: 149 mm: 1 stop cleared.',
      0,
    ]);
    expect((await uses('boreas/tower-155', '--if', 'height:')).out).toContain(
      'not known any more: height of boreas/tower-155',
    );
  });

  it('says the same as a comparison with the part file so written', async () => {
    const { out } = await uses('boreas/tower-155', '--if', 'height: 165 mm', '--format', 'json');
    const { comparison } = JSON.parse(out) as {
      comparison: { files: { file: string; findings: object[]; moved: object[] }[] };
    };
    const after = { ...files, [tower]: files[tower]!.replace('155 mm', '165 mm') };
    const both = { ...prefixed('a', files), ...prefixed('b', after) };
    const compared = JSON.parse((await fettle(both, 'compare', 'a', 'b', '--format', 'json')).out) as typeof comparison;
    const of = (files: typeof comparison.files): object[] =>
      files
        .filter(({ file }) => file.endsWith('.pcbuild.yaml'))
        .map(({ file, findings, moved }) => ({
          file,
          findings: findings.length,
          moved: JSON.stringify(moved).replaceAll(/"[^"]*tower-155.part.yaml"/g, ''),
        }))
        .sort((a, b) => (a.file < b.file ? -1 : 1));
    expect(of(comparison.files)).toEqual(of(compared.files));
  });

  it.each([
    ['hieght: 165 mm', 'The key'],
    ['height: tall', 'is not a length'],
    ['height: 165', '165'],
    ['height', 'expected a key and a value'],
    ['a: 1\nb: 2', 'expected a key and a value'],
    ['height.of: 3 mm', 'cannot be put in there'],
  ])('is refused with %j', async (said, words) => {
    const { err, status } = await uses('boreas/tower-155', '--if', said);
    expect([status, err]).toEqual([2, expect.stringContaining(words)]);
  });

  it('is asked of parts alone', async () => {
    expect((await uses('M2_1', '--if', 'height: 1 mm')).err).toContain('is no part');
  });
});

const prefixed = (folder: string, of: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(of).map(([name, text]) => [`${folder}/${name}`, text]));
