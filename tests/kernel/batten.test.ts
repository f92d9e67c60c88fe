import Natural from 'cubic-spline';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bendBatten,
  curvatureAt,
  derivativeAt,
  dot,
  duckJumps,
  norm,
  pointAt,
  viewCurvature,
} from '../../src/kernel';
import type { SplineEnds, Vec3 } from '../../src/kernel';
import { orderOf } from './near';
import { seeded } from './shapes';

/** Points on the helix x = a cos t, y = a sin t, z = b t, at n even steps over one radian and a half. */
function helix(a: number, b: number, n: number): Vec3[] {
  return Array.from({ length: n + 1 }, (_, i) => {
    const t = (1.5 * i) / n;
    return [a * Math.cos(t), a * Math.sin(t), b * t];
  });
}

describe('a batten through a helix', () => {
  // Curvature a / (a^2 + b^2), do Carmo, section 1-5, exercise 1.
  const worst = (n: number): number => {
    const batten = bendBatten(helix(1, 1, n));
    const last = batten.knots[n] ?? NaN;
    const places = Array.from({ length: 201 }, (_, i) => (i * last) / 200);
    return Math.max(...places.map((t) => Math.abs(curvatureAt(batten, t).magnitude - 0.5)));
  };
  test('has its curvature, to second order in the step', () => {
    expect(worst(64)).toBeLessThan(1e-3);
    const order = orderOf(worst(32), worst(64));
    expect(order).toBeGreaterThan(1.8);
    expect(order).toBeLessThan(2.3);
  });
  test('has its length, to fourth order', () => {
    const miss = (n: number): number => bendBatten(helix(1, 1, n)).length - 1.5 * Math.SQRT2;
    expect(Math.abs(miss(64))).toBeLessThan(1e-7);
    const order = orderOf(miss(16), miss(32));
    expect(order).toBeGreaterThan(3.7);
    expect(order).toBeLessThan(4.6);
  });
  /** How far the batten leaves the helix, m: out from its cylinder, or up from its height at that turn. */
  const off = (n: number, ends: SplineEnds<Vec3>, from: number, to: number): number => {
    const batten = bendBatten(helix(1, 1, n), ends);
    const last = batten.knots[n] ?? NaN;
    const places = Array.from({ length: 401 }, (_, i) => last * (from + ((to - from) * i) / 400));
    return Math.max(
      ...places.map((t) => {
        const [x, y, z] = pointAt(batten, t);
        return Math.hypot(Math.hypot(x, y) - 1, z - Math.atan2(y, x));
      }),
    );
  };
  const natural = { start: 'natural', end: 'natural' } as const;
  // The helix leaves along (-sin t, cos t, 1), here as a direction of length 1.
  const along = (t: number): Vec3 => [-Math.sin(t) / Math.SQRT2, Math.cos(t) / Math.SQRT2, Math.SQRT1_2];
  const held = { start: { slope: along(0) }, end: { slope: along(1.5) } };

  test.each([
    ['ends that run on', {}],
    ['ends held in its direction', held],
  ])('keeps to its place to fourth order with %s', (_, ends) => {
    expect(off(64, ends, 0, 1)).toBeLessThan(2e-8);
    const order = orderOf(off(32, ends, 0, 1), off(64, ends, 0, 1));
    expect(order).toBeGreaterThan(3.7);
    expect(order).toBeLessThan(4.4);
  });
  test('keeps to its place to second order only where a free end denies the bend, to fourth away from it', () => {
    const order = orderOf(off(32, natural, 0, 1), off(64, natural, 0, 1));
    expect(order).toBeGreaterThan(1.8);
    expect(order).toBeLessThan(2.2);
    const amidships = orderOf(off(32, natural, 0.4, 0.6), off(64, natural, 0.4, 0.6));
    expect(amidships).toBeGreaterThan(3.7);
    expect(amidships).toBeLessThan(4.6);
  });
  test('bends towards the axis', () => {
    const batten = bendBatten(helix(2, 0.5, 48));
    const t = (batten.knots[48] ?? NaN) / 2;
    const [x, y, z] = pointAt(batten, t);
    const { vector, magnitude } = curvatureAt(batten, t);
    expect(norm(vector)).toBeNear(magnitude, 1e-12);
    expect(vector[0]).toBeNear((-x * magnitude) / 2, 2e-3);
    expect(vector[1]).toBeNear((-y * magnitude) / 2, 2e-3);
    expect(vector[2]).toBeNear(0, 0, 2e-3 * Math.abs(z));
  });
});

describe('views', () => {
  const arc = (plane: (c: number, s: number) => Vec3): Vec3[] =>
    Array.from({ length: 41 }, (_, i) => plane(3 * Math.cos(-1.6 + i / 40), 3 * Math.sin(-1.6 + i / 40)));
  test('a sheer with spring is + in profile and straight in plan', () => {
    const batten = bendBatten(arc((c, s) => [c, 1, s]));
    expect(viewCurvature(batten, 1, 'profile')).toBeNear(1 / 3, 1e-3);
    expect(viewCurvature(batten, 1, 'plan')).toBeNear(0, 0, 1e-12);
  });
  test('a side that closes in going forward is - in plan; seen end on there is no curvature', () => {
    const batten = bendBatten(arc((c, s) => [c, -s, 0.2]));
    expect(viewCurvature(batten, 1, 'plan')).toBeNear(-1 / 3, 1e-3);
    expect(
      viewCurvature(
        bendBatten([
          [0, 1, 2],
          [5, 1, 2],
        ]),
        2,
        'body',
      ),
    ).toBeNear(0, 0);
  });
  test('turns from y to z in the body view', () => {
    expect(viewCurvature(bendBatten(arc((c, s) => [0.1 * c, c, s])), 1, 'body')).toBeNear(1 / 3, 1e-3);
  });
});

