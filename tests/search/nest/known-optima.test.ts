/** The packing against instances whose optimum is known, and what may be said to be proved. */
import { describe, expect, test } from 'vitest';
import { faultsOfNest, type NestProblem } from '../../../src/kernel/nest';
import { nestCostAtLeast } from '../../../src/kernel/nest-bound';
import { shopNest } from '../../../src/kernel/nest-shop';
import { layTogether } from '../../../src/search/nest/rectangles';
import { isLeast, searchNest } from '../../../src/search/nest/search-nest';
import { BEASLEY, hardStrip, problemOf, rectangles, sheets, strips } from './instances';

const EFFORT = 2400;

describe(`fewest sheets: ${BEASLEY}`, () => {
  test.each(
    sheets.flatMap(({ id, sheet, list, fixed, turned }) => [
      { id, problem: problemOf(sheet, list), least: fixed, lying: 'as they lie' },
      { id, problem: problemOf(sheet, list, { turns: [0, 1] }), least: turned, lying: 'with quarter turns' },
    ]),
  )('$id, $lying: $least', ({ problem, least }) => {
    const found = searchNest(problem, EFFORT);
    expect(faultsOfNest(found.plan, problem)).toStrictEqual([]);
    expect(found.plan.sheets).toHaveLength(least);
    // All are proved, those that need more than their area too.
    expect(found.least).toBe(least);
    expect(isLeast(found)).toBe(true);
    expect(shopNest(problem).sheets.length).toBeGreaterThanOrEqual(least);
  });

  test.each(['ngcut1', 'ngcut6', 'ngcut10', 'gcut1'])('%s wants more sheets than its area', (id) => {
    const { sheet, list, fixed } = sheets.find((one) => one.id === id)!;
    expect(nestCostAtLeast(problemOf(sheet, list))).toBeLessThan(fixed);
  });
});

describe('least height of a strip', () => {
  const cases = strips.flatMap(({ id, source, width, list, fixed, turned }) => [
    ...(fixed === undefined ? [] : [{ id, source, width, list, height: fixed, ways: 'as they lie' }]),
    ...(turned === undefined ? [] : [{ id, source, width, list, height: turned, ways: 'turned' }]),
  ]);
  const lay = ({ width, list, ways }: (typeof cases)[number], height: number) => {
    const sizes = rectangles(list);
    const lyings = sizes.map(({ width: w, height: h }): (readonly [number, number])[] =>
      ways === 'turned' && w !== h
        ? [
            [w, h],
            [h, w],
          ]
        : [[w, h]],
    );
    const counts = sizes.map(({ count }) => count);
    const found = layTogether(lyings, counts, { length: width, width: height }, { left: 600_000 });
    return { found, lyings };
  };

  test.each(cases)('$id, $ways: $height ($source)', (one) => {
    const { found, lyings } = lay(one, one.height);
    const rects = found!.map(({ kind, way, x, y }) => ({ x, y, size: lyings[kind]![way]! }));
    expect(rects).toHaveLength(rectangles(one.list).reduce((sum, { count }) => sum + count, 0));
    rects.forEach(({ x, y, size }, i) => {
      expect(x + size[0]).toBeLessThanOrEqual(one.width);
      expect(y + size[1]).toBeLessThanOrEqual(one.height);
      for (const other of rects.slice(i + 1))
        expect(
          x + size[0] <= other.x ||
            other.x + other.size[0] <= x ||
            y + size[1] <= other.y ||
            other.y + other.size[1] <= y,
        ).toBe(true);
    });
    expect(lay(one, one.height - 1).found).toBeNull();
  });
});

describe('strips of which one side only is told in the steps allowed', () => {
  const [NGCUT8, NGCUT11] = ['ngcut8', 'ngcut11'].map((id) => sheets.find((one) => one.id === id)!.list);
  /** On edge: their heights along a strip as wide as the sheet. */
  const found = (list: string, width: number, height: number, mayTurn: boolean) => {
    const sizes = rectangles(list);
    const ways = sizes.map(({ width: w, height: h }): (readonly [number, number])[] =>
      mayTurn
        ? [
            [h, w],
            [w, h],
          ]
        : [[h, w]],
    );
    const counts = sizes.map(({ count }) => count);
    return layTogether(ways, counts, { length: width, width: height }, { left: 400_000 });
  };

  // S. Martello, M. Monaci and D. Vigo, INFORMS Journal on Computing 15 (2003): 33 and 52.
  test('ngcut8 lies in 33, turned, and as it lies never in 32', () => {
    expect(found(NGCUT8!, 20, 33, true)).toHaveLength(13);
    expect(found(NGCUT8!, 20, 32, false)).toBeNull();
  });

  test('ngcut11 lies in 52', () => {
    expect(found(NGCUT11!, 30, 52, false)).toHaveLength(15);
  });
});

test(`what is not found in the steps allowed is not said to be impossible: ${hardStrip.id} (${hardStrip.source})`, () => {
  const sizes = rectangles(hardStrip.list);
  const inHeight = (height: number) =>
    layTogether(
      sizes.map(({ width, height: tall }): (readonly [number, number])[] => [[width, tall]]),
      sizes.map(({ count }) => count),
      { length: hardStrip.width, width: height },
      { left: 20_000 },
    );
  expect(inHeight(hardStrip.height)).toBeUndefined();
  // Their area fills the strip to the last corner: in less height none could lie.
  expect(sizes.reduce((sum, { width, height, count }) => sum + width * height * count, 0)).toBe(40 * 15);
  expect(inHeight(hardStrip.height - 1)).toBeNull();
});

describe('sheets of the shop', () => {
  const sheet = [2440, 1220] as const;
  const scale = 1e-3;
  const countOf = (problem: NestProblem) => searchNest(problem, 3000);

  test.each([
    { list: '813x610:6', gap: 0, count: 1 },
    // 610 + 3 + 610 is more than 1220: one row of two.
    { list: '813x610:6', gap: 3, count: 3 },
    { list: '811x608:6', gap: 3, count: 1 },
    { list: '812x608:6', gap: 3, count: 2 },
    // 25 in across the sheet, three to a sheet: common practice, no source.
    { list: '635x1219:9', gap: 3, count: 3 },
  ])('$list with a kerf of $gap mm: $count of 2440 x 1220', ({ list, gap, count }) => {
    const found = countOf(problemOf(sheet, list, { gap, scale }));
    expect(found.plan.sheets).toHaveLength(count);
    expect(isLeast(found)).toBe(true);
  });

  test('the strips of 25 in cut along the sheet come off one by one', () => {
    const found = countOf(problemOf(sheet, '1219x635:9', { gap: 3, scale }));
    expect(found.plan.sheets.length).toBeGreaterThan(3);
    expect(found.least).toBeGreaterThan(3);
  });
});
