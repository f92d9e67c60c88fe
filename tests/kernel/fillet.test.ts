import { describe, expect, test } from 'vitest';
import { filletAngle, filletRatio, meanFilletRatio } from '../../src/kernel/fillet';

describe('fillet between two planes', () => {
  test('a square corner holds 1 − π/4 of a square, one plane none', () => {
    expect(filletRatio(Math.PI / 2)).toBeCloseTo(1 - Math.PI / 4, 12);
    expect(filletRatio(Math.PI)).toBeCloseTo(0, 12);
  });

  test('the angle comes back from the section', () => {
    for (const degrees of [5, 40, 90, 120, 170]) {
      const angle = (degrees * Math.PI) / 180;
      expect(filletAngle(filletRatio(angle))).toBeCloseTo(angle, 9);
    }
    expect(filletAngle(0)).toBeCloseTo(Math.PI, 4);
  });

  test('the mean along a seam weighs each bay by its length', () => {
    const square = 1 - Math.PI / 4;
    expect(meanFilletRatio([1, 2, 5], [Math.PI / 2, Math.PI / 2, Math.PI / 2])).toBeCloseTo(square, 12);
    // From a square corner to one plane over the first metre, flat for three more.
    expect(meanFilletRatio([0, 1, 4], [Math.PI / 2, Math.PI, Math.PI])).toBeCloseTo(square / 8, 12);
  });
});
