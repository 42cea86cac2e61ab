// Figures of drives: the link each one gets, the rates it reaches, and what arrays of them hold.
import type { Build, Placed } from '../build/build';
import { hostOf } from './drive-places';
import { ERROR_RATES, LARGEST_USUAL_SSD_BYTES } from '../trade/storage';
import { arrayNeeds, arrayUnits, levelOfKind, type ArrayKind } from '../trade/arrays';
import {
  dataShare,
  type DataShare,
  linkRateBytesPerSecond,
  sataRateBytesPerSecond,
  usbRateBytesPerSecond,
} from '../trade/links';
import {
  copyWith,
  between,
  decidedBy,
  derive,
  figure,
  known,
  least,
  missing,
  readCount,
  times,
  unknown,
  writtenAt,
  type Figure,
  type Missing,
} from './figure';
import { linkRate, endOf, reached } from './lanes';
import { howMany } from './power';
import { memoOf } from './memo';
import { isAtMost } from './near';
import { carriesBus, linkBuses, seatOf, type Slot } from './slots';

export type Drive = Placed<'drives'>;
export type Direction = 'read' | 'write';

const sataSource = 'Serial ATA: line rate × 8b/10b ÷ 8';

/** The link that a drive and its slot or port agree on, as a rate in bytes a second. */
export function driveLinkRate(build: Build, drive: Drive): Figure {
  const rate = linkRateOf(build, drive);
  const { port, slot } = drive.at;
  return drive.part.bus.value === 'SATA'
    ? decidedBy(rate, drive.part.bus, port, slot)
    : decidedBy(rate, drive.part.bus);
}

function linkRateOf(build: Build, drive: Drive): Figure {
  const { bus, link } = drive.part;
  if (bus.value === undefined)
    return unknown('data-rate', `link of ${drive.label}`, [missing(bus, `bus of ${drive.label}`)]);
  if (bus.value === 'SATA') return sataRate(build, drive);
  if (bus.value === 'USB') return usbRate(build, drive);
  if (bus.value !== 'NVMe')
    return unknown('data-rate', `link of ${drive.label}`, [missing(link, `link of ${drive.label}`)]);
  return build.parts.board
    ? reached(build, drive).link
    : linkRate(`link of ${drive.label}`, [endOf(link, drive.label)]);
}

function usbRate(build: Build, { part: { link }, at: { port }, label }: Drive): Figure {
  if (link.value?.bus !== 'USB')
    return unknown('data-rate', `USB link of ${label}`, [missing(link, `USB link of ${label}`)]);
  const own = usbFigure(link, `USB link of ${label}`);
  const { board } = build.parts;
  if (!board) return own;
  const ports = [...(board.part.ports.value ?? [])].filter(([, one]) => one.kind.value === 'USB');
  const [name, named] = ports.find(([name]) => name === port.value) ?? [];
  if (named && name !== undefined) return least(`USB link of ${label}`, [own, usbPort(named.link, name)]);
  // Which port of the board it will find, nothing says: the slowest is USB 2.0.
  const lack =
    ports.length === 0 ? missing(board.part.ports, `USB ports of ${board.label}`) : missing(port, `port of ${label}`);
  const slowest = usbRateBytesPerSecond('USB 2.0');
  return copyWith(own, {
    lo: Math.min(own.lo, slowest),
    missing: [lack],
    label: `USB link of ${label} in a port not named`,
  });
}

type LinkFact = Drive['part']['link'];

function usbPort(link: LinkFact, name: string): Figure {
  const label = `USB link of ${name}`;
  return link.value?.bus === 'USB' ? usbFigure(link, label) : unknown('data-rate', label, [missing(link, label)]);
}

const usbFigure = (link: LinkFact, label: string): Figure =>
  copyWith(
    known(linkRateBytesPerSecond(link.value!)!, 'data-rate', label, {
      unit: 'MB/s',
      source: 'Universal Serial Bus Specification: line rate × coding ÷ 8',
    }),
    { from: writtenAt(link) },
  );

/**
 * SATA runs at the lower generation of drive and port; one that is not stated may be any of the three. A slot without
 * SATA carries nothing.
 */
function sataRate(build: Build, drive: Drive): Figure {
  const { slot } = seatOf(build, drive);
  if (slot && carriesBus(slot, 'SATA') === false)
    return known(0, 'data-rate', `SATA link of ${drive.label}`, { unit: 'MB/s', source: 'the board’s facts' });
  const generations = [sataGeneration(drive), ...portGeneration(build, drive)];
  return derive(
    `SATA link of ${drive.label}`,
    'data-rate',
    generations,
    'the lower generation',
    (...n) => sataRateBytesPerSecond(Math.min(...n)),
    { unit: 'MB/s', source: sataSource },
  );
}

