// Figures of drives: the link each one gets, the rates it reaches, and what arrays of them hold.
import type { Build, Placed } from '../build/build';
import { arrayNeeds, arrayUnits, levelOfKind, type ArrayKind } from '../trade/arrays';
import { linkRateBytesPerSecond, sataRateBytesPerSecond } from '../trade/links';
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
import { carriesBus, seatOf, type Slot } from './slots';

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
  if (bus.value === 'USB') return usbRate(drive);
  if (bus.value !== 'NVMe')
    return unknown('data-rate', `link of ${drive.label}`, [missing(link, `link of ${drive.label}`)]);
  return build.parts.board
    ? reached(build, drive).link
    : linkRate(`link of ${drive.label}`, [endOf(link, drive.label)]);
}

function usbRate({ part: { link }, label }: Drive): Figure {
  if (link.value?.bus !== 'USB')
    return unknown('data-rate', `USB link of ${label}`, [missing(link, `USB link of ${label}`)]);
  const rate = linkRateBytesPerSecond(link.value)!;
  return copyWith(
    known(rate, 'data-rate', `USB link of ${label}`, {
      unit: 'MB/s',
      source: 'Universal Serial Bus Specification: line rate × coding ÷ 8',
    }),
    { from: writtenAt(link) },
  );
}

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

function sataGeneration({ part: { link }, label }: Drive): Figure {
  const words = `SATA generation of ${label}`;
  const stated = link.value?.bus === 'SATA' ? link.value.generation : undefined;
  return stated === undefined ? anyGeneration(words, [missing(link, words)]) : readCount(stated, words, link);
}

/**
 * The generation of the port, or of the M.2 socket, that a drive names; none where it names neither or there is no
 * board.
 */
function portGeneration(build: Build, drive: Drive): Figure[] {
  const { board } = build.parts;
  const port = drive.at.port.value;
  if (!board) return [];
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
 * The rate a drive reaches, reading or writing: its own, its link’s, or the chipset’s uplink’s, whichever is lowest.
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

/** Room for data in an array: the smallest drive counts for all. */
export function arrayCapacity(label: string, kind: ArrayKind, { entries, count }: ArrayDrives): Figure {
  const each = entries.map((drive) => figure(drive.part.capacity, `capacity of ${drive.label}`));
  const smallest = least('smallest drive', each);
  const worth = known(arrayUnits(kind, count), 'count', `drives’ worth of data in a ${kind} of ${count}`, {
    source: `SNIA Common RAID Disk Drive Format: ${levelOfKind(kind)}`,
  });
  return times(smallest, worth, `capacity of ${label}`);
}

/** Whether so many drives make an array of this kind. */
export const arrayMakes = (kind: ArrayKind, drives: number): boolean =>
  drives >= arrayNeeds(kind).least && (!arrayNeeds(kind).even || drives % 2 === 0);
