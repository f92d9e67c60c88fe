import { fitSpline, splineAt } from './spline';

/** Differences of the given order: each the later number less the one before, done over again. */
export function differences(values: readonly number[], order: number): readonly number[] {
  let row = values;
  // i + 1 < row.length, so both are there.
  for (let k = 0; k < order; k++) row = row.slice(0, -1).map((value, i) => row[i + 1]! - value);
  return row;
}

/**
 * Divided differences of the given order at rising knots of any spacing. Times the factorial of the order
 * they tend to that derivative; over equal steps h they are the plain differences / (h^order * order!).
 */
export function dividedDifferences(
  knots: readonly number[],
  values: readonly number[],
  order: number,
): readonly number[] {
  if (knots.length !== values.length) {
    throw new Error(
      `divided differences need a value for each knot; got ${values.length} for ${knots.length}`,
    );
  }
  let row = values;
  for (let k = 1; k <= order; k++) {
    // i + k < knots.length as each row is one shorter than the last.
    row = row.slice(0, -1).map((value, i) => (row[i + 1]! - value) / (knots[i + k]! - knots[i]!));
  }
  return row;
}

/**
 * How far one point stands from the batten through all the others, when its duck is lifted: + means that it
 * stands proud. The batten is a real one, its ends free: beyond its first and last duck it runs on straight, so a
 * point at an end stands off a straight line however fair the curve is. Needs at least three points.
 */
export function missWhenLifted(knots: readonly number[], values: readonly number[], index: number): number {
  const at = knots[index];
  const value = values[index];
  if (at === undefined || value === undefined) throw new Error(`there is no point ${index + 1} to lift`);
  if (knots.length < 3) throw new Error(`lifting a duck needs at least 3 points; got ${knots.length}`);
  const others = fitSpline(knots.toSpliced(index, 1), values.toSpliced(index, 1), {
    start: 'natural',
    end: 'natural',
  });
  const nearest = Math.min(Math.max(at, others.knots[0]!), others.knots.at(-1)!);
  return value - splineAt(others, nearest) - splineAt(others, nearest, 1) * (at - nearest);
}