test('a parabola through three points is that parabola, and has no duck force', () => {
  const points: Vec3[] = [
    [0, 0, 0],
    [1, 0.1, 0],
    [2, 0, 0],
  ];
  const batten = bendBatten(points);
  expect(pointAt(batten, (batten.knots[1] ?? NaN) / 2)[1]).toBeNear(0.075, 1e-12);
  expect(norm(duckJumps(batten)[0] ?? [1, 1, 1])).toBeNear(0, 0, 1e-12);
});

test('a beam with a load in the middle: the jump is 48 d / L^3 over the small slope', () => {
  const ends = { start: 'natural', end: 'natural' } as const;
  const batten = bendBatten(
    [
      [0, 0, 0],
      [1, 0, 0.01],
      [2, 0, 0],
    ],
    ends,
  );
  // Chord and base differ by 1 part in 20000 in length, so 3 in the cube.
  expect(duckJumps(batten)[0]?.[2] ?? NaN).toBeNear((48 * 0.01) / 8, 2e-4);
});

test('the curvature is square to the batten, however unevenly its parameter runs', () => {
  const batten = bendBatten([
    [0, 0, 0],
    [0.2, 1, 0.3],
    [2, 1.1, -0.4],
    [2.4, -0.5, 0],
  ]);
  for (const t of [0, 0.5, 1.3, 2.9, 4]) {
    const along = derivativeAt(batten, t, 1);
    const { vector, magnitude } = curvatureAt(batten, t);
    expect(magnitude).toBeGreaterThan(0.1);
    expect(dot(vector, along) / (magnitude * norm(along))).toBeNear(0, 0, 1e-13);
    expect(norm(vector)).toBeNear(magnitude, 1e-12);
  }
});

test('clamped ends leave in the direction given', () => {
  const start: Vec3 = [0.6, 0.8, 0];
  const batten = bendBatten(
    [
      [0, 0, 0],
      [1, 0.5, 0],
      [2, 0.5, 1],
    ],
    { start: { slope: start } },
  );
  derivativeAt(batten, 0, 1).forEach((value, axis) =>
    expect(value).toBeNear(start[axis] ?? NaN, 1e-12, 1e-12),
  );
});

const anyPoints = fc
  .array(
    fc.tuple(fc.double({ min: 0.2, max: 1, noNaN: true }), fc.double({ min: -0.4, max: 0.4, noNaN: true })),
    {
      minLength: 3,
      maxLength: 9,
    },
  )
  .map((steps) => {
    let x = 0;
    return steps.map(([step, y], i): Vec3 => [(x += step), y, 0.1 * i * y]);
  });

test('any batten with free ends is, in each of its three directions, the spline of a general library', () => {
  fc.assert(
    fc.property(anyPoints, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
      const batten = bendBatten(points, { start: 'natural', end: 'natural' });
      const chords = Array.from(batten.knots);
      const t = share * (chords.at(-1) ?? NaN);
      pointAt(batten, t).forEach((got, axis) => {
        const values = points.map((point) => point[axis] ?? NaN);
        // Both solve the same equations, in another order.
        expect(got).toBeNear(new Natural(chords, values).at(t), 1e-10, 1e-10);
      });
    }),
    seeded,
  );
});

describe('any batten', () => {
  test('goes through its points', () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const batten = bendBatten(points);
        points.forEach((point, i) => {
          const got = pointAt(batten, batten.knots[i] ?? NaN);
          got.forEach((value, axis) => expect(value).toBeNear(point[axis] ?? NaN, 1e-13, 1e-13));
        });
      }),
      seeded,
    );
  });
  test('grown k times is k times as long and bends 1/k as much', () => {
    fc.assert(
      fc.property(anyPoints, fc.double({ min: 0.01, max: 100, noNaN: true }), (points, k) => {
        const one = bendBatten(points);
        const other = bendBatten(points.map(([x, y, z]): Vec3 => [k * x, k * y, k * z]));
        expect(other.length).toBeNear(k * one.length, 1e-11);
        const t = 0.37 * (one.knots[one.knots.length - 1] ?? NaN);
        expect(curvatureAt(other, k * t).magnitude * k).toBeNear(curvatureAt(one, t).magnitude, 1e-9, 1e-10);
      }),
      seeded,
    );
  });
  test('is the same shape mirrored, shifted, or laid from its other end', () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const one = bendBatten(points);
        const t = 0.37 * (one.knots[one.knots.length - 1] ?? NaN);
        const [x, y, z] = pointAt(one, t);
        const moved = pointAt(bendBatten(points.map(([a, b, c]): Vec3 => [a + 2, 1 - b, c - 3])), t);
        [x + 2, 1 - y, z - 3].forEach((want, axis) =>
          expect(moved[axis] ?? NaN).toBeNear(want, 1e-11, 1e-11),
        );
        const back = bendBatten(points.toReversed());
        const again = pointAt(back, (back.knots[back.knots.length - 1] ?? NaN) - t);
        [x, y, z].forEach((want, axis) => expect(again[axis] ?? NaN).toBeNear(want, 1e-11, 1e-11));
      }),
      seeded,
    );
  });
});

test('says what is wrong with its points', () => {
  expect(() => bendBatten([[0, 0, 0]])).toThrow('a batten needs at least 2 points; got 1');
  expect(() =>
    bendBatten([
      [0, 0, 0],
      [1, 1, 1],
      [1, 1, 1],
    ]),
  ).toThrow('points 2 and 3 of a batten are the same place');
  expect(() =>
    bendBatten([
      [0, 0, 0],
      [1, Infinity, 1],
    ]),
  ).toThrow("point 2 of a batten isn't three numbers");
});
