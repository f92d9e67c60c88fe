/** Pieces on sheets by the rule of the shop: the longest first, each by its box in the first corner that holds it. */
import {
  CLOSE,
  type LaidPiece,
  type LaidSheet,
  type NestPiece,
  type NestPlan,
  type NestProblem,
  nestCost,
  type Quarter,
  type SheetStock,
} from './nest';
import { outlineBox } from './lying-outlines';
import type { Vec2 } from './vec';

/** A piece as it may lie: its turn, and the sides of the box round it. */
interface Lying {
  readonly quarter: Quarter;
  readonly size: Vec2;
}

function lyings({ outline, turns }: NestPiece): readonly Lying[] {
  const { from, to } = outlineBox(outline);
  const [length, width] = [to[0] - from[0], to[1] - from[1]];
  return turns.map((quarter) => ({ quarter, size: quarter % 2 === 0 ? [length, width] : [width, length] }));
}

const roomOn = ({ length, width }: SheetStock, edge: number): Vec2 => [length - 2 * edge, width - 2 * edge];

const holds = (room: Vec2, size: Vec2) => size[0] <= room[0] + CLOSE && size[1] <= room[1] + CLOSE;

/** Why there is no plan at all, as a sentence; null where there is one. */
export function impossibleNest({ pieces, stocks, edge }: NestProblem): string | null {
  if (stocks.length === 0) return 'there is no sheet to cut from';
  const rooms = stocks.map((stock) => roomOn(stock, edge));
  const large = pieces.find((piece) =>
    rooms.every((room) => lyings(piece).every(({ size }) => !holds(room, size))),
  );
  return large ? `no sheet that is sold holds “${large.name}” the way it may lie` : null;
}

/**
 * Tried with sheets of each size, the cheapest kept; every sheet then exchanged for the cheapest that holds what is on
 * it.
 *
 * @throws the sentence of `impossibleNest` where there is none
 */
export function shopNest(problem: NestProblem): NestPlan {
  const none = impossibleNest(problem);
  if (none !== null) throw new Error(none);
  const plans = [...problem.stocks.keys()].map((stock) => firstFit(problem, stock));
  return plans.toSorted((a, b) => nestCost(a, problem) - nestCost(b, problem))[0]!; // one a stock, and there is one
}

interface Filling {
  readonly stock: number;
  readonly laid: (LaidPiece & { readonly size: Vec2 })[];
  /** Sizes that found no room: a sheet only fills. */
  readonly refused: Set<string>;
}

/** New sheets are of the size asked for where that holds the piece, else of the first that does. */
function firstFit(problem: NestProblem, preferred: number): NestPlan {
  const { pieces, stocks, edge } = problem;
  const sheets: Filling[] = [];
  const ways = pieces.map(lyings);
  const long = (piece: number) => Math.max(...ways[piece]!.flatMap(({ size }) => size));
  const order = [...pieces.keys()].toSorted((a, b) => long(b) - long(a) || a - b);
  for (const piece of order) {
    const lies = ways[piece]!; // one a piece
    const found = sheets.some((sheet) => layOn(sheet, piece, lies, problem));
    if (found) continue;
    const stock = [preferred, ...stocks.keys()].find((one) =>
      lies.some(({ size }) => holds(roomOn(stocks[one]!, edge), size)),
    )!; // it is possible
    const sheet: Filling = { stock, laid: [], refused: new Set() };
    sheets.push(sheet);
    layOn(sheet, piece, lies, problem);
  }
  return { sheets: sheets.map((sheet) => cheapest(sheet, problem)) };
}

/** In the corner nearest the sheet's end, and lowest of these. */
function layOn(
  sheet: Filling,
  piece: number,
  ways: readonly Lying[],
  { stocks, gap, edge }: NestProblem,
): boolean {
  const { length, width } = stocks[sheet.stock]!; // a sheet is of a stock
  const key = ways.map(({ size }) => size.join('x')).join(' ');
  if (sheet.refused.has(key)) return false;
  const across = (axis: 0 | 1) => {
    const ends = sheet.laid.map(({ at, size }) => at[axis] + size[axis] + gap);
    return [...new Set([edge, ...ends])].toSorted((a, b) => a - b);
  };
  const [xs, ys] = [across(0), across(1)];
  let best: (LaidPiece & { size: Vec2 }) | null = null;
  for (const { quarter, size } of ways) {
    for (const x of xs) {
      for (const y of ys) {
        const end = x + size[0];
        if (end > length - edge + CLOSE || y + size[1] > width - edge + CLOSE) continue;
        if (
          best &&
          (end > best.at[0] + best.size[0] || (end === best.at[0] + best.size[0] && y >= best.at[1]))
        )
          continue;
        const meets = sheet.laid.some(
          (other) =>
            x < other.at[0] + other.size[0] + gap - CLOSE &&
            other.at[0] < end + gap - CLOSE &&
            y < other.at[1] + other.size[1] + gap - CLOSE &&
            other.at[1] < y + size[1] + gap - CLOSE,
        );
        if (!meets) best = { piece, mirrored: false, quarter, at: [x, y], size };
      }
    }
  }
  if (best) sheet.laid.push(best);
  else sheet.refused.add(key);
  return best !== null;
}

function cheapest({ stock, laid }: Filling, { stocks, edge }: NestProblem): LaidSheet {
  const reach: Vec2 = [
    Math.max(...laid.map(({ at, size }) => at[0] + size[0])),
    Math.max(...laid.map(({ at, size }) => at[1] + size[1])),
  ];
  const holding = [...stocks.keys()].filter((one) =>
    holds([stocks[one]!.length - edge, stocks[one]!.width - edge], reach),
  );
  const best = [stock, ...holding].toSorted((a, b) => stocks[a]!.price - stocks[b]!.price)[0]!; // its own at least
  return {
    stock: best,
    laid: laid.map(({ piece, mirrored, quarter, at }) => ({ piece, mirrored, quarter, at })),
  };
}
