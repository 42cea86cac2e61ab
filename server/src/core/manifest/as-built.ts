// The fields of `NAME.asbuilt.yaml`: what a finished machine said of itself, distilled from the outputs of tools.
import { choice, count, date, flag, form, group, list, quantity, text, version, type Field } from '../parts/field';
import { driveBuses } from '../parts/devices';
import { link } from '../parts/common';
import type { Group } from '../parts/fact';
import { parseMode } from '../trade/display';

/** The outputs that a machine may have been read from. */
export const outputNames = [
  'dmidecode',
  'lspci',
  'lspci under load',
  'lscpu',
  'lsblk',
  'smartctl',
  'EDID',
  'decode-dimms',
  'sensors',
  'sensors under load',
  'CIM',
] as const;
export type OutputName = (typeof outputNames)[number];

const byType = (type: string, line: string): { printed: string } => ({ printed: `dmidecode, ${type}: ${line}.` });
const byLspci = { printed: 'lspci -vvnn, run as root.' } as const;
const bySmartctl = { printed: 'smartctl -x -j, run as root.' } as const;
const byCounters = { printed: 'smartctl -x -j, run as root, or MSFT_StorageReliabilityCounter.' } as const;
const reports = (what: string, example: string, printed: string): Field & { type: 'text' } =>
  text(what, example, { printed });
const name = text('The name that the build gives it, or its place there; set by hand, it decides.', 'scratch');
const read = choice(['idle', 'load'], 'Whether the machine stood idle meanwhile, or worked at full load.');
const address = text('Its PCI address.', '"03:00.0"', byLspci);
const port = text('The PCI port of the board that it hangs on.', '"00:01.0"', byLspci);
const able = link('The fastest link that both of its ends can run.', 'PCIe 4 x8', byLspci);
const trained = link('The link that it runs; of several on the way, the narrowest.', 'PCIe 4 x4', byLspci);

