// Makes what PCI devices hold of themselves, as the hexadecimal dump that `lspci -F` reads.
// Source: PCI Local Bus Specification 3.0; PCI Express Base Specification, the Express capability.

export interface MadePci {
  readonly address: string;
  readonly id: string;
  readonly classCode: string;
  /** The bus behind a bridge, and the last below it. */
  readonly behind?: readonly [secondary: number, subordinate: number];
  /** 0 endpoint, 4 root port, 5 upstream and 6 downstream port of a switch; absent without the capability. */
  readonly kind?: 0 | 4 | 5 | 6;
  readonly able?: readonly [generation: number, lanes: number];
  readonly link?: readonly [generation: number, lanes: number];
  readonly isEmpty?: boolean;
}

export function makePci(devices: readonly MadePci[]): string {
  return devices
    .map((device) => {
      const bytes = configOf(device);
      const rows = Array.from({ length: 16 }, (_, row) => {
        const hex = bytes.slice(row * 16, row * 16 + 16).map((byte) => byte.toString(16).padStart(2, '0'));
        return `${(row * 16).toString(16).padStart(2, '0')}: ${hex.join(' ')}`;
      });
      return `${device.address} Device\n${rows.join('\n')}\n`;
    })
    .join('\n');
}

function configOf({ address, id, classCode, behind, kind, able = [1, 1], link = able, isEmpty }: MadePci): number[] {
  const bytes = Array<number>(256).fill(0);
  const put = (at: number, ...values: readonly number[]): void => values.forEach((value, i) => (bytes[at + i] = value));
  const [vendor = 0, product = 0] = id.split(':').map((part) => Number.parseInt(part, 16));
  put(0, vendor & 255, vendor >> 8, product & 255, product >> 8, 0x07, 0, 0x10, 0);
  put(10, Number.parseInt(classCode.slice(2), 16), Number.parseInt(classCode.slice(0, 2), 16));
  if (behind) put(14, 1);
  if (behind) put(24, Number.parseInt(address.slice(0, 2), 16), ...behind);
  if (kind === undefined) return bytes;
  put(0x34, 0x40);
  const hasSlot = kind === 4 || kind === 6;
  put(0x40, 0x10, 0, (kind << 4) | 2, hasSlot ? 1 : 0);
  put(0x4c, able[0] | ((able[1] & 15) << 4), (able[1] >> 4) | 0x04);
  put(0x52, link[0] | ((link[1] & 15) << 4), link[1] >> 4);
  put(0x5a, isEmpty ? 0 : 0x40);
  put(0x70, able[0]);
  return bytes;
}
