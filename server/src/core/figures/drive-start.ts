// Figures of drives that start: what one draws meanwhile, and what all disks of a build draw together.
import type { Build } from '../build/build';
import { DISK_START_5V_A, DRIVE_START } from '../trade/draw-limits';
import { housed } from './drive-places';
import {
  between,
  copyWith,
  counted,
  decidedBy,
  derive,
  figure,
  missing,
  most,
  times,
  total,
  type Figure,
} from './figure';
import { memo } from './memo';
import { driveDraw, howMany, partDraw } from './power';
import type { Drive } from './storage';

/** What one drive draws while it starts: by its currents then, else by its peak, else by its class. */
export function startDraw(drive: Drive): Figure {
  const { draw, shape } = drive.part;
  const read = figure(draw.peak, `peak draw of ${drive.label}`);
  const spinning = spinUpDraw(drive);
  // The peak is the most that a drive draws at all; where the sheets of one disk differ, the worse counts.
  if (spinning) return draw.peak.value ? most(spinning.label, [read, spinning], { unit: 'W' }) : spinning;
  if (draw.peak.value) return read;
  const ofClass = DRIVE_START[shape.value ?? ''];
  return copyWith(read, { lo: 0, hi: ofClass?.mostW ?? Infinity, unit: 'W', source: ofClass?.source });
}

/** By the currents that it states for the start of its platters; undefined where it states none. */
function spinUpDraw({ part: { 'spin-up': spin, shape, draw }, label }: Drive): Figure | undefined {
  const [at12, at5] = [spin.current, spin['current-5V']];
  const what = `draw of ${label} while it starts`;
  // One of 2.5 in takes nothing at 12 V; of a larger one both currents count.
  const small = shape.value === '2.5 in' && at5.value;
  if (!at12.value && !small) return undefined;
  const amps12 = figure(at12, `start current of ${label} at 12 V`);
  const amps5 = figure(at5, `start current of ${label} at 5 V`);
  if (!at12.value) return derive(what, 'power', [amps5], '5 V × current', (amps) => 5 * amps, { unit: 'W' });
  if (!at5.value && draw.peak.value)
    return derive(what, 'power', [amps12], '12 V × current', (amps) => 12 * amps, { unit: 'W' });
  const beside = at5.value
    ? amps5
    : copyWith(amps5, { lo: 0, hi: DISK_START_5V_A, unit: 'A', source: 'manuals of 3.5 in disks: at most 1 A at 5 V' });
  return derive(
    what,
    'power',
    [amps12, beside],
    '12 V × current + 5 V × current',
    (amps, others) => 12 * amps + 5 * others,
    { unit: 'W' },
  );
}

/** Disks of 3.5 in; one that does not say its shape may be one. */
const disks = memo((build: Build): readonly Drive[] =>
  build.parts.drives.filter((drive) => housed(drive) !== false && (drive.part.shape.value ?? '3.5 in') === '3.5 in'),
);

const waits = ({ part: { 'spin-up': spin } }: Drive): boolean => spin.staggered.value === true;

/** Whether all disks of the build wait until their host starts them. */
export const allWait = (build: Build): boolean => disks(build).every(waits);

/** How long the start of the slowest lasts; undefined where a disk does not say. */
export const startLasts = memo((build: Build): Figure | undefined => {
  const each = disks(build).map(({ part: { 'spin-up': spin }, label }) => figure(spin.lasts, `start of ${label}`));
  return each.length === 0 || each.some((one) => one.missing.length > 0)
    ? undefined
    : most('time that the start of the disks lasts', each, { unit: 's' });
});

/** What the disks draw while they start, with board, memory and fans; undefined where none spins. */
export const startTogether = memo((build: Build): Figure | undefined => {
  const all = disks(build);
  if (all.length === 0) return undefined;
  const beside = build.of('board', 'memory', 'fans').flatMap((placed) => partDraw(build, placed) ?? []);
  const held = all.filter(waits);
  const free = all.filter((disk) => !waits(disk)).map((disk) => times(diskStart(disk), howMany(disk)));
  const label = held.length === all.length ? 'draw while the disks start by turns' : 'draw while all disks start';
  return total(label, 'power', [...free, ...(held.length > 0 ? [inTurns(build, held)] : []), ...beside], {
    unit: 'W',
  });
});

/** Disks that wait for their host: as many start at once as it lets, and all others run already. */
function inTurns(build: Build, held: readonly Drive[]): Figure {
  const grounds = held.map(({ part }) => part['spin-up'].staggered);
  const count = total(
    'disks that wait to be started',
    'count',
    held.map((disk) => howMany(disk)),
  );
  const drawn = derive(
    'draw of the disks that start by turns',
    'power',
    [
      count,
      atOnce(build, count),
      spread('start of such a disk', held.map(diskStart)),
      spread('such a disk at work', held.map(driveDraw)),
    ],
    'disks that start at once × their start + the others × their draw at work',
    (all, together, start, running) => {
      const starting = Math.min(all, together);
      return starting * Math.max(start, running) + (all - starting) * running;
    },
    { unit: 'W' },
  );
  return decidedBy(drawn, ...grounds);
}

/** From the lightest to the heaviest of several disks. */
function spread(label: string, each: readonly Figure[]): Figure {
  const heaviest = most(label, each, { unit: 'W' });
  return copyWith(heaviest, { lo: Math.min(...each.map(({ lo }) => Math.max(0, lo))) });
}

/** How many disks the hosts start at once: cards with ports where there are any, else the board. */
function atOnce(build: Build, all: Figure): Figure {
  const label = 'disks that start at once';
  const cards = build.parts.cards.filter(({ part }) => (part['drive-ports'].value ?? 0) > 0);
  const hosts = cards.length > 0 ? cards : build.of('board');
  const each = hosts.map((host) => {
    const fact = (host as (typeof cards)[number]).part['starts-at-once'];
    const read = counted(fact, `disks that ${host.label} starts at once`);
    return fact.value === undefined ? copyWith(read, { lo: 1, hi: all.hi, source: 'counted in the build' }) : read;
  });
  return each.length === 0
    ? between(1, all.hi, 'count', label, { source: 'counted in the build' })
    : total(label, 'count', each);
}

/** One that does not say its shape may be a disk, or not. */
function diskStart(disk: Drive): Figure {
  const { shape } = disk.part;
  const draw = startDraw(disk);
  return shape.value === undefined
    ? copyWith(draw, { lo: 0, missing: [...draw.missing, missing(shape, `shape of ${disk.label}`)] })
    : draw;
}
