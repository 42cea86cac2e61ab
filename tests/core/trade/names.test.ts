// Names: sockets and their pins.
import { describe, expect, it } from 'vitest';
import { SMBIOS_PROCESSOR_UPGRADES, SOCKET_NAMES, pinsOn } from '../../../server/src/core/trade/names';

describe('sockets', () => {
  it('lists bare names', () => {
    expect(SMBIOS_PROCESSOR_UPGRADES).toHaveLength(0x57);
    expect(SOCKET_NAMES).toContain('LGA1851');
    expect(SOCKET_NAMES).toContain('AM5');
    expect(SOCKET_NAMES).toContain('F(1207)');
    expect(SOCKET_NAMES).not.toContain('Other');
    expect(SOCKET_NAMES.some((name) => /socket /i.test(name) || name === '')).toBe(false);
    expect(SOCKET_NAMES).toHaveLength(0x57 - 12);
  });
});

describe('pinsOn', () => {
  const board = [
    'LGA1851',
    'LGA1700',
    'Socket LGA775',
    'FCLGA1151',
    'LGA-1200',
    'AM5',
    'SP3',
    'SP3r2',
    'SP5',
    'SP6',
    'TR4',
    'sTRX4',
    'sWRX8',
    'sTR5',
    'Socket F (1207)',
    'G34',
    'C32',
  ];
  const processor = [
    'AM4',
    'am3',
    'AM3+',
    'AM2',
    'AM2+',
    'FM1',
    'FM2',
    'FM2+',
    'FS1',
    'FS2',
    'S1',
    '423',
    '478',
    '754',
    '939',
    '940',
    'Socket A (Socket 462)',
    'PGA988A',
    'rPGA988B',
    'mPGA604',
    'PGA-132',
  ];
  const none = ['BGA1515', 'Socket BGA1744', 'FCBGA1440', 'BGA-1528'];

  it.each(board)('%s: on the board', (socket) => expect(pinsOn(socket)).toBe('board'));
  it.each(processor)('%s: on the processor', (socket) => expect(pinsOn(socket)).toBe('processor'));
  it.each(none)('%s: nowhere', (socket) => expect(pinsOn(socket)).toBe('none'));

  it.each([
    '',
    'AM',
    'AM6',
    'LGA',
    'PGA',
    'BGA',
    'XLGA1851',
    'XYPGA12',
    'XBGA1',
    'Slot 1',
    'Super Socket 7',
    '__proto__',
  ])('%j: not known', (socket) => {
    expect(pinsOn(socket)).toBeUndefined();
  });

  it('tells for every socket of the standard', () => {
    for (const name of SOCKET_NAMES) expect(pinsOn(name), name).toBeDefined();
  });
});
