/**
 * Pieces laid on a roll of a given width, none turned, to take little of its length: the longest first, each into the
 * first place where it fits. A place is the end of a row that has been begun and is wide enough, or room beside the
 * rows that lie at the same height of the roll.
 *
 * Coffman, Garey, Johnson and Tarjan, "Performance bounds for level-oriented two-dimensional packing algorithms", SIAM
 * Journal on Computing 9 (1980): first fit by decreasing length. Rows that hold several short pieces are our own.
 */

/** A piece, m: along the roll and across it. */
export interface RollPiece {
  readonly long: number;
  readonly wide: number;
}

export interface OnRoll {
  /** Of the roll that the pieces take, m. */
  readonly length: number;
  /** Where each piece begins, m: from the end of the roll and from its edge; in the order given. */
  readonly places: readonly { readonly along: number; readonly across: number }[];
}

/** Pieces that lie one after the other. */
interface Row {
  readonly across: number;
  readonly wide: number;
  used: number;
}

/** A stretch of the roll, as long as the first piece on it. */
interface Stretch {
  readonly along: number;
  readonly long: number;
  readonly rows: Row[];
  wide: number;
}

/** What rounding may add to a width or a length that fits, m. */
const HAIR = 1e-9;

/** @throws a sentence, where a piece is wider than the roll */
export function layOnRoll(pieces: readonly RollPiece[], width: number): OnRoll {
  const stretches: Stretch[] = [];
  const places = pieces.map(() => ({ along: 0, across: 0 }));
  const byLength = pieces
    .map((piece, index) => ({ ...piece, index }))
    .toSorted((a, b) => b.long - a.long || b.wide - a.wide || a.index - b.index);
  for (const { long, wide, index } of byLength) {
    if (wide > width + HAIR) throw new Error('a piece is wider than the roll');
    const { stretch, row } = placeFor({ long, wide }, stretches, width);
    places[index] = { along: stretch.along + row.used, across: row.across };
    row.used += long;
  }
  return { length: endOf(stretches), places };
}

function placeFor(
  { long, wide }: RollPiece,
  stretches: Stretch[],
  width: number,
): { stretch: Stretch; row: Row } {
  for (const stretch of stretches) {
    const row = stretch.rows.find((one) => one.wide >= wide - HAIR && one.used + long <= stretch.long + HAIR);
    if (row) return { stretch, row };
    if (stretch.wide + wide <= width + HAIR) return { stretch, row: rowIn(stretch, wide) };
  }
  const stretch: Stretch = { along: endOf(stretches), long, rows: [], wide: 0 };
  stretches.push(stretch);
  return { stretch, row: rowIn(stretch, wide) };
}

function rowIn(stretch: Stretch, wide: number): Row {
  const row: Row = { across: stretch.wide, wide, used: 0 };
  stretch.rows.push(row);
  stretch.wide += wide;
  return row;
}

function endOf(stretches: readonly Stretch[]): number {
  const last = stretches.at(-1);
  return last ? last.along + last.long : 0;
}

/**
 * No way of laying pieces on a roll, none turned, takes less of its length, m: by their area; by the longest; and since
 * no two that are wider than half the roll lie beside each other, by all of these one after another.
 */
export function leastOfRoll(pieces: readonly RollPiece[], width: number): number {
  const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
  return Math.max(
    0,
    sum(pieces.map(({ long, wide }) => long * wide)) / width,
    ...pieces.map(({ long }) => long),
    sum(pieces.flatMap(({ long, wide }) => (wide > width / 2 + HAIR ? [long] : []))),
  );
}

/**
 * How many runs of a roll cover a height, each lapping over the one before: ceil((height - lap) / (width - lap)), one
 * at least.
 * @throws a sentence, where the roll is no wider than the lap
 */
export function runsToCover(height: number, width: number, lap: number): number {
  if (width <= lap) throw new Error('the roll is no wider than the lap');
  return Math.max(1, Math.ceil((height - lap) / (width - lap) - 1e-9));
}

/** Strips cut at 45 degrees across a roll so wide: how long each is, and the roll that takes a number of them, m. */
export function biasStrips(
  width: number,
  strip: number,
  count: number,
): { readonly each: number; readonly roll: number } {
  return { each: width * Math.SQRT2, roll: count > 0 ? count * strip * Math.SQRT2 + width : 0 };
}
