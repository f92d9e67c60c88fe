import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { cornerAlong } from '../../../src/boat/hull/corner-along';
import { withTwoChines } from '../../cells/odd-boats';
import { box, coneSided, hullThrough, veePrism } from '../shapes';

const DEGREE = Math.PI / 180;
const shares = [0, 0.13, 0.37, 0.5, 0.81, 1];

describe('the corner along a chine', () => {
  test('of a square box is square from end to end', () => {
    const hull = hullThrough(box(3, 1, 0.4));
    for (const share of shares) {
      const { flare, deadrise, x } = cornerAlong(hull, 'chine', 3 * share);
      expect([flare, deadrise]).toEqual([expect.closeTo(0, 12), expect.closeTo(0, 12)]);
      expect(x).toBeCloseTo(3 * share, 9);
    }
  });

  test('of a vee prism has its flare and its deadrise', () => {
    const hull = hullThrough(veePrism(3, 0.6, 15 * DEGREE, 0.4, 25 * DEGREE));
    for (const share of shares) {
      const { flare, deadrise } = cornerAlong(hull, 'chine', 3 * share);
      expect(flare / DEGREE).toBeCloseTo(25, 9);
      expect(deadrise / DEGREE).toBeCloseTo(15, 9);
    }
  });

  test('of a side bent as a cone has the slope of the cone everywhere, between the frames too', () => {
    const hull = hullThrough(
      coneSided({ r1: 6, r2: 6.35, height: 0.6, half: 0.42, keelOffset: 5, stations: 17 }),
    );
    const slope = Math.atan(0.35 / 0.6);
    const { length } = hull.edge('chine');
    for (let i = 0; i <= 40; i++) {
      const { flare, deadrise } = cornerAlong(hull, 'chine', (length * i) / 40);
      // A batten through 17 points of the circle strays from it by some micrometres, its slope by 2e-5.
      expect(Math.abs(flare - slope)).toBeLessThan(2e-4);
      expect(Math.abs(deadrise)).toBeLessThan(1e-6);
    }
  });

  test.each([
    ...starters.map(({ id, table }) => [id, table] as const),
    ['two chines', withTwoChines] as const,
  ])('at the stations of the %s makes the angle that the station has', (_id, table) => {
    const hull = buildHull(offsetsOf(table));
    for (const edge of hull.edges.slice(1, -1)) {
      for (const { index } of hull.frames) {
        const { flare, deadrise } = cornerAlong(hull, edge.name, edge.arcs[index]!);
        const angle = Math.PI / 2 + flare + deadrise;
        expect(Math.abs(angle - hull.stations[index]!.angle(edge.name))).toBeLessThan(1e-6);
      }
    }
  });

  test('holds to the ends, and is refused where no two panels meet', () => {
    const hull = hullThrough(veePrism(3, 0.6, 15 * DEGREE, 0.4, 25 * DEGREE));
    expect(cornerAlong(hull, 'chine', 99).x).toBeCloseTo(3, 9);
    expect(cornerAlong(hull, 'chine', -1).x).toBeCloseTo(0, 9);
    expect(() => cornerAlong(hull, 'sheer', 1)).toThrow('no two panels meet at the sheer');
    expect(() => cornerAlong(hull, 'garboard', 1)).toThrow('the hull has no edge "garboard"');
  });
});
