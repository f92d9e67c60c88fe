import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  dimension,
  formula,
  type Formula,
  type FormulaFunction,
  isIssue,
  kindOf,
  plain,
} from '../../src/measure';

const length = dimension({ length: 1 });
const dimensions: Readonly<Record<string, Dimension | 'choice'>> = {
  thickness: length,
  slope: plain,
  length,
  rise: length,
  angle: dimension({ angle: 1 }),
  load: dimension({ mass: 1, length: 1, time: -2 }),
  modulus: dimension({ mass: 1, length: -1, time: -2 }),
  n: plain,
  timber: 'choice',
  m: plain,
  'hull.length': length,
};
const scope: Readonly<Record<string, number | string>> = {
  thickness: 0.019,
  slope: 8,
  length: 3,
  rise: 0.1,
  angle: 0.5,
  load: 400,
  modulus: 1e10,
  n: 4,
  m: 0,
  timber: 'whiteOak',
  'hull.length': 5.2,
};

const functions: Readonly<Record<string, FormulaFunction>> = {
  tightest: { takes: ['length', 'length'], gives: 'length', run: (a, b) => (a * a) / (8 * b) },
  failing: {
    takes: ['length'],
    gives: 'length',
    run: () => {
      throw new Error('the board is shorter than the curve');
    },
  },
  broken: {
    takes: ['length'],
    gives: 'length',
    run: () => {
      throw new TypeError('x is undefined');
    },
  },
  lost: { takes: ['number'], gives: 'number', run: () => Number.NaN },
};

function made(text: string): Formula {
  const read = formula(text, functions, () => Object.keys(scope));
  if (isIssue(read)) throw new Error(read.issue);
  return read;
}
const evaluated = (text: string) => made(text).evaluate(scope);
const measured = (text: string) => made(text).dimension((name) => dimensions[name]);

