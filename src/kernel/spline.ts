/**
 * How a spline ends. 'not-a-knot': the first two (last two) pieces are one cubic, as if the batten ran
 * on past its last duck. 'natural': no bending moment at the end. Or the slope held to a given value.
 */
export type End<T> = 'not-a-knot' | 'natural' | { readonly slope: T };

/** Both ends; an end not given is not-a-knot. */
export interface SplineEnds<T> {
  readonly start?: End<T>;
  readonly end?: End<T>;
}

/** A piecewise cubic: piece i runs from knot i to i + 1 and has four coefficients of (t - knot i). */
export interface Spline {
  readonly knots: Float64Array;
  readonly coefficients: Float64Array;
}

/**
 * The cubic spline with continuous slope and curvature through values at rising knots: the shape of a
 * thin batten of small slope held at those points.
 *
 * Two points give a line and three a parabola where both ends are not-a-knot. Throws when there are
 * fewer than two points, when lists differ in length, when a number isn't finite, or when knots don't
 * rise. Error against a smooth curve: of order h^4 with not-a-knot or exact end slopes, h^2 near a
 * natural end.
 *
 * Source: C. de Boor, A Practical Guide to Splines, 1978, chapter IV.
 */
export function fitSpline(
  knots: readonly number[] | Float64Array,
  values: readonly number[] | Float64Array,
  ends: SplineEnds<number> = {},
): Spline {
  const n = knots.length;
  if (n < 2) throw new Error(`a spline needs at least 2 points; got ${n}`);
  if (values.length !== n)
    throw new Error(`a spline needs a value for each knot; got ${values.length} for ${n}`);
  const t = Float64Array.from(knots);
  const y = Float64Array.from(values);
  for (let i = 0; i < n; i++) {
    // Indices run inside lists of n numbers here and below.
    if (!Number.isFinite(t[i]) || !Number.isFinite(y[i]))
      throw new Error(`point ${i + 1} of a spline isn't a number`);
    if (i > 0 && !(t[i]! > t[i - 1]!)) {
      throw new Error(`the knots of a spline must rise; knots ${i} and ${i + 1} are ${t[i - 1]} and ${t[i]}`);
    }
  }
  const moments = secondDerivatives(t, y, ends.start ?? 'not-a-knot', ends.end ?? 'not-a-knot');
  const coefficients = new Float64Array(4 * (n - 1));
  for (let i = 0; i < n - 1; i++) {
    const h = t[i + 1]! - t[i]!;
    const m = moments[i]!;
    const next = moments[i + 1]!;
    coefficients[4 * i] = y[i]!;
    coefficients[4 * i + 1] = (y[i + 1]! - y[i]!) / h - (h * (2 * m + next)) / 6;
    coefficients[4 * i + 2] = m / 2;
    coefficients[4 * i + 3] = (next - m) / (6 * h);
  }
  return { knots: t, coefficients };
}

/**
 * Second derivatives at the knots. Each inner knot gives one equation in three neighbours, each end one
 * more; a not-a-knot end is first put into its neighbour's equation, so that what is left stays
 * tridiagonal and diagonally dominant and needs no pivoting.
 */
