// Makes the data that a DDR4 module holds of itself. Source: JEDEC Standard 21-C, annex L.

export interface MadeModule {
  /** 1 for RDIMM, 2 for UDIMM, 3 for SO-DIMM. */
  readonly moduleType: 1 | 2 | 3;
  readonly ranks: 1 | 2;
  /** Of one chip: 5 for 8 Gbit, 6 for 16 Gbit. */
  readonly density: 5 | 6;
  readonly ecc: boolean;
  /** Cycle time in steps of 125 ps, and its correction in ps: 6 and -15 … for 1333 MHz, 5 and 0 for 1600 MHz. */
  readonly cycle: readonly [steps: number, ps: number];
  readonly partNumber: string;
}

function crc(bytes: readonly number[]): number {
  let sum = 0;
  for (const byte of bytes) {
    sum ^= byte << 8;
    for (let bit = 0; bit < 8; bit++) sum = (sum << 1) ^ (sum & 0x8000 ? 0x1021 : 0);
    sum &= 0xffff;
  }
  return sum;
}

export function makeSpd({ moduleType, ranks, density, ecc, cycle, partNumber }: MadeModule): Uint8Array {
  const bytes = new Array<number>(512).fill(0);
  const put = (at: number, ...values: readonly number[]): void => {
    values.forEach((value, index) => {
      bytes[at + index] = value & 255;
    });
  };
  put(0, 0x23, 0x11, 0x0c, moduleType, 0x80 | density, 0x21, 0, 0x08, 0, 0x60, 0, 0x03);
  put(12, ((ranks - 1) << 3) | 1, ecc ? 0x0b : 0x03);
  put(18, cycle[0], 0x0d, 0xf8, 0x3f, 0, 0, 0x6e, 0x6e, 0x6e, 0x11, 0x00, 0x6e, 0xf0, 0x0a, 0x20, 0x08);
  put(125, cycle[1]);
  const first = crc(bytes.slice(0, 126));
  put(126, first, first >> 8);
  put(128, 0x11, 0x11);
  const second = crc(bytes.slice(128, 254));
  put(254, second, second >> 8);
  put(320, 0x04, 0xb3, 0x00, 0x25, 0x10, 0xde, 0xad, 0xbe, 0xef);
  put(329, ...[...partNumber.padEnd(20)].map((letter) => letter.charCodeAt(0)));
  return Uint8Array.from(bytes);
}

/** As `hexdump -C` prints it, which `decode-dimms -x` reads. */
export function asDump(bytes: Uint8Array): string {
  const rows: string[] = [];
  for (let at = 0; at < bytes.length; at += 16) {
    const hex = [...bytes.slice(at, at + 16)].map((byte) => byte.toString(16).padStart(2, '0')).join(' ');
    rows.push(`${at.toString(16).padStart(8, '0')}  ${hex}`);
  }
  return `${rows.join('\n')}\n`;
}

/** What decode-dimms prints of a module. */
export const decodedDimm = `# decode-dimms version 4.3

Decoding EEPROM: /sys/bus/i2c/drivers/ee1004/0-0050
Guessing DIMM is in                              bank 1

---=== SPD EEPROM Information ===---
EEPROM CRC of bytes 0-125                        OK (0x2D3D)
Fundamental Memory type                          DDR4 SDRAM
Module Type                                      UDIMM

---=== Memory Characteristics ===---
Maximum module speed                             3200 MT/s (PC4-25600)
Size                                             32768 MB
SDRAM Device Width                               8 bits
Ranks                                            2
Primary Bus Width                                64 bits
Bus Width Extension                              8 bits
AA-RCD-RP-RAS (cycles)                           22-22-22-52

---=== Other Information ===---
Module Nominal Voltage                           1.2 V

---=== Physical Characteristics ===---
Module Height                                    32 mm

---=== Manufacturer Data ===---
Module Manufacturer                              Lumen
Assembly Serial Number                           SN-4711-SECRET
Part Number                                      LU-32G3200
`;
