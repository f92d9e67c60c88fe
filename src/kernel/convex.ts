/** Convex outlines in a plane: round a set of points, how far a place is from one, and one drawn wider. */
import { between2, distance2, type Vec2 } from './vec';

/**
 * The tightest convex outline round some points, anticlockwise; points inside it and along its sides are left
 * out. Two points where all lie in one line, one where all are the same.
 *
 * Andrew's monotone chain (1979).
 *
 * @throws where there are no points
 */
export function convexOutline(points: readonly Vec2[]): readonly Vec2[] {
  if (points.length === 0) throw new Error('there are no points to draw an outline round');
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  const lower = chain(sorted);
  const upper = chain(sorted.toReversed());
  // Each chain ends where the other begins.
  const whole = [...lower.slice(0, -1), ...upper.slice(0, -1)];
  return whole.length > 0 ? whole : [sorted[0]!];
}

/** From the first point to the last, turning left only. */
function chain(points: readonly Vec2[]): Vec2[] {
  const kept: Vec2[] = [];
  for (const point of points) {
    while (kept.length > 1 && turn(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
    if (kept.length !== 1 || distance2(kept[0]!, point) > 0) kept.push(point);
  }
  return kept;
}

const turn = (a: Vec2, b: Vec2, c: Vec2): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** How far a place lies outside a convex outline that runs anticlockwise; - inside it: how deep. */
export function clearOf(outline: readonly Vec2[], at: Vec2): number {
  const sides = outline.map((from, i) => [from, outline[(i + 1) % outline.length]!] as const);
  const inside = outline.length > 2 && sides.every(([from, to]) => turn(from, to, at) >= 0);
  const nearest = Math.min(...sides.map(([from, to]) => distanceToSide(from, to, at)));
  return inside ? -nearest : nearest;
}

function distanceToSide(from: Vec2, to: Vec2, at: Vec2): number {
  const along: Vec2 = [to[0] - from[0], to[1] - from[1]];
  const squared = along[0] ** 2 + along[1] ** 2;
  const before = (at[0] - from[0]) * along[0] + (at[1] - from[1]) * along[1];
  const share = squared === 0 ? 0 : Math.max(0, Math.min(1, before / squared));
  return distance2([from[0] + share * along[0], from[1] + share * along[1]], at);
}

/** Steps in which a widened outline turns a full circle; its corners lie on the arc. */
const STEPS = 48;

/** A convex outline with a margin all round: its sides moved out, its corners rounded. */
export function widened(outline: readonly Vec2[], by: number): readonly Vec2[] {
  const rim = Array.from({ length: STEPS }, (_, i): Vec2 => {
    const way = (i / STEPS) * 2 * Math.PI;
    return [by * Math.cos(way), by * Math.sin(way)];
  });
  const sides = outline.flatMap((from, i): Vec2[] => {
    const to = outline[(i + 1) % outline.length]!;
    const length = distance2(from, to);
    if (length === 0) return [];
    const out: Vec2 = [(by * (to[1] - from[1])) / length, (by * (from[0] - to[0])) / length];
    return [from, to].map(([y, z]): Vec2 => [y + out[0], z + out[1]]);
  });
  return convexOutline([
    ...outline.flatMap(([y, z]) => rim.map(([dy, dz]): Vec2 => [y + dy, z + dz])),
    ...sides,
  ]);
}

/**
 * What two convex outlines have in common, anticlockwise; empty where they have no area in common.
 *
 * Sutherland and Hodgman's clipping (1974): cut along each side of the second in turn.
 */
export function common(one: readonly Vec2[], other: readonly Vec2[]): readonly Vec2[] {
  const left = other.reduce<readonly Vec2[]>((kept, from, i) => {
    const to = other[(i + 1) % other.length]!;
    return kept.flatMap((at, k): readonly Vec2[] => {
      const next = kept[(k + 1) % kept.length]!;
      const [here, there] = [turn(from, to, at), turn(from, to, next)];
      const crossing = here >= 0 === there >= 0 ? [] : [between2(at, next, here / (here - there))];
      return here >= 0 ? [at, ...crossing] : crossing;
    });
  }, one);
  return left.length < 3 ? [] : left;
}
