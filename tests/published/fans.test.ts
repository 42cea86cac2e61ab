// Fans at their headers against the 4-wire fan specification.
import { expect, it } from 'vitest';
import { FOUR_WIRE_FAN, pwmAccepted, rpmFromPulses } from '../../server/src/core/trade/fans';

/** Source: 4-Wire Pulse Width Modulation (PWM) Controlled Fans Specification, sections 2.1.1 to 2.1.4. */
it('keeps to the specification', () => {
  expect(FOUR_WIRE_FAN).toEqual({
    voltageV: 12, voltageTolerancePercent: 5,
    steadyAtMostA: 1.5, startAtMostA: 2.2, startAtMostS: 1,
    pwmKHz: { target: 25, least: 21, most: 28 },
    pulsesPerTurn: 2, pwmOpenAtMostV: 5.25,
  });
});

it('accepts 21 to 28 kHz (section 2.1.4)', () => {
  expect([20.9, 21, 25, 28, 28.1].map(pwmAccepted)).toEqual([false, true, true, true, false]);
});

it('counts two pulses a turn (section 2.1.3)', () => expect(rpmFromPulses(50)).toBe(1500));
