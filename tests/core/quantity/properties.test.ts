// What must hold for any text and any number.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dimensions,
  formatQuantity,
  plainNumber,
  readQuantity,
  units,
  type Dimension,
} from '../../../server/src/core/quantity';

const names = Object.keys(dimensions) as Dimension[];
const anyDimension = fc.constantFrom(...names);
const spellings = [...units.values()].flatMap((unit) => unit.spellings);
/** Texts near to quantities: numbers, marks and unit words in any order. */
const nearly = fc
  .array(
    fc.oneof(
      fc.constantFrom(...spellings),
      fc.constantFrom(
        'at most ',
        'up to ',
        '≥',
        ' to ',
        '–',
        '-',
        ' ',
        '.',
        ',',
        '½',
        'e',
        '1 200',
        '1,200',
        'O',
        'l',
        '\u00A0',
        'С',
        '€',
        '−',
      ),
      fc.nat(2000).map(String),
      fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
    ),
    { maxLength: 7 },
  )
  .map((parts) => parts.join(''));
const anyText = fc.oneof(
  nearly,
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
);

describe('readQuantity', () => {
  it('answers any text with a value in order or a problem inside the text', () => {
    fc.assert(
      fc.property(anyText, anyDimension, (text, dimension) => {
        const { quantity, problem } = readQuantity(text, dimension);
        if (quantity !== undefined) {
          expect(quantity.lo).toBeLessThanOrEqual(quantity.hi);
          expect(units.get(quantity.unit)?.dimension).toBe(dimension);
          expect(quantity.text).toBe(text);
        }
        expect(quantity ?? problem).toBeDefined();
        if (problem === undefined) return;
        expect(0 <= problem.start && problem.start <= problem.end && problem.end <= text.length).toBe(true);
        expect(problem.message).toMatch(/\.$/);
      }),
      { numRuns: 3000 },
    );
  });

  it('suggests only texts that it reads without a word', () => {
    fc.assert(
      fc.property(anyText, anyDimension, (text, dimension) => {
        for (const suggestion of readQuantity(text, dimension).problem?.suggestions ?? []) {
          expect({ text, suggestion, problem: readQuantity(suggestion, dimension).problem }).toEqual({
            text,
            suggestion,
            problem: undefined,
          });
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('suggests what keeps the value where it was certain of one', () => {
    fc.assert(
      fc.property(anyText, anyDimension, (text, dimension) => {
        const { quantity, problem } = readQuantity(text, dimension);
        if (quantity === undefined || problem === undefined) return;
        expect(problem.suggestions).toHaveLength(1);
        const again = readQuantity(problem.suggestions[0] ?? '', dimension).quantity;
        expect([again?.lo, again?.hi, again?.unit]).toEqual([quantity.lo, quantity.hi, quantity.unit]);
      }),
      { numRuns: 3000 },
    );
  });
});

const amount = fc.double({ min: 1e-6, max: 1e15, noNaN: true });
const shownDimension = fc.constantFrom(...names.filter((name) => name !== 'money'));

describe('formatQuantity and formatPair', () => {
  it('write what is read again, within the digits printed', () => {
    fc.assert(
      fc.property(amount, shownDimension, (value, dimension) => {
        const { quantity, problem } = readQuantity(formatQuantity(value, value, dimension), dimension);
        expect(problem).toBeUndefined();
        expect(Math.abs((quantity?.lo ?? NaN) - value)).toBeLessThanOrEqual(value * 0.000_500_01);
      }),
    );
  });

  it('write ranges that are read again as ranges', () => {
    fc.assert(
      fc.property(amount, amount, shownDimension, (a, b, dimension) => {
        const [lo, hi] = [Math.min(a, b), Math.max(a, b)];
        const { quantity, problem } = readQuantity(formatQuantity(lo, hi, dimension), dimension);
        expect(problem).toBeUndefined();
        expect(Math.abs((quantity?.lo ?? NaN) - lo)).toBeLessThanOrEqual(lo * 0.000_500_01);
        expect(Math.abs((quantity?.hi ?? NaN) - hi)).toBeLessThanOrEqual(hi * 0.000_500_01);
      }),
    );
  });
});

describe('plainNumber', () => {
  it('writes any number without an exponent, so that it is read as the same number', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const text = plainNumber(value);
        expect(text).toMatch(/^-?\d+(\.\d+)?$/);
        expect(Number(text) === value).toBe(true);
      }),
    );
  });
});
