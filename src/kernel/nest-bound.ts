/** What no plan of pieces on sheets can beat: by area, and by what can't lie one above the other. */
import { distance2 } from './vec';
import { CLOSE, type NestPiece, type NestProblem, type SheetStock } from './nest';
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
  return costFor(
    area,
    problem.stocks.map((stock) => ({ room: roomFor(stock, problem), price: stock.price })),
  );
}

/**
 * No plan can cost less where pieces take up a length of each sheet for themselves: those higher than half of the widest
 * sheet, for no two of them lie one above the other.
 *
 * @param tall what such pieces take up along x that are higher than a height, m; see tall-stretch.ts
 */
export function costForTall(
  tall: (height: number) => number,
  { stocks, gap, edge }: Omit<NestProblem, 'pieces'>,
): number {
  const rooms = stocks.map(({ length, width, price }) => ({
    room: length - 2 * edge + 2 * CLOSE,
    height: width - 2 * edge + 2 * CLOSE,
    price,
  }));
  const half = (Math.max(...rooms.map(({ height }) => height)) - gap + CLOSE) / 2;
  return half > 0 ? costFor(tall(half), rooms) : 0;
}

/** The cheapest of what is sold whose rooms make up an amount. */
function costFor(
  amount: number,
  rooms: readonly { readonly room: number; readonly price: number }[],
): number {
  const sold = rooms.filter(({ room }) => room > 0);
  const cheapest = (left: number, from: number): number => {
    if (left <= ROUNDING * amount) return 0;
    const stock = sold[from];
    if (!stock) return Infinity;
    const most = Math.ceil(left / stock.room - ROUNDING);
    if (from === sold.length - 1) return most * stock.price;
    let least = Infinity;
    for (let count = 0; count <= most; count += 1)
      least = Math.min(least, count * stock.price + cheapest(left - count * stock.room, from + 1));
    return least;
  };
  return cheapest(amount, 0);
}

export const nestCostAtLeast = (problem: NestProblem): number =>
  costForArea(
    problem.pieces.reduce((sum, piece) => sum + areaKept(piece, problem.gap), 0),
    problem,
  );
