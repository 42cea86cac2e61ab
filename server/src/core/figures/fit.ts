// Figures of fit: the board's outline, its holes and the standoffs under it, and the room over a card.
import type { Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import {
  ALL_HOLES,
  BOARD_HOLES,
  BOARD_OUTLINES,
  HOLE_POSITIONS,
  isWithinOutline,
  parseBoardSize,
  type BoardSize,
  type Hole,
  type Outline,
} from '../trade/forms';
import { copyWith, figure, known, missing, type Figure, type Missing } from './figure';

/** Whether no wall bounds a room: of an open frame, where no room is stated all the same. */
export const isUnwalled = ({ part }: Placed<'case'>, room: Fact<unknown>): boolean =>
  part.open.value === true && !room.node;

/** Depth of a board, from its rear edge: as stated, else by the standard of its size. */
export function boardDepth(board: Placed<'board'>): Figure {
  const size = sizeOf(board);
  const label = `depth of ${board.label}`;
  if (!size || board.part.depth.value) return figure(board.part.depth, label);
  return known(BOARD_OUTLINES[size].depthMm, 'length', label, {
    unit: 'mm',
    source: 'ATX 2.2, microATX 1.2, Mini-ITX 1.1, SSI-EEB: outlines',
  });
}

export const sizeOf = (board: Placed<'board'>) =>
  board.part.size.value === undefined ? undefined : parseBoardSize(board.part.size.value);

const isHole = (letter: string | undefined): letter is Hole =>
  letter !== undefined && Object.hasOwn(HOLE_POSITIONS, letter);

type Letters = { readonly holes: readonly Hole[] } | { readonly missingFacts: Missing };

function stated(fact: Fact<readonly Fact<string>[]>): readonly Hole[] {
  return (fact.value ?? []).map((letter) => letter.value).filter(isHole);
}

/** The holes of a board: as it states them, else those of its size. */
export function holesOf(board: Placed<'board'>): Letters {
  const { holes, size } = board.part;
  if (holes.value) return { holes: stated(holes) };
  if (size.value === undefined) return { missingFacts: missing(size, `size of ${board.label}`) };
  const named = sizeOf(board);
  const known = named && BOARD_HOLES[named];
  if (!known) return { missingFacts: missing(holes, `holes of ${board.label}`) };
  // A board smaller than its size’s outline has none of the holes beyond its edges.
  const edges = outlineOf(board);
  return 'missingFacts' in edges ? edges : { holes: known.filter((hole) => isWithinOutline(hole, edges)) };
}

/** Where standoffs stand: as the build sets them, else as the tray is delivered. */
export function standoffsSet(box: Placed<'case'>, board?: Placed<'board'>): Letters {
  const own = box.at['standoffs-at'];
  if (own.value) return { holes: stated(own) };
  const { pattern } = box.part.standoffs;
  if (pattern.value === 'full') return { holes: ALL_HOLES };
  const size = pattern.value === undefined ? patternTaken(box, board) : parseBoardSize(pattern.value);
  const known = size && BOARD_HOLES[size];
  return known
    ? { holes: known }
    : { missingFacts: missing(own.entry ? own : pattern, `standoff pattern of ${box.label}`) };
}

/**
 * A tray that states no pattern has that of the largest board it takes: enough to tell of such a board, and of no
 * smaller one. Source: common practice.
 */
function patternTaken(box: Placed<'case'>, board: Placed<'board'> | undefined): BoardSize | undefined {
  const taken = box.part['board-sizes'].value?.flatMap(({ value }) => parseBoardSize(value ?? '') ?? []) ?? [];
  const size = board && sizeOf(board);
  const area = (one: BoardSize): number => BOARD_OUTLINES[one].widthMm * BOARD_OUTLINES[one].depthMm;
  return size && taken.includes(size) && taken.every((one) => area(one) <= area(size)) ? size : undefined;
}

/** The board’s edges: as stated, else its size’s; a fact that is lacking where neither tells. */
export function outlineOf(board: Placed<'board'>): Outline | { readonly missingFacts: Missing } {
  const size = sizeOf(board);
  const { width, depth } = board.part;
  const usual = size && BOARD_OUTLINES[size];
  if (!width.value && !usual) return { missingFacts: missing(width, `width of ${board.label}`) };
  if (!depth.value && !usual) return { missingFacts: missing(depth, `depth of ${board.label}`) };
  return { widthMm: width.value?.hi ?? usual!.widthMm, depthMm: depth.value?.hi ?? usual!.depthMm };
}

/** A panel stands so much nearer to a card than to the processor at most, mm. Source: common practice. */
const CARD_ROOM_BELOW_COOLER_MM = 20;

/** The room over a card; where no sheet says it, at least what the case leaves over the processor, less a little. */
export function cardRoom({ part, label }: Placed<'case'>): Figure {
  const fact = part['card-height'];
  const stated = figure(fact, `room over a card in ${label}`);
  const cooler = part['cooler-height'].value;
  if (fact.node || !cooler) return stated;
  const source = 'common practice: the panel is as far from a card’s slot as from the processor, within 20 mm';
  return copyWith(stated, { lo: Math.max(0, cooler.lo - CARD_ROOM_BELOW_COOLER_MM), unit: 'mm', source });
}
