/** Measures of a mesh by which the tests look at others: whether it holds water, how large it is, where its middle lies. */
import { cross, dot, subtract, type Vec3 } from '../../src/kernel';
import type { Mesh } from '../../src/kernel';

type Triangle = readonly [Vec3, Vec3, Vec3];

function trianglesOf({ points, triangles }: Mesh): readonly Triangle[] {
  const corner = (i: number): Vec3 => [points[3 * i]!, points[3 * i + 1]!, points[3 * i + 2]!];
  return Array.from({ length: triangles.length / 3 }, (_, i) => [
    corner(triangles[3 * i]!),
    corner(triangles[3 * i + 1]!),
    corner(triangles[3 * i + 2]!),
  ]);
}

const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

/** Area, m2. */
export const meshArea = (mesh: Mesh): number =>
  sum(trianglesOf(mesh).map(([a, b, c]) => Math.hypot(...cross(subtract(b, a), subtract(c, a))) / 2));

/** Centre of the volume within a closed mesh, m: of the tetrahedra from the origin; null where it has none. */
export function meshCentroid(mesh: Mesh): Vec3 | null {
  const pieces = trianglesOf(mesh).map(([a, b, c]) => ({
    volume: dot(a, cross(b, c)) / 6,
    corners: [a, b, c],
  }));
  const volume = sum(pieces.map((piece) => piece.volume));
  if (volume === 0) return null;
  const along = (axis: 0 | 1 | 2) =>
    sum(pieces.map((piece) => (piece.volume * sum(piece.corners.map((corner) => corner[axis]))) / 4)) /
    volume;
  return [along(0), along(1), along(2)];
}

/**
 * Whether every edge of every triangle is shared with one that runs it the other way, so that the mesh holds
 * water. Points nearer together than the tolerance, m, count as one.
 */
export function isClosed(mesh: Mesh, tolerance = 1e-7): boolean {
  const names = new Map<string, number>();
  const welded = Array.from({ length: mesh.points.length / 3 }, (_, i) => {
    const key = [0, 1, 2].map((axis) => Math.round(mesh.points[3 * i + axis]! / tolerance)).join();
    const name = names.get(key) ?? names.size;
    names.set(key, name);
    return name;
  });
  const balance = new Map<string, number>();
  for (let i = 0; i < mesh.triangles.length; i++) {
    const from = welded[mesh.triangles[i]!]!;
    const to = welded[mesh.triangles[i % 3 === 2 ? i - 2 : i + 1]!]!;
    if (from === to) continue;
    const key = from < to ? `${from} ${to}` : `${to} ${from}`;
    balance.set(key, (balance.get(key) ?? 0) + (from < to ? 1 : -1));
  }
  return [...balance.values()].every((count) => count === 0);
}
