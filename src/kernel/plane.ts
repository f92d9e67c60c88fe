import type { Mesh } from './mesh';
import { add, cross, dot, scale, subtract, unit } from './vec';
import type { Vec3 } from './vec';

/** A plane by its upward unit normal and its height along that from the origin, m; below is dot(normal, p) < height. */
export interface Plane {
  readonly normal: Vec3;
  readonly height: number;
}

/** Axes in a plane: a point of it, forward (as near to x as it lies) and to port of that. */
export interface PlaneAxes {
  readonly origin: Vec3;
  readonly normal: Vec3;
  readonly forward: Vec3;
  readonly port: Vec3;
}

/** Axes for measuring in a plane; across the boat the nearest to y takes the place of forward. */
export function axesOf(plane: Plane): PlaneAxes {
  const normal = unit(plane.normal);
  const lead: Vec3 = Math.abs(normal[0]) < 0.99 ? [1, 0, 0] : [0, 1, 0];
  const forward = unit(subtract(lead, scale(normal, dot(lead, normal))));
  return { origin: scale(normal, plane.height), normal, forward, port: cross(normal, forward) };
}

/** A point from its two coordinates in a plane. */
export function fromPlane(axes: PlaneAxes, forward: number, port: number): Vec3 {
  return add(axes.origin, add(scale(axes.forward, forward), scale(axes.port, port)));
}

/** Six or nine numbers: two or three points of three, counted from a point of the plane. */
type SegmentSink = (ax: number, ay: number, az: number, bx: number, by: number, bz: number) => void;
type TriangleSink = (
  ax: number,
  ay: number,
  az: number,
  bx: number,
  by: number,
  bz: number,
  cx: number,
  cy: number,
  cz: number,
) => void;

/**
 * Cuts a mesh by a plane: hands on the triangles below it, clipped, and the segments of the cut, which run
 * counter-clockwise about the part inside, seen from above. Coordinates are counted from `axes.origin`.
 *
 * A triangle in the plane is neither above nor below; an edge in it is a cut when its triangle is below.
 *
 * @param below null where the cut alone is wanted, which spares handing on half the mesh
 * @param whole takes a triangle that lies wholly below, by its place in the mesh, in place of `below`
 */
export function cutMesh(
  mesh: Mesh,
  axes: PlaneAxes,
  below: TriangleSink | null,
  cut: SegmentSink,
  whole?: (triangle: number) => void,
): void {
  const { points, triangles } = mesh;
  const heights = roomIn(mesh);
  const {
    origin: [ox, oy, oz],
    normal: [nx, ny, nz],
  } = axes;
  for (let point = 0, at = 0; at < points.length; point += 1, at += 3)
    heights[point] = nx * (points[at]! - ox) + ny * (points[at + 1]! - oy) + nz * (points[at + 2]! - oz); // a point has three numbers
  for (let i = 0, at = 0; i < triangles.length; i += 3, at += 1) {
    // Most triangles are told by the heights of their three corners alone.
    const ha = heights[triangles[i]!]!;
    const hb = heights[triangles[i + 1]!]!;
    const hc = heights[triangles[i + 2]!]!;
    if (ha >= 0 && hb >= 0 && hc >= 0) continue;
    if (whole && ha < 0 && hb < 0 && hc < 0) whole(at);
    else cutTriangle(mesh, axes, heights, i, below, cut);
  }
}

const rooms = new WeakMap<Mesh, Float64Array>();

/** Room for the heights of a mesh's points, one for all cuts. */
function roomIn(mesh: Mesh): Float64Array {
  const room = rooms.get(mesh) ?? new Float64Array(mesh.points.length / 3);
  rooms.set(mesh, room);
  return room;
}

/** Cuts the triangles of a mesh that reach the plane at x, square to the boat; the normal points forward or aft. */
export function cutAcross(mesh: Mesh, x: number, way: 1 | -1, cut: SegmentSink): void {
  const { points, triangles } = mesh;
  const axes = axesOf({ normal: [way, 0, 0], height: way * x });
  const { least, most } = reachOf(mesh);
  const heights = roomIn(mesh);
  for (let i = 0, at = 0; i < triangles.length; i += 3, at += 1) {
    if (least[at]! > x || most[at]! < x) continue; // one a triangle
    for (let corner = i; corner < i + 3; corner += 1) {
      const point = triangles[corner]!; // of three corners
      heights[point] = heightOver(axes, points, point);
    }
    cutTriangle(mesh, axes, heights, i, null, cut);
  }
}

interface Reach {
  /** Between which x each triangle lies, m. */
  readonly least: Float64Array;
  readonly most: Float64Array;
}

const reaches = new WeakMap<Mesh, Reach>();

