import type { Vec3 } from './vec';

/** A surface of flat triangles: x, y, z a point, three points a triangle, counter-clockwise seen from outside. */
export interface Mesh {
  readonly points: Float64Array;
  readonly triangles: Uint32Array;
}

/**
 * The surface ruled between two lines of the same number of points. Faces the same way as a strip:
 * (a to b) x (along the lines). Each piece is cut along its shorter diagonal.
 */
export function bridge(a: readonly Vec3[], b: readonly Vec3[]): Mesh {
  const n = a.length;
  if (n !== b.length || n < 2)
    throw new Error(`a bridge needs two lines of as many points; got ${n} and ${b.length}`);
  const triangles: number[] = [];
  for (let k = 0; k + 1 < n; k++) {
    // k + 1 is inside both lists; the points of b follow those of a.
    const rising = distance2(a[k]!, b[k + 1]!);
    const falling = distance2(a[k + 1]!, b[k]!);
    if (rising <= falling) triangles.push(k, n + k, n + k + 1, k, n + k + 1, k + 1);
    else triangles.push(k, n + k, k + 1, k + 1, n + k, n + k + 1);
  }
  return { points: Float64Array.from([...a, ...b].flat()), triangles: Uint32Array.from(triangles) };
}

function distance2(a: Vec3, b: Vec3): number {
  return (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 + (a[2] - b[2]) ** 2;
}

/**
 * A plane polygon of any simple shape, counter-clockwise seen from outside, fanned about the mean of its
 * corners. In a hollow shape some triangles overlap and face backwards; volumes, areas of sections and centres
 * still come out right, but not its area.
 */
export function polygonMesh(corners: readonly Vec3[]): Mesh {
  const n = corners.length;
  if (n < 3) throw new Error(`a polygon needs at least 3 corners; got ${n}`);
  const points = new Float64Array(3 * (n + 1));
  const triangles = new Uint32Array(3 * n);
  corners.forEach((corner, i) => {
    points.set(corner, 3 * i);
    // The mean lies behind the last corner.
    for (let axis = 0; axis < 3; axis++) points[3 * n + axis]! += corner[axis]! / n;
    triangles.set([n, i, (i + 1) % n], 3 * i);
  });
  return { points, triangles };
}

/** The same surface seen from its other side. */
export function reversed(mesh: Mesh): Mesh {
  const triangles = mesh.triangles.slice();
  for (let i = 0; i < triangles.length; i += 3) {
    triangles[i + 1] = mesh.triangles[i + 2]!;
    triangles[i + 2] = mesh.triangles[i + 1]!;
  }
  return { points: mesh.points, triangles };
}

/** The other side of the boat: y to -y, and outward still outward. */
export function mirrored(mesh: Mesh): Mesh {
  const points = mesh.points.map((value, i) => (i % 3 === 1 ? -value : value));
  return { points, triangles: reversed(mesh).triangles };
}

/** Several surfaces as one mesh. */
export function joined(...meshes: readonly Mesh[]): Mesh {
  const points = new Float64Array(meshes.reduce((sum, mesh) => sum + mesh.points.length, 0));
  const triangles = new Uint32Array(meshes.reduce((sum, mesh) => sum + mesh.triangles.length, 0));
  let point = 0;
  let corner = 0;
  for (const mesh of meshes) {
    points.set(mesh.points, point);
    const before = point / 3;
    triangles.set(
      mesh.triangles.map((index) => index + before),
      corner,
    );
    point += mesh.points.length;
    corner += mesh.triangles.length;
  }
  return { points, triangles };
}
