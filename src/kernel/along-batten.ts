import { lengthBetween } from './batten';
import type { Batten } from './batten';
import { findRoot } from './roots';
import { pieceAt, splineAt } from './spline';
import type { Spline } from './spline';

/** Length along the batten from its start to a parameter, m; negative before the start. */
export function lengthTo(batten: Batten, t: number): number {
  const piece = pieceAt(batten.knots, t);
  return batten.lengths[piece]! + lengthBetween(batten, piece, batten.knots[piece]!, t);
}

/** The parameter at a length along the batten from its start, m; held to the ends. */
export function parameterAtLength(batten: Batten, length: number): number {
  const { knots, lengths } = batten;
  if (length <= 0) return knots[0]!;
  if (length >= batten.length) return knots[knots.length - 1]!;
  const piece = pieceAt(lengths, length);
  const from = knots[piece]!;
  const wanted = length - lengths[piece]!;
  const miss = (t: number): number => lengthBetween(batten, piece, from, t) - wanted;
  return findRoot(miss, from, knots[piece + 1]!) ?? from;
}

/**
 * The parameter where the batten passes a given x, m, or null when it doesn't reach there. Meant for
 * battens that run one way along x; on others the first passage is given.
 *
 * Newton's steps, held inside a bracket that a bisection shrinks when Newton leaves it.
 */
export function parameterAtX(batten: Batten, x: number): number | null {
  const { knots, points } = batten;
  for (let i = 0; i < knots.length - 1; i++) {
    // Knots and points are lists of the same length.
    const a = points[i]![0] - x;
    const b = points[i + 1]![0] - x;
    if (a === 0) return knots[i]!;
    if (b === 0) return knots[i + 1]!;
    if (a > 0 === b > 0) continue;
    return newtonAtX(batten.x, x, knots[i]!, knots[i + 1]!, b > 0);
  }
  return null;
}

function newtonAtX(spline: Spline, x: number, start: number, stop: number, rises: boolean): number {
  let low = start;
  let high = stop;
  let t = (low + high) / 2;
  for (let round = 0; round < 100; round++) {
    const miss = splineAt(spline, t) - x;
    if (miss === 0) return t;
    if (miss > 0 === rises) high = t;
    else low = t;
    const slope = splineAt(spline, t, 1);
    const newton = slope === 0 ? low : t - miss / slope;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - t) <= 4 * Number.EPSILON * Math.abs(stop)) return next;
    t = next;
  }
  return t;
}
