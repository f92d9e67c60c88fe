/**
 * Flat pieces laid on sheets: what a plan is, and what is wrong with one. Lengths in m, prices in money; see
 * nest-shop.ts for a plan by the rule of the shop, nest-bound.ts for what no plan can beat.
 */
import { outlineBox, overlapOrGap } from './lying-outlines';
import type { Vec2 } from './vec';

/** Quarter turns anticlockwise. */
export type Quarter = 0 | 1 | 2 | 3;

export interface NestPiece {
  readonly name: string;
  /** Anticlockwise, without crossing itself; it may be hollow. */
  readonly outline: readonly Vec2[];
  /** How it may lie, against the way it is drawn. */
  readonly turns: readonly Quarter[];
  /** Whether it may also be cut from the back of the sheet. */
  readonly mirror: boolean;
}

/** A sheet that is sold; its length runs along x. */
export interface SheetStock {
  readonly length: number;
  readonly width: number;
  readonly price: number;
}

export interface NestProblem {
  /** Every piece wanted, one entry each. */
  readonly pieces: readonly NestPiece[];
  readonly stocks: readonly SheetStock[];
  /** Kept between two pieces. */
  readonly gap: number;
  /** Kept from the sheet's edges. */
  readonly edge: number;
}

export interface LaidPiece {
  /** By its place in the problem. */
  readonly piece: number;
  /** Mirrored left to right first, then turned. */
  readonly mirrored: boolean;
  readonly quarter: Quarter;
  /** Lower left corner of the box round it, from that of the sheet. */
  readonly at: Vec2;
}

export interface LaidSheet {
  /** By its place in the problem. */
  readonly stock: number;
  readonly laid: readonly LaidPiece[];
}

export interface NestPlan {
  readonly sheets: readonly LaidSheet[];
}

/** A tenth of a millimetre: no saw cuts closer. */
export const CLOSE = 1e-4;

/** An outline turned, its box's lower left corner at the origin, anticlockwise again. */
export function turnedOutline(
  outline: readonly Vec2[],
  quarter: Quarter,
  mirrored: boolean,
): readonly Vec2[] {
  const faced = mirrored ? outline.map(([x, y]): Vec2 => [-x, y]).toReversed() : outline;
  const turned = faced.map(([x, y]): Vec2 => {
    if (quarter === 1) return [-y, x];
    if (quarter === 2) return [-x, -y];
    return quarter === 3 ? [y, -x] : [x, y];
  });
  const [left, low] = outlineBox(turned).from;
  return turned.map(([x, y]): Vec2 => [x - left, y - low]);
}

/** A piece's outline where it lies on its sheet. */
export const laidOutline = ({ mirrored, quarter, at }: LaidPiece, { outline }: NestPiece): readonly Vec2[] =>
  turnedOutline(outline, quarter, mirrored).map(([x, y]): Vec2 => [x + at[0], y + at[1]]);

export const nestCost = ({ sheets }: NestPlan, { stocks }: NestProblem): number =>
  sheets.reduce((sum, { stock }) => sum + stocks[stock]!.price, 0);

/**
 * What is wrong with a plan, as sentences; none when every piece is laid once, as it may lie, on its sheet and clear of
 * the others. A plan from a search is believed only after this.
 */
export function faultsOfNest(plan: NestPlan, problem: NestProblem): string[] {
  const { pieces, stocks } = problem;
  const faults: string[] = [];
  const times = pieces.map(() => 0);
  for (const [at, sheet] of plan.sheets.entries()) {
    const stock = stocks[sheet.stock];
    if (!stock) faults.push(`sheet ${at + 1} is of no size that is sold`);
    else faults.push(...faultsOnSheet(sheet, stock, problem).map((fault) => `sheet ${at + 1}: ${fault}`));
    for (const { piece } of sheet.laid) if (pieces[piece]) times[piece]! += 1;
  }
  for (const [at, { name }] of pieces.entries()) {
    if (times[at] === 0) faults.push(`${name} is not cut`);
    else if (times[at]! > 1) faults.push(`${name} is cut more than once`);
  }
  return faults;
}

function faultsOnSheet({ laid }: LaidSheet, stock: SheetStock, { pieces, gap, edge }: NestProblem): string[] {
  const faults: string[] = [];
  const there = laid.flatMap((one) => {
    const piece = pieces[one.piece];
    if (!piece) return [];
    if (!piece.turns.includes(one.quarter) || (one.mirrored && !piece.mirror))
      faults.push(`${piece.name} may not lie so`);
    const outline = laidOutline(one, piece);
    return [{ name: piece.name, outline, box: outlineBox(outline) }];
  });
  if (there.length < laid.length) faults.push('it holds a piece of no name');
  for (const [i, { name, outline, box }] of there.entries()) {
    const [[left, low], [right, high]] = [box.from, box.to];
    const off = Math.max(edge - left, edge - low, right - (stock.length - edge), high - (stock.width - edge));
    if (!(off <= CLOSE)) faults.push(`${name} reaches over the edge`);
    for (const other of there.slice(i + 1)) {
      const apart = Math.max(
        left - other.box.to[0],
        other.box.from[0] - right,
        low - other.box.to[1],
        other.box.from[1] - high,
      );
      if (apart >= gap - CLOSE && apart >= 0) continue;
      const clear = overlapOrGap(outline, other.outline, CLOSE);
      if (!(clear >= gap - CLOSE)) faults.push(`${name} and ${other.name} lie too close`);
    }
  }
  return faults;
}
