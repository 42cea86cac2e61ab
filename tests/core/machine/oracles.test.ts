// What the readers read of a machine against what was put in, where the tools themselves print it.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { AsBuilt } from '../../../server/src/core/manifest/as-built';
import { distil } from '../../../server/src/core/machine/distill';
import { Doc } from '../../../server/src/core/parts/doc';
import { itWithOracle, runOracle } from '../../published/oracle';
import { makePci } from '../../support/pci';
import * as smbios from '../../support/smbios';

const serial = 'SN-4711-SECRET';

function printed(program: string, data: string | Uint8Array, args: (file: string) => string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-machine-'));
  try {
    const file = join(folder, 'data');
    writeFileSync(file, data);
    return runOracle(program, args(file)).stdout;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const read = (...texts: readonly string[]): AsBuilt =>
  distil(
    texts.map((text, i) => new Doc(`out/${i}.txt`, 'output', text)),
    'out',
    '2026-11-29',
  ).machine;

itWithOracle('dmidecode', 'reads what dmidecode prints of tables made here', () => {
  const stick = { bank: 'P0 CHANNEL A', speed: 4800, part: 'D5-6000-32 ', serial };
  const tables = smbios.makeSmbios([
    smbios.bios('B7FORGE 1.20', '01/12/2026'),
    smbios.system('System Product Name', serial),
    smbios.baseBoard('B7 FORGE ', serial),
    smbios.processor('Calder C7 840 @ 3.30GHz '),
    smbios.systemSlot('PCIE_1', 1, 0, true),
    smbios.memoryArray(6),
    smbios.memoryDevice({ ...stick, locator: 'DIMM 0', sizeGB: 0, running: 0 }),
    smbios.memoryDevice({ ...stick, locator: 'DIMM 1', sizeGB: 32, running: 6000 }),
    smbios.memoryDevice({ ...stick, locator: 'DIMM_B2', bank: 'BANK 3', sizeGB: 16, running: 2400 }),
  ]);
  const text = printed('dmidecode', tables, (file) => ['--from-dump', file]);
  const machine = read(text);
  expect(text).toContain(serial);
  expect(machine.board.reports.value).toBe('B7 FORGE');
  expect(machine.board.firmware.value).toBe('B7FORGE 1.20');
  expect(machine.board.dated.value).toBe('2026-01-12');
  expect(machine.processor.reports.value).toBe('Calder C7 840 @ 3.30GHz');
  expect(machine['memory-ecc'].value).toBe(true);
  expect(
    machine.memory.value!.map(({ slot, capacity, standard, running, reports }) =>
      [slot, capacity, standard, running, reports].map((fact) => fact.text),
    ),
  ).toEqual([
    ['A2', '32 GiB', '4800 MT/s', '6000 MT/s', 'D5-6000-32'],
    // Half of the module’s own rate is its clock.
    ['B2', '16 GiB', '4800 MT/s', '4800 MT/s', 'D5-6000-32'],
  ]);
  for (const { doc, node } of [machine.board.reports, machine.memory.value![0]!.running])
    expect(doc.text.slice(doc.text.lastIndexOf('\n', node!.span.start), node!.span.end)).toMatch(/: /);
});

itWithOracle('lspci', 'reads what lspci prints of devices made here', () => {
  const dump = makePci([
    { address: '00:00.0', id: '1f0c:14d8', classCode: '0600' },
    { address: '00:01.0', id: '1f0c:7a38', classCode: '0604', behind: [1, 3], kind: 4, able: [5, 16], link: [4, 8] },
    { address: '00:02.0', id: '1f0c:7a39', classCode: '0604', behind: [4, 4], kind: 4, able: [4, 4], link: [4, 2] },
    { address: '00:03.0', id: '1f0c:7a40', classCode: '0604', behind: [5, 5], kind: 4, isEmpty: true, able: [4, 4] },
    { address: '00:1f.3', id: '1f0c:7a50', classCode: '0403' },
    // A card with a switch of its own shows its full width inside.
    { address: '01:00.0', id: '1a2b:1478', classCode: '0604', behind: [2, 3], kind: 5, able: [4, 16], link: [4, 8] },
    { address: '02:00.0', id: '1a2b:1479', classCode: '0604', behind: [3, 3], kind: 6, able: [4, 16], link: [4, 16] },
    { address: '03:00.0', id: '1a2b:7480', classCode: '0300', kind: 0, able: [4, 16], link: [4, 16] },
    { address: '03:00.1', id: '1a2b:ab30', classCode: '0403', kind: 0, able: [4, 16], link: [4, 16] },
    { address: '04:00.0', id: '1c5c:174a', classCode: '0108', kind: 0, able: [4, 4], link: [4, 2] },
  ]);
  const machine = read(printed('lspci', dump, (file) => ['-F', file, '-vvnn']));
  const rows = (items: readonly { readonly [key: string]: unknown }[], ...keys: readonly string[]): string[][] =>
    items.map((one) => keys.map((key) => (one[key] as { text: string }).text));
  expect(rows(machine.devices.value!, 'address', 'id', 'class', 'port', 'link', 'able')).toEqual([
    ['03:00.0', '1a2b:7480', '0300', '00:01.0', 'PCIe 4 x8', 'PCIe 4 x16'],
  ]);
  expect(rows(machine.drives.value!, 'address', 'port', 'link', 'able')).toEqual([
    ['04:00.0', '00:02.0', 'PCIe 4 x2', 'PCIe 4 x4'],
  ]);
});
