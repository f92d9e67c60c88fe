/**
 * A panel of the skin between two neighbouring edges, port side: the ruled surface with least twist,
 * and its flat pattern.
 */
import {
  crownAt,
  curveOf,
  distance,
  type Mesh,
  meshOfStrips,
  normalOnEdge,
  scale,
  spanStrip,
  type Strip,
  subtract,
  surfaceCentroid,
  unit,
  type Vec2,
  type Vec3,
} from '../../kernel';
import type { Edge } from './edge';
import type { Named } from '../table/named';
import { once } from '../once';

export interface Panel extends Named {
  /** 0 for the bottom, counted outward. */
  readonly index: number;
  /** The edge nearer the keel. */
  readonly inner: Edge;
  readonly outer: Edge;
  readonly strip: Strip;
  /** Developed area of the one side, m2. */
  readonly area: number;
  /** The pattern laid flat, outside up on the port side: a point of each edge for each ruling, m. */
  readonly flat: { readonly inner: readonly Vec2[]; readonly outer: readonly Vec2[] };
  /** Least radius across the rulings and the x of that ruling's middle; null where the panel is flat. */
  readonly leastRadius: { readonly radius: number; readonly x: number } | null;
  /** Greatest angle between the normals at the ends of one ruling, and the x of that ruling's middle. */
  readonly twist: { readonly angle: number; readonly x: number };
  readonly mesh: Mesh;
  /** Centre of the area, port side. */
  readonly centre: Vec3;
  /** Outward unit normal of the skin at a parameter of one of its edges, as one comes to it along that edge. */
  normalOn(edge: Edge, parameter: number): Vec3;
  /**
   * Outward unit normal of the skin at one of its edges on the straight line that ends the panel, as one comes to
   * it along that line: up a stem, up a transom's side. Where the last rulings fan from the edge's end it is not
   * the one that is found along the edge. Null where the edges meet in a point.
   */
  normalAtEnd(end: 'aft' | 'fore', edge: Edge): Vec3 | null;
  /** How far the skin stands off the straight line between its edges in the plane at x; + = outside; null where it does not reach. */
  crownAt(x: number): number | null;
}

export function makePanel(named: Named, index: number, inner: Edge, outer: Edge): Panel {
  const strip = once(() => spanStrip(curveOf(inner.batten), curveOf(outer.batten)));
  const mesh = once(() => meshOfStrips([strip()]).mesh);
  const centre = once(() => {
    const found = surfaceCentroid(mesh());
    if (!found) throw new Error(`the ${named.label} has no area`);
    return found;
  });
  const middleX = (index: number) => {
    const ruling = strip().rulings[index]!; // an index that the strip itself gave
    return (ruling.from[0] + ruling.to[0]) / 2;
  };
  return {
    name: named.name,
    label: named.label,
    index,
    inner,
    outer,
    get strip() {
      return strip();
    },
    get area() {
      return strip().area;
    },
    get flat() {
      return { inner: strip().flat.first, outer: strip().flat.second };
    },
    get leastRadius() {
      const least = strip().leastRadius;
      return least && { radius: least.radius, x: middleX(least.ruling) };
    },
    get twist() {
      const { twist, ruling } = strip().mostTwist;
      return { angle: twist, x: middleX(ruling) };
    },
    get mesh() {
      return mesh();
    },
    get centre() {
      return centre();
    },
    normalOn: (edge, parameter) => normalOn(strip(), edge === inner ? 'first' : 'second', parameter),
    normalAtEnd: (end, edge) => {
      const last = end === 'aft' ? strip().rulings[0]! : strip().rulings.at(-1)!; // a strip has rulings
      if (distance(last.from, last.to) <= NO_LENGTH) return null;
      return edge === inner ? last.fromNormal : last.toNormal;
    },
    crownAt: (x) => crownAt(strip(), x)?.crown ?? null,
  };
}

/** Shorter than this, m, a ruling is what rounding leaves where the edges meet, and shows no plane. */
const NO_LENGTH = 1e-9;

/** Where the edges meet in a point the normal is what those of the last two rulings before it lead to. */
function normalOn(strip: Strip, which: 'first' | 'second', parameter: number): Vec3 {
  const { rulings } = strip;
  const curve = strip[which];
  const atStart = parameter <= curve.start;
  if (!atStart && parameter < curve.end) return normalOnEdge(strip, which, parameter);
  const [last, before, earlier] = atStart ? rulings.slice(0, 3) : rulings.slice(-3).toReversed();
  const end = which === 'first' ? 'fromNormal' : 'toNormal';
  if (!last || !before || !earlier || distance(last.from, last.to) > NO_LENGTH) {
    if (last?.fan !== which) return normalOnEdge(strip, which, parameter);
    // A fan shares the edge's end; along the edge one comes to the first of its rulings.
    const fan = atStart ? rulings : rulings.toReversed();
    const rest = fan.findIndex((ruling) => ruling.fan !== which);
    return fan[(rest < 0 ? fan.length : rest) - 1]![end];
  }
  return unit(subtract(scale(before[end], 2), earlier[end]));
}
