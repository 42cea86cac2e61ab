// Memory: names, rates, sums, shapes, channels.
import { describe, expect, it } from 'vitest';
import {
  CHANNEL_DATA_BITS,
  MODULE_CLASSES,
  channelsFilled,
  memoryBandwidthBytesPerSecond,
  memoryBytes,
  moduleClassFits,
  modulesByChannel,
} from '../../../server/src/core/trade/memory';
import type { ModuleKind } from '../../../server/src/core/trade/memory';
describe('sums', () => {
  it('multiplies channels, eight bytes and the rate', () => {
    expect(memoryBandwidthBytesPerSecond(1, 3200)).toBe(25.6e9);
    expect(memoryBandwidthBytesPerSecond(2, 6000)).toBe(96e9);
    expect(CHANNEL_DATA_BITS).toBe(64);
    expect(() => memoryBandwidthBytesPerSecond(0, 3200)).toThrow(/channels must be/);
    expect(() => memoryBandwidthBytesPerSecond(2, NaN)).toThrow(/rateMTs must be/);
  });
});

describe('modules', () => {
  const kinds = Object.keys(MODULE_CLASSES) as ModuleKind[];

  it('keeps registered and load-reduced modules to boards made for each', () => {
    const into = (slot: ModuleKind) => kinds.filter((kind) => moduleClassFits(kind, slot));
    expect(into('UDIMM')).toEqual(['UDIMM', 'CUDIMM', 'SO-DIMM', 'CSO-DIMM', 'CAMM2']);
    expect(into('RDIMM')).toEqual(['RDIMM']);
    expect(into('LRDIMM')).toEqual(['LRDIMM']);
  });
});

describe('channels', () => {
  const channels = new Map([
    ['A', ['A1', 'A2']],
    ['B', ['B1', 'B2']],
  ]);

  it.each([
    [['A2', 'B2'], [1, 1], 2],
    [['A1', 'A2'], [2, 0], 1],
    [['A1', 'A2', 'B1'], [2, 1], 2],
    [[], [0, 0], 0],
    [['A2', 'A2', 'C1', 'C1'], [1, 0], 1],
  ])('%j fill %j of them, %i in all', (filled, modules, used) => {
    expect(modulesByChannel(channels, filled)).toEqual(modules);
    expect(channelsFilled(channels, filled)).toBe(used);
  });

  it('are none on a board that lists none', () => {
    expect(modulesByChannel(new Map(), ['A1'])).toEqual([]);
    expect(channelsFilled(new Map(), ['A1'])).toBe(0);
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
});
