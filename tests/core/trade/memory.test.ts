// Memory: names, rates, sums, shapes, channels.
import { describe, expect, it } from 'vitest';
import {
  CHANNEL_DATA_BITS,
  MODULE_KINDS,
  channelFill,
  memoryBandwidthBytesPerSecond,
  memoryBytes,
  moduleClassFits,
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
});
