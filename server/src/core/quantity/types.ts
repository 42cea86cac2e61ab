// What reading a quantity yields: a value in its base unit, or one problem that says what to write.
import type { UnitName } from './units';

export type { UnitName };

export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'power'
  | 'apparent-power'
  | 'current'
  | 'voltage'
  | 'resistance'
  | 'energy'
  | 'charge'
  | 'frequency'
  | 'time'
  | 'temperature'
  | 'temperature-difference'
  | 'thermal-resistance'
  | 'conductivity'
  | 'data-size'
  | 'data-rate'
  | 'transfer-rate'
  | 'flow'
  | 'pressure'
  | 'rotation-speed'
  | 'sound-level'
  | 'sound-power'
  | 'percent'
  | 'money'
  | 'angle'
  | 'force'
  | 'torque';

/**
 * How an amount or rate of data was written: in bits, in 1024s of bytes, in 1000s of bytes, or in plain bytes; a rate
 * in bytes is `bytes` unless it is `binary`.
 */
export type Notation = 'bits' | 'bytes' | 'binary' | 'decimal';

export interface Quantity {
  readonly dimension: Dimension;
  /**
   * In the base unit of the dimension; equal to `hi` unless a range was written; −Infinity where there is no lower
   * end.
   */
  readonly lo: number;
  /** In the base unit of the dimension; Infinity where there is no upper end. */
  readonly hi: number;
  /** The unit that was written, at the last number. */
  readonly unit: UnitName;
  /** The text as it was written. */
  readonly text: string;
  readonly currency?: string;
  readonly notation?: Notation;
}

export type QuantityProblemCode =
  | 'unit-missing'
  | 'unit-of-other-dimension'
  | 'unit-look-alike'
  | 'unit-unknown'
  | 'not-a-number'
  | 'range-reversed'
  | 'number-odd';

export interface QuantityProblem {
  readonly code: QuantityProblemCode;
  readonly message: string;
  /** Where in the text, in UTF-16 units. */
  readonly start: number;
  readonly end: number;
  /** Whole texts to write instead, best first; empty where none is safe. */
  readonly suggestions: readonly string[];
}

/** A problem beside a quantity is a warning: the text has one reading only, but should be written otherwise. */
export type QuantityResult =
  | { readonly quantity: Quantity; readonly problem?: QuantityProblem }
  | { readonly quantity?: undefined; readonly problem: QuantityProblem };
