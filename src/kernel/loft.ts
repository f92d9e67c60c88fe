import { bridge, joined, type Mesh, polygonMesh, reversed } from './mesh';
import { meshVolume } from './mesh-measure';
import { add, cross, norm, scale, subtract, unit, type Vec3 } from './vec';

/**
 * The solid through rings of as many points each, one behind the other, closed by the first and the last: a plank, a
 * bar, a block. Outward whichever way the rings turn.
 *
 * @param rings two at least, each of three points at least, m
 */
export function loft(rings: readonly (readonly Vec3[])[]): Mesh {
  const [first, last] = [rings[0], rings.at(-1)];
  if (!first || !last || rings.length < 2) throw new Error(`a solid needs two rings; got ${rings.length}`);
  const along = (k: number) => rings.map((ring) => ring[k % first.length]!); // as many points in each
  const sides = first.map((_, k) => bridge(along(k), along(k + 1)));
  const solid = joined(...sides, polygonMesh(first.toReversed()), polygonMesh(last));
  return meshVolume(solid) < 0 ? reversed(solid) : solid;
}

const UP: Vec3 = [0, 0, 1];
const ACROSS: Vec3 = [0, 1, 0];

/** A bar of square section along a line, m: its sides stand square to the run of the line at each point. */
export function bar(line: readonly Vec3[], side: number): Mesh {
  return loft(
    line.map((point, i) => {
      const run = subtract(line[Math.min(i + 1, line.length - 1)]!, line[Math.max(i - 1, 0)]!); // both in the list
      const level = cross(run, UP);
      const u = scale(unit(norm(level) > 1e-9 * norm(run) ? level : ACROSS), side / 2);
      const w = scale(unit(cross(run, u)), side / 2);
      return [add(u, w), subtract(w, u), scale(add(u, w), -1), subtract(u, w)].map((by) => add(point, by));
    }),
  );
}

/** A block from its lowest corner to its highest, m. */
export function block([x0, y0, z0]: Vec3, [x1, y1, z1]: Vec3): Mesh {
  const ring = (x: number): readonly Vec3[] => [
    [x, y0, z0],
    [x, y1, z0],
    [x, y1, z1],
    [x, y0, z1],
  ];
  return loft([ring(x0), ring(x1)]);
}
