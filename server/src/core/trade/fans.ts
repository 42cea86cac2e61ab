// Fans at their headers: currents, control, pulses, pins.
import { needCount, needNotNegative, needPositive } from './numbers';

/**
 * What a 4-wire fan may draw and how it is controlled.
 * Source: 4-Wire Pulse Width Modulation (PWM) Controlled Fans Specification, sections 2.1.1 to 2.1.4.
 */
export const FOUR_WIRE_FAN = {
  voltageV: 12,
  voltageTolerancePercent: 5,
  steadyAtMostA: 1.5,
  startAtMostA: 2.2,
  startAtMostS: 1,
  pwmKHz: { target: 25, least: 21, most: 28 },
  pulsesPerTurn: 2,
  pwmOpenAtMostV: 5.25,
} as const;

/** Current that a board's fan header carries unless its handbook says otherwise, A. Source: common practice. */
export const HEADER_USUAL_A = 1;

export interface FanDraw {
  readonly steadyA: number;
  /** At the start, where stated. */
  readonly startA?: number;
}

export interface HeaderLoad {
  readonly steadyA: number;
  /** With every fan starting at once; one that states no start current counts with its steady one. */
  readonly startA: number;
  /** Whether some fan stated no start current, so that the real sum may be higher. */
  readonly startIsAtLeast: boolean;
}

/** Sum of the currents on one header. @throws RangeError on a negative current, or a start below the steady current. */
export function headerLoad(fans: readonly FanDraw[]): HeaderLoad {
  for (const { steadyA, startA } of fans) {
    needNotNegative('steady current (A)', steadyA);
    if (startA !== undefined && !(startA >= steadyA)) {
      throw new RangeError(`start current (A) must be at least the steady ${steadyA}, not ${startA}`);
    }
  }
  return {
    steadyA: fans.reduce((sum, fan) => sum + fan.steadyA, 0),
    startA: fans.reduce((sum, fan) => sum + (fan.startA ?? fan.steadyA), 0),
    startIsAtLeast: fans.some((fan) => fan.startA === undefined),
  };
}

/** Whether a PWM frequency is one that a fan must accept; both ends included. Source: specification above, 2.1.4. */
export function pwmAccepted(frequencyKHz: number): boolean {
  needPositive('PWM frequency (kHz)', frequencyKHz);
  return frequencyKHz >= FOUR_WIRE_FAN.pwmKHz.least && frequencyKHz <= FOUR_WIRE_FAN.pwmKHz.most;
}

/** Speed from the tachometer's pulses, rpm. Source: specification above, 2.1.3: two pulses a turn. */
export function rpmFromPulses(pulsesPerSecond: number, pulsesPerTurn: number = FOUR_WIRE_FAN.pulsesPerTurn): number {
  needNotNegative('pulses per second', pulsesPerSecond);
  needCount('pulses per turn', pulsesPerTurn, 1);
  return pulsesPerSecond / pulsesPerTurn * 60;
}

export type FanPins = 3 | 4;

/**
 * How a fan's speed can be set from a header: by PWM only where both have the fourth pin, otherwise by voltage,
 * if the header can vary it. The plug fits either way. Source: common practice; the fourth pin, specification above.
 */
export function speedSetBy(headerPins: FanPins, fanPins: FanPins): 'PWM' | 'voltage' {
  return headerPins === 4 && fanPins === 4 ? 'PWM' : 'voltage';
}
