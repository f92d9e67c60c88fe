import { describe, expect, test } from 'vitest';
import { blockOf, foamBays, type FoamPlace } from '../../../src/boat/hull/foam-bays';
import { box, hullThrough, veePrism } from '../shapes';

/** Four bays of a metre each. */
const hull = hullThrough(box(4, 1.6, 0.6));
const place: FoamPlace = { where: 'sides', below: 0.05, drop: 0.3, thick: 0.15, under: 0.2, fills: 0.8 };

describe('the bays of a box 4 by 1.6 by 0.6 m', () => {
  test('have room for a strip on each side', () => {
    const bays = foamBays(hull, place);
    expect(bays.map(({ name, aft, fore }) => [name, aft, fore])).toStrictEqual([
      ['station0', 0, 1],
      ['station1', 1, 2],
      ['station2', 2, 3],
      ['station3', 3, 4],
    ]);
    for (const { room, top, inner, outer } of bays) {
      expect(room).toBeCloseTo(0.8 * 2 * 0.15 * 0.3, 12);
      expect([top, inner, outer].map((one) => one.toFixed(9))).toStrictEqual(
        [0.55, 0.65, 0.8].map((one) => one.toFixed(9)),
      );
    }
  });

  test('have room across the boat under a level', () => {
    for (const { room } of foamBays(hull, { ...place, where: 'under' }))
      expect(room).toBeCloseTo(0.8 * 1.6 * 0.2, 9);
  });

  test('a strip thicker than half the boat is the whole of it', () => {
    expect(foamBays(hull, { ...place, thick: 3 })[0]!.room).toBeCloseTo(0.8 * 1.6 * 0.3, 9);
  });

  test('a block holds the foam of its bay, both sides, and hangs from the top', () => {
    const [bay] = foamBays(hull, place);
    const [low, high] = blockOf(bay!, 0.03)!;
    expect(2 * (high[0] - low[0]) * (high[1] - low[1]) * (high[2] - low[2])).toBeCloseTo(0.03, 12);
    expect(high[2]).toBeCloseTo(0.55, 9);
    expect(blockOf(bay!, 0)).toBeNull();
  });
});

test('a vee bottom has under a level what its triangle has', () => {
  const vee = hullThrough(veePrism(4, 0.6, Math.atan(0.25), 0.5, 0));
  const [bay] = foamBays(vee, { ...place, where: 'under', under: 0.1, fills: 1 });
  // Half-breadth 0.4 m at 0.1 m up.
  expect(bay!.room).toBeCloseTo(0.4 * 0.1, 6);
});
