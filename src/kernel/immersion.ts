import type { Mesh } from './mesh';
import { axesOf, cutMesh, fromPlane } from './plane';
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
  let volume = 0;
  let mx = 0;
  let my = 0;
  let mz = 0;
  let wettedArea = 0;
  // Area, first and second moments of the waterplane over its two coordinates.
  let area = 0;
  let m1 = 0;
  let m2 = 0;
  let m11 = 0;
  let m22 = 0;
  let m12 = 0;
  cutMesh(
    mesh,
    axes,
    (ax, ay, az, bx, by, bz, cx, cy, cz) => {
      const part = (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
      volume += part;
      mx += (part * (ax + bx + cx)) / 4;
      my += (part * (ay + by + cy)) / 4;
      mz += (part * (az + bz + cz)) / 4;
      const ux = bx - ax;
      const uy = by - ay;
      const uz = bz - az;
      const vx = cx - ax;
      const vy = cy - ay;
      const vz = cz - az;
      wettedArea +=
        Math.sqrt((uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2) / 2;
    },
    (ax, ay, az, bx, by, bz) => {
      const a1 = ax * fx + ay * fy + az * fz;
      const a2 = ax * px + ay * py + az * pz;
      const b1 = bx * fx + by * fy + bz * fz;
      const b2 = bx * px + by * py + bz * pz;
      const twice = a1 * b2 - b1 * a2;
      area += twice / 2;
      m1 += ((a1 + b1) * twice) / 6;
      m2 += ((a2 + b2) * twice) / 6;
      m11 += ((a1 * a1 + a1 * b1 + b1 * b1) * twice) / 12;
      m22 += ((a2 * a2 + a2 * b2 + b2 * b2) * twice) / 12;
      m12 += ((2 * a1 * a2 + a1 * b2 + b1 * a2 + 2 * b1 * b2) * twice) / 24;
    },
  );
  return {
    volume,
    centroid: volume > 0 ? add(axes.origin, [mx / volume, my / volume, mz / volume]) : null,
    wettedArea,
    waterplane: {
      area,
      centroid: area > 0 ? fromPlane(axes, m1 / area, m2 / area) : null,
      transverse: area > 0 ? m22 - (m2 * m2) / area : 0,
      longitudinal: area > 0 ? m11 - (m1 * m1) / area : 0,
      mixed: area > 0 ? m12 - (m1 * m2) / area : 0,
    },
  };
}
