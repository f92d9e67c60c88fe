import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { postLength, skinOnPost } from '../../../src/boat/hull/post-skin';
import { between, curveOf, distance, dot, spanStrip, subtract, unit, type Vec3 } from '../../../src/kernel';
import '../../kernel/near';
import { box, hullThrough, wedge } from '../shapes';

const DEGREE = Math.PI / 180;
const shares = [0, 0.2, 0.5, 0.9, 1];

/** A plane side of flare f that closes in by p to a stem, whose line is where it meets the centreline plane. */
function planeBow(p: number, flare: number) {
  const half = (x: number, z: number) => p * (4 - x) + Math.tan(flare) * z;
  const stemX = (z: number) => 4 + (Math.tan(flare) * z) / p;
  const line = (z: number): Vec3[] => [
    ...[0, 1, 2, 3].map((x): Vec3 => [x, half(x, z), z]),
    [stemX(z), 0, z],
  ];
  return hullThrough({
    keel: [0, 1, 2, 3, 4].map((x): Vec3 => [x, 0, 0]),
    chine: line(0),
    sheer: line(0.6),
  });
}

describe('the skin on a stem', () => {
  test('of a wedge stands at its half angle from foot to head', () => {
    const hull = hullThrough(wedge(4, 1.2, 0.5));
    for (const share of shares) {
      const there = skinOnPost(hull, hull.fore, share);
      expect(there.entry).toBeCloseTo(Math.atan(0.6 / 4), 9);
      expect(there.rake).toBeCloseTo(0, 12);
      expect(there.up).toBeCloseTo(0.5 * share, 12);
    }
    expect(postLength(hull, hull.fore)).toBeCloseTo(0.5, 12);
  });

  test('of a plane flared side stands by its normal: cosine of the entry is 1 over the length of (p, 1, tan flare)', () => {
    const [p, flare] = [0.3, 20 * DEGREE];
    const hull = planeBow(p, flare);
    for (const share of shares) {
      const there = skinOnPost(hull, hull.fore, share);
      expect(there.entry).toBeCloseTo(Math.acos(1 / Math.hypot(p, 1, Math.tan(flare))), 6);
      expect(there.rake).toBeCloseTo(Math.atan(Math.tan(flare) / p), 9);
    }
  });

  test.each(
    starters
      .map(({ id, table }) => [id, buildHull(offsetsOf(table))] as const)
      .filter(([, { fore }]) => fore.role === 'stem'),
  )('of the %s is at its ends the angle that the station has', (_id, hull) => {
    const side = hull.panels.at(-1)!;
    expect(skinOnPost(hull, hull.fore, 1).entry).toBeCloseTo(hull.fore.bevel(side.outer.name, 'side'), 9);
    const below = postLength(hull, hull.fore) - hull.fore.girth('side');
    const there = skinOnPost(hull, hull.fore, below / postLength(hull, hull.fore) + 1e-9);
    expect(there.entry).toBeCloseTo(hull.fore.bevel(side.inner.name, 'side'), 6);
  });

  test('changes at the chine of a vee bottom, and nowhere else by a jump', () => {
    const hull = buildHull(offsetsOf(starters.find(({ id }) => id === 'vee-launch')!.table));
    const angles = Array.from({ length: 401 }, (_, i) => skinOnPost(hull, hull.fore, i / 400).entry);
    const jumps = angles.slice(1).filter((angle, i) => Math.abs(angle - angles[i]!) > 1 * DEGREE);
    expect(jumps).toHaveLength(1);
  });

  test('of every starter: what a plane square to the stem cuts from the skin there, at any height above the foot', () => {
    for (const { table } of starters) {
      const hull = buildHull(offsetsOf(table));
      if (hull.fore.role !== 'stem') continue;
      const side = hull.panels.at(-1)!;
      // Four times as fine as the hull's own.
      const strip = spanStrip(curveOf(side.inner.batten), curveOf(side.outer.batten), { cells: 256 });
      const [foot, head] = [side.inner.points.at(-1)!, side.outer.points.at(-1)!];
      const post = unit(subtract(head, foot));
      for (const share of [0.03, 0.1, 0.5, 0.9]) {
        const at = between(foot, head, share);
        const cut = strip.rulings.flatMap(({ from, to }): Vec3[] => {
          const [low, high] = [dot(subtract(from, at), post), dot(subtract(to, at), post)];
          return low < 0 && high > 0 ? [between(from, to, low / (low - high))] : [];
        });
        const near = cut.filter((point) => distance(point, at) > 1e-9).at(-1)!;
        const entry = Math.asin(near[1] / distance(near, at));
        const length = postLength(hull, hull.fore);
        const up = length - hull.fore.girth('side') + share * distance(foot, head);
        expect(skinOnPost(hull, hull.fore, up / length).entry).toBeNear(entry, 0, 0.006); // a third of a degree
      }
    }
  });

  test('is not asked of a transom', () => {
    const hull = hullThrough(box(3, 1, 0.4));
    expect(() => skinOnPost(hull, hull.fore, 0.5)).toThrow('is not a stem: it has breadth');
  });
});
