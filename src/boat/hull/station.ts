/**
 * A station of the hull: a frame, a transom or the stem, and how the skin lies on it.
 *
 * A station is taken as a plane square to the centreline plane; a transom's leans by its rake.
 *
 * The section is the straight-sided one through the edges' corners, as frames are often built, and a panel's
 * flare and girth are of that line. Where the skin stands off it, `crown` says by how much. What meets the
 * skin itself, bevels and the angle at a chine, goes by the skin's own plane at the edge: on a crowned
 * bottom the two differ by many degrees.
 */
import {
  add,
  dihedral,
  distance,
  dot,
  flareOfNormal,
  scale,
  subtract,
  unit,
  type Vec2,
  type Vec3,
} from '../../kernel';
import type { Edge } from './edge';
import { find, type Named } from '../table/named';
import { once } from '../once';
import type { Panel } from './panel';
import { areaToCentreline, planeThrough, type StationPlane, trueShape } from './station-plane';

/** What stands at a station. The ends are transoms where they have breadth, else a stem or a sternpost. */
export type Role = 'transom' | 'sternpost' | 'frame' | 'bow transom' | 'stem';

/** Until her numbers say so, a boat has a transom at the stern and a stem at the bow, as most have. */
export function roleOf(index: number, stations: number, halfBreadths: readonly (number | null)[]): Role {
  const broad = halfBreadths.some((y) => y !== null && y > 0);
  if (index === 0) return broad || halfBreadths.includes(null) ? 'transom' : 'sternpost';
  if (index === stations - 1) return broad ? 'bow transom' : 'stem';
  return 'frame';
}

export function isPost(role: Role): boolean {
  return role === 'stem' || role === 'sternpost';
}

/** Everything but names and role is worked out when first asked for. */
export interface Station extends Named {
  /** 0 for the aftermost. */
  readonly index: number;
  readonly role: Role;
  /** Where the keel stands, m. */
  readonly x: number;
  /** Where the edges pass, keel outward, m. */
  readonly corners: readonly Vec3[];
  /** Half-breadth and height of each edge, as seen along the boat, m. */
  readonly section: readonly Vec2[];
  readonly plane: StationPlane;
  /** True shape in the station's own plane: half-breadth, and height up the slope from the keel, m. */
  readonly outline: readonly Vec2[];
  /** Of the true shape up to the sheer, both sides, m2. */
  readonly area: number;
  /** Which way the frame stands off its line, so that bevels are cut off and never added. */
  readonly stands: 'forward' | 'aft';
  /** Length of the section across a panel, m. Panels and edges are asked for by name here and below. */
  girth(panel: string): number;
  /** Angle of the panel's section from the vertical, + outward, rad. */
  flare(panel: string): number;
  /** Angle of the panel's section from the horizontal, + where it rises outward, rad. */
  deadrise(panel: string): number;
  /** Outward unit normal of the skin of a panel where the station comes to one of its edges. */
  normal(edge: string, panel: string): Vec3;
  /** Angle from the vertical of the skin's section where it leaves one of its edges, + outward, rad. */
  skinFlare(edge: string, panel: string): number;
  /**
   * How far the frame's edge under the panel is planed off square, rad: + where the skin opens out going
   * forward, - where it closes in. At a stem: the angle between the panel and the centreline plane.
   */
  bevel(edge: string, panel: string): number;
  /** How far the panel's plane leans out of plumb (sine = -n_z), rad, and turns in plan, + closing in forward. */
  tilt(panel: string): { readonly tilt: number; readonly plan: number };
  /**
   * Angle inside the hull between the two panels that meet at an edge; at the keel, between the two sides of
   * the bottom. Throws at the sheer, where nothing lies above.
   */
  angle(edge: string): number;
  /** How far the skin stands off the straight frame side; + = outside. Throws at the ends of the hull. */
  crown(panel: string): number;
}

/** What a station needs of the hull it belongs to. */
export interface Around {
  readonly edges: readonly Edge[];
  readonly panels: readonly Panel[];
  readonly widestIndex: () => number;
}

