// Outputs as servers, laptops, arrays and old versions of the tools print them: what is read, and what is left aside.
// Shapes by DMTF DSP0134 (SMBIOS), smartctl(8), lspci(8), lsblk(8), and prints of machines; all of it is invented.
import { describe, expect, it } from 'vitest';
import type { AsBuilt } from '../../../server/src/core/manifest/as-built';
import { distil } from '../../../server/src/core/machine/distill';
import { Doc } from '../../../server/src/core/parts/doc';

const read = (files: Record<string, string | object>): AsBuilt =>
  distil(
    Object.entries(files).map(
      ([name, text]) => new Doc(`out/${name}`, 'output', typeof text === 'string' ? text : JSON.stringify(text)),
    ),
    'out',
    '2026-11-29',
  ).machine;

/** The facts of each thing by their keys, as they are told; `-` where one is not. */
const rows = (things: readonly object[] | undefined, ...keys: readonly string[]): string[] =>
  (things ?? []).map((one) =>
    keys.map((key) => (one as Record<string, { text: string }>)[key]!.text || '-').join(', '),
  );

let handle = 0x40;
const structure = (type: number, values: Record<string, string>, own = ++handle): string =>
  [
    `Handle 0x00${own.toString(16).toUpperCase()}, DMI type ${type}, 40 bytes`,
    'Title',
    ...Object.entries(values).map(([label, value]) => `\t${label}: ${value}`),
    '',
    '',
  ].join('\n');
const dmidecode = (...structures: readonly string[]): AsBuilt =>
  read({ 'dmidecode.txt': `# dmidecode 3.5\n${structures.join('')}` });
const module = (locator: string, more: Record<string, string> = {}): string =>
  structure(17, { Size: '16 GB', Locator: locator, 'Part Number': 'D4-2133-16', ...more });

describe('the tables of the firmware', () => {
  it('give a slot to one module alone: two processors’ slots bear the same names', () => {
    const { memory } = dmidecode(
      module('DIMM 0', { 'Bank Locator': 'P0 CHANNEL A' }),
      module('DIMM 0', { 'Bank Locator': 'P1 CHANNEL A' }),
      module('DIMM 0', { 'Bank Locator': 'P0 CHANNEL B' }),
    );
    expect(rows(memory.value, 'slot', 'locator')).toEqual([
      '-, P0 CHANNEL A / DIMM 0',
      '-, P1 CHANNEL A / DIMM 0',
      'B1, P0 CHANNEL B / DIMM 0',
    ]);
  });

  it('name slots past eight, in the sixteen of a server', () => {
    const { memory } = dmidecode(...['A1', 'A9', 'A12', 'P1'].map((locator) => module(locator)));
    expect(rows(memory.value, 'slot')).toEqual(['A1', 'A9', 'A12', 'P1']);
  });

  it('list as modules neither the firmware’s own chip nor the memory of a picture', () => {
    const { memory } = dmidecode(
      structure(16, { Use: 'System Memory', 'Error Correction Type': 'Multi-bit ECC' }, 0x30),
      structure(16, { Use: 'Video Memory', 'Error Correction Type': 'None' }, 0x31),
      module('A1', { 'Array Handle': '0x0030', 'Total Width': '72 bits', 'Data Width': '64 bits' }),
      module('SYSTEM ROM', { Size: '16384 kB', Type: 'Flash' }),
      module('VIDEO', { 'Array Handle': '0x0031' }),
      module('A2', { Size: 'No Module Installed' }),
    );
    expect(rows(memory.value, 'slot')).toEqual(['A1']);
  });

  it('say nothing by what their maker numbered or left at ones', () => {
    const fillers = ['ModulePartNumber00', 'Array1_PartNumber0', 'PartNum3', 'FFFFFFFF', '[Empty]', 'Not Specified'];
    const { memory } = dmidecode(
      ...fillers.map((text, i) => module(`A${i + 1}`, { 'Part Number': text, Manufacturer: 'Manufacturer00' })),
    );
    expect(rows(memory.value, 'reports', 'maker')).toEqual(fillers.map(() => '-, -'));
  });

  it('print rates as older versions do', () => {
    const { memory } = dmidecode(
      module('A1', { Type: 'DDR4', Speed: '2133 MHz', 'Configured Clock Speed': '2134 MHz' }),
      module('A2', { Type: 'DDR4', Speed: '2133 MHz', 'Configured Clock Speed': '1067 MHz' }),
      module('A3', { Type: 'DDR4', Speed: 'Unknown', 'Configured Clock Speed': 'Unknown' }),
    );
    expect(rows(memory.value, 'standard', 'running')).toEqual(['2133 MT/s, 2134 MT/s', '2133 MT/s, 2134 MT/s', '-, -']);
  });

  it('tell the board by its main board, and the processor by the first socket that holds one', () => {
    const { board, processor } = dmidecode(
      structure(2, { Manufacturer: 'Sluice', 'Product Name': 'RISER 2', Type: 'Interconnect Board' }),
      structure(2, { Manufacturer: 'Norrvik', 'Product Name': 'S9 PIER', Type: 'Motherboard' }),
      structure(4, { Version: 'Not Specified', Status: 'Unpopulated' }),
      structure(4, { Version: 'Calder S4 224', Status: 'Populated, Enabled' }),
    );
    expect(rows([board, processor], 'reports')).toEqual(['S9 PIER', 'Calder S4 224']);
    expect(board.maker.value).toBe('Norrvik');
    const filler = dmidecode(
      structure(1, { Manufacturer: 'Tarnock', 'Product Name': 'Punt 14' }),
      structure(2, { Manufacturer: 'Not Specified', 'Product Name': 'To Be Filled By O.E.M.' }),
    );
    expect(rows([filler.board], 'maker', 'reports')).toEqual(['Tarnock, Punt 14']);
  });
});