describe('a formula', () => {
  const cases: readonly [string, number, Dimension][] = [
    ['slope * thickness', 0.152, length],
    ['sqrt(length^2 + rise^2)', Math.hypot(3, 0.1), length],
    ['length^2 / (8 * rise) + rise / 2', 9 / 0.8 + 0.05, length],
    [
      'load * length^3 / (48 * modulus * (length * thickness^3 / 12))',
      (400 * 27) / (48 * 1e10 * ((3 * 0.019 ** 3) / 12)),
      length,
    ],
    ['length * angle / rad', 1.5, length],
    ['2 * length * tan(angle / 2)', 6 * Math.tan(0.25), length],
    ['length * sin(30°)', 3 * Math.sin(Math.PI / 6), length],
    ['atan2(rise, length)', Math.atan2(0.1, 3), dimension({ angle: 1 })],
    ['thickness + 25 mm + 1/4 in', 0.05035, length],
    ['thickness - 1/2 in', 0.0063, length],
    ['n^-2', 1 / 16, plain],
    ['-n^2', -16, plain],
    ['m^0.5', 0, plain],
    ['m^0', 1, plain],
    ['2^3^2', 512, plain],
    ['8 - 4 - 2', 2, plain],
    ['8 / 4 / 2', 1, plain],
    ['load / g', 400 / 9.80665, dimension({ mass: 1 })],
    ['5 g * g', 0.005 * 9.80665, kindOf('force').dimension],
    ['pi * rise^2 / 4', (Math.PI * 0.01) / 4, dimension({ length: 2 })],
    ['max(0, length - 4 m)', 0, length],
    ['min(length, thickness, rise)', 0.019, length],
    ['ceil(length / 600 mm) + 1', 6, plain],
    ['ceil(1000000.00001)', 1000000, plain],
    ['ceil(3.001)', 4, plain],
    ['floor(2.999)', 2, plain],
    ['round(2.5) + round(-2.5) + round(2.4999)', 2, plain],
    ['ceil(length, 700 mm)', 3.5, length],
    ['floor(length, 700 mm)', 2.8, length],
    ['round(rise, 1/16 in)', 63 * 0.0015875, length],
    ['abs(rise - length)', 2.9, length],
    ['hypot(length, rise)', Math.hypot(3, 0.1), length],
    ['exp(-n / 2) + ln(n) + log10(n)', Math.exp(-2) + Math.log(4) + Math.log10(4), plain],
    ['asin(rise / length) + acos(rise / length)', Math.PI / 2, dimension({ angle: 1 })],
    ['sqrt(length) * sqrt(length)', 3, length],
    ['(load / modulus)^(1/2)', 2e-4, length],
    ['n > 3 ? length : rise', 3, length],
    ['n > 5 ? length : n > 3 ? rise : thickness', 0.1, length],
    ['n > 3 ? 0 : rise', 0, length],
    ['timber == "whiteOak" ? 1 : 2', 1, plain],
    ['timber != "whiteOak" ? 1 : 2', 2, plain],
    ['timber == "spruce" or n == 4 ? 1 : 2', 1, plain],
    ['tightest(length, rise)', 9 / 0.8, length],
    ['2 * tightest(length, 100 mm)', 9 / 0.4, length],
    ['hull.length / 2', 2.6, length],
  ];
  test.each(cases)('%s', (text, want, measures) => {
    const value = evaluated(text);
    expect(value).toBeTypeOf('number');
    expect(Math.abs(Number(value) - want)).toBeLessThanOrEqual(1e-14 * Math.max(1, Math.abs(want)));
    expect(measured(text)).toStrictEqual(measures);
    expect(made(text).asks).toBe('number');
  });

  const truths: readonly [string, 0 | 1][] = [
    ['n > 3', 1],
    ['n < 3', 0],
    ['n >= 4', 1],
    ['n <= 4', 1],
    ['n == 4', 1],
    ['n != 4', 0],
    ['not (n > 3)', 0],
    ['n > 3 and slope > 9', 0],
    ['n > 3 or slope > 9', 1],
    ['length > 2 m', 1],
    ['rise ≤ 100 mm', 1],
    ['rise >= 0', 1],
    ['timber == "spruce"', 0],
    ['0.1 + 0.2 == 0.3', 1],
    ['0.1 + 0.2 > 0.3', 0],
    ['0.1 + 0.2 <= 0.3', 1],
    ['n > 3 and (slope > 9 or length > 2 m) and not (m > 1)', 1],
    ['n > 3 ? m > 1 : m < 1', 0],
    ['(n > 3)', 1],
    // The second half is not looked at where it does not matter.
    ['m != 0 and n / m > 2', 0],
    ['m == 0 or n / m > 2', 1],
    ['(m == 0 or n / m > 2) and n > 1', 1],
  ];
  test.each(truths)('%s asks yes or no', (text, want) => {
    expect(evaluated(text)).toBe(want);
    expect(made(text).asks).toBe('truth');
    expect(measured(text)).toStrictEqual(plain);
  });

  test('names its values and its functions, each once', () => {
    const { names, functions } = made(
      'tightest(length, rise) + tightest(rise, length) + max(thickness, 1 mm)',
    );
    expect(names).toStrictEqual(['length', 'rise', 'thickness']);
    expect(functions).toStrictEqual(['tightest']);
  });
  test('takes constants before names, and units only after numbers', () => {
    expect(made('g * m + 2 m').names).toStrictEqual(['m']);
    expect(made('pi * rad * K').names).toStrictEqual([]);
  });
  test('is read up to 600 signs', () => {
    expect(evaluated(`${'1+'.repeat(299)}10`)).toBe(309);
  });
  test('evaluates anew for other values', () => {
    const area = made('length * rise');
    expect([1, 2, 3].map((length) => area.evaluate({ length, rise: 2 }))).toStrictEqual([2, 4, 6]);
  });

  const faults: readonly [string, string][] = [
    ['n / m', 'divides by zero'],
    ['n / (n - slope / 2)', 'divides by zero'],
    ['m ^ -1', 'divides by zero'],
    ['sqrt(-n)', 'takes the square root of a number below zero'],
    ['asin(n)', 'takes asin of 4, which is beyond 1'],
    ['ln(m)', 'takes the logarithm of a number that is not above zero'],
    ['(-n) ^ 0.5', 'takes a broken power of a number below zero'],
    ['exp(9999)', 'comes to a number too large to reckon with'],
    ['absent + 1', 'absent has no value'],
    ['toString + 1', 'toString has no value'],
    ['constructor', 'constructor has no value'],
    ['timber * 2', 'comes to no number'],
    ['timber + 2', 'comes to no number'],
    ['failing(length)', 'the board is shorter than the curve'],
    ['lost(n)', 'comes to no number'],
  ];
  test.each(faults)('%s is an issue, never NaN', (text, sentence) => {
    expect(evaluated(text)).toStrictEqual({ issue: sentence });
  });
  test('a fault in our own functions is not put to the builder', () => {
    expect(() => evaluated('broken(length)')).toThrow(TypeError);
  });

  const misfits: readonly [string, string][] = [
    ['length + n', "can't add a number to a length; give the number its unit"],
    ['length + load', "can't add a force to a length"],
    ['sin(slope)', 'sin takes an angle; this is a number'],
    ['length * angle + length', "can't add a length to a length times an angle"],
    ['length ^ n', 'the power of a length must be written as a number'],
    ['tightest(length, n)', 'tightest takes a length in place 2; this is a number'],
    ['tightest(load, length)', 'tightest takes a length first; this is a force'],
    ['timber + 1', '"timber" is a choice, not a number'],
    ['timber == 1', "can't compare a choice with a number"],
    ['timber > "oak"', 'choices have no order; compare them with "==" or "!="'],
    ['timber', '"timber" is a choice, not a number'],
    ['n > 3 ? timber : n', 'the two answers of "? :" are a choice and a number'],
    ['lenght * 2', 'there is no quantity "lenght"; nearest: length, hull.length'],
  ];
  test.each(misfits)('%s is of no dimension', (text, sentence) => {
    expect(measured(text)).toStrictEqual({ issue: sentence });
  });

  const unread: readonly [string, string][] = [
    ['', 'nothing is written here'],
    ['2 length', 'a sign is missing between "2" and "length"; put + - * or / there'],
    ['unheard(3)', 'there is no function "unheard"'],
    ['tightest(length)', 'tightest takes 2 figures; here is 1'],
    ['a < b < c', 'compare two at a time, joined by "and"'],
    ['a ? b', 'a choice between two takes both signs: a > b ? c : d'],
    ['a : b', '":" has a meaning after "?" only, as in a > b ? c : d'],
    ['a = 3', 'one "=" has no meaning here; write "==" to compare'],
    ['__proto__', '"_" has no meaning at the start'],
    ['a[1]', '"[" has no meaning after "a"'],
    [`${'1+'.repeat(300)}1`, 'the formula is too long: at most 600 letters and signs are read'],
  ];
  test.each(unread)('%s is not read', (text, sentence) => {
    expect(formula(text, functions)).toMatchObject({ issue: sentence });
  });
});
