import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { distance, distance2 } from '../../src/kernel';
import type { Vec2, Vec3 } from '../../src/kernel';
import { unroll } from '../../src/kernel/unroll';
import './near';
import { seeded } from './shapes';

function foldOf(first: readonly Vec3[], second: readonly Vec3[]) {
  const none: Vec3 = [NaN, NaN, NaN];
  const steps = (a: readonly Vec3[], b: readonly Vec3[]) =>
    Float64Array.from({ length: a.length - 1 }, (_, k) => distance(a[k] ?? none, b[k + 1] ?? none));
  return {
    across: Float64Array.from(first, (point, k) => distance(point, second[k] ?? none)),
    first: steps(first, first),
    second: steps(second, second),
    rising: steps(first, second),
    falling: steps(second, first),
  };
}

const at = (points: readonly Vec2[], k: number): Vec2 => points[k] ?? [NaN, NaN];

test('a strip folded out of triangles keeps every side of every triangle it is cut in', () => {
  const wobble = fc.double({ min: -0.3, max: 0.3, noNaN: true });
  const line = (y: number) =>
    fc
      .array(fc.tuple(wobble, wobble, wobble), { minLength: 12, maxLength: 12 })
      .map((rows) => rows.map(([dx, dy, dz], k): Vec3 => [k + dx, y + dy, dz]));
  fc.assert(
    fc.property(line(0), line(2), (first, second) => {
      const fold = foldOf(first, second);
      const flat = unroll(fold);
      fold.across.forEach((width, k) =>
        expect(distance2(at(flat.first, k), at(flat.second, k))).toBeNear(width, 1e-10),
      );
      fold.first.forEach((step, k) =>
        expect(distance2(at(flat.first, k), at(flat.first, k + 1))).toBeNear(step, 1e-10),
      );
      fold.second.forEach((step, k) =>
        expect(distance2(at(flat.second, k), at(flat.second, k + 1))).toBeNear(step, 1e-10),
      );
      fold.rising.forEach((rising, k) => {
        const falling = fold.falling[k] ?? NaN;
        const [from, to] = rising <= falling ? [flat.first, flat.second] : [flat.second, flat.first];
        expect(distance2(at(from, k), at(to, k + 1))).toBeNear(Math.min(rising, falling), 1e-10);
      });
    }),
    seeded,
  );
});

test('a flat strip comes out as it was: chord of the first edge along +x, the second to its left', () => {
  const first: Vec3[] = [
    [0, 0, 0],
    [1, -0.2, 0],
    [2.2, 0, 0],
  ];
  const second: Vec3[] = [
    [-0.1, 1, 0],
    [1, 1.3, 0],
    [2.5, 0.9, 0],
  ];
  const flat = unroll(foldOf(first, second));
  first.forEach(([x, y], k) => expect(distance2(at(flat.first, k), [x, y])).toBeNear(0, 0, 1e-12));
  second.forEach(([x, y], k) => expect(distance2(at(flat.second, k), [x, y])).toBeNear(0, 0, 1e-12));
});

test('edges that part from a point of which one of them stands still at first', () => {
  const slow: Vec3[] = [
    [0, 0, 0],
    [0, 0, 0],
    [1, 0, 0],
    [2, 0, 0],
  ];
  const quick: Vec3[] = [
    [0, 0, 0],
    [0.2, 0.5, 0],
    [1.1, 0.8, 0],
    [2, 0.9, 0],
  ];
  const flat = unroll(foldOf(slow, quick));
  quick.forEach(([x, y], k) => expect(distance2(at(flat.second, k), [x, y])).toBeNear(0, 0, 1e-12));
  slow.forEach(([x, y], k) => expect(distance2(at(flat.first, k), [x, y])).toBeNear(0, 0, 1e-12));
  // The other way round it is the mirror image, with the same distances.
  const other = unroll(foldOf(quick, slow));
  quick.forEach((point, k) => {
    expect(distance2(at(other.first, k), at(other.second, k))).toBeNear(
      distance(point, slow[k] ?? point),
      1e-12,
      1e-12,
    );
    expect(distance2(at(other.first, 0), at(other.first, k))).toBeNear(Math.hypot(...point), 1e-12, 1e-12);
  });
});

test('edges that meet at both ends, and edges that stand still in turn', () => {
  const first: Vec3[] = [
    [0, 0, 0],
    [1, -0.2, 0],
    [1, -0.2, 0],
    [2, -0.1, 0],
    [3, 0.5, 0],
  ];
  const second: Vec3[] = [
    [0, 0, 0],
    [0.8, 0.7, 0],
    [1.5, 0.9, 0],
    [1.5, 0.9, 0],
    [3, 0.5, 0],
  ];
  const flat = unroll(foldOf(first, second));
  const slant = Math.atan2(0.5, 3);
  const turned = ([x, y]: Vec3): Vec2 => [
    x * Math.cos(slant) + y * Math.sin(slant),
    y * Math.cos(slant) - x * Math.sin(slant),
  ];
  first.forEach((point, k) => expect(distance2(at(flat.first, k), turned(point))).toBeNear(0, 0, 1e-7));
  second.forEach((point, k) => expect(distance2(at(flat.second, k), turned(point))).toBeNear(0, 0, 1e-7));
});
