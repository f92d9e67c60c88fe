import type { Mesh } from './mesh';
import type { Vec3 } from './vec';

/** Centre of area of a mesh, m; null when it has no area. */
export function surfaceCentroid(mesh: Mesh): Vec3 | null {
  const [area, x, y, z] = surface(mesh);
  return area === 0 ? null : [x / area, y / area, z / area];
}

type Moments = readonly [size: number, x: number, y: number, z: number];

function surface({ points, triangles }: Mesh): Moments {
  let area = 0;
  let x = 0;
  let y = 0;
  let z = 0;
  // A triangle has three corners, each a point of three numbers.
  for (let i = 0; i < triangles.length; i += 3) {
    const a = 3 * triangles[i]!;
    const b = 3 * triangles[i + 1]!;
    const c = 3 * triangles[i + 2]!;
    const ux = points[b]! - points[a]!;
    const uy = points[b + 1]! - points[a + 1]!;
    const uz = points[b + 2]! - points[a + 2]!;
    const vx = points[c]! - points[a]!;
    const vy = points[c + 1]! - points[a + 1]!;
    const vz = points[c + 2]! - points[a + 2]!;
    const part = Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
    area += part;
    x += (part * (points[a]! + points[b]! + points[c]!)) / 3;
    y += (part * (points[a + 1]! + points[b + 1]! + points[c + 1]!)) / 3;
    z += (part * (points[a + 2]! + points[b + 2]! + points[c + 2]!)) / 3;
  }
  return [area, x, y, z];
}

/**
 * Volume within a closed mesh, m3: the sum over its triangles of the tetrahedron that each spans with the first
 * point, which is near and keeps rounding small.
 */
export function meshVolume({ points, triangles }: Mesh): number {
  let volume = 0;
  const ox = points[0] ?? 0;
  const oy = points[1] ?? 0;
  const oz = points[2] ?? 0;
  for (let i = 0; i < triangles.length; i += 3) {
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
    volume += (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
  }
  return volume;
}
