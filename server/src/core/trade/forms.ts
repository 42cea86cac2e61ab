// Shapes of boards, cards, supplies, fans and radiators, in millimetres; those of drives stand with storage.
import { BOARD_SIZE_WORDS } from './board-words';
import { needCount, needPositive } from './numbers';
import { wordOf } from './vocabulary';

export type BoardSize = 'ATX' | 'microATX' | 'Mini-ITX' | 'SSI-EEB';

/** A board's outline: along the rear edge, and from it to the front. */
export interface Outline {
  readonly widthMm: number;
  readonly depthMm: number;
}

/**
 * Source: microATX Motherboard Interface Specification 1.2, table 3 (ATX, microATX);
 * Mini-ITX Addendum 1.1, table 1; SSI Enterprise Electronics Bay Specification.
 */
export const BOARD_OUTLINES: Readonly<Record<BoardSize, Outline>> = {
  ATX: { widthMm: 305, depthMm: 244 },
  microATX: { widthMm: 244, depthMm: 244 },
  'Mini-ITX': { widthMm: 170, depthMm: 170 },
  'SSI-EEB': { widthMm: 305, depthMm: 330 },
};

export type Hole = 'A' | 'B' | 'C' | 'F' | 'G' | 'H' | 'J' | 'K' | 'L' | 'M' | 'R' | 'S';

