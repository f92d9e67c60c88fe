import { describe, expect, test } from 'vitest';
import { kindOf } from '../../src/measure';
import { type AdhesiveColumn, adhesives } from '../../src/trade/adhesives';
import { citation } from '../../src/trade/table';

const pairs: readonly (readonly [AdhesiveColumn, AdhesiveColumn])[] = [
  ['leastPressure', 'mostPressure'],
  ['shortestOpen', 'longestOpen'],
  ['shortestClamped', 'longestClamped'],
  ['driest', 'wettest'],
  ['leastSpread', 'mostSpread'],
];

describe.each(adhesives.rows)('$label', ({ cells, immersion, id }) => {
  test('has each number but perhaps the spread, positive and cited', () => {
    expect(id).toMatch(/^[a-z][A-Za-z]+$/);
    expect(immersion).not.toBe('');
    for (const [key, { kind }] of Object.entries(adhesives.columns)) {
      const cited = cells[key as AdhesiveColumn];
      expect(kindOf(kind).id).toBe(kind);
      expect(cited !== undefined || key.endsWith('Spread')).toBe(true);
      if (!cited) continue;
      expect(cited.value).toBeGreaterThan(0);
      expect(citation(cited)).not.toBe('');
    }
  });

  test('has its ranges the right way round', () => {
    for (const [low, high] of pairs)
      expect(cells[low]?.value ?? 0).toBeLessThanOrEqual(cells[high]?.value ?? 0);
  });
});

test('what bridges a millimetre asks a fifth of a megapascal at most, what bridges none at least 0.7', () => {
  for (const { cells } of adhesives.rows) {
    const fills = cells.mostGap!.value >= 0.001;
    expect(fills ? cells.mostPressure!.value <= 0.2e6 : cells.leastPressure!.value >= 0.7e6).toBe(true);
  }
});
