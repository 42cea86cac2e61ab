// Fans at their headers.
import { expect, it } from 'vitest';
import { HEADER_USUAL_A, headerLoad, pwmAccepted, rpmFromPulses, speedSetBy } from '../../../server/src/core/trade/fans';
import { expectRefusal, expectRefusesBad } from './refuses';

it('a header usually carries 1 A', () => expect(HEADER_USUAL_A).toBe(1));

it('adds the currents of a header', () => {
  expect(headerLoad([])).toEqual({ steadyA: 0, startA: 0, startIsAtLeast: false });
  expect(headerLoad([{ steadyA: 0.25, startA: 0.5 }, { steadyA: 0.25, startA: 0.75 }])).toEqual({ steadyA: 0.5, startA: 1.25, startIsAtLeast: false });
  expect(headerLoad([{ steadyA: 0.25, startA: 0.5 }, { steadyA: 0.125 }])).toEqual({ steadyA: 0.375, startA: 0.625, startIsAtLeast: true });
  expect(headerLoad([{ steadyA: 0.25, startA: 0.25 }]).startA).toBe(0.25);
});

it('refuses currents that cannot be', () => {
  expectRefusesBad('notNegative', 'steady current (A)', (value) => headerLoad([{ steadyA: value }]));
  expectRefusal(() => headerLoad([{ steadyA: 0.5, startA: 0.4 }]), 'start current (A) must be at least the steady 0.5, not 0.4');
  expectRefusal(() => headerLoad([{ steadyA: 0.5, startA: NaN }]), 'start current (A) must be at least the steady 0.5, not NaN');
});

it('takes PWM of 21 to 28 kHz', () => {
  expect([20.99, 21, 28, 28.01].map(pwmAccepted)).toEqual([false, true, true, false]);
  expectRefusesBad('positive', 'PWM frequency (kHz)', pwmAccepted);
});

it('turns pulses into speed', () => {
  expect(rpmFromPulses(40)).toBe(1200);
  expect(rpmFromPulses(40, 4)).toBe(600);
  expect(rpmFromPulses(0)).toBe(0);
  expectRefusesBad('notNegative', 'pulses per second', (value) => rpmFromPulses(value));
  expectRefusal(() => rpmFromPulses(40, 0), 'pulses per turn must be a whole number of at least 1, not 0');
});

it('sets the speed by PWM only with four pins on both sides', () => {
  expect([speedSetBy(4, 4), speedSetBy(4, 3), speedSetBy(3, 4), speedSetBy(3, 3)]).toEqual(['PWM', 'voltage', 'voltage', 'voltage']);
});
