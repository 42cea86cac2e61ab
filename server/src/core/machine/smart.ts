// What `smartctl -x -j` prints of one drive. Serial numbers and world-wide names are never read.
import { Lines } from '../text';
import { sataGenerationAt } from '../trade/links';
import { readJson, type Node } from '../yaml';
import { JsonReader, type Reading } from './reading';

export interface SmartDrive {
  readonly model?: Reading<string>;
  /** `Vendor Client SSDs`: the family that the tool’s own table names. */
  readonly family?: Reading<string>;
  /** `ATA`, `NVMe`, `SCSI`: how it is spoken to. */
  readonly protocol?: Reading<string>;
  /** `SAS (SPL-4)`: the bus that a SCSI drive speaks it on. */
  readonly transport?: Reading<string>;
  /** Who says to have made a SCSI drive. */
  readonly vendor?: Reading<string>;
  /** `sat`, `nvme`, `usbjmicron`: a bridge in between shows here. */
  readonly deviceType?: Reading<string>;
  /** `/dev/sda`. */
  readonly device?: Reading<string>;
  readonly capacityBytes?: Reading<number>;
  /** `M.2`, `2.5 inches`, `3.5 inches`. */
  readonly shape?: Reading<string>;
  /** The fastest link it can run, Gb/s. */
  readonly linkGbps?: Reading<number>;
  /** The link that it runs, Gb/s. */
  readonly linkNowGbps?: Reading<number>;
  readonly hours?: Reading<number>;
  readonly passed?: Reading<boolean>;
  readonly criticalWarning?: Reading<number>;
  readonly percentUsed?: Reading<number>;
  readonly mediaErrors?: Reading<number>;
  /** The temperature at which it warns, °C. */
  readonly warnsAtC?: Reading<number>;
}

const isSmartPrint = (text: string): boolean => /^\s*\{/.test(text) && /"smartctl"\s*:\s*\{/.test(text);

/** A drive’s print; undefined where the text is no whole JSON of this tool. */
export function readSmart(text: string): SmartDrive | undefined {
  return isSmartPrint(text) ? smartDrive(readJson(text)?.root, new Lines(text)) : undefined;
}

/** The same of what was read of the text. */
export function smartDrive(root: Node | undefined, lines: Lines): SmartDrive | undefined {
  if (root?.type !== 'map') return undefined;
  const json = new JsonReader(root, lines);
  const drive = { ...identityOf(json), ...stateOf(json) };
  return Object.fromEntries(Object.entries(drive).filter(([, value]) => value !== undefined));
}

type Found = { [K in keyof SmartDrive]: SmartDrive[K] | undefined };

function identityOf(json: JsonReader): Found {
  return {
    model: json.text('model_name') ?? json.text('scsi_model_name'),
    family: json.text('model_family'),
    protocol: json.text('device', 'protocol'),
    transport: json.text('scsi_transport_protocol', 'name'),
    vendor: json.text('scsi_vendor') ?? json.text('vendor'),
    deviceType: json.text('device', 'type'),
    device: json.text('device', 'name'),
    capacityBytes: positive(json.whole('user_capacity', 'bytes') ?? json.whole('nvme_total_capacity')),
    shape: json.text('form_factor', 'name'),
    linkGbps: rate(json.text('interface_speed', 'max', 'string')),
    linkNowGbps: rate(json.text('interface_speed', 'current', 'string')),
  };
}

function stateOf(json: JsonReader): Found {
  const nvme = 'nvme_smart_health_information_log';
  return {
    hours: json.whole('power_on_time', 'hours'),
    passed: json.flag('smart_status', 'passed'),
    criticalWarning: json.whole(nvme, 'critical_warning'),
    percentUsed:
      json.whole(nvme, 'percentage_used') ??
      json.whole('endurance_used', 'current_percent') ??
      json.whole('scsi_percentage_used_endurance_indicator'),
    mediaErrors: json.whole(nvme, 'media_errors'),
    warnsAtC: positive(json.whole('nvme_composite_temperature_threshold', 'warning')),
  };
}

const positive = (read: Reading<number> | undefined): Reading<number> | undefined =>
  read && read.value > 0 ? read : undefined;

function rate(read: Reading<string> | undefined): Reading<number> | undefined {
  const [, gbps] = /^(\d{1,2}(?:\.\d)?) Gb\/s$/.exec(read?.value ?? '') ?? [];
  return read && gbps !== undefined ? { ...read, value: Number(gbps) } : undefined;
}

const SHAPES: Readonly<Record<string, string>> = { '2.5 inches': '2.5 in', '3.5 inches': '3.5 in', 'M.2': 'M.2' };

/** A form factor in the words of part files. */
export const driveShape = (formFactor: string | undefined): string | undefined => SHAPES[formFactor ?? ''];

/** A SATA link by its line rate, in the words of part files: `SATA 3`. */
export function sataLink(gbps: number): string | undefined {
  const generation = sataGenerationAt(gbps);
  return generation === undefined ? undefined : `SATA ${generation}`;
}

/** A drive’s capacity in decimal units lies a little above what its maker names. */
export function capacityNamed(bytes: number): string {
  const tb = bytes / 1e12;
  const [value, unit] = tb >= 0.95 ? [tb, 'TB' as const] : [bytes / 1e9, 'GB' as const];
  const named = value >= 10 ? Math.floor(value + 0.01) : Math.floor(value * 100 + 0.3) / 100;
  return `${named} ${unit}`;
}
