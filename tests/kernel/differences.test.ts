import Natural from 'cubic-spline';
import * as fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { expect, test } from 'vitest';
import { differences, dividedDifferences, missWhenLifted } from '../../src/kernel';
import './near';
import { seeded } from './shapes';

test('third differences of the cubes are 6 (closed form)', () => {
  expect(differences([0, 1, 8, 27, 64], 3)).toStrictEqual([6, 6]);
});

test('an error of 0.1 shows as +1, -3, +3, -1 times itself in third differences', () => {
  const got = differences([0, 1, 8, 27.1, 64, 125, 216], 3);
  expect(got).toHaveLength(4);
  [6.1, 5.7, 6.3, 5.9].forEach((want, i) => expect(got[i] ?? NaN).toBeNear(want, 1e-12));
});

test('divided differences of a cubic give its leading coefficient over any steps', () => {
  const knots = [0, 0.4, 1.5, 1.7, 3];
  const got = dividedDifferences(
    knots,
    knots.map((x) => 4 - x + 2.5 * x ** 3),
    3,
  );
  expect(got).toHaveLength(2);
  for (const value of got) expect(value).toBeNear(2.5, 1e-12);
  expect(() => dividedDifferences([0, 1], [1], 1)).toThrow('a value for each knot');
});

test('a free batten on even steps misses by the five-point rule (3, -11, 16, -11, 3) / 16 (closed form)', () => {
  // Two moments stand at the inner ducks; their sum is 3/4 of y0 - y1 - y3 + y4, by the three-moment equation.
  const y = [0.3, 1.1, 0.2, 2.4, 1.9] as const;
  const want = (3 * y[0] - 11 * y[1] + 16 * y[2] - 11 * y[3] + 3 * y[4]) / 16;
  expect(missWhenLifted([0, 1, 2, 3, 4], y, 2)).toBeNear(want, 1e-13);
  // Its ends are free: a fair point of x^2 stands an eighth proud.
  expect(missWhenLifted([0, 1, 2, 3, 4], [0, 1, 4, 9, 16], 2)).toBeNear(0.125, 1e-13);
});

test('past its last duck a free batten runs on straight', () => {
  // On supports 1, 2, 3 a free batten through 1, 4, 9 has the slope (y2 - y1) - M/6 at its end, M = 3/2 (y1 - 2 y2 + y3).
  expect(missWhenLifted([0, 1, 2, 3], [0, 1, 4, 9], 0)).toBeNear(0 - (1 - (3 - 3 / 6)), 1e-13);
  expect(missWhenLifted([0, 1, 2, 3], [9, 4, 1, 0], 3)).toBeNear(0 - (1 - (3 - 3 / 6)), 1e-13);
});

test('cubic-spline, a general library with natural ends, has a lifted point where we have it', () => {
  const bay = fc.record({
    step: fc.double({ min: 0.3, max: 1.3, noNaN: true }),
    off: fc.double({ min: 0, max: 0.2, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(bay, { minLength: 5, maxLength: 9 }), (bays) => {
      const knots = bays.map((_, i) => bays.slice(0, i + 1).reduce((sum, { step }) => sum + step, 0));
      const values = knots.map((x, i) => 0.1 * x ** 2 + bays[i]!.off);
      for (let i = 1; i < knots.length - 1; i++) {
        const others = new Natural(knots.toSpliced(i, 1), values.toSpliced(i, 1));
        expect(missWhenLifted(knots, values, i)).toBeNear(values[i]! - others.at(knots[i]!), 1e-9, 1e-10);
      }
    }),
    seeded,
  );
});

test('so has the natural spline’s matrix, solved by ml-matrix', () => {
  const knots = [-0.16, 0.8, 1.6, 2.4, 3.2, 4, 5.2];
  const values = [0.5, 0.727, 0.801, 0.865, 0.75, 0.512, 0];
  const expected = knots.map(
    (x, i) => values[i]! - byMatrix(knots.toSpliced(i, 1), values.toSpliced(i, 1), x),
  );
  for (let i = 1; i < 6; i++) expect(missWhenLifted(knots, values, i)).toBeNear(expected[i]!, 1e-10);
});

/** The natural spline at x, inside its knots: its moments from the full three-moment matrix. */
function byMatrix(knots: readonly number[], values: readonly number[], x: number): number {
  const n = knots.length;
  const h = (i: number) => knots[i + 1]! - knots[i]!;
  const slope = (i: number) => (values[i + 1]! - values[i]!) / h(i);
  const isEnd = (i: number) => i === 0 || i === n - 1;
  const entry = (i: number, j: number) => {
    if (isEnd(i) || i === j) return i === j ? (isEnd(i) ? 1 : 2 * (h(i - 1) + h(i))) : 0;
    if (j === i - 1) return h(j);
    return j === i + 1 ? h(i) : 0;
  };
  const matrix = knots.map((_, i) => knots.map((__, j) => entry(i, j)));
  const right = knots.map((_, i) => [isEnd(i) ? 0 : 6 * (slope(i) - slope(i - 1))]);
  const moments = solve(new Matrix(matrix), new Matrix(right)).to1DArray();
  const i = Math.max(
    knots.findLastIndex((knot) => knot <= x),
    0,
  );
  const [a, b] = [knots[i + 1]! - x, x - knots[i]!];
  const line = (values[i]! * a + values[i + 1]! * b) / h(i);
  const bow = (m: number, part: number) => (m * (part ** 3 / h(i) - part * h(i))) / 6;
  return line + bow(moments[i]!, a) + bow(moments[i + 1]!, b);
}

test('lifting needs a point, and two to be left', () => {
  expect(() => missWhenLifted([0, 1, 2], [0, 1, 2], 3)).toThrow('no point 4 to lift');
  expect(() => missWhenLifted([0, 1], [0, 1], 0)).toThrow('at least 3 points; got 2');
});
