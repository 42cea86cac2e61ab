// The order in which findings are handed over: by grade, at whatever place and however many.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { worstFirst } from '../../server/src/features/diagnostic-order';
import type { Diagnostic } from '../../server/src/features/shapes';

const grades = ['harm', 'stop', 'shortfall', 'note', 'unknown'] as const;
const severityOf = { harm: 1, stop: 1, shortfall: 2, note: 3, unknown: 4 } as const;

function found(grade: (typeof grades)[number], from: number, to: number, code = grade as string): Diagnostic {
  const at = (character: number) => ({ line: 2, character });
  const range = { start: at(from), end: at(to) };
  return { range, severity: severityOf[grade], code, source: `fettle · ${grade}`, message: code };
}

describe('worst first', () => {
  test('by grade, and within a grade as they stood', () => {
    const lists = fc.array(fc.tuple(fc.constantFrom(...grades), fc.nat(9)), { maxLength: 12 });
    fc.assert(
      fc.property(lists, (list) => {
        const given = list.map(([grade, at], i) => found(grade, at, at + 3, `${i}`));
        const expected = grades.flatMap((grade) => given.filter(({ source }) => source.endsWith(grade)));
        expect(worstFirst(given)).toEqual(expected);
      }),
    );
  });
});
