// Two more finished machines against their builds: a small server under Linux and a desk under Windows, each with the
// differences that a technician was told of. What is to be found was written down before anything was run.
import { describe, expect, it } from 'vitest';
import { counter, desk } from './made';
import { known, told } from '../support/held-machine';
import { outputsOf, type MadeMachine } from '../support/machines';
import { windowsOutputsOf } from '../support/machines-windows';

const ledger = {
  'tide-ledger.pcbuild.yaml': `format: 1
build: Tide ledger
parts:
  board: { use: norrvik/s9-pier, firmware: "3.10" }
  processor: { maker: Calder, model: S4 224, chipset-link: PCIe 4 x8 }
  memory:
    - { maker: Lumen, model: D5-4800-32E, capacity: 32 GB, ecc: true, count: 4, speed: 4800 MT/s }
  drives:
    - { name: system, model: Steady 500G, identified-by: [Lumen Steady 500G], bus: NVMe, capacity: 500 GB, slot: M2_1 }
    - { name: ledger, model: Vault 10S, identified-by: [LUMEN VAULT-10S], bus: SAS, capacity: 10 TB }
    - { name: mirror, model: Deep 8S, identified-by: [TARN DEEP-8S], bus: SAS, capacity: 8 TB }
  cards:
    - { maker: Curlew, model: Net 10, identified-by: ["1d4e:0010"], slot: PCIE_2 }
expect:
  memory: { ecc: true }
`,
  'parts/norrvik/s9-pier.part.yaml': `kind: board
maker: Norrvik
model: S9 Pier
firmware: { versions: ["3.02", "3.10", "3.14"] }
chipset-link: PCIe 4 x8
chipset-at: "00:02.1"
memory: { slots: [A1, B1, C1, D1] }
slots:
  PCIE_1: { kind: PCIe, length: x16, lanes: 8, generation: 4, from: processor, at: "00:01.1" }
  PCIE_2: { kind: PCIe, length: x8, lanes: 4, generation: 4, from: processor, at: "00:01.2" }
  PCIE_3: { kind: PCIe, length: x8, lanes: 4, generation: 4, from: processor, at: "00:01.3" }
  M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4], from: processor, at: "00:03.1" }
`,
};

const net = {
  id: '1d4e:0010',
  classCode: '0200',
  words: 'Ethernet controller',
  link: ['8', 4],
  able: ['8', 4],
} as const;

const ledgerMachine: MadeMachine = {
  board: 'S9 PIER',
  firmware: '3.10',
  processor: 'Calder S4 224',
  ecc: 'Multi-bit ECC',
  modules: ['A', 'B', 'C', 'D'].map((channel) => ({
    channel,
    dimm: 0,
    sizeGB: 32,
    part: 'D5-4800-32E',
    speed: 4800,
    running: 4800,
  })),
  drives: [
    { name: 'nvme0n1', model: 'Lumen Steady 500G', bytes: 500_107_862_016, port: '00:03.1', link: ['16', 4] },
    { name: 'sda', model: 'LUMEN VAULT-10S', bytes: 10_000_831_348_736, sas: { grown: 0, uncorrected: 0 } },
    { name: 'sdb', model: 'TARN DEEP-8S', bytes: 8_001_563_222_016, sas: { grown: 0, uncorrected: 0 } },
  ],
  cards: [{ ...net, port: '00:01.2' }],
  uplink: { port: '00:02.1', able: ['16', 8], link: ['16', 8] },
};

/** Correction off, a newer firmware, a card one slot off and one that nobody listed, a narrow chipset, drives. */
const ledgerOtherwise: MadeMachine = {
  ...ledgerMachine,
  firmware: '3.14',
  ecc: 'None',
  drives: [
    ledgerMachine.drives[0]!,
    { ...ledgerMachine.drives[1]!, hours: 31_000, sas: { grown: 12, uncorrected: 1 } },
  ],
  cards: [
    { ...net, port: '00:01.3' },
    { ...net, id: '1d4e:0777', classCode: '0480', words: 'Multimedia controller', port: '00:01.1' },
  ],
  uplink: { port: '00:02.1', able: ['16', 8], link: ['16', 4] },
};

