import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between, laidPieces, lapsOf, middleOf } from '../../src/kernel/laid-boards';

const FOOT = 0.3048;

test('three boards of 8 ft with laps of 6 in cover 23 ft', () => {
  const pieces = laidPieces(23 * FOOT, 8 * FOOT, 0.5 * FOOT, 8 * FOOT);
  const ends = pieces.map(({ to }) => to / FOOT);
  const middles = lapsOf(pieces).map((lap) => middleOf(lap) / FOOT);
  expect(pieces).toHaveLength(3);
  [8, 15.5, 23].forEach((to, i) => expect(ends[i]).toBeCloseTo(to, 12));
  [7.75, 15.25].forEach((at, i) => expect(middles[i]).toBeCloseTo(at, 12));
});

test('a first board cut short moves every joint aft by as much', () => {
  const whole = lapsOf(laidPieces(6, 2.4, 0.15, 2.4));
  const short = lapsOf(laidPieces(6, 2.4, 0.15, 1.8));
  whole.forEach((lap, i) => expect(lap.from - short[i]!.from).toBeCloseTo(0.6, 12));
});

test('a board as long as the timber is the only piece', () => {
  expect(laidPieces(2, 2, 0.1, 2)).toEqual([{ from: 0, to: 2 }]);
});

test('a board no longer than its taper is refused', () => {
  expect(() => laidPieces(5, 1, 1, 1)).toThrow('no longer than its taper');
  expect(() => laidPieces(5, 2, 1, 1)).toThrow('no longer than its taper');
});

test('the distance between stretches, and how far they overlap', () => {
  expect(between({ from: 0, to: 1 }, { from: 3, to: 4 })).toBe(2);
  expect(between({ from: 3, to: 4 }, { from: 0, to: 1 })).toBe(2);
  expect(between({ from: 0, to: 3 }, { from: 2, to: 4 })).toBe(-1);
});

describe('for any timber and any board', () => {
  const timbers = fc
    .record({
      length: fc.double({ min: 0.5, max: 20, noNaN: true }),
      board: fc.double({ min: 0.5, max: 12, noNaN: true }),
      lap: fc.double({ min: 0.01, max: 0.45, noNaN: true }),
      cut: fc.double({ min: 0.5, max: 1, noNaN: true }),
    })
    .map(({ length, board, lap, cut }) => ({ length, board, taper: lap * board, first: cut * board }));

  test('the pieces cover it from end to end, none longer than a board, each lapping the next by the taper', () => {
    fc.assert(
      fc.property(timbers, ({ length, board, taper, first }) => {
        const pieces = laidPieces(length, board, taper, first);
        expect(pieces[0]!.from).toBe(0);
        expect(pieces.at(-1)!.to).toBe(length);
        // A thousandth of a board is forgiven at the end.
        for (const { from, to } of pieces) expect(to - from).toBeLessThanOrEqual(board * 1.0011);
        for (const { from, to } of lapsOf(pieces)) expect(to - from).toBeCloseTo(taper, 9);
      }),
      { seed: 41 },
    );
  });

  test('no piece but neighbours overlap', () => {
    fc.assert(
      fc.property(timbers, ({ length, board, taper, first }) => {
        const pieces = laidPieces(length, board, taper, first);
        pieces.slice(2).forEach((piece, i) => {
          expect(piece.from).toBeGreaterThan(pieces[i]!.to);
        });
      }),
      { seed: 42 },
    );
  });

  test('a longer board never needs more pieces', () => {
    fc.assert(
      fc.property(timbers, fc.double({ min: 1, max: 3, noNaN: true }), ({ length, board, taper }, more) => {
        const pieces = (of: number) => laidPieces(length, of, taper, of).length;
        expect(pieces(board * more)).toBeLessThanOrEqual(pieces(board));
      }),
      { seed: 43 },
    );
  });
});
