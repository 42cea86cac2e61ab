// Names that objects have of their own are plain names wherever a name can stand (promise P22): a build written with
// one
// of them gives what it gives with any other name.
import { describe, expect, it } from 'vitest';
import { provenFixes } from '../../server/src/core/judge/prove';
import { completions, partsNamed } from '../support/completions';
import { definition } from '../../server/src/features/definition';
import { fixAllEdits } from '../../server/src/features/fix-all';
import { hover } from '../../server/src/features/hover';
import { symbols } from '../../server/src/features/symbols';
import { fettle } from '../support/command';
import { view } from '../support/view';

const owned = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'valueOf',
  '__defineGetter__',
  'isPrototypeOf',
];
const plain = 'qqqqqqqq';

/** A build, its parts and its house in which `NAME` stands wherever people may choose a name. */
const filesWith = (name: string): Record<string, string> =>
  Object.fromEntries(
    Object.entries({
      'fettle.yaml':
        'format: 1\nparts: [NAME, parts]\ngrades: { NAME: note, cooler-too-tall: short }\nmargins: { NAME: ' +
        '3 mm }\nNAME: 1\n',
      'NAME.pcbuild.yaml': `format: 1
build: NAME
NAME: { NAME: 1 }
parts:
  board:
    use: NAME/NAME
    firmware: NAME
    slots: { NAME: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x2], from: processor, takes-from: [NAME] }, M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4], takes-from: [NAME] } }
    ports: { NAME: {} }
    headers: { NAME: { kind: fan, pins: 4, current: 1 A } }
    NAME: 2
  processor: { use: NAME/other, NAME: {} }
  cooler: { height: 158 mm }
  case: { cooler-height: 155 mm, bays: { NAME: 2 }, fan-places: { NAME: { sizes: [120 mm], count: 1 } }, cable-paths: { NAME: 520 mm } }
  drives:
    - { name: NAME, bus: NVMe, shape: M.2, link: PCIe 4 x4, read: 7 GB/s, slot: NAME, capacity: 1 TB }
    - { name: other, bus: SATA, shape: NAME, port: NAME }
  fans: [{ size: 120 mm, mount: NAME, header: NAME, flow: NAME, current: 2 A }]
  supply: { rating: 550 W, cables: NAME, connectors: { NAME: 1 }, rails: { NAME: { voltage: 12 V, current: 40 A } } }
  NAME: { use: NAME/NAME }
expect:
  drives: { NAME: { read: 6 GB/s, capacity: 2 TB }, nobody: { read: 1 GB/s } }
  arrays: { NAME: { drives: [NAME, other], kind: NAME } }
  NAME: {}
accept:
  - { finding: NAME, at: NAME, because: NAME }
  - { finding: cooler-too-tall, at: NAME, because: NAME }
`,
      'parts/NAME/NAME.part.yaml':
        'kind: board\nmaker: NAME\nfirmware: { versions: [NAME, "2"] }\nprocessors: [{ family: NAME, ' +
        'since: NAME }]\nmemory: { slots: [NAME], channels: { NAME: [NAME] } }\n',
      'parts/NAME/other.part.yaml': 'kind: NAME\nNAME: 3\n',
    }).map(([path, text]) => [path.replaceAll('NAME', name), text.replaceAll('NAME', name)]),
  );

async function said(name: string): Promise<unknown> {
  const { status, out, err } = await fettle(
    filesWith(name),
    'check',
    '--format',
    'json',
    '--working',
    '--from',
    'unknown',
  );
  expect(err).toBe('');
  // Columns and the order of names depend on the name; what is found does not.
  const { files } = JSON.parse(out) as {
    files: { file: string; findings: { id: string; grade: string; place?: string; message: string }[] }[];
  };
  const lines = files.flatMap(({ file, findings }) =>
    findings.map(({ id, grade, message }) => `${file} ${grade} ${id} ${message}`),
  );
  return { status, lines: lines.map((line) => line.replaceAll(name, plain)).sort() };
}

describe.each(owned)('%s', (name) => {
  it('gives the findings of any other name', async () => {
    expect(await said(name)).toEqual(await said(plain));
  });

  it('is no trouble to any feature at any place', () => {
    const files = filesWith(name);
    const build = `${name}.pcbuild.yaml`;
    const { [build]: text, ...others } = files;
    const shown = view(`¦${text}`, others, build);
    expect(shown.view.judgement.failed).toEqual([]);
    for (let offset = 0; offset < text!.length; offset += 7) {
      const position = shown.view.doc.lines.positionAt(offset);
      hover(shown.view, position, { kind: 'markdown' });
      definition(shown.view, position);
      completions(shown.view, position, { parts: () => partsNamed(`${name}/${name}`) });
    }
    expect(symbols(shown.view.doc).length).toBeGreaterThan(3);
    for (const finding of shown.view.judgement.findings)
      provenFixes(shown.view.build!, shown.view.judgement, finding, shown.candidates);
    fixAllEdits(shown.view);
    expect(({} as Record<string, unknown>).use ?? Object.prototype.toString.call({})).toBe('[object Object]');
  });

  it.each([
    ['explain', name],
    ['missing', `${name}.pcbuild.yaml`],
    ['swap', `${name}.pcbuild.yaml`, `drives.${name}`],
    ['swap', `${name}.pcbuild.yaml`, name],
  ])('is a plain word to `%s %s %s`', async (...words) => {
    const { status, err } = await fettle(filesWith(name), ...words);
    expect([0, 1, 2]).toContain(status);
    expect(err).not.toMatch(/fault of its own|is not a function|undefined/);
  });
});

it('a build without any of them says something of each place', async () => {
  const { lines } = (await said(plain)) as { lines: string[] };
  for (const id of [
    'unknown-key',
    'accepted-but-gone',
    'capacity-short',
    'choice-unknown',
    'drive-slower-than-promised',
  ])
    expect(lines.join('\n')).toContain(id);
});
