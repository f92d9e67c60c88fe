// The part of the general quadratic-programming library that the tests use as a referee; it ships no types.
declare module 'quadprog' {
  /** Least of -d.x + x.D.x / 2 where A^T x >= b. Lists and matrices count from 1. */
  export function solveQP(
    D: readonly (readonly number[])[],
    d: readonly number[],
    A: readonly (readonly number[])[],
    b: readonly number[],
  ): { readonly solution: readonly number[]; readonly message: string };
}
