import type { Batten } from './batten';
import { pieceAt } from './spline';
import type { Spline } from './spline';

/** A smooth curve in space over a parameter that runs from start to end. */
export interface Curve {
  readonly start: number;
  readonly end: number;
  /** Writes point, first and second derivative by the parameter into out[0..8]; keeps no hold of out. */
  readonly write: (t: number, out: Float64Array) => void;
}

/** A batten, or the part of it between two parameters, as a curve. */
export function curveOf(batten: Batten, from?: number, to?: number): Curve {
  const { knots, x, y, z } = batten;
  // A batten has at least two knots.
  const start = from ?? knots[0]!;
  const end = to ?? knots[knots.length - 1]!;
  if (!(start < end)) throw new Error(`a curve must run forward; got ${start} to ${end}`);
  return {
    start,
    end,
    write(t, out) {
      const piece = pieceAt(knots, t);
      const s = t - knots[piece]!;
      writeAxis(x, piece, s, out, 0);
      writeAxis(y, piece, s, out, 1);
      writeAxis(z, piece, s, out, 2);
    },
  };
}

function writeAxis(spline: Spline, piece: number, s: number, out: Float64Array, axis: number): void {
  const c = spline.coefficients;
  // Each piece has four coefficients.
  const c1 = c[4 * piece + 1]!;
  const c2 = c[4 * piece + 2]!;
  const c3 = c[4 * piece + 3]!;
  out[axis] = c[4 * piece]! + s * (c1 + s * (c2 + s * c3));
  out[axis + 3] = c1 + s * (2 * c2 + 3 * s * c3);
  out[axis + 6] = 2 * c2 + 6 * s * c3;
}
