import { describe, expect, test } from 'vitest';
import { fineEdge, spanStrip, type Vec2 } from '../../src/kernel';
import type { Curve } from '../../src/kernel';

/** A level arc of some radius, radians either side of forward, at a height. */
function arc(radius: number, half: number, z: number): Curve {
  return {
    start: -half,
    end: half,
    write(t, out) {
      const [s, c] = [Math.sin(t), Math.cos(t)];
      out.set([radius * s, radius * c, z, radius * c, -radius * s, 0, -radius * s, -radius * c, 0]);
    },
  };
}

const offCircle = (line: readonly Vec2[], radius: number) => {
  // Three places of a circle give its middle; every place and the middle of every chord is held against it.
  const [a, b, c] = [line[0]!, line[Math.floor(line.length / 2)]!, line.at(-1)!];
  const d = 2 * (a[0] * (b[1] - c[1]) + b[0] * (c[1] - a[1]) + c[0] * (a[1] - b[1]));
  const [aa, bb, cc] = [a, b, c].map(([x, y]) => x * x + y * y);
  const middle: Vec2 = [
    (aa! * (b[1] - c[1]) + bb! * (c[1] - a[1]) + cc! * (a[1] - b[1])) / d,
    (aa! * (c[0] - b[0]) + bb! * (a[0] - c[0]) + cc! * (b[0] - a[0])) / d,
  ];
  const off = ([x, y]: Vec2) => Math.abs(Math.hypot(x - middle[0], y - middle[1]) - radius);
  return Math.max(
    ...line.map(off),
    ...line.slice(1).map((to, i) => off([(to[0] + line[i]![0]) / 2, (to[1] + line[i]![1]) / 2])),
  );
};

describe('an edge on the sheet', () => {
  // A cone of slant 3 : 4 : 5: the foot, of radius 1.2, rolls out to a circle of 2.
  const cone = spanStrip(arc(1.2, 0.5, 0), arc(0.6, 0.5, 0.8), { cells: 16 });

  test('of a cone is an arc, its chords no farther off it than asked', () => {
    for (const tolerance of [1e-3, 1e-4, 1e-5]) {
      expect(offCircle(fineEdge(cone, 'first', tolerance), 2)).toBeLessThan(tolerance);
      expect(offCircle(fineEdge(cone, 'second', tolerance), 1)).toBeLessThan(tolerance);
    }
  });

  test('passes through its points a ruling, and bears more of them where less is allowed', () => {
    const coarse = fineEdge(cone, 'first', 1);
    expect(coarse).toStrictEqual(cone.flat.first);
    const fine = fineEdge(cone, 'first', 1e-6);
    expect(fine.length).toBeGreaterThan(4 * coarse.length);
    for (const point of coarse) expect(fine).toContainEqual(point);
  });

  test('says a corner once about which rulings fan', () => {
    const apex: Curve = { start: 0, end: 1, write: (_, out) => out.set([0, 0, 2, 0, 0, 0, 0, 0, 0]) };
    expect(fineEdge(spanStrip(arc(1, 0.5, 0), apex, { cells: 8 }), 'second', 1e-4)).toHaveLength(1);
  });
});
