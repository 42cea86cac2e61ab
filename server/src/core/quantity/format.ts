// Writes values with their unit for people: a readable prefix, few digits, and no rounding past each other.
import type { Dimension } from './types';
import { inUnit } from './convert';
import { dimensions } from './dimensions';
import { plainNumber } from './numbers';
import { unitNamed, type UnitName } from './units';

export interface FormatOptions {
  /** The unit to write in; without it, one that reads well is chosen. */
  readonly unit?: UnitName;
  /** For money: the ISO 4217 code, written as given. */
  readonly currency?: string;
  /** Significant digits, 1 to 7; 4 if not stated. Money is written to the hundredth instead. */
  readonly digits?: number;
}

const usualDigits = 4;
const mostDigits = 7;
/**
 * A printed difference may be off by this part of the true one, lest 155.04 against 155.1 be printed as 155 against
 * 155.1.
 */
const differenceTolerance = 0.1;

function digitsOf({ digits = usualDigits }: FormatOptions): number {
  return Math.min(Math.max(Math.round(digits), 1), mostDigits);
}

/** Rounded to significant digits, or to hundredths where money is written without a stated number of digits. */
function rounded(value: number, digits: number, toHundredths: boolean): number {
  if (Number.isInteger(value) && Math.abs(value) < 1000 && digits >= 3) return value;
  return Number(toHundredths ? value.toFixed(2) : value.toPrecision(digits));
}

/**
 * The unit in which a figure of this size reads well; a size that rounds up to the next unit is written in that one.
 */
function readableUnit(size: number, dimension: Dimension, digits: number): UnitName | undefined {
  const { shown } = dimensions[dimension];
  const about = rounded(Math.abs(size), digits, false);
  return about === 0 ? dimensions[dimension].base : shown.findLast(([, from]) => about >= from)?.[0];
}

/** Writes numbers of one dimension with one and the same unit behind them. */
class Writer {
  private readonly unit: UnitName | undefined;
  private readonly isMoney: boolean;

  /** `size` is the number that chooses the unit where none is asked for. */
  constructor(
    size: number,
    dimension: Dimension,
    private readonly opts: FormatOptions,
  ) {
    this.isMoney = dimension === 'money';
    this.unit = this.isMoney ? undefined : (opts.unit ?? readableUnit(size, dimension, digitsOf(opts)));
  }

  /** A number in the base unit, in the unit that is written. */
  scale(value: number): number {
    return this.unit === undefined ? value : inUnit(value, this.unit);
  }

  round(scaled: number, digits: number): number {
    return rounded(scaled, digits, this.isMoney && this.opts.digits === undefined);
  }

  number(value: number): string {
    return Number.isFinite(value) ? plainNumber(value === 0 ? 0 : value) : unbounded(value);
  }

  write(value: number): string {
    const symbol = this.isMoney ? (this.opts.currency ?? this.opts.unit ?? '') : symbolFor(this.unit, value);
    return symbol === '' ? this.number(value) : `${this.number(value)} ${symbol}`;
  }
}

function unbounded(value: number): string {
  return Number.isNaN(value) ? 'not a number' : `${value < 0 ? '-' : ''}∞`;
}

function symbolFor(unit: UnitName | undefined, value: number): string {
  if (unit === undefined) return '';
  const { spellings, plural } = unitNamed(unit);
  return plural !== undefined && value !== 1 ? plural : spellings[0];
}

/**
 * Writes a value, or a range, given in the base unit of its dimension: `158 mm`, `150 to 160 mm`, `at most 160 mm`.
 * `lo` is −Infinity or `hi` Infinity where that end is open. `readQuantity` reads what is written, unless both ends
 * are open.
 */
export function formatQuantity(lo: number, hi: number, dimension: Dimension, opts: FormatOptions = {}): string {
  if (lo === -Infinity && hi === Infinity) return `${dimensions[dimension].what} of any size`;
  if (lo === -Infinity) return `at most ${one(hi, dimension, opts)}`;
  if (hi === Infinity) return `at least ${one(lo, dimension, opts)}`;
  if (Object.is(lo, hi) || lo === hi) return one(lo, dimension, opts);
  const writer = new Writer(larger(lo, hi), dimension, opts);
  const [from, to] = apart(lo, hi, writer, digitsOf(opts));
  return from === to ? writer.write(to) : `${writer.number(from)} to ${writer.write(to)}`;
}

function one(value: number, dimension: Dimension, opts: FormatOptions): string {
  const writer = new Writer(value, dimension, opts);
  return writer.write(writer.round(writer.scale(value), digitsOf(opts)));
}

/** The finite one of greater size: it chooses the unit. */
function larger(a: number, b: number): number {
  if (!Number.isFinite(a)) return b;
  return Number.isFinite(b) && Math.abs(b) > Math.abs(a) ? b : a;
}

/** Both values rounded alike, with the fewest digits that show their difference truly. */
function apart(a: number, b: number, writer: Writer, least: number): readonly [number, number] {
  const [from, to] = [writer.scale(a), writer.scale(b)];
  const difference = to - from;
  if (!Number.isFinite(difference)) return [writer.round(from, least), writer.round(to, least)];
  for (let digits = least; digits < mostDigits; digits++) {
    const [one, other] = [writer.round(from, digits), writer.round(to, digits)];
    if (Math.abs(other - one - difference) <= Math.abs(difference) * differenceTolerance) return [one, other];
  }
  return [writer.round(from, mostDigits), writer.round(to, mostDigits)];
}
