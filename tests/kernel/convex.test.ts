import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chordAt, clearOf, common, convexOutline, narrowed, type Vec2, widened } from '../../src/kernel';

const square: readonly Vec2[] = [
  [0, 0],
  [2, 0],
  [2, 1],
  [0, 1],
];
const place = fc.tuple(
  fc.double({ min: -5, max: 5, noNaN: true }),
  fc.double({ min: -5, max: 5, noNaN: true }),
);
const area = (outline: readonly Vec2[]) =>
  outline.reduce((sum, [x, y], i) => {
    const [x2, y2] = outline[(i + 1) % outline.length]!;
    return sum + (x * y2 - x2 * y) / 2;
  }, 0);

describe('the outline round points', () => {
  test('leaves out what lies inside or along a side, and runs anticlockwise', () => {
    const outline = convexOutline([
      [1, 0],
      [2, 1],
      [0, 0],
      [1, 0.4],
      [0, 1],
      [2, 0],
      [2, 0],
    ]);
    expect(outline).toStrictEqual(square);
  });

  test('of points in one line is its two ends, of one place the place', () => {
    expect(
      convexOutline([
        [1, 1],
        [3, 3],
        [2, 2],
      ]),
    ).toStrictEqual([
      [1, 1],
      [3, 3],
    ]);
    expect(
      convexOutline([
        [1, 1],
        [1, 1],
      ]),
    ).toStrictEqual([[1, 1]]);
    expect(() => convexOutline([])).toThrow('no points');
  });

  test('has no point outside it, whatever the points', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 3, maxLength: 20 }), (points) => {
        const outline = convexOutline(points);
        expect(Math.max(...points.map((point) => clearOf(outline, point)))).toBeLessThan(1e-9);
      }),
    );
  });
});

describe('clear of an outline', () => {
  test('is the way to the nearest side or corner outside, less than nothing inside', () => {
    expect(clearOf(square, [1, -3])).toBeCloseTo(3, 12);
    expect(clearOf(square, [5, 5])).toBeCloseTo(5, 12);
    expect(clearOf(square, [1, 0.4])).toBeCloseTo(-0.4, 12);
    expect(clearOf(square, [2, 0.5])).toBeCloseTo(0, 12);
  });

  test('of a line or a point is the plain distance', () => {
    expect(
      clearOf(
        [
          [0, 0],
          [2, 0],
        ],
        [1, 0.5],
      ),
    ).toBeCloseTo(0.5, 12);
    expect(clearOf([[1, 1]], [4, 5])).toBeCloseTo(5, 12);
  });
});

describe('an outline with a margin', () => {
  test('gains perimeter times margin, and a circle at its corners, as Steiner says', () => {
    const by = 0.3;
    const exact = 2 + 6 * by + Math.PI * by ** 2;
    const made = area(widened(square, by));
    expect(made).toBeLessThan(exact);
    expect(made).toBeGreaterThan(exact - 0.01 * Math.PI * by ** 2);
  });

  test('stands the margin off everywhere, but for the flats of its round corners', () => {
    const by = 0.3;
    for (const point of widened(square, by)) expect(clearOf(square, point)).toBeCloseTo(by, 12);
    for (const point of square) expect(clearOf(widened(square, by), point)).toBeCloseTo(-by, 2);
  });
});

describe('what two outlines have in common', () => {
  // On a grid: needles a millionth wide have no common area that rounding leaves.
  const mark = fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }));
  const shifted = square.map(([x, y]): Vec2 => [x + 1, y + 0.5]);

  test('of two squares that overlap is their overlap, of two apart nothing', () => {
    expect(area(common(square, shifted))).toBeCloseTo(0.5, 12);
    expect(
      common(
        square,
        square.map(([x, y]): Vec2 => [x + 3, y]),
      ),
    ).toStrictEqual([]);
    expect(area(common(square, square))).toBeCloseTo(2, 12);
  });

  test('lies within both, and is the same either way round', () => {
    fc.assert(
      fc.property(
        fc.array(mark, { minLength: 3, maxLength: 9 }),
        fc.array(mark, { minLength: 3, maxLength: 9 }),
        (a, b) => {
          const [one, other] = [convexOutline(a), convexOutline(b)];
          if (one.length < 3 || other.length < 3) return;
          const both = common(one, other);
          expect(area(both)).toBeCloseTo(area(common(other, one)), 6);
          for (const point of both)
            expect(Math.max(clearOf(one, point), clearOf(other, point))).toBeLessThan(1e-6);
        },
      ),
      { seed: 7 },
    );
  });
});

describe('an outline with its sides moved in', () => {
  test('a side of a rectangle each by its own distance; nothing where they pass each other', () => {
    expect(area(narrowed(square, [0.1, 0.2, 0.3, 0.4]))).toBeCloseTo((2 - 0.6) * (1 - 0.4), 12);
    expect(area(narrowed(square, [0, 0, 0, 0]))).toBeCloseTo(2, 12);
    expect(narrowed(square, [0.6, 0, 0.6, 0])).toStrictEqual([]);
  });

  test('every place left lies as deep inside as asked', () => {
    const corner = fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }));
    let kept = 0;
    fc.assert(
      fc.property(
        fc.array(corner, { minLength: 3, maxLength: 9 }),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        (points, by) => {
          const outline = convexOutline(points);
          if (outline.length < 3) return;
          const left = narrowed(
            outline,
            outline.map(() => by),
          );
          for (const point of left) expect(clearOf(outline, point)).toBeLessThan(1e-9 - by);
          if (left.length > 0) kept += 1;
        },
      ),
      { seed: 12 },
    );
    expect(kept).toBeGreaterThan(20);
  });
});

test('a level crosses an outline from side to side, or passes it by', () => {
  const leaning: readonly Vec2[] = [
    [0, 0],
    [4, 0],
    [1, 2],
  ];
  expect(chordAt(leaning, 1)).toStrictEqual([0.5, 2.5]);
  expect(chordAt(leaning, 0)).toStrictEqual([0, 4]);
  expect(chordAt(leaning, 2)).toStrictEqual([1, 1]);
  expect(chordAt(leaning, 2.01)).toBeNull();
});
