// Figures of fit: the room left beside what is put in, the board's outline, its holes and the standoffs under it.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import type { Quantity } from '../quantity';
import {
  ALL_HOLES,
  BOARD_HOLES,
  BOARD_OUTLINES,
  HOLE_POSITIONS,
  isWithinOutline,
  parseBoardSize,
  type Hole,
  type Outline,
} from '../trade/forms';
import { derive, figure, known, missing, type Figure, type Missing } from './figure';

/** One thing that must go into a room. */
export interface Clearance {
  readonly placed: Placed;
  readonly name: string;
  readonly need: Figure;
  readonly room: Figure;
}

/** The fits in the case and around the cooler that leave room to spare, or do not. */
export function clearances({ parts: { case: box, cooler, supply, graphics, cards, memory } }: Build): Clearance[] {
  const all: Clearance[] = [];
  const add = (
    placed: Placed,
    name: string,
    need: Fact<Quantity>,
    needWhat: string,
    room: Fact<Quantity>,
    roomWhat: string,
  ): void => {
    all.push({ placed, name, need: figure(need, needWhat), room: figure(room, roomWhat) });
  };
  if (box && cooler)
    add(
      cooler,
      'height',
      cooler.part.height,
      `height of ${cooler.label}`,
      box.part['cooler-height'],
      `room for a cooler in ${box.label}`,
    );
  if (box && supply)
    add(
      supply,
      'depth',
      supply.part.depth,
      `depth of ${supply.label}`,
      box.part['supply-depth'],
      `room for a supply in ${box.label}`,
    );
  if (box)
    for (const card of [...graphics, ...cards])
      add(
        card,
        'length',
        card.part.length,
        `length of ${card.label}`,
        box.part['card-length'],
        `room for a card in ${box.label}`,
      );
  if (cooler)
    for (const kit of memory)
      add(
        kit,
        'height',
        kit.part.height,
        `height of ${kit.label}`,
        cooler.part['memory-room'],
        `room for memory under ${cooler.label}`,
      );
  return all;
}

/** What is left of the room; negative where it is short. */
export function gapOf({ need, room }: Clearance): Figure {
  return derive(
    `room beside the ${need.label}`,
    'length',
    [room, need],
    `${room.label} − ${need.label}`,
    (a, b) => a - b,
    { unit: 'mm' },
  );
}

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
export function standoffsSet(box: Placed<'case'>): Letters {
  const own = box.at['standoffs-at'];
  if (own.value) return { holes: stated(own) };
  const { pattern } = box.part.standoffs;
  if (pattern.value === 'full') return { holes: ALL_HOLES };
  const size = pattern.value === undefined ? undefined : parseBoardSize(pattern.value);
  const known = size && BOARD_HOLES[size];
  return known
    ? { holes: known }
    : { missingFacts: missing(own.entry ? own : pattern, `standoff pattern of ${box.label}`) };
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
