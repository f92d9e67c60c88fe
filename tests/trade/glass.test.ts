import { describe, expect, test } from 'vitest';
import { curedResinDensity, glass, glassDensity, layups } from '../../src/trade/glass';
import { look } from '../../src/trade/table';

const grams = (id: string) => (look(glass, id, 'weight')?.value ?? NaN) * 1000;

describe('weights of glass', () => {
  test.each([
    ['cloth4', 135.62],
    ['cloth6', 203.43],
    ['cloth10', 339.06],
    ['cloth17', 576.4],
    ['mat1Half', 457.73],
  ])('%s is %d g/m2', (id, expected) => {
    expect(Math.abs(grams(id) - expected)).toBeLessThan(0.01);
  });

  test('an ounce per square foot is nine times one per square yard', () => {
    expect(grams('mat1Half') / 1.5).toBeCloseTo((grams('cloth6') / 6) * 9, 10);
  });

  test('a weight that is not in the table is not guessed', () => {
    expect(look(glass, 'cloth5', 'weight')).toBeNull();
  });
});

describe('lay-ups', () => {
  test('no lay-up holds less glass than mat, nor more than cloth of one direction', () => {
    const shares = layups.rows.map((row) => row.cells.glassShare?.value ?? NaN);
    expect(Math.min(...shares)).toBe(look(layups, 'mat', 'glassShare')?.value);
    expect(Math.max(...shares)).toBe(look(layups, 'unidirectional', 'glassShare')?.value);
  });

  test('every share says where it comes from', () => {
    for (const row of layups.rows) expect(row.cells.glassShare?.source).toBeTruthy();
  });
});

test('the densities give the two constants of the thickness formula of ISO 12215-5', () => {
  const [fibre, resin] = [glassDensity.value / 1000, curedResinDensity.value / 1000];
  expect(fibre * resin).toBeCloseTo(3.072, 10);
  expect(fibre - resin).toBeCloseTo(1.36, 10);
});
