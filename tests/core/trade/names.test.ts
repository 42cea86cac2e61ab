// Names: sockets, pins, memory and slot codes.
import { describe, expect, it } from 'vitest';
import {
  SMBIOS_MEMORY_FORMS, SMBIOS_MEMORY_TYPES, SMBIOS_PROCESSOR_UPGRADES, SOCKET_NAMES, pinsOn, sameSocket, smbiosSlot, smbiosSocket,
} from '../../../server/src/core/trade/names';

describe('sockets', () => {
  it('names the socket of a code as parts do', () => {
    expect(SMBIOS_PROCESSOR_UPGRADES).toHaveLength(0x57);
    expect(smbiosSocket(0x55)).toBe('LGA1851');
    expect(smbiosSocket(0x49)).toBe('AM5');
    expect(smbiosSocket(0x31)).toBe('AM4');
    expect(smbiosSocket(0x24)).toBe('LGA1155');
    expect(smbiosSocket(0x57)).toBe('BGA2833');
    expect(smbiosSocket(0x0d)).toBe('423');
  });

  it('has no socket for codes that name none', () => {
    for (const code of [0, 1, 2, 4, 6, 7, 8, 0x0a, 0x58, -1, NaN, 1.5]) expect(smbiosSocket(code), String(code)).toBeUndefined();
  });

  it('lists bare names for completion', () => {
    expect(SOCKET_NAMES).toContain('LGA1851');
    expect(SOCKET_NAMES).toContain('AM5');
    expect(SOCKET_NAMES).toContain('F(1207)');
    expect(SOCKET_NAMES).not.toContain('Other');
    expect(SOCKET_NAMES.some((name) => /socket /i.test(name) || name === '')).toBe(false);
    expect(SOCKET_NAMES).toHaveLength(0x57 - 12);
  });

  it('takes spellings of one socket for one', () => {
    expect(sameSocket('LGA1851', 'Socket LGA1851')).toBe(true);
    expect(sameSocket('lga 1851', ' socket LGA1851 ')).toBe(true);
    expect(sameSocket('LGA2011', 'LGA2011-3')).toBe(false);
    expect(sameSocket('AM4', 'AM5')).toBe(false);
    expect(sameSocket('Sockets', 's')).toBe(false);
    expect(sameSocket('A (Socket 462)', 'A (462)')).toBe(false);
    expect(sameSocket('AM4', 'Super Socket AM4')).toBe(false);
  });
});

describe('pinsOn', () => {
  const board = ['LGA1851', 'LGA1700', 'Socket LGA775', 'FCLGA1151', 'LGA-1200', 'AM5', 'SP3', 'SP3r2', 'SP5', 'SP6', 'TR4', 'sTRX4', 'sWRX8', 'sTR5', 'Socket F (1207)', 'G34', 'C32'];
  const processor = ['AM4', 'am3', 'AM3+', 'AM2', 'AM2+', 'FM1', 'FM2', 'FM2+', 'FS1', 'FS2', 'S1', '423', '478', '754', '939', '940', 'Socket A (Socket 462)', 'PGA988A', 'rPGA988B', 'mPGA604', 'PGA-132'];
  const none = ['BGA1515', 'Socket BGA1744', 'FCBGA1440', 'BGA-1528'];

  it.each(board)('%s: on the board', (socket) => expect(pinsOn(socket)).toBe('board'));
  it.each(processor)('%s: on the processor', (socket) => expect(pinsOn(socket)).toBe('processor'));
  it.each(none)('%s: nowhere', (socket) => expect(pinsOn(socket)).toBe('none'));

  it.each(['', 'AM', 'AM6', 'LGA', 'PGA', 'BGA', 'XLGA1851', 'XYPGA12', 'XBGA1', 'Slot 1', 'Super Socket 7', '__proto__'])('%j: not known', (socket) => {
    expect(pinsOn(socket)).toBeUndefined();
  });

  it('tells for every socket of the standard', () => {
    for (const name of SOCKET_NAMES) expect(pinsOn(name), name).toBeDefined();
  });
});

describe('codes', () => {
  it('reads PCIe slots by generation and width', () => {
    const codes = Array.from({ length: 0xc6 - 0xa4 + 1 }, (_, n) => n + 0xa4);
    const read = codes.map((code) => smbiosSlot(code)).map((slot) => slot && `${slot.kind} ${slot.generation} ${slot.lanes ?? '-'}`);
    const generation = (n: number) => ['-', 1, 2, 4, 8, 16].map((lanes) => `PCIe ${n} ${lanes}`);
    expect(read).toEqual([undefined, ...[1, 2, 3].flatMap(generation), undefined, ...[4, 5].flatMap(generation), undefined, undefined, undefined]);
  });

  it('leaves the width out where the code does not state it', () => {
    expect(smbiosSlot(0xb1)).toStrictEqual({ kind: 'PCIe', generation: 3 });
    expect(smbiosSlot(0xb2)).toStrictEqual({ kind: 'PCIe', generation: 3, lanes: 1 });
  });

  it('reads the four M.2 sockets', () => {
    for (const code of [0x14, 0x15, 0x16, 0x17]) expect(smbiosSlot(code)).toStrictEqual({ kind: 'M.2' });
    for (const code of [0x13, 0x18, 0, NaN]) expect(smbiosSlot(code)).toBeUndefined();
  });

  it('lists memory types and forms', () => {
    expect([...SMBIOS_MEMORY_TYPES.values()]).toEqual(['DDR', 'DDR2', 'DDR3', 'DDR4', 'LPDDR', 'LPDDR2', 'LPDDR3', 'LPDDR4', 'DDR5', 'LPDDR5']);
    expect([...SMBIOS_MEMORY_FORMS.values()]).toEqual(['Chip', 'DIMM', 'Row Of Chips', 'SODIMM', 'Die', 'CAMM']);
  });
});
