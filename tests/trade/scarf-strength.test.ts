import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { scarfStrength } from '../../src/trade/scarf-strength';

test('the planning curve passes through its points', () => {
  for (const [slope, kept] of [
    [0, 0.25],
    [5, 0.65],
    [8, 0.8],
    [10, 0.85],
    [12, 0.9],
    [20, 0.95],
  ] as const) {
    expect(scarfStrength(slope)).toBeCloseTo(kept, 12);
  }
});

test('it is straight between them and level beyond', () => {
  expect(scarfStrength(9)).toBeCloseTo(0.825, 12);
  expect(scarfStrength(4)).toBeCloseTo(0.57, 12);
  expect(scarfStrength(30)).toBe(0.95);
  expect(scarfStrength(-1)).toBe(0.25);
});

test('a flatter scarf never keeps less', () => {
  const slope = fc.double({ min: 0, max: 40, noNaN: true });
  fc.assert(
    fc.property(slope, slope, (a, b) => {
      expect(scarfStrength(Math.max(a, b))).toBeGreaterThanOrEqual(scarfStrength(Math.min(a, b)));
    }),
    { seed: 3 },
  );
});
