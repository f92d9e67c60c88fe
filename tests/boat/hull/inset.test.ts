/** The sheer's mark on a stem, inside the skin, against the sheer itself moved in and followed to the centreline. */
import { expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { insetPoint } from '../../../src/boat/hull/inset';
import { add, distance, pointAt, scale, type Vec3 } from '../../../src/kernel';

const THICK = 0.006;
const hulls = starters
  .map(({ id, table }) => [id, buildHull(offsetsOf(table))] as const)
  .filter(([, { fore }]) => fore.role === 'stem');

test.each(hulls)('of the %s: within the 1.5 mm that setting up accepts, and much nearer', (_id, hull) => {
  const sheer = hull.edges.at(-1)!;
  const side = hull.panels.at(-1)!;
  const end = sheer.batten.knots.at(-1)!;
  const inside = (t: number): Vec3 => add(pointAt(sheer.batten, t), scale(side.normalOn(sheer, t), -THICK));
  // Aft from the stem in small steps, until there is breadth.
  const steps = Array.from({ length: 4000 }, (_, i) => inside(end * (1 - (0.03 * i) / 4000)));
  const first = steps.findIndex(([, y]) => y >= 0);
  expect(first).toBeGreaterThan(0);
  const mark = insetPoint(hull, sheer, hull.fore, () => THICK);
  expect(mark[1]).toBeCloseTo(0, 12);
  expect(distance(mark, steps[first]!)).toBeLessThan(0.0005);
});
