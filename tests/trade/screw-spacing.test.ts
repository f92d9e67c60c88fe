import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  screwsInLine,
  spacingByAmericanCode,
  spacingByEurocode,
  thinnestUndrilled,
} from '../../src/trade/screw-spacing';

const right = Math.PI / 2;
const names = ['along', 'across', 'loadedEnd', 'freeEnd', 'loadedEdge', 'freeEdge'] as const;

describe('European spacing', () => {
  test('a screw of 5 mm or more takes the wider rule: (5 + 7 cos) d along, (5 + 5 sin) d to a loaded edge', () => {
    expect(spacingByEurocode(0.005, 0, false, 350).along).toBeCloseTo(0.06, 12);
    expect(spacingByEurocode(0.005, right, false, 350).loadedEdge).toBeCloseTo(0.05, 12);
    expect(spacingByEurocode(0.005, right, true, 350).loadedEdge).toBeCloseTo(0.035, 12);
  });

  test('heavier wood spreads undrilled screws further', () => {
    const light = spacingByEurocode(0.004, 0, false, 420);
    const heavy = spacingByEurocode(0.004, 0, false, 421);
    for (const name of names) expect(heavy[name]).toBeGreaterThan(light[name]);
  });

  test('above 500 kg/m3 an undrilled screw is refused, a drilled one is not', () => {
    expect(() => spacingByEurocode(0.004, 0, false, 501)).toThrow('must be drilled');
    expect(spacingByEurocode(0.004, 0, true, 900).freeEdge).toBeCloseTo(0.012, 12);
  });

  test('drilling never asks for more room, and a loaded end or edge never for less than a free one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.006, noNaN: true }),
        fc.double({ min: 0, max: right, noNaN: true }),
        fc.double({ min: 250, max: 500, noNaN: true }),
        (diameter, angle, density) => {
          const drilled = spacingByEurocode(diameter, angle, true, density);
          const undrilled = spacingByEurocode(diameter, angle, false, density);
          for (const name of names) expect(drilled[name]).toBeLessThanOrEqual(undrilled[name] + 1e-15);
          for (const spacing of [drilled, undrilled]) {
            expect(spacing.loadedEnd).toBeGreaterThanOrEqual(spacing.freeEnd);
            expect(spacing.loadedEdge).toBeGreaterThanOrEqual(spacing.freeEdge);
          }
        },
      ),
      { seed: 11 },
    );
  });
});

test('American spacing, drilled and not, in diameters', () => {
  const inDiameters = (drilled: boolean) => {
    const spacing = spacingByAmericanCode(0.004, drilled);
    return names.map((name) => Number((spacing[name] / 0.004).toFixed(9)));
  };
  expect(inDiameters(true)).toEqual([10, 3, 10, 5, 2.5, 2.5]);
  expect(inDiameters(false)).toEqual([15, 5, 15, 10, 2.5, 2.5]);
});

test('the thickness rule passes from 7 d to density for thick screws in heavy wood', () => {
  expect(thinnestUndrilled(0.004, 350, false)).toBeCloseTo(0.028, 12);
  // (13 x 6 - 30) x 500 / 400 = 60 mm, above 7 x 6 = 42 mm
  expect(thinnestUndrilled(0.006, 500, false)).toBeCloseTo(0.06, 12);
});

test('screws in one line: both ends count, spaces are no wider than asked, a short line takes one', () => {
  expect(screwsInLine(4, 0.05, 0.075)).toBe(53);
  expect(screwsInLine(0.85, 0.05, 0.075)).toBe(11);
  expect(screwsInLine(0.8501, 0.05, 0.075)).toBe(12);
  expect(screwsInLine(0.06, 0.05, 0.075)).toBe(1);
});
