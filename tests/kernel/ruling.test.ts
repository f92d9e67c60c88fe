import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../src/kernel';
import { rulingEnd, rulingOf } from '../../src/kernel/ruling';
import './near';

describe('z = xy over the unit square, ruled along x = const: no developable (closed forms)', () => {
  const ends = (x: number) => {
    const ruling: Vec3 = [0, 1, x];
    const first = rulingEnd(Float64Array.of(x, 0, 0, 1, 0, 0, 0, 0, 0), ruling);
    const second = rulingEnd(Float64Array.of(x, 1, x, 1, 0, 1, 0, 0, 0), ruling);
    return { first, second };
  };
  test.each([
    [0, 45],
    [0.5, 41.81],
    [1, 35.264],
  ])('twist at x = %f is %f degrees', (x, want) => {
    const { first, second } = ends(x);
    const ruling = rulingOf(x, x, first, second, null);
    expect(((ruling?.twist ?? NaN) * 180) / Math.PI).toBeNear(want, 0, 6e-4);
  });
});

test('an edge on a cylinder bends across the ruling as the cylinder does, however it slants', () => {
  // Radius 2 along z; an edge that climbs 0.7 for each radian, at angle 0.
  const edge = rulingEnd(Float64Array.of(2, 0, 0, 0, 2, 0.7, -2, 0, 0), [0, 0, 1]);
  const ruling = rulingOf(0, 0, edge, { ...edge, point: [2, 0, 1] }, null);
  expect(ruling?.radius ?? NaN).toBeNear(2, 1e-14);
});

test('no plane shows where the ends are one point, or where the ruling runs along both edges', () => {
  const still = rulingEnd(Float64Array.of(1, 1, 1, 1, 0, 0, 0, 0, 0), [0, 0, 0]);
  expect(rulingOf(0, 0, still, still, null)).toBeNull();
  const along = rulingEnd(Float64Array.of(1, 1, 1, 1, 0, 0, 0, 0, 0), [2, 0, 0]);
  expect(rulingOf(0, 0, along, along, null)).toBeNull();
});
