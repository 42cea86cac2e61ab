// Figures of a card's size: the openings its bracket takes, those its cooler lies over, and where it ends.
import type { Placed } from '../build/build';
import { openingsCovered } from '../trade/forms';
import { between, copyWith, counted, derive, figure, missing, most, readCount, type Figure } from './figure';
import type { Seat } from './slots';

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
export const firstOpening = ({ name, slot, missingFacts }: Seat, label: string): Figure =>
  slot
    ? counted(slot.position, `position of ${name}`)
    : copyWith(between(1, Infinity, 'count', `position of ${label}`, { source: 'not stated' }), {
        missing: missingFacts,
      });

/** The last of so many openings from a first one on. */
export const lastOpening = (label: string, first: Figure, openings: Figure): Figure =>
  derive(
    label,
    'count',
    [copyWith(first, { lo: Math.max(1, first.lo) }), copyWith(openings, { lo: Math.max(1, openings.lo) })],
    'position + openings − 1',
    (at, n) => at + n - 1,
  );
