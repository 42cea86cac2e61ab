// Figures of every link of a part, side by side: where its lanes come from, what it reaches, what it could use.
import type { Build } from '../build/build';
import { linkRateBytesPerSecond } from '../trade/links';
import type { End } from './processor-slots';
import { known, least, missing, unknown, copyWith, writtenAt, type Figure, type Missing } from './figure';
import { endOf, endsOf, linkRate, reached, uplinkEnds } from './lanes';
import { memo } from './memo';
import { seatOf, seated, type Seated } from './slots';
import { driveLinkRate, type Drive } from './storage';

export interface LinkRow {
  readonly placed: Seated;
  /** The slot or port it names. */
  readonly at?: string;
  readonly from?: 'processor' | 'chipset';
  /** What would tell where its lanes come from. */
  readonly fromLacks: readonly Missing[];
  /** The rate its own end is made for. */
  readonly possible: Figure;
  readonly reached: Figure;
  /** Undefined for other buses than PCIe. */
  readonly lanes?: Lanes;
}

/** Lanes that an end has, those in use, and the generation they run at. */
export interface Lanes {
  readonly own: Figure;
  readonly got: Figure;
  readonly generation: Figure;
}

/** Lanes between chipset and processor: of the board’s end, and what both ends share; undefined without a board. */
export const uplinkLanes = memo((build: Build): Lanes | undefined => {
  const ends = uplinkEnds(build);
  return ends && lanesOf('link between chipset and processor', ends[0]!.lanes, ends);
});

const lanesOf = (of: string, own: Figure, ends: readonly Partial<End>[]): Lanes => ({
  own,
  got: least(
    `lanes of the ${of} in use`,
    ends.flatMap(({ lanes }) => lanes ?? []),
  ),
  generation: least(
    `generation of the ${of}`,
    ends.flatMap(({ generation }) => generation ?? []),
  ),
});

/** The links of all cards and drives. */
export const linkRows = memo((build: Build): readonly LinkRow[] => seated(build).map((placed) => rowOf(build, placed)));

function rowOf(build: Build, placed: Seated): LinkRow {
  const seat = seatOf(build, placed);
  const drive = placed.role === 'drives' ? (placed as Drive) : undefined;
  const isPcie = !drive || drive.part.bus.value === 'NVMe';
  const at = seat.name ?? drive?.at.port.value;
  const source = seat.slot
    ? { from: seat.slot.from.value, fromLacks: [missing(seat.slot.from, `where the lanes of ${seat.name} come from`)] }
    : onPort(drive, seat.missingFacts);
  const base = { placed, at, from: source.from, fromLacks: source.from === undefined ? source.fromLacks : [] };
  if (!isPcie) return { ...base, possible: ownRate(drive), reached: driveLinkRate(build, drive) };
  const own = endOf(placed.part.link, placed.label);
  const ends = endsOf(build, placed, seat);
  return {
    ...base,
    possible: linkRate(`link that ${placed.label} is made for`, [own]),
    reached: reached(build, placed).link,
    lanes: lanesOf(`link of ${placed.label}`, own.lanes, ends),
  };
}

/** SATA ports are the chipset’s. Source: common practice. */
function onPort(drive: Drive | undefined, fromLacks: readonly Missing[]): Pick<LinkRow, 'from' | 'fromLacks'> {
  if (!drive) return { fromLacks };
  const { bus } = drive.part;
  if (bus.value === undefined) return { fromLacks: [missing(bus, `bus of ${drive.label}`)] };
  return bus.value === 'SATA' && drive.at.slot.value === undefined ? { from: 'chipset', fromLacks } : { fromLacks };
}

function ownRate({ part: { link }, label }: Drive): Figure {
  const words = `link that ${label} is made for`;
  const rate = link.value && linkRateBytesPerSecond(link.value);
  if (rate === undefined) return unknown('data-rate', words, [missing(link, `link of ${label}`)]);
  return copyWith(known(rate, 'data-rate', words, { unit: 'MB/s', source: 'line rate × coding ÷ 8' }), {
    from: writtenAt(link),
  });
}
