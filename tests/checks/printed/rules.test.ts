/** Rules of the trade whose figures stand in a function: every printed row typed once more and asked for. */
import { describe, expect, test } from 'vitest';
import { printedPlate } from '../../../src/trade/butt-plates';
import { embedmentByEurocode, olderScrewConstant } from '../../../src/trade/embedment';
import { keptAfter, stiffnessAt, strengthAt } from '../../../src/trade/load-duration';
import { leastBendRadius, pickedBendRadius } from '../../../src/trade/plywood-bend';
import { scarfStrength } from '../../../src/trade/scarf-strength';
import {
  type Spacing,
  spacingByAmericanCode,
  spacingByEurocode,
  thinnestUndrilled,
} from '../../../src/trade/screw-spacing';
import { leadHoleShare, usualGauge } from '../../../src/trade/screws';
import { movementFromShrinkage } from '../../../src/trade/shrinkage';
import { strappedRadius } from '../../../src/trade/steam';
import { FT, IN, PSI } from './units';

/** A number over what is printed. */
const over = (value: number, printed: number) => value / printed;

// APA, Plywood Design Specification, plywood splice plates, from memory: panel, sanded, unsanded, in.
test.each([
  [1 / 4, 6, 6],
  [5 / 16, 8, 8],
  [3 / 8, 10, 12],
  [1 / 2, 14, 14],
  [5 / 8, 16, 16],
  [3 / 4, 16, 16],
])('a plate behind %f in', (panel, sanded, unsanded) => {
  expect(over(printedPlate(panel * IN, 'sanded')!, sanded * IN)).toBeCloseTo(1, 12);
  expect(over(printedPlate(panel * IN, 'unsanded')!, unsanded * IN)).toBeCloseTo(1, 12);
});

// APA, concrete-form panels of Douglas-fir, dry: panel in, across and along the face grain ft.
test.each([
  [1 / 4, 2, 5],
  [5 / 16, 2, 6],
  [3 / 8, 3, 8],
  [1 / 2, 6, 12],
  [5 / 8, 8, 16],
  [3 / 4, 12, 20],
])('a panel of %f in bends', (panel, across, along) => {
  expect(over(leastBendRadius(panel * IN, 'across').radius, across * FT)).toBeCloseTo(1, 12);
  expect(over(leastBendRadius(panel * IN, 'along').radius, along * FT)).toBeCloseTo(1, 12);
});

// FAA AC 43.13-1B, aircraft plywood, as reproduced: panel; dry, axis square to the face grain and up to 45° off it;
// soaked, the same; in.
test.each([
  [0.07, 5.2, 3.2, 1.5, 0.4],
  [0.125, 12, 7.1, 3.8, 1.2],
  [0.16, 17, 11, 6, 2],
  [0.19, 21, 14, 7, 3],
  [0.25, 31, 20, 12, 5],
  [0.315, 43, 28, 16, 7],
  [0.375, 54, 36, 21, 10],
])('a picked panel of %f in bends', (panel, dryAlong, dryAcross, soakedAlong, soakedAcross) => {
  const radius = (...way: ['along' | 'across', 'dry' | 'soaked']) =>
    pickedBendRadius(panel * IN, ...way).radius / IN;
  expect(over(radius('along', 'dry'), dryAlong)).toBeCloseTo(1, 12);
  expect(over(radius('across', 'dry'), dryAcross)).toBeCloseTo(1, 12);
  expect(over(radius('along', 'soaked'), soakedAlong)).toBeCloseTo(1, 12);
  expect(over(radius('across', 'soaked'), soakedAcross)).toBeCloseTo(1, 12);
});

// Wood Handbook, ch. 10, and its older chapter on glued members, from memory; 1 in 20 R. Birmingham, as quoted.
test.each([
  [0, 0.25],
  [5, 0.65],
  [8, 0.8],
  [10, 0.85],
  [12, 0.9],
  [20, 0.95],
])('a scarf of 1 in %f keeps %f', (slope, kept) => expect(scarfStrength(slope)).toBe(kept));

// Wood Handbook, Table 8-4, before yield models, from memory: from gravity to gravity, psi.
test.each([
  [false, 0.29, 0.42, 3360],
  [false, 0.43, 0.47, 4320],
  [false, 0.48, 0.52, 5280],
  [true, 0.33, 0.47, 3360],
  [true, 0.48, 0.56, 4640],
  [true, 0.57, 0.74, 6400],
])('an older screw in hardwood %s of %f to %f', (hard, from, to, psi) => {
  for (const gravity of [from, to]) {
    const { constant, listed } = olderScrewConstant(gravity, hard);
    expect(over(constant, psi * PSI)).toBeCloseTo(1, 12);
    expect(listed).toBe(true);
  }
  const [least, most] = hard ? [0.33, 0.74] : [0.29, 0.52];
  expect(olderScrewConstant(least - 0.001, hard).listed).toBe(false);
  expect(olderScrewConstant(most + 0.001, hard).listed).toBe(false);
});

