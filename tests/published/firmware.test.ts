// Natural order of versions against dpkg, and where bytes order them otherwise.
import { describe, expect } from 'vitest';
import { compareBySpelling, compareVersions } from '../../server/src/core/trade/firmware';
import type { Order } from '../../server/src/core/trade/firmware';
import { itWithOracle, runOracle } from './oracle';

/** Pairs of one pattern, as firmware versions are spelled. Source of the order: dpkg --compare-versions. */
const NUMBERS = ['0', '1', '2', '08', '8', '9', '10', '11', '20', '099', '100', '101', '1203', '0805'];
const PATTERNS: ((n: string) => string)[] = [
  (n) => `1.${n}`,
  (n) => `${n}.02`,
  (n) => `2.${n}.7`,
  (n) => `1.20-beta${n}`,
  (n) => `7C1v${n}`,
];

/** Source: Debian Policy Manual, chapter 5.6.12, by its program. */
function orderOfDpkg(a: string, b: string): Order {
  const holds = (relation: string) => runOracle('dpkg', ['--compare-versions', a, relation, b]).status === 0;
  if (holds('lt')) return -1;
  return holds('gt') ? 1 : 0;
}

describe('natural order', () => {
  for (const [n, pattern] of PATTERNS.entries()) {
    itWithOracle('dpkg', `agrees with dpkg on pairs such as ${pattern('8')} and ${pattern('10')} (${n + 1})`, () => {
      for (const [at, a] of NUMBERS.entries()) {
        for (const b of NUMBERS.slice(at)) {
          const [first, second] = [pattern(a), pattern(b)];
          expect(compareBySpelling(first, second), `${first} and ${second}`).toBe(orderOfDpkg(first, second));
        }
      }
    });
  }

  // A conflict: bytes put 1.10 before 1.9.
  itWithOracle('dpkg', 'is not the order of bytes', () => {
    expect('1.10' < '1.9').toBe(true);
    expect(orderOfDpkg('1.10', '1.9')).toBe(1);
    expect(compareBySpelling('1.10', '1.9')).toBe(1);
  });

  // A conflict: dpkg puts 22b after 22; with one maker F22b is a test build before F22, with others a letter is a later
  // mend (common practice): the list decides.
  itWithOracle('dpkg', 'does not follow dpkg where a letter trails', () => {
    expect(orderOfDpkg('22b', '22')).toBe(1);
    expect(compareBySpelling('F22b', 'F22')).toBeUndefined();
    expect(compareVersions('F22b', 'F22', ['F22b', 'F22'])).toBe(-1);
    expect(compareVersions('F22b', 'F22', ['F22', 'F22b'])).toBe(1);
  });

  // A conflict: dpkg orders any two texts; versions of two patterns have no order that anyone can vouch for.
  itWithOracle('dpkg', 'leaves two patterns incomparable', () => {
    expect(orderOfDpkg('1.20', '5.13')).toBe(-1);
    expect(orderOfDpkg('1.20', '1.2.3')).toBe(1);
    expect(compareBySpelling('1.20', '1.2.3')).toBeUndefined();
  });
});
