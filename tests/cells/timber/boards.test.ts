/** Boards for the long parts: sections told apart, the rule of the shop, and what a search has found. */
import { describe, expect, test } from 'vitest';
import { boards } from '../../../src/cells/timber/boards';
import { bestOf, problemText, sectionsOf } from '../../../src/cells/timber/boards-plan';
import type { Values } from '../../../src/cells';
import type { CuttingAnswer, CuttingProblem } from '../../../src/kernel/cutting';
import { searchBoards } from '../../../src/work/boards';
import { tryCell } from '../try-cell';

const INCH = 0.0254;
/** Only chine logs, of 3/4 in, and boards of one length. */
const logs = {
  keelsonPieces: '0',
  clampPieces: '0',
  railPieces: '0',
  logPieces: '1',
  logThickness: '3/4 in',
  logWidth: '1 1/2 in',
  trim: '0 mm',
  kerf: '0 mm',
  slope: '8',
  stockA: '8 ft',
  stockB: '0 mm',
  stockC: '0 mm',
  stockD: '0 mm',
};
const valuesOf = (entries: Readonly<Record<string, string>>) => tryCell(boards, entries).all as Values;

describe('by the rule of the shop', () => {
  test('three boards of 8 ft in 3/4 in make one chine log of 23 ft with two scarfs at 1 in 8 (common practice, no source)', () => {
    const cell = tryCell(boards, { ...logs, logLength: '23 ft' });
    expect(cell.number('boards')).toBe(3);
    expect(cell.number('joints')).toBe(2);
    // The tapers are all that is lost.
    expect(cell.number('wasted')).toBeCloseTo(1 / 24, 9);
  });

  test('one inch more, and a fourth is needed', () => {
    expect(tryCell(boards, { ...logs, logLength: '23 ft 1 in', mostPieces: '4' }).number('boards')).toBe(4);
  });

  test('parts of one section share boards, parts of another do not', () => {
    const short = { ...logs, logLength: '1 m', clampPieces: '1', clampLength: '1 m' };
    const alike = { ...short, clampThickness: '3/4 in', clampWidth: '1 1/2 in' };
    expect(tryCell(boards, alike).number('boards')).toBe(1);
    expect(tryCell(boards, { ...alike, clampWidth: '2 in' }).number('boards')).toBe(2);
  });

  test('costs what its wood costs, and the joints', () => {
    const cell = tryCell(boards, { ...logs, logLength: '23 ft', priceA: '1000 /m³', jointPrice: '2' });
    const wood = 3 * 96 * INCH * 0.75 * INCH * 1.5 * INCH;
    expect(cell.number('cost')).toBeCloseTo(1000 * wood + 2 * 2, 9);
    expect(cell.number('bought')).toBeCloseTo(wood, 12);
  });
});

describe('what can not be', () => {
  test.each([
    [
      'chine log is longer than the longest board: allow scarfs, or find a longer board',
      { logLength: '23 ft', scarfs: 'no' },
    ],
    [
      'chine log would need 3 pieces of the longest board, and at most 2 are allowed: allow more, or find a longer board',
      { logLength: '23 ft', mostPieces: '2' },
    ],
    ['give the length of at least one board that is sold', { stockA: '0 mm' }],
    ['no part is to be cut: give a number of pieces', { logPieces: '0' }],
  ])('%s', (says, change) => {
    expect(tryCell(boards, { ...logs, ...change }).issues['boards']).toBe(says);
  });
});

describe('what a search has found', () => {
  const pair = { ...logs, logPieces: '2', logLength: '3.5 m', stockA: '2.5 m', jointPrice: '0' };

  test('is taken where it holds, and saves a board', async () => {
    const v = valuesOf(pair);
    const text = problemText(sectionsOf(v));
    let answer: CuttingAnswer | null = null;
    await searchBoards(text, (better) => {
      answer = better as CuttingAnswer;
    });
    const found = (asked: string) => (asked === text ? answer : null);
    expect(bestOf(v, () => null)[0]!.plan.boards).toHaveLength(4);
    expect(bestOf(v, found)[0]!.plan.boards).toHaveLength(3);
    expect(bestOf(v, found)[0]!.proved).toBe(true);
  });

  test('is not believed where it does not hold', () => {
    const v = valuesOf(pair);
    const cheat: CuttingAnswer = { plans: [{ boards: [] }], proved: [true] };
    expect(bestOf(v, () => cheat)[0]).toMatchObject({ proved: false });
    expect(bestOf(v, () => cheat)[0]!.plan.boards).toHaveLength(4);
  });

  test('belongs to its numbers: a changed kerf is another problem', () => {
    const text = (kerf: string) => problemText(sectionsOf(valuesOf({ ...pair, kerf })));
    expect(text('3 mm')).not.toBe(text('4 mm'));
    expect((JSON.parse(text('3 mm')) as CuttingProblem[])[0]!.kerf).toBe(0.003);
  });
});

test('a longer board never costs more boards', () => {
  const counts = ['2.4 m', '3 m', '3.6 m', '4.8 m', '6 m'].map((stockA) =>
    tryCell(boards, { ...logs, logPieces: '4', logLength: '4.3 m', stockA }).number('boards'),
  );
  expect(counts).toStrictEqual(counts.toSorted((a, b) => b - a));
});
