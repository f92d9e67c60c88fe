/** Boards for the plan of pieces: what is cut, from what, in which order, and what a search has found. */
import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters } from '../../../../src/boat';
import { boards } from '../../../../src/cells/timber/wood/boards';
import { best, cutList, problem } from '../../../../src/cells/timber/wood/boards-facts';
import type { Values } from '../../../../src/cells';
import type { CuttingAnswer, CuttingProblem } from '../../../../src/kernel/cutting';
import { searchBoards } from '../../../../src/search/boards';
import { askFact } from '../../alone';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { tryCell } from '../../try-cell';

const INCH = 0.0254;
const dory = starter('ferry-dory')!;
const hull = buildHull(offsetsOf(dory));
/** Only parts of the builder's own, of 3/4 by 1 1/2 in, and boards of one length. */
const own = {
  keelsonPieces: '0',
  logPieces: '0',
  clampPieces: '0',
  railPieces: '0',
  otherPieces: '1',
  otherThickness: '3/4 in',
  otherWidth: '1 1/2 in',
  trim: '0 mm',
  kerf: '0 mm',
  stockA: '8 ft',
  stockB: '0 mm',
  stockC: '0 mm',
  stockD: '0 mm',
};
const valuesOf = (entries: Readonly<Record<string, string>>) => tryCell(boards, entries).all as Values;
const listOf = (tried: ReturnType<typeof tryCell>) =>
  tried.rows.map(({ id }) => ({
    board: tried.inRow(id, 'board') as number,
    name: tried.inRow(id, 'name') as string,
    length: tried.inRow(id, 'length') as number,
    scarfed: tried.inRow(id, 'scarfed') as string,
  }));

const spanOf = (all: readonly number[]) => Math.max(...all) - Math.min(...all);

describe('the cut list', () => {
  test.each([...starters.map(({ table }) => table), withTwoChines, withoutChines])(
    'holds every piece of the plan once, board by board, no board over its length: $name',
    (table) => {
      const tried = tryCell(boards, {}, table);
      expect(tried.issues).toEqual({});
      const list = listOf(tried);
      expect(list).toHaveLength(tried.number('pieces'));
      expect(new Set(list.map(({ name }) => name)).size).toBe(list.length);
      expect(list.map(({ board }) => board)).toEqual(
        list.map(({ board }) => board).toSorted((a, b) => a - b),
      );
      expect(Math.max(...list.map(({ board }) => board))).toBe(tried.number('boards'));
      for (const board of new Set(list.map((one) => one.board))) {
        const long = list.filter((one) => one.board === board).reduce((sum, { length }) => sum + length, 0);
        expect(long).toBeLessThanOrEqual(16 * 12 * INCH + 1e-6);
      }
      // Under the drawing stands what is hatched in it.
      const { says, shapes } = tried.drawing!;
      const hatched = shapes.flatMap((shape) =>
        shape.shape === 'area' && shape.fill === 'cedar' ? [spanOf(shape.rings[0]!.map(([x]) => x))] : [],
      );
      expect(says).toMatch(new RegExp(`^${tried.number('boards')} boards? for ${list.length} pieces?\\.`));
      const [, left] = /The longest left over is ([\d.]+) mm, of board \d+\.$/.exec(says)!;
      expect(Number(left)).toBeCloseTo(Math.max(...hatched), 1);
    },
  );

  test('gives every timber its length: pieces less a taper at each joint, and 50 mm to trim', () => {
    const list = listOf(tryCell(boards, {}, dory));
    for (const [part, edge] of [
      ['chine log', 'chine'],
      ['sheer clamp', 'sheer'],
    ] as const) {
      for (const side of ['port', 'starboard']) {
        const pieces = list.filter(({ name }) => name.startsWith(`${part}, ${side}`));
        const long = pieces.reduce((sum, { length }) => sum + length, 0);
        const taper = 8 * 0.019;
        expect(long - (pieces.length - 1) * taper).toBeCloseTo(hull.edge(edge).length + 0.05, 6);
      }
    }
  });

  test('says which end is tapered: of two pieces the first at its fore end, the last at its after end', () => {
    const list = listOf(tryCell(boards, {}, dory));
    const ends = (name: string) => list.find((one) => one.name === name)!.scarfed;
    expect(ends('sheer clamp, port, 1 of 2')).toBe('its fore end');
    expect(ends('sheer clamp, port, 2 of 2')).toBe('its after end');
    expect(
      listOf(tryCell(boards, { 'keelson.boardLength': '6 m', stockD: '6 m' }, dory)).find(
        ({ name }) => name === 'keelson',
      )!.scarfed,
    ).toBe('neither end');
  });

  test('buys a wider section where the piece can not be sprung edgewise: the punt’s chine log', () => {
    // Through its face and edgewise together the corner takes more than half of what breaks it.
    const punt = tryCell(boards, {}, starter('creek-punt')!);
    expect(punt.number('logWidth')).toBeGreaterThan(0.038 + 0.1);
    expect(punt.number('clampWidth')).toBeCloseTo(0.038, 12);
    // In shorter pieces each is straighter: half the length asks a quarter of the width, and a little for the taper.
    const inTwo = tryCell(boards, { 'chineLog.boardLength': '1.7 m' }, starter('creek-punt')!);
    const [whole, half] = [punt, inTwo].map((tried) => tried.number('logWidth') - 0.038) as [number, number];
    expect(half / whole).toBeGreaterThan(0.2);
    expect(half / whole).toBeLessThan(0.45);
  });

  test('leaves out what is not asked for', () => {
    const list = listOf(tryCell(boards, { railPieces: '0', logPieces: '1' }));
    expect(list.filter(({ name }) => name.startsWith('rub rail'))).toEqual([]);
    expect(
      list.filter(({ name }) => name.startsWith('chine log')).every(({ name }) => name.includes('port')),
    ).toBe(true);
  });
});

