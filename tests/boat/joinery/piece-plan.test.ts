/** The plan of pieces: the board that trying all lengths finds, and what an offset of another edge leaves alone. */
import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, offsetsOf, starters } from '../../../src/boat';
import type { JointRules } from '../../../src/boat/joinery/joint-layout';
import { laidBoard } from '../../../src/boat/joinery/laid-board';
import { longParts } from '../../../src/boat/joinery/long-parts';
import { bestOfPart, boardFor } from '../../../src/boat/joinery/piece-plan';

const rules: JointRules = {
  thickness: 0.02,
  board: 3,
  slope: 8,
  trim: 0.1,
  siding: 0.018,
  stands: 'custom',
  hardShare: 0.8,
  easyBend: 120,
  frameClearance: 0.05,
  stagger: 0.6,
  least: 0.6,
};

describe.each(starters.map(({ id, table }) => [id, buildHull(offsetsOf(table))] as const))(
  'on %s',
  (_, hull) => {
    test.each(longParts.map(({ id }) => id))(
      'the board for the %s is the one that trying every length finds',
      (part) => {
        for (const more of [0, 1, 2])
          for (const slope of [6, 8, 12])
            for (const stagger of [0.3, 1.2]) {
              const held = { ...rules, slope, stagger };
              const sold = [4.2, 2.4, 1.5, 3.6, 1.2, 3, 4.8, 6];
              const [first] = sold
                .map((board) => ({ board, ...bestOfPart(hull, part, { ...held, board }, more) }))
                .toSorted((a, b) => a.broken - b.broken || a.pieces - b.pieces || a.board - b.board);
              expect(boardFor(hull, part, held, { more, sold })).toBe(first!.board);
            }
      },
    );
  },
);

describe('an offset of the sheer', () => {
  const [{ table }] = starters as [(typeof starters)[number]];
  const before = buildHull(offsetsOf(table));
  const { points, ...rest } = before.offsets;
  const raised = points.map((line, edge) =>
    edge < points.length - 1
      ? line
      : line.map((point, at) => (at === 2 ? [point[0], point[1], point[2]! + 0.002] : point)),
  );
  const after = buildHull({ ...rest, points: raised } as Hull['offsets']);

  test('moves the sheer alone', () => {
    expect(before.edges.map((edge, at) => edge === after.edges[at])).toStrictEqual([true, true, false]);
  });

  test('leaves the joints of keelson and chine log as they were found, and looks for those of the clamp', () => {
    const found = (hull: Hull) => longParts.map(({ id }) => bestOfPart(hull, id, rules, 1));
    const [was, is] = [found(before), found(after)];
    expect(Object.fromEntries(longParts.map(({ id }, at) => [id, was[at] === is[at]]))).toStrictEqual({
      keelson: true,
      chineLog: true,
      sheerClamp: false,
      rubRail: false,
    });
  });

  test('leaves the keelson as it was laid; the chine log lies against the side, which moved', () => {
    const isLaid = (edge: string) => laidBoard(before, edge) === laidBoard(after, edge);
    expect(before.edges.map(({ name }) => isLaid(name))).toStrictEqual([true, false, false]);
  });
});
