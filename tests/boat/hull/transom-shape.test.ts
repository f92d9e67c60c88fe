import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter } from '../../../src/boat';
import { letOut, transomShape } from '../../../src/boat/hull/transom-shape';
import { outlineArea } from '../../../src/boat/joinery/cut-away';
import { box, hullThrough, planeSided, radians } from '../shapes';

const skin = (panel: string) => (panel === 'side' ? 0.006 : 0.009);

describe('transom', () => {
  test('upright on a box it is the section inside the skin', () => {
    const { rake, inside, foot, heights } = transomShape(
      hullThrough(box(3, 1, 0.4)),
      'transom',
      skin,
      'outer',
    );
    expect(rake).toBe(0);
    expect(foot).toBe(0);
    expect(inside[1]).toStrictEqual([expect.closeTo(0.494, 12), expect.closeTo(0.009, 12)]);
    expect(heights[2]).toBeCloseTo(0.4, 12);
  });

  test('expanded up its slope: 380 mm plumb at 13 deg is 390.0 mm', () => {
    const hull = hullThrough(planeSided({ flare: 0, plan: 0, profile: 0, rake: radians(13), height: 0.38 }));
    const { outside, rake } = transomShape(hull, 'transom', skin, 'outer');
    expect(rake).toBeCloseTo(radians(13), 9);
    expect(outside.at(-1)![1] * 1000).toBeCloseTo(389.996, 3);
  });

  test('a level bottom takes its thickness over the cosine of the rake off the slope', () => {
    const hull = hullThrough(planeSided({ flare: 0.2, plan: 0, profile: 0, rake: radians(20), height: 0.4 }));
    const { inside } = transomShape(hull, 'transom', skin, 'outer');
    expect(inside[0]![1]).toBeCloseTo(0.009 / Math.cos(radians(20)), 9);
  });

  test('let out, each side grows by thickness × tangent of its bevel; a parallel hull does not grow', () => {
    const plan = 0.2; // opens out going forward: the forward face is the larger
    const hull = hullThrough(planeSided({ flare: 0, plan, profile: 0, rake: 0, height: 0.4 }));
    const shape = transomShape(hull, 'transom', skin, 'outer');
    const larger = letOut(shape, 0.018);
    expect(larger[1]![0] - shape.inside[1]![0]).toBeCloseTo(0.018 * plan, 9);
    expect(larger.at(-1)![1]).toBeCloseTo(shape.inside.at(-1)![1], 12);
    // With the inner face on the line the outer one is smaller: the blank is the shape itself.
    const inner = transomShape(hull, 'transom', skin, 'inner');
    expect(letOut(inner, 0.018)[1]![0]).toBeCloseTo(inner.inside[1]![0], 12);
    const straight = transomShape(hullThrough(box(3, 1, 0.4)), 'transom', skin, 'outer');
    letOut(straight, 0.018).forEach(([y, u], i) => {
      expect(y).toBeCloseTo(straight.inside[i]![0], 12);
      expect(u).toBeCloseTo(straight.inside[i]![1], 12);
    });
  });

  test('both ends of a punt, each leaning out; the blank is never smaller than the shape', () => {
    const hull = buildHull(offsetsOf(starter('creek-punt')!));
    for (const role of ['transom', 'bow transom'] as const) {
      const shape = transomShape(hull, role, skin, 'outer');
      expect(shape.rake).toBeGreaterThan(0.2);
      expect(shape.rake).toBeCloseTo(Math.abs(shape.station.plane.lean), 12);
      const half = (points: readonly (readonly [number, number])[]) =>
        outlineArea([[0, points[0]![1]], ...points.slice(1), [0, points.at(-1)![1]]]);
      expect(half(letOut(shape, 0.018))).toBeGreaterThan(half(shape.inside));
    }
  });

  test('a boat that ends in a stem says so', () => {
    const hull = buildHull(offsetsOf(starter('ferry-dory')!));
    expect(() => transomShape(hull, 'bow transom', skin, 'outer')).toThrow(
      'this boat has no transom at the bow: it ends in a stem there',
    );
  });
});
