// Names of an open standard against dmidecode, which prints them from a dump that is built here.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { SMBIOS_MEMORY_FORMS, SMBIOS_MEMORY_TYPES, SMBIOS_PROCESSOR_UPGRADES, smbiosSlot, smbiosSocket } from '../../server/src/core/trade/names';
import { itWithOracle, runOracle } from './oracle';

const PROCESSOR = 4;
const SLOT = 9;
const MEMORY = 17;
const NOT_IN_THIS_RELEASE = '<OUT OF SPEC>';

/** One structure without strings. Source: DMTF DSP0134, SMBIOS Reference Specification, structure header. */
function structure(type: number, length: number, handle: number, fields: readonly [number, number][]): Uint8Array {
  const bytes = new Uint8Array(length + 2);
  bytes.set([type, length, handle & 0xff, handle >> 8]);
  for (const [offset, value] of fields) bytes[offset] = value;
  return bytes;
}

/** A whole dump: 64-bit entry point, padded to 32 bytes, then the table. Source: DMTF DSP0134, entry point. */
function dump(structures: readonly Uint8Array[]): Uint8Array {
  const table = Buffer.concat([...structures, structure(127, 4, 0xfff0, [])]);
  const entry = Buffer.alloc(32);
  entry.write('_SM3_', 'latin1');
  entry.set([0, 24, 3, 4, 0, 1, 0], 5);
  entry.writeUInt32LE(table.length, 12);
  entry.writeBigUInt64LE(32n, 16);
  entry[5] = -entry.reduce((sum, byte) => sum + byte, 0) & 0xff;
  return Buffer.concat([entry, table]);
}

/** What dmidecode prints under `label`, one line a structure. */
function printed(structures: readonly Uint8Array[], label: string): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'smbios-'));
  try {
    const file = join(folder, 'dump.bin');
    writeFileSync(file, dump(structures));
    const text = runOracle('dmidecode', ['--from-dump', file]).stdout;
    return [...text.matchAll(new RegExp(`^\t${label}: (.*)$`, 'gm'))].map((match) => match[1]!);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Code by code what the program prints, without those that it is too old for. */
function names(codes: readonly number[], build: (code: number) => Uint8Array, label: string): Map<number, string> {
  const lines = printed(codes.map(build), label);
  expect(lines).toHaveLength(codes.length);
  return new Map(codes.map((code, n): [number, string] => [code, lines[n]!]).filter(([, name]) => name !== NOT_IN_THIS_RELEASE));
}

const processor = (code: number) => structure(PROCESSOR, 0x30, code, [[0x19, code]]);

// Source: DMTF DSP0134, printed by dmidecode.
describe('names printed by dmidecode', () => {
  itWithOracle('dmidecode', 'sockets: all but 24h', () => {
    const codes = SMBIOS_PROCESSOR_UPGRADES.map((_, n) => n + 1);
    const shown = names(codes, processor, 'Upgrade');
    expect(shown.size).toBeGreaterThanOrEqual(0x3f);
    const different = [...shown].filter(([code, name]) => SMBIOS_PROCESSOR_UPGRADES[code - 1] !== name);
    expect(different).toEqual([[0x24, 'Socket BGA1155']]);
  });

  // A conflict: the standard's table names 24h LGA1155; a soldered package would have no socket at all.
  itWithOracle('dmidecode', '24h is LGA1155 in the standard, BGA1155 in print', () => {
    expect(names([0x24], processor, 'Upgrade').get(0x24)).toBe('Socket BGA1155');
    expect(smbiosSocket(0x24)).toBe('LGA1155');
  });

  itWithOracle('dmidecode', 'memory types', () => {
    const codes = [...SMBIOS_MEMORY_TYPES.keys()];
    const shown = names(codes, (code) => structure(MEMORY, 0x28, code, [[0x0c, 1], [0x12, code]]), 'Type');
    expect(shown.size).toBe(codes.length);
    for (const [code, name] of shown) expect(SMBIOS_MEMORY_TYPES.get(code)).toBe(name);
  });

  itWithOracle('dmidecode', 'memory forms', () => {
    const codes = [...SMBIOS_MEMORY_FORMS.keys()];
    const shown = names(codes, (code) => structure(MEMORY, 0x28, code, [[0x0c, 1], [0x0e, code]]), 'Form Factor');
    expect(shown.size).toBeGreaterThanOrEqual(5);
    for (const [code, name] of shown) expect(SMBIOS_MEMORY_FORMS.get(code)).toBe(name);
  });

  itWithOracle('dmidecode', 'slots: PCIe by generation and width, M.2', () => {
    const codes = Array.from({ length: 0xc6 }, (_, n) => n + 1);
    const shown = names(codes, (code) => structure(SLOT, 0x11, code, [[0x05, code], [0x06, 1]]), 'Type');
    const plain = [...shown].filter(([, name]) => /^PCI Express( \d)?( x\d+)?$|^M\.2 Socket/.test(name));
    expect(plain).toHaveLength(5 * 6 + 4);
    for (const [code, name] of plain) {
      const slot = smbiosSlot(code)!;
      const generation = slot.generation === 1 ? '' : ` ${slot.generation}`;
      const lanes = slot.lanes === undefined ? '' : ` x${slot.lanes}`;
      expect(slot.kind === 'M.2' ? 'M.2 Socket' : `PCI Express${generation}${lanes}`).toBe(slot.kind === 'M.2' ? name.slice(0, 10) : name);
    }
    for (const code of codes) if (smbiosSlot(code)) expect(plain.map(([known]) => known)).toContain(code);
  });
});
