// Figures of a card's size: the openings its bracket takes, those its cooler lies over, and where it ends.
import type { Build, Placed } from '../build/build';
import { FIRST_SLOT_AT_MOST, openingsCovered, SLOT_POSITIONS } from '../trade/forms';
import { between, copyWith, counted, decidedBy, derive, figure, missing, most, readCount, type Figure } from './figure';
import { sizeOf } from './fit';
import type { Seat, Slot } from './slots';

type Card = Placed<'graphics'> | Placed<'cards'>;

const pitchSource = 'PCI Express Card Electromechanical Specification: slots 20.32 mm apart';

/** Openings of its bracket; where only its thickness is stated, at most as many as that covers. */
export function bracketOpenings({ part, label }: Card): Figure {
  const words = `openings of ${label}`;
  if (part.openings.value !== undefined) return readCount(Math.ceil(part.openings.value), words, part.openings);
  const covers = overThickness({ part, label });
  const open = { missing: [missing(part.openings, words)] };
  return copyWith(between(1, covers?.hi ?? Infinity, 'count', words, { source: pitchSource }), open);
}

/** Openings that it lies over: those of its bracket, and more where its cooler is thicker. */
export function openingsOver(card: Card): Figure {
  const covers = overThickness(card);
  if (!covers) return bracketOpenings(card);
  return card.part.openings.value === undefined
    ? covers
    : most(`openings under ${card.label}`, [bracketOpenings(card), covers]);
}

function overThickness({ part, label }: Pick<Card, 'part' | 'label'>): Figure | undefined {
  if (!part.thickness.value) return undefined;
  return derive(
    `openings under ${label}`,
    'count',
    [figure(part.thickness, `thickness of ${label}`)],
    'thickness ÷ 20.32 mm, rounded up',
    openingsCovered,
    { source: pitchSource },
  );
}

/** The opening in line with a slot; from the first on where nothing tells. */
export const firstOpening = (build: Build, { name, slot, missingFacts }: Seat, label: string): Figure =>
  slot
    ? slot.position.node
      ? counted(slot.position, `position of ${name}`)
      : usualPosition(build, name, slot)
    : copyWith(between(1, Infinity, 'count', `position of ${label}`, { source: 'not stated' }), {
        missing: missingFacts,
      });

/**
 * Where a slot can be that does not say: among the places on a board of its size, in the order in which the board lists
 * its slots for cards.
 */
function usualPosition(build: Build, name: string, slot: Slot): Figure {
  const read = counted(slot.position, `position of ${name}`);
  const board = build.parts.board!;
  const all = [...(board.part.slots.value ?? [])].filter(([, one]) => one.kind.value === 'PCIe').map(([one]) => one);
  const at = all.indexOf(name);
  if (at < 0) return read;
  const size = sizeOf(board);
  const last = size === undefined ? Infinity : SLOT_POSITIONS[size] - (all.length - 1 - at);
  const hi = at === 0 ? Math.min(FIRST_SLOT_AT_MOST, last) : last;
  return decidedBy(copyWith(read, { lo: at + 1, hi: Math.max(at + 1, hi), source: positionSource }), board.part.size);
}

const positionSource =
  'ATX 2.2, microATX 1.2, Mini-ITX 1.1: places for slots; common practice: listed in order, the first at one of two';

/** The last of so many openings from a first one on. */
export const lastOpening = (label: string, first: Figure, openings: Figure): Figure =>
  derive(
    label,
    'count',
    [copyWith(first, { lo: Math.max(1, first.lo) }), copyWith(openings, { lo: Math.max(1, openings.lo) })],
    'position + openings − 1',
    (at, n) => at + n - 1,
  );