const disk = (name: string, more: object = {}): object => ({ name, type: 'disk', rm: false, size: 1e12, ...more });
const smart = (name: string, more: object): object => ({
  smartctl: { version: [7, 3], argv: ['smartctl', '-x', '-j', `/dev/${name}`], exit_status: 0 },
  device: { name: `/dev/${name}`, type: 'scsi', protocol: 'SCSI' },
  ...more,
});

describe('drives', () => {
  it('are none where a print could open none: its output is no witness', () => {
    const failed = {
      smartctl: { version: [7, 3], messages: [{ string: 'Permission denied', severity: 'error' }], exit_status: 2 },
    };
    const alone = read({ 'smartctl-sda.json': failed });
    expect([alone.drives.value, alone.from.value]).toEqual([undefined, []]);
    const { drives, from } = read({
      'lsblk.json': { blockdevices: [disk('sda', { tran: 'sata', model: 'SLAB-1T' })] },
      'smartctl-sda.json': failed,
    });
    expect(rows(drives.value, 'reports', 'bus')).toEqual(['SLAB-1T, SATA']);
    expect(from.value!.map(({ text }) => text)).toEqual(['lsblk']);
  });

  it('are told by a bus of servers with their bus, wear, and blocks that were lost', () => {
    const { drives } = read({
      'smartctl-sda.json': smart('sda', {
        scsi_vendor: 'LUMEN',
        scsi_model_name: 'LUMEN VAULT-10S',
        scsi_transport_protocol: { name: 'SAS (SPL-4)', value: 6 },
        scsi_grown_defect_list: 3,
        scsi_error_counter_log: { read: { total_uncorrected_errors: 2 }, write: { total_uncorrected_errors: 0 } },
        scsi_percentage_used_endurance_indicator: 7,
        user_capacity: { blocks: 19_532_873_728, bytes: 10_000_831_348_736 },
      }),
    });
    expect(rows(drives.value, 'bus', 'capacity', 'media-errors', 'worn')).toEqual(['SAS, 10.0008 TB, 5, 7 %']);
  });

  it('tell wear among their statistics, and count no sector that waits and could not be read twice', () => {
    const attribute = (id: number, count: number) => ({ id, raw: { value: count, string: String(count) } });
    const { drives } = read({
      'smartctl-sda.json': smart('sda', {
        model_name: 'SLAB-1T',
        ata_smart_attributes: { table: [attribute(5, 4), attribute(197, 8), attribute(198, 6)] },
        ata_device_statistics: {
          pages: [
            {
              number: 7,
              table: [{ name: 'Percentage Used Endurance Indicator', value: 12, flags: { valid: true } }],
            },
          ],
        },
      }),
    });
    expect(rows(drives.value, 'media-errors', 'worn')).toEqual(['12, 12 %']);
  });

  it('are those of the machine: no memory, no volume over a network, no part of a drive', () => {
    const names = ['zram0', 'nbd0', 'zd16', 'rbd0', 'pmem0', 'mmcblk0', 'mmcblk0boot0', 'md0', 'loop3'];
    const { drives } = read({
      'lsblk.json': {
        blockdevices: [
          ...names.map((name) => disk(name)),
          disk('nvme0n1', { tran: 'nvme', model: 'RAPID-2T' }),
          disk('nvme0n2', { tran: 'nvme', model: 'RAPID-2T' }),
        ],
      },
    });
    expect(rows(drives.value, 'reports', 'capacity')).toEqual(['-, 1 TB', 'RAPID-2T, -']);
  });

  it('behind a controller of several are not what that makes of them', () => {
    const { drives } = read({
      'lsblk.json': { blockdevices: [disk('sda', { model: 'ARRAY 0' })] },
      'smartctl-0.json': smart('sda', {
        device: { name: '/dev/sda', type: 'sat+megaraid,0', protocol: 'ATA' },
        model_name: 'SLAB-1T',
      }),
    });
    expect(rows(drives.value, 'reports')).toEqual(['SLAB-1T', 'ARRAY 0']);
  });

  it('tell their maker where a field of theirs does, or the tool’s table and their own name begin alike', () => {
    const { drives } = read({
      'lsblk.json': {
        blockdevices: [
          disk('sda', { tran: 'sata', vendor: 'ATA     ', model: 'LUMEN VAULT-12T' }),
          disk('sdb', { tran: 'sata', vendor: 'ATA     ', model: 'SLAB-1T' }),
          disk('sdc', { tran: 'sas', vendor: 'TARN    ', model: 'DEEP-8S' }),
        ],
      },
      'smartctl-sda.json': smart('sda', { model_family: 'Lumen Vault', model_name: 'LUMEN VAULT-12T' }),
      'smartctl-sdb.json': smart('sdb', { model_family: 'Palisade Slab', model_name: 'SLAB-1T' }),
    });
    expect(rows(drives.value, 'maker', 'reports')).toEqual(['Lumen, LUMEN VAULT-12T', '-, SLAB-1T', 'TARN, DEEP-8S']);
  });

  it('of Windows are none in a file, and hours at the end of their count say nothing', () => {
    const drive = (id: string, BusType: number) => ({ DeviceId: id, Model: `RAPID-${id}T`, BusType });
    const { drives } = read({
      'MSFT_PhysicalDisk.json': [drive('1', 17), drive('2', 15), drive('3', 8)],
      'MSFT_StorageReliabilityCounter.json': [
        { DeviceId: '1', PowerOnHours: 65_535, Wear: 2 },
        { DeviceId: '3', PowerOnHours: 65_534, Wear: 2 },
      ],
    });
    expect(rows(drives.value, 'reports', 'bus', 'hours')).toEqual(['RAPID-1T, NVMe, -', 'RAPID-3T, -, 65534 h']);
  });
});

