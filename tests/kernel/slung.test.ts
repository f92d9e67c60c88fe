import { describe, expect, test } from 'vitest';
import { pullsOn, slung, type Vec2 } from '../../src/kernel';

/** A box 1 m broad and 0.4 m deep that hangs 0.2 m over the floor. */
const box: readonly Vec2[] = [
  [-0.5, 0.2],
  [0.5, 0.2],
  [0.5, 0.6],
  [-0.5, 0.6],
];

describe('a box in a loop of rope', () => {
  test('hangs in plumb legs where the posts stand at its sides', () => {
    const lies = slung(box, { apart: 1, high: 2 });
    expect(lies.left).toBeCloseTo(0, 12);
    expect(lies.right).toBeCloseTo(0, 12);
    expect(lies.wrap).toBeCloseTo(Math.PI, 12);
    expect(pullsOn(lies)).toStrictEqual([0.5, 0.5]);
  });

  test('its legs run straight from the bottom’s corners to posts that stand farther out', () => {
    const lies = slung(box, { apart: 2, high: 1.6 });
    // Half a metre out over 1.4 m up.
    expect(lies.right).toBeCloseTo(Math.atan(0.5 / 1.4), 12);
    expect(lies.left).toBeCloseTo(Math.atan(0.5 / 1.4), 12);
    expect(lies.leaves).toStrictEqual([
      [-0.5, 0.2],
      [0.5, 0.2],
    ]);
    expect(lies.under).toStrictEqual(lies.leaves);
    expect(lies.length).toBeCloseTo(1 + 2 * Math.hypot(0.5, 1.4), 12);
    expect(lies.wrap).toBeCloseTo(Math.PI - 2 * Math.atan(0.5 / 1.4), 12);
  });

  test('goes round two corners of a broad-shouldered one', () => {
    const shouldered: readonly Vec2[] = [
      [-0.2, 0],
      [0.2, 0],
      [0.6, 0.3],
      [-0.6, 0.3],
    ];
    const lies = slung(shouldered, { apart: 1.3, high: 2.3 });
    expect(lies.right).toBeCloseTo(Math.atan(0.05 / 2), 12);
    expect(lies.length).toBeCloseTo(0.5 + 0.4 + 0.5 + 2 * Math.hypot(0.05, 2), 12);
  });

  test('what can’t hang there is refused in a sentence', () => {
    expect(() => slung(box, { apart: 0.8, high: 2 })).toThrow('closer together');
    expect(() => slung(box, { apart: 2, high: 0.5 })).toThrow('higher than the ropes');
  });
});

test('legs share a weight so that nothing is left over sideways or up', () => {
  for (const [left, right] of [
    [0.5, 0.5],
    [0.2, 0.9],
    [0, 0.4],
  ] as const) {
    const [a, b] = pullsOn({ left, right });
    expect(a * Math.sin(left)).toBeCloseTo(b * Math.sin(right), 12);
    expect(a * Math.cos(left) + b * Math.cos(right)).toBeCloseTo(1, 12);
  }
  // 1000 N in two legs 30° out of plumb: 577.4 N each.
  expect(1000 * pullsOn({ left: Math.PI / 6, right: Math.PI / 6 })[0]).toBeCloseTo(577.35, 2);
});
