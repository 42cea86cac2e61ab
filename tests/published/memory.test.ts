// Memory names, bandwidths and capacities against standards and against decode-dimms.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  CHANNEL_DATA_BITS,
  STANDARD_RATES_MTS,
  memoryBandwidthBytesPerSecond,
  moduleCapacityGiB,
  moduleName,
  rankCapacityGiB,
} from '../../server/src/core/trade/memory';
import type { MemoryType } from '../../server/src/core/trade/memory';
import { itWithOracle, runOracle } from './oracle';

/** Source: JEDEC JESD79-4 and JESD79-5, module bandwidth as printed on labels. */
const NAMES: [MemoryType, number, string][] = [
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

/**
 * A DDR4 SPD image. Source: JEDEC Standard No. 21-C, Annex L: byte 4 density, 12 organisation, 13 bus width, 18 and
 * 125 cycle time.
 */
function ddr4Spd(dieGibit: number, deviceWidthBits: number, ranks: number, rateMTs: number): Uint8Array {
  const spd = new Uint8Array(512);
  const cyclePs = Math.round(2e6 / rateMTs);
  const coarse = Math.ceil(cyclePs / 125);
  spd[0] = 0x23;
  spd[2] = 12;
  spd[3] = 2;
  spd[4] = Math.log2((dieGibit * 1024) / 256);
  spd[12] = ((ranks - 1) << 3) | Math.log2(deviceWidthBits / 4);
  spd[13] = 3;
  spd[18] = coarse;
  spd[19] = 13;
  spd[125] = (cyclePs - coarse * 125) & 0xff;
  return spd;
}

function hexDump(bytes: Uint8Array): string {
  const row = (at: number) =>
    [...bytes.subarray(at, at + 16)].map((byte) => byte.toString(16).padStart(2, '0')).join(' ');
  return Array.from(
    { length: bytes.length / 16 },
    (_, n) => `${(n * 16).toString(16).padStart(8, '0')}  ${row(n * 16)}\n`,
  ).join('');
}

function decode(spd: Uint8Array): { name: string; mebibytes: number } {
  const folder = mkdtempSync(join(tmpdir(), 'spd-'));
  try {
    const file = join(folder, 'spd.hex');
    writeFileSync(file, hexDump(spd));
    const text = runOracle('decode-dimms', ['-c', '-x', file]).stdout;
    const name = /\((PC4-\d+)\)/.exec(text)?.[1];
    const size = /^Size\s+(\d+) MB/m.exec(text)?.[1];
    if (!name || !size) throw new Error(`decode-dimms printed no speed or no size:\n${text}`);
    return { name, mebibytes: Number(size) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('published memory facts', () => {
  it.each(NAMES)('%s-%i is %s', (type, rate, name) => expect(moduleName(type, rate)).toBe(name));

  it.each(DDR3_NAMES)('DDR3-%i is %s', (rate, name) => expect(moduleName('DDR3', rate)).toBe(name));

  it.each(CHANNEL_GB)('a channel at %i MT/s carries %f GB/s', (rate, gb) => {
    expect(memoryBandwidthBytesPerSecond(1, rate)).toBe(gb * 1e9);
  });

  // Source: JEDEC Standard No. 21-C, Annex L: eight devices of 16 Gb, eight bits wide, are 16 GB.
  it('a rank of 16 Gb × 8 holds 16 GB', () => expect(rankCapacityGiB(16, 8)).toBe(16));

  // Source: JEDEC JESD79-5: two sub-channels of 32 bits are the 64 of one channel of JESD79-4.
  it('DDR4 and DDR5 carry as much a transfer', () => expect(CHANNEL_DATA_BITS).toBe(2 * 32));

  for (const rate of STANDARD_RATES_MTS.DDR4) {
    itWithOracle('decode-dimms', `decode-dimms names DDR4-${rate} as we do`, () => {
      expect(decode(ddr4Spd(8, 8, 1, rate)).name).toBe(moduleName('DDR4', rate));
    });
  }

  const organisations = [4, 8, 16].flatMap((die) =>
    [4, 8, 16].flatMap((width) => [1, 2].map((ranks) => [die, width, ranks] as const)),
  );
  for (const [die, width, ranks] of organisations) {
    itWithOracle('decode-dimms', `decode-dimms counts ${ranks} rank(s) of ${die} Gb ×${width} as we do`, () => {
      expect(decode(ddr4Spd(die, width, ranks, 3200)).mebibytes).toBe(moduleCapacityGiB(die, width, ranks) * 1024);
    });
  }
});
