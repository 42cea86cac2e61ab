// Machines of the field station: as their builds want them, and otherwise.
import type { MadeMachine } from '../support/machines';

export const gauge: MadeMachine = {
  board: 'I5 SKIFF',
  firmware: '1.00',
  processor: 'Calder C7 310T',
  modules: [
    { channel: 'A', dimm: 0, sizeGB: 16, part: 'DDR5 4800 16G', speed: 4800, running: 4800 },
    { channel: 'B', dimm: 0, sizeGB: 16, part: 'DDR5 4800 16G', speed: 4800, running: 4800 },
  ],
  drives: [
    { name: 'nvme0n1', model: 'Lumen Steady 500G', bytes: 500_107_862_016, port: '00:01.2', link: ['8', 4] },
    { name: 'sda', model: 'Palisade Slab 2T', bytes: 2_000_398_934_016, hours: 5 },
  ],
  displays: [{ connector: 'HDMI-A-1', name: 'P24', input: 2, modes: [[1920, 1080, 60]] }],
  hottestC: 62,
  fansRpm: [0, 1100],
};

export const desk: MadeMachine = {
  board: 'B7 FORGE',
  firmware: 'B7FORGE 1.20',
  processor: 'Calder C7 840',
  modules: [
    { channel: 'A', dimm: 0, sizeGB: 32, part: 'DDR5 6000 32G', speed: 4800, running: 6000 },
    { channel: 'B', dimm: 0, sizeGB: 32, part: 'DDR5 6000 32G', speed: 4800, running: 6000 },
  ],
  drives: [
    { name: 'nvme0n1', model: 'Lumen Rapid 2T', bytes: 2_000_398_934_016, port: '00:1b.0', link: ['16', 2] },
    { name: 'sda', model: 'Lumen Vault 12T', bytes: 12_000_138_625_024, hours: 7 },
  ],
  cards: [
    {
      port: '00:01.0',
      id: '1a2b:7480',
      classCode: '0300',
      words: 'VGA compatible controller',
      link: ['16', 16],
      able: ['16', 16],
      slot: 'PCIE1',
    },
  ],
  displays: [
    {
      connector: 'DP-1',
      name: 'P32 4K 120',
      input: 5,
      modes: [
        [3840, 2160, 60],
        [3840, 2160, 120],
      ],
    },
  ],
  hottestC: 84,
  fansRpm: [900, 700, 650],
};

/** The counter PC as it came back: memory at a lower rate, a module at half its lanes, which has run elsewhere. */
export const counter: MadeMachine = {
  board: 'B5 QUAY',
  firmware: '2.14',
  processor: 'Calder C6 320',
  modules: ['A', 'B'].map((channel) => ({
    channel,
    dimm: 0,
    sizeGB: 16,
    part: 'DDR5 4800 16G',
    speed: 4800,
    running: 4000,
  })),
  drives: [
    {
      name: 'nvme0n1',
      model: 'Lumen Steady 500G',
      bytes: 500_107_862_016,
      port: '00:1d.0',
      link: ['8', 2],
      able: ['8', 4],
      hours: 4310,
      used: 3,
      key: '4f1c09',
    },
  ],
  displays: [{ connector: 'HDMI-A-1', name: 'P24', input: 2, modes: [[1920, 1080, 60]] }],
  hottestC: 58,
  fansRpm: [850, 700],
};

/** Ten differences each: a firmware not updated, a module in the wrong slot, a slow profile, a half link and others. */
export const wrongGauge: MadeMachine = {
  ...gauge,
  board: 'B5 QUAY',
  firmware: '0.90',
  processor: 'Calder C6 320',
  modules: [{ channel: 'A', dimm: 0, sizeGB: 16, part: 'DDR5 4800 16G', speed: 4800, running: 4000 }],
  drives: [
    {
      ...gauge.drives[0]!,
      model: 'Lumen Steady 500G',
      link: ['8', 2],
      able: ['8', 4],
      hours: 9829,
      used: 12,
      mediaErrors: 3,
    },
    { name: 'sda', model: 'Lumen Vault 4T', bytes: 4_000_787_030_016 },
  ],
  displays: [],
  hottestC: 93,
  fansRpm: [0, 0],
};

export const wrongDesk: MadeMachine = {
  ...desk,
  firmware: 'B7FORGE 1.08',
  modules: [
    { channel: 'A', dimm: 0, sizeGB: 32, part: 'DDR5 6000 32G', speed: 4800, running: 4800 },
    { channel: 'A', dimm: 1, sizeGB: 32, part: 'DDR5 6000 32G', speed: 4800, running: 4800 },
  ],
  drives: [
    { ...desk.drives[0]!, link: ['16', 1], able: ['16', 4], used: 9 },
    { ...desk.drives[1]!, gbps: '3.0', hours: 20_311, mediaErrors: 16 },
    { name: 'sdb', model: 'Palisade Slab 2T', bytes: 2_000_398_934_016 },
  ],
  cards: [{ ...desk.cards![0]!, link: ['16', 8] }],
  displays: [{ connector: 'HDMI-A-1', name: 'P32 4K 120', input: 2, modes: [[3840, 2160, 60]] }],
};
