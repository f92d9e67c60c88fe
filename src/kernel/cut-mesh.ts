/** A mesh cut by a plane, triangle by triangle. It is done hundreds of times a boat, so nothing is made for a triangle. */
import type { Mesh } from './mesh';
import { axesOf, type PlaneAxes } from './plane';
import type { Vec3 } from './vec';

/** Takes two points, or three, of a list: where in it their three numbers begin. The list is written over for the next. */
type SegmentSink = (points: Float64Array, a: number, b: number) => void;
type TriangleSink = (points: Float64Array, a: number, b: number, c: number) => void;

/**
 * Cuts a mesh by a plane: hands on the triangles below it, clipped, and the segments of the cut, which run
 * counter-clockwise about the part inside, seen from above. Coordinates are counted from `axes.origin`.
 *
 * A triangle in the plane is neither above nor below; an edge in it is a cut when its triangle is below.
 *
 * @param below null where the cut alone is wanted, which spares handing on half the mesh
 */
export function cutMesh(mesh: Mesh, axes: PlaneAxes, below: TriangleSink | null, cut: SegmentSink): void {
  const { points, triangles } = mesh;
  const heights = roomIn(mesh);
  for (let point = 0; point < heights.length; point += 1) measure(heights, axes, points, point);
  for (let i = 0; i < triangles.length; i += 3) {
    // Most triangles are told by the heights of their three corners alone.
    const ha = heights[triangles[i]!]!;
    const hb = heights[triangles[i + 1]!]!;
    const hc = heights[triangles[i + 2]!]!;
    if (ha >= 0 && hb >= 0 && hc >= 0) continue;
    cutTriangle(mesh, axes.origin, heights, i, below, cut);
  }
}

/** Cuts the triangles of a mesh that reach the plane at x, square to the boat; the normal points forward or aft. */
export function cutAcross(mesh: Mesh, x: number, way: 1 | -1, cut: SegmentSink): void {
  const { points, triangles } = mesh;
  const axes = axesOf({ normal: [way, 0, 0], height: way * x });
  const heights = roomIn(mesh);
  for (const i of near(mesh)(x)) {
    for (let corner = i; corner < i + 3; corner += 1) measure(heights, axes, points, triangles[corner]!); // of three corners
    cutTriangle(mesh, axes.origin, heights, i, null, cut);
  }
}

const rooms = new WeakMap<Mesh, Float64Array>();

/** Room for the heights of a mesh's points, one for all cuts. */
function roomIn(mesh: Mesh): Float64Array {
  const room = rooms.get(mesh) ?? new Float64Array(mesh.points.length / 3);
  rooms.set(mesh, room);
  return room;
}

/** Writes down the height of a point over the plane, m. */
function measure(
  heights: Float64Array,
  { origin, normal }: PlaneAxes,
  points: Float64Array,
  point: number,
): void {
  const at = 3 * point; // a point has three numbers
  heights[point] =
    normal[0] * (points[at]! - origin[0]) +
    normal[1] * (points[at + 1]! - origin[1]) +
    normal[2] * (points[at + 2]! - origin[2]);
}

type Near = (x: number) => readonly number[];
const nears = new WeakMap<Mesh, Near>();
/** Bays that a mesh is parted into along the boat. */
const BAYS = 64;

/** Where the corners begin of all triangles that reach x, and of few others: a mesh is cut across at many places. */
function near(mesh: Mesh): Near {
  const known = nears.get(mesh) ?? inBays(mesh);
  nears.set(mesh, known);
  return known;
}

function inBays({ points, triangles }: Mesh): Near {
  let [aft, fore] = [Infinity, -Infinity];
  for (let at = 0; at < points.length; at += 3) {
    aft = Math.min(aft, points[at]!);
    fore = Math.max(fore, points[at]!); // a point has three numbers
  }
  const bayOf = (x: number) => Math.min(Math.floor((BAYS * (x - aft)) / (fore - aft)), BAYS - 1);
  const bays = Array.from({ length: BAYS }, (): number[] => []);
  const xOf = (corner: number) => points[3 * triangles[corner]!]!;
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [xOf(i), xOf(i + 1), xOf(i + 2)];
    const last = bayOf(Math.max(a, b, c));
    for (let bay = bayOf(Math.min(a, b, c)); bay <= last; bay += 1) bays[bay]!.push(i);
  }
  return (x) => bays[bayOf(x)] ?? [];
}

/** The corners of the triangle in hand, counted from a point of the plane, and the two places where it is cut. */
const hand = new Float64Array(15);
const [A, B, C, P, Q] = [0, 3, 6, 9, 12] as const;

/** Takes a corner of a triangle in hand, at one of its places. */
function take(points: Float64Array, corner: number, origin: Vec3, place: number): void {
  const at = 3 * corner; // a point has three numbers
  hand[place] = points[at]! - origin[0];
  hand[place + 1] = points[at + 1]! - origin[1];
  hand[place + 2] = points[at + 2]! - origin[2];
}

/** @param heights of the points over the plane, m; `i` is where the triangle's corners begin */
function cutTriangle(
  { points, triangles }: Mesh,
  origin: Vec3,
  heights: Float64Array,
  i: number,
  below: TriangleSink | null,
  cut: SegmentSink,
): void {
  const [a, b, c] = [triangles[i]!, triangles[i + 1]!, triangles[i + 2]!];
  const [ha, hb, hc] = [heights[a]!, heights[b]!, heights[c]!];
  if (ha >= 0 && hb >= 0 && hc >= 0) return;
  if (below === null && ha < 0 && hb < 0 && hc < 0) return;
  if (ha <= 0 && hb <= 0 && hc <= 0) {
    take(points, a, origin, A);
    take(points, b, origin, B);
    take(points, c, origin, C);
    below?.(hand, A, B, C);
    if (ha === 0 && hb === 0) cut(hand, B, A);
    if (hb === 0 && hc === 0) cut(hand, C, B);
    if (hc === 0 && ha === 0) cut(hand, A, C);
    return;
  }
  // Turn the triangle so that the corner alone on its side comes first.
  if (hb > 0 === hc > 0) clip(points, origin, heights, a, b, c, below, cut);
  else if (hc > 0 === ha > 0) clip(points, origin, heights, b, c, a, below, cut);
  else clip(points, origin, heights, c, a, b, below, cut);
}

/** A triangle of which corner a lies alone on its side. */
function clip(
  points: Float64Array,
  origin: Vec3,
  heights: Float64Array,
  a: number,
  b: number,
  c: number,
  below: TriangleSink | null,
  cut: SegmentSink,
): void {
  take(points, a, origin, A);
  take(points, b, origin, B);
  take(points, c, origin, C);
  // Always from below to above: both triangles of an edge then find the same point to the last bit.
  if (heights[a]! > 0) {
    cross(heights, b, B, a, A, P);
    cross(heights, c, C, a, A, Q);
    below?.(hand, P, B, C);
    below?.(hand, P, C, Q);
    cut(hand, P, Q);
  } else {
    cross(heights, a, A, b, B, P);
    cross(heights, a, A, c, C, Q);
    below?.(hand, A, P, Q);
    cut(hand, Q, P);
  }
}

/** Where the side between a corner below and one above goes through the plane. */
function cross(
  heights: Float64Array,
  low: number,
  from: number,
  high: number,
  to: number,
  place: number,
): void {
  const share = heights[low]! / (heights[low]! - heights[high]!);
  for (let axis = 0; axis < 3; axis += 1)
    hand[place + axis] = hand[from + axis]! + share * (hand[to + axis]! - hand[from + axis]!);
}
