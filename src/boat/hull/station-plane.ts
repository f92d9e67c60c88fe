/**
 * The plane in which a station stands, and its true shape there: what lofting calls expanding a raked transom.
 */
import { unit, type Vec2, type Vec3 } from '../../kernel';

/** A plane square to the centreline plane. */
export interface StationPlane {
  /** Unit normal, pointing forward. */
  readonly normal: Vec3;
  /** Angle from the vertical, + where the top leans forward, rad. */
  readonly lean: number;
  /** Farthest that a point of the station lies from the plane, m. */
  readonly miss: number;
}

/** The plane square to the centreline plane that lies nearest to the points (least squares along x). */
export function planeThrough(points: readonly Vec3[]): StationPlane {
  const n = points.length;
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / n;
  const meanZ = points.reduce((sum, [, , z]) => sum + z, 0) / n;
  let xz = 0;
  let zz = 0;
  for (const [x, , z] of points) {
    xz += (x - meanX) * (z - meanZ);
    zz += (z - meanZ) ** 2;
  }
  const slope = zz === 0 ? 0 : xz / zz;
  const normal = unit([1, 0, -slope]);
  const offLine = points.map(([x, , z]) => Math.abs((x - meanX) * normal[0] + (z - meanZ) * normal[2]));
  return { normal, lean: Math.atan(slope), miss: Math.max(...offLine) };
}

/** Expands a raked station: half-breadths stay, heights are laid off up the slope. */
export function trueShape(points: readonly Vec3[], plane: StationPlane): readonly Vec2[] {
  const [keelX, , keelZ] = points[0]!; // every station has a keel
  const up = [Math.sin(plane.lean), Math.cos(plane.lean)] as const;
  return points.map(([x, y, z]): Vec2 => [y, (x - keelX) * up[0] + (z - keelZ) * up[1]]);
}

/** Area between a true shape, the centreline and a level line at the top, m2. */
export function areaToCentreline(outline: readonly Vec2[]): number {
  let area = 0;
  for (let i = 1; i < outline.length; i++) {
    const [y0, u0] = outline[i - 1]!;
    const [y1, u1] = outline[i]!;
    area += ((y0 + y1) / 2) * (u1 - u0);
  }
  return area;
}

/** How far apart the corners of a station stand, fore and aft, m: nothing of one that is plumb. */
export function apartForward(corners: readonly Vec3[]): number {
  const forward = corners.map(([x]) => x);
  return Math.max(...forward) - Math.min(...forward);
}
