import { expect } from 'vitest';

declare module 'vitest' {
  // The name of the type parameter is vitest's own.
  interface Matchers<T> {
    /**
     * Within a relative tolerance of the number wanted, or within the floor where that is larger: the floor is for
     * wanted numbers near nought, and is in the unit of the number.
     */
    toBeNear(want: number, relative: number, floor?: number): T;
  }
}

expect.extend({
  toBeNear(got: number, want: number, relative: number, floor = 0) {
    const reach = Math.max(relative * Math.abs(want), floor);
    return {
      pass: Number.isFinite(got) && Math.abs(got - want) <= reach,
      message: () => `got ${got}, want ${want} within ${reach}; off by ${got - want}`,
    };
  },
});

/** The order of convergence between two errors when the step is halved. */
export function orderOf(coarse: number, fine: number): number {
  return Math.log2(Math.abs(coarse) / Math.abs(fine));
}
