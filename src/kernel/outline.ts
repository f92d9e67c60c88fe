/** Closed outlines in a plane: their area, drawn out beyond their sides, and the part that lies in a band. */
import { distance2, type Vec2 } from './vec';

/** Area inside a closed outline, m2: + where it runs anticlockwise. */
export function outlineArea(outline: readonly Vec2[]): number {
  let twice = 0;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    twice += a[0] * b[1] - a[1] * b[0];
  });
  return twice / 2;
}

/** An outline, and for each side from one point to the next how far it is to be drawn out. */
export interface Sides {
  readonly points: readonly Vec2[];
  /** m, 0 or more; one a point, of the side that begins there. */
  readonly out: readonly number[];
}

/** Beyond this many times the distance asked for, a corner is cut off blunt. */
const SHARPEST = 2;

/**
 * The outline with each side moved outward by its own distance; sharp corners are cut off blunt. The outline runs
 * anticlockwise, and bends more gently than what is added to it.
 *
 * A polyline drawn through points of a curve is drawn out as the curve would be, to second order in its pieces.
 */
export function drawnOut(given: Sides): readonly Vec2[] {
  const { points, out } = withoutRepeats(given);
  const n = points.length;
  if (n < 3) throw new Error('an outline of fewer than three corners has no sides to draw out');
  const sides = points.map((corner, i) => sideOf(corner, points[(i + 1) % n]!, out[i]!)); // indices run round the list
  return points.flatMap((corner, i) => drawnCorner(corner, sides[(i + n - 1) % n]!, sides[i]!));
}

interface Side {
  readonly along: Vec2;
  readonly out: number;
}

function sideOf(from: Vec2, to: Vec2, out: number): Side {
  const length = distance2(from, to);
  return { along: [(to[0] - from[0]) / length, (to[1] - from[1]) / length], out };
}

/** Where two moved sides meet; two points where that would be far off. */
function drawnCorner([x, y]: Vec2, before: Side, after: Side): readonly Vec2[] {
  const turn = before.along[0] * after.along[1] - before.along[1] * after.along[0];
  const moved = ({ along, out }: Side, on: number): Vec2 => [
    x + out * along[1] + on * along[0],
    y - out * along[0] + on * along[1],
  ];
  const straight = before.along[0] * after.along[0] + before.along[1] * after.along[1];
  if (Math.abs(turn) < 1e-9)
    return before.out === after.out ? [moved(before, 0)] : [moved(before, 0), moved(after, 0)];
  // From the corner to where they meet, along the first.
  const on = (after.out - before.out * straight) / turn;
  const reach = Math.hypot(on, before.out);
  const most = SHARPEST * Math.max(before.out, after.out);
  if (reach <= most) return [moved(before, on)];
  if (turn < 0) return [moved(before, 0), moved(after, 0)];
  const run = Math.sqrt(Math.max(0, most ** 2 - Math.max(before.out, after.out) ** 2)) / 2;
  return [moved(before, run), moved(after, -run)];
}

/** Nearer than this two points are one, m. */
const ONE = 1e-7;

function withoutRepeats({ points, out }: Sides): Sides {
  const kept = points.flatMap((point, i) =>
    distance2(point, points[(i + 1) % points.length]!) > ONE ? [i] : [],
  );
  return { points: kept.map((i) => points[i]!), out: kept.map((i) => out[i]!) };
}

/** The part of an outline between two levels. Where it falls apart, the parts hang together by lines along a level. */
export function withinBand(outline: readonly Vec2[], low: number, high: number): readonly Vec2[] {
  return clipped(
    clipped(outline, ([, y]) => y - low),
    ([, y]) => high - y,
  );
}

/** Sutherland and Hodgman, 1974: one straight cut. */
function clipped(outline: readonly Vec2[], inside: (point: Vec2) => number): readonly Vec2[] {
  const kept: Vec2[] = [];
  for (const [i, from] of outline.entries()) {
    const to = outline[(i + 1) % outline.length]!;
    const a = inside(from);
    const b = inside(to);
    if (a >= 0) kept.push(from);
    if (a > 0 === b > 0 || a === 0 || b === 0) continue;
    const share = a / (a - b);
    kept.push([from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]);
  }
  return kept;
}

/** The upright box round an outline. */
export function boxRound(outline: readonly Vec2[]): {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
} {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const point of outline) {
    left = Math.min(left, point[0]);
    right = Math.max(right, point[0]);
    low = Math.min(low, point[1]);
    high = Math.max(high, point[1]);
  }
  return { left, right, low, high };
}
