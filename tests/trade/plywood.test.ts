import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastBendRadius, plywood } from '../../src/trade/plywood';
import { look } from '../../src/trade/table';

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
