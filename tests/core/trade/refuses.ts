// Asserts that a sum refuses an argument, with the argument's name and value in the message.
import { expect } from 'vitest';

/** Fails unless `sum` throws a RangeError whose message is exactly this. */
export function expectRefusal(sum: () => unknown, message: string): void {
  expect(sum).toThrow(new RangeError(message));
}

/** What each guard wants of a number, as its message puts it. */
export const WANTED = {
  finite: 'a finite number',
  positive: 'a number above zero',
  notNegative: 'zero or more',
  /** Zero or more as well, and Infinity where nothing bounds it. */
  bound: 'zero or more',
} as const;

const BAD = {
  finite: [NaN, Infinity, -Infinity],
  positive: [NaN, Infinity, -1, 0],
  notNegative: [NaN, Infinity, -1],
  bound: [NaN, -Infinity, -1],
} as const;

/** Tries every number that this guard must refuse, and holds the message to the argument's name. */
export function expectRefusesBad(kind: keyof typeof WANTED, name: string, sum: (value: number) => unknown): void {
  for (const value of BAD[kind]) expectRefusal(() => sum(value), `${name} must be ${WANTED[kind]}, not ${value}`);
}
