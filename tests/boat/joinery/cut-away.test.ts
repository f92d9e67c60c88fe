import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutAway, outlineArea } from '../../../src/boat/joinery/cut-away';
import type { Vec2 } from '../../../src/kernel';

const box = (left: number, bottom: number, right: number, top: number): readonly Vec2[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];
const square = box(0, 0, 1, 1);
const areas = (outlines: readonly (readonly Vec2[])[]) => outlines.map(outlineArea);

/** Whether a point lies in a convex outline, by its sides: another road than the code's. */
function within(outline: readonly Vec2[], [y, z]: Vec2): boolean {
  const turns = outline.map(([y0, z0], i) => {
    const [y1, z1] = outline[(i + 1) % outline.length]!;
    return (y1 - y0) * (z - z0) - (z1 - z0) * (y - y0);
  });
  return turns.every((turn) => turn > 0) || turns.every((turn) => turn < 0);
}

describe('cutting a notch out of a piece', () => {
  test('a notch in an edge leaves one outline with its corners', () => {
    const [left, ...more] = cutAway(square, box(0.4, -1, 0.6, 0.25));
    expect(more).toStrictEqual([]);
    expect(left).toHaveLength(8);
    expect(outlineArea(left!)).toBeCloseTo(0.95, 12);
    expect(left).toStrictEqual(expect.arrayContaining([[0.6, 0.25]]));
  });
  test('a notch at a corner takes the corner off', () => {
    const [left] = cutAway(square, box(0.7, -1, 2, 0.2));
    expect(left).toHaveLength(6);
    expect(outlineArea(left!)).toBeCloseTo(0.94, 12);
  });
  test('a notch right across leaves two pieces', () => {
    expect(areas(cutAway(square, box(-1, 0.4, 2, 0.5))).toSorted((a, b) => a - b)).toStrictEqual([
      expect.closeTo(0.4, 12),
      expect.closeTo(0.5, 12),
    ]);
  });
  test('a notch beside it leaves the piece, one over all of it nothing', () => {
    expect(areas(cutAway(square, box(2, 0, 3, 1)))).toStrictEqual([1]);
    expect(cutAway(square, box(-1, -1, 2, 2))).toStrictEqual([]);
  });
  test('the turn of either outline is no matter', () => {
    const notch = box(0.4, -1, 0.6, 0.25);
    for (const piece of [square, square.toReversed()]) {
      for (const cut of [notch, notch.toReversed()]) {
        expect(areas(cutAway(piece, cut))).toStrictEqual([expect.closeTo(0.95, 12)]);
      }
    }
  });
  test('a corner of the notch upon an edge of the piece', () => {
    // The notch's corner touches the middle of the right edge from outside, and passes the lower one.
    const notch: readonly Vec2[] = [
      [0.5, -0.5],
      [1, 0.5],
      [1.5, -0.5],
    ];
    const [left, ...more] = cutAway(square, notch);
    expect(more).toStrictEqual([]);
    expect(outlineArea(left!)).toBeCloseTo(1 - (0.25 * 0.5) / 2, 6);
  });

  test('for any two triangles: what is left is what lies in the one and not in the other', () => {
    // On lattices of their own: no side of a notch lies along a side of a piece, for it reaches out beyond.
    const point = (shift: number) =>
      fc
        .tuple(fc.integer({ min: 0, max: 1000 }), fc.integer({ min: 0, max: 1000 }))
        .map(([y, z]): Vec2 => [y / 1000 + shift, z / 1000 + shift * 1.7]);
    const triangle = (shift: number) =>
      fc
        .tuple(point(shift), point(shift), point(shift))
        .filter((points) => Math.abs(outlineArea(points)) > 0.02);
    const samples = Array.from({ length: 900 }, (_, i): Vec2 => [
      ((i % 30) + 0.517) / 30,
      (Math.floor(i / 30) + 0.483) / 30,
    ]);
    fc.assert(
      fc.property(triangle(0), triangle(0.000314), (piece, notch) => {
        // A notch wholly inside a piece is no notch.
        fc.pre(notch.some((corner) => !within(piece, corner)));
        const left = cutAway(piece, notch);
        const wanted = samples.filter((at) => within(piece, at) && !within(notch, at)).length / 900;
        const area = left.reduce((sum, one) => sum + outlineArea(one), 0);
        // Samples miss by the cells that the six sides pass through.
        expect(Math.abs(area - wanted)).toBeLessThan(0.05);
      }),
      { seed: 31, numRuns: 300 },
    );
  });
});
