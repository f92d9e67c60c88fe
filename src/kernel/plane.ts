import { add, cross, dot, scale, subtract, unit } from './vec';
import type { Vec3 } from './vec';

/** A plane by its upward unit normal and its height along that from the origin, m; below is dot(normal, p) < height. */
export interface Plane {
  readonly normal: Vec3;
  readonly height: number;
}

/** Axes in a plane: a point of it, forward (as near to x as it lies) and to port of that. */
export interface PlaneAxes {
  readonly origin: Vec3;
  readonly normal: Vec3;
  readonly forward: Vec3;
  readonly port: Vec3;
}

/** Axes for measuring in a plane; across the boat the nearest to y takes the place of forward. */
export function axesOf(plane: Plane): PlaneAxes {
  const normal = unit(plane.normal);
  const lead: Vec3 = Math.abs(normal[0]) < 0.99 ? [1, 0, 0] : [0, 1, 0];
  const forward = unit(subtract(lead, scale(normal, dot(lead, normal))));
  return { origin: scale(normal, plane.height), normal, forward, port: cross(normal, forward) };
}

/** A point from its two coordinates in a plane. */
export function fromPlane(axes: PlaneAxes, forward: number, port: number): Vec3 {
  return add(axes.origin, add(scale(axes.forward, forward), scale(axes.port, port)));
}
