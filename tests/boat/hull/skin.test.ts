import { describe, expect, test } from 'vitest';
import { buildHull, type Offsets, offsetsOf, starter } from '../../../src/boat';
import { insideOf } from '../inside-of';
import { box, hullThrough, planeSided, radians, veePrism, wedge, near } from '../shapes';

const at = (offsets: Offsets, edge: number, station: number) =>
  offsets.points[edge]![station]! as [number, number, number];
const thick = (bottom: number, side: number) => (panel: string) => (panel === 'side' ? side : bottom);

describe('outside to inside', () => {
  test('a box loses the thickness of bottom and side', () => {
    const inside = insideOf(hullThrough(box(3, 1, 0.4)), thick(0.012, 0.006));
    expect(inside.offsetsTo).toBe('inside of skin');
    expect(at(inside, 0, 2)).toStrictEqual([1.5, 0, near(0.012, 12)]);
    expect(at(inside, 1, 2)).toStrictEqual([1.5, near(0.494, 12), near(0.012, 12)]);
    expect(at(inside, 2, 2)).toStrictEqual([1.5, near(0.494, 12), near(0.4, 12)]);
  });

  test('9 mm at a bevel of 20 deg: 9.578 mm in the plane of the frame', () => {
    const hull = hullThrough(
      planeSided({ flare: 0, plan: -Math.tan(radians(20)), profile: 0, rake: 0, height: 0.4 }),
    );
    const inside = insideOf(hull, thick(0, 0.009));
    expect((hull.edge('sheer').points[2]![1] - at(inside, 2, 2)[1]) * 1000).toBeCloseTo(9.578, 3);
    expect((hull.edge('chine').points[2]![1] - at(inside, 1, 2)[1]) * 1000).toBeCloseTo(9.578, 3);
  });

  test('a flared side moves square to its section', () => {
    const flare = radians(25);
    const hull = hullThrough(veePrism(3, 0.6, radians(15), 0.4, flare));
    const inside = insideOf(hull, thick(0.009, 0.006));
    const sheer = hull.edge('sheer').points[1]!;
    expect(at(inside, 2, 1)[1]).toBeCloseTo(sheer[1] - 0.006 * Math.cos(flare), 12);
    expect(at(inside, 2, 1)[2]).toBeCloseTo(sheer[2] + 0.006 * Math.sin(flare), 12);
    // The keel rises by the thickness over the cosine of the deadrise.
    expect(at(inside, 0, 1)[2]).toBeCloseTo(0.009 / Math.cos(radians(15)), 12);
    // The chine lies on both moved lines.
    const [, y, z] = at(inside, 1, 1);
    const chine = hull.edge('chine').points[1]!;
    const off = (nx: number, ny: number) => (chine[1] - y) * nx + (chine[2] - z) * ny;
    expect(off(Math.sin(radians(15)), -Math.cos(radians(15)))).toBeCloseTo(0.009, 12);
    expect(off(Math.cos(flare), -Math.sin(flare))).toBeCloseTo(0.006, 12);
  });

  test('at an upright stem the inside draws aft by thickness over the sine of the half angle', () => {
    const hull = hullThrough(wedge(4, 1.2, 0.5));
    const inside = insideOf(hull, thick(0.009, 0.006));
    const half = Math.atan(0.6 / 4);
    const sheer = at(inside, 2, 4);
    expect(sheer[0]).toBeCloseTo(4 - 0.006 / Math.sin(half), 9);
    expect(sheer[1]).toBe(0);
    // Keel and chine still meet there, on top of the bottom.
    expect(at(inside, 0, 4)).toStrictEqual(at(inside, 1, 4));
    expect(at(inside, 1, 4)[2]).toBeCloseTo(0.009, 9);
  });

  test('frames stay in their planes; raked transoms move within theirs', () => {
    const hull = buildHull(offsetsOf(starter('ferry-dory')!));
    const inside = insideOf(hull, thick(0.009, 0.006));
    hull.frames.forEach((frame) => {
      hull.edges.forEach((edge, e) =>
        expect(at(inside, e, frame.index)[0]).toBeCloseTo(edge.points[frame.index]![0], 12),
      );
    });
    const { normal } = hull.aft.plane;
    hull.edges.forEach((edge, e) => {
      const [x, , z] = at(inside, e, 0);
      const corner = edge.points[0]!;
      expect((x - corner[0]) * normal[0] + (z - corner[2]) * normal[2]).toBeCloseTo(0, 12);
    });
  });
});

test('a skin of no thickness changes nothing', () => {
  const hull = buildHull(offsetsOf(starter('vee-launch')!));
  const inside = insideOf(hull, () => 0);
  hull.edges.forEach((edge, e) =>
    edge.points.forEach((point, s) => {
      const moved = at(inside, e, s);
      point.forEach((value, axis) => expect(moved[axis]).toBeCloseTo(value, 9));
    }),
  );
});

test('a fault of the hull is thrown as it stands', () => {
  const lines = box(3, 1, 0.4);
  const hull = hullThrough({
    ...lines,
    sheer: lines['sheer']!.map(([x, y], i) => [x, y, i === 1 ? -1 : 0.4] as const),
  });
  expect(() => insideOf(hull, () => 0.006)).toThrow('station 1: the sheer lies lower than the chine');
});
