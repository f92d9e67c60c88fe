import { cross, dot, norm, scale, subtract } from './vec';
import type { Vec3 } from './vec';

/** The two long sides of a strip. */
export type StripEdge = 'first' | 'second';

/** One straight line of a strip, from its first edge to its second. */
export interface Ruling {
  /** Parameter of the end on the first edge and on the second. */
  readonly u: number;
  readonly v: number;
  readonly from: Vec3;
  readonly to: Vec3;
  /** Unit normal of the surface at each end. */
  readonly fromNormal: Vec3;
  readonly toNormal: Vec3;
  /** Angle between the two normals, rad: 0 where the surface is developable. */
  readonly twist: number;
  /** The edge about whose end point this ruling fans together with its neighbours, as part of a cone. */
  readonly fan: StripEdge | null;
  /** Least radius to which the sheet bends across this ruling, m; null where it is flat. */
  readonly radius: number | null;
}

/** A ruling's end as its edge sees it. */
export interface RulingEnd {
  readonly point: Vec3;
  /** Direction of the edge, unit; null where the edge stands still. */
  readonly along: Vec3 | null;
  /** Normal to edge and ruling, unit; null where they make no plane. */
  readonly normal: Vec3 | null;
  /** Curvature of the edge out of the sheet, and within it (+ turns from first edge to second), 1/m. */
  readonly outward: number;
  readonly turn: number;
}

/** Reads a ruling's end from the nine numbers its curve wrote; the ruling is the vector first to second edge. */
export function rulingEnd(curve: Float64Array, ruling: Vec3): RulingEnd {
  // A curve writes point, first and second derivative: nine numbers.
  const point: Vec3 = [curve[0]!, curve[1]!, curve[2]!];
  const first: Vec3 = [curve[3]!, curve[4]!, curve[5]!];
  const second: Vec3 = [curve[6]!, curve[7]!, curve[8]!];
  const speed = norm(first);
  if (speed === 0) return { point, along: null, normal: null, outward: 0, turn: 0 };
  const along = scale(first, 1 / speed);
  const raw = cross(ruling, along);
  const size = norm(raw);
  if (size <= 1e-9 * norm(ruling)) return { point, along, normal: null, outward: 0, turn: 0 };
  const normal = scale(raw, 1 / size);
  return {
    point,
    along,
    normal,
    outward: dot(second, normal) / (speed * speed),
    turn: dot(second, cross(along, normal)) / (speed * speed),
  };
}

/** Puts a ruling together from its two ends; null when neither shows a plane, as where the edges meet. */
export function rulingOf(
  u: number,
  v: number,
  start: RulingEnd,
  stop: RulingEnd,
  fan: StripEdge | null,
): Ruling | null {
  // On a cone about the end of one edge only the other edge shows how the surface lies.
  const fromNormal = (fan === 'first' ? null : start.normal) ?? stop.normal ?? start.normal;
  const toNormal = (fan === 'second' ? null : stop.normal) ?? fromNormal;
  if (!fromNormal || !toNormal) return null;
  const ruling = subtract(stop.point, start.point);
  const bend = Math.max(
    fan === 'first' ? 0 : bendAcross(start, ruling),
    fan === 'second' ? 0 : bendAcross(stop, ruling),
  );
  return {
    u,
    v,
    from: start.point,
    to: stop.point,
    fromNormal,
    toNormal,
    twist: Math.atan2(norm(cross(fromNormal, toNormal)), dot(fromNormal, toNormal)),
    fan,
    // Flatter than any sheet lies, and near what rounding leaves.
    radius: bend * norm(ruling) < 1e-9 ? null : 1 / bend,
  };
}

/** Curvature of the sheet square to a ruling, 1/m, from that of the edge that crosses it slantwise (Euler). */
function bendAcross(end: RulingEnd, ruling: Vec3): number {
  const length = norm(ruling);
  if (!end.along || !end.normal || length === 0) return 0;
  const sine = norm(cross(end.along, ruling)) / length;
  return sine < 1e-3 ? 0 : Math.abs(end.outward) / (sine * sine);
}
