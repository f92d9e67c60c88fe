import { describe, expect, test } from 'vitest';
import { torsionConstant } from '../../src/kernel/torsion';
import './near';

/** The exact series of Saint-Venant for a bar a by b, a the longer. */
function series(a: number, b: number): number {
  let sum = 0;
  for (let n = 1; n < 400; n += 2) sum += Math.tanh((n * Math.PI * a) / (2 * b)) / n ** 5;
  return a * b ** 3 * (1 / 3 - ((64 * b) / (Math.PI ** 5 * a)) * sum);
}

describe('the torsion constant', () => {
  test.each([1, 1.2, 1.5, 2, 3, 5, 10, 50])(
    'of a bar %d times as wide as thick meets the exact series',
    (times) => {
      expect(torsionConstant(times * 0.02, 0.02)).toBeNear(series(times * 0.02, 0.02), 0.005);
    },
  );

  test('of a square is 0.1406 of the fourth power of its side, as printed', () => {
    // S. Timoshenko and J. N. Goodier, Theory of Elasticity, section 109, table.
    expect(torsionConstant(1, 1)).toBeNear(0.1406, 0.003);
  });

  test('is the same whichever side is called the width', () => {
    expect(torsionConstant(0.09, 0.018)).toBe(torsionConstant(0.018, 0.09));
    expect(() => torsionConstant(0, 1)).toThrow('above nought');
  });
});
