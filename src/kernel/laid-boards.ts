/**
 * Boards of one length laid one after the other along a timber, each lapping over the last by a taper.
 *
 * Places are lengths along the timber from its beginning, m.
 */

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What a whole board may fall short by and still reach: a thousandth of its length, as a count of boards forgives. */
const FORGIVEN = 1e-3;

/**
 * The pieces: the first cut to `first`, those between whole boards, the last cut off where the timber ends.
 *
 * A single piece where the first one reaches. Every piece but the last holds its tapers; the last is longer
 * than the one that it shares.
 *
 * @throws a sentence where a board is no longer than its taper, or the first piece than that
 */
export function laidPieces(length: number, board: number, taper: number, first: number): readonly Stretch[] {
  const slack = FORGIVEN * board;
  const pieces: Stretch[] = [];
  for (let from = 0, to = first; ; from = to - taper, to = from + board) {
    const last = to >= length - slack;
    pieces.push({ from, to: last ? length : to });
    if (last) return pieces;
    if (first <= taper || board <= taper)
      throw new Error('a board no longer than its taper cannot be joined into a longer one');
  }
}

/** Where neighbouring pieces lap: one stretch fewer than there are pieces. */
export function lapsOf(pieces: readonly Stretch[]): readonly Stretch[] {
  return pieces.slice(1).map((piece, i) => ({ from: piece.from, to: pieces[i]!.to })); // the list shifted by one
}

export const middleOf = ({ from, to }: Stretch): number => (from + to) / 2;

/** From one stretch to the other; below zero by as much as they overlap. */
export function between(a: Stretch, b: Stretch): number {
  return Math.max(a.from - b.to, b.from - a.to);
}
