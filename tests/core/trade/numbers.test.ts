// What the sums accept as arguments.
import { describe, expect, it } from 'vitest';
import {
  needBound,
  needCount,
  needFinite,
  needNotNegative,
  needPositive,
  needWithin,
} from '../../../server/src/core/trade/numbers';
import { expectRefusal, expectRefusesBad } from './refuses';

describe('guards', () => {
  it('needFinite lets every real number pass', () => {
    for (const value of [-1, 0, 1.5]) expect(() => needFinite('x', value)).not.toThrow();
    expectRefusesBad('finite', 'x', (value) => needFinite('x', value));
  });

  it('needPositive refuses zero', () => {
    expect(() => needPositive('x', Number.MIN_VALUE)).not.toThrow();
    expectRefusesBad('positive', 'x', (value) => needPositive('x', value));
  });

  it('needNotNegative lets zero pass', () => {
    expect(() => needNotNegative('x', 0)).not.toThrow();
    expectRefusesBad('notNegative', 'x', (value) => needNotNegative('x', value));
  });

  it('needBound lets Infinity pass as well', () => {
    for (const value of [0, Infinity]) expect(() => needBound('x', value)).not.toThrow();
    expectRefusesBad('bound', 'x', (value) => needBound('x', value));
  });

  it('needWithin includes both ends', () => {
    for (const value of [2, 3, 4]) expect(() => needWithin('x', value, 2, 4)).not.toThrow();
    for (const value of [1.99, 4.01, NaN])
      expectRefusal(() => needWithin('x', value, 2, 4), `x must be between 2 and 4, not ${value}`);
  });

  it('needCount wants whole numbers from the least on', () => {
    for (const value of [1, 2]) expect(() => needCount('x', value, 1)).not.toThrow();
    for (const value of [0, 1.5, NaN, Infinity]) {
      expectRefusal(() => needCount('x', value, 1), `x must be a whole number of at least 1, not ${value}`);
    }
  });
});
