// An archive whose alike drives bear names of their own, behind a controller of SAS, and a cabin’s computer with memory
// that is soldered down. What is to be found was written down before anything was run.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';
import { known, recorded, told, toldOfRecord } from '../support/held-machine';
import { outputsOf, type MadeDrive, type MadeMachine } from '../support/machines';

const vault = (name: string): string =>
  `    - { name: ${name}, maker: Lumen, model: Vault 10T, identified-by: [LMV10T-A1], bus: SATA, capacity: 10 TB }\n`;

const counts = {
  'bird-counts.pcbuild.yaml': `format: 1
build: Bird counts
parts:
  board:
    { model: S4 Pier, identified-by: [S4 PIER], memory: { slots: [DIMM_A1, DIMM_A2, DIMM_B1, DIMM_B2] } }
  processor: { model: Calder S4 224 }
  memory: { model: E5-4800-16, ecc: true, capacity: 16 GB, count: 2, speed: 4800 MT/s, slots: [DIMM_A2, DIMM_B2] }
  cards: [{ name: controller, model: H8, identified-by: ["2e77:0097"], link: PCIe 3 x8 }]
  drives:
${['north', 'south', 'east', 'west'].map(vault).join('')}expect:
  memory: { ecc: true }
`,
};

const disk = (name: string): MadeDrive => ({
  name,
  model: 'LMV10T-A1',
  bytes: 10_000_831_348_736,
  key: `${name.slice(-1)}00000`,
  isBehindSas: true,
});
const stick = { dimm: 1, sizeGB: 16, part: 'E5-4800-16', speed: 4800, running: 4800 };
const controller = { port: '00:01.0', id: '2e77:0097', classCode: '0107', words: 'Serial Attached SCSI controller' };

const archive: MadeMachine = {
  board: 'S4 PIER',
  firmware: '2.1',
  processor: 'Calder S4 224',
  ecc: 'Single-bit ECC',
  modules: ['A', 'B'].map((channel) => ({ ...stick, channel })),
  drives: ['sda', 'sdb', 'sdc', 'sdd'].map(disk),
  cards: [{ ...controller, link: ['8', 8], able: ['8', 8] }],
};

describe('an archive of four alike drives with names of their own', () => {
  it('is as its build wants it', async () => {
    expect(await told(counts, outputsOf(archive))).toEqual([]);
  });

  it('is found to lack one drive, and to have one that fails, though nothing tells which', async () => {
    const drives = [disk('sda'), { ...disk('sdb'), hours: 21_044 }, { ...disk('sdc'), failed: true }];
    expect(await told(counts, outputsOf({ ...archive, drives, ecc: 'None' }))).toEqual([
      '12 stop built-drive-failing',
      '11 shortfall built-drive-used',
      '13 shortfall built-part-missing',
      '15 shortfall built-ecc-off',
    ]);
  });
});

it('takes each drive for the same one from its record as from the outputs, and names none in it', async () => {
  const drives = [
    { ...disk('sda'), key: 'd00000', hours: 400 },
    { ...disk('sdb'), key: 'b00000', failed: true, hours: 3 },
    { ...disk('sdc'), key: 'c00000', hours: 21_044 },
    { ...disk('sdd'), key: 'a00000', hours: 20 },
  ];
  const machine = { ...archive, drives };
  const verified = await told(counts, outputsOf(machine));
  expect(verified).toEqual(['11 stop built-drive-failing', '12 shortfall built-drive-used']);
  const text = await recorded(counts, outputsOf(machine));
  expect(text).not.toMatch(/name: (?:north|south|east|west)/);
  expect(await toldOfRecord(counts, text)).toEqual(verified);
  const files = { ...counts, 'bird-counts.asbuilt.yaml': text };
  const sheet = await fettle(files, 'sheet', 'bird-counts.pcbuild.yaml', '--markdown');
  expect(sheet.out).toMatch(/\| south, Lumen Vault 10T or one like it \| LMV10T-A1, .*, ran 3 h, health failed \|/);
});

const cabin = {
  'cabin.pcbuild.yaml': `format: 1
build: Cabin
parts:
  board: { model: L3 Skiff, identified-by: [L3 SKIFF] }
  processor: { model: Calder L7 136 }
  memory: { model: L5-6400-4, soldered: true, capacity: 4 GB, count: 4, speed: 6400 MT/s }
`,
};

const chip = { dimm: 0, sizeGB: 4, part: 'L5-6400-4', speed: 6400, running: 6400 };
const tablet: MadeMachine = {
  board: 'L3 SKIFF',
  firmware: '1.11',
  processor: 'Calder L7 136',
  modules: ['A', 'B', 'C', 'D'].map((channel) => ({ ...chip, channel })),
  drives: [],
};

describe('a computer with memory that is soldered down', () => {
  it('is as its build wants it, in however many rows its firmware prints it', async () => {
    expect(known(await told(cabin, outputsOf(tablet)))).toEqual([]);
    const modules = ['A', 'B'].map((channel) => ({ ...chip, sizeGB: 8, channel }));
    expect(known(await told(cabin, outputsOf({ ...tablet, modules })))).not.toContain('6 shortfall built-memory-short');
  });

  it('is found to have half of it', async () => {
    expect(known(await told(cabin, outputsOf({ ...tablet, modules: tablet.modules.slice(0, 2) })))).toEqual([
      '6 shortfall built-memory-short',
    ]);
  });
});
