import { describe, expect, test } from 'vitest';
import { edgeStrain, integrate, radiusAtAngle } from '../../src/kernel';
import './near';

test('the edges of a twisted strip are stretched as a helix is longer than its axis, less what balances it', () => {
  // Fibres of a strip a metre wide and a metre long, turned by psi: each longer by the square of its distance.
  for (const psi of [0.01, 0.05, 0.1]) {
    const stretch = (y: number) => Math.sqrt(1 + (psi * y) ** 2) - 1;
    const mean = integrate(stretch, -0.5, 0.5, 12);
    expect(edgeStrain(psi)).toBeNear(stretch(0.5) - mean, 2 * psi ** 2);
    // In the middle it is half as much, and short.
    expect(-edgeStrain(psi) / 2).toBeNear(stretch(0) - mean, 2 * psi ** 2);
  }
});

describe('a bend slantwise to the grain', () => {
  test('along and across has the radius of each', () => {
    expect(radiusAtAngle(5, 2, Math.PI / 2)).toBeNear(5, 1e-12);
    expect(radiusAtAngle(5, 2, 0)).toBe(2);
  });

  test('strains the grain no harder than square to it', () => {
    // Strain along a line at an angle to the axis: curvature times the squared sine.
    for (const degrees of [50, 60, 75, 85]) {
      const angle = (degrees * Math.PI) / 180;
      const strain = (1 / radiusAtAngle(5, 2, angle)) * (1 - Math.cos(2 * angle)) * 0.5;
      expect(strain).toBeNear(1 / 5, 1e-12);
    }
  });

  // FAA AC 43.13-1B: dry, axis square to the face grain and up to 45° off it, in.
  test.each([
    [5.2, 3.2],
    [12, 7.1],
    [17, 11],
    [21, 14],
    [31, 20],
    [43, 28],
    [54, 36],
  ])('up to 45° is that across, as the aircraft table has it: %f and %f', (along, across) => {
    expect(radiusAtAngle(along, across, Math.PI / 4)).toBe(across);
  });
});
