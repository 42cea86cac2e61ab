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

export type ModuleShape = 'DIMM' | 'SO-DIMM' | 'CAMM2';
export type ModuleClass = 'unbuffered' | 'registered' | 'load-reduced' | 'multiplexed';
export type ModuleKind = 'UDIMM' | 'CUDIMM' | 'RDIMM' | 'LRDIMM' | 'MRDIMM' | 'SO-DIMM' | 'CSO-DIMM' | 'CAMM2';

/** A kind of module: its outline, what stands between it and the processor, and whether it drives its own clock. */
export interface ModuleFacts {
  readonly shape: ModuleShape;
  readonly class: ModuleClass;
  readonly clocked: boolean;
}

/** Source: JEDEC JESD323 for CUDIMM; common practice for the rest; from memory: that CAMM2 is unbuffered. */
export const MODULE_KINDS: Readonly<Record<ModuleKind, ModuleFacts>> = {
  UDIMM: { shape: 'DIMM', class: 'unbuffered', clocked: false },
  CUDIMM: { shape: 'DIMM', class: 'unbuffered', clocked: true },
  RDIMM: { shape: 'DIMM', class: 'registered', clocked: false },
  LRDIMM: { shape: 'DIMM', class: 'load-reduced', clocked: false },
  MRDIMM: { shape: 'DIMM', class: 'multiplexed', clocked: false },
  'SO-DIMM': { shape: 'SO-DIMM', class: 'unbuffered', clocked: false },
  'CSO-DIMM': { shape: 'SO-DIMM', class: 'unbuffered', clocked: true },
  CAMM2: { shape: 'CAMM2', class: 'unbuffered', clocked: false },
};

/**
 * Is the module of the class that the slot's board drives? A clocked module counts as unbuffered: it goes
 * into the same sockets. Registered and load-reduced need a board and processor made for each.
 * Source: module makers' notes on CUDIMM; common practice.
 */
export function moduleClassFits(module: ModuleKind, slot: ModuleKind): boolean {
  return MODULE_KINDS[module].class === MODULE_KINDS[slot].class;
}

/**
 * May a board whose sheet names one class take another as well, unsaid? Boards for registered modules often take
 * load-reduced or multiplexed ones, by processor; one for plain modules takes none of these. Source: common practice.
 */
export function mayTakeToo(module: ModuleKind, slot: ModuleKind): boolean {
  return MODULE_KINDS[module].class !== 'unbuffered' && MODULE_KINDS[slot].class !== 'unbuffered';
}

/** How a set of filled slots spreads over a board's channels. */
export interface ChannelFill {
  /** Modules in each channel, in the board's order. */
  readonly modules: readonly number[];
  readonly channelsUsed: number;
  readonly mostInOneChannel: number;
  /** Every channel holds the same number of modules. */
  readonly balanced: boolean;
  /** Filled slots that belong to no channel. */
  readonly strangers: readonly string[];
}

/** Counts filled slots by channel; `channels` maps a channel's name to its slots. A slot named twice counts once. */
export function channelFill(channels: ReadonlyMap<string, readonly string[]>, filled: readonly string[]): ChannelFill {
  const slots = new Set(filled);
  const modules = [...channels.values()].map((own) => own.filter((slot) => slots.has(slot)).length);
  const known = new Set([...channels.values()].flat());
  return {
    modules,
    channelsUsed: modules.filter((count) => count > 0).length,
    mostInOneChannel: Math.max(0, ...modules),
    balanced: modules.every((count) => count === modules[0]),
    strangers: [...slots].filter((slot) => !known.has(slot)),
  };
}

/** Height of a DIMM without a spreader, with its tolerance, mm. Source: JEDEC MO-309, 31.25 mm. */
export const BARE_MODULE_MM = 31.4;

/** No SO-DIMM is taller, mm. Source: JEDEC MO-310, 30 mm. */
export const SO_DIMM_MM = 30.2;
