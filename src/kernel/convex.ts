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
  // Asked for thousands of places at a time, so it makes no lists.
  let inside = outline.length > 2;
  let nearest = Infinity;
  for (let i = 0; i < outline.length; i++) {
    const from = outline[i]!;
    const to = outline[i + 1 === outline.length ? 0 : i + 1]!;
    if (turn(from, to, at) < 0) inside = false;
    nearest = Math.min(nearest, distanceToSide(from, to, at));
  }
  return inside ? -nearest : nearest;
}

/** From a place to the nearest point of the line between two others, in their unit. */
export function distanceToSide(from: Vec2, to: Vec2, at: Vec2): number {
  const y = to[0] - from[0];
  const z = to[1] - from[1];
  const squared = y * y + z * z;
  const before = (at[0] - from[0]) * y + (at[1] - from[1]) * z;
  const share = squared === 0 ? 0 : Math.max(0, Math.min(1, before / squared));
  const dy = at[0] - from[0] - share * y;
  const dz = at[1] - from[1] - share * z;
  return Math.sqrt(dy * dy + dz * dz);
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

/**
 * A convex outline, anticlockwise, with each of its sides moved in by a distance of its own; empty where
 * nothing is left.
 *
 * @param by one distance a side, the i-th for the side from the i-th corner to the next
 */
export function narrowed(outline: readonly Vec2[], by: readonly number[]): readonly Vec2[] {
  // A quadrilateral beyond the moved side, as wide and deep as the whole, takes part of a half plane.
  const far = 4 * Math.max(...outline.map((at) => distance2(at, outline[0]!))); // one corner at least
  return outline.reduce<readonly Vec2[]>((left, from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    const length = distance2(from, to);
    if (length === 0 || left.length === 0) return left;
    const along: Vec2 = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const inward: Vec2 = [-along[1], along[0]];
    const moved = (run: number, deep: number): Vec2 => [
      from[0] + run * along[0] + deep * inward[0],
      from[1] + run * along[1] + deep * inward[1],
    ];
    const depth = by[i] ?? 0;
    return common(left, [
      moved(-far, depth),
      moved(far, depth),
      moved(far, depth + far),
      moved(-far, depth + far),
    ]);
  }, outline);
}

/** From where to where the level at a height crosses a convex outline; null where it passes it by. */
export function chordAt(
  outline: readonly Vec2[],
  height: number,
): readonly [from: number, to: number] | null {
  const crossed = outline.flatMap((at, i): number[] => {
    const next = outline[(i + 1) % outline.length]!;
    const [low, high] = at[1] <= next[1] ? [at, next] : [next, at];
    if (height < low[1] || height > high[1]) return [];
    if (high[1] === low[1]) return [at[0], next[0]];
    return [between2(low, high, (height - low[1]) / (high[1] - low[1]))[0]];
  });
  return crossed.length === 0 ? null : [Math.min(...crossed), Math.max(...crossed)];
}