export const asBuiltFile = {
  format: count('Version of this format.', '1', { least: 1 }),
  build: text('The build that the machine was made by: the file’s name.', 'survey-desk.pcbuild.yaml'),
  taken: date('The day on which the machine was read.', '2026-11-29'),
  from: list(
    text('A tool, with its version where it told it.', 'dmidecode 3.5'),
    'The outputs that were read: what none of them shows is unknown.',
    '[dmidecode 3.5, lspci, smartctl 7.4]',
  ),
  board: group(
    {
      maker: text('Who says to have made it.', 'Norrvik', byType('type 2', 'Manufacturer')),
      reports: reports('What the board calls itself.', 'B7 FORGE', 'dmidecode, type 2: Product Name.'),
      firmware: version('Version of its firmware.', '"1.20"', byType('type 0', 'Version')),
      dated: date('Day of that firmware’s release.', '2026-01-12', byType('type 0', 'Release Date')),
    },
    'The board.',
    '{ reports: B7 FORGE, firmware: "1.20" }',
  ),
  processor: group(
    {
      maker: text('Who says to have made it.', 'Calder', byType('type 4', 'Manufacturer')),
      reports: reports('What the processor calls itself.', 'C7 840', 'lscpu: Model name.'),
    },
    'The processor.',
    '{ reports: C7 840 }',
  ),
  'memory-ecc': flag('Whether errors of the memory are corrected.', byType('type 16', 'Error Correction Type')),
  memory: list(
    group(
      {
        slot: text('The memory slot, as the board prints it.', 'A2', byType('type 17', 'Locator')),
        locator: text('The slot in the firmware’s own words.', 'P0 CHANNEL A / DIMM 1', byType('type 17', 'Locator')),
        maker: text('Who says to have made it.', 'Lumen', byType('type 17', 'Manufacturer')),
        reports: reports('Its part number.', 'D5-6000-32', 'dmidecode, type 17: Part Number.'),
        capacity: quantity('data-size', 'GiB', 'Its capacity.', '32 GiB', byType('type 17', 'Size')),
        standard: quantity(
          'transfer-rate',
          'MT/s',
          'The rate of its own table.',
          '4800 MT/s',
          byType('type 17', 'Speed'),
        ),
        running: quantity(
          'transfer-rate',
          'MT/s',
          'The rate it runs at.',
          '6000 MT/s',
          byType('type 17', 'Configured Memory Speed'),
        ),
        key: text('Six letters made from its serial number, by which a swap is seen.', '4f1c09'),
      },
      'One module.',
    ),
    'The memory modules.',
    '[{ slot: A2, capacity: 32 GiB, running: 6000 MT/s }]',
  ),
  devices: list(
    group(
      {
        name,
        at: text('The slot of the board.', 'PCIE_1', byType('type 9', 'Designation and Bus Address')),
        port,
        address,
        id: text('Its PCI numbers.', '"1a2b:7480"', byLspci),
        class: text('Its PCI class.', '"0300"', byLspci),
        maker: text('Who says to have made it.', 'Orrery', { printed: 'lspci -vvnn: Subsystem.' }),
        reports: reports('What it calls itself.', 'G70', 'lspci.'),
        link: trained,
        able,
        read,
      },
      'One device.',
    ),
    'Graphics cards and other cards.',
    '[{ at: PCIE_1, id: "1a2b:7480", link: PCIe 4 x16 }]',
  ),
  drives: list(
    group(
      {
        name,
        at: text('The slot of the board.', 'M2_1', byType('type 9', 'Designation and Bus Address')),
        port,
        address,
        maker: text('Who says to have made it.', 'Lumen', { printed: 'smartctl or lsblk, of some drives.' }),
        reports: reports('Its model.', 'VAULT-10T', 'smartctl or lsblk.'),
        bus: choice(driveBuses, 'The bus it speaks.', { printed: 'smartctl or lsblk.' }),
        capacity: quantity('data-size', 'TB', 'Its capacity.', '10 TB', { printed: 'smartctl or lsblk.' }),
        link: trained,
        able,
        hours: quantity('time', 'h', 'How long it has run.', '9829 h', byCounters),
        worn: quantity('percent', '%', 'How much of its endurance is used up.', '3 %', byCounters),
        health: choice(['passed', 'failed'], 'What it says of its own health.', bySmartctl),
        'media-errors': count('Sectors or blocks that it could not read or had to replace.', '0', {
          most: Number.MAX_SAFE_INTEGER,
          ...bySmartctl,
        }),
        warning: flag('Whether it raises a critical warning.', { example: 'false', ...bySmartctl }),
        key: text('Six letters made from its serial number, by which a swap is seen.', '4f1c09'),
      },
      'One drive.',
    ),
    'The drives.',
    '[{ name: archive, reports: VAULT-10T, capacity: 10 TB }]',
  ),
  displays: list(
    group(
      {
        name,
        connector: text('The output it hangs on, as the system calls it.', 'DP-1', {
          printed: 'The EDID’s file name.',
        }),
        reports: reports('What it calls itself.', 'U34', 'Its EDID.'),
        id: text('Its maker’s three letters and its product code.', 'PHA3204', { printed: 'Its EDID.' }),
        modes: list(
          form('a mode', parseMode, 'A mode.', '3840x2160 @ 60 Hz'),
          'The modes it says it shows.',
          '[3840x2160 @ 60 Hz]',
          { printed: 'Its EDID.' },
        ),
      },
      'One display.',
    ),
    'The displays.',
    '[{ connector: DP-1, reports: U34 }]',
  ),
  uplink: group(
    { port, link: trained, able },
    'The link between chipset and processor, where a PCI port shows it.',
    '{ port: "00:02.1", link: PCIe 4 x8 }',
    byLspci,
  ),
  temperatures: list(
    group(
      {
        sensor: text('What it measures, in the system’s words.', 'k10temp Tctl'),
        temperature: quantity('temperature', '°C', 'The highest value read.', '74 °C', { printed: 'sensors -j.' }),
        of: choice(['processor', 'drive', 'graphics', 'board'], 'The part it belongs to, where its driver tells.'),
        read,
      },
      'One temperature.',
    ),
    'Temperatures.',
    '[{ sensor: k10temp Tctl, temperature: 74 °C, read: load }]',
  ),
  fans: list(
    group(
      {
        sensor: text('The fan, in the system’s words.', 'nct6799 fan2'),
        speed: quantity('rotation-speed', 'rpm', 'The lowest speed read.', '900 rpm', { printed: 'sensors -j.' }),
        read,
      },
      'One fan.',
    ),
    'Fans.',
    '[{ sensor: nct6799 fan2, speed: 900 rpm, read: load }]',
  ),
  unseen: list(
    text('A part.', 'cooler'),
    'What no output shows, for whoever looks by eye.',
    '[cooler, paste, supply, case]',
  ),
} as const;

/** What a machine said of itself: read from its record, or from the outputs themselves. */
export type AsBuilt = Group<typeof asBuiltFile>;
export type BuiltModule = ItemOf<'memory'>;
export type BuiltDevice = ItemOf<'devices'>;
export type BuiltDrive = ItemOf<'drives'>;
export type BuiltDisplay = ItemOf<'displays'>;

type ItemOf<K extends 'memory' | 'devices' | 'drives' | 'displays'> = NonNullable<AsBuilt[K]['value']>[number];
