import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { biasStrips, layOnRoll, type RollPiece, runsToCover } from '../../src/kernel/on-roll';

const WIDTH = 1.5;
const pieces = fc.array(
  fc.record({
    long: fc.double({ min: 0.1, max: 6, noNaN: true }),
    wide: fc.double({ min: 0.05, max: WIDTH, noNaN: true }),
  }),
  { minLength: 1, maxLength: 30 },
);

/** How far two stretches overlap. */
const shared = (a: number, aLong: number, b: number, bLong: number) =>
  Math.min(a + aLong, b + bLong) - Math.max(a, b);

describe('pieces on a roll', () => {
  test('lie on it, and none on another', () => {
    fc.assert(
      fc.property(pieces, (all) => {
        const { length, places } = layOnRoll(all, WIDTH);
        const laid = all.map((piece, i) => ({ ...piece, ...places[i]! }));
        for (const { long, wide, along, across } of laid) {
          expect(Math.min(along, across)).toBeGreaterThanOrEqual(0);
          expect(along + long).toBeLessThanOrEqual(length + 1e-9);
          expect(across + wide).toBeLessThanOrEqual(WIDTH + 1e-9);
        }
        laid.forEach((one, i) => {
          for (const other of laid.slice(i + 1)) {
            const overlap = Math.min(
              shared(one.along, one.long, other.along, other.long),
              shared(one.across, one.wide, other.across, other.wide),
            );
            expect(overlap).toBeLessThan(1e-9);
          }
        });
      }),
    );
  });

  test('take no less than their area and the longest of them, and by the published bound at most 2.7 times that', () => {
    fc.assert(
      fc.property(pieces, (all) => {
        const { length } = layOnRoll(all, WIDTH);
        const area = all.reduce((sum, { long, wide }) => sum + long * wide, 0) / WIDTH;
        const longest = Math.max(...all.map(({ long }) => long));
        expect(length).toBeGreaterThanOrEqual(Math.max(area, longest) - 1e-9);
        // Coffman and others, 1980: 1.7 times the least possible, and the longest piece more.
        expect(length).toBeLessThanOrEqual(1.7 * 2 * Math.max(area, longest) + longest + 1e-9);
      }),
    );
  });

  test('two that fit side by side lie so, and short ones one after another beside a long one', () => {
    const strip: RollPiece = { long: 1, wide: 0.2 };
    const { length, places } = layOnRoll([strip, { long: 3, wide: 1.2 }, strip, strip], WIDTH);
    expect(length).toBe(3);
    expect(places.map(({ along }) => along)).toStrictEqual([0, 0, 1, 2]);
    expect(layOnRoll([], WIDTH)).toStrictEqual({ length: 0, places: [] });
  });

  test('one wider than the roll is refused in words', () => {
    expect(() => layOnRoll([{ long: 1, wide: 1.6 }], WIDTH)).toThrow('wider than the roll');
  });
});

describe('runs', () => {
  test('a height that fits exactly takes no run more for a rounding', () => {
    expect(runsToCover(1.27 + 1.22, 1.27, 0.05)).toBe(2);
    expect(runsToCover(0.1 + 0.2, 0.3, 0)).toBe(1);
    expect(runsToCover(0.2, 1.5, 0.05)).toBe(1);
  });
  test('a roll no wider than its lap covers nothing', () => {
    expect(() => runsToCover(1, 0.1, 0.1)).toThrow('no wider than the lap');
  });
});

test('bias strips lie in the roll that is told for them', () => {
  const { each, roll } = biasStrips(1.27, 0.1, 12);
  expect(each).toBeCloseTo(Math.hypot(1.27, 1.27), 12);
  // Area: the strips are parallelograms, and two corners of half a square are left.
  expect(12 * 0.1 * each + 1.27 ** 2).toBeCloseTo(roll * 1.27, 12);
  expect(biasStrips(1.27, 0.1, 0).roll).toBe(0);
});
