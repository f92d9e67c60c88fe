import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bendBatten, distance, lengthTo, parameterAtLength, parameterAtX, pointAt } from '../../src/kernel';
import type { Batten, Vec3 } from '../../src/kernel';
import './near';
import { seeded } from './shapes';

const sheer: Vec3[] = [
  [-0.16, 0.5, 0.735],
  [0.8, 0.73, 0.67],
  [2.4, 0.86, 0.63],
  [4, 0.51, 0.79],
  [5.2, 0, 0.98],
];

function end(batten: Batten): number {
  return batten.knots[batten.knots.length - 1] ?? NaN;
}

test('a parabola y = x^2 / 2 from 0 to 2 has length (x s + asinh x) / 2 (closed form)', () => {
  // Over chord length the batten through a parabola's points is another curve, so the points are close.
  const points = Array.from({ length: 201 }, (_, i): Vec3 => [i / 100, (i / 100) ** 2 / 2, 0]);
  const want = (2 * Math.sqrt(5) + Math.asinh(2)) / 2;
  expect(bendBatten(points).length).toBeNear(want, 1e-10);
});

test('length along a curve agrees with 40 000 short chords, to the chords own error', () => {
  const batten = bendBatten(sheer);
  const chords = (n: number): number => {
    let sum = 0;
    for (let i = 0; i < n; i++) {
      sum += distance(pointAt(batten, (i * end(batten)) / n), pointAt(batten, ((i + 1) * end(batten)) / n));
    }
    return sum;
  };
  // Chords err by the square of the step; two of them together by the fourth power.
  expect(batten.length).toBeNear((4 * chords(40_000) - chords(20_000)) / 3, 1e-10);
  expect(lengthTo(batten, end(batten))).toBeNear(batten.length, 1e-14);
  expect(lengthTo(batten, 0)).toBe(0);
});

describe('any place', () => {
  const batten = bendBatten(sheer);
  test('is found again from its length and from its x', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const t = share * end(batten);
        expect(parameterAtLength(batten, lengthTo(batten, t))).toBeNear(t, 1e-12, 1e-12);
        expect(parameterAtX(batten, pointAt(batten, t)[0]) ?? NaN).toBeNear(t, 1e-12, 1e-12);
      }),
      seeded,
    );
  });
  test('lies in order of length', () => {
    const places = [0, 1, 2, 3, 4, 5].map((s) => parameterAtLength(batten, s));
    expect(places).toStrictEqual(places.toSorted((a, b) => a - b));
  });
});

describe('beyond the ends', () => {
  const batten = bendBatten(sheer);
  test('a length is held to the end', () => {
    expect(parameterAtLength(batten, -1)).toBe(0);
    expect(parameterAtLength(batten, 99)).toBe(end(batten));
  });
  test('an x that is not reached has no place', () => {
    expect(parameterAtX(batten, -0.2)).toBeNull();
    expect(parameterAtX(batten, 5.3)).toBeNull();
    expect(parameterAtX(batten, 5.2)).toBe(end(batten));
    expect(parameterAtX(batten, -0.16)).toBe(0);
  });
});

test('x is found on a batten that runs aft as well', () => {
  const batten = bendBatten(sheer.toReversed());
  expect(pointAt(batten, parameterAtX(batten, 1.234) ?? NaN)[0]).toBeNear(1.234, 1e-14);
});
