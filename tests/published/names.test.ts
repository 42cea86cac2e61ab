// Names of an open standard against dmidecode, which prints them from a dump that is built here.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { SMBIOS_PROCESSOR_UPGRADES } from '../../server/src/core/trade/names';
import { itWithOracle, runOracle } from './oracle';

const PROCESSOR = 4;
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
  return new Map(
    codes.map((code, n): [number, string] => [code, lines[n]!]).filter(([, name]) => name !== NOT_IN_THIS_RELEASE),
  );
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
    expect(SMBIOS_PROCESSOR_UPGRADES[0x24 - 1]).toBe('Socket LGA1155');
  });
});
