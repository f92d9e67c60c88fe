/** How closed outlines lie in a plane, hollow ones too: their box, a place inside, and how far two stand apart. */
import { distanceToSide } from './convex';
import { boxRound } from './outline';
import { between2, type Vec2 } from './vec';

export interface OutlineBox {
  readonly from: Vec2;
  readonly to: Vec2;
}

/** The upright box round an outline by two of its corners. */
export function outlineBox(outline: readonly Vec2[]): OutlineBox {
  const { left, low, right, high } = boxRound(outline);
  return { from: [left, low], to: [right, high] };
}

/** Whether its corners all turn the same way. */
export function isConvex(outline: readonly Vec2[]): boolean {
  return outline.every((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const c = outline[(i + 2) % outline.length]!;
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]) >= 0;
  });
}

export function isInside(outline: readonly Vec2[], [x, y]: Vec2): boolean {
  let inside = false;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
  });
  return inside;
}

export function toOutline(outline: readonly Vec2[], at: Vec2): number {
  let least = Infinity;
  outline.forEach((a, i) => {
    least = Math.min(least, distanceToSide(a, outline[(i + 1) % outline.length]!, at));
  });
  return least;
}

/** The part of an outline to the left of the line from one place towards another; empty where there is none. */
export function leftOf(outline: readonly Vec2[], from: Vec2, to: Vec2): readonly Vec2[] {
  const off = ([x, y]: Vec2) => (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
  const kept = outline.flatMap((at, i): readonly Vec2[] => {
    const next = outline[(i + 1) % outline.length]!;
    const [here, there] = [off(at), off(next)];
    const crossing = here >= 0 === there >= 0 ? [] : [between2(at, next, here / (here - there))];
    return here >= 0 ? [at, ...crossing] : crossing;
  });
  return kept.length < 3 ? [] : kept;
}

/**
 * How far two outlines stand apart; 0 where they touch, below zero where they lie on one another by more than a
 * tolerance.
 */
export function overlapOrGap(one: readonly Vec2[], other: readonly Vec2[], tolerance: number): number {
  if (reachesInto(one, other, tolerance) || reachesInto(other, one, tolerance)) return -1;
  return Math.min(...one.map((at) => toOutline(other, at)), ...other.map((at) => toOutline(one, at)));
}

/**
 * Whether any of one outline's sides, or its middle, runs inside the other. A side is cut where the other's sides cross
 * or touch it, so that each part lies on one side of the other outline: its middle tells for all of it.
 */
function reachesInto(one: readonly Vec2[], other: readonly Vec2[], tolerance: number): boolean {
  const deep = (at: Vec2) => isInside(other, at) && toOutline(other, at) > tolerance;
  const own = placeInside(one);
  if (own && deep(own)) return true;
  return one.some((a, i) => {
    const b = one[(i + 1) % one.length]!;
    const cuts = [0, ...crossings(a, b, other), 1].toSorted((s, t) => s - t);
    return cuts.some((s, k) => deep(between2(a, b, (s + (cuts[k + 1] ?? 1)) / 2)));
  });
}

/** Shares of the way from a to b at which an outline's sides cross it, or its corners lie nearest. */
function crossings(a: Vec2, b: Vec2, outline: readonly Vec2[]): readonly number[] {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const squared = dx * dx + dy * dy;
  if (squared === 0) return [];
  const off = ([x, y]: Vec2) => dx * (y - a[1]) - dy * (x - a[0]);
  const share = ([x, y]: Vec2) => (dx * (x - a[0]) + dy * (y - a[1])) / squared;
  return outline
    .flatMap((c, i) => {
      const d = outline[(i + 1) % outline.length]!;
      const [here, there] = [off(c), off(d)];
      return here >= 0 === there >= 0 ? [share(c)] : [share(c), share(between2(c, d, here / (here - there)))];
    })
    .filter((at) => at > 0 && at < 1);
}

/** A place inside an outline; null where it has no area. */
export function placeInside(outline: readonly Vec2[]): Vec2 | null {
  const { from, to } = outlineBox(outline);
  const heights = [...new Set(outline.map(([, y]) => y))].toSorted((a, b) => a - b);
  // Midway between two corners' heights that stand well apart no corner is met.
  let [low, high] = [from[1], from[1]];
  heights.forEach((y, i) => {
    const next = heights[i + 1] ?? y;
    if (next - y > high - low) [low, high] = [y, next];
  });
  const y = (low + high) / 2;
  if (!(high > low) || !(to[0] > from[0])) return null;
  const met = outline
    .flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      return a[1] > y === b[1] > y ? [] : [a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])];
    })
    .toSorted((a, b) => a - b);
  const [left, right] = [met[0], met[1]];
  return left === undefined || right === undefined ? null : [(left + right) / 2, y];
}
