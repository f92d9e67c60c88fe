/**
 * The least mend: the smallest moves of a line's points that leave it fair.
 *
 * Fair is said in conditions that are linear in the points. No hollow: at its points the batten bends
 * the right way, or changes its way once where a reverse is meant. And no hard spot: two neighbouring third
 * differences part by no more than those of fair lines do. The moves with the least sum of squares that meet them are a
 * quadratic programme. It shares an error among neighbours, as one does with a batten in hand; one bad number
 * among good ones is better put right by itself.
 */
import { fairSteps, thirdRun } from './fairness';
import { type LinearCondition, leastChange } from './least-change';
import { fitSpline, splineAt } from './spline';

export interface MendOptions {
  /** Points that stay where they are. */
  readonly held: readonly number[];
  /** +1 where the line bends towards greater values on the whole, -1 where away from them. */
  readonly turn: 1 | -1;
  /** The line may reverse its bend once. */
  readonly reverse: boolean;
  /** Spread of the values as written: hollows no deeper than that are none. */
  readonly rounding: number;
}

/**
 * How far each point moves, in the unit of the values; nought at those held. Null where no fair line runs
 * through the points held.
 *
 * @param knots rising, four or more
 */
export function leastMend(
  knots: readonly number[],
  values: readonly number[],
  { held, turn, reverse, rounding }: MendOptions,
): readonly number[] | null {
  const free = knots.flatMap((_, i) => (held.includes(i) ? [] : [i]));
  const conditions = [
    ...noHollow(knots, values, reverse ? bestReverse(knots, values) : () => turn, rounding),
    ...noHardSpot(knots, values, rounding),
  ].map(({ row, least }): LinearCondition => ({ row: free.map((i) => row[i]!), least }));
  const moves = leastChange(conditions, free.length);
  if (moves === null) return null;
  const all = knots.map(() => 0);
  free.forEach((i, k) => (all[i] = moves[k]!));
  return all;
}

/** The right bend at every inner point; at the ends, where the batten only runs on, no hollow beyond what is there. */
function noHollow(
  knots: readonly number[],
  values: readonly number[],
  turnAt: (point: number) => 1 | -1,
  rounding: number,
): readonly LinearCondition[] {
  // The batten's bends are linear in the points, so what a move of 1 does is what that point does alone.
  const moved = knots.map((_, i) =>
    bendsAt(
      knots,
      knots.map((__, k) => (k === i ? 1 : 0)),
    ),
  );
  return bendsAt(knots, values).map((bend, point) => {
    const row = moved.map((bends) => bends[point]!);
    const right = turnAt(point) * bend;
    const end = point === 0 || point === knots.length - 1;
    return {
      row: row.map((value) => turnAt(point) * value),
      least: -(end ? Math.max(right, 0) : right) - 2 * rounding * Math.hypot(...row),
    };
  });
}

/** Second derivative of the batten at the points. */
function bendsAt(knots: readonly number[], values: readonly number[]): readonly number[] {
  const batten = fitSpline(knots, values);
  return knots.map((knot) => splineAt(batten, knot, 2));
}

/** The one reversal that goes least against the bends as they are. */
function bestReverse(knots: readonly number[], values: readonly number[]): (point: number) => 1 | -1 {
  const bends = bendsAt(knots, values);
  const against = (first: 1 | -1, from: number) =>
    bends.reduce((sum, bend, point) => sum + Math.min(0, (point < from ? first : -first) * bend) ** 2, 0);
  let best: { first: 1 | -1; from: number } = { first: 1, from: bends.length };
  for (const first of [1, -1] as const) {
    for (let from = 0; from <= bends.length; from++) {
      if (against(first, from) < against(best.first, best.from)) best = { first, from };
    }
  }
  const after = best.first === 1 ? -1 : 1;
  return (point) => (point < best.from ? best.first : after);
}

function noHardSpot(
  knots: readonly number[],
  values: readonly number[],
  rounding: number,
): readonly LinearCondition[] {
  const run = thirdRun(knots, values);
  return fairSteps(run).flatMap((most, j) => {
    const row = run.effects.map((effect) => effect[j + 1]! - effect[j]!);
    const parts = run.differences[j + 1]! - run.differences[j]!;
    const allowed = most + 2 * rounding * Math.hypot(...row);
    return [
      { row, least: -allowed - parts },
      { row: row.map((value) => -value), least: parts - allowed },
    ];
  });
}
