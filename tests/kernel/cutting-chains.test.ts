/** Chains against the model that has a column for each piece on each board, solved by the same solver, in tests/work. */
import { expect, test } from 'vitest';
import { type CuttingProblem, costOf, faultsOfPlan } from '../../src/kernel/cutting';
import { chainModel } from '../../src/kernel/cutting-chains';

const problem: CuttingProblem = {
  parts: [
    { name: 'port', length: 3.5 },
    { name: 'starboard', length: 3.5 },
  ],
  stocks: [{ length: 2.5, price: 10 }],
  kerf: 0.003,
  scarf: { taper: 0.15, least: 0.6, most: 3, price: 2 },
};
const model = chainModel(problem)!;

test('two parts of one length make two chains: one alone on two boards, both on three', () => {
  expect(model.columns.map(({ cost }) => cost)).toStrictEqual([2 * 10 + 2, 3 * 10 + 2 * 2]);
  expect(model.rows).toStrictEqual([
    {
      least: 2,
      most: 2,
      terms: [
        [0, 1],
        [1, 2],
      ],
    },
  ]);
  expect(model.complete).toBe(true);
});

test('a solution reads as a plan that holds, at the cost of its columns', () => {
  for (const [solution, cost] of [
    [[2, 0], 44],
    [[0, 1], 34],
  ] as const) {
    const plan = model.read(solution);
    expect(faultsOfPlan(plan, problem)).toStrictEqual([]);
    expect(costOf(plan, problem)).toBe(cost);
  }
});

test('where pieces would be too short to join, dearer boards are taken, and the relaxed cost says so', () => {
  // 2.6 m of boards of 2.5 m leaves a piece of 25 cm; with 1.3 m at the least, two equal pieces just do not reach.
  const tight = {
    ...problem,
    parts: [{ name: 'rail', length: 2.6 }],
    stocks: [
      { length: 2.5, price: 10 },
      { length: 2.9, price: 30 },
    ],
    scarf: { ...problem.scarf!, least: 1.4 },
  };
  const short = chainModel(tight)!;
  expect(short.columns[0]!.cost).toBe(30);
  expect(short.relaxed.columns[0]!.cost).toBe(22);
  expect(short.complete).toBe(false);
});

test('whole parts have no chains', () => {
  expect(chainModel({ ...problem, scarf: null })).toBeNull();
});
