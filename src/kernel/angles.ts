import { dot, norm } from './vec';
import type { Vec3 } from './vec';

// Axes: x forward, y to port, z up. All angles in radians.

/** Flare of a surface in the transverse section, from vertical; + leans outward going up. */
export function flareOfNormal(normal: Vec3): number {
  return Math.atan2(-normal[2], normal[1]);
}

/** Angle inside the boat between two surfaces with outward normals a and b: pi where one runs on into the other. */
export function dihedral(a: Vec3, b: Vec3): number {
  const cosine = dot(a, b) / (norm(a) * norm(b));
  return Math.acos(Math.min(1, Math.max(-1, -cosine)));
}
