import { expect, test } from 'vitest';
import { bendBatten, curvatureAt, tightest } from '../../src/kernel';
import type { Vec3 } from '../../src/kernel';
import './near';

test('the tightest place of a parabola y = x^2 is its vertex, radius 1/2 (closed form)', () => {
  const points = Array.from({ length: 101 }, (_, i): Vec3 => [i / 50 - 0.7, (i / 50 - 0.7) ** 2, 3]);
  const found = tightest(bendBatten(points));
  // Curvature of the spline is right to the square of the step: (0.02)^2.
  expect(found?.radius ?? NaN).toBeNear(0.5, 1e-3);
  expect(found?.point[0] ?? NaN).toBeNear(0, 0, 0.021);
});

test('no place of a batten bends more', () => {
  const batten = bendBatten([
    [0, 0, 0],
    [1, 0.4, 0.1],
    [1.5, 0.9, 0],
    [3, 0.7, 0.3],
    [4, 0, 0.5],
  ]);
  const found = tightest(batten);
  const end = batten.knots[4] ?? NaN;
  const most = Math.max(
    ...Array.from({ length: 20_001 }, (_, i) => curvatureAt(batten, (i * end) / 20_000).magnitude),
  );
  expect(found).not.toBeNull();
  expect(1 / (found?.radius ?? NaN)).toBeNear(most, 1e-7);
  expect(curvatureAt(batten, found?.parameter ?? NaN).magnitude).toBeNear(most, 1e-7);
});

test('only the part asked for is searched, its ends included', () => {
  const points = Array.from({ length: 101 }, (_, i): Vec3 => [i / 50 - 1, (i / 50 - 1) ** 2, 0]);
  const batten = bendBatten(points);
  const from = batten.knots[75] ?? NaN;
  const found = tightest(batten, from);
  expect(found?.parameter).toBe(from);
  expect(found?.radius ?? NaN).toBeNear(2 ** 1.5 / 2, 1e-3);
});

test('a straight batten has none', () => {
  expect(
    tightest(
      bendBatten([
        [0, 0, 0],
        [1, 2, 3],
      ]),
    ),
  ).toBeNull();
  expect(
    tightest(
      bendBatten([
        [0, 0, 0],
        [0.1, 0.2, 0.3],
        [0.7, 1.4, 2.1],
        [1, 2, 3],
      ]),
    ),
  ).toBeNull();
});
