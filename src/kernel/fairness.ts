/**
 * Which one number of a line is wrong: told from the run of its third differences.
 *
 * The third differences of a fair line run smoothly from end to end. A single number that is out by e
 * upsets four of them in a row, by e, -3e, 3e and -e over equal steps, and no other number does it in just
 * that way. So each point is asked in turn: what correction here would leave the run likest a fair line's?
 * Dropping a point and bending the batten through the others does not tell so much: the batten leans over to
 * the bad point wherever it is kept, and blames its neighbours.
 */
import { dividedDifferences } from './differences';

/** What one correction, at one point, would do for the run. */
export interface Correction {
  /** Added to the point's value it leaves the run likest a fair line's; in the unit of the values. */
  readonly correction: number;
  /** Share of the run's unfairness that this takes away, 0 to 1. */
  readonly clears: number;
  /** The least error here that would stand out from the line's own shape. */
  readonly hidden: number;
}

export interface FairRun {
  /** Middle of the four points that each difference is taken over. */
  readonly at: readonly number[];
  /**
   * Third differences as over equal steps of the mean spacing, in the unit of the values. Divided
   * differences first, so the points may stand at any spacing.
   */
  readonly differences: readonly number[];
  /** One a point, in order. */
  readonly corrections: readonly Correction[];
}

/** The fewest points that can tell one bad number from another. */
export const FEWEST_POINTS = 5;

/*
 * How the third derivative of a fair line goes, over 8 x rise / length^3 (a parabola's second derivative
 * over its length). Of hulls drawn at random in many fair shapes: see docs/fairness.md, which says what
 * these numbers find and what they miss.
 */
/** Spread of its level. */
const LEVEL = 2;
/** Spread of its slope, from middle to end. */
const SLOPE = 3;
/** Spread of each difference about the straight run. */
const ROUGHNESS = 1;
/** How many times that at the two ends, where lines turn hardest. */
const AT_ENDS = 3;
/** How many differences' worth the spread above counts for, beside what the line itself shows. */
const WEIGHT = 6;
/** An error stands out when it is so many times the spread of the correction that a fair line asks for. */
const STANDS_OUT = 2.5;
/** A line flatter than this share of its length is judged as if it rose so far. */
const FLATTEST = 1 / 250;

/**
 * Asks each point of a line for the one correction that leaves the run of third differences likest a fair
 * line's. By generalised least squares, each difference weighed by its own spread.
 *
 * @param knots rising, in any spacing
 * @param values as far off the axis as written, one a knot
 * @param rounding spread of the values as written, in their unit
 * @throws when there are fewer than five points
 */
export function fairRun(knots: readonly number[], values: readonly number[], rounding: number): FairRun {
  const n = knots.length;
  if (n < FEWEST_POINTS) {
    throw new Error(
      `a bad number can only be told from its neighbours along ${FEWEST_POINTS} stations or more; there are ${n}`,
    );
  }
  const { at, differences, effects, bend, trend, roughness } = thirdRun(knots, values);
  const count = differences.length;
  const spread = differences.map((_, a) =>
    differences.map((__, b) => {
      const shape = LEVEL ** 2 + SLOPE ** 2 * trend[a]! * trend[b]! + (a === b ? roughness[a]! ** 2 : 0);
      const written = effects.reduce((sum, effect) => sum + effect[a]! * effect[b]!, 0);
      return bend ** 2 * shape + rounding ** 2 * written;
    }),
  );
  const lower = factor(spread);
  const weighed = settle(lower, differences);
  const unfairness = product(weighed, weighed);
  const corrections = effects.map((effect): Correction => {
    const way = settle(lower, effect);
    const strength = product(way, way);
    const correction = -product(way, weighed) / strength;
    const cleared = correction ** 2 * strength;
    // A line that stays rough whatever is corrected hides more than one that comes out fair.
    const left = (WEIGHT + Math.max(0, unfairness - cleared)) / (WEIGHT + count - 1);
    return {
      correction,
      // What a straight line leaves is rounding, and nothing to clear.
      clears: unfairness > 1e-12 ? Math.min(1, cleared / unfairness) : 0,
      hidden: STANDS_OUT * Math.sqrt(left / strength),
    };
  });
  return { at, differences, corrections };
}

