/**
 * A station's corners on another face of the skin: inward by each panel's thickness, outward by a negative one.
 *
 * Thickness is measured square to the panel. At each corner the panels' planes are moved inward by their
 * thickness and cut with the station's plane, so that in that plane a panel moves t / cos(bevel) square to
 * its section. At the keel the bottom meets the centreline, at a stem everything does. The free edge at the
 * sheer of a frame or a transom is cut square to the section. At a stem it is the sheer itself, moved in with the
 * skin and followed to the centreline; the keel's foot on a stem is cut square to the stem.
 *
 * It brings no hull with it, so that a cell fetched late stays small.
 */
import { cross, dot, unit, type Vec3 } from '../../kernel';
import type { Edge } from './edge';
import type { Hull } from './hull';
import type { Panel } from './panel';
import { isPost, type Station } from './station';

/** Thickness of each panel's skin by the panel's name, m. */
export type SkinThickness = (panel: string) => number;

/**
 * All corners of a station, keel outward, m.
 * @throws with the hull's fault if it has one; if the skin is too thick for the hull's shape
 */
export function insetCorners(hull: Hull, station: Station, thickness: SkinThickness): readonly Vec3[] {
  return hull.edges.map((edge) => insetPoint(hull, edge, station, thickness));
}

interface Plane {
  readonly normal: Vec3;
  readonly height: number;
}

const CENTRELINE: Plane = { normal: [0, 1, 0], height: 0 };

/** Where an edge passes a station on the other face of the skin, m. */
export function insetPoint(hull: Hull, edge: Edge, station: Station, thickness: SkinThickness): Vec3 {
  const point = edge.points[station.index]!; // one point a station
  const post = isPost(station.role);
  // Edges that run together have one inside corner, that of the panels on either side of the place.
  const together = (other: Edge | undefined) =>
    other?.points[station.index]!.every((value, axis) => value === point[axis]) ?? false;
  let low = edge.index;
  let high = edge.index;
  while (together(hull.edges[low - 1])) low--;
  while (together(hull.edges[high + 1])) high++;
  const under = hull.panels[low - 1];
  const moved = [
    ...(under ? [movedIn(under, under.outer, station, point, thickness)] : []),
    ...hull.panels
      .slice(low, high + 1)
      .map((panel) => movedIn(panel, panel.inner, station, point, thickness)),
  ];
  const fixed: Plane[] = post ? [CENTRELINE] : [through(station.plane.normal, point)];
  if (!post && low === 0) fixed.push(CENTRELINE);
  // The two planes that bound the corner most sharply, where more run together.
  const planes = [...fixed, ...moved.slice(0, 3 - fixed.length)];
  if (planes.length === 3) return meeting(planes[0]!, planes[1]!, planes[2]!, station);
  const free =
    moved.length === 1
      ? (post && sheerCut(edge, station, moved[0]!)) || squareCut(planes[0]!, planes[1]!, point)
      : null;
  if (!free) throw new Error(`the inside of the skin can not be found at ${station.label}`);
  return meeting(planes[0]!, planes[1]!, free, station);
}

function movedIn(panel: Panel, edge: Edge, station: Station, point: Vec3, thickness: SkinThickness): Plane {
  const normal = station.normal(edge.name, panel.name);
  return { normal, height: dot(normal, point) - thickness(panel.name) };
}

function through(normal: Vec3, point: Vec3): Plane {
  return { normal, height: dot(normal, point) };
}

/** A cut through the point, square to the line in which the station's plane meets the panel. */
function squareCut(station: Plane, panel: Plane, point: Vec3): Plane {
  return through(unit(cross(station.normal, panel.normal)), point);
}

/** The panel's edge along the sheer, cut square to the skin; null for an edge that runs along the centreline. */
function sheerCut(edge: Edge, station: Station, panel: Plane): Plane | null {
  const along = unit(edge.directions[station.index]!); // one a station
  if (Math.abs(along[1]) < 1e-6) return null;
  return through(unit(cross(along, panel.normal)), edge.points[station.index]!);
}

/** The point common to three planes. */
function meeting(a: Plane, b: Plane, c: Plane, station: Station): Vec3 {
  const bc = cross(b.normal, c.normal);
  const ca = cross(c.normal, a.normal);
  const ab = cross(a.normal, b.normal);
  const volume = dot(a.normal, bc);
  if (Math.abs(volume) < 1e-9)
    throw new Error(
      `the inside of the skin can not be found at ${station.label}: its panels lie in one plane`,
    );
  const along = (axis: 0 | 1 | 2) =>
    (a.height * bc[axis] + b.height * ca[axis] + c.height * ab[axis]) / volume + 0; // no -0
  return [along(0), along(1), along(2)];
}
