import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { floatPlane, floodingVolume, sideLoadsOf } from '../../../src/boat/hull/float-plane';
import { dot } from '../../../src/kernel';
import { box, hullThrough } from '../shapes';

const [LONG, BROAD, DEEP] = [4, 1.6, 0.6];
const hull = hullThrough(box(LONG, BROAD, DEEP));

describe('a box 4 by 1.6 by 0.6 m', () => {
  test('is level, and pushes aside all of it up to the sheer or up to the cut-out', () => {
    expect(floodingVolume(hull, null)).toBeCloseTo(LONG * BROAD * DEEP, 9);
    expect(floodingVolume(hull, 0.381)).toBeCloseTo(LONG * BROAD * 0.381, 9);
    // A cut-out that is no lower than the sheer changes nothing.
    expect(floodingVolume(hull, 0.7)).toBeCloseTo(LONG * BROAD * DEEP, 9);
  });

  test.each([
    [120, 0.3],
    [200, 0.3],
    [300, 0.2],
  ])(
    'of %f kg with weights at %f m takes water at the load by moments of the wall-sided section',
    (mass, at) => {
      const load = sideLoadsOf(
        hull,
        { mass, forward: 2, height: 0.25 },
        { forward: 2, height: at },
        1000,
      )(null);
      // The sheer awash and the other bilge out: a triangle is under, as broad as its area asks.
      const broad = (2 * (mass + load)) / (1000 * LONG * DEEP);
      expect(broad).toBeLessThan(BROAD);
      const slope = DEEP / broad;
      const middle = [BROAD / 2 - broad / 3, DEEP / 3] as const;
      const weight = [
        (load * (BROAD / 2 - 0.075)) / (mass + load),
        (mass * 0.25 + load * at) / (mass + load),
      ] as const;
      // Weight over water: apart along the water by nothing.
      expect((weight[0] - middle[0] + (weight[1] - middle[1]) * slope) / BROAD).toBeCloseTo(0, 2.6);
      expect(load).toBeGreaterThan(0);
    },
  );

  test('bears nothing along its side where it lies awash already', () => {
    expect(
      sideLoadsOf(hull, { mass: 3840, forward: 2, height: 0.2 }, { forward: 2, height: 0.3 }, 1000)(null),
    ).toBe(0);
  });
});

test.each(starters.map(({ id, table }) => [id, table] as const))(
  'the %s lies with her sheer alike at both ends, and dry all round',
  (_, table) => {
    const boat = buildHull(offsetsOf(table));
    const plane = floatPlane(boat, null);
    const over = boat.edges
      .at(-1)!
      .polyline(513)
      .map((point) => dot(plane.normal, point) - plane.height);
    expect(over[0]).toBeCloseTo(over.at(-1)!, 9);
    expect(Math.min(...over)).toBeGreaterThan(-1e-4);
    expect(Math.min(...over)).toBeLessThan(1e-4);
    expect(floodingVolume(boat, 0.2)).toBeLessThan(floodingVolume(boat, null));
  },
);
