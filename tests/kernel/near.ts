import { expect } from 'vitest';

/**
 * Expects a number within a relative tolerance of the one wanted, or within the floor where that is larger: the floor
 * is for wanted numbers near nought, and is in the unit of the number.
 */
export function expectNear(got: number, want: number, relative: number, floor = 0): void {
  const reach = Math.max(relative * Math.abs(want), floor);
  expect(
    Number.isFinite(got) && Math.abs(got - want) <= reach,
    `got ${got}, want ${want} within ${reach}; off by ${got - want}`,
  ).toBe(true);
}

/** The order of convergence between two errors when the step is halved. */
export function orderOf(coarse: number, fine: number): number {
  return Math.log2(Math.abs(coarse) / Math.abs(fine));
}
