import { expect, test } from 'vitest';
import { epoxyDensity, flourDensity, flourShare } from '../../src/trade/paste';

test('100 g of epoxy and 25 g of wood flour, volumes added by hand, make a paste of 1.1620 g/mL', () => {
  const grams = 100 * (1 + flourShare.value);
  const millilitres =
    100 / (epoxyDensity.value / 1000) + (100 * flourShare.value) / (flourDensity.value / 1000);
  expect(grams).toBe(125);
  expect(Math.abs(grams / millilitres - 1.162)).toBeLessThan(0.00005);
});
