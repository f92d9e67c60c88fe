// The part of the general spline library that the tests use as a referee; it ships no types.
declare module 'cubic-spline' {
  export default class Spline {
    constructor(xs: readonly number[], ys: readonly number[]);
    at(x: number): number;
  }
}