function anyGeneration(label: string, missingFacts: readonly Missing[]): Figure {
  return copyWith(between(1, 3, 'count', label, { source: 'Serial ATA' }), { missing: missingFacts });
}

function sataGeneration({ part: { link, read }, label }: Drive): Figure {
  const words = `SATA generation of ${label}`;
  const stated = link.value?.bus === 'SATA' ? link.value.generation : undefined;
  if (stated !== undefined) return readCount(stated, words, link);
  // What it reads at, an older generation would not let through.
  const rate = read.value?.lo ?? 0;
  const oldest = rate > sataRateBytesPerSecond(2) ? 3 : rate > sataRateBytesPerSecond(1) ? 2 : 1;
  const open = anyGeneration(words, [missing(link, words)]);
  return decidedBy(oldest === 3 ? copyWith(open, { lo: 3, missing: [] }) : copyWith(open, { lo: oldest }), read);
}

/**
 * The generation of the port, or of the M.2 socket, that a drive names; none where it names neither or there is no
 * board.
 */
function portGeneration(build: Build, drive: Drive): Figure[] {
  const { board } = build.parts;
  const port = drive.at.port.value;
  if (!board) return [];
  if (hostOf(build, port)) return [];
  if (port !== undefined) {
    const stated = board.part.ports.value?.get(port)?.generation;
    const label = `SATA generation of ${port}`;
    if (stated?.value !== undefined && stated.value <= 3) return [readCount(stated.value, label, stated)];
    return [anyGeneration(label, [stated ? missing(stated, label) : portMissing(board, port)])];
  }
  const { name, slot, missingFacts } = seatOf(build, drive);
  if (name === undefined) return [];
  return [slot ? carriedSata(slot, name) : anyGeneration(`SATA generation of ${name}`, missingFacts)];
}

function carriedSata(slot: Slot, name: string): Figure {
  const label = `SATA generation of ${name}`;
  const carried = slot.carries.value?.find((one) => one.value?.bus === 'SATA');
  const generation = carried?.value?.bus === 'SATA' ? carried.value.generation : undefined;
  return carried && generation !== undefined
    ? readCount(generation, label, carried)
    : anyGeneration(label, [missing(carried ?? slot.carries, label)]);
}

/** The missing fact behind a port that the board does not list. */
export function portMissing(board: Placed<'board'>, port: string): Missing {
  const { ports } = board.part;
  return { doc: ports.doc, path: `${ports.path}.${port}`, fact: ports, what: `port ${port} of ${board.label}` };
}

/**
 * The rate that links let a drive reach at most, reading or writing: its own, its link’s, or the chipset’s uplink’s,
 * whichever is lowest. Heads of packets are not deducted, so that two places are compared alike.
 */
export const driveRate = (build: Build, drive: Drive, way: Direction): Figure => rates[way](build, drive);

const rates: Record<Direction, (build: Build, drive: Drive) => Figure> = {
  read: memoOf((build, drive) => rateOf(build, drive, 'read')),
  write: memoOf((build, drive) => rateOf(build, drive, 'write')),
};

function rateOf(build: Build, drive: Drive, way: Direction): Figure {
  const own = figure(drive.part[way], `${way} rate of ${drive.label}`);
  const limits = [own, driveLinkRate(build, drive)];
  const through = drive.part.bus.value === 'NVMe' ? reached(build, drive).uplink : undefined;
  if (through) limits.push(through);
  return least(`${way} rate reached by ${drive.label}`, limits, { unit: 'GB/s' });
}

/**
 * The rate that a drive really reaches, its packets’ heads deducted from what links carry. Where its link is as fast as
 * the one its maker measured its rate on, that rate holds.
 */
export function driveReach(build: Build, drive: Drive, way: Direction): Figure {
  const own = figure(drive.part[way], `${way} rate of ${drive.label}`);
  const { bus } = drive.part;
  const link = driveLinkRate(build, drive);
  const through = bus.value === 'NVMe' ? reached(build, drive).uplink : undefined;
  const limits = [own, measuredOn(drive, own, link) ? link : dataOver(drive, link)];
  if (through) limits.push(through.lo >= link.hi ? through : dataOver(drive, through));
  return least(`${way} rate reached by ${drive.label}`, limits, { unit: 'GB/s' });
}

