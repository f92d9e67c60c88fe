import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { plateEachSide, printedPlate } from '../../src/trade/butt-plates';

const INCH = 0.0254;

// APA Plywood Design Specification, table of plywood splices (from memory).
test.each([
  [1 / 4, 6],
  [5 / 16, 8],
  [3 / 8, 10],
  [1 / 2, 14],
  [5 / 8, 16],
  [3 / 4, 16],
])('%f in of panel take a plate of %f in', (thickness, plate) => {
  expect(printedPlate(thickness * INCH, 'sanded')).toBeCloseTo(plate * INCH, 12);
});

test('unsanded panels differ at 3/8 in only', () => {
  expect(printedPlate((3 / 8) * INCH, 'unsanded')).toBeCloseTo(12 * INCH, 12);
  expect(printedPlate((1 / 2) * INCH, 'unsanded')).toBeCloseTo(14 * INCH, 12);
});

test.each([
  [6, 6],
  [8, 8],
  [9, 10],
  [12, 14],
  [15, 16],
  [18, 16],
])('%d mm is taken as the row nearest', (millimetres, plate) => {
  expect(printedPlate(millimetres / 1000, 'sanded')).toBeCloseTo(plate * INCH, 12);
});

test.each([3, 4, 22, 40])('%d mm has no row', (millimetres) => {
  expect(printedPlate(millimetres / 1000, 'sanded')).toBeNull();
});

test('between the first row and the last there is no gap, and a thicker panel never takes a shorter plate', () => {
  const thickness = fc.double({ min: 0.00635, max: 0.01905, noNaN: true });
  fc.assert(
    fc.property(thickness, thickness, (a, b) => {
      const plate = (of: number) => printedPlate(of, 'sanded')!;
      expect(plate(Math.max(a, b))).toBeGreaterThanOrEqual(plate(Math.min(a, b)));
    }),
    { seed: 13 },
  );
});

test('the rule of twelve thicknesses a side lies within a third of every row', () => {
  for (const thickness of [1 / 4, 5 / 16, 3 / 8, 1 / 2, 5 / 8, 3 / 4]) {
    const ratio = printedPlate(thickness * INCH, 'unsanded')! / (2 * plateEachSide * thickness * INCH);
    expect(ratio).toBeGreaterThan(2 / 3);
    expect(ratio).toBeLessThanOrEqual(4 / 3);
  }
});
