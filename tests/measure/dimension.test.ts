import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  dimension,
  over,
  plain,
  sameDimension,
  sayDimension,
  times,
  toPower,
} from '../../src/measure';

const force = dimension({ mass: 1, length: 1, time: -2 });
const anyDimension: fc.Arbitrary<Dimension> = fc.tuple(
  ...Array.from({ length: 6 }, () => fc.integer({ min: -4, max: 4 })),
) as never;

describe('dimensions', () => {
  test('multiply and divide as units do', () => {
    expect(times(force, dimension({ length: 1 }))).toStrictEqual(dimension({ mass: 1, length: 2, time: -2 }));
    expect(over(force, dimension({ length: 2 }))).toStrictEqual(dimension({ mass: 1, length: -1, time: -2 }));
    expect(toPower(dimension({ length: 1 }), 3)).toStrictEqual(dimension({ length: 3 }));
  });
  test('a square root and its square are the same again, and so are three cube roots', () => {
    fc.assert(
      fc.property(anyDimension, (d) => {
        const root = toPower(d, 1 / 2);
        const third = toPower(d, 1 / 3);
        expect(sameDimension(times(root, root), d)).toBe(true);
        expect(sameDimension(times(times(third, third), third), d)).toBe(true);
        expect(sameDimension(over(d, d), plain)).toBe(true);
      }),
      { seed: 811 },
    );
  });
  test('no power is minus zero, so that equal dimensions are equal data', () => {
    expect(toPower(plain, -1)).toStrictEqual(plain);
  });
  test('tells an angle from a number and money from both', () => {
    expect(sameDimension(dimension({ angle: 1 }), plain)).toBe(false);
    expect(sameDimension(dimension({ money: 1 }), plain)).toBe(false);
  });
});

describe('a dimension in words', () => {
  const cases: readonly [Parameters<typeof dimension>[0], string][] = [
    [{}, 'a number'],
    [{ length: 1 }, 'a length'],
    [{ length: 3 }, 'a volume'],
    [{ mass: 1 }, 'a mass'],
    [{ mass: 1, length: 1, time: -2 }, 'a force'],
    [{ mass: 1, length: -1, time: -2 }, 'a stress'],
    [{ mass: 1, length: 2, time: -2 }, 'a moment'],
    [{ angle: 1 }, 'an angle'],
    [{ money: 1, length: -2 }, 'a price per area'],
    [{ mass: 1, length: 5, time: -2 }, 'a force times a length to the power 4'],
    [{ length: 2, time: -1 }, 'a length squared over a time'],
    [{ time: -1 }, 'a number over a time'],
    [{ time: 3 }, 'a time cubed'],
    [{ time: 0.5 }, 'a time to the power 0.5'],
    [{ mass: 1, temperature: -1, money: 2 }, 'a mass times an amount of money squared over a temperature'],
    [{ mass: 2, length: 3, time: -4 }, 'a force squared times a length'],
  ];
  test.each(cases)('%j', (powers, words) => {
    expect(sayDimension(dimension(powers))).toBe(words);
  });
});
