// Compares figures by what people would write: noise of binary fractions never decides, and money counts to the cent.
import type { Figure } from './figure';

/** Equal within this part of the greater one; sums of decimals are off by some 1e-15 of their parts. */
const noise = 1e-12;

/** Whether `x`, an end of `a`, is at most `y`, an end of `b`; equal numbers are, however they were worked out. */
export function isAtMost(x: number, a: Figure, y: number, b: Figure): boolean {
  if (x <= y) return true;
  if (!Number.isFinite(x) || !Number.isFinite(y)) return false;
  if (a.dimension === 'money') return written(x) <= written(y);
  const past = x - y;
  const size = Math.max(Math.abs(x), Math.abs(y));
  return past <= noise * size || past <= noise * sizeOfParts(a, b);
}

/** Money as it is printed: in hundredths. */
const written = (money: number): number => Number(money.toFixed(2));

/**
 * The size of what two figures were worked out from: a small difference of great numbers is as uncertain as they are.
 */
function sizeOfParts(a: Figure, b: Figure): number {
  const sizes = [a, b].flatMap(({ dimension, inputs }) =>
    inputs.flatMap((input) => (input.dimension === dimension ? [Math.abs(input.lo), Math.abs(input.hi)] : [])),
  );
  return Math.max(0, ...sizes.filter(Number.isFinite));
}
