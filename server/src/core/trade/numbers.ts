// Plain numbers: what a sum may be given, and ranges of which only the ends are known.

/** A quantity of which only the ends are known; `low` never exceeds `high`, and `high` may be Infinity. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

function refuse(name: string, value: number, wanted: string): never {
  throw new RangeError(`${name} must be ${wanted}, not ${value}`);
}

/** Throws RangeError unless `value` is a finite number. */
export function needFinite(name: string, value: number): void {
  if (!Number.isFinite(value)) refuse(name, value, 'a finite number');
}

/** Throws RangeError unless `value` is finite and above zero. */
export function needPositive(name: string, value: number): void {
  if (!Number.isFinite(value) || value <= 0) refuse(name, value, 'a number above zero');
}

/** Throws RangeError unless `value` is finite and zero or more. */
export function needNotNegative(name: string, value: number): void {
  if (!Number.isFinite(value) || value < 0) refuse(name, value, 'zero or more');
}

/** Throws RangeError unless `value` is zero or more; Infinity stands for an upper bound that nobody knows. */
export function needBound(name: string, value: number): void {
  if (!(value >= 0)) refuse(name, value, 'zero or more');
}

/** Throws RangeError unless `value` lies between `low` and `high`, both included. */
export function needWithin(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) refuse(name, value, `between ${low} and ${high}`);
}

/** Throws RangeError unless `value` is a whole number of at least `least`. */
export function needCount(name: string, value: number, least: number): void {
  if (!Number.isInteger(value) || value < least) refuse(name, value, `a whole number of at least ${least}`);
}
