// Holds a sum against a published value, within one row of the table of tolerances.
import { expect } from 'vitest';

export type Tolerance = { readonly absolute: number } | { readonly relative: number };

/** Fails unless `actual` stands no farther from `published` than the tolerance allows. */
export function expectNear(actual: number, published: number, tolerance: Tolerance): void {
  const allowed = 'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(published);
  expect(Math.abs(actual - published), `${actual} against ${published}`).toBeLessThanOrEqual(allowed);
}
