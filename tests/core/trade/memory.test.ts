// Memory: names, rates, sums, shapes, channels.
import { describe, expect, it } from 'vitest';
import {
  CHANNEL_DATA_BITS,
  DEVICE_WIDTHS_BITS,
  MODULE_KINDS,
  STANDARD_RATES_MTS,
  channelFill,
  isStandardRate,
  memoryBandwidthBytesPerSecond,
  memoryBytes,
  moduleCapacityGiB,
  moduleClassFits,
  moduleName,
  rankCapacityGiB,
} from '../../../server/src/core/trade/memory';
import type { ModuleKind } from '../../../server/src/core/trade/memory';

describe('rates', () => {
  it('knows the standard rates of each type', () => {
    expect(STANDARD_RATES_MTS).toEqual({
      DDR3: [800, 1066, 1333, 1600, 1866, 2133],
      DDR4: [1600, 1866, 2133, 2400, 2666, 2933, 3200],
      DDR5: [3200, 3600, 4000, 4400, 4800, 5200, 5600, 6000, 6400, 6800, 7200, 7600, 8000, 8400, 8800],
    });
    expect(isStandardRate('DDR4', 3200)).toBe(true);
    expect(isStandardRate('DDR4', 3600)).toBe(false);
    expect(isStandardRate('DDR5', 3600)).toBe(true);
    expect(() => isStandardRate('DDR5', 0)).toThrow(/rateMTs must be/);
  });
});

describe('names', () => {
  it.each([
    ['DDR3', 800, 'PC3-6400'],
    ['DDR3', 1066, 'PC3-8500'],
    ['DDR3', 1333, 'PC3-10600'],
    ['DDR3', 1600, 'PC3-12800'],
    ['DDR3', 1866, 'PC3-14900'],
    ['DDR4', 3733, 'PC4-29800'],
    ['DDR4', 3900, 'PC4-31200'],
    ['DDR4', 3467, 'PC4-27700'],
    ['DDR5', 6000, 'PC5-48000'],
  ] as const)('%s-%i is %s', (type, rate, name) => expect(moduleName(type, rate)).toBe(name));

  it('cuts to whole hundreds', () => {
    expect(moduleName('DDR3', 1599)).toBe('PC3-12700');
    expect(moduleName('DDR3', 1601)).toBe('PC3-12800');
    expect(() => moduleName('DDR4', -1)).toThrow(/rateMTs must be/);
  });
});

describe('sums', () => {
  it('multiplies channels, eight bytes and the rate', () => {
    expect(memoryBandwidthBytesPerSecond(1, 3200)).toBe(25.6e9);
    expect(memoryBandwidthBytesPerSecond(2, 6000)).toBe(96e9);
    expect(CHANNEL_DATA_BITS).toBe(64);
    expect(() => memoryBandwidthBytesPerSecond(0, 3200)).toThrow(/channels must be/);
    expect(() => memoryBandwidthBytesPerSecond(2, NaN)).toThrow(/rateMTs must be/);
  });

  it('adds up devices into ranks and ranks into modules', () => {
    expect(rankCapacityGiB(16, 8)).toBe(16);
    expect(rankCapacityGiB(16, 16)).toBe(8);
    expect(rankCapacityGiB(16, 4)).toBe(32);
    expect(rankCapacityGiB(24, 8)).toBe(24);
    expect(moduleCapacityGiB(16, 8, 2)).toBe(32);
    expect(moduleCapacityGiB(16, 8, 1)).toBe(16);
    expect(() => rankCapacityGiB(16, 32)).toThrow(/deviceWidthBits must be 4, 8 or 16, not 32/);
    expect(() => rankCapacityGiB(0, 8)).toThrow(/dieGibit must be/);
    expect(() => moduleCapacityGiB(16, 8, 0)).toThrow(/ranks must be/);
    expect(DEVICE_WIDTHS_BITS).toEqual([4, 8, 16]);
  });
});

describe('modules', () => {
  const kinds = Object.keys(MODULE_KINDS) as ModuleKind[];

  it('keeps registered and load-reduced modules to boards made for each', () => {
    const into = (slot: ModuleKind) => kinds.filter((kind) => moduleClassFits(kind, slot));
    expect(into('UDIMM')).toEqual(['UDIMM', 'CUDIMM', 'SO-DIMM', 'CSO-DIMM', 'CAMM2']);
    expect(into('RDIMM')).toEqual(['RDIMM']);
    expect(into('LRDIMM')).toEqual(['LRDIMM']);
  });

  it('marks the clocked kinds', () => {
    expect(kinds.filter((kind) => MODULE_KINDS[kind].clocked)).toEqual(['CUDIMM', 'CSO-DIMM']);
  });
});

describe('channelFill', () => {
  const channels = new Map([
    ['A', ['A1', 'A2']],
    ['B', ['B1', 'B2']],
  ]);

  it('counts modules by channel', () => {
    expect(channelFill(channels, ['A2', 'B2'])).toEqual({
      modules: [1, 1],
      channelsUsed: 2,
      mostInOneChannel: 1,
      balanced: true,
      strangers: [],
    });
    expect(channelFill(channels, ['A1', 'A2'])).toEqual({
      modules: [2, 0],
      channelsUsed: 1,
      mostInOneChannel: 2,
      balanced: false,
      strangers: [],
    });
    expect(channelFill(channels, ['A1', 'A2', 'B1'])).toMatchObject({
      modules: [2, 1],
      balanced: false,
      mostInOneChannel: 2,
    });
    expect(channelFill(channels, [])).toMatchObject({
      modules: [0, 0],
      channelsUsed: 0,
      mostInOneChannel: 0,
      balanced: true,
    });
  });

  it('counts a slot named twice once, and keeps strangers', () => {
    expect(channelFill(channels, ['A2', 'A2', 'C1', 'C1'])).toEqual({
      modules: [1, 0],
      channelsUsed: 1,
      mostInOneChannel: 1,
      balanced: false,
      strangers: ['C1'],
    });
    expect(channelFill(new Map(), ['A1'])).toEqual({
      modules: [],
      channelsUsed: 0,
      mostInOneChannel: 0,
      balanced: true,
      strangers: ['A1'],
    });
  });
});

describe('amounts of memory', () => {
  it('counts each step as 1024', () => {
    expect([memoryBytes(1, 1e3), memoryBytes(1, 1e6), memoryBytes(16, 1e9), memoryBytes(1, 1e12)]).toEqual([
      2 ** 10,
      2 ** 20,
      2 ** 34,
      2 ** 40,
    ]);
    expect(() => memoryBytes(1, 1e8)).toThrow(/unitBytes must be/);
  });

  it('agrees with what a rank holds', () => {
    expect(memoryBytes(rankCapacityGiB(16, 8), 1e9)).toBe(2 ** 34);
  });
});
