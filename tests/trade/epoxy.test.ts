import { expect, test } from 'vitest';
import { fillFilm, laterCoat, partDensity, uptake, waste } from '../../src/trade/epoxy';

test('usual densities make of a ratio by volume what makers print by weight, within a tenth', () => {
  const usual = partDensity.resin.value / partDensity.hardener.value;
  // An epoxy maker's page: 3 to 1 by volume is 3.5 to 1 by mass; a dealer's measuring guide: 2 to 1 is 100 to 47.
  for (const [byVolume, byMass] of [
    [3, 3.5],
    [2, 100 / 47],
  ] as const)
    expect(Math.abs(byMass / byVolume / usual - 1)).toBeLessThan(0.1);
});

test('a rolled coat lies as thick as the published rule implies, net of its waste', () => {
  const gallon = 3.785411784e-3;
  const squareFoot = 0.3048 ** 2;
  // US gal = ft2 x (0.00085 x oz/yd2 + 0.0075), the second term being three coats.
  const implied = (0.0075 * gallon) / squareFoot / (1 + waste.value) / 3;
  expect(Math.abs(fillFilm.value - implied)).toBeLessThan(2e-6);
});

test('bare wood drinks at least as much as a later coat lays on', () => {
  for (const row of uptake.rows) expect(row.cells.firstCoat?.value).toBeGreaterThanOrEqual(laterCoat.value);
});
