import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  compare,
  divide,
  exact,
  exactDecimal,
  exactDouble,
  multiply,
  nearestDouble,
  power,
  toParts,
} from '../../src/measure/exact';

const anyDouble = fc.double({ noNaN: true, noDefaultInfinity: true });

describe('exact fractions', () => {
  test('a decimal is read as the double nearest to it, as the engine itself reads numerals', () => {
    // ECMAScript rounds a numeral of up to 20 significant digits to the nearest double (ECMA-262, 12.9.3.2).
    fc.assert(
      fc.property(
        fc.stringMatching(/^\d{1,19}$/),
        fc.integer({ min: 0, max: 19 }),
        fc.integer({ min: -30, max: 30 }),
        (digits, point, e) => {
          const text = `${digits.slice(0, point)}.${digits.slice(point)}e${e}`.replace(/^\.e/, '0e');
          expect(nearestDouble(exactDecimal(text))).toBe(Number(text));
        },
      ),
      { seed: 1959, numRuns: 1000 },
    );
  });
  test('every normal double survives', () => {
    fc.assert(
      fc.property(anyDouble, (value) => {
        fc.pre(Math.abs(value) > 2 ** -1000);
        expect(nearestDouble(exactDouble(value))).toBe(value);
      }),
      { seed: 754, numRuns: 1000 },
    );
  });
  test('ties go to the even neighbour', () => {
    const half = exact(1n, 2n ** 53n);
    expect(nearestDouble(add(exact(1), half))).toBe(1);
    expect(nearestDouble(add(exactDouble(1 + Number.EPSILON), half))).toBe(1 + 2 * Number.EPSILON);
  });
  test('what is left over beyond the last bit decides a tie', () => {
    const justOver = add(exact(1n, 2n ** 53n), exact(1n, 2n ** 200n));
    expect(nearestDouble(add(exact(1), justOver))).toBe(1 + Number.EPSILON);
  });
  test('too large is infinite, too small is nought', () => {
    expect(nearestDouble(exactDecimal('1e400'))).toBe(Infinity);
    expect(nearestDouble(exactDecimal('1e-400'))).toBe(0);
    expect(nearestDouble(exact(-(10n ** 400n)))).toBe(-Infinity);
  });
  test('reckons as fractions do', () => {
    const third = exact(1, 3);
    expect(compare(add(add(third, third), third), exact(1))).toBe(0);
    expect(compare(multiply(third, exact(-2)), exact(-2, 3))).toBe(0);
    expect(compare(divide(third, exact(-2)), exact(-1, 6))).toBe(0);
    expect(divide(third, exact(-2)).bottom).toBeGreaterThan(0n);
    expect(compare(power(exact(2, 3), -2), exact(9, 4))).toBe(0);
    expect(compare(third, exact(1, 4))).toBe(1);
    expect(compare(third, exact(1, 2))).toBe(-1);
  });
  test('rounds to parts with halves away from nought', () => {
    expect([exact(5, 2), exact(-5, 2), exact(7, 3)].map((a) => toParts(a, 1n))).toStrictEqual([3n, -3n, 2n]);
    expect(toParts(exact(1, 3), 100n)).toBe(33n);
  });
});