const gallery = {
  'shore-gallery.pcbuild.yaml': `format: 1
build: Shore gallery
parts:
  board: { maker: Norrvik, model: B7 Forge, identified-by: [B7 FORGE] }
  processor: { maker: Calder, model: C7 840 }
  memory:
    - { maker: Lumen, model: D5-5600-32, identified-by: [D5-5600-32], capacity: 32 GB, count: 2, speed: 5600 MT/s }
  drives:
    - { name: system, model: Rapid 2T, identified-by: [Lumen Rapid 2T], bus: NVMe, capacity: 2 TB }
    - { name: pictures, model: Slab 4T, identified-by: [Palisade Slab 4T], bus: SATA, capacity: 4 TB }
  graphics:
    - { maker: Orrery, model: G70, identified-by: ["1a2b:7480"] }
  displays:
    - { maker: Pharos, model: P24, identified-by: [PHR3204] }
`,
};

const module = { channel: 'A', dimm: 1, sizeGB: 32, part: 'D5-5600-32', speed: 5600, running: 5600 };
const [screen] = counter.displays!;
const [graphics] = desk.cards!;

const galleryMachine: MadeMachine = {
  board: 'B7 FORGE',
  firmware: '1.20',
  processor: 'Calder C7 840',
  modules: [module, { ...module, channel: 'B' }],
  drives: [
    { name: 'nvme0n1', model: 'Lumen Rapid 2T', bytes: 2_000_398_934_016 },
    { name: 'sda', model: 'Palisade Slab 4T', bytes: 4_000_787_030_016 },
  ],
  cards: [graphics!],
  displays: [screen!],
};

/** Another board, half a kit exchanged, a smaller drive, a failing and worn one, another card, a second display. */
const galleryOtherwise: MadeMachine = {
  ...galleryMachine,
  board: 'B5 QUAY',
  modules: [module, { ...module, channel: 'B', sizeGB: 16, part: 'D5-5600-16' }],
  drives: [
    { name: 'nvme0n1', model: 'Lumen Rapid 1T', bytes: 1_000_204_886_016 },
    { ...galleryMachine.drives[1]!, used: 40, failed: true },
  ],
  cards: [{ ...graphics!, id: '1a2b:7460' }],
  displays: [screen!, { ...screen!, connector: 'DP-1', name: 'P32', code: '3232' }],
};

describe('a small server', () => {
  it('is as its build wants it', async () => {
    expect(known(await told(ledger, outputsOf(ledgerMachine)))).toEqual([]);
  });

  it('is found to differ in each thing, at its line, and in no other', async () => {
    expect(known(await told(ledger, outputsOf(ledgerOtherwise)))).toEqual([
      '10 stop built-drive-failing',
      '4 shortfall built-uplink-slower',
      '10 shortfall built-drive-used',
      '11 shortfall built-part-missing',
      '15 shortfall built-ecc-off',
      '2 note built-part-unlisted',
      '4 note built-firmware-differs',
      '13 note built-part-elsewhere',
    ]);
  });
});

describe('a desk under Windows', () => {
  it('is as its build wants it', async () => {
    expect(known(await told(gallery, windowsOutputsOf(galleryMachine)))).toEqual([]);
  });

  it('is found to differ in each thing, at its line, and in no other', async () => {
    expect(known(await told(gallery, windowsOutputsOf(galleryOtherwise)))).toEqual([
      '4 stop built-board-differs',
      '10 stop built-drive-failing',
      '7 shortfall built-memory-short',
      '9 shortfall built-part-differs',
      '10 shortfall built-drive-used',
      '12 shortfall built-part-differs',
      '2 note built-part-unlisted',
      '2 note built-part-unlisted',
    ]);
  });
});
