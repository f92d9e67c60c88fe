import { solveQP } from 'quadprog';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LinearCondition, leastChange } from '../../src/kernel';
import './near';

/** The referee's answer to the same question, or null where it says that there is none. */
function refereed(conditions: readonly LinearCondition[], size: number): readonly number[] | null {
  const from1 = (numbers: readonly number[]) => [0, ...numbers];
  const identity = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (__, k) => (i === k ? 1 : 0)),
  );
  const byColumn = Array.from({ length: size }, (_, i) => from1(conditions.map(({ row }) => row[i]!)));
  const { solution, message } = solveQP(
    [[], ...identity.map(from1)],
    from1(identity.map(() => 0)),
    [[], ...byColumn],
    from1(conditions.map(({ least }) => least)),
  );
  return message === '' ? solution.slice(1, size + 1) : null;
}

describe('the least change', () => {
  test('is none where all conditions hold already', () => {
    expect(leastChange([{ row: [1, 2], least: -3 }], 2)).toStrictEqual([0, 0]);
    expect(leastChange([], 3)).toStrictEqual([0, 0, 0]);
  });

  test('for one condition goes square to it: least x row / |row|^2 (closed form)', () => {
    const got = leastChange([{ row: [3, 4], least: 10 }], 2);
    expect(got?.[0] ?? NaN).toBeNear(1.2, 1e-12);
    expect(got?.[1] ?? NaN).toBeNear(1.6, 1e-12);
  });

  test('for two that both bite goes to their corner, else only as far as the one that does', () => {
    const corner = leastChange(
      [
        { row: [1, 0], least: 2 },
        { row: [0, 1], least: 1 },
      ],
      2,
    );
    expect(corner?.[0] ?? NaN).toBeNear(2, 1e-12);
    expect(corner?.[1] ?? NaN).toBeNear(1, 1e-12);
    const one = leastChange(
      [
        { row: [1, 0], least: 2 },
        { row: [1, 1], least: 1 },
      ],
      2,
    );
    expect(one?.[0] ?? NaN).toBeNear(2, 1e-12);
    expect(one?.[1] ?? NaN).toBeNear(0, 0, 1e-12);
  });

  test('is null where conditions clash, or ask something of nothing', () => {
    expect(
      leastChange(
        [
          { row: [1, 1], least: 1 },
          { row: [-1, -1], least: 0 },
        ],
        2,
      ),
    ).toBeNull();
    expect(leastChange([{ row: [0, 0], least: 1 }], 2)).toBeNull();
    expect(leastChange([{ row: [], least: 1 }], 0)).toBeNull();
    expect(() => leastChange([{ row: [NaN], least: 1 }], 1)).toThrow('not a number');
  });

  test('is the referee’s, a general quadratic programme, over random conditions', () => {
    const number = fc.integer({ min: -20, max: 20 });
    let moved = 0;
    let clashing = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 8 }).chain((size) =>
          fc.record({
            size: fc.constant(size),
            conditions: fc.array(
              fc.record({ row: fc.array(number, { minLength: size, maxLength: size }), least: number }),
              { minLength: 1, maxLength: 14 },
            ),
          }),
        ),
        ({ size, conditions }) => {
          // A row of noughts means nothing to the referee.
          fc.pre(conditions.every(({ row }) => row.some((value) => value !== 0)));
          const ours = leastChange(conditions, size);
          const theirs = refereed(conditions, size);
          expect(ours === null).toBe(theirs === null);
          if (ours === null) clashing++;
          ours?.forEach((value, i) => expect(value).toBeNear(theirs![i]!, 1e-7, 1e-7));
          if (ours?.some((value) => value !== 0)) moved++;
        },
      ),
      { seed: 41, numRuns: 1500 },
    );
    // Both kinds of answer must have been tried often.
    expect(moved).toBeGreaterThan(300);
    expect(clashing).toBeGreaterThan(100);
  });

  test('meets its conditions and can’t be shortened, on rows as steep as fourth differences over 40 points', () => {
    const size = 40;
    const fourth = [1, -4, 6, -4, 1];
    const conditions = Array.from({ length: size - 4 }, (_, j): LinearCondition => ({
      row: Array.from({ length: size }, (__, i) => fourth[i - j] ?? 0),
      least: Math.sin(3 * j) * 0.02,
    }));
    const ours = leastChange(conditions, size)!;
    for (const { row, least } of conditions) {
      expect(row.reduce((sum, value, i) => sum + value * ours[i]!, 0)).toBeGreaterThanOrEqual(least - 1e-9);
    }
    const theirs = refereed(conditions, size)!;
    ours.forEach((value, i) => expect(value).toBeNear(theirs[i]!, 1e-6, 1e-9));
  });
});
