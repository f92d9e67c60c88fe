import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexOutline, rollingOf, type Vec2 } from '../../src/kernel';

const DEGREE = Math.PI / 180;
/** A box 1.5 m broad and 0.6 m deep, the centre in its middle. */
const box: readonly Vec2[] = [
  [-0.75, 0],
  [0.75, 0],
  [0.75, 0.6],
  [-0.75, 0.6],
];
const inBox: Vec2 = [0, 0.3];
/** A flared section: 1 m on the bottom, 1.4 m at the sheer, 0.5 m deep. */
const flared: readonly Vec2[] = [
  [-0.5, 0],
  [0.5, 0],
  [0.7, 0.5],
  [-0.7, 0.5],
];

describe('a box rolled over its edge', () => {
  const roll = rollingOf(box, inBox);

  test('swings its centre about the corner: arm cos(start + turned)', () => {
    const [arm, start] = [Math.hypot(0.75, 0.3), Math.atan2(0.3, 0.75)];
    for (const turned of [0, 10, 30, 60, 80, 90]) {
      expect(roll.at(turned * DEGREE).lever).toBeCloseTo(arm * Math.cos(start + turned * DEGREE), 12);
    }
    expect(roll.balance).toBeCloseTo(Math.PI / 2 - start, 12);
    expect(roll.landing).toBeCloseTo(Math.PI / 2, 12);
    expect(roll.rest).toBeCloseTo(Math.PI / 2, 12);
    expect(roll.heaviest).toBeCloseTo(0.5, 12);
    expect(roll.held).toBeCloseTo(0.3 / 1.5, 12);
  });

  test('stands on its side after a quarter turn, and upright after half of one', () => {
    const side = roll.at(90 * DEGREE);
    expect(side.place([0.75, 0.6])[1]).toBeCloseTo(1.5, 12);
    expect(side.centre[1]).toBeCloseTo(0.75, 12);
    const upright = roll.at(Math.PI);
    expect(upright.centre[1]).toBeCloseTo(0.3, 12);
    // It began to roll at the one top corner: over the side it has gone on by its depth.
    expect(upright.along).toBeCloseTo(0.6, 12);
    expect(roll.at(Math.PI + 1e-6).along).toBeCloseTo(0.6 + 1.5, 12);
  });
});

test('a flared one lies on its side only past a quarter turn, and there the other end of the side bears', () => {
  const roll = rollingOf(flared, [0, 0.25]);
  const flare = Math.atan2(0.2, 0.5);
  expect(roll.landing).toBeCloseTo(Math.PI / 2 + flare, 12);
  const before = roll.at(roll.landing);
  const after = roll.at(roll.landing + 1e-9);
  expect(before.along).toBe(0);
  expect(after.along).toBeCloseTo(Math.hypot(0.2, 0.5), 12);
  for (const point of [flared[0]!, flared[3]!]) expect(before.place(point)[1]).toBeCloseTo(0, 12);
});

test('one with its centre far out over the side rolls on past it until it rests on its bottom', () => {
  const roll = rollingOf(flared, [0, 0.02]);
  expect(roll.rest).toBeCloseTo(Math.PI, 12);
  expect(roll.held).toBeGreaterThan(0);
});

/** Points on a circle, so that no two corners are one; the centre somewhere inside. */
const bodies = fc
  .record({
    ways: fc.uniqueArray(fc.integer({ min: 0, max: 71 }), { minLength: 4, maxLength: 9 }),
    shares: fc.array(fc.double({ min: 0.1, max: 1, noNaN: true }), { minLength: 9, maxLength: 9 }),
  })
  .map(({ ways, shares }) => {
    const points = ways.map((way): Vec2 => [Math.cos(way * 5 * DEGREE), Math.sin(way * 5 * DEGREE)]);
    const outline = convexOutline(points);
    const all = outline.reduce((sum, _, i) => sum + shares[i]!, 0);
    const mean = (axis: 0 | 1) =>
      outline.reduce((sum, point, i) => sum + (shares[i]! / all) * point[axis], 0);
    return { outline, centre: [mean(0), mean(1)] as Vec2 };
  });

test('nothing goes through the floor, and the lever is the slope of the centre’s height', () => {
  fc.assert(
    fc.property(bodies, fc.double({ min: 0.05, max: 3, noNaN: true }), ({ outline, centre }, angle) => {
      const roll = rollingOf(outline, centre);
      const now = roll.at(angle);
      for (const point of outline) expect(now.place(point)[1]).toBeGreaterThan(-1e-9);
      const [before, after] = [roll.at(angle - 1e-5), roll.at(angle + 1e-5)];
      const slope = (after.centre[1] - before.centre[1]) / 2e-5;
      // Where one corner takes over from another there are two slopes.
      expect(before.corner === after.corner ? slope : now.lever).toBeCloseTo(now.lever, 4);
      // At the balance it stands over its corner, and no lower a little before or after.
      const top = roll.at(roll.balance).centre[1];
      expect(roll.at(roll.balance - 1e-4).centre[1]).toBeLessThanOrEqual(top + 1e-9);
      expect(roll.at(roll.balance + 1e-4).centre[1]).toBeLessThanOrEqual(top + 1e-9);
    }),
    { seed: 4, numRuns: 60 },
  );
});

test('what has no area is refused', () => {
  expect(() => rollingOf([[0, 0]], [0, 0])).toThrow('an area');
});