describe('screws apart, in diameters', () => {
  const D4 = 0.004;
  const D5 = 0.005;
  const along = 0;
  const across = Math.PI / 2;
  const inDiameters = (of: Spacing, d: number) =>
    [of.along, of.across, of.loadedEnd, of.freeEnd, of.loadedEdge, of.freeEdge].map((each) => each / d);
  /** Those that are off, each with what is printed. */
  const off = (of: Spacing, d: number, printed: readonly number[]) =>
    inDiameters(of, d).flatMap((each, i) =>
      Math.abs(each / printed[i]! - 1) > 1e-12 ? [[each, printed[i]!]] : [],
    );

  // EN 1995-1-1, Table 8.2, from memory: a1, a2, a3t, a3c, a4t, a4c at the force along the grain and across it.
  test.each([
    ['undrilled, to 420', D4, false, 420, [10, 5, 15, 10, 5, 5], [5, 5, 10, 10, 7, 5]],
    ['undrilled, to 420, thick', D5, false, 420, [12, 5, 15, 10, 5, 5], [5, 5, 10, 10, 10, 5]],
    ['undrilled, to 500', D4, false, 421, [15, 7, 20, 15, 7, 7], [7, 7, 15, 15, 9, 7]],
    ['undrilled, to 500, thick', D5, false, 500, [15, 7, 20, 15, 7, 7], [7, 7, 15, 15, 12, 7]],
    ['drilled', D4, true, 700, [5, 3, 12, 7, 3, 3], [4, 4, 7, 7, 5, 3]],
    ['drilled, thick', D5, true, 700, [5, 3, 12, 7, 3, 3], [4, 4, 7, 7, 7, 3]],
  ] as const)('by the European code, %s', (_, d, drilled, density, withGrain, acrossIt) => {
    expect(off(spacingByEurocode(d, along, drilled, density), d, withGrain)).toStrictEqual([]);
    expect(off(spacingByEurocode(d, across, drilled, density), d, acrossIt)).toStrictEqual([]);
  });

  test('and above 500 kg/m3 never undrilled', () =>
    expect(() => spacingByEurocode(D4, 0, false, 501)).toThrow('must be drilled'));

  // Commentary to the National Design Specification, wood screws, from memory.
  test('by the American code', () => {
    expect(off(spacingByAmericanCode(D4, false), D4, [15, 5, 15, 10, 2.5, 2.5])).toStrictEqual([]);
    expect(off(spacingByAmericanCode(D4, true), D4, [10, 3, 10, 5, 2.5, 2.5])).toStrictEqual([]);
  });

  // EN 1995-1-1, eq. 8.18 and 8.19, from memory: 7 d or (13 d - 30) rho / 400; twice as thick where wood splits easily.
  test('what is drilled for its thinness', () => {
    expect(over(thinnestUndrilled(0.003, 350, false), 7 * 0.003)).toBeCloseTo(1, 12);
    expect(over(thinnestUndrilled(0.003, 350, true), 14 * 0.003)).toBeCloseTo(1, 12);
    expect(over(thinnestUndrilled(0.006, 500, false), ((13 * 6 - 30) * 500) / 400 / 1000)).toBeCloseTo(1, 12);
    expect(over(thinnestUndrilled(0.006, 500, true), ((13 * 6 - 30) * 500) / 200 / 1000)).toBeCloseTo(1, 12);
  });
});

test('embedment: 0.082 rho d^-0.3 undrilled, 0.082 (1 - 0.01 d) rho drilled (EN 1995-1-1, eq. 8.15 and 8.16)', () => {
  expect(over(embedmentByEurocode(0.004, 350, false), 0.082 * 350 * 4 ** -0.3 * 1e6)).toBeCloseTo(1, 12);
  expect(over(embedmentByEurocode(0.004, 350, true), 0.082 * 0.96 * 350 * 1e6)).toBeCloseTo(1, 12);
});

test('lead holes: 70 % of the root to a gravity of 0.6, 90 % above (National Design Specification, 12.1.5)', () => {
  expect([0.5, 0.6, 0.61].map(leadHoleShare)).toStrictEqual([0.7, 0.7, 0.9]);
});

test('gauges by custom: 6 mm takes No. 6, 9 mm No. 8, 12 mm No. 10', () => {
  expect([0.006, 0.0065, 0.0066, 0.009, 0.0095, 0.0096, 0.012].map(usualGauge)).toStrictEqual([
    6, 6, 8, 8, 8, 10, 10,
  ]);
});

// L. W. Wood, Report 1916 (1951), from memory: 450 s 100 %, a day 82.3, thirty days 73.0, ten years 62.1.
test.each([
  [450, 1],
  [86_400, 0.823],
  [30 * 86_400, 0.73],
  [3652.5 * 86_400, 0.621],
])('after %f s wood keeps %f', (seconds, kept) => expect(keptAfter(seconds)).toBeCloseTo(kept, 3));

// Wood Handbook, ch. 5, from memory.
test('warmth at both ends of what is printed, and none at 20 °C', () => {
  expect([223.15, 293.15, 323.15].map(stiffnessAt).map((each) => Number(each.toFixed(12)))).toStrictEqual([
    1.17, 1, 0.93,
  ]);
  const strength = (moisture: number) =>
    [223.15, 293.15, 323.15].map((kelvin) => Number(strengthAt(kelvin, moisture).toFixed(12)));
  expect(strength(0.12)).toStrictEqual([1.35, 1, 0.8]);
  expect(strength(0.15)).toStrictEqual([1.35, 1, 0.8]);
  expect(strength(0.18)).toStrictEqual([1.6, 1, 0.75]);
});

test('movement from a shrinkage of 7.6 %, and a strap that shortens by a quarter', () => {
  expect(over(movementFromShrinkage(0.076), 1 / (3000 / 7.6 - 20))).toBeCloseTo(1, 12);
  expect(strappedRadius(0.25)).toBe(3);
});