describe('what it costs', () => {
  test('parts of one section share boards, parts of another do not', () => {
    const short = {
      ...own,
      otherLength: '600 mm',
      keelsonPieces: '1',
      keelsonThickness: '3/4 in',
      stockD: '16 ft',
      keelsonBoard: '16 ft',
      keelsonPort: '16 ft',
    };
    expect(tryCell(boards, { ...short, keelsonWidth: '2 in', otherLength: '100 mm' }).number('boards')).toBe(
      2,
    );
    const longer = tryCell(boards, { ...short, stockD: '6 m', keelsonWidth: '1 1/2 in' });
    expect(longer.number('boards')).toBe(1);
    expect(longer.number('longest')).toBeCloseTo(6, 9);
    expect(tryCell(boards, own).number('longest')).toBeCloseTo(96 * INCH, 9);
  });

  test('what its wood costs, and the joints', () => {
    const cell = tryCell(boards, {
      priceA: '1000 /m³',
      priceB: '1000 /m³',
      priceC: '1000 /m³',
      priceD: '1000 /m³',
      jointPrice: '2',
    });
    // Seven timbers of the dory.
    expect(cell.number('joints')).toBe(cell.number('pieces') - 7);
    expect(cell.number('joints')).toBeGreaterThan(0);
    expect(cell.number('cost')).toBeCloseTo(1000 * cell.number('bought') + cell.number('joints') * 2, 9);
  });

  // Prices as a yard hangs them out, made up; the rest is arithmetic by hand.
  describe('prices as the yard quotes them', () => {
    const one = {
      ...own,
      otherThickness: '3/4 in',
      otherWidth: '3 1/2 in',
      otherLength: '5 ft',
      boardThickness: '3/4 in',
      boardWidth: '3 1/2 in',
      jointPrice: '0',
    };
    /** 8 ft of 3/4 by 3 1/2 in are 1.75 board feet. */
    const boardFoot = 144 * INCH ** 3;

    test.each([
      { quoted: 'each', eachA: '6.49 each' },
      { quoted: 'each', eachA: '$6.49 each' },
      { quoted: 'length', perLengthA: '(6.49/8)/ft' },
      { quoted: 'volume', priceA: '(6.49/1.75) /bf' },
    ])('6.49 for an 8 ft board of 3/4 by 3 1/2 in: %o', (quoted) => {
      const cell = tryCell(boards, { ...one, ...quoted });
      expect(cell.issues).toEqual({});
      expect(cell.number('paidA') * 1.75 * boardFoot).toBeCloseTo(6.49, 9);
      expect(cell.number('cost')).toBeCloseTo(6.49, 9);
      expect(tryCell(boards, { ...one, ...quoted, otherPieces: '3' }).number('cost')).toBeCloseTo(
        3 * 6.49,
        9,
      );
    });

    test('0.89 a foot is 7.12 for 8 ft; a section of half the width costs half', () => {
      const foot = { ...one, quoted: 'length', perLengthA: '0.89/ft' };
      expect(tryCell(boards, foot).number('cost')).toBeCloseTo(7.12, 9);
      const wide = { boardThickness: '3/4 in', boardWidth: '7 in' };
      expect(tryCell(boards, { ...foot, ...wide }).number('cost')).toBeCloseTo(3.56, 9);
    });

    test('each length has its own price, and a length that is not sold needs none', () => {
      const two = { ...one, quoted: 'each', stockB: '12 ft', otherPieces: '2' };
      // Two of 5 ft: two boards of 8 ft, or one of 12 ft.
      expect(tryCell(boards, { ...two, eachA: '6.49', eachB: '12.50' }).number('cost')).toBeCloseTo(12.5, 9);
      const none = tryCell(boards, { ...two, stockB: '0 mm', eachA: '6.49' });
      expect(none.issues).toEqual({});
      expect(none.number('cost')).toBeCloseTo(12.98, 9);
    });
  });

  test('a longer board never costs more boards', () => {
    const counts = ['2.4 m', '3 m', '3.6 m', '4.8 m', '6 m'].map((stockA) =>
      tryCell(boards, { ...own, otherPieces: '8', otherLength: '1.1 m', stockA }).number('boards'),
    );
    expect(counts).toStrictEqual(counts.toSorted((a, b) => b - a));
  });
});

