// Memory names and bandwidths against standards.
import { describe, expect, it } from 'vitest';
import { CHANNEL_DATA_BITS, memoryBandwidthBytesPerSecond } from '../../server/src/core/trade/memory';

/** Source: JEDEC JESD79-4 and JESD79-5, module bandwidth as printed on labels. */
const NAMES: [string, number, string][] = [
  ['DDR4', 2133, 'PC4-17000'],
  ['DDR4', 2400, 'PC4-19200'],
  ['DDR4', 2666, 'PC4-21300'],
  ['DDR4', 2933, 'PC4-23400'],
  ['DDR4', 3200, 'PC4-25600'],
  ['DDR5', 4800, 'PC5-38400'],
  ['DDR5', 5600, 'PC5-44800'],
  ['DDR5', 6400, 'PC5-51200'],
];

/** Source: Lenovo, System x3550 M4 Installation and Service Guide, DIMM labels: bandwidth in MB/s by speed. */
const DDR3_NAMES: [number, string][] = [
  [800, 'PC3-6400'],
  [1066, 'PC3-8500'],
  [1333, 'PC3-10600'],
  [1600, 'PC3-12800'],
  [1866, 'PC3-14900'],
];

/** GB/s of one channel. Source: JEDEC JESD79-4, JESD79-5C, peak bandwidth by speed bin. */
const CHANNEL_GB: [number, number][] = [
  [3200, 25.6],
  [4800, 38.4],
  [6000, 48],
  [8800, 70.4],
];

describe('published memory facts', () => {
  // The number in a module’s name is its channel’s rate in MB/s, rounded down to hundreds.
  it.each(NAMES)('%s-%i is %s', (_type, rate, name) => {
    expect(Math.abs(memoryBandwidthBytesPerSecond(1, rate) / 1e6 - Number(name.split('-')[1]))).toBeLessThan(100);
  });

  it.each(DDR3_NAMES)('DDR3-%i is %s', (rate, name) => {
    expect(Math.abs(memoryBandwidthBytesPerSecond(1, rate) / 1e6 - Number(name.split('-')[1]))).toBeLessThan(100);
  });

  it.each(CHANNEL_GB)('a channel at %i MT/s carries %f GB/s', (rate, gb) => {
    expect(memoryBandwidthBytesPerSecond(1, rate)).toBe(gb * 1e9);
  });

  // Source: JEDEC JESD79-5: two sub-channels of 32 bits are the 64 of one channel of JESD79-4.
  it('DDR4 and DDR5 carry as much a transfer', () => expect(CHANNEL_DATA_BITS).toBe(2 * 32));
});
