/**
 * The least change that meets a list of conditions: a quadratic programme with the sum of squares as its cost.
 *
 * Solved by an active set: which conditions hold the answer back is found by least squares with no negative
 * weights, one condition taken in or let go at a time.
 *
 * Source: C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, 1974, chapter 23: algorithms LDP and NNLS.
 */

/** `row . change >= least`. */
export interface Condition {
  readonly row: readonly number[];
  readonly least: number;
}

/** Below this share of 1 a number of the scaled problem is taken for rounding. */
const ROUNDING = 1e-11;

/**
 * The change with the least sum of squares that meets all the conditions, or null where none does.
 *
 * @param conditions rows of one length each, in the units of the thing changed
 * @param size how many numbers may change
 * @throws when a number isn't finite
 */
export function leastChange(conditions: readonly Condition[], size: number): readonly number[] | null {
  const scaled = conditions.flatMap(({ row, least }) => {
    const length = Math.hypot(...row);
    if (!Number.isFinite(length) || !Number.isFinite(least))
      throw new Error('a condition on the change holds something that is not a number');
    return [
      {
        row: row.map((value) => (length > 0 ? value / length : 0)),
        least: length > 0 ? least / length : least,
      },
    ];
  });
  // Conditions on nothing hold or don't.
  if (scaled.some(({ row, least }) => least > 0 && row.every((value) => value === 0))) return null;
  const most = Math.max(0, ...scaled.map(({ least }) => least));
  if (most === 0) return new Array<number>(size).fill(0);
  const columns = scaled.map(({ row, least }) => [...row, least / most]);
  const target = new Array<number>(size + 1).fill(0);
  target[size] = 1;
  const miss = missOfNonNegative(columns, target);
  const last = miss[size]!;
  if (last < ROUNDING) return null;
  return miss.slice(0, size).map((value) => (-value / last) * most || 0);
}

/** What least squares with weights of 0 or more leaves of the target: target - columns x weights. Negated but for the last. */
function missOfNonNegative(
  columns: readonly (readonly number[])[],
  target: readonly number[],
): readonly number[] {
  const weights = columns.map(() => 0);
  const active: number[] = [];
  let miss = target;
  // Each turn lowers the miss, so it ends; the bound is for rounding.
  for (let turn = 0; turn < 10 * columns.length; turn++) {
    const next = steepest(columns, active, miss);
    if (next < 0) break;
    active.push(next);
    let wanted = leastSquares(columns, active, target);
    // A column that depends on those already in can't be taken in: rounding would choose its weight.
    if (wanted.at(-1)! <= 0) {
      active.pop();
      break;
    }
    while (wanted.some((weight) => weight <= 0)) {
      letGo(weights, active, wanted);
      wanted = leastSquares(columns, active, target);
    }
    active.forEach((column, k) => (weights[column] = wanted[k]!));
    miss = target.map(
      (value, i) => value - active.reduce((sum, c) => sum + columns[c]![i]! * weights[c]!, 0),
    );
  }
  return miss;
}
