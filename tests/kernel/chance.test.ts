/** The normal distribution against mathjs, and the chance of breaking against boards drawn by lot. */
import { erf } from 'mathjs';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceOfBreaking, normalBelow, type Spread } from '../../src/kernel';
import './near';

describe('the normal distribution', () => {
  test('agrees with the error function of mathjs', () => {
    for (let z = -5; z <= 5; z += 0.05) {
      expect(normalBelow(z)).toBeNear((1 + erf(z / Math.SQRT2)) / 2, 0, 3e-15);
    }
  });

  test('meets the printed table', () => {
    // Abramowitz and Stegun, table 26.1 and 26.2.
    expect(normalBelow(1)).toBeNear(0.841344746068543, 1e-14);
    expect(normalBelow(-2)).toBeNear(0.022750131948179, 1e-13);
    expect(normalBelow(-3)).toBeNear(1.3498980316301e-3, 1e-13);
    expect(-Math.log10(normalBelow(-5))).toBeNear(6.54265, 1e-6);
    expect(-Math.log10(normalBelow(-10))).toBeNear(23.11805, 1e-6);
    expect(-Math.log10(normalBelow(-30))).toBeNear(197.30921, 1e-7);
  });

  test('joins where one formula takes over from the other', () => {
    const before = normalBelow(-3 + 1e-9);
    const after = normalBelow(-3 - 1e-9);
    // Between the two the curve itself rises by its height times 2e-9.
    expect(before - after).toBeNear(2e-9 * Math.exp(-4.5) * 0.3989422804, 1e-4);
  });

  test('is even about the middle and stays within 0 and 1', () => {
    expect(normalBelow(0)).toBe(0.5);
    expect(normalBelow(1.3) + normalBelow(-1.3)).toBeNear(1, 1e-15);
    expect(normalBelow(60)).toBe(1);
    expect(normalBelow(-60)).toBe(0);
    expect(() => normalBelow(NaN)).toThrow('needs a number');
  });
});

const handbook: Spread = { strength: 0.16, stiffness: 0.22, correlation: 0.77 };

/** Uniform numbers from 0 to 1, ever the same: a 32-bit generator. */
function lots(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** How many of so many boards break whose strength and stiffness have mean 1 and are drawn by lot. */
function drawn(share: number, { strength, stiffness, correlation }: Spread, boards: number): number {
  const lot = lots(20);
  const ofLog = (spread: number) => Math.sqrt(Math.log(1 + spread * spread));
  const board = (spread: number, z: number) => Math.exp(ofLog(spread) * z - ofLog(spread) ** 2 / 2);
  let broken = 0;
  for (let i = 0; i < boards; i++) {
    const size = Math.sqrt(-2 * Math.log(1 - lot()));
    const turn = 2 * Math.PI * lot();
    const one = size * Math.cos(turn);
    const two = correlation * one + Math.sqrt(1 - correlation ** 2) * size * Math.sin(turn);
    if (share * board(stiffness, one) > board(strength, two)) broken += 1;
  }
  return broken / boards;
}

describe('the chance of breaking', () => {
  test.each([
    [0.5, { ...handbook, correlation: 0 }],
    [0.67, handbook],
    [0.9, handbook],
    [0.67, { ...handbook, correlation: 0 }],
    [1, { strength: 0.3, stiffness: 0.1, correlation: -0.4 }],
  ])('at a share of %d is what boards drawn by lot show', (share, spread) => {
    const boards = 200_000;
    const chance = chanceOfBreaking(share, spread);
    // Four standard deviations of a count.
    const reach = 4 * Math.sqrt((chance * (1 - chance)) / boards);
    expect(drawn(share, spread, boards)).toBeNear(chance, 0, reach);
  });

  test('with strength alone varying is that of the lognormal', () => {
    // The median is the mean over sqrt(1 + v^2): half the boards are weaker than that, not than the mean.
    const spread = { strength: 0.16, stiffness: 1e-9, correlation: 0 };
    expect(chanceOfBreaking(1 / Math.sqrt(1 + 0.16 ** 2), spread)).toBeNear(0.5, 1e-6);
    expect(chanceOfBreaking(1, spread)).toBeGreaterThan(0.5);
  });

  test('grows with the share, and falls the more stiffness and strength go together while the share is low', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (share, correlation) => {
          const spread = { ...handbook, correlation };
          expect(chanceOfBreaking(share * 1.05, spread)).toBeGreaterThan(chanceOfBreaking(share, spread));
          expect(chanceOfBreaking(share, { ...spread, correlation: correlation + 0.1 })).toBeLessThan(
            chanceOfBreaking(share, spread),
          );
        },
      ),
      { seed: 4, numRuns: 100 },
    );
  });

  test('is certain or nothing where all boards are alike in what counts', () => {
    const alike = { strength: 0.2, stiffness: 0.2, correlation: 1 };
    expect(chanceOfBreaking(0.99, alike)).toBe(0);
    expect(chanceOfBreaking(1.01, alike)).toBe(1);
    expect(chanceOfBreaking(0, handbook)).toBe(0);
  });

  test.each([
    [-0.1, handbook, '0 or more'],
    [0.5, { ...handbook, strength: 0 }, 'is above 0'],
    [0.5, { ...handbook, correlation: 1.2 }, 'between -1 and 1'],
  ])('refuses what makes no sense: %d, %o', (share, spread, sentence) => {
    expect(() => chanceOfBreaking(share, spread)).toThrow(sentence);
  });
});
