/** Points and directions as plain tuples: metres for points, any unit for directions. */
export type Vec2 = readonly [x: number, y: number];
export type Vec3 = readonly [x: number, y: number, z: number];

export function add(a: Vec3, b: Vec3): Vec3 {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

export function subtract(a: Vec3, b: Vec3): Vec3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function scale(a: Vec3, factor: number): Vec3 {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

export function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Length of a vector. */
export function norm(a: Vec3): number {
  return Math.hypot(a[0], a[1], a[2]);
}

export function distance(a: Vec3, b: Vec3): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
}

/** The direction of a vector; throws for a vector of no length, which has none. */
export function unit(a: Vec3): Vec3 {
  const length = norm(a);
  if (length === 0) throw new Error('a vector of no length has no direction');
  return [a[0] / length, a[1] / length, a[2] / length];
}

/** The point a share of the way from a to b: 0 gives a, 1 gives b. */
export function between(a: Vec3, b: Vec3, share: number): Vec3 {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2])];
}

export function distance2(a: Vec2, b: Vec2): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

export function between2(a: Vec2, b: Vec2, share: number): Vec2 {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
}
