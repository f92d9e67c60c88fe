import * as fc from 'fast-check';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { isIssue } from '../../src/measure';
import { literalAt, valueOf } from '../../src/measure/literal';
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

// Decimals of 64 figures, an independent implementation; its texts are turned into doubles by the engine.
const decimal = create(all as unknown as FactoryFunctionMap, { number: 'BigNumber', precision: 64 });

describe('a literal is the double nearest to what it says', () => {
  const inSi: readonly [string, string][] = [
    ['mm', '0.001'],
    ['in', '0.0254'],
    ['ft', '0.3048'],
    ['lb', '0.45359237'],
    ['oz', '0.028349523125'],
    ['lbf', '4.4482216152605'],
    ['gal', '0.003785411784'],
    ['fl oz', '0.0000295735295625'],
    ['°', 'pi / 180'],
    ['psi', '4.4482216152605 / (0.0254 * 0.0254)'],
    ['knots', '1852 / 3600'],
  ];
  test.each(inSi)('%s', (unit, factor) => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_999_999 }), fc.integer({ min: 0, max: 7 }), (whole, places) => {
        const text = (whole / 10 ** places).toFixed(places);
        const reading = literalAt(`${text} ${unit}`, 0, { length: false, after: '', commaParts: false });
        const want = String(decimal.evaluate(`${text} * ${factor}`));
        expect(reading && !isIssue(reading) && valueOf(reading, false)).toBe(Number(want));
      }),
      { seed: 64, numRuns: 300 },
    );
  });
});

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
