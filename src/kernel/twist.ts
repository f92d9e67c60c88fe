/**
 * How much a ruling twists: the squared sine of the angle between the planes through the ruling d and the edge
 * directions a and b at its ends, running on from 1 to 2 for obtuse angles. Works without square roots, as d lies in
 * both planes.
 *
 * An edge that stands still (the apex of a cone), or a ruling of no length, asks for no plane: 0. A ruling along its
 * own edge makes no surface at all, so it counts as the worst.
 */
export function twistOf(
  ax: number,
  ay: number,
  az: number,
  bx: number,
  by: number,
  bz: number,
  dx: number,
  dy: number,
  dz: number,
): number {
  const dd = dx * dx + dy * dy + dz * dz;
  const aa = ax * ax + ay * ay + az * az;
  const bb = bx * bx + by * by + bz * bz;
  const ad = ax * dx + ay * dy + az * dz;
  const bd = bx * dx + by * dy + bz * dz;
  const all = aa * bb * dd * dd;
  if (all === 0) return 0;
  const volume = dx * (ay * bz - az * by) + dy * (az * bx - ax * bz) + dz * (ax * by - ay * bx);
  const sine2 = dd * volume * volume;
  const cosine = (ax * bx + ay * by + az * bz) * dd - ad * bd;
  const size = sine2 + cosine * cosine;
  if (size < 1e-20 * all) return 2;
  const angle = sine2 / size;
  return cosine >= 0 ? angle : 2 - angle;
}
