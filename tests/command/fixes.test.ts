// Fixes in the report of `fettle check`: the best proven one of each finding, all of them on request, none past a
// number.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';

const build = (name: string): string => `format: 1
build: ${name}
parts:
  board:
    socket: AM5
    slots:
      M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 5 x4], from: processor }
      M2_2: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 3 x2], from: chipset }
  cooler: { use: boreas/tower }
  case: { use: tarn/mid }
  drives:
    - { name: scratch, slot: M2_2, shape: M.2, size: 2280, key: M, bus: NVMe, link: PCIe 4 x4, read: 7 GB/s }
    - { name: vault, use: lumen/small }
expect:
  drives: { scratch: { read: 5 GB/s }, vault: { capacity: 2 TB } }
`;
const files = {
  'fettle.yaml': 'format: 1\n',
  'desk.pcbuild.yaml': build('Desk'),
  'parts/boreas/tower.part.yaml': 'kind: cooler\nheight: 158 mm\n',
  'parts/boreas/low.part.yaml': 'kind: cooler\nheight: 150 mm\n',
  'parts/lumen/small.part.yaml': 'kind: drive\ncapacity: 1 TB\n',
  'parts/lumen/large.part.yaml': 'kind: drive\ncapacity: 2 TB\n',
  'parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\n',
};
interface Report {
  readonly files: {
    readonly file: string;
    readonly totals?: object;
    readonly findings: {
      readonly id: string;
      readonly fixes: { title: string; edits: object[]; givesWay: boolean }[];
    }[];
  }[];
  readonly explained: Record<string, { readonly what: string }>;
  readonly leftOut: { readonly fixesNotSought: number };
}
const report = async (given: Record<string, string>, ...words: string[]): Promise<Report> =>
  JSON.parse((await fettle(given, 'check', '--format', 'json', ...words)).out) as Report;

describe('the fixes of a finding', () => {
  it('has the best one under its sentence', async () => {
    const { out } = await fettle(files, 'check', 'desk.pcbuild.yaml');
    expect(out).toMatch(/drive-slower-than-promised\n {2}mend {7}Move scratch to M2_1\n/);
    expect(out).toMatch(/cooler-too-tall\n {2}mend {7}Use boreas\/low as cooler\n/);
    expect(out).not.toContain('Lower the promise');
  });

  it('are all listed on request, those that give way last', async () => {
    const { out } = await fettle(files, 'check', 'desk.pcbuild.yaml', '--all-fixes');
    const listed = /capacity-short\n((?: {2}(?:mend|give way) .*\n)+)/.exec(out)?.[1] ?? '';
    expect(listed.match(/\S.*/g)).toEqual([
      'mend       Use lumen/large as drive',
      'give way   Lower the promise to 1 TB',
    ]);
  });

  it('stand in JSON with their edits, beside what the checks are about and what the build comes to', async () => {
    const { files: judged, explained } = await report(files, 'desk.pcbuild.yaml');
    const slow = judged[0]!.findings.find(({ id }) => id === 'drive-slower-than-promised')!;
    const line = 11;
    expect(slow.fixes).toMatchObject([
      {
        title: 'Move scratch to M2_1',
        edits: [{ range: { start: { line, character: 29 }, end: { line, character: 33 } }, text: 'M2_1' }],
        givesWay: false,
      },
    ]);
    expect(explained['drive-slower-than-promised']?.what).toMatch(/\w/);
    expect(judged[0]!.totals).toBeDefined();
  });

  it('are shared among the builds of a run', async () => {
    const many = Object.fromEntries([
      ...Object.entries(files),
      ...Array.from({ length: 40 }, (_, i) => [`b${i}.pcbuild.yaml`, build(`B${i}`)]),
    ]) as Record<string, string>;
    const { files: judged } = await report(many);
    for (const { file, findings } of judged.filter((one) => one.file.endsWith('.pcbuild.yaml')))
      expect(
        findings.some(({ fixes }) => (fixes?.length ?? 0) > 0),
        file,
      ).toBe(true);
  });

  it('are looked for up to a number of findings, and what was left is told', async () => {
    const many = Object.fromEntries([
      ...Object.entries(files),
      ...Array.from({ length: 40 }, (_, i) => [`b${i}.pcbuild.yaml`, build(`B${i}`)]),
    ]) as Record<string, string>;
    const { leftOut } = await report(many);
    expect(leftOut.fixesNotSought).toBeGreaterThan(0);
    expect((await fettle(many, 'check')).out).toMatch(/Fixes of \d+ findings were not looked for; --all-fixes looks/);
    expect((await report(many, '--all-fixes')).leftOut.fixesNotSought).toBe(0);
  });
});
