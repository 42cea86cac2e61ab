// Finished machines, told as the tools print them: `dmidecode`, `lspci -vvnn`, `lsblk -J -O`, `smartctl -x -j` and
// others.
import { asHex, makeEdid, timing } from './edid';
import { lspci } from './machines-pci';

/** What must reach no output of ours, wherever it stands in those of the tools. */
export const secrets = {
  serial: 'SN-4711-SECRET',
  uuid: '03000200-0400-0500-0006-000700080009',
  wwn: '0x5000c500a1b2c3d4',
  mac: '52:54:00:12:34:56',
} as const;

export interface MadeMachine {
  readonly board: string;
  readonly firmware: string;
  readonly processor: string;
  readonly ecc?: string;
  readonly modules: readonly MadeStick[];
  readonly drives: readonly MadeDrive[];
  readonly cards?: readonly MadeCard[];
  readonly displays?: readonly MadeScreen[];
  /** The chipset, where a port shows it. */
  readonly uplink?: Pick<MadeCard, 'port' | 'link' | 'able'>;
  readonly hottestC?: number;
  readonly fansRpm?: readonly number[];
}
export interface MadeStick {
  readonly channel: string;
  readonly dimm: number;
  readonly sizeGB: number;
  readonly part: string;
  readonly speed: number;
  readonly running: number;
}
export interface MadeDrive {
  readonly name: string;
  readonly model: string;
  readonly bytes: number;
  readonly hours?: number;
  readonly used?: number;
  readonly mediaErrors?: number;
  /** Of an NVMe drive: the port it hangs on, and its link; of a SATA drive: the rate of its link in Gb/s. */
  readonly port?: string;
  readonly link?: readonly [gts: string, lanes: number];
  readonly able?: readonly [gts: string, lanes: number];
  readonly gbps?: string;
  /** What the collecting script leaves of its serial number. */
  readonly key?: string;
  /** A drive on the bus of servers, with what it lost. */
  readonly sas?: { readonly grown: number; readonly uncorrected: number };
  readonly failed?: boolean;
  /** A SATA drive that hangs on a controller of SAS. */
  readonly isBehindSas?: boolean;
}
export interface MadeCard {
  readonly port: string;
  readonly id: string;
  readonly classCode: string;
  readonly words: string;
  readonly link: readonly [gts: string, lanes: number];
  readonly able: readonly [gts: string, lanes: number];
  /** The name of its slot in the firmware’s table. */
  readonly slot?: string;
}
export interface MadeScreen {
  readonly connector: string;
  readonly name: string;
  readonly input: 2 | 5;
  /** Its product code, four digits. */
  readonly code?: string;
  readonly modes: readonly (readonly [width: number, height: number, hz: number])[];
}

/** The outputs by file name. */
export function outputsOf(machine: MadeMachine): Record<string, string> {
  const files: Record<string, string> = {
    'dmidecode.txt': dmidecode(machine),
    'lspci-load.txt': lspci(machine),
    'lscpu.json': json({
      lscpu: [
        { field: 'Architecture:', data: 'x86_64' },
        { field: 'Model name:', data: machine.processor },
      ],
    }),
    'lsblk.json': lsblk(machine),
    'block.txt': paths(machine),
    'sensors-load-1.json': sensors(machine),
  };
  for (const drive of machine.drives) files[`smartctl-${drive.name}.json`] = smartctl(drive);
  for (const { connector, name, input, modes } of machine.displays ?? []) {
    const [first, ...others] = modes.map(([width, height, hz]) => timing(width, height, hz));
    // Faster clocks than the first block can hold stand in an extension.
    const made = makeEdid({
      maker: 'PHR',
      name,
      input,
      timings: [first!],
      ...(others.length > 0 ? { section: others } : {}),
    });
    files[`edid-card1-${connector}.hex`] = asHex(made);
  }
  return files;
}

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

let handle = 0;
function structure(type: number, title: string, values: readonly (readonly [string, string])[]): string {
  handle++;
  const lines = values.map(([label, value]) => `\t${label}: ${value}`);
  return `Handle 0x${handle.toString(16).toUpperCase().padStart(4, '0')}, DMI type ${type}, 40 bytes\n${title}\n${lines.join('\n')}\n`;
}

