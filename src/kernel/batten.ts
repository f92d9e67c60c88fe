import { integrateTo } from './quadrature';
import { fitSpline, splineAt, thirdJumps } from './spline';
import type { End, SplineEnds, Spline } from './spline';
import { add, cross, dot, norm, scale } from './vec';
import type { Vec3 } from './vec';

/** A batten bent through points in space: a cubic in each coordinate over the chord length along the points. */
export interface Batten {
  readonly points: readonly Vec3[];
  /** Chord length from the first point to each point, m: the parameter of the curve. */
  readonly knots: Float64Array;
  readonly x: Spline;
  readonly y: Spline;
  readonly z: Spline;
  /** Length along the curve from its start to each point, m. */
  readonly lengths: Float64Array;
  /** Length of the whole curve, m. */
  readonly length: number;
}

/**
 * Bends a batten through points, m: position, direction and curvature run on without a break.
 *
 * Two points give a straight line, three a parabola, if the ends are free ('not-a-knot', as they are unless
 * told otherwise). A clamped end takes the derivative by chord length, a vector of length near 1. Throws
 * when there are fewer than two points, when one isn't finite, or when two neighbours coincide.
 */
export function bendBatten(points: readonly Vec3[], ends: SplineEnds<Vec3> = {}): Batten {
  const n = points.length;
  if (n < 2) throw new Error(`a batten needs at least 2 points; got ${n}`);
  const knots = new Float64Array(n);
  points.forEach((point, i) => {
    if (!point.every(Number.isFinite)) throw new Error(`point ${i + 1} of a batten isn't three numbers`);
    const before = points[i - 1];
    if (!before) return;
    const chord = norm([point[0] - before[0], point[1] - before[1], point[2] - before[2]]);
    // Below this the parameter itself is lost in rounding.
    if (chord <= 1e-12 * norm(point))
      throw new Error(`points ${i} and ${i + 1} of a batten are the same place`);
    knots[i] = knots[i - 1]! + chord;
  });
  const along = (axis: 0 | 1 | 2): Spline =>
    fitSpline(
      knots,
      points.map((point) => point[axis]),
      { start: endAlong(ends.start, axis), end: endAlong(ends.end, axis) },
    );
  const curve = { points, knots, x: along(0), y: along(1), z: along(2) };
  const lengths = new Float64Array(n);
  for (let i = 1; i < n; i++)
    lengths[i] = lengths[i - 1]! + lengthBetween(curve, i - 1, knots[i - 1]!, knots[i]!);
  return { ...curve, lengths, length: lengths[n - 1]! };
}

function endAlong(end: End<Vec3> | undefined, axis: 0 | 1 | 2): End<number> {
  return typeof end === 'object' ? { slope: end.slope[axis] } : (end ?? 'not-a-knot');
}

/** The point at a parameter (chord length), m; beyond the ends the curve runs on. */
export function pointAt(batten: Batten, t: number): Vec3 {
  return [splineAt(batten.x, t), splineAt(batten.y, t), splineAt(batten.z, t)];
}

/** First, second or third derivative by the parameter; the first points along the batten. */
export function derivativeAt(batten: Batten, t: number, order: 1 | 2 | 3): Vec3 {
  return [splineAt(batten.x, t, order), splineAt(batten.y, t, order), splineAt(batten.z, t, order)];
}

/** Curvature in space, 1/m: a vector towards the centre of the bend, and its size. Exact for the curve. */
export function curvatureAt(
  batten: Batten,
  t: number,
): { readonly vector: Vec3; readonly magnitude: number } {
  const first = derivativeAt(batten, t, 1);
  const second = derivativeAt(batten, t, 2);
  const speed2 = dot(first, first);
  if (speed2 === 0) return { vector: [0, 0, 0], magnitude: 0 };
  // What is left of the second derivative across the curve, per unit of length along it.
  const across = add(second, scale(first, -dot(first, second) / speed2));
  return { vector: scale(across, 1 / speed2), magnitude: norm(cross(first, second)) / speed2 ** 1.5 };
}

/** A view of the lines plan: plan looks down (x, y), profile from the side (x, z), body along the boat (y, z). */
export type View = 'plan' | 'profile' | 'body';

const axesOf = { plan: [0, 1], profile: [0, 2], body: [1, 2] } as const;

/**
 * Curvature of the batten as drawn in one view, 1/m, signed: + when it turns from the view's first axis
 * towards its second (a sheer with spring, x forward and z up, is + in profile). 0 where the batten is seen
 * end on.
 */
export function viewCurvature(batten: Batten, t: number, view: View): number {
  const [a, b] = axesOf[view];
  const first = derivativeAt(batten, t, 1);
  const second = derivativeAt(batten, t, 2);
  const speed = Math.hypot(first[a], first[b]);
  if (speed === 0) return 0;
  return (first[a] * second[b] - first[b] * second[a]) / speed ** 3;
}

/** Jump of the third derivative at each inner point: the force of the duck there on the batten, over its EI, 1/m2. */
export function duckJumps(batten: Batten): readonly Vec3[] {
  const [x, y, z] = [batten.x, batten.y, batten.z].map(thirdJumps);
  // Three lists of one number an inner point.
  return x!.map((jump, i) => [jump, y![i]!, z![i]!]);
}

/**
 * What each duck does to a batten with free ends, over its EI, 1/m2: the jump of the third derivative, at the ends from
 * the nothing that the batten carries beyond. They balance, and so do their moments.
 */
export function pushesOn(batten: Batten): readonly Vec3[] {
  const first = derivativeAt(batten, batten.knots[0]!, 3);
  const last = derivativeAt(batten, batten.knots.at(-1)!, 3);
  return [first, ...duckJumps(batten), scale(last, -1)];
}

/** Length along one cubic piece; relative error below 1e-10. */
export function lengthBetween(
  curve: Pick<Batten, 'knots' | 'x' | 'y' | 'z'>,
  piece: number,
  from: number,
  to: number,
): number {
  const start = curve.knots[piece]!;
  const slope = (spline: Spline, s: number): number => {
    const c = spline.coefficients;
    return c[4 * piece + 1]! + s * (2 * c[4 * piece + 2]! + 3 * s * c[4 * piece + 3]!);
  };
  const speed = (s: number): number => Math.hypot(slope(curve.x, s), slope(curve.y, s), slope(curve.z, s));
  return integrateTo(speed, from - start, to - start);
}
