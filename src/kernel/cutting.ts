/**
 * Long parts cut from boards of stock lengths: what a plan is, whether it holds, and a plan by the rule of
 * the shop. Lengths in m, prices in money; see cutting-model.ts for the search of the least.
 */

export interface CuttingProblem {
  /** Every piece wanted, one entry each: two chine logs are two. */
  readonly parts: readonly { readonly name: string; readonly length: number }[];
  readonly stocks: readonly { readonly length: number; readonly price: number }[];
  /** Lost between two pieces of a board. */
  readonly kerf: number;
  /** How a part may be joined of several pieces; null where every part is one piece. */
  readonly scarf: {
    /** Length of a taper: every joint eats one. */
    readonly taper: number;
    /** Shortest piece worth joining. */
    readonly least: number;
    /** Most pieces in one part. */
    readonly most: number;
    /** What a joint costs, in money: glue, planing, patience. */
    readonly price: number;
  } | null;
}

export interface Board {
  /** Which stock, by its place in the problem. */
  readonly stock: number;
  readonly pieces: readonly Piece[];
}

export interface Piece {
  /** Which part, by its place in the problem. */
  readonly part: number;
  /** Taper included. */
  readonly length: number;
}

export interface CuttingPlan {
  readonly boards: readonly Board[];
}

/** What a search has found: a plan for each section asked, and whether it is proved to be the cheapest. */
export interface CuttingAnswer {
  readonly plans: readonly CuttingPlan[];
  readonly proved: readonly boolean[];
}

/** A tenth of a millimetre: no saw cuts closer. */
export const CLOSE = 1e-4;

/** Length of board taken by pieces, with a kerf between each two. */
export function taken(pieces: readonly Pick<Piece, 'length'>[], kerf: number): number {
  return pieces.reduce((sum, { length }) => sum + length, 0) + Math.max(0, pieces.length - 1) * kerf;
}

/** Money for the boards and the joints. */
export function costOf({ boards }: CuttingPlan, problem: CuttingProblem): number {
  const timber = boards.reduce((sum, { stock }) => sum + problem.stocks[stock]!.price, 0);
  return timber + jointsOf({ boards }, problem) * (problem.scarf?.price ?? 0);
}

export function jointsOf({ boards }: CuttingPlan, { parts }: CuttingProblem): number {
  const pieces = boards.reduce((sum, board) => sum + board.pieces.length, 0);
  return pieces - parts.length;
}

/**
 * What is wrong with a plan, as sentences; none when it covers every part and fits every board. A plan from
 * a solver is believed only after this.
 */
export function faultsOfPlan(plan: CuttingPlan, problem: CuttingProblem): string[] {
  const { parts, stocks, kerf, scarf } = problem;
  const faults: string[] = [];
  const pieces = parts.map((): number[] => []);
  for (const [at, board] of plan.boards.entries()) {
    const stock = stocks[board.stock];
    if (!stock) {
      faults.push(`board ${at + 1} is of no stock length`);
      continue;
    }
    if (taken(board.pieces, kerf) > stock.length + CLOSE)
      faults.push(`board ${at + 1} is too short for its pieces`);
    for (const { part, length } of board.pieces) {
      if (pieces[part]) pieces[part].push(length);
      else faults.push(`board ${at + 1} holds a piece of no part`);
    }
  }
  for (const [at, { name, length }] of parts.entries()) {
    const of = pieces[at]!; // one list a part
    const joints = of.length - 1;
    const reach = of.reduce((sum, piece) => sum + piece, 0) - Math.max(0, joints) * (scarf?.taper ?? 0);
    if (of.length === 0) faults.push(`${name} is not cut`);
    else if (Math.abs(reach - length) > CLOSE * of.length)
      faults.push(`${name} does not come out at its length`);
    if (joints > 0 && !scarf) faults.push(`${name} is in pieces`);
    if (scarf && of.length > scarf.most) faults.push(`${name} is in more than ${scarf.most} pieces`);
    if (scarf && joints > 0 && of.some((piece) => piece < scarf.least - CLOSE))
      faults.push(`${name} has a piece too short to join`);
  }
  return faults;
}

