import { describe, expect, test } from 'vitest';
import {
  costAtLeast,
  costOf,
  type CuttingPlan,
  type CuttingProblem,
  faultsOfPlan,
  impossible,
  shopPlan,
  taken,
} from '../../src/kernel/cutting';

const problem: CuttingProblem = {
  parts: [
    { name: 'keelson', length: 3.5 },
    { name: 'thwart', length: 1.1 },
  ],
  stocks: [
    { length: 2.4, price: 8 },
    { length: 3.6, price: 12 },
  ],
  kerf: 0.003,
};
const good: CuttingPlan = {
  boards: [
    { stock: 1, parts: [0] },
    { stock: 0, parts: [1] },
  ],
};

test('pieces of one board have a kerf between each two', () => {
  expect(taken([], 0.003)).toBe(0);
  expect(taken([1], 0.003)).toBe(1);
  expect(taken([1, 0.5, 0.5], 0.003)).toBeCloseTo(2.006, 12);
});

test('a plan costs its boards', () => {
  expect(costOf(good, problem)).toBe(8 + 12);
});

describe('a plan is believed only if it holds', () => {
  const [long, short] = good.boards as [CuttingPlan['boards'][number], CuttingPlan['boards'][number]];
  test('this one does', () => {
    expect(faultsOfPlan(good, problem)).toStrictEqual([]);
  });
  test.each([
    ['thwart is not cut', [long]],
    ['thwart is cut more than once', [long, short, short]],
    ['board 1 is too short for its pieces', [{ ...long, stock: 0 }, short]],
    ['board 1 is too short for its pieces', [{ stock: 1, parts: [0, 1] }]],
    ['board 1 is of no stock length', [{ ...long, stock: 7 }, short]],
    ['board 3 holds a piece of no part', [long, short, { stock: 0, parts: [9] }]],
  ])('%s', (fault, boards) => {
    expect(faultsOfPlan({ boards }, problem)).toContain(fault);
  });
});

describe('what can not be cut at all', () => {
  test.each([
    ['keelson is longer than the longest board sold', { stocks: [{ length: 2.4, price: 8 }] }],
    ['there is no board to cut from', { stocks: [] }],
  ])('%s', (says, change) => {
    expect(impossible({ ...problem, ...change })).toBe(says);
    expect(() => shopPlan({ ...problem, ...change })).toThrow(says);
  });
  test('this one can', () => {
    expect(impossible(problem)).toBeNull();
  });
});

test('the rule of the shop gives a plan that holds, and exchanges a board for the cheapest that does', () => {
  const plan = shopPlan(problem);
  expect(faultsOfPlan(plan, problem)).toStrictEqual([]);
  expect(plan.boards.map(({ stock }) => stock)).toStrictEqual([1, 0]);
  const cheap = shopPlan({ ...problem, parts: [{ name: 'thwart', length: 1.1 }] });
  expect(cheap.boards.map(({ stock }) => stock)).toStrictEqual([0]);
  expect(costOf(plan, problem)).toBeGreaterThanOrEqual(costAtLeast(problem));
});
