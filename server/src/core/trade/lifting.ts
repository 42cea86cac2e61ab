// Lifting by hand: what one person may lift, under ideal conditions and less ideal ones.
import { needPositive, needWithin } from './numbers';

/**
 * Load constant: the most that nearly all healthy workers may lift under ideal conditions, kg.
 * Source: Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication No. 94-110.
 */
export const NIOSH_LOAD_CONSTANT_KG = 23;

export interface Lift {
  /** From between the ankles to the hands, 25 to 63 cm. */
  readonly reachCm: number;
  /** Height of the hands at the start, 0 to 175 cm. */
  readonly handHeightCm: number;
  /** How far up or down it goes, 25 to 175 cm. */
  readonly travelCm: number;
}

/**
 * Recommended weight limit of a seldom lift with good grip, squarely in front of the body, kg:
 * 23 × 25/H × (1 − 0.003 |V − 75|) × (0.82 + 4.5/D). Twisting, repeating and poor grip lower it further.
 * Source: NIOSH Publication No. 94-110, metric form. @throws RangeError outside the equation's own spans.
 */
export function liftLimitKg(lift: Lift): number {
  needWithin('reach (cm)', lift.reachCm, 25, 63);
  needWithin('height of the hands (cm)', lift.handHeightCm, 0, 175);
  needWithin('travel (cm)', lift.travelCm, 25, 175);
  const reach = 25 / lift.reachCm;
  const height = 1 - 0.003 * Math.abs(lift.handHeightCm - 75);
  const travel = 0.82 + 4.5 / lift.travelCm;
  return NIOSH_LOAD_CONSTANT_KG * reach * height * travel;
}

/** Parts whose mass is seldom printed weigh no more than this, g, each. Source: common practice. */
export const LIGHT_PARTS_AT_MOST_G = { processor: 200, memory: 100, fans: 400 } as const;

/** Whether a mass is beyond one person even under ideal conditions. Source: as above. */
export function tooHeavyForOne(massKg: number): boolean {
  needPositive('mass (kg)', massKg);
  return massKg > NIOSH_LOAD_CONSTANT_KG;
}

/** Length at which a house states the mass that may hang. Source: common practice; a full-length card is 312 mm. */
const HANGING_REFERENCE_MM = 300;

/**
 * Mass that may hang at a length, of the mass at 300 mm: the moment at the slot stays the same. Infinity at no length.
 * Source: lever rule, mass × length ÷ 2 about the slot.
 */
export function massHangingAtMostG(massAt300MmG: number, lengthMm: number): number {
  return (massAt300MmG * HANGING_REFERENCE_MM) / lengthMm;
}
