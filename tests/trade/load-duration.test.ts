import { describe, expect, test } from 'vitest';
import { keptAfter, lastings, stiffnessAt, strengthAt } from '../../src/trade/load-duration';
import { steamed, strappedRadius } from '../../src/trade/steam';
import { citation } from '../../src/trade/table';

describe('a stress that lasts', () => {
  test('is read at times that grow with their names, and takes ever more', () => {
    for (let i = 1; i < lastings.length; i++) {
      const [shorter, longer] = [lastings[i - 1]!, lastings[i]!];
      expect(longer.seconds).toBeGreaterThan(shorter.seconds);
      expect(longer.codeFactor.value).toBeLessThan(shorter.codeFactor.value);
      expect(keptAfter(longer.seconds)).toBeLessThan(keptAfter(shorter.seconds));
    }
  });

  test('meets points of the curve, and is never above the test', () => {
    // 108.4 t^-0.04635 + 18.3 per cent worked by hand: a day, thirty days.
    expect(keptAfter(86_400)).toBeCloseTo(0.823, 3);
    expect(keptAfter(30 * 86_400)).toBeCloseTo(0.73, 3);
    expect(keptAfter(1)).toBe(1);
    expect(() => keptAfter(0)).toThrow('longer than no time');
  });
});

describe('warmth', () => {
  test('changes nothing at 20 °C', () => {
    expect(stiffnessAt(293.15)).toBe(1);
    expect(strengthAt(293.15, 0.12)).toBe(1);
    expect(strengthAt(293.15, 0.3)).toBe(1);
  });

  test('goes by straight lines to what is printed', () => {
    expect(stiffnessAt(308.15)).toBeCloseTo(1 - 0.035, 12);
    expect(strengthAt(308.15, 0.12)).toBeCloseTo(0.9, 12);
    expect(strengthAt(258.15, 0.5)).toBeCloseTo(1.3, 12);
  });

  test('is refused beyond what is printed', () => {
    expect(() => stiffnessAt(373.15)).toThrow('from -50 to 50 °C (-58 to 122 °F)');
    expect(() => strengthAt(200, 0.12)).toThrow('from -50 to 50 °C (-58 to 122 °F)');
  });
});

describe('steam', () => {
  test('in a strap takes four thicknesses less one at a quarter', () => {
    expect(strappedRadius(0.25)).toBe(3);
    expect(() => strappedRadius(1)).toThrow('between 0 and 1');
  });

  test('says how each number is known', () => {
    expect(citation(steamed.stretch)).toMatch(/^from memory: .*Handbook 125/);
  });
});
