// The drives of a machine: what smartctl, lsblk, the system’s paths and lspci say of one drive, put together.
import type { Doc } from '../parts/doc';
import type { Told, Said } from './as-built';
import type { Disk } from './json-outputs';
import { decimalSize } from './json-outputs';
import type { Device } from './lspci';
import { jsonOf, lineAt, linesOf, mapsOf, type Printed, printedAt, said, saidAs, sayer, wholeNumber } from './said';
import { sataLink, type SmartDrive } from './smart';
import { below } from './reading';

/** Where a drive hangs, by the system’s own path of it. */
export interface DrivePath {
  /** `nvme0n1`. */
  readonly name: string;
  /** The PCI address of its controller. */
  readonly address: Printed;
}

/** `ls -l /sys/block`: each name is a link along the ports to the drive. */
export function drivePaths(doc: Doc): readonly DrivePath[] {
  const found: DrivePath[] = [];
  for (const { text, start } of linesOf(doc.text)) {
    const [, name, path = ''] = /\b([a-z][a-z0-9]{2,15}) -> \.\.\/devices\/(pci\S{0,300})$/.exec(text) ?? [];
    const steps = [...path.matchAll(/(?:^|\/)((?:[0-9a-f]{4,8}:)[0-9a-f]{2}:[0-9a-f]{2}\.[0-7])(?=\/)/gi)];
    const last = steps.at(-1);
    if (name === undefined || !last) continue;
    const at = start + text.length - path.length + last.index + last[0].length - last[1]!.length;
    const address = last[1]!.toLowerCase().replace(/^0000:/, '');
    found.push({ name, address: { text: address, doc, span: { start: at, end: at + last[1]!.length } } });
  }
  return found;
}

/** One print of smartctl, with the text that it was read from. */
export interface SmartPrint {
  readonly doc: Doc;
  readonly drive: SmartDrive;
}

export interface DriveOutputs {
  readonly smart: readonly SmartPrint[];
  readonly disks: readonly Disk[];
  readonly paths: readonly DrivePath[];
  readonly devices: readonly Device[];
}

/** A drive with the controller it hangs on, where that is known. */
export interface FoundDrive {
  readonly told: Told;
  readonly device?: Device;
}

export function drivesOf(outputs: DriveOutputs): readonly FoundDrive[] {
  const { devices } = outputs;
  const smart = outputs.smart.filter(tellsOfDrive);
  const disks = wholeDrives(outputs.disks);
  const controllers = devices.filter(({ classCode }) => classCode === '0108');
  const rest = [...disks];
  const joined = smart.map((print) => {
    const at = rest.findIndex(({ name }) => controllerName(name) === controllerName(deviceName(print) ?? '?'));
    return { print, disk: at < 0 ? undefined : rest.splice(at, 1)[0] };
  });
  const all = [...joined, ...rest.map((disk) => ({ print: undefined, disk }))].map(({ print, disk }) => ({
    name: (print && deviceName(print)) ?? disk?.name,
    told: toldOf(print, disk),
  }));
  const nvme = all.filter(({ told }) => (told.bus as Said | undefined)?.text === 'NVMe');
  const found = all.map(({ name, told }) => {
    const path = outputs.paths.find((one) => name !== undefined && controllerName(one.name) === controllerName(name));
    // One drive and one controller need no path.
    const only = nvme.length === 1 && nvme[0]!.told === told && controllers.length === 1 ? controllers[0] : undefined;
    const device = (path && controllers.find(({ address }) => address === path.address.text)) ?? only;
    const address = path?.address ?? only?.at;
    return {
      told: { ...told, address: address && saidAs(address, address.text, 'its path') },
      ...(device ? { device } : {}),
    };
  });
  const unread = smart.length + disks.length === 0 ? controllers.map(byController) : [];
  return [...found, ...unread];
}

/** A drive that could not be opened, or is asleep, is named and nothing else. */
export const tellsOfDrive = ({ drive }: SmartPrint): boolean =>
  (drive.model ?? drive.capacityBytes ?? drive.passed ?? drive.hours) !== undefined;

