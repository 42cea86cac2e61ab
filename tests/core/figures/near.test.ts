// Numbers that are equal as people write them never break a comparison, however they were worked out.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derive, known, times, total, type Figure } from '../../../server/src/core/figures/figure';
import { all, any, atLeast, atMost, lessThan, not } from '../../../server/src/core/figures/truth';

const source = 'common practice';
const amps = (value: number): Figure => known(value, 'current', 'current', { source });
const euros = (value: number): Figure => known(value, 'money', 'cost', { source, currency: 'EUR' });

/** A decimal as a file holds it: a whole number of the last digit, and how many digits stand behind the point. */
const decimals = fc
  .record({ digits: fc.nat({ max: 4 }), wholes: fc.array(fc.nat({ max: 200_000 }), { minLength: 1, maxLength: 40 }) })
  .map(({ digits, wholes }) => ({
    values: wholes.map((whole) => Number(`${whole}e-${digits}`)),
    sum: Number(`${wholes.reduce((a, b) => a + b, 0)}e-${digits}`),
    step: Number(`1e-${digits}`),
  }));

function holdEqual(a: Figure, b: Figure): void {
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    expect(atMost(one, other).is).toBe(true);
    expect(atLeast(one, other).is).toBe(true);
    expect(lessThan(one, other).is).toBe(false);
    expect(not(lessThan(one, other)).is).toBe(true);
    expect(all(atMost(one, other), atLeast(one, other)).is).toBe(true);
    expect(any(lessThan(one, other), not(atMost(one, other))).is).toBe(false);
  }
}

describe('decimally equal numbers', () => {
  it('three fans of 0.2 A are no more than 0.6 A', () => holdEqual(times(amps(0.2), amps(3)), amps(0.6)));

  it('hold in every comparison when they are sums, and a step of the last digit breaks', () => {
    fc.assert(
      fc.property(decimals, ({ values, sum, step }) => {
        for (const unit of [amps, ...(step >= 0.01 ? [euros] : [])]) {
          const added = total('sum', unit(0).dimension, values.map(unit));
          holdEqual(added, unit(sum));
          expect(atMost(added, unit(sum - step)).is).toBe(false);
          expect(atLeast(added, unit(sum + step)).is).toBe(false);
          expect(lessThan(added, unit(sum + step)).is).toBe(true);
        }
      }),
    );
  });

  it('hold when they are what is left of greater ones', () => {
    fc.assert(
      fc.property(decimals, ({ values: [first = 0, ...others], sum, step }) => {
        const used = total('used', 'current', others.map(amps));
        const left = derive('left', 'current', [amps(sum), used], 'all − used', (a, b) => a - b);
        holdEqual(left, amps(first));
        expect(atMost(left, amps(first - step)).is).toBe(false);
        expect(atLeast(left, amps(first + step)).is).toBe(false);
      }),
    );
  });

  it('hold when they are multiplied and divided again', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 999 }), (whole, count) => {
        const value = Number(`${whole}e-3`);
        const shared = derive('share', 'current', [amps(value), amps(count)], 'value ÷ n', (a, n) => a / n);
        holdEqual(times(shared, amps(count)), amps(value));
      }),
    );
  });
});

describe('money', () => {
  it('counts to the cent, as it is printed', () => {
    expect(atMost(euros(730.004), euros(730)).is).toBe(true);
    expect(atMost(euros(730.01), euros(730)).is).toBe(false);
    holdEqual(euros(99.999), euros(100));
  });
});

it('what nothing bounds is neither within nor past a limit', () => {
  const open: Figure = { ...amps(0), lo: -Infinity, hi: Infinity };
  for (const truth of [atMost(open, amps(1)), atLeast(open, amps(1)), lessThan(open, amps(1)), atMost(amps(1), open)])
    expect(truth.is).toBeUndefined();
});
