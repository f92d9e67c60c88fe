import { describe, expect, test } from 'vitest';
import { movementFromShrinkage, shrinkage } from '../../src/trade/shrinkage';
import { citation, look } from '../../src/trade/table';
import { timber } from '../../src/trade/timber';

test('every wood moves, by a figure with its source, more along the rings than across them or as much', () => {
  expect(shrinkage.rows.map(({ id }) => id)).toEqual(timber.rows.map(({ id }) => id));
  for (const { cells } of shrinkage.rows) {
    const { moveRadial, moveTangential } = cells;
    expect(moveRadial!.value).toBeGreaterThan(0.0005);
    expect(moveTangential!.value).toBeLessThan(0.004);
    expect(moveTangential!.value).toBeGreaterThanOrEqual(moveRadial!.value);
    for (const cited of Object.values(cells)) expect(citation(cited)).not.toBe('');
  }
});

describe('a coefficient that the table lacks', () => {
  test('comes from the shrinkage and says so', () => {
    const slash = look(shrinkage, 'slashPine', 'moveTangential')!;
    expect(slash.known).toBe('calculated');
    expect(slash.source).toContain('S = 7.6 %');
    expect(slash.value).toBeCloseTo(movementFromShrinkage(0.076), 12);
  });

  test('without a shrinkage either, is that of any wood and says so', () => {
    for (const id of ['whiteSpruce', 'darkRedMeranti']) {
      expect(look(shrinkage, id, 'shrinkRadial')!.known).toBe('calculated');
      expect(look(shrinkage, id, 'moveRadial')!.source).toContain('no figure of this wood');
    }
  });
});

test('the formula makes the printed coefficients from the printed shrinkage, but for woods that dry otherwise', () => {
  // Western red cedar, white oak and mahogany don't follow it in the handbook's own table; its red oak is a mix.
  const otherwise = new Set(['westernRedCedar', 'whiteOak', 'trueMahogany', 'redOak']);
  const pairs = shrinkage.rows.flatMap(({ id, cells }) =>
    otherwise.has(id)
      ? []
      : ([
          [id, cells.shrinkRadial, cells.moveRadial],
          [id, cells.shrinkTangential, cells.moveTangential],
        ] as const),
  );
  const printed = pairs.filter(
    ([, shrinks, moves]) => shrinks?.known !== 'calculated' && moves?.known !== 'calculated',
  );
  expect(printed.length).toBeGreaterThan(15);
  for (const [, shrinks, moves] of printed)
    // Both are rounded as printed: a twentieth of a per cent of shrinkage, half a unit in the fifth place.
    expect(Math.abs(movementFromShrinkage(shrinks!.value) - moves!.value)).toBeLessThan(0.00003);
});
