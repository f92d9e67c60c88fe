// The part of the integrator of differential equations that the tests use as a referee; it ships no types of its own.
export declare class Solver {
  constructor(equations: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  /** Runs y' = f(x, y) from one x to another; the values at the end are `y`. */
  solve(
    f: (x: number, y: readonly number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
  ): { readonly y: readonly number[] };
}