/** Parts that an NVMe drive is divided into are one drive, whose room none of them tells. */
function wholeDrives(disks: readonly Disk[]): readonly Disk[] {
  const drives = new Map<string, Disk>();
  for (const disk of disks) {
    const name = controllerName(disk.name);
    const before = drives.get(name);
    const { capacity: _, ...shared } = before ?? disk;
    drives.set(name, before ? shared : disk);
  }
  return [...drives.values()];
}

/** Where neither smartctl nor lsblk was read, a controller of an NVMe drive is one all the same. */
const byController = (device: Device): FoundDrive => ({
  told: {
    bus: saidAs(device.at, 'NVMe', 'lspci, class 0108'),
    address: saidAs(device.at, device.address, 'lspci'),
  },
  device,
});

/** `nvme0` of `nvme0n1`; other names are as they are. */
const controllerName = (name: string): string => /^nvme\d+/.exec(name)?.[0] ?? name;

/** Drives behind a controller of several bear the name of what that makes of them. Source: smartctl(8), -d TYPE. */
const BEHIND = new Set(['megaraid', 'cciss', 'areca', '3ware', 'aacraid', 'hpt', 'sssraid', 'jmb39x', 'jms56x']);

const deviceName = ({ drive }: SmartPrint): string | undefined =>
  (drive.deviceType?.value ?? '').split(/[+,]/).some((one) => BEHIND.has(one))
    ? undefined
    : drive.device?.value.replace(/^.*\//, '');

function toldOf(print: SmartPrint | undefined, disk: Disk | undefined): Told {
  const { bus, capacity, model, maker } = disk ?? {};
  if (!print) return { maker, reports: model, capacity, bus };
  const { doc, drive } = print;
  const of = sayer(doc);
  const protocol = of(drive.protocol, 'smartctl, device protocol', (text) => busOf(text, drive));
  return {
    maker:
      of(drive.vendor, 'smartctl, scsi_vendor', (text) => (text === 'ATA' ? undefined : text)) ??
      makerByFamily(of, drive) ??
      maker,
    reports: of(drive.model, 'smartctl, model_name', (text) => text) ?? model,
    // A bridge of a USB housing speaks SATA to the drive: the bus of the machine is what the system says. A SATA drive
    // behind a SAS controller is listed as SAS, and is none.
    bus: bus?.text === 'SAS' && protocol?.text === 'SATA' ? protocol : (bus ?? protocol),
    capacity: of(drive.capacityBytes, 'smartctl, user_capacity', decimalSize) ?? capacity,
    link: of(drive.linkNowGbps, 'smartctl, interface_speed current', sataLink),
    able: of(drive.linkGbps, 'smartctl, interface_speed max', sataLink),
    hours: of(drive.hours, 'smartctl, power_on_time', (hours) => `${hours} h`),
    worn: of(drive.percentUsed, 'smartctl, percentage_used', (used) => `${used} %`) ?? wornOf(doc),
    health: of(drive.passed, 'smartctl, smart_status', (passed) => (passed ? 'passed' : 'failed')),
    'media-errors': mediaErrors(print),
    warning: of(drive.criticalWarning, 'smartctl, critical_warning', (bits) => String(bits !== 0)),
    key: keyAt(doc),
  };
}

/** The tool’s table names the maker first, and so do many drives: a word that both begin with is their maker’s. */
function makerByFamily(of: ReturnType<typeof sayer>, { family, model }: SmartDrive): Said | undefined {
  const [word = '', ...others] = family?.value.split(/\s+/) ?? [];
  const isMaker = others.length > 0 && /^\p{L}{3,}$/u.test(word);
  const begins = model?.value.toLowerCase().startsWith(`${word.toLowerCase()} `);
  return isMaker && begins ? of(family, 'smartctl, model_family', () => word) : undefined;
}

const isBridge = ({ deviceType }: SmartDrive): boolean => /^(?:usb|sntj|sntr|snta)/.test(deviceType?.value ?? '');

const busOf = (protocol: string, drive: SmartDrive): string | undefined =>
  isBridge(drive)
    ? 'USB'
    : protocol === 'SCSI' && /^SAS\b/.test(drive.transport?.value ?? '')
      ? 'SAS'
      : ({ NVMe: 'NVMe', ATA: 'SATA' } as Record<string, string>)[protocol];

/** A drive’s own measure of its wear, which older versions print among its statistics alone. */
function wornOf(doc: Doc): Said | undefined {
  const rows = mapsOf(below(jsonOf(doc), 'ata_device_statistics', 'pages')).flatMap((page) =>
    mapsOf(page.get('table')?.value),
  );
  const row = rows.find(
    (one) =>
      printedAt(doc, one, 'name')?.text === 'Percentage Used Endurance Indicator' &&
      printedAt(doc, one, 'flags', 'valid')?.text === 'true',
  );
  return said(printedAt(doc, row, 'value'), 'smartctl, Percentage Used Endurance Indicator', (text) =>
    /^\d{1,3}$/.test(text) ? `${text} %` : undefined,
  );
}

/** Sectors that were replaced, wait to be, or could not be read. Source: smartctl’s names of attributes 5, 197, 198. */
const SECTORS = new Set(['5', '197', '198']);

/** What drives that speak SCSI count: blocks that were replaced, and those that no retry could read or write. */
const SCSI_ERRORS = [
  ['scsi_grown_defect_list'],
  ...['read', 'write', 'verify'].map((way) => ['scsi_error_counter_log', way, 'total_uncorrected_errors']),
];

function mediaErrors({ doc, drive }: SmartPrint): Said | undefined {
  if (drive.mediaErrors)
    return {
      text: String(drive.mediaErrors.value),
      what: 'smartctl, media_errors',
      ...lineAt(doc, drive.mediaErrors.line),
    };
  const scsi = SCSI_ERRORS.flatMap((path) => {
    const raw = printedAt(doc, jsonOf(doc), ...path);
    const count = wholeNumber(raw?.text ?? '');
    return raw && count !== undefined ? [{ raw, count }] : [];
  });
  if (scsi.length > 0) return summed(scsi, 'smartctl, grown defects and uncorrected errors');
  const rows = mapsOf(below(jsonOf(doc), 'ata_smart_attributes', 'table')).flatMap((row) => {
    const raw = printedAt(doc, row, 'raw', 'string') ?? printedAt(doc, row, 'raw', 'value');
    const count = wholeNumber(/^\d+(?=$|\s)/.exec(raw?.text ?? '')?.[0] ?? '');
    const id = printedAt(doc, row, 'id')?.text ?? '';
    return raw && count !== undefined && SECTORS.has(id) ? [{ id, raw, count }] : [];
  });
  // What waits and what a test could not read are for the most part the same sectors: the greater number counts.
  const [first, ...others] = rows.filter(({ id }) => id !== '5').sort((a, b) => b.count - a.count);
  return summed(
    rows.filter((row) => row === first || !others.includes(row)),
    'smartctl, attributes 5, 197 and 198',
  );
}

/** The sum of several counts, at the line of the greatest. */
function summed(rows: readonly { readonly raw: Printed; readonly count: number }[], what: string): Said | undefined {
  const worst = rows.reduce<(typeof rows)[number] | undefined>((a, b) => (a && a.count >= b.count ? a : b), undefined);
  const sum = rows.reduce((total, { count }) => total + count, 0);
  return worst && saidAs(worst.raw, String(sum), what);
}

/** What the collecting script leaves of a serial number: six letters, which tell a swap and nothing else. */
function keyAt(doc: Doc): Said | undefined {
  return said(
    printedAt(doc, jsonOf(doc), 'serial_number'),
    'masked',
    (text) => /^masked-([0-9a-f]{6})$/.exec(text)?.[1],
  );
}
