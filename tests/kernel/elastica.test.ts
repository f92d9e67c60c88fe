/** A board bent by its end, against a shot at the differential equation, elliptic integrals' limits and the gentle slope. */
import { Solver } from 'odex';
import { describe, expect, test } from 'vitest';
import { elasticaOf, findRoot } from '../../src/kernel';
import './near';

/** The end of a board under a load F L^2 / EI, shot from the held end: slope' = bend, bend' = -load cos(slope). */
function shot(load: number): { offset: number; reach: number; slope: number } {
  const solver = new Solver(4);
  solver.absoluteTolerance = 1e-13;
  solver.relativeTolerance = 1e-13;
  const endOf = (bend: number) =>
    solver.solve(
      (_, [slope = 0, curve = 0]) => [curve, -load * Math.cos(slope), Math.sin(slope), Math.cos(slope)],
      0,
      [0, bend, 0, 0],
      1,
    ).y;
  // The end carries no moment, so it has no bend. Where it is held the bend is at most load times length, and by the
  // pull's work, load times sin(slope) = bend^2 / 2, at most the root of twice the load.
  const most = Math.min(load, Math.sqrt(2 * load));
  const bend = findRoot((guess) => endOf(guess)[1] ?? NaN, 0, most, 1e-13);
  const [slope = NaN, , offset = NaN, reach = NaN] = endOf(bend ?? NaN);
  return { offset, reach, slope };
}

describe('the elastica', () => {
  test.each([0.05, 0.25, 1, 2, 5, 10, 12])(
    'agrees with the differential equation at a load of %d',
    (load) => {
      const far = shot(load);
      const found = elasticaOf(far.offset);
      // The shooting keeps some 1e-11, and the load grows steeply with the offset at the end of the row.
      expect(found.load).toBeNear(load, 2e-8);
      expect(found.reach).toBeNear(far.reach, 1e-8);
      expect(found.slope).toBeNear(far.slope, 1e-8);
    },
  );

  test.each([1e-7, 1e-5, 1e-4, 1e-3])('is the gentle slope where the end comes over by %d', (offset) => {
    // The next term is of the second order: load = 3 d (1 + 36/35 d^2 ...).
    expect(elasticaOf(offset).load / (3 * offset) - 1).toBeNear(0, 0, 1.2 * offset ** 2 + 1e-9);
    expect(elasticaOf(offset).slope / (1.5 * offset) - 1).toBeNear(0, 0, 2 * offset ** 2 + 1e-9);
  });

  test('departs by a second-order term', () => {
    const excess = (offset: number) => elasticaOf(offset).load / (3 * offset) - 1;
    expect(excess(0.02) / excess(0.01)).toBeNear(4, 1e-3);
  });

  test('pulls harder and comes nearer the further the end is drawn over', () => {
    const drawn = Array.from({ length: 98 }, (_, i) => elasticaOf((i + 1) / 100));
    for (let i = 1; i < drawn.length; i++) {
      expect(drawn[i]!.load).toBeGreaterThan(drawn[i - 1]!.load);
      expect(drawn[i]!.reach).toBeLessThan(drawn[i - 1]!.reach);
      expect(drawn[i]!.slope).toBeGreaterThan(drawn[i - 1]!.slope);
    }
    expect(drawn.at(-1)!.slope).toBeLessThan(Math.PI / 2);
  });

  test('nothing drawn over pulls with nothing', () => {
    expect(elasticaOf(0)).toStrictEqual({ load: 0, offset: 0, reach: 1, slope: 0 });
  });

  test.each([-0.01, 0.99, 1, NaN])('refuses %d of the length in a sentence', (offset) => {
    expect(() => elasticaOf(offset)).toThrow('comes over by 0 to 0.98 of its length');
  });
});
