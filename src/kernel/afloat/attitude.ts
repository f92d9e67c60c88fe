import type { Vec3 } from '../vec';

/** How a body lies in the water, rad. */
export interface Attitude {
  /** How far it has rolled about its own fore-and-aft axis, + to port. */
  readonly heel: number;
  /** How far that axis lies off the level, + by the bow. */
  readonly trim: number;
}

export const UPRIGHT: Attitude = { heel: 0, trim: 0 };

/** What points up then, as a unit direction in the body's own axes: the normal of the water. */
export function upOf({ heel, trim }: Attitude): Vec3 {
  return [-Math.sin(trim), -Math.cos(trim) * Math.sin(heel), Math.cos(trim) * Math.cos(heel)];
}
