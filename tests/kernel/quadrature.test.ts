import { describe, expect, test } from 'vitest';
import { integrate, integrateTo } from '../../src/kernel';
import './near';

describe('Gauss-Legendre', () => {
  test('two and three points sit where Abramowitz and Stegun, table 25.4, put them', () => {
    // An integrand that is 1 at one place would need the place; powers tell it instead.
    const places: number[] = [];
    integrate((t) => places.push(t), -1, 1, 3);
    expect(places[0] ?? 0).toBeNear(-0.774596669241483, 1e-14);
    expect(places[1] ?? 1).toBeNear(0, 0, 1e-15);
    expect(integrate((t) => (t > 0.5 ? 1 : 0), -1, 1, 3)).toBeNear(0.555555555555556, 1e-14);
    places.length = 0;
    integrate((t) => places.push(t), -1, 1, 2);
    expect(places[1] ?? 0).toBeNear(0.577350269189626, 1e-14);
  });

  test.each([1, 2, 3, 5, 8, 16])('%i points are exact to degree 2n - 1 and no further', (n) => {
    const power = (degree: number) => (t: number) => t ** degree;
    expect(integrate(power(2 * n - 1), 0, 2, n)).toBeNear(2 ** (2 * n) / (2 * n), 1e-13);
    const missed = integrate(power(2 * n), 0, 2, n) - 2 ** (2 * n + 1) / (2 * n + 1);
    // The error term of the rule (25.4.30): width^(2n+1) (n!)^4 / ((2n+1) (2n)!^2) for t^2n.
    const factorial = (k: number): number => (k < 2 ? 1 : k * factorial(k - 1));
    const term = (2 ** (2 * n + 1) * factorial(n) ** 4) / ((2 * n + 1) * factorial(2 * n) ** 2);
    expect(-missed).toBeNear(term, 1e-6, 4e-15 * 2 ** (2 * n));
  });

  test('refuses a rule of no points', () => {
    expect(() => integrate((t) => t, 0, 1, 0)).toThrow('1 to 64 points');
  });
});

describe('integral to an accuracy', () => {
  test('finds the quarter circle, whose slope is endless at its end', () => {
    expect(integrateTo((t) => Math.sqrt(1 - t * t), 0, 1)).toBeNear(Math.PI / 4, 1e-10);
  });

  test('runs backwards and over nothing', () => {
    expect(integrateTo(Math.sin, Math.PI, 0)).toBeNear(-2, 1e-13);
    expect(integrateTo(Math.sin, 1, 1)).toBe(0);
  });
});