const bridge = (address: string, bus: string, words: string, slot: string, link: string): string =>
  `${address} PCI bridge [0604]: Calder ${words} [1f0c:7a38] (prog-if 00 [Normal decode])
\tBus: primary=00, secondary=${bus}, subordinate=${bus}, sec-latency=0
\tCapabilities: [58] Express (v2) Root Port (Slot${slot}), MSI 00
\t\tLnkCap:\tPort #0, Speed 16GT/s, Width x16, ASPM L1, Exit Latency L1 <64us
\t\tLnkSta:\t${link}
`;
const card = (address: string, words: string, id: string, link: string): string =>
  `${address} ${words}: Orrery Device [${id}] (rev c1)
\tSubsystem: Orrery Device [1a2b:0001]
\tCapabilities: [64] Express (v2) Legacy Endpoint, MSI 00
\t\tLnkCap:\tPort #0, Speed 32GT/s, Width x16, ASPM L0s L1, Exit Latency L0s <1us, L1 <8us
\t\tLnkSta:\t${link}
`;

describe('lspci', () => {
  it('leaves aside what a port inside the processor holds, and not a card in a port that names no slot', () => {
    const { devices } = read({
      'lspci.txt': [
        bridge('00:01.1', '01', 'GPP Bridge', '-', 'Speed 16GT/s (ok), Width x8 (downgraded)'),
        bridge('00:08.1', '0a', 'Internal GPP Bridge to Bus [C:A]', '-', 'Speed 16GT/s, Width x16'),
        card(
          '01:00.0',
          'VGA compatible controller [0300]',
          '1a2b:7480',
          'Speed 16GT/s (downgraded), Width x8 (downgraded)',
        ),
        card('0a:00.0', 'VGA compatible controller [0300]', '1f0c:164e', 'Speed 16GT/s, Width x16'),
      ].join('\n'),
    });
    expect(rows(devices.value, 'id', 'link', 'able')).toEqual(['1a2b:7480, PCIe 4 x8, PCIe 4 x16']);
  });

  it('reads links beyond what a part says it can run, and no link where none is up', () => {
    const { devices } = read({
      'lspci.txt': [
        bridge('00:01.1', '01', 'GPP Bridge', '+', 'Speed 8GT/s (overdriven), Width x1'),
        bridge('00:01.2', '02', 'GPP Bridge', '+', 'Speed 2.5GT/s, Width x0'),
        bridge('00:01.3', '03', 'GPP Bridge', '+', 'Speed unknown, Width x0'),
        card('01:00.0', 'Network controller [0280]', '1a2b:0280', 'Speed 8GT/s (overdriven), Width x1'),
        card('02:00.0', 'Network controller [0280]', '1a2b:0281', 'Speed 2.5GT/s (downgraded), Width x0 (downgraded)'),
        '03:00.0 Network controller [0280]: Orrery Device [1a2b:0282] (rev ff) (prog-if ff)\n\t!!! Unknown header type 7f\n',
      ].join('\n'),
    });
    expect(rows(devices.value, 'id', 'link', 'able')).toEqual([
      '1a2b:0280, PCIe 3 x1, PCIe 4 x16',
      '1a2b:0281, -, PCIe 4 x16',
      '1a2b:0282, -, -',
    ]);
  });

  it('tells who made a card where no name of the card stands behind the maker’s', () => {
    const named = (name: string, numbers: string): string =>
      card('01:00.0', 'VGA compatible controller [0300]', numbers, 'Speed 16GT/s, Width x16').replace(
        'Orrery Device [1a2b:0001]',
        name,
      );
    for (const [name, maker] of [
      ['Tarnock Works Device [1b3c:0001]', 'Tarnock Works'],
      ['Tarnock Works G70 Tide [1b3c:0001]', '-'],
      ['Device [1b3c:0001]', '-'],
    ] as const) {
      const port = bridge('00:01.1', '01', 'GPP Bridge', '+', 'Speed 16GT/s, Width x16');
      const { devices } = read({ 'lspci.txt': `${port}\n${named(name, '1a2b:7480')}` });
      expect(rows(devices.value, 'maker')).toEqual([maker]);
    }
  });

  it('follows a drive into the domain that a controller of volumes makes', () => {
    const { drives } = read({
      'lspci.txt': [
        '0000:00:0e.0 RAID bus controller [0104]: Calder Volume Controller [1f0c:9a0b]\n',
        bridge('10000:e0:06.0', 'e1', 'Root Port', '+', 'Speed 16GT/s, Width x4'),
        card('10000:e1:00.0', 'Non-Volatile memory controller [0108]', '1c5c:174a', 'Speed 8GT/s, Width x4'),
      ].join('\n'),
      'lsblk.json': { blockdevices: [disk('nvme0n1', { tran: 'nvme', model: 'RAPID-2T' })] },
      'block.txt':
        'lrwxrwxrwx 1 root root 0 Nov 29 06:01 nvme0n1 -> ../devices/pci0000:00/0000:00:0e.0/pci10000:e0/' +
        '10000:e0:06.0/10000:e1:00.0/nvme/nvme0/nvme0n1\n',
    });
    expect(rows(drives.value, 'address', 'port', 'link')).toEqual(['10000:e1:00.0, 10000:e0:06.0, PCIe 3 x4']);
  });
});