/**
 * Why there is no plan at all, as a sentence; null where there is one.
 */
export function impossible({ parts, stocks, scarf }: CuttingProblem): string | null {
  const longest = Math.max(0, ...stocks.map(({ length }) => length));
  if (stocks.length === 0 || longest <= 0) return 'there is no board to cut from';
  const longPart = parts.find(({ length }) => length > longest + CLOSE);
  if (!longPart) return null;
  if (!scarf)
    return `${longPart.name} is longer than the longest board: allow scarfs, or find a longer board`;
  const needs = piecesFor(longPart.length, longest, scarf.taper);
  if (needs > scarf.most)
    return Number.isFinite(needs)
      ? `${longPart.name} would need ${needs} pieces of the longest board, and at most ${scarf.most} are allowed: allow more, or find a longer board`
      : `the taper of a scarf is as long as the longest board: find a longer board or a steeper scarf`;
  return null;
}

/** Least number of pieces, none longer than a board, that make up a length with a taper lost at each joint. */
function piecesFor(length: number, board: number, taper: number): number {
  if (length <= board + CLOSE) return 1;
  return board <= taper ? Infinity : Math.ceil((length - taper - CLOSE) / (board - taper));
}

/**
 * A plan by the rule of the shop: long parts first, each on the first board that still has room; a part
 * longer than any board in equal pieces. Tried with boards of each length, and every board then
 * exchanged for the cheapest that holds what is on it.
 *
 * Throws the sentence of `impossible` where there is none.
 */
export function shopPlan(problem: CuttingProblem): CuttingPlan {
  const none = impossible(problem);
  if (none !== null) throw new Error(none);
  const { stocks } = problem;
  const plans = stocks.map((_, stock) => firstFit(problem, stock)).filter((plan) => plan !== null);
  const best = plans.toSorted((a, b) => costOf(a, problem) - costOf(b, problem))[0];
  if (!best) throw new Error('no plan was found by rule; search for one');
  return best;
}

function firstFit(problem: CuttingProblem, stock: number): CuttingPlan | null {
  const { parts, stocks, kerf, scarf } = problem;
  const room = stocks[stock]!.length; // asked for each stock there is
  const pieces: Piece[] = [];
  for (const [part, { length }] of parts.entries()) {
    const count = length <= room + CLOSE ? 1 : scarf ? piecesFor(length, room, scarf.taper) : Infinity;
    if (count > (scarf?.most ?? 1)) return null;
    const each = (length + (count - 1) * (scarf?.taper ?? 0)) / count;
    if (scarf && count > 1 && each < scarf.least) return null;
    for (let i = 0; i < count; i += 1) pieces.push({ part, length: each });
  }
  const boards: Piece[][] = [];
  for (const piece of pieces.toSorted((a, b) => b.length - a.length || a.part - b.part)) {
    const board = boards.find((held) => taken([...held, piece], kerf) <= room + CLOSE);
    if (board) board.push(piece);
    else boards.push([piece]);
  }
  return { boards: boards.map((held) => ({ stock: cheapestFor(taken(held, kerf), problem), pieces: held })) };
}

/** The cheapest stock that holds a length; there is one, for the pieces fitted a board. */
function cheapestFor(length: number, { stocks }: CuttingProblem): number {
  const fitting = [...stocks.keys()].filter((stock) => stocks[stock]!.length + CLOSE >= length);
  return fitting.toSorted((a, b) => stocks[a]!.price - stocks[b]!.price || a - b)[0]!;
}

/**
 * No plan can cost less: the length wanted, bought at the lowest price per length and without waste, or
 * whole boards of the cheapest kind for the parts that need one each.
 */
export function costAtLeast({ parts, stocks }: CuttingProblem): number {
  const wanted = parts.reduce((sum, { length }) => sum + length, 0);
  const perLength = Math.min(...stocks.map(({ length, price }) => price / length));
  return wanted * perLength;
}
