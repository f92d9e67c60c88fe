import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  makeSlab,
  slabsMeet,
  strokesCross,
  strokesCrowd,
  within,
  type Slab,
  type Stroke,
} from '../../../src/drawing/set-out/slab';

const number = fc.double({ min: -50, max: 50, noNaN: true });
const half = fc.double({ min: 0.5, max: 30, noNaN: true });
const slab = fc
  .tuple(number, number, half, half, fc.double({ min: -4, max: 4, noNaN: true }))
  .map(([x, y, w, h, turn]) => makeSlab(x, y, w, h, Math.cos(turn), Math.sin(turn)));
const stroke: fc.Arbitrary<Stroke> = fc.tuple(number, number, number, number);

/** How deep a point lies inside a slab, px; negative outside. Straight from the definition. */
const depth = (s: Slab, x: number, y: number): number => {
  const along = (x - s.x) * s.cos + (y - s.y) * s.sin;
  const aside = (y - s.y) * s.cos - (x - s.x) * s.sin;
  return Math.min(s.halfWidth - Math.abs(along), s.halfHeight - Math.abs(aside));
};

const at = ([x1, y1, x2, y2]: Stroke, share: number): [number, number] => [
  x1 + share * (x2 - x1),
  y1 + share * (y2 - y1),
];

describe('a stroke within a slab', () => {
  test('is inside between the shares given, outside beyond them', () => {
    fc.assert(
      fc.property(slab, stroke, (s, line) => {
        const [enter, leave] = within(s, line) ?? [1, 0];
        const wrong = Array.from({ length: 201 }, (_, i) => i / 200).filter((share) => {
          const d = depth(s, ...at(line, share));
          const said = enter <= share && share <= leave;
          // A thousandth of a px about the edge is left to rounding.
          return Math.abs(d) > 1e-3 && said !== d > 0;
        });
        expect(wrong).toEqual([]);
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  test('along a side, and of no length', () => {
    const s = makeSlab(0, 0, 10, 5);
    expect(within(s, [-20, 0, 20, 0])).toEqual([0.25, 0.75]);
    expect(within(s, [-20, 5, 20, 5])).toBeNull();
    expect(within(s, [-20, 5.5, 20, 5.5], 1)).not.toBeNull();
    expect(within(s, [1, 1, 1, 1])).not.toBeNull();
    expect(within(s, [11, 1, 11, 1])).toBeNull();
  });
});

describe('two slabs', () => {
  test('meet when a point of one lies in the other, and only then', () => {
    fc.assert(
      fc.property(slab, slab, (a, b) => {
        let deepest = -Infinity;
        for (let i = -20; i <= 20; i++) {
          for (let j = -20; j <= 20; j++) {
            const [s, t] = [(a.halfWidth * i) / 20, (a.halfHeight * j) / 20];
            deepest = Math.max(deepest, depth(b, a.x + s * a.cos - t * a.sin, a.y + s * a.sin + t * a.cos));
          }
        }
        // The grid may miss an overlap smaller than its mesh of at most 3 px.
        const meet = deepest > 1e-3 ? true : deepest < -3 ? false : slabsMeet(a, b);
        expect(slabsMeet(a, b)).toBe(meet);
        expect(slabsMeet(a, b)).toBe(slabsMeet(b, a));
      }),
      { numRuns: 300, seed: 2 },
    );
  });

  test('that only touch do not meet, unless a gap is wanted', () => {
    const a = makeSlab(0, 0, 10, 5);
    expect(slabsMeet(a, makeSlab(20, 0, 10, 5))).toBe(false);
    expect(slabsMeet(a, makeSlab(20, 0, 10, 5), 1)).toBe(true);
    expect(slabsMeet(a, makeSlab(19.9, 0, 10, 5))).toBe(true);
    // Square on its corner, beside the corner of the other: their upright bounds overlap, they don't.
    expect(slabsMeet(a, makeSlab(18, 12, 10, 10, Math.SQRT1_2, Math.SQRT1_2))).toBe(false);
  });
});

describe('two strokes', () => {
  test('cross when they do so within both', () => {
    expect(strokesCross([0, 0, 10, 10], [0, 10, 10, 0])).toBe(true);
    expect(strokesCross([0, 0, 10, 10], [0, 10, 4, 6])).toBe(false);
    expect(strokesCross([0, 0, 10, 10], [10, 10, 20, 0])).toBe(false);
    expect(strokesCross([0, 0, 10, 0], [5, 0, 15, 0])).toBe(false);
  });

  test('crowd when they run side by side', () => {
    expect(strokesCrowd([0, 0, 10, 0], [5, 3, 15, 3], 4)).toBe(true);
    expect(strokesCrowd([0, 0, 10, 0], [5, 5, 15, 5], 4)).toBe(false);
    expect(strokesCrowd([0, 0, 10, 0], [10, 0, 20, 0], 4)).toBe(false);
    expect(strokesCrowd([0, 0, 10, 0], [5, -10, 5, 10], 4)).toBe(false);
  });
});
