// Builds and part files drafted from machines that stand: kept by the same machine, and never over a file.
import { describe, expect, it } from 'vitest';
import { desk, gauge, wrongDesk, wrongGauge } from '../machines/made';
import { fettle } from '../support/command';
import { outputsOf, secrets, type MadeMachine } from '../support/machines';
import { windowsOutputsOf } from '../support/machines-windows';

const inFolder = (outputs: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(outputs).map(([name, text]) => [`out/${name}`, text]));
const drafting = (files: Record<string, string>) => fettle(files, 'draft', 'build', 'out', '--as', 'Map room');

/** What wears, fails or runs too slowly is found of a drafted build as well; the rest it takes as it is. */
const STATES = /^built-(?:drive-failing|drive-used|fans-still|link-slower|too-hot)$/;

const machines: readonly (readonly [string, MadeMachine, boolean])[] = [
  ['desk', desk, true],
  ['gauge', gauge, true],
  ['worn desk', wrongDesk, false],
  ['worn gauge', wrongGauge, false],
];
const systems = [
  ['Linux', outputsOf],
  ['Windows', windowsOutputsOf],
] as const;

describe.each(machines)('of a %s', (_, machine, isSound) => {
  it.each(systems)('under %s it is kept by the same machine', async (_system, of) => {
    const outputs = inFolder(of(machine));
    const drafted = await drafting(outputs);
    expect(drafted).toMatchObject({ status: 0, err: '' });
    for (const text of drafted.files.values())
      for (const secret of [...Object.values(secrets), 'SECRET']) expect(text).not.toContain(secret);
    const files = { ...outputs, ...Object.fromEntries(drafted.files) };
    const held = await fettle(files, 'verify', 'map-room.pcbuild.yaml', 'out', '--format', 'json');
    const { findings } = JSON.parse(held.out) as { findings: { grade: string; id: string }[] };
    const told = findings.filter(({ grade }) => grade !== 'unknown').map(({ id }) => id);
    if (isSound) expect(told).toEqual([]);
    else for (const id of told) expect(id).toMatch(STATES);
    const checked = await fettle(files, 'check', 'map-room.pcbuild.yaml', 'parts', '--from', 'note');
    expect(checked.out).not.toMatch(/unknown-key|not-a-|yaml-|part-not-found|harm {3}|stop {3}|shortfall {3}/);
  });
});

it('has a part file of each part that says what it is called', async () => {
  const { files } = await drafting(inFolder(outputsOf(desk)));
  expect([...files.keys()].sort()).toEqual([
    'map-room.pcbuild.yaml',
    'parts/calder/c7-840.part.yaml',
    'parts/norrvik/b7-forge.part.yaml',
    'parts/phr/p32-4k-120.part.yaml',
    'parts/unknown-maker/lumen-rapid-2t.part.yaml',
    'parts/unknown-maker/lumen-vault-12t.part.yaml',
  ]);
  const build = files.get('map-room.pcbuild.yaml')!;
  expect(build).toContain('  board: { use: norrvik/b7-forge, firmware: B7FORGE 1.20 } # out/dmidecode.txt:20');
  expect(build).toContain('  processor: { use: calder/c7-840 } # out/lscpu.json:');
  expect(build).toContain('    - { name: drive-2, use: unknown-maker/lumen-vault-12t } # out/smartctl-sda.json:');
  // Modules that name no maker are spelled out.
  expect(build).toContain('    - { model: DDR5 6000 32G, capacity: 32 GiB, ');
  expect(files.get('parts/norrvik/b7-forge.part.yaml')).toContain(
    'kind: board\nmaker: Norrvik # out/dmidecode.txt:19\nmodel: B7 FORGE # out/dmidecode.txt:20\n' +
      'identified-by: [B7 FORGE]\n',
  );
  // The name that the machine says is kept whole; the maker’s word in front of it is no part of the model.
  expect(files.get('parts/calder/c7-840.part.yaml')).toMatch(
    /\nmodel: C7 840 # .*\nidentified-by: \[Calder C7 840\]\n/,
  );
  expect(files.get('parts/unknown-maker/lumen-vault-12t.part.yaml')).toMatch(
    /kind: drive\nmodel: Lumen Vault 12T # .*\nbus: SATA # .*\nlink: SATA 3 # .*\ncapacity: 12 TB # .*\nidentified-by:/,
  );
});

it('lists what may be no part of the machine in comments', async () => {
  const disks = [
    { name: 'sda', type: 'disk', rm: false, tran: 'usb', vendor: 'TARN    ', model: 'POCKET 1T', size: 1e12 },
    { name: 'nvme0n1', type: 'disk', rm: false, tran: 'nvme', model: 'RAPID-2T', size: 2e12 },
  ];
  const outputs = {
    'lsblk.json': JSON.stringify({ blockdevices: disks }),
    ...windowsOutputsOf({
      ...gauge,
      modules: [],
      drives: [],
      displays: [],
      cards: [{ ...desk.cards![0]!, port: '', id: '1f0c:4680' }, ...desk.cards!],
    }),
  };
  const { files } = await drafting(inFolder(outputs));
  expect([...files.keys()].sort()).toEqual([
    'map-room.pcbuild.yaml',
    'parts/norrvik/i5-skiff.part.yaml',
    'parts/unknown-maker/rapid-2t.part.yaml',
  ]);
  expect(files.get('map-room.pcbuild.yaml')!.split('# No output')[1]!.split('\n').slice(1)).toEqual([
    '# drives: # on USB',
    '#   - { maker: TARN, model: POCKET 1T, bus: USB, capacity: 1 TB, identified-by: [POCKET 1T] } # out/lsblk.json:1',
    '# graphics: # perhaps built into the processor or the board',
    '#   - { model: Orrery Graphics, identified-by: [1f0c:4680] } # out/Win32_VideoController.json:4',
    '',
  ]);
  // Behind a port, it is a card.
  expect(files.get('map-room.pcbuild.yaml')).toContain(
    '  graphics:\n    - { model: Orrery Graphics, identified-by: [1a2b:7480] } # out/Win32_VideoController.json:9\n',
  );
});

it('uses a part file that stands, leaves one of another kind, and is written over nothing', async () => {
  const outputs = inFolder(outputsOf(desk));
  const kept = await drafting({ ...outputs, 'parts/norrvik/b7-forge.part.yaml': 'kind: board\nmodel: B7 Forge\n' });
  expect([...kept.files.keys()]).not.toContain('parts/norrvik/b7-forge.part.yaml');
  expect(kept.files.get('map-room.pcbuild.yaml')).toContain('board: { use: norrvik/b7-forge,');
  const quoted = await drafting({ ...outputs, 'parts/norrvik/b7-forge.part.yaml': '"kind": "board"\n' });
  expect(quoted.files.get('map-room.pcbuild.yaml')).toContain('board: { use: norrvik/b7-forge,');
  const other = await drafting({ ...outputs, 'parts/norrvik/b7-forge.part.yaml': 'kind: case\n' });
  expect(other.files.get('map-room.pcbuild.yaml')).toContain('board: { maker: Norrvik, model: B7 FORGE,');
  const again = await drafting({ ...outputs, 'map-room.pcbuild.yaml': kept.files.get('map-room.pcbuild.yaml')! });
  expect(again).toMatchObject({ status: 2, files: new Map() });
});
