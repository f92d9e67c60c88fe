import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastBendRadius, pickedBendRadius } from '../../src/trade/plywood-bend';
import '../kernel/near';
import { seeded } from '../kernel/shapes';

const INCH = 0.0254;
const grains = ['along', 'across'] as const;

describe('least radius of a common panel', () => {
  test('between two rows runs straight over the logarithm of the thickness', () => {
    // Half way in the logarithm from 1/2 to 5/8 in: the mean of 6 and 8 ft, of 12 and 16 ft.
    const thickness = Math.sqrt((1 / 2) * (5 / 8)) * INCH;
    expect(leastBendRadius(thickness, 'across').radius).toBeNear(7 * 0.3048, 1e-12);
    expect(leastBendRadius(thickness, 'along').radius).toBeNear(14 * 0.3048, 1e-12);
    expect(leastBendRadius(thickness, 'along').panel).toBe('in the table');
  });

  test('outside the table is that of its nearest row as it stands, and the answer says so', () => {
    expect(leastBendRadius(0.003, 'across')).toStrictEqual({ radius: 2 * 0.3048, panel: 'thinner' });
    expect(leastBendRadius(0.025, 'along')).toStrictEqual({ radius: 20 * 0.3048, panel: 'thicker' });
  });

  test('is read off its rows by a thickness written in mm', () => {
    expect(leastBendRadius(0.00635, 'along')).toStrictEqual({ radius: 5 * 0.3048, panel: 'in the table' });
    expect(leastBendRadius(0.01905, 'along')).toStrictEqual({ radius: 20 * 0.3048, panel: 'in the table' });
  });
});

test.each([
  ['common', leastBendRadius],
  ['picked, dry', (t: number, grain: (typeof grains)[number]) => pickedBendRadius(t, grain, 'dry')],
  ['picked, soaked', (t: number, grain: (typeof grains)[number]) => pickedBendRadius(t, grain, 'soaked')],
] as const)('%s: thicker never bends tighter, nor along the grain tighter than across', (_, radius) => {
  const thickness = fc.double({ min: 0.001, max: 0.025, noNaN: true });
  fc.assert(
    fc.property(thickness, thickness, (a, b) => {
      const [thin, thick] = [Math.min(a, b), Math.max(a, b)];
      for (const grain of grains)
        expect(radius(thin, grain).radius).toBeLessThanOrEqual(radius(thick, grain).radius + 1e-12);
      expect(radius(a, 'along').radius).toBeGreaterThan(radius(a, 'across').radius);
    }),
    seeded,
  );
});
