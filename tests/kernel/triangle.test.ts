import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apexOver, levelPart } from '../../src/kernel/triangle';

describe('apexOver', () => {
  test('3, 4 and 5: the right angle lies over the base at 9/5 and 16/5 of it, 12/5 off', () => {
    const { along, off } = apexOver(3, 4, 5);
    expect(2.5 - along).toBeCloseTo(9 / 5, 14);
    expect(off).toBeCloseTo(12 / 5, 14);
  });

  test('equal lengths stand over the middle', () => {
    expect(apexOver(5, 5, 6)).toStrictEqual({ along: 0, off: 4 });
  });

  test('finds the apex it was measured from, wherever that stands', () => {
    const place = {
      along: fc.double({ min: -5, max: 5, noNaN: true }),
      off: fc.double({ min: 0.01, max: 8, noNaN: true }),
    };
    fc.assert(
      fc.property(
        fc.record({ ...place, base: fc.double({ min: 0.1, max: 4, noNaN: true }) }),
        ({ along, off, base }) => {
          const found = apexOver(Math.hypot(off, base / 2 - along), Math.hypot(off, base / 2 + along), base);
          // Two square roots and a division by the base: rounding of 1e-16 grows by (length / base)².
          expect(Math.abs(found.along - along)).toBeLessThan(1e-11);
          expect(Math.abs(found.off - off)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  test('flat triangles have no height, and lose none of it to rounding', () => {
    expect(apexOver(2, 3, 5).off).toBe(0);
    expect(apexOver(5, 2, 3).off).toBe(0);
    expect(apexOver(1 + 1e-12, 1, 2).off).toBeCloseTo(1e-6, 9);
  });

  test.each([
    [1, 5, 3, /differ by more/],
    [5, 1, 3, /differ by more/],
    [1, 1, 3, /together they are shorter/],
    [1, 1, 0, /needs a base/],
    [1, 1, NaN, /needs a base/],
  ])('%d and %d over %d make no triangle', (a, b, base, sentence) => {
    expect(() => apexOver(a, b, base)).toThrow(sentence);
  });
});

describe('levelPart', () => {
  test('5 long, 3 up or down: 4 level', () => {
    expect(levelPart(5, 3)).toBe(4);
    expect(levelPart(5, -3)).toBe(4);
    expect(levelPart(5, 5)).toBe(0);
  });
  test('no length reaches higher than itself', () => {
    expect(() => levelPart(3, 3.001)).toThrow(/too short to reach/);
  });
});
