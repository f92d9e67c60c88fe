import * as fc from 'fast-check';
import Natural from 'cubic-spline';
import { describe, expect, test } from 'vitest';
import { fitSpline, type Spline, splineAt, thirdJumps } from '../../src/kernel';
import type { SplineEnds } from '../../src/kernel';
import { orderOf } from './near';
import { seeded } from './shapes';

/** Integral of the squared second derivative, by Simpson's rule: exact for the square of a straight line. */
function bendingEnergy(spline: Spline): number {
  return spline.knots.slice(1).reduce((sum, to, i) => {
    const from = spline.knots[i]!;
    const bend = (share: number) => splineAt(spline, from + share * (to - from), 2) ** 2;
    return sum + ((to - from) / 6) * (bend(0) + 4 * bend(0.5) + bend(1 - 1e-12));
  }, 0);
}

const natural: SplineEnds<number> = { start: 'natural', end: 'natural' };

describe('three points 0 0, 1 1, 2 0 with natural ends (closed form)', () => {
  const spline = fitSpline([0, 1, 2], [0, 1, 0], natural);
  test('stands 0.6875 high a quarter of the way', () => {
    expect(splineAt(spline, 0.5)).toBeNear(0.6875, 1e-15);
  });
  test('has 6 for the integral of the squared second derivative', () => {
    expect(bendingEnergy(spline)).toBeNear(6, 1e-9);
  });
  test('is bent by a force of 6 EI = 48 EI d / L^3, the beam with a load in the middle', () => {
    // The duck holds the batten up against its spring, so the jump is +.
    expect(thirdJumps(spline)[0] ?? NaN).toBeNear(6, 1e-15);
    expect(splineAt(spline, 1, 2)).toBeNear(-3, 1e-15);
  });
});

test('natural ends miss x^2 at 2 by an eighth: 3.875 (closed form)', () => {
  expect(splineAt(fitSpline([0, 1, 3, 4], [0, 1, 9, 16], natural), 2)).toBeNear(3.875, 1e-15);
  expect(splineAt(fitSpline([0, 1, 3, 4], [0, 1, 9, 16]), 2)).toBeNear(4, 1e-15);
});

describe('against cubic-spline, a general library with natural ends', () => {
  const table = fc
    .array(
      fc.tuple(fc.double({ min: 0.1, max: 2, noNaN: true }), fc.double({ min: -3, max: 3, noNaN: true })),
      {
        minLength: 3,
        maxLength: 12,
      },
    )
    .map((steps) => {
      let x = 0;
      return { knots: steps.map(([step]) => (x += step)), values: steps.map(([, value]) => value) };
    });
  test('agrees at any place of any table', () => {
    fc.assert(
      fc.property(table, fc.double({ min: 0, max: 1, noNaN: true }), ({ knots, values }, share) => {
        const low = knots[0] ?? 0;
        const t = low + share * ((knots[knots.length - 1] ?? 0) - low);
        // Values of order 3 amplified by uneven steps; both solve the same equations in another order.
        expect(splineAt(fitSpline(knots, values, natural), t)).toBeNear(
          new Natural(knots, values).at(t),
          1e-9,
          1e-9,
        );
      }),
      seeded,
    );
  });
});

