import { describe, expect, test } from 'vitest';
import {
  costAtLeast,
  costOf,
  type CuttingPlan,
  type CuttingProblem,
  faultsOfPlan,
  impossible,
  jointsOf,
  shopPlan,
  taken,
} from '../../src/kernel/cutting';

const scarf = { taper: 0.15, least: 0.6, most: 3, price: 2 };
const problem: CuttingProblem = {
  parts: [
    { name: 'keelson', length: 4 },
    { name: 'thwart', length: 1.1 },
  ],
  stocks: [
    { length: 2.4, price: 8 },
    { length: 3.6, price: 12 },
  ],
  kerf: 0.003,
  scarf,
};
const good: CuttingPlan = {
  boards: [
    { stock: 1, pieces: [{ part: 0, length: 3.6 }] },
    {
      stock: 0,
      pieces: [
        { part: 0, length: 0.6 },
        { part: 1, length: 1.1 },
      ],
    },
  ],
};
/** 3.6 and 0.6, less one taper, are 5 cm too long for 4 m. */
const fitting = { ...problem, parts: [{ name: 'keelson', length: 4.05 }, problem.parts[1]!] };

test('pieces of one board have a kerf between each two', () => {
  expect(taken([], 0.003)).toBe(0);
  expect(taken([{ length: 1 }], 0.003)).toBe(1);
  expect(taken([{ length: 1 }, { length: 0.5 }, { length: 0.5 }], 0.003)).toBeCloseTo(2.006, 12);
});

test('a plan costs its boards and its joints', () => {
  expect(jointsOf(good, fitting)).toBe(1);
  expect(costOf(good, fitting)).toBe(8 + 12 + 2);
});

describe('a plan is believed only if it holds', () => {
  const boards = (...pieces: CuttingPlan['boards']) => ({ boards: pieces });
  test('this one does', () => {
    expect(faultsOfPlan(good, fitting)).toStrictEqual([]);
  });
  test.each([
    ['keelson does not come out at its length', good, problem],
    ['thwart is not cut', boards(good.boards[0]!, { stock: 0, pieces: [{ part: 0, length: 0.6 }] }), fitting],
    [
      'board 1 is too short for its pieces',
      boards({ ...good.boards[0]!, stock: 0 }, good.boards[1]!),
      fitting,
    ],
    ['keelson is in pieces', good, { ...fitting, scarf: null }],
    ['keelson has a piece too short to join', good, { ...fitting, scarf: { ...scarf, least: 0.7 } }],
    ['keelson is in more than 1 pieces', good, { ...fitting, scarf: { ...scarf, most: 1 } }],
    ['board 1 is of no stock length', boards({ ...good.boards[0]!, stock: 7 }, good.boards[1]!), fitting],
    [
      'board 3 holds a piece of no part',
      boards(...good.boards, { stock: 0, pieces: [{ part: 9, length: 1 }] }),
      fitting,
    ],
  ])('%s', (fault, plan, of) => {
    expect(faultsOfPlan(plan, of)).toContain(fault);
  });
});

describe('what can not be cut at all', () => {
  test.each([
    ['keelson is longer than the longest board: allow scarfs, or find a longer board', { scarf: null }],
    [
      'keelson would need 2 pieces of the longest board, and at most 1 are allowed: allow more, or find a longer board',
      { scarf: { ...scarf, most: 1 } },
    ],
    [
      'the taper of a scarf is as long as the longest board: find a longer board or a steeper scarf',
      { scarf: { ...scarf, taper: 3.6 } },
    ],
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
  const cheap = shopPlan({ ...problem, parts: [{ name: 'thwart', length: 1.1 }] });
  expect(cheap.boards.map(({ stock }) => stock)).toStrictEqual([0]);
  expect(costOf(plan, problem)).toBeGreaterThanOrEqual(costAtLeast(problem));
});
