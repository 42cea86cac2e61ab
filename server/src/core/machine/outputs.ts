// Which tool printed a text: told by the text itself, of the classes of Windows by the file’s name.
import type { Doc } from '../parts/doc';
import { cimClassOf, type CimClass } from './cim';
import { edidBytes } from './edid';
import { jsonOf } from './said';
import { isSpdPrint } from './spd';
import { below } from './reading';

export type Tool =
  | 'dmidecode'
  | 'lspci'
  | 'paths'
  | 'lscpu'
  | 'lsblk'
  | 'smartctl'
  | 'EDID'
  | 'decode-dimms'
  | 'sensors';

export interface Output {
  readonly tool: Tool | CimClass;
  readonly doc: Doc;
  /** By the file’s name: taken while the machine worked. */
  readonly underLoad: boolean;
}

const fileName = ({ name }: Doc): string => name.slice(name.lastIndexOf('/') + 1);

/** Undefined for a text that no reader knows. */
export function outputOf(doc: Doc): Output | undefined {
  const tool = cimClassOf(doc.name) ?? toolOf(doc);
  return tool && { tool, doc, underLoad: /(?:^|[-_.])load/i.test(fileName(doc)) };
}

function toolOf(doc: Doc): Tool | undefined {
  const { text } = doc;
  if (/^\s*[{[]/.test(text)) return jsonTool(doc);
  if (/^(?:# dmidecode |Handle 0x[0-9A-F]{1,8}, DMI type )/m.test(text)) return 'dmidecode';
  if (/^(?:[0-9a-f]{4,8}:)?[0-9a-f]{2}:[0-9a-f]{2}\.[0-7] [A-Z]/m.test(text)) return 'lspci';
  if (text.includes(' -> ../devices/')) return 'paths';
  if (isSpdPrint(text)) return 'decode-dimms';
  return edidBytes(text) ? 'EDID' : undefined;
}

function jsonTool(doc: Doc): Tool | undefined {
  const root = jsonOf(doc);
  if (below(root, 'lscpu')) return 'lscpu';
  if (below(root, 'blockdevices')) return 'lsblk';
  if (below(root, 'smartctl')) return 'smartctl';
  // Chips of sensors bear the bus that they sit on in their names.
  const chips = root?.type === 'map' ? root.entries : [];
  return chips.some(
    ({ key, value }) => /-(?:isa|pci|i2c|virtual|acpi|hid|scsi|mdio|platform)-/.test(key) && value.type === 'map',
  )
    ? 'sensors'
    : undefined;
}

/** `DP-1` of `edid-card0-DP-1.hex`; undefined where the name tells none. */
export const connectorOf = (doc: Doc): string | undefined =>
  /(?:^|[-_.])((?:DP|HDMI-[AB]|HDMI|DVI-[DI]|eDP|VGA)-\d{1,2})(?![\d])/.exec(fileName(doc))?.[1];
