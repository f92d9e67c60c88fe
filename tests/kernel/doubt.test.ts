import { describe, expect, test } from 'vitest';
import { halfOf, isBent, nineteenOfTwenty, together, trials } from '../../src/kernel';

describe('propagation', () => {
  /**
   * An end gauge by comparison: length = standard + difference - standard (rise x temperature + expansion x rise of
   * temperature). Source: JCGM 100:2008 annex H.1, from memory: 32 nm by first order, 34 nm with the terms of second order.
   */
  const gauge = {
    standard: { at: 50.000623e-3, by: 25e-9 },
    difference: { at: 215e-9, by: 9.7e-9 },
    expansion: { at: 11.5e-6, by: 1.2e-6 },
    temperature: { at: -0.1, by: 0.41 },
    rise: { at: 0, by: 0.58e-6 },
    warmer: { at: 0, by: 0.029 },
  };
  const keys = Object.keys(gauge) as (keyof typeof gauge)[];
  const length = (moved: Partial<Record<keyof typeof gauge, number>> = {}): number => {
    const at = (key: keyof typeof gauge) => gauge[key].at + (moved[key] ?? 0);
    return (
      at('standard') +
      at('difference') -
      at('standard') * (at('rise') * at('temperature') + at('expansion') * at('warmer'))
    );
  };
  const swingOf = (key: keyof typeof gauge) => ({
    less: length({ [key]: -gauge[key].by }) - length(),
    more: length({ [key]: gauge[key].by }) - length(),
  });

  test('adds the squares of what each input does, as the guide’s end gauge has it', () => {
    const halves = keys.map((key) => halfOf(swingOf(key)));
    expect(halves.map((half) => Math.round(half * 1e10) / 10)).toStrictEqual([25, 9.7, 0, 0, 2.9, 16.7]);
    expect(together(halves) * 1e9).toBeCloseTo(31.7, 1);
    expect(keys.map(swingOf).some(isBent)).toBe(false);
  });

  test('trying all inputs at once finds what their products add to it', () => {
    const found = trials(keys.length, 4000).map((row) =>
      length(Object.fromEntries(keys.map((key, i) => [key, row[i]! * gauge[key].by]))),
    );
    const mean = found.reduce((sum, one) => sum + one, 0) / found.length;
    const deviation = Math.sqrt(found.reduce((sum, one) => sum + (one - mean) ** 2, 0) / found.length);
    expect(deviation * 1e9).toBeGreaterThan(33.2);
    expect(deviation * 1e9).toBeLessThan(34.8);
  });
});

test('a square bends, a line does not, and what goes to one side only bends', () => {
  expect(isBent({ less: -2, more: 2 })).toBe(false);
  expect(isBent({ less: 0.19, more: 0.21 })).toBe(true);
  expect(isBent({ less: 0, more: 3 })).toBe(true);
  expect(isBent({ less: 0, more: 0 })).toBe(false);
});

test('trials are normal in every input, and of two they hang together in none', () => {
  const rows = trials(6, 2000);
  const column = (i: number) => rows.map((row) => row[i]!);
  for (let i = 0; i < 6; i += 1) {
    const all = column(i);
    const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
    const square = all.reduce((sum, one) => sum + one * one, 0) / all.length;
    expect(Math.abs(mean)).toBeLessThan(0.02);
    expect(Math.abs(square - 1)).toBeLessThan(0.03);
    const [least, most] = nineteenOfTwenty(all);
    // 1.96 standard deviations hold 95 of 100 of a normal distribution.
    expect(most).toBeCloseTo(1.96, 1);
    expect(least).toBeCloseTo(-1.96, 1);
    for (let j = 0; j < i; j += 1) {
      const other = column(j);
      const both = all.reduce((sum, one, at) => sum + one * other[at]!, 0) / all.length;
      // As by chance: one over the root of how many there are is 0.02.
      expect(Math.abs(both)).toBeLessThan(0.1);
    }
  }
  expect(trials(3, 5)).toStrictEqual(trials(3, 5));
});

test('of one value all twenty are that one; of none there is no spread', () => {
  expect(nineteenOfTwenty([3])).toStrictEqual([3, 3]);
  expect(() => nineteenOfTwenty([])).toThrow('a spread needs a value');
});
