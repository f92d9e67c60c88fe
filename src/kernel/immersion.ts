import type { Mesh } from './mesh';
import { cutMesh } from './cut-mesh';
import { axesOf, fromPlane } from './plane';
import type { Plane } from './plane';
import { add } from './vec';
import type { Vec3 } from './vec';

/** The part of a closed mesh below a plane. */
export interface Immersion {
  /** m3 */
  readonly volume: number;
  /** Centre of that volume, m; null when all is above. */
  readonly centroid: Vec3 | null;
  /** Area of the skin below, m2. */
  readonly wettedArea: number;
  readonly waterplane: Waterplane;
}

/** The area cut by the plane, as a figure in it. */
export interface Waterplane {
  /** m2 */
  readonly area: number;
  /** Its centre, m; null when nothing is cut. */
  readonly centroid: Vec3 | null;
  /** Second moments about the axes through its centre, m4: about the fore-and-aft one, and the one across. */
  readonly transverse: number;
  readonly longitudinal: number;
  /** The mixed one, about both axes, m4: 0 where they are its principal axes, as upright. */
  readonly mixed: number;
}

/**
 * Volume, centre and wetted area of a closed mesh below a plane, and the waterplane with its second moments.
 * Exact for the mesh, with no cap to be built: seen from a point of the plane the cap spans no volume, and the
 * waterplane follows from its rim by Green's theorem.
 *
 * Source: divergence theorem and Green's theorem, as in any text of vector analysis.
 */
export function below(mesh: Mesh, plane: Plane): Immersion {
  const axes = axesOf(plane);
  const [fx, fy, fz] = axes.forward;
  const [px, py, pz] = axes.port;
  // Volume, its three moments, wetted area. Numbers in a list of their own are added up in place.
  const under = new Float64Array(5);
  // Area, first and second moments of the waterplane over its two coordinates.
  const cut = new Float64Array(6);
  cutMesh(
    mesh,
    axes,
    (points, a, b, c) => {
      const ax = points[a]!;
      const ay = points[a + 1]!;
      const az = points[a + 2]!; // three numbers a point
      const bx = points[b]!;
      const by = points[b + 1]!;
      const bz = points[b + 2]!;
      const cx = points[c]!;
      const cy = points[c + 1]!;
      const cz = points[c + 2]!;
      const part = (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
      under[0]! += part;
      under[1]! += (part * (ax + bx + cx)) / 4;
      under[2]! += (part * (ay + by + cy)) / 4;
      under[3]! += (part * (az + bz + cz)) / 4;
      const ux = bx - ax;
      const uy = by - ay;
      const uz = bz - az;
      const vx = cx - ax;
      const vy = cy - ay;
      const vz = cz - az;
      const sx = uy * vz - uz * vy;
      const sy = uz * vx - ux * vz;
      const sz = ux * vy - uy * vx;
      under[4]! += Math.sqrt(sx * sx + sy * sy + sz * sz) / 2;
    },
    (points, a, b) => {
      const ax = points[a]!;
      const ay = points[a + 1]!;
      const az = points[a + 2]!;
      const bx = points[b]!;
      const by = points[b + 1]!;
      const bz = points[b + 2]!;
      const a1 = ax * fx + ay * fy + az * fz;
      const a2 = ax * px + ay * py + az * pz;
      const b1 = bx * fx + by * fy + bz * fz;
      const b2 = bx * px + by * py + bz * pz;
      const twice = a1 * b2 - b1 * a2;
      cut[0]! += twice / 2;
      cut[1]! += ((a1 + b1) * twice) / 6;
      cut[2]! += ((a2 + b2) * twice) / 6;
      cut[3]! += ((a1 * a1 + a1 * b1 + b1 * b1) * twice) / 12;
      cut[4]! += ((a2 * a2 + a2 * b2 + b2 * b2) * twice) / 12;
      cut[5]! += ((2 * a1 * a2 + a1 * b2 + b1 * a2 + 2 * b1 * b2) * twice) / 24;
    },
  );
  const volume = under[0]!; // as many as are added up
  const area = cut[0]!;
  const [mx, my, mz] = [under[1]!, under[2]!, under[3]!];
  const [m1, m2] = [cut[1]!, cut[2]!];
  return {
    volume,
    centroid: volume > 0 ? add(axes.origin, [mx / volume, my / volume, mz / volume]) : null,
    wettedArea: under[4]!,
    waterplane: {
      area,
      centroid: area > 0 ? fromPlane(axes, m1 / area, m2 / area) : null,
      transverse: area > 0 ? cut[4]! - (m2 * m2) / area : 0,
      longitudinal: area > 0 ? cut[3]! - (m1 * m1) / area : 0,
      mixed: area > 0 ? cut[5]! - (m1 * m2) / area : 0,
    },
  };
}