/** Whether a link is no slower than the drive’s own, and lets the rate that its maker states through. */
function measuredOn(drive: Drive, own: Figure, got: Figure): boolean {
  const { link } = drive.part;
  const stated = link.value && linkRateBytesPerSecond(link.value);
  const share = shareOf(drive, got);
  if (stated === undefined) return own.hi <= got.lo * share.lo;
  return isAtMost(stated, got, got.lo, got) && own.hi <= got.lo * share.hi;
}

/** What a link carries of data. */
const dataOver = (drive: Drive, link: Figure): Figure =>
  derive(
    link.label,
    'data-rate',
    [link, shareOf(drive, link)],
    'payload × share of data in it',
    (rate, share) => rate * share,
    link.unit ? { unit: link.unit } : {},
  );

/** How much of a link’s payload is data: of USB by its rate, where the port may be a slower one by both. */
function shareOf({ part: { bus, link } }: Drive, { lo, hi }: Figure): Figure {
  const of = (bytes: number): DataShare => {
    if (bus.value === undefined) return { least: 0, most: 1, source: 'bus not stated' };
    const slow = bytes <= usbRateBytesPerSecond('USB 2.0');
    const rate = slow ? 'USB 2.0' : link.value?.bus === 'USB' ? link.value.rate : undefined;
    return dataShare(linkBuses[bus.value] ?? 'SATA', rate);
  };
  const { least, source } = of(lo);
  return between(least, of(hi).most, 'count', 'share of data in the payload', { source });
}

/** Which of a figure’s inputs binds it: the one with the lowest upper bound. */
export function binding(of: Figure): Figure {
  return of.inputs.reduce((a, b) => (b.hi < a.hi ? b : a), of.inputs[0] ?? of);
}

/** What all drives under one entry hold together. */
export function driveCapacity(drive: Drive): Figure {
  return times(figure(drive.part.capacity, `capacity of ${drive.label}`), howMany(drive));
}

/** The entries an array is made of, each once, and how many drives they are; undefined where a name is no drive’s. */
export interface ArrayDrives {
  readonly entries: readonly Drive[];
  readonly count: number;
}

export function arrayDrives(build: Build, names: readonly string[]): ArrayDrives | undefined {
  const found = names.map((name) => build.parts.drives.find((drive) => drive.at.name.value === name));
  if (found.includes(undefined) || found.length === 0) return undefined;
  const entries = [...new Set(found as Drive[])];
  return { entries, count: entries.reduce((sum, drive) => sum + (drive.at.count.value ?? 1), 0) };
}

/** Whether a drive is plainly a disk with platters: by its recording, its shape, or more room than others have. */
export function isDisk({ part: { shape, bus, recording, capacity } }: Drive): boolean {
  if (recording.value !== undefined || shape.value === '3.5 in') return true;
  return shape.value === undefined && bus.value !== 'NVMe' && (capacity.value?.lo ?? 0) > LARGEST_USUAL_SSD_BYTES;
}

/** Bits that the drives of an array read for one error that cannot be corrected: the worst of them counts. */
export function errorRate(drives: ArrayDrives): Figure {
  const each = drives.entries.map((drive) => {
    const { 'unrecoverable-errors': stated, shape, bus } = drive.part;
    const label = `unrecoverable errors of ${drive.label}`;
    if (stated.value !== undefined) return readCount(stated.value, label, stated);
    const solid = bus.value === 'NVMe' || shape.value === 'M.2' || shape.value === 'card';
    const [low, high] = ERROR_RATES[isDisk(drive) ? 'disk' : solid ? 'solid state' : 'any'];
    return copyWith(between(low, high, 'count', label, { source: 'common practice' }), {
      missing: [missing(stated, label)],
    });
  });
  return least('bits read for one error', each);
}

/** The smallest drive of an array. */
export const smallestDrive = ({ entries }: ArrayDrives): Figure =>
  least(
    'smallest drive',
    entries.map((drive) => figure(drive.part.capacity, `capacity of ${drive.label}`)),
  );

/** Room for data in an array: the smallest drive counts for all. */
export function arrayCapacity(label: string, kind: ArrayKind, { entries, count }: ArrayDrives): Figure {
  const worth = known(arrayUnits(kind, count), 'count', `drives’ worth of data in a ${kind} of ${count}`, {
    source: `SNIA Common RAID Disk Drive Format: ${levelOfKind(kind)}`,
  });
  return times(smallestDrive({ entries, count }), worth, `capacity of ${label}`);
}

/** Whether so many drives make an array of this kind. */
export const arrayMakes = (kind: ArrayKind, drives: number): boolean =>
  drives >= arrayNeeds(kind).least && (!arrayNeeds(kind).even || drives % 2 === 0);