/** The point whose correction stands out most, by how many times what would stay hidden there. */
export function oddOneOut({ corrections }: FairRun): { readonly index: number; readonly proof: number } {
  let index = 0;
  let proof = -1;
  corrections.forEach(({ correction, hidden }, i) => {
    const times = Math.abs(correction) / hidden;
    if (times > proof) [index, proof] = [i, times];
  });
  return { index, proof };
}

/** The run of third differences of a line of four points or more, and what a fair one is expected to do. */
export interface ThirdRun extends Pick<FairRun, 'at' | 'differences'> {
  /** By point: what an error of 1 there does to each difference. */
  readonly effects: readonly (readonly number[])[];
  /** The unit in which trend and roughness are told, in that of the values. */
  readonly bend: number;
  /** Where each difference stands along the line, -1 to 1. */
  readonly trend: readonly number[];
  /** Spread of each about a straight run, in bends. */
  readonly roughness: readonly number[];
}

export function thirdRun(knots: readonly number[], values: readonly number[]): ThirdRun {
  const n = knots.length;
  const start = knots[0]!;
  const length = knots[n - 1]! - start;
  const step = length / (n - 1);
  // A third divided difference is a sixth of the derivative.
  const run = (numbers: readonly number[]) =>
    dividedDifferences(knots, numbers, 3).map((divided) => divided * 6 * step ** 3);
  const differences = run(values);
  const at = differences.map((_, j) => (knots[j]! + knots[j + 1]! + knots[j + 2]! + knots[j + 3]!) / 4);
  return {
    at,
    differences,
    effects: knots.map((_, i) => run(knots.map((__, k) => (k === i ? 1 : 0)))),
    bend: 8 * Math.max(rise(knots, values), length * FLATTEST) * (step / length) ** 3,
    trend: at.map((x) => (2 * (x - start)) / length - 1),
    roughness: at.map((_, j) => ROUGHNESS * (j === 0 || j === at.length - 1 ? AT_ENDS : 1)),
  };
}

/** The most that two neighbouring differences of a fair line part, as a multiple of the usual. */
const PARTS_AT_MOST = 1.5;

/** How far a fair line's differences may part from one to the next: what no duck should have to hold beyond. */
export function fairSteps({ bend, trend, roughness }: ThirdRun): readonly number[] {
  return trend.slice(1).map((to, j) => {
    const usual = Math.hypot(SLOPE * (to - trend[j]!), roughness[j]!, roughness[j + 1]!);
    return PARTS_AT_MOST * bend * usual;
  });
}

/** How far the line stands off the straight one between its ends, at most. */
function rise(knots: readonly number[], values: readonly number[]): number {
  const last = knots.length - 1;
  const slope = (values[last]! - values[0]!) / (knots[last]! - knots[0]!);
  return Math.max(
    ...values.map((value, i) => Math.abs(value - values[0]! - slope * (knots[i]! - knots[0]!))),
  );
}

/** The lower triangle L with L L^T = the matrix, which is symmetric with a positive spread (Cholesky). */
function factor(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const lower: number[][] = [];
  matrix.forEach((row, i) => {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = row[j]!;
      for (let k = 0; k < j; k++) sum -= made[k]! * (j === i ? made[k]! : lower[j]![k]!);
      made.push(j === i ? Math.sqrt(sum) : sum / lower[j]![j]!);
    }
    lower.push(made);
  });
  return lower;
}

/** The numbers turned into ones of spread 1 that have nothing to do with each other. */
function settle(lower: readonly (readonly number[])[], numbers: readonly number[]): readonly number[] {
  const settled: number[] = [];
  lower.forEach((row, i) => {
    let sum = numbers[i]!;
    for (let k = 0; k < i; k++) sum -= row[k]! * settled[k]!;
    settled.push(sum / row[i]!);
  });
  return settled;
}

function product(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}
