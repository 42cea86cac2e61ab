// Memory modules: bandwidth, sizes, shapes and classes, how channels are filled.
import { needCount, needPositive } from './numbers';

/** Data bits of a channel; the two 32-bit halves of DDR5 are still 64. Source: JEDEC JESD79-4, JESD79-5. */
export const CHANNEL_DATA_BITS = 64;

/** Bytes a second of filled channels: channels × 8 B × MT/s. Throws RangeError for a count below 1. */
export function memoryBandwidthBytesPerSecond(channels: number, rateMTs: number): number {
  needCount('channels', channels, 1);
  needPositive('rateMTs', rateMTs);
  return channels * (CHANNEL_DATA_BITS / 8) * rateMTs * 1e6;
}

/** Rates of the standard, and those beyond it that module names use, in MT/s. */
const NAMED_RATES_MTS = [
  800, 1066, 1333, 1600, 1866, 2133, 2400, 2666, 2933, 3200, 3600, 4000, 4800, 5200, 5600, 6000, 6400, 7200, 8000,
];

/**
 * The rate in MT/s of a module that is named by its bandwidth in MB/s, as `PC4-25600`: 8 bytes a transfer, cut to
 * hundreds. Undefined where no rate has that bandwidth. Source: JEDEC JESD79-3, JESD79-4 and JESD79-5, module names.
 */
export const rateOfBandwidth = (bandwidthMBs: number): number | undefined =>
  NAMED_RATES_MTS.find((rateMTs) => Math.abs(rateMTs * (CHANNEL_DATA_BITS / 8) - bandwidthMBs) <= 70);

/**
 * Bytes of an amount of memory that is written in kB, MB, GB or TB (`unitBytes` 1e3 to 1e12): in memory each step is
 * 1024. Source: JEDEC Standard No. 21-C, Annex L (SPD): a rank of 16 GB holds 2³⁴ bytes. Throws RangeError for
 * another unit.
 */
export function memoryBytes(amount: number, unitBytes: number): number {
  const steps = [1e3, 1e6, 1e9, 1e12].indexOf(unitBytes) + 1;
  if (steps === 0) throw new RangeError(`unitBytes must be 1e3, 1e6, 1e9 or 1e12, not ${unitBytes}`);
  return amount * 1024 ** steps;
}

export type ModuleClass = 'unbuffered' | 'registered' | 'load-reduced' | 'multiplexed';
export type ModuleKind = 'UDIMM' | 'CUDIMM' | 'RDIMM' | 'LRDIMM' | 'MRDIMM' | 'SO-DIMM' | 'CSO-DIMM' | 'CAMM2';

/**
 * What stands between a module and the processor. A clocked module counts as unbuffered: it goes into the same sockets.
 * Source: JEDEC JESD323 and module makers' notes for CUDIMM; common practice for the rest; from memory: that CAMM2 is
 * unbuffered.
 */
export const MODULE_CLASSES: Readonly<Record<ModuleKind, ModuleClass>> = {
  UDIMM: 'unbuffered',
  CUDIMM: 'unbuffered',
  RDIMM: 'registered',
  LRDIMM: 'load-reduced',
  MRDIMM: 'multiplexed',
  'SO-DIMM': 'unbuffered',
  'CSO-DIMM': 'unbuffered',
  CAMM2: 'unbuffered',
};

/**
 * Is the module of the class that the slot's board drives? Registered and load-reduced need a board and processor made
 * for each. Source: common practice.
 */
export function moduleClassFits(module: ModuleKind, slot: ModuleKind): boolean {
  return MODULE_CLASSES[module] === MODULE_CLASSES[slot];
}

/**
 * May a board whose sheet names one class take another as well, unsaid? Boards for registered modules often take
 * load-reduced or multiplexed ones, by processor; one for plain modules takes none of these. Source: common practice.
 */
export function mayTakeToo(module: ModuleKind, slot: ModuleKind): boolean {
  return MODULE_CLASSES[module] !== 'unbuffered' && MODULE_CLASSES[slot] !== 'unbuffered';
}

/** The slots of each channel, by the channel's name. */
type Channels = ReadonlyMap<string, readonly string[]>;

/** Modules in each channel, in the board's order. A slot named twice counts once, one of no channel not at all. */
export function modulesByChannel(channels: Channels, filled: readonly string[]): readonly number[] {
  const slots = new Set(filled);
  return [...channels.values()].map((own) => own.filter((slot) => slots.has(slot)).length);
}

/** How many channels have a module in one of their slots. */
export const channelsFilled = (channels: Channels, filled: readonly string[]): number =>
  modulesByChannel(channels, filled).filter((modules) => modules > 0).length;

/** Height of a DIMM without a spreader, with its tolerance, mm. Source: JEDEC MO-309, 31.25 mm. */
export const BARE_MODULE_MM = 31.4;

/** No SO-DIMM is taller, mm. Source: JEDEC MO-310, 30 mm. */
export const SO_DIMM_MM = 30.2;
