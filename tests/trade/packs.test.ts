import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestPacks, type Pack } from '../../src/trade/packs';

const shelf: readonly Pack[] = [
  { holds: 1, price: 30 },
  { holds: 4, price: 96 },
  { holds: 15, price: 300 },
];

describe('the cheapest purchase', () => {
  test('of 9 from packs of 1, 4 and 15 is one small and two middle', () => {
    expect(cheapestPacks(9, shelf)).toStrictEqual({ counts: [1, 2, 0], cost: 222, over: 0 });
  });

  test('of 13 is one large pack, though the smaller ones would leave nothing over', () => {
    expect(cheapestPacks(13, shelf)).toStrictEqual({ counts: [0, 0, 1], cost: 300, over: 2 });
  });

  test('of equal costs leaves least over, then takes fewest packs', () => {
    expect(
      cheapestPacks(5, [
        { holds: 6, price: 10 },
        { holds: 5, price: 10 },
      ]).counts,
    ).toStrictEqual([0, 1]);
    expect(
      cheapestPacks(4, [
        { holds: 1, price: 2 },
        { holds: 4, price: 8 },
      ]).counts,
    ).toStrictEqual([0, 1]);
  });

  test('of nothing is nothing', () => {
    expect(cheapestPacks(0, shelf)).toStrictEqual({ counts: [0, 0, 0], cost: 0, over: 0 });
  });

  test('passes over a size that is not sold', () => {
    expect(
      cheapestPacks(9, [
        { holds: 0, price: 0 },
        { holds: 4, price: 96 },
      ]).counts,
    ).toStrictEqual([0, 3]);
  });

  test('does not buy one more for the sake of rounding', () => {
    expect(cheapestPacks(0.1 + 0.2, [{ holds: 0.1, price: 1 }]).counts).toStrictEqual([3]);
  });

  test('says so where nothing is sold', () => {
    expect(() => cheapestPacks(1, [{ holds: 0, price: 5 }])).toThrow('give the size of at least one pack');
  });

  test('says so where the packs are too small for the job to compare', () => {
    expect(() =>
      cheapestPacks(1000, [
        { holds: 1, price: 0 },
        { holds: 2, price: 0 },
        { holds: 3, price: 0 },
      ]),
    ).toThrow('too small');
    expect(() => cheapestPacks(1, [{ holds: 1e-300, price: 1 }])).toThrow('too small');
  });

  test('passes over a size that is a drop for such a need', () => {
    expect(
      cheapestPacks(9, [
        { holds: 1e-300, price: 1 },
        { holds: 4, price: 96 },
      ]).counts,
    ).toStrictEqual([0, 3]);
  });
});

test('no purchase found by trying them all is cheaper', () => {
  const pack = fc.record({ holds: fc.integer({ min: 1, max: 9 }), price: fc.integer({ min: 0, max: 20 }) });
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 30 }),
      fc.array(pack, { minLength: 1, maxLength: 3 }),
      (need, packs) => {
        const found = cheapestPacks(need, packs);
        const holds = found.counts.reduce((sum, n, i) => sum + n * packs[i]!.holds, 0);
        expect(holds - need).toBe(found.over);
        expect(found.over).toBeGreaterThanOrEqual(0);
        expect(found.cost).toBe(cheapestByTrial(need, packs));
      },
    ),
    { seed: 20, numRuns: 200 },
  );
});

function cheapestByTrial(need: number, packs: readonly Pack[]): number {
  const [pack, ...rest] = packs;
  if (!pack) return need <= 0 ? 0 : Infinity;
  let least = Infinity;
  for (let n = 0; n <= Math.ceil(Math.max(0, need) / pack.holds); n += 1) {
    least = Math.min(least, n * pack.price + cheapestByTrial(need - n * pack.holds, rest));
  }
  return least;
}
