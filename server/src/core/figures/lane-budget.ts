// Figures of what shares a source: lanes behind the processor, rates behind the chipset.
import type { Build } from '../build/build';
import { copyWith, decidedBy, figure, least, missing, times, total, type Figure, type Missing } from './figure';
import { endOf, lanesLeft, reached, uplink } from './lanes';
import { memo } from './memo';
import { howMany } from './power';
import { seatOf, seated, type Seated } from './slots';
import { driveRate, type Direction, type Drive } from './storage';

/** Whether something stands behind a source: it does, it does not, or these facts would tell. */
type Behind = boolean | readonly Missing[];

function sourceOf(build: Build, placed: Seated, source: 'processor' | 'chipset'): Behind {
  const { name, slot, missingFacts } = seatOf(build, placed);
  if (!slot) return missingFacts;
  return slot.from.value === undefined
    ? [missing(slot.from, `where the lanes of ${name} come from`)]
    : slot.from.value === source;
}

/** A figure of something that only may count. */
const perhaps = (one: Figure, missingFacts: readonly Missing[]): Figure =>
  missingFacts.length === 0 ? one : copyWith(one, { lo: 0, missing: [...one.missing, ...missingFacts] });

/** Lanes that the parts in slots of the processor use together; undefined where none sits there. */
export const processorLanes = memo((build: Build): Figure | undefined => {
  const each = seated(build).flatMap((placed) => {
    const { name, slot } = seatOf(build, placed);
    const behind = sourceOf(build, placed, 'processor');
    const bus = placed.role === 'drives' ? (placed as Drive).part.bus : undefined;
    if (behind === false || (bus?.value !== undefined && bus.value !== 'NVMe')) return [];
    const own = endOf(placed.part.link, placed.label).lanes;
    const used = slot ? least(`lanes used by ${placed.label}`, [own, lanesLeft(build, slot, name, placed)]) : own;
    const missingFacts = [
      ...(behind === true ? [] : behind),
      ...(bus && bus.value === undefined ? [missing(bus, `bus of ${placed.label}`)] : []),
    ];
    return [decidedBy(perhaps(used, missingFacts), placed.at.slot, slot?.from, bus)];
  });
  return each.length === 0 ? undefined : total('lanes used behind the processor', 'count', each);
});

export interface Demand {
  readonly all: Figure;
  readonly promised: Figure;
  readonly movable: readonly Seated[];
}

/**
 * What stands behind the chipset is to move at once in one direction: of each drive of an entry what is promised of
 * it, else what it reads or writes at; of a card the rate it needs, which counts as promised. No entry is counted above
 * what the uplink lets through. Undefined where nothing stands there, or nothing is promised to be written.
 */
export const chipsetDemand = (build: Build, way: Direction): Demand | undefined => demands[way](build);

const demands: Record<Direction, (build: Build) => Demand | undefined> = {
  read: memo((build) => demandOf(build, 'read')),
  write: memo((build) =>
    build.parts.drives.some((drive) => promiseOf(build, drive, 'write')) ? demandOf(build, 'write') : undefined,
  ),
};

function demandOf(build: Build, way: Direction): Demand | undefined {
  const through = uplink(build);
  if (!through) return undefined;
  const movable: Seated[] = [];
  const promised: Figure[] = [];
  const each = seated(build).flatMap((placed) => {
    const behind = placed.at.slot.value === undefined ? onPort(placed) : sourceOf(build, placed, 'chipset');
    if (behind === false) return [];
    const drive = placed.role === 'drives' ? (placed as Drive) : undefined;
    const wanted = drive && promiseOf(build, drive, way);
    const rate = decidedBy(
      drive ? driveDemand(build, drive, way, wanted) : cardDemand(build, placed),
      placed.at.slot,
      seatOf(build, placed).slot?.from,
    );
    if (behind === true && (wanted || ('rate-needed' in placed.part && placed.part['rate-needed'].value)))
      promised.push(rate);
    if (placed.at.slot.value !== undefined) movable.push(placed);
    return [perhaps(rate, behind === true ? [] : behind)];
  });
  const look = { unit: 'GB/s' } as const;
  return each.length === 0
    ? undefined
    : {
        all: total('rates behind the chipset', 'data-rate', each, look),
        promised: total('rates promised behind the chipset', 'data-rate', promised, look),
        movable,
      };
}

/**
 * Whether a part without a slot sits on a SATA port: those are the chipset’s. An NVMe drive may go into a slot of
 * either side. Source: common practice.
 */
function onPort(placed: Seated): Behind {
  if (placed.role !== 'drives') return false;
  const { bus } = (placed as Drive).part;
  if (bus.value === undefined) return [missing(bus, `bus of ${placed.label}`)];
  return bus.value === 'NVMe' ? [missing(placed.at.slot, `slot of ${placed.label}`)] : bus.value === 'SATA';
}

function promiseOf(build: Build, drive: Drive, way: Direction): Figure | undefined {
  const promise = build.file.expect.drives.value?.get(drive.at.name.value ?? '')?.[way];
  return promise?.value && decidedBy(figure(promise, `promised ${way} rate of ${drive.label}`), drive.at.name);
}

/**
 * The most that the uplink may let through. What several are to move together is over what it carries at every width
 * it may have, when it is at the widest: the narrower it is, the less is left beside the first.
 */
function widestUplink(build: Build): Figure {
  const through = uplink(build)!;
  return copyWith(through, { lo: through.hi, missing: [] });
}

function driveDemand(build: Build, drive: Drive, way: Direction, wanted: Figure | undefined): Figure {
  const through = widestUplink(build);
  return wanted
    ? least(`${way} rate wanted of ${drive.label}`, [times(wanted, howMany(drive)), through])
    : least(`${way} rate of ${drive.label}`, [times(driveRate(build, drive, way), howMany(drive)), through]);
}

function cardDemand(build: Build, placed: Seated): Figure {
  const need = 'rate-needed' in placed.part ? placed.part['rate-needed'] : undefined;
  const link = least(`rate of ${placed.label}`, [reached(build, placed).link, widestUplink(build)]);
  if (need?.value) return least(`rate of ${placed.label}`, [figure(need, `rate needed by ${placed.label}`), link]);
  return copyWith(link, {
    lo: 0,
    missing: [...link.missing, ...(need ? [missing(need, `rate needed by ${placed.label}`)] : [])],
  });
}
