import { describe, expect, test } from 'vitest';
import { fitSpline, leastMend, splineAt } from '../../src/kernel';
import { fairSteps, thirdRun } from '../../src/kernel/fairness';
import './near';

const knots = [0, 0.8, 1.6, 2.4, 3.2, 4, 4.8, 5.6];
const fair = knots.map((x) => 0.8 - 0.07 * (x - 2.4) ** 2);
const options = { held: [0, 7], turn: -1, reverse: false, rounding: 0.0004 } as const;
const moved = (values: readonly number[], moves: readonly number[]) =>
  values.map((value, i) => value + moves[i]!);
const dented = fair.map((value, i) => (i === 3 ? value - 0.05 : value));

/** Bends at the inner points, + the right way. */
const bends = (values: readonly number[]) =>
  knots.slice(1, -1).map((knot) => -splineAt(fitSpline(knots, values), knot, 2));

/** How far neighbouring third differences part, over what a fair line's do. */
function hardness(values: readonly number[], of: readonly number[]): number {
  const steps = fairSteps(thirdRun(knots, of));
  const { differences } = thirdRun(knots, values);
  return Math.max(...steps.map((step, j) => Math.abs(differences[j + 1]! - differences[j]!) / step));
}

describe('the least mend', () => {
  test('leaves a fair line alone', () => {
    for (const move of leastMend(knots, fair, options)!) expect(move).toBeNear(0, 0, 1e-12);
  });

  test('takes the hollow and the hard spot out of a dented one, and holds what is held', () => {
    expect(Math.min(...bends(dented))).toBeLessThan(-0.05);
    expect(hardness(dented, dented)).toBeGreaterThan(3);
    const moves = leastMend(knots, dented, options)!;
    expect([moves[0], moves[7]]).toStrictEqual([0, 0]);
    const mended = moved(dented, moves);
    // Bends may stay as flat as the rounding of the table lets them look.
    expect(Math.min(...bends(mended))).toBeGreaterThan(-0.01);
    // And steps part as far beyond a fair line's as rounding alone would make them.
    expect(hardness(mended, dented)).toBeLessThan(1.3);
    expect(moves[3]!).toBeGreaterThan(0.01);
  });

  test('makes no hollow at an end to be rid of one amidships', () => {
    // An invented dory's sheer with its third half-breadth 50 mm short; only the inner bends were once looked at.
    const along = [-0.16, 0.8, 1.6, 2.4, 3.2, 4, 5.2];
    const sheer = [0.5, 0.727, 0.801, 0.865, 0.75, 0.512, 0];
    const mended = leastMend(along, sheer, { ...options, held: [0, 6] })!.map((move, i) => sheer[i]! + move);
    const batten = fitSpline(along, mended);
    // The rounding of the table lets bends look up to 2 x 0.4 mm x the size of their row, some 0.0105 /m, wrong.
    for (const x of along) expect(splineAt(batten, x, 2)).toBeLessThan(0.012);
  });

  test('with all but the dent held is the dent’s own correction, or what is needed of it', () => {
    const moves = leastMend(knots, dented, { ...options, held: [0, 1, 2, 4, 5, 6, 7] })!;
    expect(moves.filter((move) => move !== 0)).toHaveLength(1);
    expect(moves[3]!).toBeGreaterThan(0.025);
    expect(moves[3]!).toBeLessThanOrEqual(0.05);
  });

  test('moves less, summed in squares, the fewer points are held', () => {
    const size = (held: readonly number[]) => Math.hypot(...leastMend(knots, dented, { ...options, held })!);
    expect(size([])).toBeLessThanOrEqual(size([0, 7]) + 1e-12);
    expect(size([0, 7])).toBeLessThan(size([0, 1, 2, 4, 5, 6, 7]));
  });

  test('is none where the points held can’t lie on a fair line', () => {
    expect(leastMend(knots, dented, { ...options, held: [0, 2, 3, 4, 7] })).toBeNull();
  });

  test('lets one reverse be that is meant, and no second', () => {
    const reversed = knots.map((x) => 0.3 - (0.02 * (x - 3) ** 3) / 3 + 0.1 * x);
    for (const move of leastMend(knots, reversed, { ...options, reverse: true })!)
      expect(move).toBeNear(0, 0, 1e-12);
    expect(Math.hypot(...leastMend(knots, reversed, options)!)).toBeGreaterThan(0.005);
    const twice = knots.map((x) => 0.2 * Math.sin((2 * Math.PI * x) / 4));
    expect(Math.hypot(...leastMend(knots, twice, { ...options, reverse: true })!)).toBeGreaterThan(0.005);
  });
});
