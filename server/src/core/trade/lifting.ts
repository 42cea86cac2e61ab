// Lifting and hanging: what one person may lift, what light parts weigh, what may hang from a slot.

/**
 * Load constant: the most that nearly all healthy workers may lift under ideal conditions, kg.
 * Source: Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication No. 94-110.
 */
export const NIOSH_LOAD_CONSTANT_KG = 23;

/**
 * Of the load constant, what is left where the hands begin at the floor: the vertical multiplier 1 − 0.003 × 75 cm.
 * Source: as above; with the load held close, so at best.
 */
const AT_THE_FLOOR = 1 - 0.003 * 75;
export const LIFT_FROM_FLOOR_KG = NIOSH_LOAD_CONSTANT_KG * AT_THE_FLOOR;

/** Parts whose mass is seldom printed weigh no more than this, g, each. Source: common practice. */
export const LIGHT_PARTS_AT_MOST_G = {
  board: 1500,
  processor: 200,
  cooler: 2200,
  memory: 100,
  drives: 900,
  graphics: 2700,
  cards: 1500,
  fans: 400,
  radiators: 2500,
  supply: 3500,
} as const;

/** Drives, by shape. Source: common practice. */
export const DRIVES_AT_MOST_G: Readonly<Record<string, number>> = { 'M.2': 150, '2.5 in': 200 };

/** Length at which a house states the mass that may hang. Source: common practice; a full-length card is 312 mm. */
const HANGING_REFERENCE_MM = 300;

/**
 * Mass that may hang at a length, of the mass at 300 mm: the moment at the slot stays the same. Infinity at no length.
 * Source: lever rule, mass × length ÷ 2 about the slot.
 */
export function massHangingAtMostG(massAt300MmG: number, lengthMm: number): number {
  return (massAt300MmG * HANGING_REFERENCE_MM) / lengthMm;
}