function dmidecode(machine: MadeMachine): string {
  handle = 0;
  const { board, firmware, processor, modules, ecc = 'None', cards = [] } = machine;
  return [
    '# dmidecode 3.5\nGetting SMBIOS data from sysfs.\nSMBIOS 3.5.0 present.\n',
    structure(0, 'BIOS Information', [
      ['Vendor', 'Saltmarsh Firmware'],
      ['Version', firmware],
      ['Release Date', '01/12/2026'],
    ]),
    structure(1, 'System Information', [
      ['Product Name', 'To Be Filled By O.E.M.'],
      ['Serial Number', secrets.serial],
      ['UUID', secrets.uuid],
    ]),
    structure(2, 'Base Board Information', [
      ['Manufacturer', 'Norrvik'],
      ['Product Name', `${board}   `],
      ['Serial Number', secrets.serial],
      ['Asset Tag', secrets.serial],
    ]),
    structure(4, 'Processor Information', [
      ['Manufacturer', 'Calder'],
      ['Version', `${processor} @ 3.30GHz`],
    ]),
    structure(7, 'Cache Information', [['Error Correction Type', 'Multi-bit ECC']]),
    ...cards
      .filter(({ slot }) => slot !== undefined)
      .map(({ slot, port }) =>
        structure(9, 'System Slot Information', [
          ['Designation', slot!],
          ['Current Usage', 'In Use'],
          ['Bus Address', `0000:${port}`],
        ]),
      ),
    structure(16, 'Physical Memory Array', [
      ['Use', 'System Memory'],
      ['Error Correction Type', ecc],
    ]),
    ...modules.map(({ channel, dimm, sizeGB, part, speed, running }) =>
      structure(17, 'Memory Device', [
        ['Size', `${sizeGB} GB`],
        ['Locator', `DIMM ${dimm}`],
        ['Bank Locator', `P0 CHANNEL ${channel}`],
        ['Type', 'DDR5'],
        ['Speed', `${speed} MT/s`],
        ['Serial Number', secrets.serial],
        ['Part Number', `${part}      `],
        ['Configured Memory Speed', `${running} MT/s`],
      ]),
    ),
    structure(17, 'Memory Device', [
      ['Size', 'No Module Installed'],
      ['Locator', 'DIMM 0'],
    ]),
  ].join('\n');
}

function paths({ drives }: MadeMachine): string {
  let bus = 1;
  const lines = drives.map(({ name, port }) => {
    const number = port ? (bus++).toString(16).padStart(2, '0') : '';
    const way = port
      ? `0000:${port}/0000:${number}:00.0/nvme/${name.replace(/n1$/, '')}/${name}`
      : `0000:00:17.0/ata1/host0/target0:0:0/0:0:0:0/block/${name}`;
    return `lrwxrwxrwx 1 root root 0 Nov 29 06:01 ${name} -> ../devices/pci0000:00/${way}`;
  });
  return `total 0\n${lines.join('\n')}\n`;
}

const isNvme = ({ name }: MadeDrive): boolean => name.startsWith('nvme');

function lsblk({ drives }: MadeMachine): string {
  return json({
    blockdevices: [
      ...drives.map((drive) => ({
        name: drive.name,
        serial: secrets.serial,
        wwn: secrets.wwn,
        rm: false,
        size: drive.bytes,
        type: 'disk',
        model: drive.model,
        tran: isNvme(drive) ? 'nvme' : drive.sas || drive.isBehindSas ? 'sas' : 'sata',
        ...(isNvme(drive) || drive.sas ? {} : { vendor: 'ATA     ' }),
        children: [
          { name: `${drive.name}1`, size: 1_048_576, type: 'part', uuid: secrets.uuid, mountpoint: '/home/someone' },
        ],
      })),
      { name: 'loop0', size: 4096, type: 'loop', rm: false },
      { name: 'sdz', size: 16_000_000_000, type: 'disk', rm: true, model: 'Stick', tran: 'usb' },
    ],
  });
}

function smartctl(drive: MadeDrive): string {
  const { name, model, bytes, hours = 3, used = 0, mediaErrors = 0, gbps = '6.0', key, sas, failed } = drive;
  const common = {
    json_format_version: [1, 0],
    smartctl: { version: [7, 4], exit_status: 0 },
    device: {
      name: `/dev/${name.replace(/n1$/, '')}`,
      type: isNvme(drive) ? 'nvme' : sas ? 'scsi' : 'sat',
      protocol: isNvme(drive) ? 'NVMe' : sas ? 'SCSI' : 'ATA',
    },
    [sas ? 'scsi_model_name' : 'model_name']: model,
    serial_number: key === undefined ? secrets.serial : `masked-${key}`,
    wwn: { naa: 5, oui: 3152, id: 2712847316 },
    user_capacity: { blocks: bytes / 512, bytes },
    smart_status: { passed: failed !== true },
    power_on_time: { hours },
  };
  if (sas)
    return json({
      ...common,
      scsi_transport_protocol: { name: 'SAS (SPL-4)', value: 6 },
      scsi_grown_defect_list: sas.grown,
      scsi_error_counter_log: { read: { total_uncorrected_errors: sas.uncorrected } },
    });
  return json(
    isNvme(drive)
      ? {
          ...common,
          nvme_smart_health_information_log: { critical_warning: 0, percentage_used: used, media_errors: mediaErrors },
        }
      : {
          ...common,
          interface_speed: { max: { string: '6.0 Gb/s' }, current: { string: `${gbps} Gb/s` } },
          ata_smart_attributes: {
            table: [
              { id: 5, name: 'Reallocated_Sector_Ct', raw: { value: mediaErrors, string: String(mediaErrors) } },
              { id: 9, name: 'Power_On_Hours', raw: { value: hours, string: `${hours}h+00m` } },
            ],
          },
        },
  );
}

function sensors({ hottestC = 60, fansRpm = [] }: MadeMachine): string {
  return json({
    'k10temp-pci-00c3': { Adapter: 'PCI adapter', Tctl: { temp1_input: hottestC } },
    'nct6799-isa-0290': {
      Adapter: 'ISA adapter',
      ...Object.fromEntries(fansRpm.map((rpm, i) => [`fan${i + 1}`, { [`fan${i + 1}_input`]: rpm }])),
    },
  });
}
