// M.2: keys and sizes.
import { describe, expect, it } from 'vitest';
import { parseLink } from '../../../server/src/core/trade/links';
import {
  M2_KEYS,
  M2_LENGTHS_MM,
  M2_WIDTHS_MM,
  m2KeyFits,
  m2SizeCode,
  parseM2Keys,
  parseM2Size,
  parseCarried,
} from '../../../server/src/core/trade/m2';

describe('keys', () => {
  it.each([
    ['M', ['M']],
    ['b', ['B']],
    ['A', ['A']],
    ['E', ['E']],
    ['B+M', ['B', 'M']],
    ['m + b', ['B', 'M']],
    ['A+E', ['A', 'E']],
    [' e+a ', ['A', 'E']],
  ])('reads %s', (text, keys) => expect(parseM2Keys(text)).toEqual(keys));

  it.each(['', 'C', 'A+M', 'B+E', 'M+M', 'A+B+M', 'B+', 'BM', 'toString'])('leaves %j undefined', (text) => {
    expect(parseM2Keys(text)).toBeUndefined();
  });

  it('fits a module into a socket when one notch meets the key', () => {
    const fits = (keys: string) => M2_KEYS.filter((socket) => m2KeyFits(parseM2Keys(keys)!, socket));
    expect(fits('B+M')).toEqual(['B', 'M']);
    expect(fits('A+E')).toEqual(['A', 'E']);
    expect(fits('M')).toEqual(['M']);
    expect(fits('B')).toEqual(['B']);
  });
});

describe('sizes', () => {
  it.each([
    ['2280', 22, 80],
    ['22110', 22, 110],
    [' 2230 ', 22, 30],
    ['3042', 30, 42],
    ['1216', 12, 16],
    ['1630', 16, 30],
    ['2226', 22, 26],
    ['2238', 22, 38],
    ['2260', 22, 60],
    ['22 80', 22, 80],
    ['2280-S3-M', 22, 80],
  ])('reads %s', (text, widthMm, lengthMm) => expect(parseM2Size(text)).toEqual({ widthMm, lengthMm }));

  it.each(['', '22', '228', '2281', '2380', '8022', '22080', '221100', 'x2280', '2280x'])(
    'leaves %j undefined',
    (text) => {
      expect(parseM2Size(text)).toBeUndefined();
    },
  );

  it('writes a size back', () => {
    for (const code of ['2230', '2242', '2260', '2280', '22110']) expect(m2SizeCode(parseM2Size(code)!)).toBe(code);
    expect(() => m2SizeCode({ widthMm: 0, lengthMm: 80 })).toThrow(/widthMm must be/);
    expect(() => m2SizeCode({ widthMm: 22, lengthMm: NaN })).toThrow(/lengthMm must be/);
    expect(m2SizeCode({ widthMm: 1, lengthMm: 1 })).toBe('11');
  });
});

describe('the standard', () => {
  it('lists widths and lengths', () => {
    expect(M2_WIDTHS_MM).toEqual([12, 16, 22, 30]);
    expect(M2_LENGTHS_MM).toEqual([16, 26, 30, 38, 42, 60, 80, 110]);
  });
});

// Source: PCI Express M.2 Specification: sockets of keys A and E have USB 2.0.
describe('parseCarried', () => {
  it.each(['USB', ' usb '])('reads %j, which no other link may be', (text) => {
    expect(parseCarried(text)).toEqual({ bus: 'USB', rate: 'USB 2.0' });
    expect(parseLink(text)).toBeUndefined();
  });

  it('reads links as they are', () => expect(parseCarried('PCIe 3.0 x1')).toEqual(parseLink('PCIe 3 x1')));
});
