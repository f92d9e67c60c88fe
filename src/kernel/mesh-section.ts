import type { Mesh } from './mesh';
import { cutMesh } from './cut-mesh';
import { axesOf } from './plane';
import type { Plane } from './plane';
import { add } from './vec';
import type { Vec3 } from './vec';

/**
 * The lines in which a plane cuts a mesh, each as a list of points; a closed line ends on its first point. They
 * run counter-clockwise about the inside, seen against the plane's normal. Empty where the plane misses.
 */
export function meshSection(mesh: Mesh, plane: Plane): readonly (readonly Vec3[])[] {
  const axes = axesOf(plane);
  const segments: { readonly from: Vec3; readonly start: string; readonly to: Vec3; readonly end: string }[] =
    [];
  cutMesh(mesh, axes, null, (points, a, b) => {
    const at = (i: number) => add(axes.origin, [points[i]!, points[i + 1]!, points[i + 2]!]); // three numbers a point
    const [from, to] = [at(a), at(b)];
    const [start, end] = [placeOf(from), placeOf(to)];
    if (start !== end) segments.push({ from, start, to, end });
  });
  // An edge in the plane between two triangles below it is cut twice, there and back: no line at all.
  const kept = new Map<string, Map<string, Vec3>>();
  const ends = new Map<string, number>();
  for (const { start, to, end } of segments) {
    const back = kept.get(end);
    if (back?.delete(start)) continue;
    const onward = kept.get(start) ?? new Map<string, Vec3>();
    onward.set(end, to);
    kept.set(start, onward);
  }
  for (const onward of kept.values())
    for (const place of onward.keys()) ends.set(place, (ends.get(place) ?? 0) + 1);
  const lines: Vec3[][] = [];
  const follow = (from: Vec3, start: string): void => {
    const line = [from];
    for (let place = start; ;) {
      const onward = kept.get(place);
      const next = onward?.entries().next().value;
      if (!onward || !next) break;
      onward.delete(next[0]);
      line.push(next[1]);
      [place] = next;
    }
    if (line.length > 1) lines.push(line);
  };
  // Open lines first, from the ends nothing leads to; what is left are loops.
  for (const { from, start } of segments) if (!ends.has(start)) follow(from, start);
  for (const { from, start } of segments) follow(from, start);
  return lines;
}

/** Points within about a nanometre of each other count as one, so triangles that share an edge join up. */
function placeOf(point: Vec3): string {
  return point.map((value) => Math.round(value * 1e9)).join();
}
