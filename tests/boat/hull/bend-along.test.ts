import { expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { bendAlong } from '../../../src/boat/hull/bend-along';
import { curvatureAt, type Vec3 } from '../../../src/kernel';
import { parameterAtLength } from '../../../src/kernel/along-batten';
import { box, hullThrough } from '../shapes';

const edges = starters.flatMap(({ id, table }) =>
  buildHull(offsetsOf(table)).edges.map((edge) => ({ id, name: edge.name, edge })),
);

test.each(edges)('finds the tightest bend of the $name of $id, and nothing harder', ({ edge }) => {
  const bend = bendAlong(edge);
  const { radius, along } = edge.leastRadius!;
  expect(bend.worst).toBeCloseTo(1 / radius, 12);
  expect(bend.within({ from: 0, to: edge.length })).toBeCloseTo(1 / radius, 12);
  expect(bend.within({ from: along - 0.01, to: along + 0.01 })).toBeCloseTo(1 / radius, 9);
});

test.each(edges)('agrees with the batten of the $name of $id anywhere', ({ edge }) => {
  const bend = bendAlong(edge);
  for (let k = 0; k <= 97; k++) {
    const at = (edge.length * k) / 97;
    const own = curvatureAt(edge.batten, parameterAtLength(edge.batten, at)).magnitude;
    // Straight between looks: off by less than a thousandth of the hardest bend.
    expect(Math.abs(bend.within({ from: at, to: at }) - own)).toBeLessThan(1e-3 * bend.worst);
  }
});

test('a circle bends alike everywhere, by its radius', () => {
  const radius = 5;
  const arc = Array.from({ length: 9 }, (_, i): Vec3 => {
    const turn = (i - 4) * 0.05;
    return [radius * Math.sin(turn) + 2, radius * Math.cos(turn) - 4, 0];
  });
  const hull = hullThrough({
    keel: arc.map(([x]): Vec3 => [x, 0, 0]),
    sheer: arc.map(([x, y]): Vec3 => [x, y, 0.5]),
  });
  const edge = hull.edge('sheer');
  // A cubic through nine points of the arc: a thousandth off.
  expect(bendAlong(edge).within({ from: 0.5, to: 0.6 })).toBeCloseTo(1 / radius, 3);
});

test('a straight edge does not bend', () => {
  const edge = hullThrough(box(4, 1, 0.5)).edge('chine');
  expect(bendAlong(edge).worst).toBe(0);
  expect(bendAlong(edge).within({ from: 1, to: 3 })).toBe(0);
});
