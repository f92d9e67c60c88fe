import type { Curve, Vec3 } from '../../src/kernel';

/** A number over a parameter, with its first and second derivative. */
export type Smooth = (t: number) => readonly [value: number, slope: number, second: number];

/** a + b t, a straight run. */
export function straight(a: number, b: number): Smooth {
  return (t) => [a + b * t, b, 0];
}

/** a + b sin(w t + p). */
export function wave(a: number, b: number, w: number, p = 0): Smooth {
  return (t) => [a + b * Math.sin(w * t + p), b * w * Math.cos(w * t + p), -b * w * w * Math.sin(w * t + p)];
}

/** A run from 0 to span over t = 0..1 that hurries or dawdles on the way by the given share. */
export function uneven(span: number, share: number): Smooth {
  const w = 2 * Math.PI;
  return (t) => [
    span * (t + (share / w) * (1 - Math.cos(w * t))),
    span * (1 + share * Math.sin(w * t)),
    span * share * w * Math.cos(w * t),
  ];
}

/** A curve from three smooth coordinates over t = 0..1. */
export function curveFrom(x: Smooth, y: Smooth, z: Smooth, start = 0, end = 1): Curve {
  return {
    start,
    end,
    write(t, out) {
      [x, y, z].forEach((axis, i) => {
        const [value, slope, second] = axis(t);
        out[i] = value;
        out[i + 3] = slope;
        out[i + 6] = second;
      });
    },
  };
}

/** The product of two smooth numbers. */
function times(a: Smooth, b: Smooth): Smooth {
  return (t) => {
    const [a0, a1, a2] = a(t);
    const [b0, b1, b2] = b(t);
    return [a0 * b0, a1 * b0 + a0 * b1, a2 * b0 + 2 * a1 * b1 + a0 * b2];
  };
}

function sineOf(angle: Smooth): Smooth {
  return (t) => {
    const [a, a1, a2] = angle(t);
    return [Math.sin(a), a1 * Math.cos(a), a2 * Math.cos(a) - a1 * a1 * Math.sin(a)];
  };
}

function plus(a: Smooth, by: number): Smooth {
  return (t) => {
    const [a0, a1, a2] = a(t);
    return [a0 + by, a1, a2];
  };
}

function timesNumber(a: Smooth, by: number): Smooth {
  return (t) => {
    const [a0, a1, a2] = a(t);
    return [a0 * by, a1 * by, a2 * by];
  };
}

/**
 * A curve on a cone about the z axis with its tip at the origin and the given half angle: distance from the tip and
 * angle about the axis over t. Laid flat it has the polar coordinates distance and angle * sin(half angle).
 */
export function onCone(half: number, fromTip: Smooth, about: Smooth): Curve {
  const radius = timesNumber(fromTip, Math.sin(half));
  const cosine = sineOf(plus(about, Math.PI / 2));
  return curveFrom(times(radius, cosine), times(radius, sineOf(about)), timesNumber(fromTip, Math.cos(half)));
}

/** A curve on a cylinder along the z axis; laid flat it has the coordinates radius * angle and z. */
export function onCylinder(radius: number, about: Smooth, z: Smooth): Curve {
  return curveFrom(
    timesNumber(sineOf(plus(about, Math.PI / 2)), radius),
    timesNumber(sineOf(about), radius),
    z,
  );
}

/** A curve that stands still. */
export function still(x: number, y: number, z: number): Curve {
  return curveFrom(straight(x, 0), straight(y, 0), straight(z, 0));
}

/** The point of a curve. */
export function pointOn(curve: Curve, t: number): Vec3 {
  const out = new Float64Array(9);
  curve.write(t, out);
  return [out[0] ?? NaN, out[1] ?? NaN, out[2] ?? NaN];
}

/** A box from one corner to the opposite one, faces outward, as twelve triangles. */
export function boxMesh(low: Vec3, high: Vec3): { points: Float64Array; triangles: Uint32Array } {
  const points: number[] = [];
  for (let i = 0; i < 8; i++) {
    points.push(i & 1 ? high[0] : low[0], i & 2 ? high[1] : low[1], i & 4 ? high[2] : low[2]);
  }
  // Corner number: 1 for x, 2 for y, 4 for z; each face counter-clockwise from outside.
  const faces = [
    [0, 4, 6, 2],
    [1, 3, 7, 5],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 2, 3, 1],
    [4, 5, 7, 6],
  ];
  const triangles = faces.flatMap(([a = 0, b = 0, c = 0, d = 0]) => [a, b, c, a, c, d]);
  return { points: Float64Array.from(points), triangles: Uint32Array.from(triangles) };
}

/** A fixed-seed setting for property tests. */
export const seeded = { seed: 20240607, numRuns: 60 } as const;