/** Position of a hole: x from the board's edge at the processor's side, y from its rear edge. */
export interface Position {
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * Source: ATX Specification 2.2 and microATX Specification 1.2, mounting holes.
 * R and S were read from a poorer copy: take their positions as less sure.
 */
export const HOLE_POSITIONS: Readonly<Record<Hole, Position>> = {
  A: { xMm: 288.29, yMm: 10.16 },
  B: { xMm: 209.55, yMm: 10.16 },
  C: { xMm: 163.83, yMm: 10.16 },
  F: { xMm: 6.35, yMm: 33.02 },
  G: { xMm: 288.29, yMm: 165.1 },
  H: { xMm: 163.83, yMm: 165.1 },
  J: { xMm: 6.35, yMm: 165.1 },
  K: { xMm: 288.29, yMm: 237.49 },
  L: { xMm: 163.83, yMm: 237.49 },
  M: { xMm: 6.35, yMm: 237.49 },
  R: { xMm: 229.87, yMm: 165.1 },
  S: { xMm: 209.55, yMm: 165.1 },
};

/** Every hole of the standards, as a tray with all its standoffs set has them. */
export const ALL_HOLES: readonly Hole[] = Object.keys(HOLE_POSITIONS) as Hole[];

/**
 * Holes of each size; absent where no source states them. Source: microATX Specification 1.2; Mini-ITX Addendum 1.1.
 */
export const BOARD_HOLES: Readonly<Partial<Record<BoardSize, readonly Hole[]>>> = {
  ATX: ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'],
  microATX: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
  'Mini-ITX': ['C', 'F', 'H', 'J'],
};

/** Reads a board size, `ATX` or `micro-ATX`, in any case; undefined when unknown or vague. */
export function parseBoardSize(text: string): BoardSize | undefined {
  const word = wordOf(BOARD_SIZE_WORDS, text);
  return word !== undefined && Object.hasOwn(BOARD_OUTLINES, word) ? (word as BoardSize) : undefined;
}

/** Of the standoffs that are set, those under the board where it has no hole: they touch its underside. */
export const standoffsOffHoles = (set: readonly Hole[], holes: readonly Hole[], outline: Outline): readonly Hole[] =>
  set.filter((hole) => isWithinOutline(hole, outline) && !holes.includes(hole));

/** Whether a hole of the standards lies within a board’s edges. */
export function isWithinOutline(hole: Hole, { widthMm, depthMm }: Outline): boolean {
  const { xMm, yMm } = HOLE_POSITIONS[hole];
  return xMm <= widthMm && yMm <= depthMm;
}

function within(inner: Outline, outer: Outline): boolean {
  return inner.widthMm <= outer.widthMm && inner.depthMm <= outer.depthMm;
}

/**
 * Does a board go into a case that states these sizes? A smaller size goes where a larger one does, since the
 * standards keep the holes it needs. Source: microATX Specification 1.2; Mini-ITX Addendum 1.1.
 * Undefined when only sizes that do not tell (E-ATX, an unknown name) could hold it.
 */
export function caseTakesBoard(stated: readonly string[], board: BoardSize): boolean | undefined {
  const sizes = stated.map(parseBoardSize);
  if (sizes.some((size) => size && within(BOARD_OUTLINES[board], BOARD_OUTLINES[size]))) return true;
  return sizes.includes(undefined) ? undefined : false;
}

/** Heights of cards: full, and the most of a low one. Source: PCI Express Card Electromechanical Specification. */
export const FULL_HEIGHT_MM = 111.15;
export const LOW_PROFILE_MM = 68.9;

/** Places for slots on a board of a size. Source: ATX 2.2, microATX 1.2, Mini-ITX 1.1. */
export const SLOT_POSITIONS: Readonly<Record<BoardSize, number>> = {
  ATX: 7,
  microATX: 4,
  'Mini-ITX': 1,
  'SSI-EEB': 7,
};

/** The first slot for cards sits at one of this many first places. Source: common practice. */
export const FIRST_SLOT_AT_MOST = 2;

/** How deep a case for supplies of a form is at the least, mm. Source: form factor design guides of ATX and SFX. */
export const SUPPLY_DEPTH_MM: Readonly<Record<string, number>> = { ATX: 140, SFX: 100, TFX: 175, 'Flex ATX': 150 };
export const SUPPLY_DEPTH_SOURCE = 'power supply design guides: ATX 140 mm, SFX 100 mm, TFX 175 mm, Flex ATX 150 mm';

/**
 * From one expansion slot to the next. Source: ATX Specification 2.2; PCI Express Card Electromechanical
 * Specification.
 */
export const SLOT_PITCH_MM = 20.32;

/**
 * How far a card stands out behind the middle of its slot, mm: a bare one by its board and its solder joints, one with
 * a back plate further.
 */
export const CARD_BACK_MM = { bare: { low: 0.8, high: 2.67 }, withPlate: { low: 2.67, high: 5 } } as const;
export const CARD_BACK_SOURCE =
  'PCI Express Card Electromechanical Specification: 2.67 mm behind a card; a back plate, common practice';

/** Slots of the board, or openings of the case, that a card of this thickness lies over. Source: the slots' pitch. */
export const openingsCovered = (thicknessMm: number): number => Math.max(1, Math.ceil(thicknessMm / SLOT_PITCH_MM));

/** Fan frame to pitch of its mounting holes, in millimetres, ± 0.5. Source: fan makers' drawings. */
export const FAN_HOLE_PITCH_MM: ReadonlyMap<number, number> = new Map([
  [80, 71.5],
  [92, 82.5],
  [120, 105],
  [140, 124.5],
]);

/** Round frames that are screwed to the holes of a smaller size. Source: fan makers' drawings; common practice. */
export const ROUND_FRAMES_MM: readonly { readonly frameMm: number; readonly holesOfMm: number }[] = [
  { frameMm: 140, holesOfMm: 120 },
  { frameMm: 150, holesOfMm: 120 },
  { frameMm: 150, holesOfMm: 140 },
  { frameMm: 120, holesOfMm: 92 },
];

/** Pitch of a frame's mounting holes; undefined for a frame that no source lists. Throws RangeError unless positive. */
export function fanHolePitchMm(frameMm: number): number | undefined {
  needPositive('frameMm', frameMm);
  return FAN_HOLE_PITCH_MM.get(frameMm);
}

/** A radiator's class: how many fans of which frame stand in a row. */
export interface RadiatorClass {
  readonly fans: number;
  readonly frameMm: number;
}

const RADIATOR_FRAMES_MM: readonly number[] = [120, 140];
const RADIATOR_FANS_AT_MOST = 4;

/**
 * The class behind a number such as 240 or 280: fan count × frame. It is not the radiator's length, which is
 * always greater: a "240" is about 275 mm long. Undefined when no row of fans makes the number.
 * Source: common practice.
 */
export function radiatorClass(nominalMm: number): RadiatorClass | undefined {
  needCount('nominalMm', nominalMm, 1);
  const rows = RADIATOR_FRAMES_MM.map((frameMm) => ({ fans: nominalMm / frameMm, frameMm }));
  return rows.find(({ fans }) => Number.isInteger(fans) && fans <= RADIATOR_FANS_AT_MOST);
}

/** The class that a text names, `240`; undefined for any other text. */
export const radiatorClassNamed = (text: string): RadiatorClass | undefined =>
  /^[1-9]\d{1,3}$/.test(text) ? radiatorClass(Number(text)) : undefined;

/** Whether a place for one radiator class takes another: fans of the same frame, and no more of them. */
export function classTakes(place: string, own: string): boolean {
  if (place === own) return true;
  const [there, here] = [place, own].map(radiatorClassNamed);
  return there !== undefined && here !== undefined && here.frameMm === there.frameMm && here.fans <= there.fans;
}
