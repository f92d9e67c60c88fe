import { curvatureAt, pointAt } from './batten';
import type { Batten } from './batten';
import { findMinimum } from './roots';
import type { Vec3 } from './vec';

/** The tightest place of a batten. */
export interface Tightest {
  readonly radius: number;
  readonly parameter: number;
  readonly point: Vec3;
}

/**
 * The least radius of curvature in space along a batten, m, and where; null when it is straight to
 * within rounding. Looks at each piece in 24 places and then closes in on the best of them, so a peak of
 * curvature narrower than a twelfth of a station space may be missed.
 */
export function tightest(batten: Batten, from?: number, to?: number): Tightest | null {
  const { knots } = batten;
  const start = from ?? knots[0]!;
  const stop = to ?? knots[knots.length - 1]!;
  const bend = (t: number): number => -curvatureAt(batten, t).magnitude;
  let best = { at: start, value: bend(start) };
  const keep = (found: { at: number; value: number }): void => {
    if (found.value < best.value) best = found;
  };
  keep({ at: stop, value: bend(stop) });
  const looks = 24;
  for (let i = 0; i < knots.length - 1; i++) {
    const low = Math.max(start, knots[i]!);
    const high = Math.min(stop, knots[i + 1]!);
    if (low >= high) continue;
    const step = (high - low) / looks;
    const values = Array.from({ length: looks + 1 }, (_, k) => bend(low + k * step));
    values.forEach((value, k) => {
      const before = values[k - 1] ?? Infinity;
      const after = values[k + 1] ?? Infinity;
      keep({ at: low + k * step, value });
      if (value > before || value > after) return;
      keep(findMinimum(bend, Math.max(low, low + (k - 1) * step), Math.min(high, low + (k + 1) * step)));
    });
  }
  // Straighter than any wood, and near what rounding leaves.
  if (-best.value * batten.length < 1e-9) return null;
  return { radius: -1 / best.value, parameter: best.at, point: pointAt(batten, best.at) };
}