/** How far each triangle reaches: a mesh is cut across at many places, and each meets few of them. */
function reachOf(mesh: Mesh): Reach {
  const known = reaches.get(mesh);
  if (known) return known;
  const { points, triangles } = mesh;
  const xOf = (corner: number) => points[3 * triangles[corner]!]!; // a corner is a point of three numbers
  const count = triangles.length / 3;
  const reach = {
    least: Float64Array.from({ length: count }, (_, at) =>
      Math.min(xOf(3 * at), xOf(3 * at + 1), xOf(3 * at + 2)),
    ),
    most: Float64Array.from({ length: count }, (_, at) =>
      Math.max(xOf(3 * at), xOf(3 * at + 1), xOf(3 * at + 2)),
    ),
  };
  reaches.set(mesh, reach);
  return reach;
}

/** @param heights of the points over the plane, m; `i` is where the triangle's corners begin */
function cutTriangle(
  { points, triangles }: Mesh,
  { origin: [ox, oy, oz] }: PlaneAxes,
  heights: Float64Array,
  i: number,
  below: TriangleSink | null,
  cut: SegmentSink,
): void {
  const ha = heights[triangles[i]!]!;
  const hb = heights[triangles[i + 1]!]!;
  const hc = heights[triangles[i + 2]!]!;
  if (ha >= 0 && hb >= 0 && hc >= 0) return;
  if (below === null && ha < 0 && hb < 0 && hc < 0) return;
  const a = 3 * triangles[i]!;
  const b = 3 * triangles[i + 1]!;
  const c = 3 * triangles[i + 2]!;
  const ax = points[a]! - ox;
  const ay = points[a + 1]! - oy;
  const az = points[a + 2]! - oz;
  const bx = points[b]! - ox;
  const by = points[b + 1]! - oy;
  const bz = points[b + 2]! - oz;
  const cx = points[c]! - ox;
  const cy = points[c + 1]! - oy;
  const cz = points[c + 2]! - oz;
  if (ha <= 0 && hb <= 0 && hc <= 0) {
    below?.(ax, ay, az, bx, by, bz, cx, cy, cz);
    if (ha === 0 && hb === 0) cut(bx, by, bz, ax, ay, az);
    if (hb === 0 && hc === 0) cut(cx, cy, cz, bx, by, bz);
    if (hc === 0 && ha === 0) cut(ax, ay, az, cx, cy, cz);
    return;
  }
  // Turn the triangle so that the corner alone on its side comes first.
  if (hb > 0 === hc > 0) clip(ax, ay, az, ha, bx, by, bz, hb, cx, cy, cz, hc, below, cut);
  else if (hc > 0 === ha > 0) clip(bx, by, bz, hb, cx, cy, cz, hc, ax, ay, az, ha, below, cut);
  else clip(cx, cy, cz, hc, ax, ay, az, ha, bx, by, bz, hb, below, cut);
}

/** Height of a point over the plane, m. */
function heightOver(
  { origin: [ox, oy, oz], normal: [nx, ny, nz] }: PlaneAxes,
  points: Float64Array,
  point: number,
): number {
  const at = 3 * point; // a point has three numbers
  return nx * (points[at]! - ox) + ny * (points[at + 1]! - oy) + nz * (points[at + 2]! - oz);
}

function clip(
  ax: number,
  ay: number,
  az: number,
  ha: number,
  bx: number,
  by: number,
  bz: number,
  hb: number,
  cx: number,
  cy: number,
  cz: number,
  hc: number,
  below: TriangleSink | null,
  cut: SegmentSink,
): void {
  const up = ha > 0;
  // Always from below to above: both triangles of an edge then find the same point to the last bit.
  const s = up ? hb / (hb - ha) : ha / (ha - hb);
  const px = up ? bx + s * (ax - bx) : ax + s * (bx - ax);
  const py = up ? by + s * (ay - by) : ay + s * (by - ay);
  const pz = up ? bz + s * (az - bz) : az + s * (bz - az);
  const t = up ? hc / (hc - ha) : ha / (ha - hc);
  const qx = up ? cx + t * (ax - cx) : ax + t * (cx - ax);
  const qy = up ? cy + t * (ay - cy) : ay + t * (cy - ay);
  const qz = up ? cz + t * (az - cz) : az + t * (cz - az);
  if (up) {
    below?.(px, py, pz, bx, by, bz, cx, cy, cz);
    below?.(px, py, pz, cx, cy, cz, qx, qy, qz);
    cut(px, py, pz, qx, qy, qz);
  } else {
    below?.(ax, ay, az, px, py, pz, qx, qy, qz);
    cut(qx, qy, qz, px, py, pz);
  }
}
