import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter } from '../../../src/boat';
import { distance, integrateTo, pointAt, type Vec3 } from '../../../src/kernel';
import { degrees, hullThrough, steps } from '../shapes';

/** A keel that is an arc of a circle in profile, radius 8 m, and a sheer above it. */
function arched(stations: number) {
  const half = Math.asin(2 / 8);
  const angles = steps(-half, half, stations);
  const arc = angles.map((a): Vec3 => [2 + 8 * Math.sin(a), 0, 8 * (1 - Math.cos(a))]);
  return hullThrough({ keel: arc, sheer: arc.map(([x, , z]): Vec3 => [x, 0.5, z + 0.6]) });
}

describe('an arc of 8 m radius', () => {
  test('has its length, to 1 part in a million with nine stations, and by order 4', () => {
    const exact = 2 * 8 * Math.asin(2 / 8);
    const errors = [5, 9, 17].map((n) => Math.abs(arched(n).edge('keel').length / exact - 1));
    expect(errors[1]).toBeLessThan(1e-6);
    for (const [coarse, fine] of [errors.slice(0, 2), errors.slice(1)])
      expect(Math.log2(coarse! / fine!)).toBeGreaterThan(3.5);
  });

  test('has its radius as the tightest, within a per cent', () => {
    expect(arched(9).edge('keel').leastRadius!.radius / 8).toBeGreaterThan(0.99);
    expect(arched(9).edge('keel').leastRadius!.radius / 8).toBeLessThan(1.001);
  });

  test('has its slopes at the stations', () => {
    const edge = arched(9).edge('keel');
    const half = Math.asin(2 / 8);
    steps(-half, half, 9).forEach((angle, i) => {
      expect(edge.slopes[i]!.profile).toBeCloseTo(Math.tan(angle), 4);
      expect(edge.slopes[i]!.plan).toBe(0);
    });
  });

  test('has its middle above the chord’s', () => {
    const half = Math.asin(2 / 8);
    const [x, y, z] = arched(17).edge('keel').centre;
    expect(x).toBeCloseTo(2, 9);
    expect(y).toBe(0);
    // Centre of an arc: radius times sine over angle from its middle.
    expect(z).toBeCloseTo(8 - (8 * Math.sin(half)) / half, 4);
  });
});

describe('on a starter', () => {
  const edge = buildHull(offsetsOf(starter('ferry-dory')!)).edge('sheer');

  test('a place at x lies on the batten, as far along as the curve is long', () => {
    const place = edge.atX(2)!;
    expect(place.point[0]).toBeCloseTo(2, 9);
    const steps = 2000;
    let along = 0;
    for (let k = 0; k < steps; k++) {
      const step = place.parameter / steps;
      along += distance(pointAt(edge.batten, k * step), pointAt(edge.batten, (k + 1) * step));
    }
    expect(place.along).toBeCloseTo(along, 5);
    // Slope by a second road: two places a millimetre either side.
    const [a, b] = [edge.atX(1.999)!.point, edge.atX(2.001)!.point];
    expect(place.plan).toBeCloseTo((b[1] - a[1]) / 0.002, 5);
    expect(place.profile).toBeCloseTo((b[2] - a[2]) / 0.002, 5);
  });

  test('beyond its ends there is no place', () => {
    expect(edge.atX(-0.17)).toBeNull();
    expect(edge.atX(5.21)).toBeNull();
    expect(edge.atX(-0.16)).not.toBeNull();
  });

  test('runs through every station, stem and transom too', () => {
    const line = edge.polyline(2);
    expect(line).toHaveLength(2);
    expect(distance(line[0]!, edge.points[0]!)).toBeLessThan(1e-12);
    expect(distance(line[1]!, edge.points.at(-1)!)).toBeLessThan(1e-12);
    expect(edge.arcs.at(-1)).toBe(edge.length);
    expect(edge.arcs).toHaveLength(7);
  });

  test('is widest between its widest stations', () => {
    let most = 0;
    for (const [, y] of edge.polyline(20_001)) most = Math.max(most, y);
    expect(edge.greatestHalfBreadth).toBeGreaterThan(0.865);
    expect(Math.abs(edge.greatestHalfBreadth - most)).toBeLessThan(1e-8);
  });

  test('the tightest bend is the least over a fine walk', () => {
    const { radius, x, along } = edge.leastRadius!;
    const at = edge.atX(x)!;
    expect(at.along).toBeCloseTo(along, 9);
    // Radius from three places close together: circle through three points.
    const [a, b, c] = [-0.02, 0, 0.02].map((d) => edge.atX(x + d)!.point) as [Vec3, Vec3, Vec3];
    const [p, q, r] = [distance(b, c), distance(a, c), distance(a, b)];
    const s = (p + q + r) / 2;
    const circle = (p * q * r) / (4 * Math.sqrt(s * (s - p) * (s - q) * (s - r)));
    expect(circle / radius).toBeGreaterThan(0.99);
    expect(circle / radius).toBeLessThan(1.02);
  });

  test('ducks press at inner stations only, and hold each other in balance with the ends', () => {
    expect(edge.ducks).toHaveLength(7);
    expect([edge.ducks[0], edge.ducks[6]]).toStrictEqual([
      [0, 0, 0],
      [0, 0, 0],
    ]);
    // The misread frame 2 presses hardest of all on the batten of the misread sheer.
    const misread = buildHull(offsetsOf(starter('ferry-dory-misread')!)).edge('sheer');
    const force = misread.ducks.map((duck) => Math.hypot(...duck));
    const good = edge.ducks.map((duck) => Math.hypot(...duck));
    expect(Math.max(...force) / Math.max(...good)).toBeGreaterThan(3);
  });
});

test('an edge that turns back has no slope there, and says so', () => {
  const xs = [0, 0.01, 2, 2.01, 4];
  const lines = {
    keel: xs.map((x): Vec3 => [x, 0, 0]),
    sheer: xs.map((x, i): Vec3 => [x, 0.5, [0.2, 0.9, 0.2, 0.9, 0.3][i]!]),
  };
  const hull = hullThrough(lines);
  expect(() => hull.edge('sheer').slopes).toThrow(
    'the sheer stands plumb or turns back somewhere, so it has no slope there',
  );
  expect(hull.edge('keel').slopes).toHaveLength(5);
});

test('length agrees with an integral of the batten’s own slope', () => {
  const edge = buildHull(offsetsOf(starter('vee-launch')!)).edge('chine');
  const end = edge.batten.knots.at(-1)!;
  const speed = (t: number) => {
    const h = 1e-5;
    const [a, b] = [pointAt(edge.batten, t - h), pointAt(edge.batten, t + h)];
    return distance(a, b) / (2 * h);
  };
  expect(edge.length).toBeCloseTo(integrateTo(speed, 0, end, 1e-7), 5);
  expect(degrees(Math.atan(edge.slopes[0]!.profile))).toBeLessThan(2);
});
