import { describe, expect, test } from 'vitest';
import { fillFilm, laterCoat, mixRatios, partDensity, uptake, waste } from '../../src/trade/epoxy';

describe('mix ratios of makers', () => {
  // Resin is denser than hardener, so its share by weight is never the smaller one.
  test('a ratio by weight is never below the same ratio by volume, within the rounding of a label', () => {
    for (const { byVolume, byMass } of mixRatios) expect(byMass).toBeGreaterThanOrEqual(byVolume);
  });

  test('usual densities lie within a tenth of what the makers print', () => {
    const usual = partDensity.resin.value / partDensity.hardener.value;
    for (const { byVolume, byMass } of mixRatios.slice(1)) {
      expect(Math.abs(byMass / byVolume / usual - 1)).toBeLessThan(0.1);
    }
  });
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
