// Makes the tables that a firmware gives, for `dmidecode --from-dump`. Source: DMTF DSP0134, SMBIOS 3.5.

export interface MadeStructure {
  readonly type: number;
  /** The bytes behind type, length and handle. */
  readonly body: readonly number[];
  readonly strings: readonly string[];
}

const word = (value: number): number[] => [value & 255, (value >> 8) & 255];
const long = (value: number): number[] => [...word(value & 0xffff), ...word((value >>> 16) & 0xffff)];
const zeros = (count: number): number[] => Array<number>(count).fill(0);

export const bios = (version: string, date: string): MadeStructure => ({
  type: 0,
  body: [1, 2, 0, 0, 3, 15, ...zeros(8), 0, 0, 5, 1, 255, 255],
  strings: ['Saltmarsh Firmware', version, date],
});

export const system = (product: string, serial: string): MadeStructure => ({
  type: 1,
  body: [1, 2, 0, 3, ...zeros(16).map((_, i) => i + 1), 6, 0, 0],
  strings: ['Saltmarsh', product, serial],
});

export const baseBoard = (product: string, serial: string): MadeStructure => ({
  type: 2,
  body: [1, 2, 0, 3, 0, 9, 0, 0, 0, 10, 0],
  strings: ['Norrvik', product, serial],
});

export const processor = (version: string): MadeStructure => ({
  type: 4,
  body: [0, 3, 2, 1, ...zeros(8), 2, 0, ...zeros(6), 0x41, 2, ...zeros(22)],
  strings: ['Calder', version],
});

/** 3 for none, 5 and 6 for correcting arrays. */
export const memoryArray = (correction: number): MadeStructure => ({
  type: 16,
  body: [3, 3, correction, ...long(0x4000000), 0xfe, 0xff, ...word(2)],
  strings: [],
});

export interface MadeDevice {
  readonly locator: string;
  readonly bank: string;
  /** 0 for an empty slot. */
  readonly sizeGB: number;
  readonly speed: number;
  readonly running: number;
  readonly part: string;
  readonly serial: string;
}

export const memoryDevice = ({ locator, bank, sizeGB, speed, running, part, serial }: MadeDevice): MadeStructure => ({
  type: 17,
  body: [
    ...word(0x10),
    ...[0xfe, 0xff, 64, 0, 64, 0],
    ...word(sizeGB >= 32 ? 0x7fff : sizeGB * 1024),
    ...[9, 0, 1, 2, 34, 0x80, 0x40],
    ...word(speed),
    ...[3, 4, 0, 5, 1],
    ...long(sizeGB >= 32 ? sizeGB * 1024 : 0),
    ...word(running),
    ...[...word(1100), ...word(1100), ...word(1100)],
  ],
  strings: [locator, bank, 'Lumen', serial, part],
});

/** A row of the table of slots, with the address of what sits in it. */
export const systemSlot = (name: string, bus: number, device: number, inUse: boolean): MadeStructure => ({
  type: 9,
  body: [1, 0xa5, 0x0d, inUse ? 4 : 3, 4, 1, 0, 0x0c, 1, ...word(0), bus, device << 3],
  strings: [name],
});

/** The tables with the entry point before them, as `dmidecode --dump-bin` writes them. */
export function makeSmbios(structures: readonly MadeStructure[]): Uint8Array {
  const table = [...structures, { type: 127, body: [], strings: [] }].flatMap(({ type, body, strings }, handle) => [
    ...[type, body.length + 4, ...word(handle)],
    ...body,
    ...strings.flatMap((text) => [...[...text].map((letter) => letter.charCodeAt(0)), 0]),
    ...(strings.length === 0 ? [0, 0] : [0]),
  ]);
  const entry = [...[...'_SM3_'].map((letter) => letter.charCodeAt(0)), 0, 24, 3, 5, 0, 1, 0, ...long(table.length)];
  entry.push(...long(32), ...long(0));
  entry[5] = (256 - (entry.reduce((sum, byte) => sum + byte, 0) % 256)) % 256;
  return Uint8Array.from([...entry, ...zeros(32 - entry.length), ...table]);
}
