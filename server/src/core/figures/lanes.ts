// Figures of lanes: what a slot is wired for, what is left of it, where its lanes come from, and the link's rate.
import type { Build } from '../build/build';
import type { Fact } from '../parts/fact';
import { trainedRateBytesPerSecond, type Link } from '../trade/links';
import {
  between,
  copyWith,
  counted,
  decidedBy,
  derive,
  known,
  missing,
  readCount,
  unknown,
  type Figure,
  type Missing,
} from './figure';
import { memo, memoOf } from './memo';
import { withProcessor } from './processor-slots';
import type { End } from './processor-slots';
import { effectsOn, seatOf, type Effect, type Seat, type Seated, type Slot } from './slots';

const linkSource = 'PCI Express Base Specification: line rate × coding ÷ 8';

/** What a stated PCIe link says; unknown where it is absent or of another bus. */
export function endOf(link: Fact<Link>, of: string, words = `link of ${of}`): End {
  const { value } = link;
  if (value?.bus === 'PCIe')
    return {
      lanes: readCount(value.lanes, `lanes of ${of}`, link),
      generation: readCount(value.generation, `generation of ${of}`, link),
    };
  const missingFacts = [missing(link, `${value ? 'PCIe ' : ''}${words}`)];
  return {
    lanes: unknown('count', `lanes of ${of}`, missingFacts),
    generation: unknown('count', `generation of ${of}`, missingFacts),
  };
}

/**
 * What a slot is wired for; an M.2 socket that carries no PCIe has no lanes. Worked out once, for all parts that
 * might go in.
 */
export const wiringOf = memoOf((build: Build, slot: Slot): End => withProcessor(build, slot, wired(slot, slot.$.name)));

function wired(slot: Slot, name: string): End {
  const { carries } = slot;
  if (slot.kind.value !== 'M.2' && (slot.lanes.entry || slot.kind.value === 'PCIe')) {
    return {
      lanes: counted(slot.lanes, `lanes of ${name}`),
      generation: counted(slot.generation, `generation of ${name}`),
    };
  }
  const pcie = carries.value?.find((one) => one.value?.bus === 'PCIe');
  if (pcie) return endOf(pcie, name);
  const open = carries.value === undefined || carries.value.some((one) => one.value === undefined);
  const missingFacts: Missing[] = open ? [missing(carries, `the buses ${name} carries`)] : [];
  return {
    lanes: open ? unknown('count', `lanes of ${name}`, missingFacts) : readCount(0, `PCIe lanes of ${name}`, carries),
    generation: open
      ? unknown('count', `generation of ${name}`, missingFacts)
      : between(1, 6, 'count', `generation of ${name}`, { source: linkSource }),
  };
}

/** The lanes of a slot once the other slots are filled as the build says; half of them where one of those halves it. */
export function lanesLeft(build: Build, slot: Slot, name: string, mover?: Seated): Figure {
  const { lanes } = wiringOf(build, slot);
  const effects = effectsOn(build, name, 'halves', mover);
  const halving = effects.find((effect) => effect.does);
  const open = lacksOf(build, effects);
  if (!halving && open.length === 0) return lanes;
  const share = halving
    ? known(0.5, 'count', `share left while ${halving.by} is filled`, { source: 'the board’s facts' })
    : copyWith(between(0.5, 1, 'count', `share of the lanes of ${name} left`, { source: 'the board’s facts' }), {
        missing: open,
      });
  const inputs = [lanes, decidedBy(share, ...(halving?.byFacts ?? []))] as const;
  return derive(`lanes left of ${name}`, 'count', inputs, 'lanes × share left', (all, left) => Math.ceil(all * left));
}

/** The facts that effects leave open; one list for the many slots that share their effects. */
const lacksOf = memoOf((_: Build, effects: readonly Effect[]): readonly Missing[] =>
  effects.flatMap((effect) => effect.missingFacts),
);

/** The generation of the processor’s lanes, where a slot’s lanes come from it; undefined where they do not. */
export function sourceGeneration(build: Build, slot: Slot, name: string): Figure | undefined {
  const { processor } = build.parts;
  if (!processor || slot.from.value === 'chipset') return undefined;
  return decidedBy(
    perhaps(counted(processor.part.generation, `generation of ${processor.label}`), slot, name),
    slot.from,
  );
}

