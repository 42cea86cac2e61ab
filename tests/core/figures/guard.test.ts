// Sums made safe for bounds: what is refused leaves a figure open, what the sum takes at infinity stays bounded.
import { expect, it } from 'vitest';
import { derive, known, unknown, type Figure } from '../../../server/src/core/figures/figure';
import { allowed, guarded } from '../../../server/src/core/figures/guard';
import { backupAtMostS } from '../../../server/src/core/trade/mains';

const watts = (lo: number, hi: number): Figure => ({ ...known(lo, 'power', 'load', { source: 'the example' }), hi });
const time = (load: Figure): Figure =>
  derive(
    'time',
    'time',
    [load],
    'energy ÷ load',
    allowed((powerW) => backupAtMostS(360_000, 100, powerW!)),
  );

it('keeps the bound that an endless load leaves', () => {
  expect(time(watts(100, Infinity))).toMatchObject({ lo: 0, hi: 3600 });
  expect(time(watts(100, 200))).toMatchObject({ lo: 1800, hi: 3600 });
});

it('leaves the time open where the load is not known at all, rather than none', () => {
  expect(time(unknown('power', 'load', []))).toMatchObject({ lo: -Infinity, hi: Infinity });
});

it('gives NaN for what a sum refuses, and lets its other errors out', () => {
  const refuses = (_: number): number => {
    throw new RangeError('refused');
  };
  const breaks = (_: number): number => {
    throw new TypeError('broken');
  };
  expect([allowed(refuses)(1), guarded(refuses)(1)]).toEqual([NaN, NaN]);
  expect(() => allowed(breaks)(1)).toThrow(TypeError);
  expect(() => guarded(breaks)(1)).toThrow(TypeError);
});

it('guards a sum that takes no infinite bound', () => {
  const twice = (n: number): number => 2 * n;
  expect([guarded(twice)(Infinity), allowed(twice)(Infinity)]).toEqual([NaN, Infinity]);
});
