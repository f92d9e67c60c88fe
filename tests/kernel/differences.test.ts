import { expect, test } from 'vitest';
import { differences, dividedDifferences, missWhenLifted } from '../../src/kernel';
import './near';

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

test('a point 0.1 proud of a cubic misses by 0.1 when its duck is lifted', () => {
  expect(missWhenLifted([1, 2, 3, 4, 5], [1, 8, 27.1, 64, 125], 2)).toBeNear(0.1, 1e-12);
});

test('on even steps the miss is the five-point rule (1, -4, 6, -4, 1) / 6', () => {
  const y = [0.3, 1.1, 0.2, 2.4, 1.9] as const;
  const want = (y[0] - 4 * y[1] + 6 * y[2] - 4 * y[3] + y[4]) / 6;
  expect(missWhenLifted([0, 1, 2, 3, 4], y, 2)).toBeNear(want, 1e-13);
});

test('natural ends blame a fair point of x^2: 4 stands 0.125 proud', () => {
  const ends = { start: 'natural', end: 'natural' } as const;
  expect(missWhenLifted([0, 1, 2, 3, 4], [0, 1, 4, 9, 16], 2, ends)).toBeNear(0.125, 1e-13);
  expect(missWhenLifted([0, 1, 2, 3, 4], [0, 1, 4, 9, 16], 0)).toBeNear(0, 0, 1e-13);
});

test('lifting needs a point, and two to be left', () => {
  expect(() => missWhenLifted([0, 1, 2], [0, 1, 2], 3)).toThrow('no point 4 to lift');
  expect(() => missWhenLifted([0, 1], [0, 1], 0)).toThrow('at least 3 points; got 2');
});
