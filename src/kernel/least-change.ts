/**
 * The least change that meets a list of conditions: a quadratic programme with the sum of squares as its cost.
 *
 * Solved by an active set: which conditions hold the answer back is found by least squares with no negative
 * weights, one condition taken in or let go at a time.
 *
 * Source: C. L. Lawson and R. J. Hanson, Solving Least Squares Problems, 1974, chapter 23: algorithms LDP and NNLS.
 */

/** `row . change >= least`. */
export interface LinearCondition {
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
export function leastChange(conditions: readonly LinearCondition[], size: number): readonly number[] | null {
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
  if (most === 0) return noughts(size);
  const columns = scaled.map(({ row, least }) => [...row, least / most]);
  const target = noughts(size + 1);
  target[size] = 1;
  const miss = missOfNonNegative(columns, target);
  const last = miss[size]!;
  if (last < ROUNDING) return null;
  return miss.slice(0, size).map((value) => (-value / last) * most || 0);
}

/** What is left of the target when columns, each with a weight of 0 or more, come as near to it as they can. */
function missOfNonNegative(
  columns: readonly (readonly number[])[],
  target: readonly number[],
): readonly number[] {
  const weights = columns.map(() => 0);
  let active: readonly number[] = [];
  let miss = target;
  let barred: readonly number[] = [];
  // Each column taken in lowers the miss, so this ends; the bound is against rounding.
  for (let turn = 0; turn < 10 * columns.length; turn++) {
    const next = steepest(columns, [...active, ...barred], miss);
    if (next < 0) break;
    let wanted = leastSquares(columns, [...active, next], target);
    // Rounding alone promised a gain: leave this column out until another has been taken in.
    if (wanted === null || wanted.at(-1)! <= 0) {
      barred = [...barred, next];
      continue;
    }
    barred = [];
    active = [...active, next];
    while (wanted !== null && wanted.some((weight) => weight <= 0)) {
      active = goPart(weights, active, wanted);
      wanted = leastSquares(columns, active, target);
    }
    active.forEach((column, k) => (weights[column] = wanted?.[k] ?? 0));
    miss = target.map(
      (value, i) => value - active.reduce((sum, c) => sum + columns[c]![i]! * weights[c]!, 0),
    );
  }
  return miss;
}

/** The column, not among those left out, that lowers the miss fastest; -1 where none does. */
function steepest(
  columns: readonly (readonly number[])[],
  leftOut: readonly number[],
  miss: readonly number[],
): number {
  let best = -1;
  let most = ROUNDING;
  columns.forEach((column, c) => {
    const gain = dotOf(column, miss);
    if (gain > most && !leftOut.includes(c)) [best, most] = [c, gain];
  });
  return best;
}

/** Goes from the weights towards those wanted until the first reaches 0, and lets the columns at 0 go. */
function goPart(weights: number[], active: readonly number[], wanted: readonly number[]): readonly number[] {
  const share = Math.min(
    ...active.map((c, k) => (wanted[k]! <= 0 ? weights[c]! / (weights[c]! - wanted[k]!) : 1)),
  );
  return active.filter((c, k) => {
    const reached = weights[c]! + share * (wanted[k]! - weights[c]!);
    const stays = wanted[k]! > 0 || reached > ROUNDING * weights[c]!;
    weights[c] = stays ? reached : 0;
    return stays;
  });
}

/**
 * Weights of the columns that come nearest to the target, or null where one column depends on the others.
 * By Gram-Schmidt, gone over twice so that the directions stay square to each other.
 */
function leastSquares(
  columns: readonly (readonly number[])[],
  active: readonly number[],
  target: readonly number[],
): readonly number[] | null {
  const directions: (readonly number[])[] = [];
  const triangle: number[][] = [];
  for (const c of active) {
    let rest = columns[c]!;
    const size = Math.hypot(...rest);
    const shares = directions.map(() => 0);
    for (let again = 0; again < 2; again++) {
      directions.forEach((direction, k) => {
        const share = dotOf(direction, rest);
        shares[k]! += share;
        rest = rest.map((value, i) => value - share * direction[i]!);
      });
    }
    const left = Math.hypot(...rest);
    if (left <= ROUNDING * size) return null;
    triangle.push([...shares, left]);
    directions.push(rest.map((value) => value / left));
  }
  const weights = noughts(active.length);
  for (let k = active.length - 1; k >= 0; k--) {
    let sum = dotOf(directions[k]!, target);
    for (let j = k + 1; j < active.length; j++) sum -= triangle[j]![k]! * weights[j]!;
    weights[k] = sum / triangle[k]![k]!;
  }
  return weights;
}

function noughts(count: number): number[] {
  return Array.from({ length: count }, () => 0);
}

function dotOf(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!; // lists of one length
  return sum;
}
