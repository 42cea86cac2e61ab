// Figures of the speed at which memory runs: as set, as rated, as the board lists it, and the bandwidth it gives.
import type { Build } from '../build/build';
import { memoryBandwidthBytesPerSecond } from '../trade/memory';
import {
  type Figure,
  missing,
  copyWith,
  unknown,
  figure,
  decidedBy,
  between,
  writtenAt,
  type Missing,
  least,
  derive,
} from './figure';
import { memo } from './memo';
import { modules, type Board, type Kit, channelsUsed } from './memory';

/** Ranks that a module may have while its file does not say. */
const possibleRanks = [1, 2, 4, 8] as const;

/**
 * The speed that the board lists for so many modules of so many ranks. Where it lists no such line, the lines
 * beside it bound the speed: more modules, or more ranks, are never faster. Undefined without a board or memory.
 */
export const populationSpeed = memo((build: Build): Figure | undefined => {
  const { board, memory } = build.parts;
  if (!board || memory.length === 0) return undefined;
  const { speeds } = board.part.memory;
  const label = `speed that ${board.label} lists for this filling`;
  const { lo: many, missing: uncounted } = modules(build);
  const ranks = ranksOf(memory);
  const open = [...(speeds.value ? [] : [missing(speeds, `memory speeds of ${board.label}`)]), ...uncounted];
  if (!speeds.value || open.length > 0) return copyWith(unknown('transfer-rate', label, open), { unit: 'MT/s' });
  const exact =
    ranks.count === undefined
      ? undefined
      : speeds.value.find((row) => row.modules.value === many && row.ranks.value === ranks.count);
  const sizes = memory.flatMap((kit) => [kit.at.count, kit.part.ranks]);
  if (exact?.['up-to'].value) {
    const listed = copyWith(figure(exact['up-to'], label), { source: 'the board’s table of memory speeds' });
    return decidedBy(listed, exact.modules, exact.ranks, ...sizes);
  }
  const candidates = ranks.count === undefined ? possibleRanks : [ranks.count];
  const bounds = candidates.map((count) => speedBounds(speeds.value!, many, count));
  const missingFacts =
    ranks.count === undefined
      ? ranks.missingFacts
      : [
          missing(
            exact?.['up-to'] ?? speeds,
            `memory speed for ${many} modules of ${ranks.count} ${ranks.count === 1 ? 'rank' : 'ranks'}`,
          ),
        ];
  const bounded = between(
    Math.min(...bounds.map(({ lo }) => lo)),
    Math.max(...bounds.map(({ hi }) => hi)),
    'transfer-rate',
    label,
    { unit: 'MT/s', source: 'the board’s table of memory speeds' },
  );
  return decidedBy(copyWith(bounded, { from: writtenAt(speeds), missing: missingFacts }), ...sizes);
});

type SpeedRows = NonNullable<Board['part']['memory']['speeds']['value']>;
/** Bounds from the lines of the table that are no easier, and no harder, than this filling. */
function speedBounds(rows: SpeedRows, many: number, ranks: number): { lo: number; hi: number } {
  let [lo, hi] = [0, Infinity];
  for (const { modules: m, ranks: r, 'up-to': upTo } of rows) {
    if (m.value === undefined || r.value === undefined || !upTo.value) continue;
    if (m.value >= many && r.value >= ranks) lo = Math.max(lo, upTo.value.lo);
    if (m.value <= many && r.value <= ranks) hi = Math.min(hi, upTo.value.hi);
  }
  return { lo: Math.min(lo, hi), hi };
}

/** Ranks of the kit that has most; the board’s table knows one number only. */
function ranksOf(
  memory: readonly Kit[],
): { readonly count: number } | { readonly count?: undefined; readonly missingFacts: readonly Missing[] } {
  const missingFacts = memory
    .filter((kit) => kit.part.ranks.value === undefined)
    .map((kit) => missing(kit.part.ranks, `ranks of ${kit.label}`));
  return missingFacts.length > 0
    ? { missingFacts }
    : { count: Math.max(...memory.map((kit) => kit.part.ranks.value!)) };
}

export const ratedSpeed = (kit: Kit): Figure => figure(kit.part['rated-speed'], `rated speed of ${kit.label}`);

export const standardSpeed = (kit: Kit): Figure =>
  figure(kit.part['standard-speed'], `speed of ${kit.label} without a profile`);

/** Whether the build sets the kit to a speed: by writing one, or by its profile alone. */
export const isSet = ({ at: { speed, profile } }: Kit): boolean =>
  speed.entry !== undefined || profile.value === 'used';

/** The speed a kit is set to; a profile without a speed beside it sets the rated one. */
export const setSpeed = (kit: Kit): Figure =>
  kit.at.speed.entry || kit.at.profile.value !== 'used'
    ? figure(kit.at.speed, `speed set for ${kit.label}`)
    : ratedSpeed(kit);

/** The most that a kit can be set to: its own rating, and what the board lists for this filling. */
export function speedLimit(build: Build, kit: Kit): Figure {
  const population = populationSpeed(build);
  return least(`speed that ${kit.label} reaches`, [ratedSpeed(kit), ...(population ? [population] : [])], {
    unit: 'MT/s',
  });
}

/**
 * The speed at which all modules run: as set, by their profile, or by the modules’ standard, under every limit; the
 * slowest counts for all.
 */
export const memorySpeed = memo((build: Build): Figure | undefined => {
  const { memory } = build.parts;
  if (memory.length === 0) return undefined;
  const each = memory.flatMap((kit) =>
    kit.at.speed.entry ? [setSpeed(kit), ratedSpeed(kit)] : [isSet(kit) ? setSpeed(kit) : standardSpeed(kit)],
  );
  const population = populationSpeed(build);
  return least('memory speed', population ? [...each, population] : each, { unit: 'MT/s' });
});

/** What all channels carry together, in bytes a second; undefined without memory. */
export const memoryBandwidth = memo((build: Build): Figure | undefined => {
  const speed = memorySpeed(build);
  if (!speed) return undefined;
  const low = build.parts.memory.find((kit) => kit.part.type.value?.startsWith('LPDDR'));
  // Channels of low-power memory are narrower than a module’s, and how many there are no field holds.
  if (low)
    return decidedBy(
      unknown('data-rate', 'memory bandwidth', [missing(low.part.type, `width of the channels of ${low.label}`)]),
      low.part.type,
    );
  return bandwidthAt(build, speed);
});

/** What the channels in use carry at a speed. */
export const bandwidthAt = (build: Build, speed: Figure): Figure =>
  derive('memory bandwidth', 'data-rate', [channelsUsed(build), speed], 'channels × 8 B × memory speed', bandwidth, {
    unit: 'GB/s',
    source: 'JEDEC JESD79-4, JESD79-5: 64 data bits a channel',
  });

/** Ends that are open stay open. */
function bandwidth(channels: number, transfersPerSecond: number): number {
  if (!(channels >= 1) || !(transfersPerSecond > 0)) return 0;
  if (!Number.isFinite(channels) || !Number.isFinite(transfersPerSecond)) return Infinity;
  return memoryBandwidthBytesPerSecond(channels, transfersPerSecond / 1e6);
}
