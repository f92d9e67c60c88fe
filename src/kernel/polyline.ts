import { cross, distance, dot, norm, subtract } from './vec';
import type { Vec3 } from './vec';

/**
 * The line with as few of its points as keep it within a tolerance, m, of where it was. Ends stay.
 *
 * Source: D. H. Douglas and T. K. Peucker, Algorithms for the reduction of the number of points required to
 * represent a digitized line or its caricature, Cartographica 10(2), 1973.
 */
export function thinned(line: readonly Vec3[], tolerance: number): readonly Vec3[] {
  const kept = new Set([0, line.length - 1]);
  const open: (readonly [from: number, to: number])[] = [[0, line.length - 1]];
  for (let run = open.pop(); run; run = open.pop()) {
    const [from, to] = run;
    let worst = from;
    let most = tolerance;
    for (let i = from + 1; i < to; i++) {
      const off = offChord(line[i]!, line[from]!, line[to]!); // indices between two of the line's own
      if (off > most) [worst, most] = [i, off];
    }
    if (worst === from) continue;
    kept.add(worst);
    open.push([from, worst], [worst, to]);
  }
  return line.filter((_, i) => kept.has(i));
}

/** Greatest distance of a line of two points or more from the straight piece between its ends, m. */
export function riseOf(line: readonly Vec3[]): number {
  const [from, to] = [line[0], line.at(-1)];
  if (!from || !to) throw new Error('a line without points has no rise');
  return Math.max(...line.map((point) => offChord(point, from, to)));
}

/** Distance of a point from the piece between two others. */
function offChord(point: Vec3, from: Vec3, to: Vec3): number {
  const along = subtract(to, from);
  const length = norm(along);
  const out = subtract(point, from);
  if (length === 0) return norm(out);
  const share = dot(out, along) / length;
  if (share <= 0) return norm(out);
  return share >= length ? distance(point, to) : norm(cross(along, out)) / length;
}
