import { bowed } from './fine-edge';
import { findRoot } from './roots';
import type { StripEdge } from './ruling';
import type { Strip } from './strip';
import { add, between, between2, cross, distance, dot, scale, subtract, unit } from './vec';
import type { Vec2, Vec3 } from './vec';

/** A point of a strip cut by a transverse plane: in space, on the flat sheet, and how the surface faces there. */
export interface SectionPoint {
  /** Place among the rulings: 3.5 is halfway between the rulings 3 and 4. */
  readonly ruling: number;
  /** Place along the ruling: 0 on the first edge, 1 on the second. */
  readonly share: number;
  readonly point: Vec3;
  readonly flat: Vec2;
  readonly normal: Vec3;
}

/**
 * The line in which the plane x = const cuts a strip, from its first edge to its second: one point where it
 * crosses each edge, or the strip's end line, and one on each ruling between. Points lie on the ruled
 * surface exactly. Empty where the plane misses the strip. For edges that run one way along x.
 */
export function stripSection(strip: Strip, x: number): readonly SectionPoint[] {
  const first = crossing(strip, 'first', x);
  const second = crossing(strip, 'second', x);
  const points: SectionPoint[] = [];
  strip.rulings.forEach((ruling, k) => {
    const before = ruling.from[0] - x;
    const after = ruling.to[0] - x;
    if (before === 0 || after === 0 || before > 0 === after > 0) return;
    const share = before / (before - after);
    points.push({
      ruling: k,
      share,
      point: between(ruling.from, ruling.to, share),
      // The sheet has a point a ruling on each edge.
      flat: between2(strip.flat.first[k]!, strip.flat.second[k]!, share),
      normal: unit(between(ruling.fromNormal, ruling.toNormal, share)),
    });
  });
  // Rulings cross the plane one after another, so along the section their order is the rulings' own or its reverse.
  const a = points[0];
  const b = points[points.length - 1];
  const startsFirst = first
    ? first.ruling <= (a?.ruling ?? Infinity)
    : second
      ? second.ruling >= (b?.ruling ?? 0)
      : true;
  if (!startsFirst) points.reverse();
  if (first) points.unshift(first);
  if (second) points.push(second);
  return points.length < 2 ? [] : points;
}

/** How far the sheet stands off the straight line between its edges in a transverse plane. */
export interface Crown {
  /** The greatest distance from that line, m; + outward. */
  readonly crown: number;
  readonly point: Vec3;
  /** Length of the straight line, m. */
  readonly chord: number;
}

/** The crown a frame needs at x where its straight side would miss the surface; null unless both edges reach x. */
export function crownAt(strip: Strip, x: number): Crown | null {
  const section = stripSection(strip, x);
  const a = section[0];
  const b = section[section.length - 1];
  if (!a || !b || a.share !== 0 || b.share !== 1) return null;
  const chord = distance(a.point, b.point);
  if (chord === 0) return null;
  const along = scale(subtract(b.point, a.point), 1 / chord);
  // Square to the chord within the plane x = const, on the side the surface faces.
  const square = cross(along, [1, 0, 0]);
  const outward = dot(square, a.normal) + dot(square, b.normal) < 0 ? scale(square, -1) : square;
  const heights = section.map(({ point }) => dot(subtract(point, a.point), outward));
  const places = section.map(({ point }) => dot(subtract(point, a.point), along));
  const most = heights.reduce(
    (best, height, i) => (Math.abs(height) > Math.abs(heights[best]!) ? i : best),
    0,
  );
  const [place, crown] = crest(places, heights, most);
  return { crown, point: add(a.point, add(scale(along, place), scale(outward, crown))), chord };
}

/** Crest of the parabola through a point and its two neighbours; the point itself at an end or where they line up. */
function crest(xs: readonly number[], ys: readonly number[], i: number): readonly [x: number, y: number] {
  const [x0 = NaN, x1 = NaN, x2 = NaN] = xs.slice(i - 1, i + 2);
  const [y0 = NaN, y1 = NaN, y2 = NaN] = ys.slice(i - 1, i + 2);
  const before = (y1 - y0) / (x1 - x0);
  const bend = ((y2 - y1) / (x2 - x1) - before) / (x2 - x0);
  const at = (x0 + x1) / 2 - before / (2 * bend);
  // Written so that a NaN, from a neighbour that isn't there or stands above another, is outside too.
  if (!(i > 0 && at > Math.min(x0, x2) && at < Math.max(x0, x2))) return [xs[i]!, ys[i]!];
  return [at, y0 + (at - x0) * (before + bend * (at - x1))];
}

/** Unit normal of a strip at a parameter of one of its edges, held to the edge's ends. */
export function normalOnEdge(strip: Strip, edge: StripEdge, parameter: number): Vec3 {
  return onEdge(strip, edge, parameter).normal;
}

function crossing(strip: Strip, edge: StripEdge, x: number): SectionPoint | null {
  const curve = strip[edge];
  const out = new Float64Array(9);
  const miss = (t: number): number => {
    curve.write(t, out);
    return out[0]! - x;
  };
  const t = findRoot(miss, curve.start, curve.end);
  return t === null ? null : onEdge(strip, edge, t);
}

function onEdge(strip: Strip, edge: StripEdge, parameter: number): SectionPoint {
  const { rulings } = strip;
  const own = edge === 'first' ? 'u' : 'v';
  const curve = strip[edge];
  const t = Math.min(Math.max(parameter, curve.start), curve.end);
  // The piece that holds t, or the strip's end line at either end: a fan there shares its corner.
  let k = rulings.findLastIndex((ruling) => ruling[own] <= t);
  if (t === curve.start) k = 0;
  if (k === rulings.length - 1) k--;
  const before = rulings[k]!;
  const after = rulings[k + 1]!;
  const step = after[own] - before[own];
  const share = step > 0 ? (t - before[own]) / step : t === curve.start ? 0 : 1;
  const out = new Float64Array(9);
  curve.write(t, out);
  const point: Vec3 = [out[0]!, out[1]!, out[2]!];
  const side = edge === 'first' ? 'fromNormal' : 'toNormal';
  return {
    ruling: k + share,
    share: edge === 'first' ? 0 : 1,
    point,
    flat: onSheet(strip, edge, k, point),
    normal: unit(between(before[side], after[side], share)),
  };
}

/** The place on the sheet of a point of an edge between two rulings: on the chord there, and out to the bow. */
function onSheet(strip: Strip, edge: StripEdge, k: number, point: Vec3): Vec2 {
  const end = edge === 'first' ? 'from' : 'to';
  // Flat points and turns come one a ruling, and k + 1 is one.
  const a = strip.flat[edge][k]!;
  const b = strip.flat[edge][k + 1]!;
  const done = distance(strip.rulings[k]![end], point);
  const left = distance(point, strip.rulings[k + 1]![end]);
  if (done + left === 0) return a;
  const share = done / (done + left);
  const turn = (1 - share) * strip.turn[edge][k]! + share * strip.turn[edge][k + 1]!;
  return bowed(a, b, share, turn);
}