function secondDerivatives(
  t: Float64Array,
  y: Float64Array,
  start: End<number>,
  end: End<number>,
): Float64Array {
  const n = t.length;
  const moments = new Float64Array(n);
  const openStart = start === 'not-a-knot';
  const openEnd = end === 'not-a-knot';
  // Too few points for two cubics: not-a-knot at both ends means the lowest polynomial through them.
  if (n === 2 && openStart && openEnd) return moments;
  if (n === 3 && openStart && openEnd) {
    const slope0 = (y[1]! - y[0]!) / (t[1]! - t[0]!);
    const slope1 = (y[2]! - y[1]!) / (t[2]! - t[1]!);
    return moments.fill((2 * (slope1 - slope0)) / (t[2]! - t[0]!));
  }
  const lower = new Float64Array(n);
  const middle = new Float64Array(n).fill(1);
  const upper = new Float64Array(n);
  const right = new Float64Array(n);
  for (let i = 1; i < n - 1; i++) {
    const before = t[i]! - t[i - 1]!;
    const after = t[i + 1]! - t[i]!;
    lower[i] = before;
    middle[i] = 2 * (before + after);
    upper[i] = after;
    right[i] = 6 * ((y[i + 1]! - y[i]!) / after - (y[i]! - y[i - 1]!) / before);
  }
  const firstStep = t[1]! - t[0]!;
  const lastStep = t[n - 1]! - t[n - 2]!;
  if (typeof start === 'object') {
    middle[0] = 2 * firstStep;
    upper[0] = firstStep;
    right[0] = 6 * ((y[1]! - y[0]!) / firstStep - start.slope);
  } else if (openStart && n === 2) {
    upper[0] = -1;
  } else if (openStart) {
    const ratio = firstStep / (t[2]! - t[1]!);
    middle[1]! += lower[1]! * (1 + ratio);
    upper[1]! -= lower[1]! * ratio;
    lower[1] = 0;
  }
  if (typeof end === 'object') {
    middle[n - 1] = 2 * lastStep;
    lower[n - 1] = lastStep;
    right[n - 1] = 6 * (end.slope - (y[n - 1]! - y[n - 2]!) / lastStep);
  } else if (openEnd && n === 2) {
    lower[n - 1] = -1;
  } else if (openEnd) {
    const ratio = lastStep / (t[n - 2]! - t[n - 3]!);
    middle[n - 2]! += upper[n - 2]! * (1 + ratio);
    lower[n - 2]! -= upper[n - 2]! * ratio;
    upper[n - 2] = 0;
  }
  for (let i = 1; i < n; i++) {
    const factor = lower[i]! / middle[i - 1]!;
    middle[i]! -= factor * upper[i - 1]!;
    right[i]! -= factor * right[i - 1]!;
  }
  moments[n - 1] = right[n - 1]! / middle[n - 1]!;
  for (let i = n - 2; i >= 0; i--) moments[i] = (right[i]! - upper[i]! * moments[i + 1]!) / middle[i]!;
  if (openStart && n > 2) {
    const ratio = firstStep / (t[2]! - t[1]!);
    moments[0] = (1 + ratio) * moments[1]! - ratio * moments[2]!;
  }
  if (openEnd && n > 2) {
    const ratio = lastStep / (t[n - 2]! - t[n - 3]!);
    moments[n - 1] = (1 + ratio) * moments[n - 2]! - ratio * moments[n - 3]!;
  }
  return moments;
}

/** The piece that holds t; the first or last for a t beyond the ends. */
export function pieceAt(knots: Float64Array, t: number): number {
  let low = 0;
  let high = knots.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    // low < middle <= high, inside the list.
    if (t >= knots[middle]!) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * Value of a spline, or its first, second or third derivative. Beyond the ends the end piece runs on.
 * At a knot the third derivative is that of the piece after it.
 */
export function splineAt(spline: Spline, t: number, derivative: 0 | 1 | 2 | 3 = 0): number {
  const piece = pieceAt(spline.knots, t);
  // A piece found by pieceAt has a knot and four coefficients.
  const s = t - spline.knots[piece]!;
  const c1 = spline.coefficients[4 * piece + 1]!;
  const c2 = spline.coefficients[4 * piece + 2]!;
  const c3 = spline.coefficients[4 * piece + 3]!;
  if (derivative === 0) return spline.coefficients[4 * piece]! + s * (c1 + s * (c2 + s * c3));
  if (derivative === 1) return c1 + s * (2 * c2 + 3 * s * c3);
  if (derivative === 2) return 2 * c2 + 6 * s * c3;
  return 6 * c3;
}

/**
 * Jump of the third derivative at each inner knot (after less before): the force that the duck there puts
 * on a batten of small slope, over its stiffness EI.
 *
 * Source: A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5 (the batten as a beam).
 */
export function thirdJumps(spline: Spline): readonly number[] {
  const jumps: number[] = [];
  for (let i = 1; i < spline.knots.length - 1; i++) {
    // Piece i exists for each inner knot i.
    jumps.push(6 * (spline.coefficients[4 * i + 3]! - spline.coefficients[4 * i - 1]!));
  }
  return jumps;
}
