import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexOutline, type Vec2 } from '../../src/kernel';
import { boxRound, drawnOut, outlineArea, withinBand } from '../../src/kernel/outline';

const rectangle = (length: number, width: number): Vec2[] => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];
/** A ring of points, their turn and their distance out tried at random. */
const convex = fc
  .array(
    fc.tuple(fc.double({ min: 0, max: 6.28, noNaN: true }), fc.double({ min: 0.5, max: 2, noNaN: true })),
    {
      minLength: 5,
      maxLength: 20,
    },
  )
  .map((places) =>
    convexOutline(places.map(([turn, out]): Vec2 => [out * Math.cos(turn), out * Math.sin(turn)])),
  )
  .filter((outline) => outline.length > 2 && outlineArea(outline) > 0.2);

describe('an outline drawn out', () => {
  test('a rectangle by four distances of its own is the larger rectangle', () => {
    const out = drawnOut({ points: rectangle(3, 2), out: [0.1, 0.2, 0.3, 0.4] });
    const { left, right, low, high } = boxRound(out);
    for (const [is, wanted] of [
      [left, -0.4],
      [right, 3.2],
      [low, -0.1],
      [high, 2.3],
    ] as const)
      expect(is).toBeCloseTo(wanted, 12);
    expect(outlineArea(out)).toBeCloseTo(3.6 * 2.4, 12);
  });

  test('a circle of many sides is the larger circle', () => {
    const circle = Array.from({ length: 400 }, (_, i): Vec2 => {
      const turn = (i / 400) * 2 * Math.PI;
      return [Math.cos(turn), Math.sin(turn)];
    });
    const out = drawnOut({ points: circle, out: circle.map(() => 0.05) });
    // Sides of a polygon of 400 stand (pi / 400)^2 / 2 inside the circle.
    for (const [x, y] of out) expect(Math.hypot(x, y)).toBeCloseTo(1.05, 4);
    expect(outlineArea(out)).toBeCloseTo(Math.PI * 1.05 ** 2, 3);
  });

  test('one convex outline grows by its girth times the distance, corners between square and blunt', () => {
    fc.assert(
      fc.property(convex, (outline) => {
        const by = 0.01;
        const girth = outline.reduce((sum, [x, y], i) => {
          const [a, b] = outline[(i + 1) % outline.length]!;
          return sum + Math.hypot(a - x, b - y);
        }, 0);
        const grown =
          outlineArea(drawnOut({ points: outline, out: outline.map(() => by) })) - outlineArea(outline);
        expect(grown).toBeGreaterThan(girth * by);
        // A corner cut off at twice the distance holds no more than its square of four.
        expect(grown).toBeLessThan(girth * by + outline.length * 4 * by * by);
      }),
    );
  });

  test('a point that repeats is one corner, and two points are no outline', () => {
    const [a, b, c, d] = rectangle(1, 1);
    const doubled = drawnOut({ points: [a!, b!, b!, c!, d!], out: [0, 9, 0, 0, 0] });
    expect(outlineArea(doubled)).toBeCloseTo(1, 12);
    expect(() => drawnOut({ points: [a!, b!], out: [0, 0] })).toThrow('fewer than three corners');
  });
});

describe('the part in a band', () => {
  test('of a triangle is the trapezium', () => {
    const triangle: Vec2[] = [
      [0, 0],
      [2, 0],
      [0, 1],
    ];
    expect(outlineArea(withinBand(triangle, 0, 0.5))).toBeCloseTo(0.75, 12);
    expect(outlineArea(withinBand(triangle, 0.5, 2))).toBeCloseTo(0.25, 12);
    expect(withinBand(triangle, 2, 3)).toStrictEqual([]);
  });

  test('bands that meet hold the whole area between them', () => {
    fc.assert(
      fc.property(convex, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (outline, share) => {
        const { low, high } = boxRound(outline);
        const cut = low + share * (high - low);
        const parts =
          outlineArea(withinBand(outline, low, cut)) + outlineArea(withinBand(outline, cut, high));
        expect(parts).toBeCloseTo(outlineArea(outline), 9);
      }),
    );
  });
});
