import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  leastAircraftRadius,
  leastBendRadius,
  leastMarineRadius,
  plyShares,
  plywood,
} from '../../src/trade/plywood';
import { look } from '../../src/trade/table';

describe('stiffness by plies', () => {
  // Parallel-ply theory, Wood Handbook ch. 12 (from memory): shares to four places.
  test.each([
    [3, 0.9648, 0.0852],
    [5, 0.8024, 0.2476],
    [7, 0.7258, 0.3242],
    [9, 0.682, 0.368],
  ])('%d plies', (plies, along, across) => {
    expect(plyShares(plies).along).toBeCloseTo(along, 4);
    expect(plyShares(plies).across).toBeCloseTo(across, 4);
  });

  test('by a second road: second moments of each ply about the middle', () => {
    for (const plies of [3, 5, 7, 11]) {
      let face = 0;
      let all = 0;
      for (let ply = 0; ply < plies; ply++) {
        const from = ply - plies / 2;
        const moment = ((from + 1) ** 3 - from ** 3) / 3;
        all += moment;
        if (ply % 2 === 0) face += moment;
      }
      const p = face / all;
      expect(plyShares(plies).along).toBeCloseTo(p + 0.05 * (1 - p), 12);
    }
  });

  test('okoume of five plies: 6.3 and 1.96 GPa', () => {
    const modulus = look(plywood, 'okoume', 'faceModulus')!.value / 1e9;
    expect(modulus * plyShares(5).along).toBeCloseTo(6.3, 1);
    expect(modulus * plyShares(5).across).toBeCloseTo(1.95, 1);
  });

  test.each([1, 2, 4, 2.5, NaN])('%d plies are no plywood', (plies) => {
    expect(() => plyShares(plies)).toThrow('plywood has an odd number of plies, 3 or more');
  });
});

describe('least radius, dry', () => {
  // APA concrete-form panel table: panel in, across ft, along ft.
  test.each([
    [1 / 4, 2, 5],
    [5 / 16, 2, 6],
    [3 / 8, 3, 8],
    [1 / 2, 6, 12],
    [5 / 8, 8, 16],
    [3 / 4, 12, 20],
  ])('%f in as printed', (inches, across, along) => {
    expect(leastBendRadius(inches * 0.0254, 'across')!.value).toBeCloseTo(across * 0.3048, 9);
    expect(leastBendRadius(inches * 0.0254, 'along')!.value).toBeCloseTo(along * 0.3048, 9);
    expect(leastBendRadius(inches * 0.0254, 'along')!.known).toBe('published');
  });

  test('12 mm lies between its neighbours', () => {
    const radius = leastBendRadius(0.012, 'across')!.value;
    expect(radius).toBeGreaterThan(0.914);
    expect(radius).toBeLessThan(1.829);
  });

  test('thinner than the table keeps its first ratio and says so', () => {
    const thin = leastBendRadius(0.006, 'across')!;
    expect(thin.value / 0.006).toBeCloseTo(96, 0);
    expect(thin.known).toBe('calculated');
    expect(thin.source).toContain('thinner');
  });

  test('outside it has no answer', () => {
    for (const thickness of [0, 0.002, 0.0192, 0.025, NaN])
      expect(leastBendRadius(thickness, 'across')).toBeNull();
    expect(leastAircraftRadius(0.001, 'along')).toBeNull();
    expect(leastAircraftRadius(0.012, 'along')).toBeNull();
    expect(leastMarineRadius(0.012, 'along')).toBeNull();
  });

  test('aircraft plywood as printed, and marine between the two', () => {
    expect(leastAircraftRadius(0.25 * 0.0254, 'along')!.value).toBeCloseTo(31 * 0.0254, 9);
    expect(leastAircraftRadius(0.25 * 0.0254, 'across')!.value).toBeCloseTo(20 * 0.0254, 9);
    const marine = leastMarineRadius(0.25 * 0.0254, 'across')!.value;
    expect(marine).toBeCloseTo(Math.sqrt(0.508 * 0.6096), 9);
  });

  test('thicker never bends tighter, and along the grain never tighter than across', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.003, max: 0.019, noNaN: true }),
        fc.double({ min: 0.003, max: 0.019, noNaN: true }),
        (a, b) => {
          const [thin, thick] = [Math.min(a, b), Math.max(a, b)];
          for (const grain of ['across', 'along'] as const) {
            // 1/4 in and 5/16 in share a radius across the grain.
            expect(leastBendRadius(thin, grain)!.value).toBeLessThanOrEqual(
              leastBendRadius(thick, grain)!.value + 1e-12,
            );
          }
          expect(leastBendRadius(a, 'along')!.value).toBeGreaterThan(leastBendRadius(a, 'across')!.value);
        },
      ),
      { seed: 41, numRuns: 200 },
    );
  });
});

test('okoume weighs what its trade sheet says', () => {
  const density = look(plywood, 'okoume', 'density')!.value;
  for (const [mm, weight] of [
    [4, 1.8],
    [6, 2.7],
    [12, 5.4],
    [18, 8.1],
  ] as const) {
    expect((density * mm) / 1000).toBeCloseTo(weight, 9);
  }
});