export function makeStation(named: Named, index: number, role: Role, around: Around): Station {
  const corners = once(() => around.edges.map((edge) => pointOn(edge, index)));
  const section = once(() => corners().map(([, y, z]): Vec2 => [y, z]));
  const plane = once(() => planeThrough(corners()));
  const outline = once(() => trueShape(corners(), plane()));
  const edgeNamed = (name: string) => find(around.edges, name, 'edge');
  const panelNamed = (name: string) => find(around.panels, name, 'panel');

  const normals = new Map<string, Vec3>();
  /** Coming to the station along the edge. */
  function normalAlong(edge: Edge, panel: Panel): Vec3 {
    const key = `${edge.name} ${panel.name}`;
    const known = normals.get(key);
    if (known) return known;
    const along = unit(edge.directions[index]!); // one direction and one knot a station
    const read = panel.normalOn(edge, edge.batten.knots[index]!);
    // Read between rulings it may lean a little along the edge, to which the skin's normal is square.
    const found = unit(subtract(read, scale(along, dot(read, along))));
    normals.set(key, found);
    return found;
  }

  /** Coming to the edge along the station. */
  function normal(edge: Edge, panel: Panel): Vec3 {
    const atEnd = role === 'frame' ? null : panel.normalAtEnd(index === 0 ? 'aft' : 'fore', edge);
    return atEnd ?? normalAlong(edge, panel);
  }

  function meanNormal(panel: Panel): Vec3 {
    return unit(add(normal(panel.inner, panel), normal(panel.outer, panel)));
  }

  function flare(panel: Panel): number {
    const inner = pointOn(panel.inner, index);
    const outer = pointOn(panel.outer, index);
    const upright = inner[0] === outer[0] && (inner[1] !== outer[1] || inner[2] !== outer[2]);
    if (upright) return Math.atan2(outer[1] - inner[1], outer[2] - inner[2]);
    // The corners of a raked station lie at different x; the section square to the boat follows from the normal.
    return flareOfNormal(meanNormal(panel));
  }

  function bevel(edge: Edge, panel: Panel): number {
    const n = normal(edge, panel);
    if (isPost(role)) return Math.acos(held(Math.abs(n[1])));
    return -Math.asin(held(dot(n, plane().normal)));
  }

  function angle(edge: Edge): number {
    const under = around.panels[edge.index - 1];
    const above = around.panels[edge.index];
    if (!above) throw new Error(`no panel lies above the ${edge.label}`);
    const [x, y, z] = normalAlong(edge, above);
    return dihedral(under ? normalAlong(edge, under) : [x, -y, z], [x, y, z]);
  }

  function crown(panel: Panel): number {
    const stands = role === 'frame' ? panel.crownAt(pointOn(panel.inner, index)[0]) : null;
    if (stands === null) throw new Error(`the ${panel.label} does not reach across ${named.label}`);
    return stands;
  }

  return {
    name: named.name,
    label: named.label,
    index,
    role,
    get x() {
      return pointOn(around.edges[0]!, index)[0]; // every hull has a keel
    },
    get corners() {
      return corners();
    },
    get section() {
      return section();
    },
    get plane() {
      return plane();
    },
    get outline() {
      return outline();
    },
    get area() {
      return 2 * areaToCentreline(outline());
    },
    get stands() {
      const widest = around.widestIndex();
      if (index !== widest) return index > widest ? 'forward' : 'aft';
      const sheer = around.edges.at(-1)!; // every hull has a sheer
      return sheer.slopes[index]!.plan > 0 ? 'aft' : 'forward';
    },
    girth: (name) => {
      const panel = panelNamed(name);
      return distance(pointOn(panel.inner, index), pointOn(panel.outer, index));
    },
    flare: (name) => flare(panelNamed(name)),
    deadrise: (name) => Math.PI / 2 - flare(panelNamed(name)),
    normal: (edge, panel) => normal(edgeNamed(edge), panelNamed(panel)),
    skinFlare: (edge, panel) => flareOfNormal(normalAlong(edgeNamed(edge), panelNamed(panel))),
    bevel: (edge, panel) => bevel(edgeNamed(edge), panelNamed(panel)),
    tilt: (name) => {
      const [nx, ny, nz] = meanNormal(panelNamed(name));
      return { tilt: -Math.asin(held(nz)), plan: Math.atan2(nx, ny) };
    },
    angle: (name) => angle(edgeNamed(name)),
    crown: (name) => crown(panelNamed(name)),
  };
}

/** A sine or cosine that rounding has carried past 1. */
const held = (ratio: number) => Math.max(-1, Math.min(1, ratio));

function pointOn(edge: Edge, station: number): Vec3 {
  return edge.points[station]!; // one point a station
}
