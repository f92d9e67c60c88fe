/**
 * The true shape of a transom inside the skin: expanded up its own slope, on the face to which the offsets are
 * and on the larger face to which the blank is cut.
 */
import type { Vec2 } from '../../kernel';
import type { Hull } from './hull';
import { insetCorners } from './inset';
import type { Station } from './station';
import { planeThrough, trueShape } from './station-plane';

export interface TransomShape {
  readonly station: Station;
  /** From the vertical, + where its top leans out of the boat, rad. */
  readonly rake: number;
  /** Keel outward: half-breadth, and height up the slope from the outside of the bottom on the centreline, m. */
  readonly outside: readonly Vec2[];
  /** The same of the wood inside the skin, on the face that stands on the station line. */
  readonly inside: readonly Vec2[];
  /** Plumb height of each corner of the wood above the base, m. */
  readonly heights: readonly number[];
  /** Height above the base of the outside of the bottom on the centreline, m. */
  readonly foot: number;
  /** How far the other face reaches beyond at each panel's edges, m for each metre of thickness; - where it is smaller. */
  readonly flares: readonly { readonly panel: string; readonly inner: number; readonly outer: number }[];
}

/** Which face of the wood stands on the station line. */
export type TransomFace = 'outer' | 'inner';

/**
 * @param skin thickness of each panel's skin, m
 * @throws a sentence, where the hull has no such transom
 */
export function transomShape(
  hull: Hull,
  role: 'transom' | 'bow transom',
  skin: (panel: string) => number,
  face: TransomFace,
): TransomShape {
  const station = [hull.aft, hull.fore].find((end) => end.role === role);
  if (!station) throw new Error(whyNone(hull, role));
  const given = station.corners;
  const toOutside = hull.offsets.offsetsTo === 'outside of skin';
  // The panels' planes are the same on both faces, so the way out is the way in, backward.
  const other = insetCorners(hull, station, toOutside ? skin : (panel) => -skin(panel));
  const [outer, inner] = toOutside ? [given, other] : [other, given];
  const plane = planeThrough(outer);
  const outside = trueShape(outer, plane);
  const [footX, , foot] = outer[0]!; // every station has a keel
  // Expanded from the same point, so that both shapes lie on one another.
  const inside = inner.map(([x, y, z]): Vec2 => [
    y,
    (x - footX) * Math.sin(plane.lean) + (z - foot) * Math.cos(plane.lean),
  ]);
  const aft = role === 'transom';
  // Bevels are + where the skin opens going forward: there the forward face is the larger.
  const forward = (aft ? 1 : -1) * (face === 'outer' ? 1 : -1);
  const grows = (edge: string, panel: string) => forward * Math.tan(station.bevel(edge, panel));
  return {
    station,
    rake: (aft ? -1 : 1) * plane.lean + 0, // no -0
    outside,
    inside,
    heights: inner.map(([, , z]) => z),
    foot,
    flares: hull.panels.map((panel) => ({
      panel: panel.name,
      inner: grows(panel.inner.name, panel.name),
      outer: grows(panel.outer.name, panel.name),
    })),
  };
}

function whyNone(hull: Hull, role: 'transom' | 'bow transom'): string {
  const end = role === 'transom' ? hull.aft : hull.fore;
  const place = role === 'transom' ? 'stern' : 'bow';
  return `this boat has no transom at the ${place}: it ends in a ${end.role} there`;
}

/** The shape with its edges let out to a face that reaches farther, m; level at the top. */
export function letOut(shape: TransomShape, thickness: number): readonly Vec2[] {
  const { inside, flares } = shape;
  const lines = flares.map(({ inner, outer }, i) => {
    const grow = thickness * Math.max(0, inner, outer);
    const [a, b] = [inside[i]!, inside[i + 1]!]; // a panel lies between two corners
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const out: Vec2 = length < 1e-9 ? [0, 0] : [(b[1] - a[1]) / length, -(b[0] - a[0]) / length];
    const move = (p: Vec2): Vec2 => [p[0] + grow * out[0], p[1] + grow * out[1]];
    return [move(a), move(b)] as const;
  });
  const top = inside.at(-1)![1];
  const centreline = [
    [0, 0],
    [0, 1],
  ] as const;
  const level = [
    [0, top],
    [1, top],
  ] as const;
  const bounds = [centreline, ...lines, level];
  return bounds.slice(1).map((line, i) => meeting(bounds[i]!, line) ?? inside[i]!);
}

/** Where two lines through pairs of points cross; null where they are parallel. */
function meeting(a: readonly [Vec2, Vec2], b: readonly [Vec2, Vec2]): Vec2 | null {
  const d: Vec2 = [a[1][0] - a[0][0], a[1][1] - a[0][1]];
  const e: Vec2 = [b[1][0] - b[0][0], b[1][1] - b[0][1]];
  const turn = d[0] * e[1] - d[1] * e[0];
  if (Math.abs(turn) < 1e-12) return null;
  const share = ((b[0][0] - a[0][0]) * e[1] - (b[0][1] - a[0][1]) * e[0]) / turn;
  return [a[0][0] + share * d[0], a[0][1] + share * d[1]];
}
