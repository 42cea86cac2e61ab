// Links: every row of the tables, every spelling, every refusal.
import { describe, expect, it } from 'vitest';
import {
  PCIE_WIDTHS,
  USB_RATE_NAMES,
  lineRateGbps,
  linkRateBytesPerSecond,
  parseLink,
  pcieGenerationAt,
  pcieRateBytesPerSecond,
  sataGenerationAt,
  sataRateBytesPerSecond,
  trainedRateBytesPerSecond,
  usbRateBytesPerSecond,
} from '../../../server/src/core/trade/links';
import type { PcieLink } from '../../../server/src/core/trade/links';

const pcie = (generation: number, lanes: number): PcieLink => ({ bus: 'PCIe', generation, lanes });

describe('rates', () => {
  it('tells a generation by the rate that tools print', () => {
    expect([2.5, 5, 8, 16, 32, 64, 128, 0].map(pcieGenerationAt)).toEqual([1, 2, 3, 4, 5, 6, undefined, undefined]);
    expect([1.5, 3, 6, 12].map(sataGenerationAt)).toEqual([1, 2, 3, undefined]);
    expect(PCIE_WIDTHS).toEqual([1, 2, 4, 8, 16]);
  });

  it('takes the coding off a lane of each generation', () => {
    const lanes = [1, 2, 3, 4, 5, 6].map((generation) => pcieRateBytesPerSecond(generation, 1));
    const exact = [250e6, 500e6, (1e9 * 128) / 130, (2e9 * 128) / 130, (4e9 * 128) / 130, (8e9 * 236) / 256];
    lanes.forEach((rate, n) => expect(rate).toBeCloseTo(exact[n]!, 3));
    expect([1, 2, 3].map(sataRateBytesPerSecond)).toEqual([150e6, 300e6, 600e6]);
    expect(usbRateBytesPerSecond('USB 3.2 Gen 1')).toBe(500e6);
    expect(usbRateBytesPerSecond('USB 3.2 Gen 2x2')).toBeCloseTo((2.5e9 * 128) / 132, 3);
  });

  it('multiplies by lanes', () => {
    expect(pcieRateBytesPerSecond(2, 4)).toBe(2e9);
    expect(pcieRateBytesPerSecond(1, 1)).toBe(250e6);
    expect(lineRateGbps(pcie(3, 4))).toBe(32);
    expect(lineRateGbps(pcie(5, 1))).toBe(32);
  });

  it('refuses generations and lanes that do not exist', () => {
    expect(() => pcieRateBytesPerSecond(0, 4)).toThrow(/PCIe generation must be 1 to 6, not 0/);
    expect(() => pcieRateBytesPerSecond(7, 4)).toThrow(RangeError);
    expect(() => pcieRateBytesPerSecond(NaN, 4)).toThrow(RangeError);
    expect(() => pcieRateBytesPerSecond(4, 0)).toThrow(/lanes must be/);
    expect(() => pcieRateBytesPerSecond(4, -1)).toThrow(RangeError);
    expect(() => pcieRateBytesPerSecond(4, 1.5)).toThrow(RangeError);
    expect(() => lineRateGbps(pcie(7, 1))).toThrow(RangeError);
    expect(() => sataRateBytesPerSecond(4)).toThrow(/SATA generation must be 1 to 3, not 4/);
    expect(() => sataRateBytesPerSecond(0)).toThrow(RangeError);
  });

  it('gives the rate of any link, and none for SATA of unstated generation', () => {
    expect(linkRateBytesPerSecond(pcie(1, 2))).toBe(500e6);
    expect(linkRateBytesPerSecond({ bus: 'SATA', generation: 3 })).toBe(600e6);
    expect(linkRateBytesPerSecond({ bus: 'SATA' })).toBeUndefined();
    expect(linkRateBytesPerSecond({ bus: 'USB', rate: 'USB 2.0' })).toBe(60e6);
  });

  it('gives the line rate of any link, coding included, and none for SATA of unstated generation', () => {
    expect(lineRateGbps(pcie(4, 4))).toBe(64);
    expect(lineRateGbps({ bus: 'SATA', generation: 3 })).toBe(6);
    expect(lineRateGbps({ bus: 'USB', rate: 'USB 3.2 Gen 2' })).toBe(10);
    expect(lineRateGbps({ bus: 'SATA' })).toBeUndefined();
    expect(() => lineRateGbps({ bus: 'SATA', generation: 4 })).toThrow(/SATA generation must be 1 to 3/);
  });

  it('carries 20, 40 and 80 Gb/s over USB4 less coding', () => {
    expect(usbRateBytesPerSecond('USB4 20')).toBeCloseTo(2424.242e6, -3);
    expect(usbRateBytesPerSecond('USB4 40')).toBeCloseTo(4848.485e6, -3);
    expect(usbRateBytesPerSecond('USB4 80')).toBe(10e9);
  });
});

