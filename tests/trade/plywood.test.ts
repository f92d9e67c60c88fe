import { expect, test } from 'vitest';
import { plywood } from '../../src/trade/plywood';
import { look } from '../../src/trade/table';

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
