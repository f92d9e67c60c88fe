/** Second roads to numbers of the boat: the same from her battens and panels, looked at closely, on every starter. */
import { describe, expect, test } from 'vitest';
import { demoBoat, starters } from '../../src/boat';
import { type Batten, curvatureAt, distance2, lengthTo, pointAt, turned, type Vec2 } from '../../src/kernel';
import '../kernel/near';
import { woods } from '../checks/printed/woods';
import { deriveBoat } from './derive';
import { hullThrough, wedge } from './shapes';

/** Parameters all along a batten. */
const along = ({ knots }: Batten, count = 20_000) =>
  Array.from({ length: count + 1 }, (_, i) => knots[0]! + ((knots.at(-1)! - knots[0]!) * i) / count);

const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

describe.each(starters.map(({ id, table }) => [id, table] as const))('%s', (_, table) => {
  const boat = deriveBoat(table);
  const hull = boat.hull();

  test('the tightest bend of an edge lies where its batten bends most', () => {
    for (const { name, batten } of hull.edges) {
      const worst = along(batten).reduce((most, t) =>
        curvatureAt(batten, t).magnitude > curvatureAt(batten, most).magnitude ? t : most,
      );
      const hair = 1e-3 * hull.length;
      expect(Math.abs(boat.number(`${name}.leastRadiusAt`) - pointAt(batten, worst)[0])).toBeLessThan(hair);
      expect(Math.abs(boat.number(`${name}.leastRadiusAlong`) - lengthTo(batten, worst))).toBeLessThan(hair);
    }
  });

  test('an edge rises as fast as a millimetre of its batten does', () => {
    const slopes = hull.edges.flatMap(({ name, batten }) =>
      hull.frames.map((station) => {
        const [back, on] = [-0.001, 0.001].map((by) => pointAt(batten, batten.knots[station.index]! + by));
        const slope = (on![2] - back![2]) / (on![0] - back![0]);
        return boat.number(`${station.name}.${name}.profileSlope`) - slope;
      }),
    );
    expect(Math.max(...slopes.map(Math.abs))).toBeLessThan(1e-5);
  });

  test('the ends close in by the angle of their panels', () => {
    const ends = [hull.aft, hull.fore].flatMap((end) =>
      hull.panels.map(({ name }) => boat.value(`${end.name}.${name}.planAngle`) === end.tilt(name).plan),
    );
    expect(ends).not.toContain(false);
  });

  test('a panel twists most along the ruling whose two normals differ most', () => {
    for (const { name, strip } of hull.panels) {
      // Rulings that shrink to a point have no twist.
      const turns = strip.rulings.map(({ fromNormal, toNormal, from, to }) => {
        const cosine =
          fromNormal[0] * toNormal[0] + fromNormal[1] * toNormal[1] + fromNormal[2] * toNormal[2];
        return { turn: Math.acos(Math.min(1, cosine)), x: (from[0] + to[0]) / 2 };
      });
      const most = turns.reduce((a, b) => (b.turn > a.turn ? b : a));
      expect(boat.number(`${name}.twist`) / most.turn).toBeCloseTo(1, 6);
      expect(boat.number(`${name}.twistAt`)).toBeCloseTo(most.x, 9);
    }
  });

  test('a panel laid flat keeps the length of its edges, and lies in its box', () => {
    for (const { name, flat, inner, outer } of hull.panels) {
      const long = (line: readonly Vec2[]) =>
        line.slice(1).reduce((sum, point, i) => sum + distance2(line[i]!, point), 0);
      expect(long(flat.inner) / inner.length).toBeCloseTo(1, 3);
      expect(long(flat.outer) / outer.length).toBeCloseTo(1, 3);
      // Turned by hundredths of a degree, five either way, the least high it stands, and how long it is then.
      const boxes = Array.from({ length: 1001 }, (_, i) => {
        const all = [...flat.inner, ...flat.outer].map((point) =>
          turned(point, ((i - 500) * Math.PI) / 18000),
        );
        return { high: spread(all.map(([, y]) => y)), long: spread(all.map(([x]) => x)) };
      });
      const least = boxes.reduce((best, box) => (box.high < best.high ? box : best));
      expect(boat.number(`${name}.flatWidth`)).toBeNear(least.high, 0, 1e-3);
      expect(boat.number(`${name}.flatLength`)).toBeNear(least.long, 0, 1e-3);
    }
  });
});

test('the table’s fibre points are the boat’s', () => {
  const boat = deriveBoat(demoBoat);
  const off = boat.names.filter(
    (name) => name.endsWith('.fibrePoint') && boat.value(name) !== woods[`timber.${name}`],
  );
  expect(off).toStrictEqual([]);
  expect(boat.value('timber.whiteAsh.fibrePoint')).toBe(0.24);
});

test('the angle in plan of a wedge’s sides is the half angle of the wedge', () => {
  const hull = hullThrough(wedge(4, 1, 0.5));
  const { plan } = hull.aft.tilt('side');
  expect(plan).toBeCloseTo(Math.atan(0.5 / 4), 9);
});
