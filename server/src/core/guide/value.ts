// A value that a guide prints, held against the figure: the same quantity within what is printed of it.
import type { Figure } from '../figures/figure';
import { show } from '../figures/sentence';
import { lacking, sure, type Truth } from '../figures/truth';
import { readQuantity, toBase, type Dimension, type Quantity, type UnitName } from '../quantity';

/** Words before a value that leave its last noughts open. */
const roughly = /^(?:about|around|approx(?:\.|imately)?|roughly|some|nearly|ca?\.|~|≈)\s*/i;

export interface PrintedValue {
  readonly quantity?: Quantity;
  /** What is wrong with it; with a unit missing, what to write. */
  readonly problem?: { readonly code: string; readonly message: string; readonly suggestions: readonly string[] };
  /** How far off it may be, in the base unit. */
  readonly within: number;
}

/** Reads what is printed, in the words of prose. */
export function readPrinted(text: string, figure: Figure): PrintedValue {
  const rough = roughly.exec(text)?.[0] ?? '';
  const own = text
    .slice(rough.length)
    .replace(/[\s\u00A0\u202F]+/g, ' ')
    .trim();
  const usual = figure.unit;
  const { quantity, problem } = readQuantity(own, figure.dimension as Dimension, usual ? { usual } : {});
  return {
    ...(quantity ? { quantity, within: withinOf(own, quantity, rough !== '') } : { within: 0 }),
    ...(problem && !quantity ? { problem } : {}),
  };
}

/** Half a step of the last printed digit; of a rough value, of its last digit that is not nought. */
function withinOf(text: string, { unit, dimension }: Quantity, isRough: boolean): number {
  const digits = /\d[\d\s,.]*/.exec(text)?.[0].trim() ?? '';
  const decimals = /[.,](\d+)$/.exec(digits)?.[1]?.length ?? 0;
  const noughts = isRough && decimals === 0 ? noughtsBehind(digits.replace(/\D/g, '')) : 0;
  const half = 0.5 * 10 ** (decimals === 3 && /,\d{3}$/.test(digits) ? 0 : noughts - decimals);
  return dimension === 'money' ? half : Math.abs(toBase(half, unit) - toBase(0, unit));
}

function noughtsBehind(digits: string): number {
  let count = 0;
  while (count < digits.length - 1 && digits[digits.length - 1 - count] === '0') count++;
  return count;
}

/** Whether a printed value says what the figure says; open where facts are missing that could make it so. */
export function agrees({ quantity, within }: PrintedValue, figure: Figure): Truth {
  if (!quantity || (figure.currency && quantity.currency && figure.currency !== quantity.currency))
    return isNothing(figure) ? lacking(figure.missing, figure) : sure(false, figure);
  const slack = within * (1 + 1e-9);
  const { lo, hi } = quantity;
  const holds =
    (lo === hi && Math.abs(figure.lo - lo) <= slack && Math.abs(figure.hi - hi) <= slack) ||
    (lo !== hi && lo - slack <= figure.lo && figure.hi <= hi + slack);
  if (holds) return sure(true, figure);
  const apart = hi + slack < figure.lo || lo - slack > figure.hi;
  return apart ? sure(false, figure) : lacking(figure.missing, figure);
}

const isNothing = ({ lo, hi }: Figure): boolean => lo === -Infinity && hi === Infinity;

const mostDigits = 7;

/** The figure as a guide prints it: in the unit that is written there, with the fewest digits, three or more. */
export function printed(figure: Figure, unit?: UnitName): string {
  const own = unit === undefined || figure.dimension === 'money' ? figure.unit : unit;
  for (let digits = 3; digits < mostDigits; digits++) {
    const text = show(figure, own, digits);
    if (agrees(readPrinted(text, figure), figure).is === true) return text;
  }
  return show(figure, own, mostDigits);
}
