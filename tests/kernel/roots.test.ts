import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findMinimum, findRoot } from '../../src/kernel';
import './near';
import { seeded } from './shapes';

describe('root', () => {
  test('of cos t = t is the known constant 0.7390851332151607', () => {
    expect(findRoot((t) => Math.cos(t) - t, 0, 1) ?? NaN).toBeNear(0.7390851332151607, 4e-16);
  });

  test('of a flat cubic and of a jump, which no slope leads to', () => {
    // Rounding hides the cubic within the cube root of the smallest normal number of its root.
    expect(findRoot((t) => (t - 1.25) ** 3, 0, 3) ?? NaN).toBeNear(1.25, 0, 1e-5);
    expect(findRoot((t) => (t < Math.SQRT2 ? -1 : 1), 0, 3) ?? NaN).toBeNear(Math.SQRT2, 4e-16);
  });

  test('is none when both ends have one sign, and a bound when it lies there', () => {
    expect(findRoot((t) => t * t + 1, -1, 1)).toBeNull();
    expect(findRoot((t) => t, 0, 1)).toBe(0);
    expect(findRoot((t) => t - 1, 0, 1)).toBe(1);
  });

  test('lies between the bounds for any cubic, in either order, within few evaluations', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        (at, k) => {
          let calls = 0;
          const f = (t: number): number => {
            calls++;
            return (t - at) * (k + (t - at) ** 2);
          };
          expect(findRoot(f, -6, 7) ?? NaN).toBeNear(at, 1e-14, 1e-14);
          expect(calls).toBeLessThan(30);
          expect(findRoot(f, 7, -6) ?? NaN).toBeNear(at, 1e-14, 1e-14);
        },
      ),
      seeded,
    );
  });
});

describe('minimum', () => {
  test('of a parabola, of t - ln t, and at a bound', () => {
    const found = findMinimum((t) => (t - 0.3) ** 2 + 2, 0, 1);
    expect(found.at).toBeNear(0.3, 0, 2e-8);
    expect(found.value).toBe(2);
    // The square root of the rounding is as near as a minimum shows.
    expect(findMinimum((t) => t - Math.log(t), 0.1, 7).at).toBeNear(1, 0, 2e-7);
    expect(findMinimum((t) => t, 2, 5).at).toBeNear(2, 0, 1e-7);
  });

  test('never lies outside the bounds or above either end', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (w, p) => {
          const f = (t: number): number => Math.sin(w * t + p);
          const found = findMinimum(f, 0, 1);
          expect(found.at).toBeGreaterThanOrEqual(0);
          expect(found.at).toBeLessThanOrEqual(1);
          expect(found.value).toBe(f(found.at));
        },
      ),
      seeded,
    );
  });
});