describe('what can not be', () => {
  test.each([
    ['other part is longer than the longest board sold', { otherLength: '3 m' }],
    ['give the length of at least one board that is sold', { stockA: '0 mm' }],
    ['no part is to be cut: give a number of pieces', { otherPieces: '0' }],
  ])('%s', (says, change) => {
    expect(tryCell(boards, { ...own, ...change }).issues['boards']).toBe(says);
  });
});

describe('what a search has found', () => {
  // Long first takes 3.5 with nothing beside it twice; 1.7 and 1.8 fit one board of 3.6 m, but the rule finds no such pair.
  const some = {
    ...own,
    otherPieces: '4',
    otherLength: '1.2 m',
    stockA: '2.5 m',
    stockB: '5 m',
    kerf: '3 mm',
  };

  test('is taken where it holds, and no dearer', async () => {
    const v = valuesOf(some);
    const text = askFact(problem, v, hull);
    let answer: CuttingAnswer | null = null;
    await searchBoards(text, (better) => {
      answer = better as CuttingAnswer;
    });
    const found = (asked: string) => (asked === text ? answer : null);
    expect(askFact(best, v, hull, found)[0]!.proved).toBe(true);
    expect(askFact(cutList, v, hull, found)).toHaveLength(4);
  });

  test('is not believed where it does not hold', () => {
    const v = valuesOf(some);
    const cheat: CuttingAnswer = { plans: [{ boards: [] }], proved: [true] };
    const bought = askFact(best, v, hull, () => cheat)[0]!;
    expect(bought.proved).toBe(false);
    expect(bought.plan.boards).not.toEqual([]);
  });

  test('belongs to its numbers: a changed kerf is another problem', () => {
    const text = (kerf: string) => askFact(problem, valuesOf({ ...some, kerf }), hull);
    expect(text('3 mm')).not.toBe(text('4 mm'));
    expect((JSON.parse(text('3 mm')) as CuttingProblem[])[0]!.kerf).toBe(0.003);
  });
});
