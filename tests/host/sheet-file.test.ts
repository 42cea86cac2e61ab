// Data sheets in the letters that they were saved in.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetText } from '../../server/src/host/sheet-file';

// Source: WHATWG Encoding Standard, index windows-1252: what it has where Latin-1 has controls.
const western: readonly (readonly [byte: number, letter: string])[] = [
  [0x80, '€'],
  [0x84, '„'],
  [0x85, '…'],
  [0x93, '“'],
  [0x95, '•'],
  [0x96, '–'],
  [0x97, '—'],
  [0x99, '™'],
  [0x9f, 'Ÿ'],
  [0xb1, '±'],
  [0xe4, 'ä'],
];

describe('a sheet as it was saved', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'fettle-sheets-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const read = (bytes: Uint8Array): unknown => {
    writeFileSync(join(folder, 'sheet.txt'), bytes);
    return sheetText(folder, 'sheet.txt');
  };

  it.each(western)('has for the byte %i of Western Windows the letter %s', (byte, letter) => {
    expect(read(Uint8Array.from([0x31, byte, 0x32, 0xe4]))).toBe(`1${letter}2ä`);
  });

  it('is read as UTF-8, and as UTF-16 with its mark', () => {
    const text = 'Länge: 100–240 V\r\n';
    expect(read(Buffer.from(text))).toBe(text);
    expect(read(Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, 'utf16le')]))).toBe(text);
    expect(read(Buffer.concat([Buffer.from([0xfe, 0xff]), Buffer.from(text, 'utf16le').swap16()]))).toBe(text);
  });
});
