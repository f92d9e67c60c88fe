import { describe, expect, test } from 'vitest';
import {
  bendBatten,
  crownAt,
  curveOf,
  distance,
  normalOnEdge,
  spanStrip,
  stripSection,
} from '../../src/kernel';
import type { Curve, Vec3 } from '../../src/kernel';
import './near';
import { onCone, onCylinder, pointOn, straight, uneven, wave } from './shapes';

const { cos, sin, atan2 } = Math;

describe('a cylinder of radius 2 whose axis leans 0.5 from upright, cut by x = const in an ellipse', () => {
  const lean = 0.5;
  /** From the cylinder's own axes to the boat's: turned about y. */
  const leaning = (curve: Curve): Curve => ({
    ...curve,
    write(t, out) {
      curve.write(t, out);
      for (let i = 0; i < 9; i += 3) {
        const [x, z] = [out[i] ?? NaN, out[i + 2] ?? NaN];
        out[i] = x * cos(lean) + z * sin(lean);
        out[i + 2] = -x * sin(lean) + z * cos(lean);
      }
    },
  });
  const upright = ([x, y, z]: Vec3): Vec3 => [
    x * cos(lean) - z * sin(lean),
    y,
    x * sin(lean) + z * cos(lean),
  ];
  // Angles from 2.4 down to 0.8: forward along x as the angle falls, port side.
  const about = (t: number) => [2.4 - 1.6 * t, -1.6, 0] as const;
  const strip = spanStrip(
    leaning(onCylinder(2, about, wave(0, 0.1, 2))),
    leaning(onCylinder(2, about, straight(0.9, 0.1))),
  );

  test('every point of a section lies on the cylinder and in the plane, from first edge to second', () => {
    for (const x of [-0.6, 0, 0.4, 1]) {
      const section = stripSection(strip, x);
      expect(section.length).toBeGreaterThan(5);
      for (const { point, normal } of section) {
        const [a, b] = upright(point);
        // Rulings are true to within a hair; they lie on the cylinder whole.
        expect(Math.hypot(a, b)).toBeNear(2, 1e-7);
        expect(point[0]).toBeNear(x, 1e-12, 1e-12);
        const [na, nb, nc] = upright(normal);
        expect(atan2(nb, na)).toBeNear(atan2(b, a), 2e-4);
        expect(nc).toBeNear(0, 0, 2e-4);
      }
      expect(section[0]?.share).toBe(0);
      expect(section.at(-1)?.share).toBe(1);
      const heights = section.map(({ point }) => point[2]);
      expect(heights).toStrictEqual(heights.toSorted((p, q) => p - q));
    }
  });

  test('crown is that of the ellipse: farthest from its chord at the middle angle', () => {
    for (const x of [-0.5, 0.1, 0.8]) {
      const section = stripSection(strip, x);
      const ends = [section[0], section.at(-1)].map((at): Vec3 => at?.point ?? [NaN, NaN, NaN]);
      const [one, two] = ends as [Vec3, Vec3];
      const angleOf = (point: Vec3): number => {
        const [a, b] = upright(point);
        return atan2(b, a);
      };
      const middle = (angleOf(one) + angleOf(two)) / 2;
      // In the plane x = const the cylinder is (2 sin a, x cot lean - 2 cos a / sin lean).
      const far: Vec3 = [x, 2 * sin(middle), x / Math.tan(lean) - (2 * cos(middle)) / sin(lean)];
      const chord = distance(one, two);
      const off = ((far[1] - one[1]) * (two[2] - one[2]) - (far[2] - one[2]) * (two[1] - one[1])) / chord;
      const crown = crownAt(strip, x);
      expect(crown?.chord).toBeNear(chord, 1e-12);
      // A parabola through three points near the crest.
      expect(crown?.crown).toBeNear(Math.abs(off), 1e-4);
      expect(distance(crown?.point ?? far, far)).toBeNear(0, 0, 0.02);
      expect(crown?.point[0]).toBeNear(x, 1e-12);
      expect(crown?.crown).toBeGreaterThan(0);
    }
  });

  test('a hollow surface has a negative crown', () => {
    const mirror = (curve: Curve): Curve => ({
      ...curve,
      write(t, out) {
        curve.write(t, out);
        for (let i = 1; i < 9; i += 3) out[i] = 4 - (out[i] ?? NaN);
      },
    });
    const hollow = spanStrip(mirror(strip.first), mirror(strip.second));
    expect(crownAt(hollow, 0.1)?.crown).toBeNear(-(crownAt(strip, 0.1)?.crown ?? NaN), 1e-6);
  });
});

describe('where only one edge reaches', () => {
  // A raked stern: the sheer starts further aft.
  const chine = curveOf(
    bendBatten([
      [0, 0.5, 0.1],
      [2, 0.6, 0.1],
      [4, 0.1, 0.2],
    ]),
  );
  const sheer = curveOf(
    bendBatten([
      [-0.3, 0.6, 0.6],
      [2, 0.8, 0.6],
      [4.2, 0.2, 0.7],
    ]),
  );
  const strip = spanStrip(chine, sheer);
  test('the section starts on the end line and there is no crown', () => {
    const section = stripSection(strip, -0.1);
    expect(section[0]?.ruling).toBe(0);
    expect(section[0]?.share).toBeNear(1 / 3, 1e-12);
    expect(section.at(-1)?.share).toBe(1);
    expect(crownAt(strip, -0.1)).toBeNull();
    expect(stripSection(strip, 4.1).at(-1)?.share).toBe(1);
  });
  test('beyond both there is none', () => {
    expect(stripSection(strip, -0.4)).toStrictEqual([]);
    expect(stripSection(strip, 4.3)).toStrictEqual([]);
  });
  test('both ends of the section lie on the edges', () => {
    const section = stripSection(strip, 2);
    expect(section[0]?.point[1]).toBeNear(0.6, 1e-12);
    expect(section.at(-1)?.point[1]).toBeNear(0.8, 1e-12);
  });
});

describe('along an edge', () => {
  const half = 0.4;
  const [near, far] = [wave(5, 0.2, 3), wave(6, 0.3, 2, 1)];
  const about = uneven(2, 0.4);
  const first = onCone(half, near, about);
  const strip = spanStrip(first, onCone(half, far, uneven(2, -0.3)));
  const places = [0, 0.013, 0.25, 0.4999, 0.77, 1];
  test('the normal is that of the cone', () => {
    for (const t of places) {
      const [x, y] = pointOn(first, t);
      const angle = atan2(y, x);
      const want = [cos(half) * cos(angle), cos(half) * sin(angle), -sin(half)];
      const got = normalOnEdge(strip, 'first', t);
      // Either side may be outside here; the first component tells which.
      const side = Math.sign((got[0] ?? NaN) * (want[0] ?? NaN));
      want.forEach((value, axis) => expect(side * (got[axis] ?? NaN)).toBeNear(value, 0, 5e-5));
    }
  });
});
