import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aged, type DailyRate, ripeAt } from '../../src/kernel';

const HOUR = 3600;
const steady: DailyRate = { at: () => 0.5, corners: [] };
/** One from six to eighteen, half of it at night. */
const dayAndNight: DailyRate = {
  at: (time) => {
    const hour = (time / HOUR) % 24;
    return hour >= 6 && hour < 18 ? 1 : 0.5;
  },
  corners: [6 * HOUR, 18 * HOUR],
};
/** 2^((T - 25) / 10) of a day whose warmth swings by 8 K round 17 °C, warmest at three. */
const swinging: DailyRate = {
  at: (time) => 2 ** ((17 + 8 * Math.cos((2 * Math.PI * (time / HOUR - 15)) / 24) - 25) / 10),
  corners: [],
};

describe('ageing', () => {
  test('at half the rate it takes twice the time', () => {
    expect(aged(steady, 5 * HOUR, 29 * HOUR) / HOUR).toBeCloseTo(12, 9);
    expect(ripeAt(steady, 5 * HOUR, 12 * HOUR)! / HOUR).toBeCloseTo(29, 9);
    expect(ripeAt(steady, 5 * HOUR, 0)).toBe(5 * HOUR);
  });

  test('twelve hours by night and twelve by day are eighteen by day, wherever they begin', () => {
    for (const start of [0, 3.7, 6, 17.99, 18])
      expect(aged(dayAndNight, start * HOUR, (start + 24) * HOUR) / HOUR).toBeCloseTo(18, 7);
    // From noon six hours count in full, and six more take twelve.
    expect(ripeAt(dayAndNight, 12 * HOUR, 12 * HOUR)! / HOUR).toBeCloseTo(30, 7);
  });

  test('over a day of swinging warmth it is what the mean gives, times I₀(8 ln 2 / 10)', () => {
    // Modified Bessel function of the first kind, by its power series.
    const x = (8 * Math.LN2) / 10;
    const bessel = 1 + x ** 2 / 4 + x ** 4 / 64 + x ** 6 / 2304 + x ** 8 / 147456;
    const mean = 24 * 2 ** ((17 - 25) / 10);
    expect(aged(swinging, 0, 24 * HOUR) / HOUR / (mean * bessel)).toBeCloseTo(1, 6);
  });

  test('what is ripe has aged just so long', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0.01, max: 90, noNaN: true }),
        (start, age) => {
          for (const rate of [steady, dayAndNight, swinging]) {
            const ripe = ripeAt(rate, start * HOUR, age * HOUR)!;
            expect(aged(rate, start * HOUR, ripe) / HOUR).toBeCloseTo(age, 5);
          }
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });

  test('never, where the rate is nought', () => {
    expect(ripeAt({ at: () => 0, corners: [] }, 0, HOUR)).toBeNull();
    expect(ripeAt({ at: () => 0, corners: [] }, 0, 0)).toBe(0);
    // However slow, it comes: a hundredth of the rate for a hundred days.
    expect(ripeAt({ at: () => 0.01, corners: [] }, 0, 24 * HOUR)! / HOUR).toBeCloseTo(2400, 6);
  });
});
