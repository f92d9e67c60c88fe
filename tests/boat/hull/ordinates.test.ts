import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ordinateAt, proudOf } from '../../../src/boat/hull/ordinates';
import { distanceToSide, type Vec2 } from '../../../src/kernel';
import '../../kernel/near';
import { seeded } from '../../kernel/shapes';

const rectangle: readonly Vec2[] = [
  [0, 0],
  [4, 0],
  [4, 1],
  [0, 1],
];
/** A bow: square aft, to a point forward at the foot. */
const bow: readonly Vec2[] = [
  [0, 0],
  [3, 0],
  [0, 1],
];

describe('ordinates', () => {
  test('are the lowest and the highest of the outline over a place, at its upright ends the whole end', () => {
    for (const x of [0, 0.01, 2, 4]) expect(ordinateAt(rectangle, x)).toStrictEqual({ lower: 0, upper: 1 });
    expect(ordinateAt(bow, 1.5)!.upper).toBeNear(0.5, 1e-12);
    expect(ordinateAt(bow, 3)).toStrictEqual({ lower: 0, upper: 0 });
  });

  test('are none before the outline begins and past its end', () => {
    expect(ordinateAt(rectangle, -0.001)).toBeNull();
    expect(ordinateAt(rectangle, 4.001)).toBeNull();
  });
});

describe('an outline left proud', () => {
  test('of a rectangle is one larger all round', () => {
    const wanted: readonly Vec2[] = [
      [-0.1, -0.1],
      [4.1, -0.1],
      [4.1, 1.1],
      [-0.1, 1.1],
    ];
    proudOf(rectangle, 0.1).forEach((point, i) => {
      expect(point[0]).toBeNear(wanted[i]![0], 1e-12, 1e-12);
      expect(point[1]).toBeNear(wanted[i]![1], 1e-12, 1e-12);
    });
    expect(proudOf(rectangle, 0)).toBe(rectangle);
  });

  test('stands the allowance off every side, and a sharp point is cut off', () => {
    const angle = fc.double({ min: 0.05, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(angle, fc.double({ min: 0.001, max: 0.02, noNaN: true }), (half, by) => {
        const arrow: readonly Vec2[] = [
          [0, -1],
          [1 / Math.tan(half), 0],
          [0, 1],
        ];
        const proud = proudOf(arrow, by);
        const off = proud.map((at) =>
          Math.min(...arrow.map((from, i) => distanceToSide(from, arrow[(i + 1) % 3]!, at))),
        );
        expect(Math.min(...off)).toBeGreaterThan(by - 1e-12);
        const tip = Math.max(...proud.map(([x]) => x)) - arrow[1]![0];
        // A point runs on by the allowance over the sine of half its angle, at most 4 of them.
        expect(tip).toBeLessThan(4.001 * by);
        expect(tip).toBeGreaterThan(by - 1e-12);
        // Sharper than a quarter it ends in a square, an allowance on along both sides.
        const runsOn = Math.sin(half) < 0.25 ? Math.sin(half) + Math.cos(half) : 1 / Math.sin(half);
        expect(tip).toBeNear(by * runsOn, 1e-9);
      }),
      seeded,
    );
  });
});
