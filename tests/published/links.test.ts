// Rates of links against published figures.
import { describe, expect, it } from 'vitest';
import {
  dataShare,
  linkRateBytesPerSecond,
  lineRateGbps,
  pcieRateBytesPerSecond,
  sataRateBytesPerSecond,
  usbRateBytesPerSecond,
} from '../../server/src/core/trade/links';
import type { UsbRate } from '../../server/src/core/trade/links';
import { TOLERANCES } from './tolerances';

function holds(actual: number, published: number): void {
  expect(Math.abs(actual / published - 1)).toBeLessThanOrEqual(TOLERANCES.linkRate.relative);
}

/**
 * MB/s a lane and direction. Source: PCI Express Base Specification; codings as in the Linux kernel,
 * drivers/pci/pci.h.
 */
const PCIE_MB: [number, number][] = [
  [1, 250],
  [2, 500],
  [3, 984.615],
  [4, 1969.231],
  [5, 3938.462],
  [6, 7375],
];

/** MB/s. Source: Serial ATA Specification, revision 3 (1.5, 3 and 6 Gb/s, 8b/10b). */
const SATA_MB: [number, number][] = [
  [1, 150],
  [2, 300],
  [3, 600],
];

/** MB/s. Source: Universal Serial Bus 2.0 and 3.2 Specifications (480 Mb/s; 5, 10 and 20 Gb/s less coding). */
const USB_MB: [UsbRate, number][] = [
  ['USB 2.0', 60],
  ['USB 3.2 Gen 1', 500],
  ['USB 3.2 Gen 2', 1212.12],
  ['USB 3.2 Gen 2x2', 2424.24],
];

/**
 * Mb/s that the Linux kernel computes for a lane, in whole numbers cut off.
 * Source: Linux kernel, drivers/pci/pci.h, PCIE_SPEED2MBS_ENC.
 */
const KERNEL_MBPS: [number, number][] = [
  [1, 2000],
  [2, 4000],
  [3, 7876],
  [4, 15753],
  [5, 31507],
];

describe('published link rates', () => {
  it.each(PCIE_MB)('PCIe generation %i carries %f MB/s a lane', (generation, mb) => {
    holds(pcieRateBytesPerSecond(generation, 1), mb * 1e6);
  });

  it('PCIe generation 4 x16 carries 31.508 GB/s one way', () => holds(pcieRateBytesPerSecond(4, 16), 31.508e9));

  it('does not add both directions, which is where figures near 64 GB/s come from', () => {
    expect(pcieRateBytesPerSecond(4, 16)).toBeLessThan(32e9);
  });

  it.each(KERNEL_MBPS)('PCIe generation %i is %i Mb/s a lane once cut to whole megabits', (generation, mbps) => {
    expect(Math.floor((pcieRateBytesPerSecond(generation, 1) * 8) / 1e6)).toBe(mbps);
  });

  // A conflict: the same macro counts generation 6 as 64,000 Mb/s, without the 20 of 256 bytes that each flit spends
  // on itself.
  it('PCIe generation 6 stays 236 ÷ 256 below what the kernel counts', () => {
    holds(pcieRateBytesPerSecond(6, 1) * 8, (64_000e6 * 236) / 256);
    expect(pcieRateBytesPerSecond(6, 1) * 8).toBeLessThan(64_000e6);
  });

  it('keeps line rate and payload apart: a quarter of the 8b/10b payload is coding', () => {
    expect(
      (lineRateGbps({ bus: 'PCIe', generation: 2, lanes: 1 })! * 1e9) / 8 / pcieRateBytesPerSecond(2, 1),
    ).toBeCloseTo(1.25, 12);
  });

  it.each(SATA_MB)('SATA %i carries %i MB/s', (generation, mb) => holds(sataRateBytesPerSecond(generation), mb * 1e6));

  it.each(USB_MB)('%s carries %f MB/s', (rate, mb) => holds(usbRateBytesPerSecond(rate), mb * 1e6));

  // Source: Universal Serial Bus Specification 2.0, table 5-10: 13 packets of 512 bytes a microframe, 53,248,000
  // bytes/s.
  it('USB 2.0 moves 53.248 MB/s at most', () => {
    holds(linkRateBytesPerSecond({ bus: 'USB', rate: 'USB 2.0' })! * dataShare('USB', 'USB 2.0').most, 53.248e6);
  });

  // Source: Universal Serial Bus 3.2 Specification: a data packet holds 1024 bytes, beside 20 of its header and 12
  // around
  // the data.
  it('USB 3.2 sends 1024 of 1056 bytes as data at most', () => {
    expect(dataShare('USB', 'USB 3.2 Gen 2').most).toBeCloseTo(1024 / (1024 + 20 + 12), 12);
  });

  // Source: PCI Express Base Specification: 128 bytes is the least that a function's largest packet holds; 4 bytes
  // start
  // and count it, 16 head it at most, 4 check it.
  it('PCIe sends 128 of 152 bytes as data where packets are smallest', () => {
    expect(dataShare('PCIe').least).toBeCloseTo(128 / (128 + 4 + 16 + 4), 12);
  });
});