describe('ends', () => {
  const cubic = (t: number): number => 2 - t + 0.5 * t ** 2 - 0.25 * t ** 3;
  const slope = (t: number): number => -1 + t - 0.75 * t ** 2;
  const knots = [0, 0.7, 1.1, 2.5, 3];
  const values = knots.map(cubic);
  test('not-a-knot gives a cubic back, and so do its end slopes, mixed or not', () => {
    const choices: SplineEnds<number>[] = [
      {},
      { start: { slope: slope(0) }, end: { slope: slope(3) } },
      { start: { slope: slope(0) } },
      { end: { slope: slope(3) } },
    ];
    for (const ends of choices) {
      const spline = fitSpline(knots, values, ends);
      for (const t of [-0.5, 0, 0.3, 0.9, 2, 2.99, 3.5]) {
        expect(splineAt(spline, t)).toBeNear(cubic(t), 1e-13, 1e-13);
        expect(splineAt(spline, t, 1)).toBeNear(slope(t), 1e-12, 1e-12);
        expect(splineAt(spline, t, 2)).toBeNear(1 - 1.5 * t, 1e-11, 1e-11);
        expect(splineAt(spline, t, 3)).toBeNear(-1.5, 1e-10);
      }
    }
  });
  test('two points give a line, three a parabola, and held slopes their Hermite cubic', () => {
    expect(splineAt(fitSpline([0, 2], [1, 5]), 0.5)).toBeNear(2, 1e-15);
    expect(splineAt(fitSpline([0, 1, 3], [0, 1, 9]), 2)).toBeNear(4, 1e-15);
    // y = x^3 on 0..1; and a parabola with slope 0 at its start.
    expect(splineAt(fitSpline([0, 1], [0, 1], { start: { slope: 0 }, end: { slope: 3 } }), 0.5)).toBeNear(
      0.125,
      1e-14,
    );
    expect(splineAt(fitSpline([0, 1], [0, 1], { start: { slope: 0 } }), 0.5)).toBeNear(0.25, 1e-14);
    expect(splineAt(fitSpline([0, 1], [0, 1], { end: { slope: 2 } }), 0.5)).toBeNear(0.25, 1e-14);
    expect(splineAt(fitSpline([0, 1], [0, 1], natural), 0.5)).toBeNear(0.5, 1e-14);
  });
  test('one natural end with three points: a cubic with no moment there (closed form)', () => {
    // y = x (3 - x^2) / 2 has no second derivative at 0 and a single third one.
    const y = (x: number): number => (x * (3 - x * x)) / 2;
    const spline = fitSpline([0, 1, 1.5], [y(0), y(1), y(1.5)], { start: 'natural' });
    expect(splineAt(spline, 0.4)).toBeNear(y(0.4), 1e-14);
    expect(splineAt(spline, 1.3)).toBeNear(y(1.3), 1e-14);
  });
});

describe('convergence on sin over 0..3', () => {
  const worst = (n: number, ends: SplineEnds<number>): number => {
    const knots = Array.from({ length: n + 1 }, (_, i) => (3 * i) / n);
    const spline = fitSpline(knots, knots.map(Math.sin), ends);
    const places = Array.from({ length: 3001 }, (_, i) => i / 1000);
    return Math.max(...places.map((t) => Math.abs(splineAt(spline, t) - Math.sin(t))));
  };
  test('is of fourth order with not-a-knot and with held ends', () => {
    const held = { start: { slope: 1 }, end: { slope: Math.cos(3) } };
    for (const ends of [{}, held]) {
      const order = orderOf(worst(32, ends), worst(64, ends));
      expect(order).toBeGreaterThan(3.8);
      expect(order).toBeLessThan(4.4);
    }
  });
  test('is of second order only where a natural end denies the bend', () => {
    const order = orderOf(worst(32, natural), worst(64, natural));
    expect(order).toBeGreaterThan(1.9);
    expect(order).toBeLessThan(2.1);
  });
});

test('the natural spline bends less than any other curve through the points (Holladay)', () => {
  const knots = [0, 1, 2.5, 3, 4.2];
  const values = [0, 0.5, -0.2, 0.4, 0.1];
  const least = bendingEnergy(fitSpline(knots, values, natural));
  for (const ends of [{}, { start: { slope: 0.5 } }, { end: { slope: -1 } }]) {
    expect(bendingEnergy(fitSpline(knots, values, ends))).toBeGreaterThan(least);
  }
});

test('slope and bend run on over every knot', () => {
  const spline = fitSpline([0, 1, 1.2, 4, 5], [0, 2, -1, 3, 3]);
  for (const t of [1, 1.2, 4]) {
    for (const order of [0, 1, 2] as const) {
      expect(splineAt(spline, t - 1e-9, order)).toBeNear(splineAt(spline, t, order), 1e-6, 1e-6);
    }
  }
});

test('says what is wrong with its points', () => {
  expect(() => fitSpline([0], [1])).toThrow('a spline needs at least 2 points; got 1');
  expect(() => fitSpline([0, 1], [1])).toThrow('a value for each knot; got 1 for 2');
  expect(() => fitSpline([0, 1, 1], [1, 2, 3])).toThrow('must rise; knots 2 and 3 are 1 and 1');
  expect(() => fitSpline([0, 1], [1, NaN])).toThrow("point 2 of a spline isn't a number");
});
