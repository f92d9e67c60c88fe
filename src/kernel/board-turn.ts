import { add, cross, dot, scale } from './vec';
import type { Vec3 } from './vec';

/**
 * How far a board has turned about its own length between two places near each other, rad: + as a right-hand screw
 * going forward. Bending alone, without twist, carries the first face over to the second place by the shortest turn
 * from the first direction to the second; what is left is twist. Second order in the distance.
 *
 * @param along unit directions of the board's length; not opposite
 * @param face unit normals of its face, square to them
 * Source: M. P. do Carmo, Differential Geometry of Curves and Surfaces, section 3-2: geodesic torsion of a strip.
 */
export function turnBetween(along: readonly [Vec3, Vec3], face: readonly [Vec3, Vec3]): number {
  const [from, to] = along;
  const axis = cross(from, to);
  const cosine = dot(from, to);
  if (!(cosine > -0.999))
    throw new Error('a board doesn’t run back on itself between two places near each other');
  const carried = add(
    add(scale(face[0], cosine), cross(axis, face[0])),
    scale(axis, dot(axis, face[0]) / (1 + cosine)),
  );
  return Math.atan2(dot(cross(carried, face[1]), to), dot(carried, face[1]));
}
