/** What no plan of pieces on sheets can beat, by area alone. */
import { distance2 } from './vec';
import type { NestPiece, NestProblem, SheetStock } from './nest';
import { isConvex } from './lying-outlines';
import { outlineArea } from './outline';

/** A billionth of a sheet is rounding. */
const ROUNDING = 1e-9;

/**
 * The area that a piece keeps others off: itself, and half the gap round it. Of a hollow piece at least what a disc of
 * its own area would keep (the inequality of Brunn and Minkowski).
 */
export function areaKept({ outline }: Pick<NestPiece, 'outline'>, gap: number): number {
  const area = Math.abs(outlineArea(outline));
  const round = gap / 2;
  const cap = Math.PI * round * round;
  if (!isConvex(outline)) return area + 2 * round * Math.sqrt(Math.PI * area) + cap;
  const girth = outline.reduce((sum, at, i) => sum + distance2(at, outline[(i + 1) % outline.length]!), 0);
  return area + round * girth + cap;
}

/** The area of a sheet in which pieces may keep others off. */
export const roomFor = (
  { length, width }: SheetStock,
  { gap, edge }: Pick<NestProblem, 'gap' | 'edge'>,
): number => Math.max(0, length - 2 * edge + gap) * Math.max(0, width - 2 * edge + gap);

/**
 * No plan can cost less: the cheapest sheets whose room makes up an area, m2.
 *
 * @returns infinite where no sheet has room
 */
export function costForArea(area: number, problem: Omit<NestProblem, 'pieces'>): number {
  const sold = problem.stocks
    .map((stock) => ({ room: roomFor(stock, problem), price: stock.price }))
    .filter(({ room }) => room > 0);
  const cheapest = (left: number, from: number): number => {
    if (left <= ROUNDING * area) return 0;
    const stock = sold[from];
    if (!stock) return Infinity;
    const most = Math.ceil(left / stock.room - ROUNDING);
    if (from === sold.length - 1) return most * stock.price;
    let least = Infinity;
    for (let count = 0; count <= most; count += 1)
      least = Math.min(least, count * stock.price + cheapest(left - count * stock.room, from + 1));
    return least;
  };
  return cheapest(area, 0);
}

export const nestCostAtLeast = (problem: NestProblem): number =>
  costForArea(
    problem.pieces.reduce((sum, piece) => sum + areaKept(piece, problem.gap), 0),
    problem,
  );