/** The ends of the link between chipset and processor; undefined without a board. */
export const uplinkEnds = memo((build: Build): readonly End[] | undefined => {
  const { board, processor } = build.parts;
  if (!board) return undefined;
  const ends = [endOf(board.part['chipset-link'], `the chipset of ${board.label}`, `chipset link of ${board.label}`)];
  if (processor)
    ends.push(
      endOf(
        processor.part['chipset-link'],
        `the chipset link of ${processor.label}`,
        `chipset link of ${processor.label}`,
      ),
    );
  return ends;
});

/** The link behind which the chipset’s slots and ports stand, in bytes a second; undefined without a board. */
export const uplink = memo((build: Build): Figure | undefined => {
  const ends = uplinkEnds(build);
  return ends && linkRate('link between chipset and processor', ends);
});

/** A limit that holds only if the slot’s lanes come from that side: where nothing says, it may not. */
function perhaps(limit: Figure, slot: Slot, name: string): Figure {
  if (slot.from.value !== undefined) return limit;
  return copyWith(limit, {
    hi: Infinity,
    missing: [...limit.missing, missing(slot.from, `where the lanes of ${name} come from`)],
  });
}

/** What the chipset’s uplink leaves to a slot behind it; undefined for a slot on the processor. */
const uplinkOf = memoOf((build: Build, slot: Slot): Figure | undefined => {
  const rate = uplink(build);
  return rate && slot.from.value !== 'processor' ? decidedBy(perhaps(rate, slot, slot.$.name), slot.from) : undefined;
});

/** Payload of a link with these ends, in bytes a second and direction: the lowest generation on the fewest lanes. */
export function linkRate(label: string, ends: readonly Partial<End>[]): Figure {
  const generations = ends.flatMap((end) => end.generation ?? []);
  const lanes = ends.flatMap((end) => end.lanes ?? []);
  const n = generations.length;
  return derive(
    label,
    'data-rate',
    [...generations, ...lanes],
    'the lowest generation on the fewest lanes',
    (...values) => trainedRateBytesPerSecond(values.slice(0, n), values.slice(n)),
    { unit: 'GB/s', source: linkSource },
  );
}

/**
 * The ends of the link of a part in its slot: its own, the slot’s with what is left of it, the processor’s, a
 * riser’s.
 */
export function endsOf(build: Build, placed: Seated, seat: Seat = seatOf(build, placed)): readonly Partial<End>[] {
  const own = endOf(placed.part.link, placed.label);
  const { name, slot } = seat;
  if (name === undefined || !slot) {
    const open = unknown('count', `slot of ${placed.label}`, seat.missingFacts);
    return build.parts.board ? [own, { lanes: open, generation: open }] : [own];
  }
  const source = sourceGeneration(build, slot, name);
  const ends: Partial<End>[] = [
    own,
    { lanes: lanesLeft(build, slot, name, placed), generation: wiringOf(build, slot).generation },
  ];
  if (source) ends.push({ generation: source });
  const riser = riserOf(placed);
  if (riser) ends.push({ generation: riser });
  return ends;
}

/** The generation of the riser a card stands on; undefined where it stands on none. */
export function riserOf(placed: Seated): Figure | undefined {
  return 'riser' in placed.at && placed.at.riser.entry
    ? counted(placed.at.riser, `riser of ${placed.label}`)
    : undefined;
}

/** The link a part really gets in a slot, and what the chipset’s uplink lets through where it stands behind one. */
export interface Reached {
  readonly link: Figure;
  readonly uplink?: Figure;
}

/** What a part would reach in a slot. */
export function reachedIn(build: Build, placed: Seated, seat: Seat): Reached {
  const link = decidedBy(
    linkRate(
      `link of ${placed.label}${seat.name === undefined ? '' : ` in ${seat.name}`}`,
      endsOf(build, placed, seat),
    ),
    seat.by,
    seat.slot?.kind,
    seat.slot?.from,
  );
  const through = seat.slot && seat.name !== undefined ? uplinkOf(build, seat.slot) : undefined;
  return { link, ...(through ? { uplink: through } : {}) };
}

/** The link that a part really gets where it sits. */
export const reached = memoOf(
  (build: Build, placed: Seated): Reached => reachedIn(build, placed, seatOf(build, placed)),
);