describe('trainedRateBytesPerSecond', () => {
  it('takes the lowest generation on the fewest lanes', () => {
    expect(trainedRateBytesPerSecond([4, 3, 5], [16, 8])).toBe(pcieRateBytesPerSecond(3, 8));
    expect(trainedRateBytesPerSecond([3], [4])).toBe(pcieRateBytesPerSecond(3, 4));
  });

  it('carries nothing without lanes, and at least one lane of generation 1 with any', () => {
    expect(trainedRateBytesPerSecond([4], [0, 4])).toBe(0);
    expect(trainedRateBytesPerSecond([4], [-Infinity, 4])).toBe(0);
    expect(trainedRateBytesPerSecond([-Infinity, 4], [4])).toBe(1e9);
  });

  it('says nothing where no limit is known', () => {
    expect(trainedRateBytesPerSecond([Infinity], [4])).toBeNaN();
    expect(trainedRateBytesPerSecond([4], [Infinity])).toBeNaN();
    expect(trainedRateBytesPerSecond([7], [4])).toBeNaN();
    expect(trainedRateBytesPerSecond([7, 5], [4, Infinity])).toBe(pcieRateBytesPerSecond(5, 4));
  });
});

describe('parseLink', () => {
  const good: [string, unknown][] = [
    ['PCIe 5 x4', pcie(5, 4)],
    ['PCIe 4 x2', pcie(4, 2)],
    ['PCIe 1 x1', pcie(1, 1)],
    ['PCIe 6 x16', pcie(6, 16)],
    ['pcie 4.0 x16', pcie(4, 16)],
    ['PCIe Gen 4 x8', pcie(4, 8)],
    ['PCIe Gen4x4', pcie(4, 4)],
    ['PCI Express 3.0 ×8', pcie(3, 8)],
    ['PCIe 3 x 4', pcie(3, 4)],
    ['PCIe5 x4', pcie(5, 4)],
    ['  PCIe   5   x4 ', pcie(5, 4)],
    ['SATA', { bus: 'SATA' }],
    ['SATA 3', { bus: 'SATA', generation: 3 }],
    ['sata3', { bus: 'SATA', generation: 3 }],
    ['SATA 3.0', { bus: 'SATA', generation: 3 }],
    ['SATA 1', { bus: 'SATA', generation: 1 }],
    ['USB 2.0', { bus: 'USB', rate: 'USB 2.0' }],
    ['USB 3.0', { bus: 'USB', rate: 'USB 3.2 Gen 1' }],
    ['USB 3.1 Gen 1', { bus: 'USB', rate: 'USB 3.2 Gen 1' }],
    ['USB 3.1 Gen 2', { bus: 'USB', rate: 'USB 3.2 Gen 2' }],
    ['USB 3.2 Gen 1', { bus: 'USB', rate: 'USB 3.2 Gen 1' }],
    ['USB 3.2 Gen 2', { bus: 'USB', rate: 'USB 3.2 Gen 2' }],
    ['USB 3.2 Gen2x2', { bus: 'USB', rate: 'USB 3.2 Gen 2x2' }],
    ['USB3.2 Gen 2×2', { bus: 'USB', rate: 'USB 3.2 Gen 2x2' }],
    ['USB4 20', { bus: 'USB', rate: 'USB4 20' }],
    ['USB 4 40 Gb/s', { bus: 'USB', rate: 'USB4 40' }],
    ['USB4 40Gbps', { bus: 'USB', rate: 'USB4 40' }],
    ['USB4 80 gbps', { bus: 'USB', rate: 'USB4 80' }],
  ];
  it.each(good)('reads %s', (text, link) => expect(parseLink(text)).toEqual(link));

  it('takes any run of blanks for one', () => {
    expect(parseLink('PCI\t Express  5  x4')).toEqual(pcie(5, 4));
  });

  const bad = [
    '',
    'PCIe',
    'PCIe 5',
    'PCIe x4',
    'PCIe 0 x4',
    'PCIe 7 x4',
    'PCIe 5 x3',
    'PCIe 5 x32',
    'PCIe 5 x0',
    'PCIe 5 x',
    'PCIe 5.1 x4',
    'PCIe 5 x4 x4',
    'x PCIe 5 x4',
    'PCIe 5 x160',
    'SATA 0',
    'SATA 4',
    'SATA 3.1',
    'eSATA',
    'SATA 3 port',
    'USB',
    'USB 3',
    'USB 3.2',
    'USB 3.2 Gen 3',
    'USB 9.0',
    'USB4',
    'USB4 30',
    'USB4 40 GB/h',
    'USB4 40 GBytes',
    'my USB4 40',
    'my USB 2.0',
    'USB 2.0 port',
    'NVMe',
    'constructor',
    '__proto__',
    'USB constructor',
  ];
  it.each(bad)('leaves %j undefined', (text) => expect(parseLink(text)).toBeUndefined());
});

describe('spellings', () => {
  it('names each USB rate', () => {
    expect(USB_RATE_NAMES).toEqual([
      'USB 2.0',
      'USB 3.2 Gen 1',
      'USB 3.2 Gen 2',
      'USB 3.2 Gen 2x2',
      'USB4 20',
      'USB4 40',
      'USB4 80',
    ]);
  });
});
